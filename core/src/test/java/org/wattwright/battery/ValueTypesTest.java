package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.flatCell;
import static org.wattwright.battery.Fixtures.flatModule;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilojoulesPerMole;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivoltsPerKelvin;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;

/** Equality, text and serialisation of every value type of the package. */
class ValueTypesTest {
  /** Makes the same value again, and values that differ in one field each. */
  record Sample(String name, Supplier<Object> same, List<Supplier<Object>> others) {
    @Override
    public String toString() {
      return name;
    }
  }

  @SafeVarargs
  private static Sample sample(String name, Supplier<Object> same, Supplier<Object>... others) {
    return new Sample(name, same, List.of(others));
  }

  private static CellBuilder full() {
    return flatCell()
        .rcPair(RcPair.of(milliohms(0.3), seconds(20)))
        .dimensions(Dimensions.of(millimetres(27), millimetres(148), millimetres(96)))
        .specificHeat(joulesPerKilogramKelvin(1100))
        .entropicCoefficient(millivoltsPerKelvin(0.1));
  }

  static Stream<Sample> samples() {
    return Stream.of(cells(), parts(), results(), laws()).flatMap(List::stream);
  }

  private static List<Sample> cells() {
    List<Supplier<Object>> others = new ArrayList<>();
    others.add(() -> full().capacity(ampereHours(104)).build());
    others.add(() -> full().resistance(ResistanceTable.constant(milliohms(1))).build());
    others.add(() -> full().chargeResistance(ResistanceTable.constant(milliohms(1))).build());
    others.add(() -> full().ohmicResistance(milliohms(0.5)).build());
    others.add(() -> full().rcPair(RcPair.of(milliohms(0.3), seconds(21))).build());
    others.add(() -> full().minimumVoltage(volts(2.4)).build());
    others.add(() -> full().maximumVoltage(volts(3.6)).build());
    others.add(() -> full().continuousDischargeCurrent(amperes(100)).build());
    others.add(() -> full().continuousChargeCurrent(amperes(50)).build());
    others.add(() -> full().pulseDischargeCurrent(amperes(300), seconds(30)).build());
    others.add(() -> full().pulseChargeCurrent(amperes(105), seconds(11)).build());
    others.add(
        () ->
            full()
                .chargeCurrentByTemperature(CurrentByTemperature.from(celsius(0), amperes(0)))
                .build());
    others.add(
        () ->
            full()
                .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(60)))
                .build());
    others.add(
        () -> full().chargeTemperatures(TemperatureRange.between(celsius(5), celsius(45))).build());
    others.add(() -> full().mass(kilograms(2)).build());
    others.add(
        () ->
            full()
                .dimensions(Dimensions.of(millimetres(28), millimetres(148), millimetres(96)))
                .build());
    others.add(() -> full().specificHeat(joulesPerKilogramKelvin(1000)).build());
    others.add(() -> full().entropicCoefficient(millivoltsPerKelvin(0.2)).build());
    others.add(() -> full().basis(CellProperty.CURRENT, Basis.MEASURED).build());
    others.add(() -> full().basis(CellProperty.RESISTANCE, Basis.ESTIMATED).build());
    others.add(() -> full().build().aged(Ageing.of(0.9, 1.2)));
    others.add(() -> full().openCircuit(Fixtures.linear(2.6, 0.8)).build());
    return List.of(new Sample("Cell", () -> full().build(), others));
  }

  private static BatteryModule.Builder module() {
    return BatteryModule.of(full().build()).name("module").series(6).parallel(2);
  }

  private static List<Sample> parts() {
    SeriesString string = SeriesString.of(flatModule(), 5);
    return List.of(
        sample(
            "BatteryModule",
            () -> module().build(),
            () -> module().name("other").build(),
            () -> module().series(7).build(),
            () -> module().parallel(3).build(),
            () -> module().interconnectResistance(milliohms(1)).build(),
            () -> module().mass(kilograms(30)).build(),
            () -> module().price(Price.of("100", "EUR")).build(),
            () -> BatteryModule.of(flatCell().build()).name("module").series(6).parallel(2).build(),
            () ->
                module()
                    .dimensions(Dimensions.of(millimetres(355), millimetres(152), millimetres(108)))
                    .build()),
        sample(
            "SeriesString",
            () -> SeriesString.of(flatModule(), 5),
            () -> SeriesString.of(flatModule(), 6),
            () -> SeriesString.of("other").group("one place", flatModule(), 5).build(),
            () ->
                SeriesString.of("string")
                    .group("one place", flatModule(), 5)
                    .link(milliohms(1))
                    .build()),
        sample(
            "Pack",
            () -> Pack.of(flatModule(), 5, 2),
            () -> Pack.of(flatModule(), 5, 3),
            () -> Pack.of(List.of(string)),
            () -> Pack.of(flatModule(), 5, 2).withLeadResistance(milliohms(1))),
        sample(
            "OpenCircuitCurve",
            () -> Fixtures.linear(3, 0.4),
            () -> Fixtures.linear(3, 0.5),
            () -> CellEstimates.openCircuit(Chemistry.NMC).value()),
        sample(
            "ResistanceTable",
            () -> ResistanceTable.constant(milliohms(1)),
            () -> ResistanceTable.constant(milliohms(2)),
            () -> ResistanceTable.quadratic(milliohms(1), milliohms(1.2))),
        sample(
            "CurrentByTemperature",
            () -> CurrentByTemperature.from(celsius(0), amperes(0)).and(celsius(15), amperes(50)),
            () -> CurrentByTemperature.from(celsius(0), amperes(0))),
        sample("PackState", () -> HALF, () -> PackState.of(percentCharge(50), celsius(26))),
        sample(
            "TemperatureRange",
            () -> TemperatureRange.between(celsius(0), celsius(45)),
            () -> TemperatureRange.between(celsius(1), celsius(45))),
        sample(
            "PulseCurrent",
            () -> new PulseCurrent(amperes(300), seconds(10)),
            () -> new PulseCurrent(amperes(300), seconds(11))),
        sample("Ageing", () -> Ageing.of(0.8, 2), () -> Ageing.of(0.8, 2.1)));
  }

  private static List<Sample> results() {
    Pack pack = Pack.of(flatModule(), 5, 2);
    SeriesString string = SeriesString.of(flatModule(), 5);
    PackState low = PackState.of(percentCharge(5), celsius(25));
    return List.of(
        sample(
            "PowerLimit",
            () -> pack.maximumDischargePower(HALF, seconds(10)),
            () -> pack.maximumChargePower(HALF, seconds(10))),
        sample(
            "PowerResult",
            () -> pack.currentAtPower(HALF, kilowatts(10), seconds(10)),
            () -> pack.currentAtPower(HALF, kilowatts(11), seconds(10)),
            () -> pack.currentAtPower(HALF, kilowatts(500), seconds(10))),
        sample(
            "AboveMaximum",
            () -> pack.currentAtPower(HALF, kilowatts(500), seconds(10)),
            () -> pack.currentAtPower(HALF, kilowatts(501), seconds(10))),
        sample(
            "EnergyResult",
            () -> energy(pack, 10),
            () -> energy(pack, 11),
            () -> energy(pack.aged(Ageing.of(0.8, 8)), 18)),
        sample(
            "Heat",
            () -> pack.heat(HALF, amperes(100)),
            () -> pack.heat(HALF, amperes(101)),
            () -> Fixtures.pack(full().build()).heat(HALF, amperes(100))),
        sample(
            "StringSharing",
            () -> pack.stringCurrents(HALF, amperes(100)),
            () -> pack.stringCurrents(HALF, amperes(101))),
        sample(
            "PulseResponse",
            () -> pack.pulseResponse(HALF, amperes(100), seconds(10)),
            () -> pack.pulseResponse(HALF, amperes(101), seconds(10)),
            () -> pack.pulseResponse(HALF, amperes(100), seconds(11)),
            () -> pack.pulseResponse(low, amperes(100), seconds(10))),
        sample(
            "Equalisation",
            () -> Equalisation.between(string, HALF, string, low),
            () -> Equalisation.between(string, low, string, low),
            () -> Equalisation.between(string, HALF, string, HALF),
            () -> Equalisation.between(string, HALF, string, low).withLeadResistance(milliohms(1)),
            () -> Equalisation.between(SeriesString.of(flatModule(), 4), HALF, string, low),
            () -> Equalisation.between(string, HALF, SeriesString.of(flatModule(), 4), low)));
  }

  private static EnergyResult energy(Pack pack, double powerKilowatt) {
    return pack.usableEnergyAtPower(
        kilowatts(powerKilowatt), percentCharge(90), percentCharge(10), celsius(20));
  }

  private static List<Sample> laws() {
    return List.of(
        sample(
            "SeriesBalance",
            () -> SeriesBalance.of("one", ampereHours(100), percentCharge(50)),
            () -> SeriesBalance.of("two", ampereHours(100), percentCharge(50))),
        sample(
            "PeukertLaw",
            () -> PeukertLaw.of(ampereHours(42), hours(10), 1.1),
            () -> PeukertLaw.of(ampereHours(42), hours(10), 1.2)),
        sample(
            "PeukertLaw.Rating",
            () -> PeukertLaw.Rating.ofCapacity(ampereHours(42), hours(10)),
            () -> new PeukertLaw.Rating(amperes(25), hours(3))),
        sample(
            "ArrheniusLaw",
            () -> ArrheniusLaw.of(kilojoulesPerMole(20)),
            () -> ArrheniusLaw.of(kilojoulesPerMole(21))),
        sample(
            "ArrheniusLaw.Point",
            () -> new ArrheniusLaw.Point(milliohms(1), celsius(25)),
            () -> new ArrheniusLaw.Point(milliohms(2), celsius(25))),
        sample(
            "VoltageLimits",
            () -> CellEstimates.voltageLimits(Chemistry.LFP).value(),
            () -> CellEstimates.voltageLimits(Chemistry.NMC).value()));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void equalityCountsEveryField(Sample sample) {
    Object one = sample.same().get();
    Object two = sample.same().get();
    assertThat(one)
        .isEqualTo(two)
        .hasSameHashCodeAs(two)
        .isEqualTo(one)
        .hasToString(two.toString());
    assertThat(one).isNotEqualTo(null).isNotEqualTo("text");
    for (Supplier<Object> other : sample.others()) {
      assertThat(one).isNotEqualTo(other.get());
      assertThat(other.get()).isNotEqualTo(one);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void survivesSerialisation(Sample sample) throws IOException, ClassNotFoundException {
    Object one = sample.same().get();
    Object back = copy(one);
    assertThat(back).isEqualTo(one).isNotSameAs(one).hasToString(one.toString());
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

  @Test
  void aPackReadBackStillAnswers() throws IOException, ClassNotFoundException {
    Pack pack = Pack.of(flatModule(), 5, 2);
    Pack back = (Pack) copy(pack);
    assertThat(back.maximumDischargePower(HALF, seconds(10)))
        .isEqualTo(pack.maximumDischargePower(HALF, seconds(10)));
    assertThat(back.pulseResponse(HALF, amperes(10), seconds(1)))
        .isEqualTo(pack.pulseResponse(HALF, amperes(10), seconds(1)));
  }

  @Test
  void listsGivenInAreCopied() {
    List<SeriesString> strings = new ArrayList<>(List.of(SeriesString.of(flatModule(), 5)));
    Pack pack = Pack.of(strings);
    strings.add(SeriesString.of(flatModule(), 5));
    assertThat(pack.strings()).hasSize(1);

    List<SeriesBalance.Member> members = new ArrayList<>();
    members.add(new SeriesBalance.Member("one", ampereHours(1), StateOfCharge.FULL));
    SeriesBalance balance = new SeriesBalance(members);
    members.clear();
    assertThat(balance.members()).hasSize(1);
  }

  @Test
  void textReadsWellInJshell() {
    Pack pack = Pack.of(flatModule(), 5, 2);
    assertThat(pack).hasToString("2 strings, 10 modules, 420 A·h, 75 V … 109.5 V, 248 kg");
    assertThat(Pack.of(flatModule(), 5, 1))
        .hasToString("1 string of 5 modules, 210 A·h, 75 V … 109.5 V, 124 kg");
    assertThat(flatModule()).hasToString("flat module (6s2p, 210 A·h, 24.8 kg)");
    assertThat(flatCell().build()).hasToString("flat 105 (LFP, 105 A·h, 2.5 V … 3.65 V)");
    assertThat(HALF).hasToString("50 % at 25 °C");
    assertThat(Fixtures.linear(3, 0.4)).hasToString("open-circuit curve, 2 points, 3 V … 3.4 V");
    assertThat(ResistanceTable.constant(milliohms(0.7))).hasToString("0.7 mΩ");
    assertThat(flatCell().build().resistance(Direction.CHARGE))
        .hasToString("resistance table, 9 points, -20 °C … 25 °C");
    assertThat(new PulseCurrent(amperes(315), seconds(30))).hasToString("315 A for 30 s");
    assertThat(flatCell().build().chargeCurrentByTemperature().orElseThrow())
        .hasToString("0 A at 0 °C, 105 A at 15 °C");
    assertThat(PeukertLaw.of(ampereHours(42), hours(10), 1.107))
        .hasToString("42 A·h at 10 h, k = 1.107");
    assertThat(CellEstimates.voltageLimits(Chemistry.LFP).value())
        .hasToString("2 V, 2.5 V … 3.2 V … 3.65 V");
    assertThat(
            SeriesBalance.of("module 1", ampereHours(100), percentCharge(50))
                .and("module 2", ampereHours(96), percentCharge(45)))
        .hasToString("43.2 A·h out until module 2 is empty, 50 A·h in until module 1 is full");
    assertThat(new SeriesBalance.Member("module 2", ampereHours(96), percentCharge(45)))
        .hasToString("module 2 (96 A·h at 45 %)");
    assertThat(SeriesString.of("A").group("rails", flatModule(), 4).build())
        .hasToString("A: 4 × flat module in rails");
    assertThat(pack.currentAtPower(HALF, kilowatts(500), seconds(10)).toString())
        .startsWith("500 kW asked, at most ")
        .contains("limited by");
    assertThat(pack.heat(HALF, amperes(100)).toString()).endsWith("(reversible part not known)");
    assertThat(energy(pack, 10).toString()).endsWith(" down to 10 %");
    assertThat(flatCell()).hasToString("cell flat 105, to be built");
    assertThat(BatteryModule.of(flatCell().build())).hasToString("module flat 105, to be built");
    assertThat(BatteryModule.whole("salvaged", Chemistry.NMC, 6))
        .hasToString("module salvaged, to be built");
    assertThat(SeriesString.of("A")).hasToString("string A, to be built");
    assertThat(OpenCircuitCurve.at(celsius(25)))
        .hasToString("open-circuit curve of 0 rows, to be built");
    assertThat(ResistanceTable.at(celsius(25)))
        .hasToString("resistance table of 0 rows, to be built");
    assertThat(new Estimate.Band(0.5, 2)).isEqualTo(CellEstimates.RESISTANCE_BAND);
  }
}
