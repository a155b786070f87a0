package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.days;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.milliamperes;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Source;
import org.wattwright.voltage.VoltageRange;

/** Equality, text and serialisation of every value type of the package. */
class ChargingValueTypesTest {
  /** Makes the same value again, its text, and values that differ in one field each. */
  record Sample(String text, Supplier<Object> same, List<Supplier<Object>> others) {
    @Override
    public String toString() {
      return text;
    }
  }

  @SafeVarargs
  private static Sample sample(String text, Supplier<Object> same, Supplier<Object>... others) {
    return new Sample(text, same, List.of(others));
  }

  private static DcStation station() {
    return DcStation.of(
        "station", VoltageRange.between(volts(200), volts(500)), amperes(125), kilowatts(50));
  }

  private static LowVoltageLoad load() {
    return LowVoltageLoad.of("wipers", amperes(4.5)).duty(0.5);
  }

  private static LowVoltageBattery battery() {
    return LowVoltageBattery.of(ampereHours(45)).usable(0.6);
  }

  static Stream<Sample> samples() {
    return Stream.of(mains(), sources(), lowVoltage()).flatMap(List::stream);
  }

  private static List<Sample> mains() {
    return List.of(
        sample(
            "230 V, 32 A",
            () -> Supply.singlePhase(volts(230), amperes(32)),
            () -> Supply.singlePhase(volts(240), amperes(32)),
            () -> Supply.singlePhase(volts(230), amperes(16)),
            () -> Supply.threePhase(volts(230), amperes(32)),
            () ->
                Supply.singlePhase(volts(230), amperes(32)).withRule(ContinuousLoadRule.NEC_2023)),
        sample(
            "50 % for continuous loads (requirement: shop)",
            () -> new ContinuousLoadRule(0.5, Source.requirement("shop")),
            () -> ContinuousLoadRule.NEC_2023,
            () -> ContinuousLoadRule.NONE),
        sample(
            "pilot 50 %: 30 A",
            () -> TestParts.pilot(50),
            () -> TestParts.pilot(51),
            () -> TestParts.pilot(50).readBy(PilotEdition.SAE_J1772)),
        sample(
            "cable coded 100 Ω: 63 A",
            () -> CableCoding.ofResistor(ohms(100)),
            () -> CableCoding.ofResistor(ohms(220)),
            () -> CableCoding.ofResistor(ohms(100)).singlePhaseOnly()),
        sample(
            "2.74 kΩ: 8.979 V, B (connected)",
            () -> PilotCircuit.of(ohms(2740)),
            () -> PilotCircuit.of(ohms(882)),
            () -> new PilotCircuit(ohms(2740), volts(0.6))),
        sample(
            "230 V, 32 A; pilot 50 %: 30 A; cable coded 680 Ω: 20 A",
            () ->
                TestParts.GARAGE
                    .pilot(TestParts.pilot(50))
                    .cable(CableCoding.ofResistor(ohms(680))),
            () -> TestParts.GARAGE,
            () -> TestParts.GARAGE.pilot(TestParts.pilot(50)),
            () -> TestParts.GARAGE.cable(CableCoding.ofResistor(ohms(680))),
            () -> ChargingPoint.of(Supply.singlePhase(volts(240), amperes(32)))),
        sample(
            "32 A, 7.36 kW, limited by supply circuit",
            () -> TestParts.GARAGE.allows(TestParts.charger().build()),
            () -> TestParts.GARAGE.pilot(TestParts.pilot(50)).allows(TestParts.charger().build())));
  }

  private static List<Sample> sources() {
    return List.of(
        sample(
            "efficiency 86 % at 10 %, 94 % at 50 % load",
            () -> EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.94),
            () -> EfficiencyByLoad.constant(0.94),
            () -> EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.93)),
        sample(
            "100 % at 40 °C, 0 % at 60 °C",
            () -> DeratingByTemperature.from(celsius(40), 1).and(celsius(60), 0),
            () -> DeratingByTemperature.from(celsius(40), 1)),
        sample(
            "charger (6.6 kW, 32 A, operating 200 V … 420 V)",
            () -> TestParts.charger().build(),
            () -> TestParts.charger().maximumPower(kilowatts(7)).build(),
            () -> TestParts.charger().maximumInputCurrent(amperes(30)).build(),
            () -> TestParts.charger().maximumInputPower(kilowatts(7)).build(),
            () -> TestParts.charger().maximumCurrent(amperes(24)).build(),
            () -> TestParts.charger().threePhase().build(),
            () -> TestParts.charger().powerFactor(0.98).build(),
            () -> TestParts.charger().efficiency(EfficiencyByLoad.constant(0.9)).build(),
            () -> TestParts.charger().derating(DeratingByTemperature.from(celsius(9), 1)).build(),
            () -> TestParts.charger().capacitance(microfarads(20)).build(),
            () -> TestParts.charger().mass(kilograms(7)).build()),
        sample(
            "station (50 kW, 125 A, 200 V … 500 V)",
            () -> station(),
            () -> station().withEfficiency(0.95),
            () -> DcStation.of("station", station().voltages(), amperes(100), kilowatts(50)),
            () -> DcStation.of("station", station().voltages(), amperes(125), kilowatts(60))),
        sample(
            "180 kJ/K, 6 W/K to 10 °C",
            () -> AmbientCooling.of(kilojoulesPerKelvin(180), wattsPerKelvin(6), celsius(10)),
            () -> AmbientCooling.of(kilojoulesPerKelvin(181), wattsPerKelvin(6), celsius(10)),
            () -> AmbientCooling.of(kilojoulesPerKelvin(180), wattsPerKelvin(6), celsius(11))),
        sample(
            "0 s, 20 %: 21.18 A at 311.7 V, limited by charger output power",
            () -> TestParts.usual().run().curve().get(0),
            () -> TestParts.usual().from(percentCharge(30)).run().curve().get(0)),
        sample(
            "20 % … 30 % in 30 min, 3.284 kW·h: charger output power",
            () -> TestParts.usual().to(percentCharge(30)).run().phases().get(0),
            () -> TestParts.usual().to(percentCharge(40)).run().phases().get(0)));
  }

  private static List<Sample> lowVoltage() {
    return List.of(
        sample(
            "converter (900 W at 13.8 V, operating 200 V … 420 V)",
            () -> TestParts.converter().build(),
            () -> TestParts.converter().outputVoltage(volts(14)).build(),
            () -> TestParts.converter().maximumOutputPower(watts(901)).build(),
            () -> TestParts.converter().efficiency(EfficiencyByLoad.constant(0.91)).build(),
            () -> TestParts.converter().derating(DeratingByTemperature.from(celsius(9), 1)).build(),
            () -> TestParts.converter().capacitance(microfarads(20)).build(),
            () -> TestParts.converter().mass(kilograms(2)).build()),
        sample(
            "wipers, 4.5 A, 50 % of the time",
            () -> load(),
            () -> load().duty(0.6),
            () -> load().peak(amperes(9)),
            () -> load().essential(),
            () -> load().asleep(milliamperes(1)),
            () -> load().awake(amperes(1), minutes(1)),
            () -> LowVoltageLoad.ofPower("wipers", watts(60)).duty(0.5),
            () -> LowVoltageLoad.of("fan", amperes(4.5)).duty(0.5)),
        sample(
            "45 A·h, 60 % usable",
            () -> battery(),
            () -> battery().usable(0.7),
            () -> battery().peukert(hours(20), 1.1),
            () -> battery().peakCurrent(amperes(200)),
            () -> LowVoltageBattery.of(ampereHours(46)).usable(0.6)),
        sample(
            "30 min without converter, 21 d parked, supply C (9 V … 16 V)",
            () -> new LowVoltageTargets(minutes(30), days(21), LowVoltageSupply.C),
            () -> new LowVoltageTargets(minutes(31), days(21), LowVoltageSupply.C),
            () -> new LowVoltageTargets(minutes(30), days(21), LowVoltageSupply.D)),
        sample(
            "178.4 W on average, 229.4 W all on, 332.9 W at the peak",
            () -> TestParts.budget(),
            () -> TestParts.budget().recharge(hours(2)),
            () -> LowVoltageBudget.of(TestParts.budget().loads(), battery(), volts(14))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void valuesKeepTheContract(Sample sample) throws IOException, ClassNotFoundException {
    Object value = sample.same().get();
    assertThat(value).isEqualTo(sample.same().get()).hasSameHashCodeAs(sample.same().get());
    assertThat(value).hasToString(sample.text());
    assertThat(copy(value)).isEqualTo(value).hasToString(sample.text());
    assertThat(value.equals(null)).isFalse();
    for (Supplier<Object> other : sample.others()) {
      assertThat(other.get()).isNotEqualTo(value).hasSameClassAs(value);
      assertThat(other.get().hashCode()).isNotEqualTo(value.hashCode());
      assertThat(copy(other.get())).isEqualTo(other.get());
    }
  }

  private static Object copy(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
