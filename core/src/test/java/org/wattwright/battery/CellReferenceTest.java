package org.wattwright.battery;

import static org.wattwright.battery.Fixtures.AT_ONCE;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.linear;
import static org.wattwright.battery.Fixtures.source;
import static org.wattwright.battery.Fixtures.unlimited;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.joulesPerMole;
import static org.wattwright.units.Measures.kilojoulesPerMole;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Cells against published curves, resistances, limits and estimates. */
class CellReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("battery");

  /** SoC 0.5 of the NMC pouch cell of Huria (2012) at 20 °C. */
  private static final RcPair HURIA_PAIR = RcPair.ofCapacitance(milliohms(1.6), farads(18721));

  static Stream<ReferenceRow> limits() {
    return ReferenceRows.read("/battery/voltage-limits.csv").stream();
  }

  static Stream<ReferenceRow> curves() {
    return ReferenceRows.read("/battery/open-circuit.csv").stream();
  }

  static Stream<ReferenceRow> resistances() {
    return ReferenceRows.read("/battery/resistance.csv").stream();
  }

  static Stream<ReferenceRow> pulses() {
    return ReferenceRows.read("/battery/pulse-response.csv").stream();
  }

  static Stream<ReferenceRow> specificHeats() {
    return ReferenceRows.read("/battery/specific-heat.csv").stream();
  }

  static Stream<ReferenceRow> temperatures() {
    return ReferenceRows.read("/battery/temperature-limits.csv").stream();
  }

  static Stream<ReferenceRow> ageing() {
    return ReferenceRows.read("/battery/ageing.csv").stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("limits")
  void voltageLimitAgrees(ReferenceRow row) {
    VALIDATION.transcribed(row, limit(row), Kind.VOLTAGE);
  }

  private static Quantity<ElectricPotential> limit(ReferenceRow row) {
    if (row.has("cell")) {
      OpenCircuitCurve chen = CellEstimates.openCircuit(Chemistry.NMC).value();
      StateOfCharge end =
          row.quantity().startsWith("lower") ? StateOfCharge.EMPTY : StateOfCharge.FULL;
      return chen.at(PackState.of(end, celsius(25)));
    }
    VoltageLimits limits = CellEstimates.voltageLimits(chemistry(row)).value();
    return switch (row.quantity()) {
      case "typical maximum charge voltage per cell", "upper cut-off voltage per cell" ->
          limits.maximum();
      case "nominal voltage per cell" -> limits.nominal();
      case "typical full-discharge (end of discharge) voltage per cell" -> limits.endOfDischarge();
      case "typical lowest permissible voltage per cell", "lower cut-off voltage per cell" ->
          limits.lowest();
      default -> throw new IllegalArgumentException(row.quantity());
    };
  }

  private static Chemistry chemistry(ReferenceRow row) {
    String text = row.given("chemistry");
    return text.equals("lead-acid") ? Chemistry.LEAD_ACID : Chemistry.valueOf(text);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("curves")
  void openCircuitAgrees(ReferenceRow row) {
    int number = Integer.parseInt(row.id().substring(4));
    if (number >= 62 && number <= 64) {
      VALIDATION.computed(row, linearLeadAcidV(row.givenNumber("depth of discharge")));
    } else if (number == 17) {
      VALIDATION.computed(row, plateauSlopeMillivolt());
    } else if (number >= 27 && number <= 43) {
      huria(row, number);
    } else {
      estimatedCurve(row, number);
    }
  }

  private static double linearLeadAcidV(double depthOfDischarge) {
    Cell cell = unlimited(linear(2.00, 0.15), ResistanceTable.constant(ohms(0.01))).build();
    PackState state = PackState.of(StateOfCharge.of(1 - depthOfDischarge), celsius(25));
    return Kind.VOLTAGE.siValueOf(
        BatteryModule.of(cell).series(6).build().openCircuitVoltage(state));
  }

  private static double plateauSlopeMillivolt() {
    OpenCircuitCurve curve = CellEstimates.openCircuit(Chemistry.LFP).value();
    double riseV =
        Kind.VOLTAGE.siValueOf(curve.at(PackState.of(percentCharge(60), celsius(25))))
            - Kind.VOLTAGE.siValueOf(curve.at(PackState.of(percentCharge(40), celsius(25))));
    return 1000 * riseV / 0.2;
  }

  private static void estimatedCurve(ReferenceRow row, int number) {
    boolean leadAcid = number >= 65;
    Chemistry chemistry =
        leadAcid ? Chemistry.LEAD_ACID : number >= 51 ? Chemistry.NMC : Chemistry.LFP;
    double fraction = number >= 51 && !leadAcid ? chenSoc(row) : row.givenNumber("SoC");
    double cellV =
        Kind.VOLTAGE.siValueOf(
            CellEstimates.openCircuit(chemistry)
                .value()
                .at(PackState.of(StateOfCharge.of(fraction), celsius(25))));
    VALIDATION.transcribed(row, leadAcid ? 6 * cellV : cellV);
  }

  private static double chenSoc(ReferenceRow row) {
    String key =
        row.conditions().keySet().stream().filter(k -> k.endsWith("SoC")).findFirst().orElseThrow();
    return row.givenNumber(key);
  }

  /** The table at 20 °C as the rows give it. */
  private static OpenCircuitCurve huriaCurve() {
    ReferenceRows rows = ReferenceRows.read("/battery/open-circuit.csv");
    OpenCircuitCurve.Builder curve = OpenCircuitCurve.at(celsius(20));
    for (String id :
        new String[] {
          "OCV-027", "OCV-029", "OCV-030", "OCV-032", "OCV-034", "OCV-035", "OCV-037"
        }) {
      ReferenceRow row = rows.row(id);
      curve.row(StateOfCharge.of(row.givenNumber("SoC")), row.quantity(Kind.VOLTAGE));
    }
    return curve.build();
  }

  private static void huria(ReferenceRow row, int number) {
    OpenCircuitCurve curve = huriaCurve();
    switch (number) {
      case 41 ->
          VALIDATION.computed(row, curve.stateOfChargeAt(volts(3.80), celsius(20)).fraction());
      case 42 ->
          VALIDATION.computed(
              row,
              BatteryModule.of(
                      unlimited(curve, ResistanceTable.constant(milliohms(8)))
                          .capacity(ampereHours(27.625))
                          .build())
                  .build()
                  .nominalEnergy(celsius(20)),
              Kind.ENERGY);
      case 43 ->
          VALIDATION.computed(
              row,
              curve.meanBetween(StateOfCharge.EMPTY, StateOfCharge.FULL, celsius(20)),
              Kind.VOLTAGE);
      default -> {
        PackState state = PackState.of(StateOfCharge.of(row.givenNumber("SoC")), celsius(20));
        VALIDATION.computed(row, curve.at(state), Kind.VOLTAGE);
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("resistances")
  void resistanceAgrees(ReferenceRow row) {
    int number = Integer.parseInt(row.id().substring(4));
    if (number <= 25) {
      RcPair pair =
          RcPair.ofCapacitance(row.given("R1", Kind.RESISTANCE), row.given("C1", Kind.CAPACITANCE));
      VALIDATION.computed(row, pair.timeConstant(), Kind.TIME);
    } else if (number >= 27 && number <= 34) {
      transcribedCold(row, number);
    } else {
      VALIDATION.computed(row, resistance(row, number));
    }
  }

  private static void transcribedCold(ReferenceRow row, int number) {
    ResistanceTable table = CellEstimates.resistanceOverTemperature(milliohms(10.02)).value();
    double celsius = number == 34 ? -25 : row.givenNumber("T");
    double milliohm = milliohm(table, percentCharge(50), celsius);
    VALIDATION.transcribed(row, number == 34 ? milliohm / 10.02 : milliohm);
  }

  private static double milliohm(ResistanceTable table, StateOfCharge soc, double celsius) {
    return 1000 * Kind.RESISTANCE.siValueOf(table.at(PackState.of(soc, celsius(celsius))));
  }

  private static double resistance(ReferenceRow row, int number) {
    ResistanceTable nodes =
        ResistanceTable.at(celsius(5), celsius(20))
            .row(percentCharge(50), milliohms(10.7), milliohms(8.2))
            .row(percentCharge(75), milliohms(10.7), milliohms(8.3))
            .build();
    return switch (number) {
      case 26 -> milliohm(nodes, percentCharge(60), 12);
      case 35 -> kilojoulePerMole(17.71, 5, 7.72, 45);
      case 36 -> kilojoulePerMole(121.8, -25, 17.71, 5);
      case 37, 38, 39, 40 ->
          milliohm(
              ResistanceTable.arrhenius(milliohms(1), joulesPerMole(20000)),
              percentCharge(50),
              row.givenNumber("T"));
      default ->
          milliohm(
              ResistanceTable.quadratic(milliohms(1), milliohms(1.2)),
              StateOfCharge.of(row.givenNumber("SoC")),
              25);
    };
  }

  private static double kilojoulePerMole(
      double coldMilliohm, double coldCelsius, double warmMilliohm, double warmCelsius) {
    return Kind.MOLAR_ENERGY.siValueOf(
            ArrheniusLaw.through(
                    new ArrheniusLaw.Point(milliohms(coldMilliohm), celsius(coldCelsius)),
                    new ArrheniusLaw.Point(milliohms(warmMilliohm), celsius(warmCelsius)))
                .activationEnergy())
        / 1000;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pulses")
  void pulseAgrees(ReferenceRow row) {
    int number = Integer.parseInt(row.id().substring(4));
    VALIDATION.computed(row, number >= 15 && number <= 18 ? chart(number) : huriaPulse(number));
  }

  private static CellBuilder huriaCell() {
    return source(3.7127, 8.2e-3).rcPair(HURIA_PAIR);
  }

  private static double huriaPulse(int number) {
    PulseResponse pulse = huriaCell().build().pulseResponse(HALF, amperes(27.625), seconds(60));
    return switch (number) {
      case 4 -> Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(0)));
      case 5 -> Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(10)));
      case 6 -> Kind.VOLTAGE.siValueOf(pulse.voltageAtEnd());
      case 7 -> Kind.VOLTAGE.siValueOf(pulse.voltageAfter(seconds(0)));
      case 8 -> Kind.VOLTAGE.siValueOf(pulse.voltageAfter(seconds(20)));
      case 9 -> Kind.VOLTAGE.siValueOf(pulse.voltageAfter(seconds(60)));
      case 13 -> Kind.ENERGY.siValueOf(pulse.seriesHeat());
      case 14 -> Kind.ENERGY.siValueOf(pulse.polarisationHeat());
      case 19 -> decay(pulse);
      case 20 ->
          (Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(0)))
                  - Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(10))))
              / 1.6e-3;
      default -> huriaLimit(number);
    };
  }

  private static double decay(PulseResponse pulse) {
    return (3.7127 - Kind.VOLTAGE.siValueOf(pulse.voltageAfter(seconds(1))))
        / (3.7127 - Kind.VOLTAGE.siValueOf(pulse.voltageAfter(seconds(0))));
  }

  private static double huriaLimit(int number) {
    Pack pack = Fixtures.pack(huriaCell().minimumVoltage(volts(3.0)).build());
    PowerLimit largest = pack.maximumDischargePower(HALF, seconds(10));
    return switch (number) {
      case 10 ->
          1000 * Kind.RESISTANCE.siValueOf(pack.resistance(HALF, Direction.DISCHARGE, seconds(10)));
      case 11 -> Kind.CURRENT.siValueOf(largest.current());
      case 12 -> Kind.POWER.siValueOf(largest.power());
      default -> throw new IllegalArgumentException("RCP-" + number);
    };
  }

  private static double chart(int number) {
    PulseResponse pulse =
        source(3.70, 0.10)
            .rcPair(RcPair.ofCapacitance(ohms(0.05), farads(200)))
            .build()
            .pulseResponse(HALF, amperes(2), seconds(5));
    return Kind.VOLTAGE.siValueOf(
        switch (number) {
          case 15 -> pulse.voltageDuring(seconds(0));
          case 16 -> pulse.voltageDuring(seconds(2));
          case 17 -> pulse.voltageAtEnd();
          default -> pulse.voltageAfter(seconds(10));
        });
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("specificHeats")
  void specificHeatAgrees(ReferenceRow row) {
    switch (row.id()) {
      case "SPH-004" ->
          VALIDATION.transcribed(
              row, CellEstimates.specificHeat(Chemistry.NMC).low(), Kind.SPECIFIC_HEAT_CAPACITY);
      case "SPH-005" ->
          VALIDATION.bound(
              row, CellEstimates.specificHeat(Chemistry.NMC).high(), Kind.SPECIFIC_HEAT_CAPACITY);
      case "SPH-006" ->
          VALIDATION.bound(
              row,
              CellEstimates.specificHeat(Chemistry.NCA).typical(),
              Kind.SPECIFIC_HEAT_CAPACITY);
      default ->
          VALIDATION.transcribed(
              row,
              CellEstimates.specificHeat(chemistry(row)).typical(),
              Kind.SPECIFIC_HEAT_CAPACITY);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("temperatures")
  void temperatureLimitAgrees(ReferenceRow row) {
    int number = Integer.parseInt(row.id().substring(4));
    if (number <= 8) {
      transcribedTemperature(row, number);
    } else if (number == 12) {
      Pack pack = Fixtures.pack(Fixtures.flatCell().build());
      PowerLimit charge =
          pack.maximumChargePower(PackState.of(percentCharge(50), celsius(-5)), seconds(10));
      VALIDATION.computed(row, Kind.POWER.siValueOf(charge.power()) == 0 ? "no" : "yes");
    } else if (number == 16) {
      VALIDATION.computed(row, coldPowerW());
    } else {
      VALIDATION.computed(row, deratedShare(row.givenNumber("T")));
    }
  }

  private static void transcribedTemperature(ReferenceRow row, int number) {
    Chemistry chemistry = number <= 4 ? Chemistry.NMC : Chemistry.LEAD_ACID;
    Direction direction =
        row.quantity().endsWith("discharge temperature") ? Direction.DISCHARGE : Direction.CHARGE;
    TemperatureRange range = CellEstimates.temperatures(chemistry, direction).value();
    VALIDATION.transcribed(
        row,
        row.quantity().startsWith("lowest") ? range.coldest() : range.hottest(),
        Kind.TEMPERATURE);
  }

  private static double coldPowerW() {
    Cell cell =
        unlimited(linear(3.50, 0), ResistanceTable.arrhenius(milliohms(1), kilojoulesPerMole(20)))
            .minimumVoltage(volts(2.80))
            .build();
    PackState cold = PackState.of(percentCharge(50), celsius(-10));
    return Kind.POWER.siValueOf(Fixtures.pack(cell).maximumDischargePower(cold, AT_ONCE).power());
  }

  /** The derating table of the rows on a cell of 100 A, as a share of 100 A. */
  private static double deratedShare(double celsius) {
    CurrentByTemperature table =
        CurrentByTemperature.from(celsius(0), amperes(0))
            .and(celsius(5), amperes(10))
            .and(celsius(10), amperes(30))
            .and(celsius(20), amperes(100))
            .and(celsius(45), amperes(100))
            .and(celsius(55), amperes(0));
    return Kind.CURRENT.siValueOf(table.at(celsius(celsius))) / 100;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ageing")
  void accelerationAgrees(ReferenceRow row) {
    if (row.id().equals("AGE-014")) {
      VALIDATION.computed(
          row, ArrheniusLaw.of(kilojoulesPerMole(50)).rateFactor(celsius(35), celsius(25)));
    } else {
      // A rate that doubles is a resistance that halves.
      VALIDATION.computed(row, kilojoulePerMole(2, 25, 1, 35));
    }
  }
}
