package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.gramsPerCubicCentimetre;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microohms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.ohmsPerKilometre;
import static org.wattwright.units.Measures.perKelvin;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.wattsPerMetreKelvin;

import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** Two values are equal if, and only if, every part of them is. */
class ConductorEqualityTest {
  private static final Source SHEET = Source.dataSheet("invented");

  private static void assertEveryPartCounts(Supplier<List<?>> values) {
    assertThat(values.get()).doesNotHaveDuplicates();
    List<?> again = values.get();
    for (int i = 0; i < again.size(); i++) {
      assertThat(again.get(i)).isEqualTo(values.get().get(i));
      assertThat(again.get(i)).hasSameHashCodeAs(values.get().get(i));
      assertThat(again.get(i)).isNotEqualTo(null).isNotEqualTo("a text");
    }
  }

  private static ConductorMaterial metal(
      String name, double conductivity, double perKelvin, double density) {
    return ConductorMaterial.named(name)
        .conductivity(conductivity)
        .temperatureCoefficient(perKelvin(perKelvin))
        .density(gramsPerCubicCentimetre(density))
        .specificHeatCapacity(joulesPerKilogramKelvin(380))
        .meltingPoint(celsius(900))
        .source(SHEET)
        .build();
  }

  @Test
  void metals() {
    assertEveryPartCounts(
        () ->
            List.of(
                ConductorMaterial.COPPER,
                ConductorMaterial.ALUMINIUM,
                metal("m", 0.5, 0.004, 8),
                metal("n", 0.5, 0.004, 8),
                metal("m", 0.6, 0.004, 8),
                metal("m", 0.5, 0.003, 8),
                metal("m", 0.5, 0.004, 7)));
    assertThat(metal("m", 0.5, 0.004, 8).source()).isEqualTo(SHEET);
  }

  private static InsulationMaterial insulation(String name, double conductivity, double limitC) {
    return InsulationMaterial.named(name)
        .thermalConductivity(wattsPerMetreKelvin(conductivity))
        .density(gramsPerCubicCentimetre(1.1))
        .specificHeatCapacity(joulesPerKilogramKelvin(1800))
        .temperatureLimit(celsius(limitC))
        .shortCircuitLimit(celsius(250))
        .build(SHEET);
  }

  @Test
  void insulations() {
    assertEveryPartCounts(
        () ->
            List.of(
                insulation("a", 0.2, 90),
                insulation("b", 0.2, 90),
                insulation("a", 0.3, 90),
                insulation("a", 0.2, 105)));
  }

  private static ConductorSize size(String name, double areaMm2, double ohmPerKm) {
    return ConductorSize.of(
        name,
        ConductorMaterial.COPPER,
        squareMillimetres(areaMm2),
        Given.dataSheet(ohmsPerKilometre(ohmPerKm), "invented"));
  }

  @Test
  void sizes() {
    assertEveryPartCounts(
        () ->
            List.of(
                size("a", 35, 0.55),
                size("b", 35, 0.55),
                size("a", 36, 0.55),
                size("a", 35, 0.56),
                ConductorSize.of(
                    "a",
                    ConductorMaterial.ALUMINIUM,
                    squareMillimetres(35),
                    Given.dataSheet(ohmsPerKilometre(0.55), "invented")),
                ConductorSize.metric(squareMillimetres(35), StrandClass.STRANDED),
                ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE),
                ConductorSize.metric(
                    squareMillimetres(35),
                    StrandClass.FLEXIBLE,
                    WireSurface.TINNED,
                    ConductorMaterial.COPPER)));
  }

  private static CableBuilder cable(String name) {
    return Cable.of(name, size("35 mm²", 35, 0.55), InsulationMaterial.XLPE);
  }

  @Test
  void cables() {
    assertEveryPartCounts(
        () ->
            List.of(
                cable("a").build(),
                cable("b").build(),
                Cable.of("a", size("35 mm²", 35, 0.56), InsulationMaterial.XLPE).build(),
                cable("a").emissivity(0.8).build(),
                cable("a").conductorDiameter(millimetres(8)).build(),
                cable("a").outerDiameter(millimetres(12)).build(),
                cable("a").build().withGenericGeometry(),
                cable("a").conductorDiameter(millimetres(8)).build().withGenericGeometry()));
    Cable half = cable("a").conductorDiameter(millimetres(8)).build();
    assertThat(half.missingGeometry()).containsExactly("Cable.outerDiameter of a");
    assertThat(half.insulation()).isEqualTo(InsulationMaterial.XLPE);
    assertThat(half.isScreened()).isFalse();
    assertThat(half.withGenericGeometry().conductorDiameter()).contains(millimetres(8));
  }

  private static Joint joint(String name, double microohms) {
    return Joint.of(name, Given.measured(microohms(microohms), "micro-ohmmeter"));
  }

  @Test
  void joints() {
    assertEveryPartCounts(
        () ->
            List.of(
                joint("a", 20),
                joint("b", 20),
                joint("a", 21),
                Joint.estimatedBoltedLug("a"),
                joint("a", 20).withThermalResistance(kelvinsPerWatt(5)),
                joint("a", 20).withTemperatureLimit(celsius(105))));
    assertThat(joint("a", 20).name()).isEqualTo("a");
    assertThat(joint("a", 20).temperatureLimit()).isEmpty();
    assertThat(joint("a", 20).withTemperatureLimit(celsius(105)).temperatureLimit())
        .contains(celsius(105));
    assertThat(joint("a", 0).expectedAtCommissioning().high()).isEqualTo(microohms(0));
  }

  @Test
  void runs() {
    Cable cable = cable("a").build();
    Joint lug = joint("lug", 20);
    assertEveryPartCounts(
        () ->
            List.of(
                ConductorRun.of(cable, metres(3)),
                ConductorRun.of(cable("b").build(), metres(3)),
                ConductorRun.of(cable, metres(4)),
                ConductorRun.of(cable, metres(3)).withReturnLength(metres(1)),
                ConductorRun.of(cable, metres(3)).inParallel(2),
                ConductorRun.of(cable, metres(3)).withJoints(List.of(lug))));
    ConductorRun pair =
        ConductorRun.of(cable.withGenericGeometry(), metres(3))
            .withJoints(List.of(lug))
            .inParallel(2);
    assertThat(pair.joints()).containsExactly(lug);
    assertThat(pair.cable()).isEqualTo(cable.withGenericGeometry());
    assertThat(pair).hasToString("2 x 35 mm² a, 3 m out, 3 m back, 1 joints");
    double kgPerM = Kind.MASS_PER_LENGTH.siValueOf(pair.cable().massPerLength().orElseThrow());
    assertThat(Kind.MASS.siValueOf(pair.mass().orElseThrow()))
        .isCloseTo(12 * kgPerM, org.assertj.core.data.Percentage.withPercentage(1e-10));
  }

  @Test
  void placesAndFaults() {
    assertEveryPartCounts(
        () ->
            List.of(
                Installation.freeAir(celsius(40)),
                Installation.freeAir(celsius(41)),
                Installation.overHotSurface(celsius(40), celsius(80)),
                Installation.overHotSurface(celsius(40), celsius(81)),
                Installation.freeAir(celsius(40)).bundled(2),
                Installation.freeAir(celsius(40)).bundled(3),
                Installation.freeAir(celsius(40)).arranged(Arrangement.TOUCHING_LAYER, 2)));
    assertThat(Installation.freeAir(celsius(40)).bundled(3).loadedCables()).isEqualTo(3);
    assertEveryPartCounts(
        () ->
            List.of(
                FaultDuty.of(amperes(1000), seconds(1)),
                FaultDuty.of(amperes(500), seconds(4)),
                FaultDuty.of(amperes(1000), seconds(2)),
                FaultDuty.of(ampereSquaredSeconds(1e6)),
                FaultDuty.of(ampereSquaredSeconds(2e6))));
    assertThat(FaultDuty.of(ampereSquaredSeconds(1e6)).remark()).isEmpty();
  }

  private static Busbar bar(double widthMm, double thicknessMm) {
    return Busbar.of(ConductorMaterial.COPPER, millimetres(widthMm), millimetres(thicknessMm));
  }

  @Test
  void bars() {
    assertEveryPartCounts(
        () ->
            List.of(
                bar(20, 5),
                bar(25, 5),
                bar(20, 4),
                Busbar.of(ConductorMaterial.ALUMINIUM, millimetres(20), millimetres(5)),
                bar(20, 5).painted(),
                bar(20, 5).withEmissivity(0.3),
                bar(20, 5).withOrientation(Busbar.Orientation.FLAT),
                bar(20, 5).withTemperatureLimit(celsius(85)),
                bar(20, 5).sleeved(InsulationMaterial.PVC, millimetres(1)),
                bar(20, 5).sleeved(InsulationMaterial.PVC, millimetres(2))));
    Busbar cool = bar(20, 5).withTemperatureLimit(celsius(85));
    assertThat(cool.temperatureLimit()).isEqualTo(celsius(85));
    assertThat(cool.material()).isEqualTo(ConductorMaterial.COPPER);
    assertThat(cool.cover()).isEqualTo(Busbar.Cover.BARE);
    assertThat(cool.orientation()).isEqualTo(Busbar.Orientation.ON_EDGE);
    assertThat(cool.painted().cover()).isEqualTo(Busbar.Cover.PAINTED);
  }

  @Test
  void courses() {
    TransientHeating heating =
        TransientHeating.of(
            Conditions.cable(35, 0.554, 7.9, 11.7), Installation.freeAir(celsius(40)));
    assertEveryPartCounts(
        () ->
            List.of(
                heating.from(celsius(40), steady(100, 60)),
                heating.from(celsius(41), steady(100, 60)),
                heating.from(celsius(40), steady(110, 60)),
                heating.from(celsius(40), steady(100, 61))));
  }

  private static Profile<javax.measure.quantity.ElectricCurrent> steady(
      double currentA, double timeS) {
    return Profile.constant(Kind.CURRENT, amperes(currentA), seconds(timeS));
  }
}
