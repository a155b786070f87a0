package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kelvins;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliwatts;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/** What must hold for every pack; the seed in the name repeats a case. */
class BatteryPropertyTest {
  private static final int CASES = 60;
  private static final double ROUNDING = 1e-12;

  static LongStream seeds() {
    return LongStream.range(1, 1 + CASES);
  }

  /** Random invented packs: curves, falling resistance tables, limits, unlike strings. */
  private static final class Generator {
    private final Random random;

    Generator(long seed) {
      random = new Random(seed);
    }

    double between(double low, double high) {
      return low + (high - low) * random.nextDouble();
    }

    OpenCircuitCurve curve() {
      double emptyV = between(2.6, 3.1);
      double lowerV = emptyV + between(0, 0.5);
      double upperV = lowerV + between(0, 0.1);
      return OpenCircuitCurve.at(celsius(25))
          .row(percentCharge(0), volts(emptyV))
          .row(percentCharge(between(5, 40)), volts(lowerV))
          .row(percentCharge(between(60, 95)), volts(upperV))
          .row(percentCharge(100), volts(upperV + between(0, 0.2)))
          .build();
    }

    ResistanceTable fallingResistance() {
      double warmMilliohm = between(0.3, 2);
      double coldMilliohm = warmMilliohm * between(1.5, 6);
      double emptyFactor = between(1, 2);
      return ResistanceTable.at(celsius(-20), celsius(25))
          .row(
              percentCharge(0),
              milliohms(coldMilliohm * emptyFactor),
              milliohms(warmMilliohm * emptyFactor))
          .row(percentCharge(100), milliohms(coldMilliohm), milliohms(warmMilliohm))
          .build();
    }

    Cell cell() {
      CellBuilder cell =
          Cell.of("cell", Chemistry.LFP)
              .capacity(Measures.ampereHours(between(20, 200)))
              .openCircuit(curve())
              .resistance(fallingResistance())
              .minimumVoltage(volts(2.5))
              .maximumVoltage(volts(4.2))
              .continuousDischargeCurrent(amperes(between(50, 200)))
              .continuousChargeCurrent(amperes(between(20, 100)))
              .pulseDischargeCurrent(amperes(between(200, 500)), seconds(30))
              .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(60)))
              .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
              .mass(Measures.kilograms(2));
      if (random.nextBoolean()) {
        cell.rcPair(RcPair.of(milliohms(between(0.2, 2)), seconds(between(5, 60))));
      }
      if (random.nextBoolean()) {
        cell.chargeResistance(fallingResistance());
      }
      return cell.build();
    }

    BatteryModule module() {
      return BatteryModule.of(cell())
          .series(1 + random.nextInt(8))
          .parallel(1 + random.nextInt(3))
          .interconnectResistance(milliohms(between(0, 0.5)))
          .build();
    }

    Pack alike() {
      return Pack.of(module(), 1 + random.nextInt(20), 1 + random.nextInt(3))
          .withLeadResistance(milliohms(between(0, 5)));
    }

    /** Strings of one module type but with links, and so resistances, of their own. */
    Pack unlike() {
      List<SeriesString> strings = new ArrayList<>();
      int series = 2 + random.nextInt(10);
      BatteryModule other = module();
      for (int k = 0; k < 3; k++) {
        BatteryModule module =
            BatteryModule.of(cell()).series(other.series()).parallel(other.parallel()).build();
        strings.add(
            SeriesString.of("string " + k)
                .group("bay", module, series)
                .link(milliohms(between(0, 3)))
                .build());
      }
      return Pack.of(strings).withLeadResistance(milliohms(between(0, 5)));
    }

    Pack pack() {
      return random.nextBoolean() ? alike() : unlike();
    }

    PackState state() {
      return PackState.of(StateOfCharge.of(between(0.05, 0.95)), celsius(between(1, 44)));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void stringCurrentsSumToTheLoadAndKirchhoffHolds(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.unlike();
    double loadA = generator.between(-300, 600);
    List<PackState> states = List.of(generator.state(), generator.state(), generator.state());
    StringSharing sharing = pack.stringCurrents(states, amperes(loadA));
    double sumA = 0;
    for (int k = 0; k < 3; k++) {
      double currentA = Kind.CURRENT.siValueOf(sharing.currents().get(k));
      sumA += currentA;
      SeriesString string = pack.strings().get(k);
      Pack alone = Pack.of(List.of(string));
      Direction direction = currentA >= 0 ? Direction.DISCHARGE : Direction.CHARGE;
      double openV = Kind.VOLTAGE.siValueOf(alone.openCircuitVoltage(states.get(k)));
      double ohm = Kind.RESISTANCE.siValueOf(alone.resistance(states.get(k), direction));
      assertThat(openV - currentA * ohm)
          .as("voltage round the loop of string %d", k)
          .isCloseTo(Kind.VOLTAGE.siValueOf(sharing.voltage()), within(1e-9));
    }
    assertThat(sumA).isCloseTo(loadA, within(1e-8));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void powerAndHeatBalanceAtEveryOperatingPoint(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.alike();
    PackState state = generator.state();
    PowerLimit most = pack.maximumDischargePower(state, seconds(10));
    double powerW = Kind.POWER.siValueOf(most.power()) * generator.between(0.01, 1);
    PowerResult.OperatingPoint point =
        pack.currentAtPower(state, watts(powerW), seconds(10)).orElseThrow();
    double currentA = Kind.CURRENT.siValueOf(point.current());
    double openV = Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(state));
    assertThat(currentA * Kind.VOLTAGE.siValueOf(point.voltage()))
        .isCloseTo(powerW, within(1e-9 * powerW));
    assertThat(powerW + Kind.POWER.siValueOf(point.heat()))
        .isCloseTo(openV * currentA, within(1e-9 * openV * currentA));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void currentAtPowerSolvesUnlikeStringsBothWays(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.unlike();
    PackState state = generator.state();
    for (double sign : new double[] {1, -1}) {
      PowerLimit most =
          sign > 0
              ? pack.maximumDischargePower(state, seconds(5))
              : pack.maximumChargePower(state, seconds(5));
      double powerW = sign * Kind.POWER.siValueOf(most.power()) * generator.between(0, 1);
      PowerResult.OperatingPoint point =
          pack.currentAtPower(state, watts(powerW), seconds(5)).orElseThrow();
      assertThat(Kind.CURRENT.siValueOf(point.current()) * Kind.VOLTAGE.siValueOf(point.voltage()))
          .isCloseTo(powerW, within(1e-9 * Math.max(1, Math.abs(powerW))));
      assertThat(Math.abs(Kind.CURRENT.siValueOf(point.current())))
          .isLessThanOrEqualTo(Kind.CURRENT.siValueOf(most.current()) * (1 + 1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noStringAndNoCellIsBeyondItsLimitsAtTheLargestPower(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.unlike();
    PackState state = generator.state();
    PowerLimit most = pack.maximumDischargePower(state, seconds(0));
    StringSharing sharing = pack.stringCurrents(state, most.current());
    if (Kind.POWER.siValueOf(most.power()) == 0) {
      assertThat(most.current()).isEqualTo(amperes(0));
      return; // the strings exchange more than they stand before any load
    }
    double tightest = 0;
    for (int k = 0; k < 3; k++) {
      BatteryModule module = pack.strings().get(k).groups().get(0).module();
      Cell cell = module.cell();
      double cellA = Kind.CURRENT.siValueOf(sharing.currents().get(k)) / module.parallel();
      double ratedA =
          Kind.CURRENT.siValueOf(cell.pulseCurrent(Direction.DISCHARGE).orElseThrow().current());
      double cellV =
          Kind.VOLTAGE.siValueOf(
              Fixtures.pack(cell).terminalVoltage(state, amperes(Math.max(0, cellA))));
      assertThat(cellA).isLessThanOrEqualTo(ratedA * (1 + 1e-9));
      assertThat(cellV).isGreaterThanOrEqualTo(2.5 - 1e-9);
      tightest = Math.max(tightest, Math.max(cellA / ratedA, 2.5 / cellV));
    }
    if (most.governing() != Limit.POWER_TRANSFER) {
      assertThat(tightest).as("some cell is at its limit").isCloseTo(1, within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void morePowerTakesMoreCurrentAndLeavesLessVoltage(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.pack();
    PackState state = generator.state();
    double mostW = Kind.POWER.siValueOf(pack.maximumDischargePower(state, seconds(10)).power());
    double previousA = 0;
    double previousV = Double.POSITIVE_INFINITY;
    for (int i = 1; i <= 10; i++) {
      PowerResult.OperatingPoint point =
          pack.currentAtPower(state, watts(mostW * i / 10), seconds(10)).orElseThrow();
      assertThat(Kind.CURRENT.siValueOf(point.current())).isGreaterThan(previousA);
      assertThat(Kind.VOLTAGE.siValueOf(point.voltage())).isLessThan(previousV);
      previousA = Kind.CURRENT.siValueOf(point.current());
      previousV = Kind.VOLTAGE.siValueOf(point.voltage());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void colderNeverGivesMorePowerWhereResistanceFallsWithTemperature(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.pack();
    StateOfCharge soc = StateOfCharge.of(generator.between(0.05, 0.95));
    double colderW = 0;
    for (double celsius = -20; celsius <= 40; celsius += 10) {
      double powerW =
          Kind.POWER.siValueOf(
              pack.maximumDischargePower(PackState.of(soc, celsius(celsius)), seconds(10)).power());
      assertThat(powerW).isGreaterThanOrEqualTo(colderW * (1 - ROUNDING));
      colderW = powerW;
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void longerNeverGivesMorePower(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.pack();
    PackState state = generator.state();
    double shorterW = Double.POSITIVE_INFINITY;
    for (double durationS : new double[] {0, 1, 10, 30, 31, 600, 1e6}) {
      double powerW =
          Kind.POWER.siValueOf(pack.maximumDischargePower(state, seconds(durationS)).power());
      assertThat(powerW).isLessThanOrEqualTo(shorterW * (1 + ROUNDING));
      shorterW = powerW;
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void energyBalancesAndFallsWithPower(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.alike();
    double fullW =
        Kind.POWER.siValueOf(
            pack.maximumDischargePower(PackState.of(percentCharge(90), celsius(20)), minutes(60))
                .power());
    double previousJ = Double.POSITIVE_INFINITY;
    for (int i = 1; i <= 4; i++) {
      EnergyResult result =
          pack.usableEnergyAtPower(
              watts(fullW * i / 8), percentCharge(90), percentCharge(10), celsius(20));
      double energyJ = Kind.ENERGY.siValueOf(result.energy());
      double openJ = openCircuitJ(pack, result.end());
      assertThat(energyJ + Kind.ENERGY.siValueOf(result.heat()))
          .as("energy at open circuit = delivered + heat")
          .isCloseTo(openJ, within(1e-9 * openJ));
      assertThat(Kind.POWER.siValueOf(watts(fullW * i / 8)) * Kind.TIME.siValueOf(result.time()))
          .as("power times time")
          .isCloseTo(energyJ, within(1e-6 * energyJ));
      assertThat(energyJ).isLessThanOrEqualTo(previousJ * (1 + 1e-9));
      assertThat(Kind.ENERGY.siValueOf(result.errorBound())).isLessThan(1e-3 * energyJ);
      previousJ = energyJ;
    }
  }

  private static double openCircuitJ(Pack pack, StateOfCharge end) {
    SeriesString first = pack.strings().get(0);
    double meanV =
        Kind.VOLTAGE.siValueOf(
            first
                .groups()
                .get(0)
                .module()
                .cell()
                .openCircuit()
                .meanBetween(end, percentCharge(90), celsius(20)));
    return Kind.CHARGE.siValueOf(pack.capacity())
        * (0.9 - end.fraction())
        * meanV
        * first.cellsInSeries();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sameInputInOtherUnitsGivesTheSameAnswer(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.pack();
    double soc = generator.between(0.1, 0.9);
    double celsius = generator.between(1, 44);
    PackState state = PackState.of(StateOfCharge.of(soc), celsius(celsius));
    PackState other = PackState.of(StateOfCharge.of(soc), kelvins(celsius + 273.15));
    PowerLimit one = pack.maximumDischargePower(state, seconds(600));
    PowerLimit two = pack.maximumDischargePower(other, minutes(10));
    assertClose(Kind.POWER.siValueOf(two.power()), Kind.POWER.siValueOf(one.power()));
    double powerW = Kind.POWER.siValueOf(one.power()) / 2;
    assertClose(
        currentA(pack, state, watts(powerW)), currentA(pack, other, kilowatts(powerW / 1000)));
    assertClose(
        currentA(pack, state, watts(powerW)), currentA(pack, other, milliwatts(powerW * 1000)));
    Pack ohms = pack.withLeadResistance(ohms(0.003));
    Pack milliohms = pack.withLeadResistance(milliohms(3));
    assertClose(
        Kind.VOLTAGE.siValueOf(ohms.terminalVoltage(state, amperes(100))),
        Kind.VOLTAGE.siValueOf(milliohms.terminalVoltage(other, Measures.milliamperes(100_000))));
  }

  private static double currentA(
      Pack pack, PackState state, javax.measure.Quantity<javax.measure.quantity.Power> power) {
    return Kind.CURRENT.siValueOf(
        pack.currentAtPower(state, power, seconds(600)).orElseThrow().current());
  }

  private static void assertClose(double one, double two) {
    assertThat(one).isCloseTo(two, within(1e-12 * Math.abs(two)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void orderOfStringsDoesNotMatter(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.unlike();
    PackState state = generator.state();
    List<SeriesString> turned = new ArrayList<>(pack.strings());
    Collections.reverse(turned);
    Pack other = Pack.of(turned).withLeadResistance(pack.leadResistance());
    double loadA = generator.between(-100, 100);
    assertThat(Kind.VOLTAGE.siValueOf(other.terminalVoltage(state, amperes(loadA))))
        .isCloseTo(
            Kind.VOLTAGE.siValueOf(pack.terminalVoltage(state, amperes(loadA))), within(1e-10));
    PowerLimit one = pack.maximumDischargePower(state, seconds(10));
    PowerLimit two = other.maximumDischargePower(state, seconds(10));
    assertThat(Kind.POWER.siValueOf(two.power()))
        .isCloseTo(
            Kind.POWER.siValueOf(one.power()),
            within(1e-9 * Math.max(1, Kind.POWER.siValueOf(one.power()))));
    assertThat(two.governing()).isEqualTo(one.governing());
    assertClose(Kind.CHARGE.siValueOf(other.capacity()), Kind.CHARGE.siValueOf(pack.capacity()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void agedPackGivesNeitherMorePowerNorMoreEnergy(long seed) {
    Generator generator = new Generator(seed);
    Pack pack = generator.pack();
    Pack aged = pack.aged(Ageing.END_OF_TRACTION_LIFE);
    PackState state = generator.state();
    assertThat(Kind.POWER.siValueOf(aged.maximumDischargePower(state, seconds(10)).power()))
        .isLessThanOrEqualTo(
            Kind.POWER.siValueOf(pack.maximumDischargePower(state, seconds(10)).power()));
    assertThat(Kind.ENERGY.siValueOf(aged.nominalEnergy(celsius(25))))
        .isCloseTo(
            0.8 * Kind.ENERGY.siValueOf(pack.nominalEnergy(celsius(25))),
            within(1e-6 * Kind.ENERGY.siValueOf(pack.nominalEnergy(celsius(25)))));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void equalisationConservesChargeAndIsSymmetric(long seed) {
    Generator generator = new Generator(seed);
    BatteryModule module = generator.module();
    SeriesString one = SeriesString.of(module, 4);
    SeriesString two = SeriesString.of(module.aged(Ageing.of(0.8, 1.5)), 4);
    PackState state = generator.state();
    PackState other = generator.state();
    Equalisation join = Equalisation.between(one, state, two, other);
    Equalisation turned = Equalisation.between(two, other, one, state);
    assertThat(Kind.CURRENT.siValueOf(turned.initialCurrent()))
        .isCloseTo(-Kind.CURRENT.siValueOf(join.initialCurrent()), within(1e-9));
    double movedC = Kind.CHARGE.siValueOf(join.chargeMoved());
    assertThat(join.finalOfFirst().fraction())
        .isCloseTo(
            state.stateOfCharge().fraction() - movedC / Kind.CHARGE.siValueOf(one.capacity()),
            within(1e-12));
    assertThat(join.finalOfSecond().fraction())
        .isCloseTo(
            other.stateOfCharge().fraction() + movedC / Kind.CHARGE.siValueOf(two.capacity()),
            within(1e-12));
    assertThat(join.voltagesMeet()).isTrue();
    PackState endOne = PackState.of(join.finalOfFirst(), state.temperature());
    PackState endTwo = PackState.of(join.finalOfSecond(), other.temperature());
    assertThat(Kind.VOLTAGE.siValueOf(Fixtures.pack(one).openCircuitVoltage(endOne)))
        .isCloseTo(
            Kind.VOLTAGE.siValueOf(Fixtures.pack(two).openCircuitVoltage(endTwo)), within(1e-9));
    assertThat(Kind.ENERGY.siValueOf(join.heat())).isNotNegative();
  }

  /** An independent integration of the circuit in small steps of charge. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void equalisationMatchesSmallSteps(long seed) {
    Generator generator = new Generator(seed);
    BatteryModule module = generator.module();
    SeriesString one = SeriesString.of(module, 3);
    SeriesString two = SeriesString.of(module.aged(Ageing.of(0.7, 2)), 3);
    PackState full = PackState.of(percentCharge(95), celsius(20));
    PackState low = PackState.of(percentCharge(3), celsius(20));
    Equalisation join = Equalisation.between(one, full, two, low);
    double startA = Kind.CURRENT.siValueOf(join.initialCurrent());
    double stopA = startA / 4;
    int steps = 5_000;
    double stepC = Kind.CHARGE.siValueOf(join.chargeMoved()) / steps;
    double timeS = 0;
    double heatJ = 0;
    boolean below = false;
    for (int i = 0; i < steps; i++) {
      double movedC = (i + 0.5) * stepC;
      double differenceV = openV(one, 0.95 - movedC / c(one)) - openV(two, 0.03 + movedC / c(two));
      double ohm =
          ohm(one, 0.95 - movedC / c(one), Direction.DISCHARGE)
              + ohm(two, 0.03 + movedC / c(two), Direction.CHARGE);
      heatJ += differenceV * stepC;
      below = below || differenceV / ohm <= stopA;
      timeS += below ? 0 : stepC * ohm / differenceV;
    }
    assertThat(heatJ).isCloseTo(Kind.ENERGY.siValueOf(join.heat()), within(1e-4 * heatJ));
    assertThat(timeS)
        .isCloseTo(
            Kind.TIME.siValueOf(join.timeUntilBelow(amperes(stopA))), within(2e-3 * timeS + 0.01));
  }

  private static double c(SeriesString string) {
    return Kind.CHARGE.siValueOf(string.capacity());
  }

  private static double openV(SeriesString string, double soc) {
    return Kind.VOLTAGE.siValueOf(
        Fixtures.pack(string).openCircuitVoltage(PackState.of(StateOfCharge.of(soc), celsius(20))));
  }

  private static double ohm(SeriesString string, double soc, Direction direction) {
    return Kind.RESISTANCE.siValueOf(
        Fixtures.pack(string)
            .resistance(PackState.of(StateOfCharge.of(soc), celsius(20)), direction));
  }
}
