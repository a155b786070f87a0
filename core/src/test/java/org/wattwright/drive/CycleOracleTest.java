package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wattwright.units.Kind;

/**
 * The energy of a cycle against an integration of the same equations by a general library, written
 * anew here and restarted at every point of the trace and wherever the force changes sign.
 */
class CycleOracleTest {
  private static final double MASS_KG = 1180;

  /** Steps of the fourth order between two bends. */
  private static final int FINE = 32;

  /** No bend of the tables of the cell lies within a cycle from here. */
  private static final double START = 0.85;

  private static final double REGENERATION_FADES_FROM_MS = 15 / 3.6;
  private static final double REGENERATION_FADES_TO_MS = 5 / 3.6;

  private static double resistanceN(double v) {
    return MASS_KG * 9.80665 * 0.012 + 0.5 * 1.189 * 0.9 * v * v;
  }

  /** Terminal power of the invented van, in closed form. */
  private static double terminalW(double v, double a) {
    if (v <= 0 && a == 0) {
      return 300;
    }
    double forceN = resistanceN(v) + MASS_KG * 1.03 * a;
    if (forceN >= 0) {
      return forceN * v / 0.96 / 0.88 + 300;
    }
    double share =
        (v - REGENERATION_FADES_TO_MS) / (REGENERATION_FADES_FROM_MS - REGENERATION_FADES_TO_MS);
    return forceN * v * Math.max(0, Math.min(1, share)) * 0.96 * 0.88 + 300;
  }

  /** States: state of charge, battery energy, terminal energy. */
  private record Equations(PackTable pack, double startS, double startMs, double a)
      implements FirstOrderDifferentialEquations {
    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] dy) {
      double powerW = terminalW(startMs + a * (t - startS), a);
      double sourceV = pack.openCircuitV(y[0]);
      double ohm = pack.ohm(y[0], powerW >= 0);
      double currentA = (sourceV - Math.sqrt(sourceV * sourceV - 4 * ohm * powerW)) / (2 * ohm);
      dy[0] = -currentA / pack.capacityC();
      dy[1] = sourceV * currentA;
      dy[2] = powerW;
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"UDDS", "HWFET", "WLTC_CLASS_1", "ECE_15"})
  void energyAndChargeAgreeToOneInAMillion(StandardCycle standard) {
    ElectricVehicle van =
        ElectricVehicle.of(
                InventedDrive.motor(),
                InventedDrive.driveline(),
                InventedDrive.load(),
                InventedDrive.pack())
            .at(InventedDrive.van().atCharge(org.wattwright.units.StateOfCharge.of(START)).state())
            .auxiliaries(org.wattwright.units.Measures.watts(300))
            .build();
    DriveCycle cycle = standard.cycle();
    CycleResult ours = CycleRun.of(van).once(cycle);
    double[] y = {START, 0, 0};
    for (int i = 0; i < cycle.steps(); i++) {
      integrate(van.packTable(), cycle, i, y);
    }
    assertThat(ours.following().isComplete()).isTrue();
    assertThat(Kind.ENERGY.siValueOf(ours.balance().battery()))
        .isCloseTo(y[1], within(1e-6 * y[1]));
    assertThat(Kind.ENERGY.siValueOf(ours.balance().terminals()))
        .isCloseTo(y[2], within(1e-6 * y[2]));
    assertThat(START - ours.endCharge().fraction())
        .isCloseTo(START - y[0], within(1e-6 * (START - y[0])));
  }

  /** In pieces at the speeds where the law bends; between them it is smooth. */
  private static void integrate(PackTable pack, DriveCycle cycle, int i, double[] y) {
    double startS = cycle.timeS(i);
    double endS = cycle.timeS(i + 1);
    double startMs = cycle.speedMs(i);
    double a = (cycle.speedMs(i + 1) - startMs) / (endS - startS);
    java.util.TreeSet<Double> times = new java.util.TreeSet<>(java.util.List.of(startS, endS));
    double bendMs =
        Math.sqrt(
            Math.max(0, -(MASS_KG * 1.03 * a + MASS_KG * 9.80665 * 0.012) / (0.5 * 1.189 * 0.9)));
    for (double v : new double[] {REGENERATION_FADES_FROM_MS, REGENERATION_FADES_TO_MS, bendMs}) {
      double t = a == 0 ? startS : startS + (v - startMs) / a;
      if (t > startS + 1e-6 && t < endS - 1e-6) {
        times.add(t);
      }
    }
    double from = times.pollFirst();
    for (double to : times) {
      ClassicalRungeKuttaIntegrator integrator = new ClassicalRungeKuttaIntegrator(1);
      double stepS = (to - from) / FINE;
      for (int k = 0; k < FINE; k++) {
        Equations law = new Equations(pack, startS, startMs, a);
        double[] next = integrator.singleStep(law, from + k * stepS, y, from + (k + 1) * stepS);
        System.arraycopy(next, 0, y, 0, y.length);
      }
      from = to;
    }
  }
}
