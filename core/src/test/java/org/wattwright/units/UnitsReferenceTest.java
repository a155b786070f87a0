package org.wattwright.units;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.ReferenceTolerance;
import org.wattwright.testing.Validation;

/** Conversions as published. */
class UnitsReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("units");

  private static final ReferenceRows ROWS = ReferenceRows.read("/units/units.csv");

  private static final Map<String, Quantity<?>> CONVERSIONS =
      Map.ofEntries(
          entry("UNI-001", Measures.inches(1)),
          entry("UNI-002", Measures.feet(1)),
          entry("UNI-003", Measures.miles(1)),
          entry("UNI-004", Measures.milesPerHour(1)),
          entry("UNI-005", Measures.pounds(1)),
          entry("UNI-006", Measures.standardGravities(1)),
          entry("UNI-007", Measures.poundsForce(1)),
          entry("UNI-008", Measures.poundForceFeet(1)),
          entry("UNI-009", Measures.imperialHorsepower(1)),
          entry("UNI-010", Measures.metricHorsepower(1)),
          entry("UNI-011", Measures.electricHorsepower(1)),
          entry("UNI-012", Measures.metricHorsepower(1)),
          entry("UNI-013", Measures.imperialHorsepower(100)),
          entry("UNI-014", Measures.kilowatts(100)),
          entry("UNI-015", Measures.usGallons(1)),
          entry("UNI-016", Measures.imperialGallons(1)),
          entry("UNI-017", Measures.imperialGallons(1)),
          entry("UNI-018", Measures.poundsPerSquareInch(1)),
          entry("UNI-019", Measures.bars(1)),
          entry("UNI-020", Measures.kilowattHours(1)),
          entry("UNI-021", Measures.ampereHours(1)),
          entry(
              "UNI-022",
              Measures.ampereHours(100).multiply(Measures.volts(320)).asType(Energy.class)),
          entry("UNI-023", Measures.kilogramsForce(1)),
          entry("UNI-024", Measures.poundForceFeet(150)),
          entry("UNI-025", Measures.revolutionsPerMinute(1000)),
          entry("UNI-026", Measures.economy(Measures.kilowattHoursPer100Kilometres(15))),
          entry("UNI-027", Measures.consumption(Measures.milesPerKilowattHour(4.0))),
          entry("UNI-028", Measures.wattHoursPerMile(250)),
          entry("UNI-029", Measures.kilowattHoursPer100Kilometres(16.6)),
          entry("UNI-030", Measures.economy(meanConsumption(4, 6))),
          entry("UNI-035", Measures.longHundredweights(1)),
          entry("UNI-036", Measures.longTons(1)),
          entry("UNI-037", Measures.longTons(0.5)),
          entry("UNI-038", Measures.fahrenheit(80)),
          entry("UNI-039", Measures.parse("9 degF", Kind.TEMPERATURE_DIFFERENCE)),
          entry("UNI-040", Measures.kilocalories(1)),
          entry("UNI-041", Measures.britishThermalUnits(1)),
          entry("UNI-042", Measures.britishThermalUnitsPerHour(17000)),
          entry("UNI-046", Measures.celsius(0)));

  /** Litres per 100 km from a volume and a distance: the package has no unit for fuel. */
  private static final Map<String, Double> FUEL =
      Map.of(
          "UNI-033", litresPer100Km(Measures.imperialGallons(1), 30),
          "UNI-034", litresPer100Km(Measures.usGallons(1), 30));

  private static final Map<String, String> NOT_COVERED =
      Map.of(
          "UNI-031", "the library converts no petrol equivalent",
          "UNI-032", "the library converts no petrol equivalent",
          "UNI-043", "a constant that no calculation of the library needs",
          "UNI-044", "no constant of this package",
          "UNI-045", "no constant of this package",
          "UNI-047", "no constant of this package");

  static Stream<ReferenceRow> conversions() {
    return ROWS.stream().filter(row -> CONVERSIONS.containsKey(row.id()));
  }

  static Stream<ReferenceRow> fuel() {
    return ROWS.stream().filter(row -> FUEL.containsKey(row.id()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("conversions")
  void conversionIsAsPublished(ReferenceRow row) {
    double ours = valueIn(row, (Measure<?>) CONVERSIONS.get(row.id()));
    VALIDATION.computed(row, ours);
    if (row.tolerance().type() == ReferenceTolerance.Type.EXACT) {
      assertThat(ours).isEqualTo(row.number());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("fuel")
  void fuelConsumptionFollowsFromGallonAndMile(ReferenceRow row) {
    VALIDATION.computed(row, FUEL.get(row.id()));
  }

  @Test
  void everyRowIsComparedOrSaidNotToBe() {
    Set<String> known = new HashSet<>(CONVERSIONS.keySet());
    known.addAll(FUEL.keySet());
    known.addAll(NOT_COVERED.keySet());
    assertThat(ROWS.stream().map(ReferenceRow::id).collect(Collectors.toSet())).isEqualTo(known);
    NOT_COVERED.forEach((id, why) -> VALIDATION.notCovered(ROWS.row(id), why));
  }

  private static <Q extends Quantity<Q>> double valueIn(ReferenceRow row, Measure<Q> ours) {
    return row.unit(ours.kind()).valueOf(ours);
  }

  /** Over equal distances the consumptions are averaged, not their reciprocals. */
  private static Quantity<EnergyPerDistance> meanConsumption(double first, double second) {
    return Measures.consumption(Measures.milesPerKilowattHour(first))
        .add(Measures.consumption(Measures.milesPerKilowattHour(second)))
        .divide(2);
  }

  private static double litresPer100Km(
      Quantity<javax.measure.quantity.Volume> gallon, double milesPerGallon) {
    double litres = WorkshopUnits.LITRE.valueOf(gallon);
    return litres / WorkshopUnits.KILOMETRE.valueOf(Measures.miles(milesPerGallon)) * 100;
  }
}
