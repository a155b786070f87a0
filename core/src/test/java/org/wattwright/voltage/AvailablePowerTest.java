package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.SeriesString;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Serialisation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

class AvailablePowerTest {
  /** 30 cells, 30 mΩ, 90 V to 102 V at rest, 400 A. */
  private static final Pack PACK = Pack.of(TestParts.module(6), 5, 1);

  private static final Quantity<Temperature> WARM = celsius(25);

  private static PowerPoint at(Pack pack, Device device, StateOfCharge stateOfCharge) {
    return WindowReview.of(pack, List.of(device), TestParts.conditions().build())
        .powerAvailable(device, List.of(WARM), List.of(stateOfCharge))
        .get(0);
  }

  private static DeviceBuilder inverter(VoltageWindow window) {
    return Device.of("inverter", DeviceRole.INVERTER, window);
  }

  private static double powerW(PowerPoint point) {
    return Kind.POWER.siValueOf(point.power());
  }

  @Test
  void powerOfTheDeviceWhereThePackHasMore() {
    PowerPoint point =
        at(
            PACK,
            inverter(TestParts.window(60, 120)).maximumPower(kilowatts(20)).build(),
            percentCharge(50));
    assertThat(powerW(point)).isCloseTo(20_000, within(1e-8));
    double currentA = 2 * 20_000 / (96 + Math.sqrt(96 * 96 - 4 * 0.03 * 20_000));
    assertThat(TestParts.voltsOf(point.voltage())).isCloseTo(96 - 0.03 * currentA, within(1e-10));
    assertThat(point.limitedBy()).isEqualTo("power of inverter");
  }

  @Test
  void currentOfTheDevice() {
    PowerPoint point =
        at(
            PACK,
            inverter(TestParts.window(60, 120)).maximumCurrent(amperes(100)).build(),
            percentCharge(50));
    assertThat(powerW(point)).isCloseTo(100 * (96 - 3), within(1e-8));
    assertThat(point.limitedBy()).isEqualTo("current of inverter");
  }

  @Test
  void packWhereTheDeviceTakesMore() {
    PowerPoint point =
        at(
            PACK,
            inverter(TestParts.window(60, 120)).maximumPower(kilowatts(200)).build(),
            percentCharge(50));
    assertThat(powerW(point)).isCloseTo(400 * (96 - 12), within(1e-8));
    assertThat(point.limitedBy()).isEqualTo("cell current");
  }

  @Test
  void bottomOfTheWindowCutsOff() {
    // 96 V − I·30 mΩ = 90 V at 200 A.
    PowerPoint point = at(PACK, inverter(TestParts.window(90, 120)).build(), percentCharge(50));
    assertThat(powerW(point)).isCloseTo(200 * 90, within(1e-8));
    assertThat(point.limitedBy()).isEqualTo("voltage window of inverter");
  }

  @Test
  void lowerSlopeMeetsTheSaggingVoltage() {
    // 60 kW at 90 V, nothing at 80 V: 6 kW a volt. 6000·(96 − 0.03·I − 80) = I·(96 − 0.03·I).
    Device device =
        inverter(TestParts.window(80, 120).fullPerformance(TestParts.range(90, 120)))
            .maximumPower(kilowatts(60))
            .build();
    double currentA = (276 - Math.sqrt(276 * 276 - 4 * 0.03 * 96_000)) / 0.06;
    PowerPoint point = at(PACK, device, percentCharge(50));
    assertThat(powerW(point)).isCloseTo(currentA * (96 - 0.03 * currentA), within(1e-7));
    assertThat(point.limitedBy()).isEqualTo("voltage window of inverter");
  }

  @Test
  void upperSlopeStopsWhatCouldOnlyBeReachedFromBelow() {
    // At rest 102 V: a tenth of 10 kW. More load would lift the derating, but 1 kW cannot sag it.
    Device device =
        inverter(TestParts.window(60, 103).fullPerformance(TestParts.range(60, 93)))
            .maximumPower(kilowatts(10))
            .build();
    double currentA = (72 - Math.sqrt(72 * 72 - 4 * 0.03 * 1000)) / 0.06;
    PowerPoint point = at(PACK, device, percentCharge(100));
    assertThat(powerW(point)).isCloseTo(currentA * (102 - 0.03 * currentA), within(1e-7));
    assertThat(point.limitedBy()).isEqualTo("voltage window of inverter");
  }

  @Test
  void upperSlopeIsPassedWhereTheSagIsSteepEnough() {
    // 60 kW over 5 V is 12 kW a volt: every ampere sags 30 mV and frees 360 W, more than it draws.
    Device device =
        inverter(TestParts.window(60, 103).fullPerformance(TestParts.range(60, 98)))
            .maximumPower(kilowatts(60))
            .maximumCurrent(amperes(300))
            .build();
    PowerPoint point = at(PACK, device, percentCharge(100));
    assertThat(powerW(point)).isCloseTo(300 * (102 - 9), within(1e-7));
    assertThat(point.limitedBy()).isEqualTo("current of inverter");
  }

  @Test
  void nothingOutsideTheWindow() {
    for (Device device :
        List.of(
            inverter(TestParts.window(60, 95)).maximumPower(kilowatts(10)).build(),
            inverter(TestParts.window(97, 120)).maximumPower(kilowatts(10)).build())) {
      PowerPoint point = at(PACK, device, percentCharge(50));
      assertThat(powerW(point)).isZero();
      assertThat(TestParts.voltsOf(point.voltage())).isCloseTo(96, within(1e-10));
      assertThat(point.limitedBy()).isEqualTo("voltage window of inverter");
    }
  }

  @Test
  void nothingWhereTheCellsMayNotDischarge() {
    Device device = inverter(TestParts.window(60, 120)).maximumPower(kilowatts(10)).build();
    PowerPoint point =
        WindowReview.of(PACK, List.of(device), TestParts.conditions().build())
            .powerAvailable(device, List.of(celsius(-30)), List.of(percentCharge(50)))
            .get(0);
    assertThat(powerW(point)).isZero();
    assertThat(point.limitedBy()).isEqualTo("cell temperature");
  }

  @Test
  void aPackThatTouchesTheTopOfTheWindowWorks() {
    double topV = TestParts.voltsOf(PACK.openCircuitVoltage(PackState.of(percentCharge(50), WARM)));
    for (double factor : new double[] {1, 1 - 5e-13}) {
      Device device =
          inverter(TestParts.window(60, topV * factor)).maximumPower(kilowatts(10)).build();
      assertThat(powerW(at(PACK, device, percentCharge(50)))).isCloseTo(10_000, within(1e-8));
    }
  }

  @Test
  void takesTheHighEndOfAnEstimatedResistance() {
    BatteryModule estimated =
        TestParts.module(
            TestParts.cell()
                .resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(100)))
                .build(),
            30);
    Device device = inverter(TestParts.window(60, 120)).build();
    assertThat(powerW(at(Pack.of(estimated, 1, 1), device, percentCharge(50))))
        .isCloseTo(400 * (96 - 12), within(1e-8));
  }

  @Test
  void pointsComeTemperatureByTemperature() {
    Device device = inverter(TestParts.window(60, 120)).build();
    WindowReview review = WindowReview.of(PACK, List.of(device), TestParts.conditions().build());
    List<PowerPoint> points =
        review.powerAvailable(
            device, List.of(celsius(0), WARM), List.of(percentCharge(20), percentCharge(80)));
    assertThat(points)
        .extracting(PowerPoint::state)
        .containsExactly(
            PackState.of(percentCharge(20), celsius(0)),
            PackState.of(percentCharge(80), celsius(0)),
            PackState.of(percentCharge(20), WARM),
            PackState.of(percentCharge(80), WARM));
    assertThat(points.get(0))
        .hasToString("20 % at 0 °C: 32.16 kW at 80.4 V, limited by cell current");
    assertThat(Serialisation.copy(points.get(0))).isEqualTo(points.get(0));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> review.powerAvailable(device, List.of(), List.of(percentCharge(20))))
        .withMessage("temperatures must be a list with at least one element, but was empty");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> review.powerAvailable(device, List.of(WARM), List.of()))
        .withMessage("statesOfCharge must be a list with at least one element, but was empty");
  }

  static Stream<Generator> cases() {
    return Generator.cases(120);
  }

  private static Pack randomPack(Generator random) {
    BatteryModule first = TestParts.module(TestParts.randomCell(random), 30);
    if (random.chance(0.5)) {
      return Pack.of(first, 1, random.count(1, 3));
    }
    BatteryModule second = TestParts.module(TestParts.randomCell(random), random.count(29, 31));
    return Pack.of(
            List.of(
                SeriesString.of("A").group("left", first, 1).build(),
                SeriesString.of("B").group("right", second, 1).build()))
        .withLeadResistance(milliohms(random.between(0, 2)));
  }

  private static Device randomDevice(Generator random) {
    double[] endsV = random.rising(4, 60, 125);
    DeviceBuilder device =
        inverter(
            TestParts.window(endsV[0], endsV[3])
                .fullPerformance(TestParts.range(endsV[1], endsV[2])));
    if (random.chance(0.8)) {
      device.maximumPower(kilowatts(random.betweenDecades(1, 100)));
    }
    if (random.chance(0.5)) {
      device.maximumCurrent(amperes(random.between(20, 900)));
    }
    return device.build();
  }

  /** By small steps of current from rest, the other way round: the first that is refused. */
  private static double steppedW(Pack pack, Device device, PackState state) {
    double mostA = Kind.CURRENT.siValueOf(pack.maximumDischargePower(state, seconds(10)).current());
    double ratedW = device.maximumPower().map(Kind.POWER::siValueOf).orElse(1e12);
    double ratedA = device.maximumCurrent().map(Kind.CURRENT::siValueOf).orElse(1e12);
    int steps = 20_000;
    double reachedW = 0;
    for (int i = 0; i <= steps; i++) {
      double currentA = mostA * i / steps;
      Quantity<javax.measure.quantity.ElectricPotential> voltage =
          pack.terminalVoltage(state, amperes(currentA), seconds(10));
      double drawnW = currentA * TestParts.voltsOf(voltage);
      double takenW = ratedW * device.window().deratingAt(voltage);
      if (drawnW > takenW || currentA > ratedA) {
        return reachedW;
      }
      reachedW = drawnW;
    }
    return reachedW;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void agreesWithSmallStepsFromRest(Generator random) {
    Pack pack = randomPack(random);
    Device device = randomDevice(random);
    StateOfCharge soc = StateOfCharge.of(random.between(0, 1));
    PackState state = PackState.of(soc, WARM);
    double largestW = Kind.POWER.siValueOf(pack.maximumDischargePower(state, seconds(10)).power());
    double foundW = powerW(at(pack, device, soc));
    assertThat(foundW).isCloseTo(steppedW(pack, device, state), within(largestW / 5000 + 1e-9));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void neverMoreThanPackOrDeviceGiveAtThatVoltage(Generator random) {
    Pack pack = randomPack(random);
    Device device = randomDevice(random);
    PowerPoint point = at(pack, device, StateOfCharge.of(random.between(0, 1)));
    double foundW = powerW(point);
    assertThat(foundW)
        .isBetween(
            0.0,
            Kind.POWER.siValueOf(pack.maximumDischargePower(point.state(), seconds(10)).power()));
    if (foundW > 0) {
      double share = device.window().deratingAt(point.voltage());
      double ratedW = device.maximumPower().map(Kind.POWER::siValueOf).orElse(1e12);
      assertThat(foundW).isLessThanOrEqualTo(ratedW * share * (1 + 1e-9) + 1e-6);
      device
          .maximumCurrent()
          .ifPresent(
              most ->
                  assertThat(foundW / TestParts.voltsOf(point.voltage()))
                      .isLessThanOrEqualTo(Kind.CURRENT.siValueOf(most) * (1 + 1e-12)));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void aRatingInWattsGivesTheSame(Generator random) {
    Pack pack = randomPack(random);
    double[] endsV = random.rising(2, 60, 125);
    double ratedW = random.betweenDecades(1000, 100_000);
    StateOfCharge soc = StateOfCharge.of(random.between(0, 1));
    VoltageWindow window = TestParts.window(endsV[0], endsV[1]);
    double inWatts = powerW(at(pack, inverter(window).maximumPower(watts(ratedW)).build(), soc));
    double inKilowatts =
        powerW(at(pack, inverter(window).maximumPower(kilowatts(ratedW / 1000)).build(), soc));
    assertThat(inKilowatts).isCloseTo(inWatts, within(1e-12 * Math.max(1, inWatts)));
  }
}
