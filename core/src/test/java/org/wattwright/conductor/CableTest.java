package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.gramsPerCubicCentimetre;
import static org.wattwright.units.Measures.gramsPerMetre;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microohms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.perKelvin;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattsPerMetreKelvin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

class CableTest {
  private static final ConductorSize SIZE =
      ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE);

  private static CableBuilder builder() {
    return Cable.of("T-35", SIZE, InsulationMaterial.XLPE)
        .conductorDiameter(millimetres(7.9))
        .outerDiameter(millimetres(11.7));
  }

  @Test
  void readsBackWhatWasGiven() {
    Cable cable =
        builder()
            .insulationDiameter(millimetres(10))
            .screenDiameter(millimetres(10.5))
            .sheath(InsulationMaterial.PVC)
            .temperatureLimit(celsius(125))
            .shortCircuitLimit(celsius(240))
            .emissivity(0.8)
            .massPerLength(gramsPerMetre(390))
            .voltageRating(volts(1000))
            .minimumBendRadius(millimetres(47))
            .pricePerMetre(Price.of("12.5", "EUR"))
            .build();
    assertThat(cable.isScreened()).isTrue();
    assertThat(cable.conductorDiameter()).contains(millimetres(7.9));
    assertThat(cable.insulationDiameter()).contains(millimetres(10));
    assertThat(cable.screenDiameter()).contains(millimetres(10.5));
    assertThat(cable.outerDiameter()).contains(millimetres(11.7));
    assertThat(cable.temperatureLimit()).isEqualTo(celsius(125));
    assertThat(cable.shortCircuitLimit()).isEqualTo(celsius(240));
    assertThat(cable.emissivity()).isEqualTo(0.8);
    assertThat(cable.massPerLength()).contains(gramsPerMetre(390));
    assertThat(cable.voltageRating()).contains(volts(1000));
    assertThat(cable.minimumBendRadius()).contains(millimetres(47));
    assertThat(cable.pricePerMetre()).contains(Price.of("12.5", "EUR"));
    assertThat(cable.geometryBasis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(cable.withGenericGeometry()).isSameAs(cable);
    assertThat(cable).hasToString("T-35: 35 mm² class 5 copper, XLPE, 125 °C");
    assertThat(cable.toBuilder().build()).isEqualTo(cable).hasSameHashCodeAs(cable);
  }

  @Test
  void limitsComeFromTheInsulationUnlessTold() {
    Cable cable = builder().build();
    assertThat(cable.temperatureLimit()).isEqualTo(celsius(90));
    assertThat(cable.shortCircuitLimit()).isEqualTo(celsius(250));
    assertThat(cable.massPerLength()).isEmpty();
    assertThat(cable.withGenericGeometry().massPerLength()).isPresent();
    assertThat(cable.withGenericGeometry().geometryBasis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(cable.withBendRadiusFor(BendUse.FLEXIBLE_MOVING).minimumBendRadius())
        .contains(millimetres(4 * 11.7));
  }

  @Test
  void diametersMustGrowOutwards() {
    assertRejected(
        () -> builder().outerDiameter(millimetres(7)).build(),
        "Cable.outerDiameter must be > conductorDiameter 7.9 mm, but was 7 mm");
    assertRejected(
        () -> builder().screenDiameter(millimetres(10)).build(),
        "Cable.insulationDiameter must be given for a screened cable, but was missing");
    assertRejected(
        () -> builder().temperatureLimit(celsius(250)).build(),
        "Cable.shortCircuitLimit must be > temperatureLimit 250 °C, but was 250 °C");
    assertRejected(
        () -> builder().outerDiameter(millimetres(-1)),
        "Cable.outerDiameter must be > 0 and ≤ 500 mm, but was -1 mm");
    assertRejected(
        () -> builder().emissivity(Double.NaN),
        "Cable.emissivity must be from 0 to 1, but was NaN");
    assertRejected(
        () -> Cable.of(" ", SIZE, InsulationMaterial.PVC),
        "Cable.name must be a text, but was \" \"");
  }

  @Test
  void missingDiametersAreNamed() {
    Cable bare = Cable.of("bare", SIZE, InsulationMaterial.PVC).build();
    assertRejected(
        () -> SteadyHeating.of(bare, Installation.freeAir(celsius(20))),
        "Cable.conductorDiameter of bare must be given, or estimated by withGenericGeometry(), but"
            + " was missing");
    assertThat(bare.thermalResistance(metres(1))).isEmpty();
    assertThat(bare.withGenericGeometry().geometryBasis()).isEqualTo(Basis.ESTIMATED);
    assertThat(bare.withGenericGeometry().toString()).endsWith("geometry estimated");
    assertThat(
            AmpacityMethod.heatBalance()
                .ratingOf(bare, Installation.freeAir(celsius(20)))
                .<String>fold(rated -> "rated", AmpacityMethod.NotRated::missing))
        .isEqualTo("Cable.conductorDiameter of bare, Cable.outerDiameter of bare");
    assertRejected(
        () -> bare.withBendRadiusFor(BendUse.FLEXIBLE_FIXED),
        "Cable.outerDiameter must be given to work out a bend radius, but was missing in bare");
  }

  @Test
  void unknownSizesNameTheOnesThereAre() {
    assertThatThrownBy(() -> ConductorSize.metric(squareMillimetres(36), StrandClass.FLEXIBLE))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("25 mm², 35 mm², 50 mm²")
        .hasMessageEndingWith("but was 36 mm² class 5 plain copper");
    assertThatThrownBy(() -> ConductorSize.metric(squareMillimetres(35), StrandClass.SOLID))
        .hasMessageContaining("of a make the standards list");
    assertRejected(
        () -> ConductorSize.awg(21), "ConductorSize.gauge must be from -3 to 20, but was 21");
    assertThat(ConductorSize.awg(-1).name()).isEqualTo("2/0 AWG");
    assertThat(ConductorSize.awgStranded(4).name()).isEqualTo("4 AWG");
    assertThat(SIZE).hasToString("35 mm² class 5 plain copper, 0.554 Ω/km at 20 °C");
    ConductorSize road = ConductorSize.metric(squareMillimetres(35), StrandClass.ROAD_VEHICLE);
    assertThat(road.resistance().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(road.resistance().source().toString()).contains("from memory");
  }

  @Test
  void materialOfYourOwn() {
    ConductorMaterial brass =
        ConductorMaterial.named("brass")
            .conductivity(0.28)
            .temperatureCoefficient(perKelvin(0.0015))
            .density(gramsPerCubicCentimetre(8.5))
            .specificHeatCapacity(joulesPerKilogramKelvin(380))
            .meltingPoint(celsius(900))
            .source(Source.dataSheet("bar"))
            .build();
    assertThat(brass.conductivity()).isCloseTo(0.28, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(brass.resistanceRatioAt(celsius(120)))
        .isCloseTo(1.15, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(
            ShortCircuit.of(brass)
                .nonAdiabaticFactor(InsulationMaterial.PVC, SIZE.area(), seconds(1)))
        .isEmpty();
    assertThatThrownBy(() -> ConductorMaterial.named("x").conductivity(1).build())
        .hasMessage(
            "ConductorMaterial is missing 4 of 5 required fields: temperatureCoefficient, density, "
                + "specificHeatCapacity, meltingPoint");
    InsulationMaterial own =
        InsulationMaterial.named("thin wall")
            .thermalConductivity(wattsPerMetreKelvin(0.25))
            .density(gramsPerCubicCentimetre(1.1))
            .specificHeatCapacity(joulesPerKilogramKelvin(1800))
            .temperatureLimit(celsius(150))
            .shortCircuitLimit(celsius(300))
            .build(Source.dataSheet("cable"));
    assertThat(own.properties().resistivityKmPerW()).isEqualTo(4);
    assertThat(own.source().toString()).isEqualTo("data sheet: cable");
    assertThatThrownBy(() -> InsulationMaterial.named("x").build(Source.PHYSICS))
        .hasMessageContaining("missing 5 of 5");
  }

  @Test
  void copperMelts() {
    FaultDuty bolt = FaultDuty.of(amperes(50_000), seconds(1));
    ShortCircuit copper = ShortCircuit.of(ConductorMaterial.COPPER);
    assertThat(copper.finalTemperature(SIZE.area(), bolt, celsius(90))).isEmpty();
    assertThat(bolt).hasToString("50000 A for 1 s");
    assertThat(FaultDuty.of(ampereSquaredSeconds(9e5)).toString()).contains("A²·s");
    assertThat(FaultDuty.of(ampereSquaredSeconds(9e5)).current()).isEmpty();
    assertThat(bolt.current()).contains(amperes(50_000));
    assertThat(bolt.duration()).contains(seconds(1));
    assertRejected(
        () -> copper.withstand(SIZE.area(), celsius(90), celsius(80)),
        "ShortCircuit.end must be > initial temperature 90 °C, but was 80 °C");
    assertRejected(
        () -> FaultDuty.of(amperes(1), seconds(0)),
        "FaultDuty.duration must be > 0 s, but was 0 s");
  }

  @Test
  void installationsRefuseWhatNoMethodCovers() {
    Installation shop = Installation.freeAir(celsius(40));
    assertRejected(
        () -> shop.bundled(10), "Installation.loadedCables must be from 1 to 9, but was 10");
    assertRejected(
        () -> shop.arranged(Arrangement.CONDUIT, 41),
        "Installation.loadedCables must be from 1 to 40, but was 41");
    assertRejected(
        () -> Installation.overHotSurface(celsius(60), celsius(50)),
        "Installation.hotSurface must be ≥ the air temperature 60 °C, but was 50 °C");
    assertRejected(
        () -> Installation.freeAir(celsius(250)),
        "Installation.air must be from -50 to 200 °C, but was 250 °C");
    assertThatThrownBy(
            () ->
                Installation.overHotSurface(celsius(60), celsius(80))
                    .arranged(Arrangement.CONDUIT, 2))
        .hasMessageContaining("conduit over a hot surface");
    Busbar bar = Busbar.of(ConductorMaterial.COPPER, millimetres(20), millimetres(3));
    assertThatThrownBy(() -> SteadyHeating.of(bar, shop.bundled(2)))
        .hasMessageContaining("alone in free air for a busbar");
    assertThat(shop.arranged(Arrangement.CONDUIT, 2).basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(shop.arranged(Arrangement.CONDUIT, 4).currentFactor())
        .isCloseTo(0.64 * 0.8, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(shop.bundled(4)).hasToString("40 °C air, 4 cables bundled");
    assertThat(Installation.overHotSurface(celsius(60), celsius(110)))
        .hasToString("60 °C air over a surface at 110 °C, alone in free air");
  }

  @Test
  void tablesRateOnlyWhatTheyCover() {
    Cable cable = builder().build();
    Cable stranded =
        Cable.of(
                "f",
                ConductorSize.metric(squareMillimetres(35), StrandClass.STRANDED),
                InsulationMaterial.PVC)
            .build();
    assertThat(rate(AmpacityTable.VDE_FREE_AIR, stranded, Installation.freeAir(celsius(30))))
        .isEqualTo("158 A");
    assertThat(
            rate(AmpacityTable.VDE_FREE_AIR, cable, Installation.freeAir(celsius(30)).bundled(2)))
        .isEqualTo("126.4 A");
    assertThat(
            rate(
                AmpacityTable.VDE_FREE_AIR,
                cable,
                Installation.overHotSurface(celsius(30), celsius(60))))
        .startsWith("VDE_FREE_AIR: does not cover");
    assertThat(rate(AmpacityTable.VDE_FREE_AIR, cable, Installation.freeAir(celsius(68))))
        .startsWith("VDE_FREE_AIR: does not cover");
    assertThat(rate(AmpacityTable.NEC_RACEWAY, cable, Installation.freeAir(celsius(30))))
        .startsWith("NEC_RACEWAY: no entry for 35 mm²");
    assertThat(
            rate(
                AmpacityTable.IEC_THREE_TOUCHING,
                cable,
                Installation.freeAir(celsius(30)).bundled(2)))
        .startsWith("IEC_THREE_TOUCHING: its own arrangement only");
    assertThat(rate(AmpacityMethod.heatBalance(), cable, Installation.freeAir(celsius(30))))
        .endsWith(" A");
  }

  private static String rate(AmpacityMethod method, Cable cable, Installation installation) {
    return method
        .ratingOf(cable, installation)
        .fold(
            rated -> org.wattwright.units.Measures.format(rated.current(), Kind.CURRENT),
            AmpacityMethod.NotRated::missing);
  }

  @Test
  void jointsHeatDropAndExpect() {
    Joint measured =
        Joint.of("lug", Given.measured(microohms(30), "micro-ohmmeter"))
            .withThermalResistance(kelvinsPerWatt(10));
    assertThat(Kind.POWER.siValueOf(measured.heatAt(amperes(200))))
        .isCloseTo(1.2, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(Kind.VOLTAGE.siValueOf(measured.dropAt(amperes(200))))
        .isCloseTo(0.006, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(Kind.TEMPERATURE_DIFFERENCE.siValueOf(measured.riseAt(amperes(200)).orElseThrow()))
        .isCloseTo(12, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(measured.expectedAtCommissioning().high()).isEqualTo(microohms(45));
    Joint guess = Joint.estimatedBoltedLug("battery lug");
    assertThat(guess.resistance().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(Kind.RESISTANCE.siValueOf(guess.expectedAtCommissioning().high()))
        .isCloseTo(60e-6, org.assertj.core.data.Offset.offset(1e-15));
    assertThat(guess.riseAt(amperes(10))).isEmpty();
    assertThat(guess).hasToString("battery lug, 20 µΩ estimated");
    ConductorRun run =
        ConductorRun.of(builder().build(), metres(4)).withJoints(List.of(guess, measured));
    var expected = run.expectedResistanceAt(celsius(20));
    double cablesOhm = 8 * 0.554e-3;
    assertThat(Kind.RESISTANCE.siValueOf(expected.low()))
        .isCloseTo(0.9 * cablesOhm + 5e-6 + 15e-6, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(Kind.RESISTANCE.siValueOf(expected.high()))
        .isCloseTo(cablesOhm + 60e-6 + 45e-6, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(run.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(run.mass()).isEmpty();
    assertThat(run.cableLength()).isEqualTo(metres(8));
    assertThat(run.inParallel(2).loopResistanceAt(celsius(20)))
        .isEqualTo(Kind.RESISTANCE.ofSi(cablesOhm / 2 + 50e-6));
    assertThat(run.loopInductance(millimetres(12))).isPresent();
    assertThat(run).hasToString("35 mm² T-35, 4 m out, 4 m back, 2 joints");
    assertRejected(
        () -> Joint.of("x", Given.measured(milliohms(-1), "?")),
        "Joint.resistance must be ≥ 0 Ω, but was -1 mΩ");
  }

  static List<Object> values() {
    return List.of(
        ConductorMaterial.COPPER,
        InsulationMaterial.SILICONE,
        SIZE,
        builder().build(),
        builder().build().withGenericGeometry(),
        Installation.overHotSurface(celsius(40), celsius(80)).bundled(3),
        FaultDuty.of(amperes(3000), seconds(0.1)),
        Joint.estimatedBoltedLug("lug"),
        ConductorRun.of(builder().build(), metres(2)),
        Busbar.of(ConductorMaterial.COPPER, millimetres(20), millimetres(3)).painted());
  }

  @ParameterizedTest
  @MethodSource("values")
  void valuesSurviveSerialisation(Object value) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(value).hasSameHashCodeAs(value);
    }
    assertThat(value).isNotEqualTo("something else");
  }

  private static void assertRejected(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatThrownBy(call).isInstanceOf(InvalidInputException.class).hasMessage(message);
  }
}
