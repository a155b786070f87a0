package org.wattwright.thermal;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.cubicMetresPerHour;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilogramsPerCubicMetre;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.litresPerMinute;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.wattHoursPerKilometre;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/** Coolants, flows, temperature rises, air and cabins against published and worked values. */
class ThermalReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("thermal");

  private static final Pattern GLYCOL = Pattern.compile("ethylene glycol ([\\d.]+) % by volume.*");
  private static final Quantity<Temperature> FROST = celsius(-10);
  private static final Quantity<Temperature> ROOM = celsius(22);
  private static final LumpedBody PACK =
      LumpedBody.of(joulesPerKelvin(429580.8), wattsPerKelvin(12));
  private static final Coolant AS_STATED =
      Coolant.of("as stated", kilogramsPerCubicMetre(1073.35), joulesPerKilogramKelvin(3281));
  private static final PackCooling PLATE =
      PackCooling.coolant(AS_STATED, litresPerMinute(6), ROOM, wattsPerKelvin(400));
  private static final CoolantLoad EXAMPLE_H =
      CoolantLoad.of(Coolant.ethyleneGlycol(0.5), kilowatts(3), celsius(20));

  private static final String ONE_HEATER = "the data sheet of one heater";

  private static final Map<String, String> NOT_COVERED =
      Map.ofEntries(
          Map.entry("FLO-007", "pressure drop is left to the pump's curve and the loop"),
          Map.entry("TMP-009", "conductances in series are the caller's: one is taken"),
          Map.entry("HEA-004", "the entropic coefficient is taken, not the entropy"),
          Map.entry("HEA-005", "the entropic coefficient is taken, not the entropy"),
          Map.entry("HEA-006", "the entropic coefficient is taken, not the entropy"),
          Map.entry("AIR-006", "moisture is left out"),
          Map.entry("AIR-007", "moisture is left out"),
          Map.entry("CAB-001", "stands in the heat of an occupant, CAB-005"),
          Map.entry("CAB-002", "an occupant at rest is counted, the low end"),
          Map.entry("CAB-003", "an occupant at rest is counted, the low end"),
          Map.entry("CAB-004", "a body surface of 1.8 m² is taken"),
          Map.entry("CAB-006", ONE_HEATER),
          Map.entry("CAB-007", ONE_HEATER),
          Map.entry("CAB-008", ONE_HEATER),
          Map.entry("CAB-009", ONE_HEATER),
          Map.entry("CAB-010", ONE_HEATER),
          Map.entry("CAB-011", ONE_HEATER),
          Map.entry("CAB-012", ONE_HEATER),
          Map.entry("CAB-013", "a fleet's mean over a year, which no steady load shows"),
          Map.entry("CAB-014", "cabin cooling is not in the library"));

  static Stream<ReferenceRow> properties() {
    return ReferenceRows.read("/thermal/coolant-properties.csv").stream();
  }

  static Stream<ReferenceRow> rows() {
    return Stream.of("coolant-flow", "temperature-rise", "heat-generation", "air", "cabin")
        .flatMap(file -> ReferenceRows.read("/thermal/" + file + ".csv").stream());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("properties")
  void coolantProperty(ReferenceRow row) {
    switch (row.id()) {
      case "COO-036", "COO-035" -> VALIDATION.computed(row, property(row));
      case "COO-037" ->
          VALIDATION.computed(row, coolant(row).prandtlNumber(celsius(20)).orElseThrow());
      case "COO-038" ->
          VALIDATION.transcribed(
              row, Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(Coolant.water().specificHeat(ROOM)));
      default -> VALIDATION.transcribed(row, property(row));
    }
  }

  private static Coolant coolant(ReferenceRow row) {
    String first = row.conditions().keySet().iterator().next();
    Matcher matcher = GLYCOL.matcher(first);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(row.toString());
    }
    double share = Double.parseDouble(matcher.group(1)) / 100;
    return Coolant.ethyleneGlycol(share);
  }

  private static double property(ReferenceRow row) {
    Coolant coolant = coolant(row);
    if (row.quantity().startsWith("freezing point")) {
      return WorkshopUnits.CELSIUS.valueOf(coolant.freezingPoint().orElseThrow());
    }
    Quantity<Temperature> at = celsius(row.givenNumber("T"));
    return switch (row.quantity()) {
      case "specific heat", "specific heat by interpolation" ->
          Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(coolant.specificHeat(at));
      case "density" -> Kind.DENSITY.siValueOf(coolant.density(at));
      case "dynamic viscosity" ->
          WorkshopUnits.MILLIPASCAL_SECOND.valueOf(coolant.viscosity(at).orElseThrow());
      case "thermal conductivity" ->
          Kind.THERMAL_CONDUCTIVITY.siValueOf(coolant.conductivity(at).orElseThrow());
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void figure(ReferenceRow row) {
    if (NOT_COVERED.containsKey(row.id())) {
      VALIDATION.notCovered(row, NOT_COVERED.get(row.id()));
    } else if (row.id().equals("AIR-005")) {
      VALIDATION.bound(row, airSpecificHeat());
    } else {
      VALIDATION.computed(row, ours(row));
    }
  }

  private static double ours(ReferenceRow row) {
    return switch (row.id().substring(0, 3)) {
      case "FLO" -> flow(row.id());
      case "TMP", "SPH" -> rise(row.id());
      case "AIR" ->
          Kind.MASS_FLOW.siValueOf(cabin(0, 3600, 1, 0).freshAir(celsius(row.givenNumber("T"))));
      default -> cabin(row.id());
    };
  }

  private static double airSpecificHeat() {
    Cabin breathing = cabin(0, 60, 1, 0);
    double loadW = Kind.POWER.siValueOf(breathing.steadyLoad(FROST, ROOM));
    return loadW / 32 / Kind.MASS_FLOW.siValueOf(breathing.freshAir(FROST));
  }

  private static double flow(String id) {
    return switch (id) {
      case "FLO-001" -> Kind.MASS_FLOW.siValueOf(EXAMPLE_H.massFlowFor(kelvinsOfRise(5)));
      case "FLO-002" -> litres(EXAMPLE_H);
      case "FLO-003" -> litres(CoolantLoad.of(Coolant.water(), kilowatts(3), celsius(20)));
      case "FLO-004" ->
          Kind.TEMPERATURE_DIFFERENCE.siValueOf(
              CoolantLoad.of(Coolant.ethyleneGlycol(0.5), kilowatts(5), celsius(60))
                  .riseAt(litresPerMinute(8))
                  .orElseThrow());
      case "FLO-005" -> reynolds(20);
      case "FLO-006" -> reynolds(-20);
      case "FLO-008" -> Kind.POWER.siValueOf(PLATE.heatFrom(celsius(30)));
      case "FLO-009" -> WorkshopUnits.CELSIUS.valueOf(PLATE.outletFrom(celsius(30)).orElseThrow());
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double litres(CoolantLoad load) {
    return WorkshopUnits.LITRE_PER_MINUTE.valueOf(load.volumeFlowFor(kelvinsOfRise(5)));
  }

  private static double reynolds(double celsius) {
    return CoolantLoad.of(Coolant.ethyleneGlycol(0.5), kilowatts(3), celsius(celsius))
        .reynoldsNumber(litresPerMinute(10.22245), millimetres(16))
        .orElseThrow();
  }

  private static double rise(String id) {
    LumpedBody cells = LumpedBody.lossless(kilograms(380.16), joulesPerKilogramKelvin(1130));
    return switch (id) {
      case "SPH-007" ->
          Kind.HEAT_CAPACITY.siValueOf(
              cells.and(kilograms(40), joulesPerKilogramKelvin(897)).heatCapacity());
      case "TMP-001" -> adiabaticRiseK(1, 10);
      case "TMP-002" -> adiabaticRiseK(192, 30);
      case "TMP-003" -> WorkshopUnits.KILOWATT_HOUR.valueOf(cells.heatFor(kelvinsOfRise(25)));
      case "TMP-004" ->
          WorkshopUnits.MINUTE.valueOf(
              cells.timeTo(celsius(15), FROST, FROST, watts(3000 * 0.85)).orElseThrow());
      case "TMP-005" ->
          Kind.TEMPERATURE_DIFFERENCE.siValueOf(PACK.steadyRise(watts(600)).orElseThrow());
      case "TMP-006" -> Kind.TIME.siValueOf(PACK.timeConstant().orElseThrow());
      case "TMP-007" ->
          Packs.kelvin(PACK.temperatureAfter(ROOM, ROOM, watts(600), hours(1)))
              - Packs.kelvin(ROOM);
      case "TMP-008" ->
          WorkshopUnits.CELSIUS.valueOf(
              PACK.temperatureAfter(celsius(40), celsius(15), watts(0), hours(8)));
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double adiabaticRiseK(int cells, double minutes) {
    PackTemperatureCourse course =
        PackTemperature.of(Packs.constant(0.35, cells))
            .surroundings(celsius(20), wattsPerKelvin(0))
            .build()
            .course(Packs.state(100, 20), Packs.hold(150, minutes(minutes)));
    return Packs.kelvin(course.end()) - Packs.kelvin(course.start());
  }

  private static Cabin cabin(double bodyWPerK, double fanM3PerH, double fresh, int occupants) {
    return Cabin.builder()
        .body(wattsPerKelvin(bodyWPerK))
        .fan(cubicMetresPerHour(fanM3PerH))
        .freshShare(fresh)
        .interior(kilojoulesPerKelvin(70))
        .creditOccupants(occupants)
        .build();
  }

  private static double cabin(String id) {
    WarmUp warmUp = cabin(82.49, 0, 1, 0).warmUp(kilowatts(5), FROST, celsius(20)).orElseThrow();
    return switch (id) {
      case "CAB-005" -> loadW(cabin(60, 0, 1, 0)) - loadW(cabin(60, 0, 1, 1));
      case "CAB-015" -> loadW(cabin(60, 0, 1, 0));
      case "CAB-016" -> loadW(cabin(0, 60, 1, 0));
      case "CAB-017" -> loadW(cabin(60, 60, 1, 2));
      case "CAB-018" -> loadW(cabin(60, 60, 0.4, 2));
      case "CAB-019" ->
          WorkshopUnits.CELSIUS.valueOf(
              cabin(60, 60, 1, 2).temperatureHeldBy(kilowatts(2), FROST).orElseThrow());
      case "CAB-020" -> Kind.TIME.siValueOf(warmUp.time());
      case "CAB-021" -> WorkshopUnits.KILOWATT_HOUR.valueOf(warmUp.energy());
      case "CAB-022" -> WorkshopUnits.KILOWATT_HOUR.valueOf(warmUp.energyOver(minutes(40)));
      default -> heater(id);
    };
  }

  private static double loadW(Cabin cabin) {
    return Kind.POWER.siValueOf(cabin.steadyLoad(FROST, ROOM));
  }

  private static double heater(String id) {
    HeaterCore core = HeaterCore.of(0.75, cubicMetresPerHour(200));
    return switch (id) {
      case "CAB-023" ->
          Kind.HEAT_CAPACITY.siValueOf(
              LumpedBody.lossless(kilograms(3 * 1.2041), joulesPerKilogramKelvin(1006))
                  .heatCapacity());
      case "CAB-024" -> Kind.POWER.siValueOf(core.heat(celsius(65), FROST));
      case "CAB-025" -> WorkshopUnits.CELSIUS.valueOf(core.airOut(celsius(65), FROST));
      case "CAB-026" ->
          Kind.TIME.siValueOf(
              LumpedBody.lossless(kilograms(4 * 1.06366), joulesPerKilogramKelvin(3358))
                  .and(kilograms(3), joulesPerKilogramKelvin(897))
                  .timeTo(celsius(60), FROST, FROST, kilowatts(5))
                  .orElseThrow());
      case "CAB-027" -> WorkshopUnits.WATT_HOUR_PER_KILOMETRE.valueOf(range(3, 50).added());
      case "CAB-028" -> WorkshopUnits.KILOMETRE.valueOf(range(2.4, 40).with());
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static HeaterRange range(double kilowatts, double kilometresPerHour) {
    return HeaterRange.of(
        kilowattHours(20),
        wattHoursPerKilometre(140),
        Measures.kilowatts(kilowatts),
        kilometresPerHour(kilometresPerHour));
  }
}
