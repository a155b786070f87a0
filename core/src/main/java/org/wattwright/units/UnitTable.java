package org.wattwright.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** The fixed table from kind and spelling to unit. Never changes after class initialisation. */
final class UnitTable {
  private static final Map<Kind<?>, List<NamedUnit<?>>> UNITS = new HashMap<>();
  private static final Map<Kind<?>, Map<String, NamedUnit<?>>> SPELLINGS = new HashMap<>();

  static {
    for (WorkshopUnits.Named named : WorkshopUnits.defined()) {
      Kind<?> kind = named.unit().kind();
      UNITS.computeIfAbsent(kind, k -> new ArrayList<>()).add(named.unit());
      Map<String, NamedUnit<?>> spellings = SPELLINGS.computeIfAbsent(kind, k -> new HashMap<>());
      spellings.put(UnitSpelling.normalised(named.unit().symbol()), named.unit());
      for (String spelling : named.spellings()) {
        spellings.put(UnitSpelling.normalised(spelling), named.unit());
      }
    }
    UNITS.replaceAll((kind, units) -> List.copyOf(units));
  }

  private UnitTable() {}

  @SuppressWarnings("unchecked") // the table files every unit under its own kind
  static <Q extends Quantity<Q>> List<NamedUnit<Q>> unitsOf(Kind<Q> kind) {
    return (List<NamedUnit<Q>>) (List<?>) UNITS.getOrDefault(kind, List.of());
  }

  @SuppressWarnings("unchecked") // the table files every unit under its own kind
  static <Q extends Quantity<Q>> @Nullable NamedUnit<Q> find(Kind<Q> kind, String spelling) {
    return (NamedUnit<Q>)
        SPELLINGS.getOrDefault(kind, Map.of()).get(UnitSpelling.normalised(spelling));
  }

  static <Q extends Quantity<Q>> NamedUnit<Q> of(Kind<Q> kind, String symbol) {
    if (!kind.isNamed()) {
      return new NamedUnit<>(kind, symbol, 1, 1, 0, "", kind.unnamedUnit());
    }
    return Objects.requireNonNull(find(kind, symbol), symbol);
  }
}
