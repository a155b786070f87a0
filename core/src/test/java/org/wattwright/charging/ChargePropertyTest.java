package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.fahrenheit;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliamperes;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.PackState;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** What every charge keeps, over invented settings. */
class ChargePropertyTest {
  /** 1e-9 in per cent. */
  private static final Percentage BALANCE = Percentage.withPercentage(1e-7);

  static Stream<Generator> cases() {
    return Generator.cases(40);
  }

  private static ChargeSimulation any(Generator random) {
    return TestParts.usual()
        .from(StateOfCharge.of(random.between(0, 0.6)))
        .to(StateOfCharge.of(random.between(0.7, 1)))
        .temperature(celsius(random.between(1, 40)))
        .voltageAtMost(volts(random.between(335, 350.4)))
        .auxiliaryPower(watts(random.between(0, 400)))
        .powerAtMost(kilowatts(random.between(1, 8)))
        .currentAtMost(amperes(random.between(3, 30)))
        .endCurrent(amperes(random.between(0.5, 6)));
  }

  /** Between the points of the table, where the voltage is a straight line. */
  private static double openCircuitJ(ChargeResult charge) {
    double temperatureK = Kind.TEMPERATURE.siValueOf(charge.curve().get(0).temperature());
    double from = charge.start().fraction();
    double energyJ = 0;
    for (double knot : new double[] {0.1, 0.5, 0.9, 1}) {
      double to = Math.min(knot, charge.end().fraction());
      if (to > from) {
        double meanV = (openCircuitV(from, temperatureK) + openCircuitV(to, temperatureK)) / 2;
        energyJ += meanV * (to - from) * 105 * 3600;
        from = to;
      }
    }
    return energyJ;
  }

  private static double openCircuitV(double soc, double temperatureK) {
    PackState state = PackState.of(StateOfCharge.of(soc), Kind.TEMPERATURE.ofSi(temperatureK));
    return Kind.VOLTAGE.siValueOf(TestParts.flatPack().openCircuitVoltage(state));
  }

  private static double si(Optional<Quantity<Energy>> energy) {
    return Kind.ENERGY.siValueOf(energy.orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void energyFromTheMainsIsStoredOrLost(Generator random) {
    ChargeResult charge = any(random).run();
    double storedJ = openCircuitJ(charge);
    assertThat(Kind.ENERGY.siValueOf(charge.storedEnergy())).isCloseTo(storedJ, BALANCE);
    double sumJ =
        storedJ
            + Kind.ENERGY.siValueOf(charge.packLoss())
            + Kind.ENERGY.siValueOf(charge.auxiliaryEnergy())
            + si(charge.chargerLoss());
    assertThat(si(charge.wallEnergy())).isCloseTo(sumJ, BALANCE);
    assertThat(si(charge.chargerLoss())).isPositive();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void noLimitIsOvershot(Generator random) {
    double voltageV = random.between(335, 350.4);
    double powerW = random.between(1000, 6000);
    double currentA = random.between(3, 20);
    ChargeResult charge =
        any(random)
            .voltageAtMost(volts(voltageV))
            .powerAtMost(watts(powerW))
            .currentAtMost(amperes(currentA))
            .run();
    for (ChargeMoment moment : charge.curve()) {
      assertThat(Kind.VOLTAGE.siValueOf(moment.voltage()))
          .isLessThanOrEqualTo(voltageV * (1 + 1e-12));
      assertThat(Kind.POWER.siValueOf(moment.power())).isLessThanOrEqualTo(powerW * (1 + 1e-12));
      assertThat(Kind.CURRENT.siValueOf(moment.current()))
          .isLessThanOrEqualTo(currentA * (1 + 1e-12));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void moreCurrentIsNeverSlower(Generator random) {
    ChargeSimulation simulation = any(random).to(percentCharge(80));
    double lessA = random.between(2, 20);
    double lessS = Kind.TIME.siValueOf(simulation.currentAtMost(amperes(lessA)).run().time());
    double moreS = Kind.TIME.siValueOf(simulation.currentAtMost(amperes(lessA * 1.1)).run().time());
    assertThat(moreS).isLessThanOrEqualTo(lessS * (1 + 1e-9));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aChargeInTwoPartsIsTheSameCharge(Generator random) {
    ChargeSimulation simulation = any(random).endCurrent(milliamperes(1));
    StateOfCharge between = StateOfCharge.of(random.between(0.61, 0.69));
    ChargeResult whole = simulation.run();
    ChargeResult first = simulation.to(between).run();
    ChargeResult second = simulation.from(between).run();
    double sumS = Kind.TIME.siValueOf(first.time()) + Kind.TIME.siValueOf(second.time());
    assertThat(Kind.TIME.siValueOf(whole.time())).isCloseTo(sumS, Percentage.withPercentage(1e-6));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void otherUnitsGiveTheSameCharge(Generator random) {
    double volt = random.typed(335, 350, 1);
    double ampere = random.typed(3, 20, 1);
    ChargeResult one =
        TestParts.usual()
            .voltageAtMost(volts(volt))
            .currentAtMost(amperes(ampere))
            .temperature(celsius(25))
            .run();
    ChargeResult other =
        TestParts.usual()
            .voltageAtMost(millivolts(volt * 1000))
            .currentAtMost(milliamperes(ampere * 1000))
            .temperature(fahrenheit(77))
            .run();
    assertThat(Kind.TIME.siValueOf(other.time()))
        .isCloseTo(Kind.TIME.siValueOf(one.time()), Percentage.withPercentage(1e-7));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void phasesCoverTheWholeCharge(Generator random) {
    ChargeResult charge = any(random).run();
    double sumS =
        charge.phases().stream().mapToDouble(p -> Kind.TIME.siValueOf(p.duration())).sum();
    assertThat(sumS).isCloseTo(Kind.TIME.siValueOf(charge.time()), Percentage.withPercentage(1e-9));
    for (int i = 1; i < charge.phases().size(); i++) {
      assertThat(charge.phases().get(i).from()).isEqualTo(charge.phases().get(i - 1).to());
      assertThat(charge.phases().get(i).limit()).isNotEqualTo(charge.phases().get(i - 1).limit());
    }
  }

  /** Efficiency table and its inversion are each other's inverse. */
  @ParameterizedTest
  @MethodSource("cases")
  void inputAndOutputOfAChargerBelongTogether(Generator random) {
    Charger charger = TestParts.charger().build();
    double outputW = random.between(50, 6600);
    assertThat(charger.outputW(charger.inputW(outputW)))
        .isCloseTo(outputW, Percentage.withPercentage(1e-10));
  }
}
