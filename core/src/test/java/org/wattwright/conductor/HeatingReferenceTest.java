package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.gramsPerCubicCentimetre;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.wattsPerMetreKelvin;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Source;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** The heat balance of a cable, with the air and the convection that it rests on. */
class HeatingReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> balances() {
    return CoveredRows.of("heat-balance");
  }

  @ParameterizedTest
  @MethodSource("balances")
  void heatBalanceAgrees(ReferenceRow row) {
    if (row.quantity().startsWith("thermal resistivity")) {
      String material = row.given("material");
      InsulationMaterial insulation =
          material.startsWith("XLPE")
              ? InsulationMaterial.XLPE
              : material.startsWith("PVC") ? InsulationMaterial.PVC : InsulationMaterial.EPR;
      VALIDATION.transcribed(
          row, 1 / Kind.THERMAL_CONDUCTIVITY.siValueOf(insulation.thermalConductivity()));
      return;
    }
    Cable cable = row.has("shielded cable") ? shielded() : balanceCable(row);
    if (row.quantity().contains("thermal resistance")) {
      VALIDATION.computed(
          row, Kind.THERMAL_RESISTANCE.siValueOf(cable.thermalResistance(metres(1)).orElseThrow()));
      return;
    }
    SteadyHeating heating =
        SteadyHeating.of(cable, Installation.freeAir(celsius(row.givenNumber("Ta"))));
    Quantity<ElectricCurrent> current =
        row.has("I")
            ? amperes(row.givenNumber("I"))
            : heating.ampacityAt(celsius(row.givenNumber("Tc")));
    SteadyState state = heating.at(current).orElseThrow();
    switch (row.quantity()) {
      case "continuous current from the heat balance", "continuous current" ->
          VALIDATION.computed(row, Kind.CURRENT.siValueOf(current));
      case "surface temperature at that current", "surface temperature" ->
          VALIDATION.computed(row, toCelsius(state.surface()));
      case "conductor temperature at a given current" ->
          VALIDATION.computed(row, toCelsius(state.conductor()));
      default -> VALIDATION.computed(row, Kind.POWER.siValueOf(state.heatOver(metres(1))));
    }
  }

  private static Cable balanceCable(ReferenceRow row) {
    if (!row.has("S")) {
      return Conditions.cable(50, 0.386, row.givenNumber("d_c"), row.givenNumber("D"));
    }
    String size = row.conditions().toString().replaceAll(".*R20=([0-9.]+).*", "$1");
    return Conditions.cable(
        row.givenNumber("S"),
        Double.parseDouble(size),
        row.givenNumber("d_c"),
        row.givenNumber("D"));
  }

  private static Cable shielded() {
    return Conditions.cable(35, 0.554, 7.9, 14.4).toBuilder()
        .insulationDiameter(millimetres(11.0))
        .screenDiameter(millimetres(11.6))
        .build();
  }

  static Stream<ReferenceRow> airAndConvection() {
    return CoveredRows.of("air-and-convection").filter(row -> !row.id().matches(EXAMPLES));
  }

  /**
   * Two books: at 300 K to 400 K the air of Incropera and DeWitt (from memory) conducts 2.5 %
   * better than that of the table carried here. Both are kept; a heat loss moves by less than 3 %.
   */
  @org.junit.jupiter.api.Test
  void airOfTheOtherBookAgreesWithinFourPerCent() {
    ReferenceRows.read("/conductor/air-and-convection.csv").stream()
        .filter(row -> row.source().startsWith("Incropera and DeWitt, Table A.4"))
        .filter(row -> !row.quantity().startsWith("volumetric"))
        .forEach(
            row ->
                org.assertj.core.api.Assertions.assertThat(airValue(row) / row.number())
                    .as(row.toString())
                    .isBetween(0.96, 1.04));
  }

  @ParameterizedTest
  @MethodSource("airAndConvection")
  void airAndConvectionAgree(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.contains("Nusselt")) {
      VALIDATION.computed(
          row, Convection.cylinderNusselt(row.givenNumber("Ra"), row.givenNumber("Pr")));
    } else if (quantity.startsWith("convection coefficient")) {
      VALIDATION.computed(
          row,
          Kind.HEAT_TRANSFER_COEFFICIENT.siValueOf(
              Convection.cylinderCoefficient(
                  millimetres(row.givenNumber("D")),
                  celsius(row.givenNumber("Ts")),
                  celsius(row.givenNumber("Ta")))));
    } else if (quantity.startsWith("radiation")) {
      VALIDATION.computed(row, radiation(row));
    } else {
      org.assertj.core.api.Assertions.assertThat(quantity).endsWith(" of air");
      air(row);
    }
  }

  private static double radiation(ReferenceRow row) {
    SurfaceLoss.Surroundings surroundings =
        SurfaceLoss.Surroundings.at(kelvin(row, row.has("Tsurr") ? "Tsurr" : "Ta"));
    return new CylinderLoss(surroundings, row.givenNumber("eps"), row.givenNumber("D") / 1000)
        .radiationWPerM(kelvin(row, "Ts"));
  }

  private static double kelvin(ReferenceRow row, String key) {
    return Kind.TEMPERATURE.siValueOf(row.given(key, Kind.TEMPERATURE));
  }

  private static double airValue(ReferenceRow row) {
    double filmK = Kind.TEMPERATURE.siValueOf(row.given("T", Kind.TEMPERATURE));
    return switch (row.quantity()) {
      case "thermal conductivity of air" -> AirProperties.conductivityWPerMK(filmK);
      case "kinematic viscosity of air" -> AirProperties.kinematicViscosityM2PerS(filmK);
      case "Prandtl number of air" -> AirProperties.prandtl(filmK);
      default -> 1 / filmK;
    };
  }

  private static void air(ReferenceRow row) {
    if (row.source().contains("A-15")) {
      VALIDATION.transcribed(row, airValue(row));
    } else {
      VALIDATION.computed(row, airValue(row));
    }
  }

  /** Worked examples of textbooks, with data of their own. */
  private static final String EXAMPLES = "C-04[1-9]|C-05[2-7]";

  static Stream<ReferenceRow> examples() {
    return CoveredRows.of("air-and-convection").filter(row -> row.id().matches(EXAMPLES));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void workedExamplesAgree(ReferenceRow row) {
    double ours =
        switch (row.id()) {
          case "C-041" -> hotWaterRayleigh();
          case "C-042" -> Convection.cylinderNusselt(hotWaterRayleigh(), row.givenNumber("Pr"));
          case "C-043" ->
              Kind.HEAT_TRANSFER_COEFFICIENT.siValueOf(
                  Convection.cylinderCoefficient(millimetres(80), celsius(70), celsius(20)));
          case "C-044" -> pipe(0.08, 1, 293.15).convectionWPerM(343.15) * 6;
          case "C-045" -> pipe(0.08, 1, 293).radiationWPerM(343) * 6;
          case "C-046" -> pipe(0.1, 0.8, 293.15).lossWPerM(423.15);
          case "C-047" -> pipe(0.1, 0.8, 293).radiationWPerM(423);
          case "C-049" -> Convection.cylinderNusselt(5218900, row.givenNumber("Pr"));
          case "C-052" -> bareWire(row).conductorK(row.givenNumber("I")) - 273.15;
          case "C-054" -> bareWire(row).currentA(row.givenNumber("T") + 273.15);
          default -> coveredWire(row);
        };
    VALIDATION.computed(row, ours);
  }

  private static double hotWaterRayleigh() {
    return Convection.cylinderRayleigh(millimetres(80), celsius(70), celsius(20));
  }

  private static CylinderLoss pipe(double diameterM, double emissivity, double aroundK) {
    return new CylinderLoss(SurfaceLoss.Surroundings.at(aroundK), emissivity, diameterM);
  }

  /** Of constant resistance, h as the example gives it. */
  private static HeatedConductor bareWire(ReferenceRow row) {
    double diameterM = row.givenNumber(row.has("d") ? "d" : "D") / 1000;
    double airK = (row.id().equals("C-052") ? 20 : 27) + 273.15;
    SurfaceLoss loss =
        new GivenCoefficientLoss(
            SurfaceLoss.Surroundings.at(airK),
            row.givenNumber("eps"),
            diameterM,
            riseK -> row.id().equals("C-052") ? 1.25 * Math.pow(riseK / diameterM, 0.25) : 100);
    return new HeatedConductor(row.givenNumber("R'"), 0, 0, new SteadyKernel(loss), 1);
  }

  /** 8 V and 10 A over 5 m, a cover of 2 mm on 3 mm, h = 12 W/(m²·K), air of 30 °C. */
  private static double coveredWire(ReferenceRow row) {
    InsulationMaterial plastic =
        InsulationMaterial.named("plastic")
            .thermalConductivity(wattsPerMetreKelvin(row.givenNumber("lambda")))
            .density(gramsPerCubicCentimetre(1))
            .specificHeatCapacity(joulesPerKilogramKelvin(1000))
            .temperatureLimit(celsius(110))
            .shortCircuitLimit(celsius(200))
            .build(Source.dataSheet("reference row"));
    ConductorSize size = ConductorSize.metric(squareMillimetres(6), StrandClass.FLEXIBLE);
    Cable cable =
        Cable.of("row", size, plastic)
            .conductorDiameter(millimetres(3))
            .outerDiameter(millimetres(7))
            .build();
    if (row.id().equals("C-056")) {
      return Kind.THERMAL_RESISTANCE.siValueOf(cable.thermalResistance(metres(5)).orElseThrow());
    }
    double coverKmPerW =
        Kind.THERMAL_RESISTANCE.siValueOf(cable.thermalResistance(metres(1)).orElseThrow());
    SurfaceLoss loss =
        new GivenCoefficientLoss(
            SurfaceLoss.Surroundings.at(303.15), 0, 0.007, riseK -> row.givenNumber("h"));
    HeatedConductor wire =
        new HeatedConductor(8.0 / 10 / 5, 0, coverKmPerW, new SteadyKernel(loss), 1);
    return row.id().equals("C-055")
        ? (wire.surfaceK(10) - 303.15) / 80
        : wire.conductorK(10) - 273.15;
  }

  private static double toCelsius(Quantity<Temperature> temperature) {
    return Kind.TEMPERATURE.siValueOf(temperature) - 273.15;
  }
}
