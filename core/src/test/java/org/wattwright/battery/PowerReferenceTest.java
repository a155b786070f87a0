package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.battery.Fixtures.AT_ONCE;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.linear;
import static org.wattwright.battery.Fixtures.source;
import static org.wattwright.battery.Fixtures.unlimited;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kelvins;
import static org.wattwright.units.Measures.millivoltsPerKelvin;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Power, energy, heat and Peukert's law against circuit theory and textbooks. */
class PowerReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("battery");

  static Stream<ReferenceRow> power() {
    return ReferenceRows.read("/battery/constant-power.csv").stream();
  }

  static Stream<ReferenceRow> rates() {
    return ReferenceRows.read("/battery/rates.csv").stream();
  }

  static Stream<ReferenceRow> heat() {
    return ReferenceRows.read("/battery/heat.csv").stream();
  }

  static Stream<ReferenceRow> peukert() {
    return ReferenceRows.read("/battery/peukert.csv").stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("power")
  void powerAgrees(ReferenceRow row) {
    int number = Integer.parseInt(row.id().substring(4));
    if (number == 11) {
      PowerResult asked = pack().currentAtPower(HALF, watts(310e3), AT_ONCE);
      assertThat(asked).isInstanceOf(PowerResult.AboveMaximum.class);
      assertThat(((PowerResult.AboveMaximum) asked).maximum().governing())
          .isEqualTo(Limit.POWER_TRANSFER);
      VALIDATION.computed(row, asked.isAvailable() ? "feasible" : "infeasible");
    } else if (number < 10) {
      VALIDATION.computed(row, operating(number));
    } else if (number <= 15) {
      VALIDATION.computed(row, limits(number));
    } else {
      VALIDATION.computed(row, energy(number));
    }
  }

  private static Pack pack() {
    return Fixtures.pack(source(350, 0.1).build());
  }

  private static double operating(int number) {
    double powerW = number == 1 ? 10e3 : number < 6 ? 50e3 : 200e3;
    PowerResult.OperatingPoint point =
        pack().currentAtPower(HALF, watts(powerW), AT_ONCE).orElseThrow();
    return switch (number) {
      case 1, 2, 6 -> Kind.CURRENT.siValueOf(point.current());
      case 3, 7 -> Kind.VOLTAGE.siValueOf(point.voltage());
      case 4, 8 -> Kind.POWER.siValueOf(point.heat());
      default -> point.efficiency();
    };
  }

  private static double limits(int number) {
    return switch (number) {
      case 10 -> largestW(source(350, 0.1));
      case 12 -> largestW(source(350, 0.1).minimumVoltage(volts(280)));
      case 13 ->
          largestW(
              source(350, 0.1).minimumVoltage(volts(280)).continuousDischargeCurrent(amperes(400)));
      case 14 ->
          -Kind.CURRENT.siValueOf(
              pack().currentAtPower(HALF, watts(-50e3), AT_ONCE).orElseThrow().current());
      default ->
          Kind.POWER.siValueOf(
              Fixtures.pack(source(395, 0.1).maximumVoltage(volts(403.2)).build())
                  .maximumChargePower(HALF, AT_ONCE)
                  .power());
    };
  }

  private static double largestW(CellBuilder cell) {
    return Kind.POWER.siValueOf(
        Fixtures.pack(cell.build()).maximumDischargePower(HALF, AT_ONCE).power());
  }

  private static double energy(int number) {
    if (number <= 17) {
      EnergyResult constant =
          pack()
              .usableEnergyAtPower(watts(50e3), percentCharge(100), percentCharge(0), celsius(25));
      return number == 16
          ? Kind.TIME.siValueOf(constant.time()) / 60
          : Kind.ENERGY.siValueOf(constant.energy()) / 3.6e6;
    }
    Pack linear =
        Fixtures.pack(unlimited(linear(345, 55), ResistanceTable.constant(ohms(0.08))).build());
    EnergyResult result =
        linear.usableEnergyAtPower(
            watts(number < 22 ? 30e3 : 90e3), percentCharge(100), percentCharge(10), celsius(25));
    return switch (number) {
      case 18, 22 -> Kind.TIME.siValueOf(result.time());
      case 19, 23 -> Kind.ENERGY.siValueOf(result.energy()) / 3.6e6;
      case 20, 24 ->
          (Kind.ENERGY.siValueOf(result.energy()) + Kind.ENERGY.siValueOf(result.heat())) / 3.6e6;
      default -> Kind.ENERGY.siValueOf(result.heat()) / 3600;
    };
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rates")
  void cycleEfficiencyAgrees(ReferenceRow row) {
    Pack pack = Fixtures.pack(source(330, 0.1).build());
    boolean equalCurrents = row.id().equals("EFF-003");
    double outV = Kind.VOLTAGE.siValueOf(pack.terminalVoltage(HALF, amperes(100)));
    double inV =
        Kind.VOLTAGE.siValueOf(pack.terminalVoltage(HALF, amperes(equalCurrents ? -100 : -25)));
    VALIDATION.computed(row, (equalCurrents ? 1 : 0.995) * outV / inV);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("heat")
  void heatAgrees(ReferenceRow row) {
    PackState state = PackState.of(percentCharge(50), kelvins(298.15));
    Pack cell =
        Fixtures.pack(
            source(3.3, 0.035 / 100).entropicCoefficient(millivoltsPerKelvin(0.1)).build());
    Pack cobalt =
        Fixtures.pack(
            source(3.7, 0.001).entropicCoefficient(millivoltsPerKelvin(-0.308648)).build());
    double ours =
        switch (row.id()) {
          case "HEA-001" -> Kind.POWER.siValueOf(cell.heat(state, amperes(100)).total());
          case "HEA-002" -> Kind.POWER.siValueOf(cell.heat(state, amperes(-100)).total());
          case "HEA-003" -> Kind.POWER.siValueOf(cell.heat(state, amperes(100)).irreversible());
          case "HEA-007" ->
              Kind.POWER.siValueOf(cobalt.heat(state, amperes(10)).reversible().orElseThrow());
          default -> throw new IllegalArgumentException(row.id());
        };
    VALIDATION.computed(row, ours);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("peukert")
  void peukertAgrees(ReferenceRow row) {
    VALIDATION.computed(row, peukert(row.id()));
  }

  private static double peukert(String id) {
    PeukertLaw book = PeukertLaw.of(ampereHours(42), hours(10), 1.107);
    PeukertLaw range = PeukertLaw.of(ampereHours(60), hours(10), 1.12);
    PeukertLaw reserve =
        PeukertLaw.fromRatings(
            PeukertLaw.Rating.ofCapacity(ampereHours(100), hours(20)),
            new PeukertLaw.Rating(amperes(25), minutes(180)));
    return switch (id) {
      case "PEU-001" ->
          PeukertLaw.fromRatings(
                  new PeukertLaw.Rating(amperes(4.2), hours(10)),
                  new PeukertLaw.Rating(amperes(33.6), hours(1)))
              .exponent();
      // At 1 A the Peukert capacity in Aᵏ·h is the capacity in A·h.
      case "PEU-002" -> Kind.CHARGE.siValueOf(book.capacityAt(amperes(1))) / 3600;
      case "PEU-003" -> Kind.TIME.siValueOf(book.dischargeTime(amperes(20))) / 3600;
      case "PEU-004" -> Kind.CHARGE.siValueOf(book.capacityAt(amperes(20))) / 3600;
      case "PEU-005" ->
          range.depthAfter(amperes(50), seconds(1))
              * Kind.CHARGE.siValueOf(range.capacityAt(amperes(1)))
              / 3600;
      case "PEU-006" -> Kind.CHARGE.siValueOf(range.capacityAt(amperes(1))) / 3600;
      case "PEU-007" -> range.depthAfter(amperes(20), hours(1));
      case "PEU-008" -> leadAcidPackOhm();
      case "PEU-009" ->
          Kind.TIME.siValueOf(
                  PeukertLaw.of(ampereHours(120), hours(20), 1.4).dischargeTime(amperes(120)))
              / 3600;
      case "PEU-010" ->
          Kind.TIME.siValueOf(
                  PeukertLaw.of(ampereHours(100), hours(100), 1.2).dischargeTime(amperes(5)))
              / 3600;
      case "PEU-011" -> reserve.exponent();
      case "PEU-012" -> Kind.TIME.siValueOf(reserve.dischargeTime(amperes(10))) / 3600;
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double leadAcidPackOhm() {
    Cell cell =
        unlimited(linear(2, 0.1), ResistanceTable.constant(ohms(1)))
            .resistance(CellEstimates.resistance(Chemistry.LEAD_ACID, ampereHours(60)))
            .build();
    Pack pack =
        Pack.of(BatteryModule.of(cell).series(6).build(), 26, 1).withLeadResistance(ohms(0.05));
    return Kind.RESISTANCE.siValueOf(pack.resistance(HALF, Direction.DISCHARGE));
  }
}
