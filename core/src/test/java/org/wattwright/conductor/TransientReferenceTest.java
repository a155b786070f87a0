package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Heating over time against closed solutions and integrations. */
class TransientReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> transients() {
    return CoveredRows.of("transient");
  }

  @ParameterizedTest
  @MethodSource("transients")
  void transientAgrees(ReferenceRow row) {
    if (row.has("Rth")) {
      firstOrder(row);
    } else if (row.id().equals("T-001")) {
      FaultDuty duty = FaultDuty.of(amperes(1000), seconds(5));
      VALIDATION.computed(
          row,
          toCelsius(
              ShortCircuit.of(ConductorMaterial.COPPER)
                  .finalTemperature(squareMillimetres(25), duty, celsius(30))
                  .orElseThrow()));
    } else if (row.id().equals("T-002")) {
      VALIDATION.computed(row, initialRateKPerS(row));
    } else if (row.id().equals("T-014")) {
      cooling(row);
    } else if (row.has("R'")) {
      constantRod(row);
    } else {
      rod(row);
    }
  }

  private static void firstOrder(ReferenceRow row) {
    FirstOrderHeating part =
        FirstOrderHeating.of(
                milliohms(row.givenNumber("R20")),
                ConductorMaterial.COPPER,
                kelvinsPerWatt(row.givenNumber("Rth")),
                joulesPerKelvin(row.has("C") ? row.givenNumber("C") : 1))
            .inAir(celsius(row.has("Ta") ? row.givenNumber("Ta") : 30));
    if (row.quantity().startsWith("current above")) {
      VALIDATION.computed(row, Kind.CURRENT.siValueOf(part.runawayCurrent()));
      return;
    }
    Quantity<ElectricCurrent> current = amperes(row.givenNumber("I"));
    Quantity<Temperature> start = celsius(row.givenNumber("start"));
    if (row.quantity().startsWith("final")) {
      VALIDATION.computed(row, toCelsius(part.finalTemperature(current).orElseThrow()));
    } else if (row.quantity().startsWith("effective")) {
      VALIDATION.computed(row, Kind.TIME.siValueOf(part.timeConstant(current).orElseThrow()));
    } else if (row.quantity().startsWith("time to reach")) {
      VALIDATION.computed(
          row,
          Kind.TIME.siValueOf(
              part.timeToReach(start, current, celsius(row.givenNumber("limit"))).orElseThrow()));
    } else {
      VALIDATION.computed(
          row, toCelsius(part.temperatureAfter(start, current, seconds(row.givenNumber("t")))));
    }
  }

  /** A bare copper rod of 8 mm, 100 % IACS, emissivity 0.4, 220 A from 25 °C. */
  private static void rod(ReferenceRow row) {
    double areaM2 = Math.PI / 4 * 0.008 * 0.008;
    SurfaceLoss loss = new CylinderLoss(SurfaceLoss.Surroundings.at(298.15), 0.4, 0.008);
    HeatedConductor rod =
        new HeatedConductor(
            ConductorMaterial.COPPER.resistivityOhmM() / areaM2,
            ConductorMaterial.COPPER.coefficientPerK(),
            0,
            new SteadyKernel(loss),
            areaM2 * 3.45e6);
    if (row.quantity().startsWith("final")) {
      VALIDATION.computed(row, rod.conductorK(220) - 273.15);
      return;
    }
    double[] duration = {row.givenNumber("t")};
    double endK =
        new TransientKernel(rod).run(298.15, duration, new double[] {220}, new double[0]).endK;
    VALIDATION.computed(row, endK - 273.15);
  }

  /** A tenth of a second from the air's temperature, where the loss does not count yet. */
  private static double initialRateKPerS(ReferenceRow row) {
    double areaM2 = row.givenNumber("S") * 1e-6;
    SurfaceLoss loss = new CylinderLoss(SurfaceLoss.Surroundings.at(293.15), 0.9, 0.0067);
    HeatedConductor bare =
        new HeatedConductor(
            ConductorMaterial.COPPER.resistivityOhmM() / areaM2,
            ConductorMaterial.COPPER.coefficientPerK(),
            0,
            new SteadyKernel(loss),
            areaM2 * ConductorMaterial.COPPER.thermal().heatCapacityJPerM3K());
    return (afterK(bare, 293.15, 0.1, row.givenNumber("I")) - 293.15) / 0.1;
  }

  private static double afterK(
      HeatedConductor conductor, double startK, double timeS, double currentA) {
    double[] currentsA = {currentA};
    return new TransientKernel(conductor)
        .run(startK, new double[] {timeS}, currentsA, new double[0])
        .endK;
  }

  /** No current; h falls with the fourth root of the excess. */
  private static void cooling(ReferenceRow row) {
    double airK = 293.15;
    double startK = row.givenNumber("start excess");
    double atStart = row.givenNumber("h at start");
    SurfaceLoss loss =
        new GivenCoefficientLoss(
            SurfaceLoss.Surroundings.at(airK),
            0,
            0.010,
            riseK -> atStart * Math.pow(riseK / startK, 0.25));
    double heatCapacityJPerMK = Math.PI / 4 * 0.010 * 0.010 * 3.45e6;
    HeatedConductor rod =
        new HeatedConductor(1e-3, 0, 0, new SteadyKernel(loss), heatCapacityJPerMK);
    VALIDATION.computed(row, afterK(rod, airK + startK, row.givenNumber("t"), 0) - airK);
  }

  /** Constant resistance, h = 100 W/(m²·K), emissivity 0.8, from 27 °C, of which 273 make 0 K. */
  private static void constantRod(ReferenceRow row) {
    double diameterM = row.givenNumber("D") / 1000;
    double airK = row.givenNumber("Ta") + 273;
    double coefficient = row.givenNumber("h");
    SurfaceLoss loss =
        new GivenCoefficientLoss(
            SurfaceLoss.Surroundings.at(airK),
            row.givenNumber("eps"),
            diameterM,
            riseK -> coefficient);
    double heatCapacityJPerMK = Math.PI / 4 * diameterM * diameterM * 8933 * 385;
    HeatedConductor rod =
        new HeatedConductor(
            row.givenNumber("R'"), 0, 0, new SteadyKernel(loss), heatCapacityJPerMK);
    VALIDATION.computed(row, afterK(rod, airK, row.givenNumber("t"), row.givenNumber("I")) - 273);
  }

  private static double toCelsius(Quantity<Temperature> temperature) {
    return Kind.TEMPERATURE.siValueOf(temperature) - 273.15;
  }
}
