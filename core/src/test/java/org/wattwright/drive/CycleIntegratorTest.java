package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.seconds;

import java.util.TreeSet;
import org.assertj.core.data.Percentage;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/**
 * Energy and charge of a cycle against the adaptive integrator of another library, started anew at
 * each point of the trace and each bend of the law of power, with the pack itself in place of its
 * table and the equations written anew.
 */
class CycleIntegratorTest {
  /** 1e-6 in per cent. */
  private static final Percentage AGREEMENT = Percentage.withPercentage(1e-4);

  private static final double MASS_KG = 1180;
  private static final double PRESS_N = MASS_KG * 9.80665 * 0.012;
  private static final double DRAG = 0.5 * 1.189 * 0.9;
  private static final double CAPACITY_C = 3 * 105 * 3600;
  private static final double[] FADE_MS = {5 / 3.6, 15 / 3.6};

  /** y = state of charge, energy of the cells, energy at the terminals; t from the segment on. */
  private record Segment(Pack pack, double startMs, double a)
      implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      double powerW = terminalW(Math.max(0, startMs + a * t));
      PackState state = PackState.of(StateOfCharge.of(y[0]), celsius(25));
      double sourceV = Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(state));
      Direction direction = powerW >= 0 ? Direction.DISCHARGE : Direction.CHARGE;
      double ohm = Kind.RESISTANCE.siValueOf(pack.resistance(state, direction, seconds(10)));
      double currentA = (sourceV - Math.sqrt(sourceV * sourceV - 4 * ohm * powerW)) / (2 * ohm);
      return new double[] {-currentA / CAPACITY_C, sourceV * currentA, powerW};
    }

    private double terminalW(double v) {
      double forceN = (v == 0 ? 0 : PRESS_N) + DRAG * v * v + MASS_KG * 1.03 * a;
      if (forceN >= 0) {
        return forceN * v / 0.96 / 0.88 + 300;
      }
      double share = (v - FADE_MS[0]) / (FADE_MS[1] - FADE_MS[0]);
      return forceN * v * Math.max(0, Math.min(1, share)) * 0.96 * 0.88 + 300;
    }

    private TreeSet<Double> bends(double lengthS) {
      TreeSet<Double> times = new TreeSet<>();
      times.add(lengthS);
      double squareMs2 = -(MASS_KG * 1.03 * a + PRESS_N) / DRAG;
      for (double v : new double[] {FADE_MS[0], FADE_MS[1], Math.sqrt(Math.max(0, squareMs2))}) {
        double t = a == 0 ? 0 : (v - startMs) / a;
        if (t > 1e-6 && t < lengthS - 1e-6) {
          times.add(t);
        }
      }
      return times;
    }
  }

  /** The open-circuit curve bends at 90 %; the second and third run pass the bend. */
  @ParameterizedTest
  @CsvSource({"UDDS, 0.85", "UDDS, 0.91", "WLTC_CLASS_1, 0.905", "ECE_15, 0.85"})
  void agrees(StandardCycle standard, double start) {
    ElectricVehicle van =
        ElectricVehicle.of(
                InventedDrive.motor(),
                InventedDrive.driveline(),
                InventedDrive.load(),
                InventedDrive.pack())
            .at(PackState.of(StateOfCharge.of(start), celsius(25)))
            .auxiliaries(Measures.watts(300))
            .build();
    DriveCycle cycle = standard.cycle();
    CycleResult ours = CycleRun.of(van).once(cycle);
    double[] y = integrated(van.pack(), cycle, start);
    assertThat(ours.following().isComplete()).isTrue();
    assertThat(y[0]).isLessThan(0.9);
    assertThat(start - ours.endCharge().fraction()).isCloseTo(start - y[0], AGREEMENT);
    assertThat(Kind.ENERGY.siValueOf(ours.balance().battery())).isCloseTo(y[1], AGREEMENT);
    assertThat(Kind.ENERGY.siValueOf(ours.balance().terminals())).isCloseTo(y[2], AGREEMENT);
  }

  private static double[] integrated(Pack pack, DriveCycle cycle, double start) {
    double[] y = {start, 0, 0};
    for (int i = 0; i < cycle.steps(); i++) {
      double lengthS = cycle.timeS(i + 1) - cycle.timeS(i);
      double a = (cycle.speedMs(i + 1) - cycle.speedMs(i)) / lengthS;
      Segment segment = new Segment(pack, cycle.speedMs(i), a);
      double from = 0;
      for (double to : segment.bends(lengthS)) {
        // A first step is stated: the library would otherwise try one out at each start.
        DormandPrince853Integrator integrator =
            new DormandPrince853Integrator(
                1e-9, 60, new double[] {1e-13, 1e-4, 1e-4}, new double[] {1e-11, 1e-10, 1e-10});
        integrator.setInitialStepSize(to - from);
        y = integrator.integrate(segment, new ODEState(from, y), to).getPrimaryState();
        from = to;
      }
    }
    return y;
  }
}
