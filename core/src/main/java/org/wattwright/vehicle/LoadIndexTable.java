package org.wattwright.vehicle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;

/** The load index table of the library, read once. */
final class LoadIndexTable {
  private static final String FILE = "load-index.csv";

  /** Load in kg by index. */
  private static final NavigableMap<Integer, Double> LOADS_KG =
      Collections.unmodifiableNavigableMap(read());

  private LoadIndexTable() {}

  private static NavigableMap<Integer, Double> read() {
    NavigableMap<Integer, Double> loadsKg = new TreeMap<>();
    try (InputStream in =
        Objects.requireNonNull(LoadIndexTable.class.getResourceAsStream(FILE), FILE)) {
      new String(in.readAllBytes(), UTF_8)
          .lines()
          .filter(line -> Character.isDigit(line.charAt(0)))
          .map(line -> line.split(",", 3))
          .forEach(cells -> loadsKg.put(Integer.valueOf(cells[0]), Double.valueOf(cells[1])));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return loadsKg;
  }

  static int first() {
    return LOADS_KG.firstKey();
  }

  static int last() {
    return LOADS_KG.lastKey();
  }

  static double loadKg(int index) {
    return LOADS_KG.getOrDefault(index, Double.NaN);
  }

  /** The lowest index that carries a load; 0 if none does. */
  static int lowestFor(double loadKg) {
    return LOADS_KG.entrySet().stream()
        .filter(entry -> entry.getValue() >= loadKg)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(0);
  }
}
