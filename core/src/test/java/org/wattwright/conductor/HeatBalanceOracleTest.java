package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.units.Kind;

/**
 * The library's secant against Brent on a balance written down anew; its exponential against an
 * adaptive integrator.
 */
class HeatBalanceOracleTest {
  private static final double SIGMA = 5.670374419e-8;

  /** Balance written from the formulas with the plain correlation, in terms of T_c. */
  private record Balance(
      double outerM,
      double thermalKmPerW,
      double ohmPerM,
      double currentA,
      double airK,
      double hotK) {
    double excess(double conductorK) {
      double heat = currentA * currentA * ohmPerM * (1 + 0.00393 * (conductorK - 293.15));
      double surfaceK = conductorK - heat * thermalKmPerW;
      return loss(surfaceK) - heat;
    }

    double loss(double surfaceK) {
      double filmK = (surfaceK + airK) / 2;
      double riseK = surfaceK - airK;
      double rayleigh = AirProperties.buoyancy(filmK) * Math.abs(riseK) * Math.pow(outerM, 3);
      double prandtl = AirProperties.prandtl(filmK);
      double root =
          0.60
              + 0.387
                  * Math.pow(rayleigh, 1.0 / 6)
                  / Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
      double convection = Math.PI * AirProperties.conductivityWPerMK(filmK) * root * root * riseK;
      double radiantK4 = (Math.pow(hotK, 4) + Math.pow(airK, 4)) / 2;
      return convection + 0.9 * SIGMA * Math.PI * outerM * (Math.pow(surfaceK, 4) - radiantK4);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 20, 300})
  void steadyTemperatureAgreesWithBrent(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int solved = 0;
    for (int i = 0; i < 200; i++) {
      double conductorMm = random.nextDouble(1, 25);
      double outerMm = conductorMm + random.nextDouble(0.6, 8);
      double areaMm2 = conductorMm * conductorMm * 0.55;
      double ohmPerKm = 18.1 / areaMm2;
      double airC = random.nextDouble(-30, 110);
      double hotC = airC + (random.nextBoolean() ? 0 : random.nextDouble(0, 80));
      double currentA = random.nextDouble(0, 14) * Math.pow(areaMm2, 0.7);
      Cable cable = Conditions.cable(areaMm2, ohmPerKm, conductorMm, outerMm);
      HeatingResult ours =
          SteadyHeating.of(cable, Installation.overHotSurface(celsius(airC), celsius(hotC)))
              .at(amperes(currentA));
      Balance balance =
          new Balance(
              outerMm / 1000,
              5.0 / (2 * Math.PI) * Math.log(outerMm / conductorMm),
              ohmPerKm / 1000,
              currentA,
              airC + 273.15,
              hotC + 273.15);
      double highestK = 273.15 + 390;
      if (ours.isSteady() && balance.excess(highestK) > 0) {
        double brentK =
            new BrentSolver(1e-10).solve(200, balance::excess, airC + 273.15 - 1e-6, highestK);
        // The groups on the 1 K grid move a loss by less than 1e-5 of itself.
        assertThat(Kind.TEMPERATURE.siValueOf(ours.conductorTemperature()))
            .as("seed %d, case %d", seed, i)
            .isCloseTo(brentK, org.assertj.core.data.Offset.offset(5e-4));
        solved++;
      }
    }
    assertThat(solved).isGreaterThan(100);
  }

  @Test
  void balanceIsClosedWithinAMillionthOfAKelvin() {
    Cable cable = Conditions.cable(35, 0.554, 7.9, 11.7);
    HeatedConductor conductor =
        HeatedConductor.of(cable, cable.geometries().get(0), Installation.freeAir(celsius(40)));
    for (double currentA = 5; currentA < 300; currentA += 7) {
      double surfaceK = conductor.surfaceK(currentA);
      double inflow = conductor.inflowWPerM(currentA, surfaceK);
      SurfaceLoss loss = conductor.kernel().loss();
      double slopeWPerMK = loss.lossWPerM(surfaceK + 0.5) - loss.lossWPerM(surfaceK - 0.5);
      assertThat((loss.lossWPerM(surfaceK) - inflow) / slopeWPerMK)
          .isCloseTo(0, org.assertj.core.data.Offset.offset(1e-6));
    }
  }

  /** Central differences; inside a cell of the table of air, where the loss has no kink. */
  @Test
  void slopeIsTheDerivativeOfTheLoss() {
    SurfaceLoss.Surroundings air = SurfaceLoss.Surroundings.at(313.15);
    Busbar.Section section = new Busbar.Section(0.03, 0.005);
    for (SurfaceLoss loss :
        List.of(
            new CylinderLoss(air, 0.9, 0.0117),
            new BarLoss(air, 0.4, section, true),
            new BarLoss(air, 0.4, section, false))) {
      for (double riseK : new double[] {0.9, 5.3, 31.1, 96.7, 240.3, -7.7}) {
        double surfaceK = 313.15 + riseK;
        double byDifference =
            (loss.lossWPerM(surfaceK + 1e-3) - loss.lossWPerM(surfaceK - 1e-3)) / 2e-3;
        assertThat(loss.slopeWPerMK(riseK, loss.powerOfRise(riseK)))
            .isCloseTo(byDifference, org.assertj.core.data.Percentage.withPercentage(1e-4));
      }
    }
  }

  @Test
  void transientAgreesWithAnAdaptiveIntegrator() {
    Cable cable = Conditions.cable(35, 0.554, 7.9, 11.7);
    HeatedConductor conductor =
        HeatedConductor.of(cable, cable.geometries().get(0), Installation.freeAir(celsius(40)));
    TransientKernel kernel = new TransientKernel(conductor);
    double[] durationsS = {30, 200, 15, 900, 60};
    double[] currentsA = {350, 90, 500, 0, 260};
    double[] endsK = new double[5];
    kernel.run(313.15, durationsS, currentsA, endsK);
    double temperatureK = 313.15;
    for (int i = 0; i < durationsS.length; i++) {
      temperatureK = integrated(conductor, temperatureK, durationsS[i], currentsA[i]);
      assertThat(endsK[i])
          .as("segment " + i)
          .isCloseTo(temperatureK, org.assertj.core.data.Offset.offset(0.03));
    }
  }

  private static double integrated(
      HeatedConductor conductor, double startK, double timeS, double currentA) {
    double[] state = {startK};
    new DormandPrince853Integrator(1e-6, 20, 1e-9, 1e-9)
        .integrate(
            new org.apache.commons.math3.ode.FirstOrderDifferentialEquations() {
              @Override
              public int getDimension() {
                return 1;
              }

              @Override
              public void computeDerivatives(double t, double[] y, double[] rate) {
                double heat =
                    currentA
                        * currentA
                        * conductor.resistanceOhmPerM()
                        * (1 + conductor.coefficientPerK() * (y[0] - 293.15));
                double loss =
                    conductor.kernel().loss().lossWPerM(conductor.surfaceAtConductorK(y[0]));
                rate[0] = (heat - loss) / conductor.heatCapacityJPerMK();
              }
            },
            0,
            state,
            timeS,
            state);
    return state[0];
  }
}
