package org.wattwright.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** The fixed table from kind and spelling to unit. Never changes after class initialisation. */
final class UnitTable {
  private static final Map<Kind<?>, List<NamedUnit<?>>> UNITS = new HashMap<>();
  private static final Map<Kind<?>, Map<String, NamedUnit<?>>> SPELLINGS = new HashMap<>();
  private static final Map<Kind<?>, NamedUnit<?>> SI = new HashMap<>();
  private static final Map<Kind<?>, NamedUnit<?>> CUSTOMARY = new HashMap<>();

  static {
    for (WorkshopUnits.Named named : WorkshopUnits.defined()) {
      Kind<?> kind = named.unit().kind();
      UNITS.computeIfAbsent(kind, k -> new ArrayList<>()).add(named.unit());
      Map<String, NamedUnit<?>> spellings = SPELLINGS.computeIfAbsent(kind, k -> new HashMap<>());
      for (String spelling : named.allSpellings()) {
        spellings.put(spelling, named.unit()); // found without normalising
        UnitSpelling.variants(spelling).forEach(variant -> spellings.put(variant, named.unit()));
      }
    }
    UNITS.replaceAll((kind, units) -> List.copyOf(units));
    for (Kind<?> kind : Kind.values()) {
      SI.put(kind, Objects.requireNonNull(find(kind, kind.siSymbol()), kind.name()));
      CUSTOMARY.put(kind, Objects.requireNonNull(find(kind, kind.customarySymbol()), kind.name()));
    }
  }

  private UnitTable() {}

  @SuppressWarnings("unchecked") // the table files every unit under its own kind
  static <Q extends Quantity<Q>> List<NamedUnit<Q>> unitsOf(Kind<Q> kind) {
    return (List<NamedUnit<Q>>) (List<?>) UNITS.getOrDefault(kind, List.of());
  }

  @SuppressWarnings("unchecked") // the table files every unit under its own kind
  static <Q extends Quantity<Q>> @Nullable NamedUnit<Q> find(Kind<Q> kind, String spelling) {
    Map<String, NamedUnit<?>> spellings = SPELLINGS.getOrDefault(kind, Map.of());
    NamedUnit<?> asFiled = spellings.get(spelling);
    return (NamedUnit<Q>)
        (asFiled != null ? asFiled : spellings.get(UnitSpelling.normalised(spelling)));
  }

  /** Another kind that knows this spelling, for error messages. */
  static Optional<Kind<?>> kindOf(String spelling) {
    String normalised = UnitSpelling.normalised(spelling);
    return Kind.values().stream()
        .filter(kind -> !normalised.isEmpty() && !normalised.equals("1"))
        .filter(kind -> SPELLINGS.getOrDefault(kind, Map.of()).containsKey(normalised))
        .findFirst();
  }

  @SuppressWarnings("unchecked") // filed under its own kind
  static <Q extends Quantity<Q>> NamedUnit<Q> siUnit(Kind<Q> kind) {
    NamedUnit<?> unit = SI.get(kind);
    return unit != null ? (NamedUnit<Q>) unit : unnamed(kind);
  }

  @SuppressWarnings("unchecked") // filed under its own kind
  static <Q extends Quantity<Q>> NamedUnit<Q> customaryUnit(Kind<Q> kind) {
    NamedUnit<?> unit = CUSTOMARY.get(kind);
    return unit != null ? (NamedUnit<Q>) unit : unnamed(kind);
  }

  private static <Q extends Quantity<Q>> NamedUnit<Q> unnamed(Kind<Q> kind) {
    return new NamedUnit<>(kind, kind.siSymbol(), 1, 1, 0, "", kind.unnamedUnit());
  }
}
