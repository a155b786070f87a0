package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattsPerKelvin;

import org.assertj.core.data.Percentage;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.wattwright.units.Kind;

/** The same charge integrated over time by another library, with the equations written anew. */
class ChargeOracleTest {
  /** 1e-6 in per cent. */
  private static final Percentage AGREEMENT = Percentage.withPercentage(1e-4);

  private static final double[] SOC = {0, 0.1, 0.5, 0.9, 1};
  private static final double[] OCV_COLD = {2.55, 3.15, 3.28, 3.33, 3.6};
  private static final double[] OCV_WARM = {2.6, 3.2, 3.3, 3.35, 3.6};
  private static final double[] R_SOC = {0, 0.5, 1};
  private static final double[][] R_MILLIOHM = {{6, 4, 4.4}, {2.4, 1.6, 1.7}, {1.2, 0.7, 0.8}};
  private static final double[] R_CELSIUS = {-20, 0, 25};

  /** y = state of charge, temperature in °C, energy from the mains in J. */
  private record Equations(double ambientC, double capacityJPerK, double conductanceWPerK)
      implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public double[] computeDerivatives(double timeS, double[] y) {
      double sourceV = 96 * ocv(y[0], y[1]);
      double ohm = 96 * resistance(y[0], y[1]) + 8 * 0.3e-3;
      double currentA = current(y, sourceV, ohm);
      double outputW = currentA * (sourceV + currentA * ohm);
      double load = outputW / 6600;
      double efficiency =
          load < 0.5 ? 0.86 + 0.2 * (Math.max(load, 0.1) - 0.1) : 0.94 - 0.02 * (load - 0.5);
      double heatW = currentA * currentA * ohm - conductanceWPerK * (y[1] - ambientC);
      return new double[] {currentA / (105 * 3600), heatW / capacityJPerK, outputW / efficiency};
    }

    private static double current(double[] y, double sourceV, double ohm) {
      double byPowerA = (-sourceV + Math.sqrt(sourceV * sourceV + 4 * ohm * 6600)) / (2 * ohm);
      double byCellA = (3.65 - sourceV / 96) / resistance(y[0], y[1]);
      double byVoltageA = (346 - sourceV) / ohm;
      double byTemperatureA = Math.max(0, Math.min(105, y[1] / 15 * 105));
      return Math.min(
          Math.min(Math.min(byPowerA, 25), Math.min(52, byTemperatureA)),
          Math.min(byCellA, byVoltageA));
    }

    private static double ocv(double soc, double temperatureC) {
      double share = Math.max(0, Math.min(1, (temperatureC + 10) / 35));
      return (1 - share) * line(SOC, OCV_COLD, soc) + share * line(SOC, OCV_WARM, soc);
    }

    private static double resistance(double soc, double temperatureC) {
      double[] atSoc = new double[R_CELSIUS.length];
      for (int i = 0; i < atSoc.length; i++) {
        atSoc[i] = line(R_SOC, R_MILLIOHM[i], soc) / 1000;
      }
      return line(R_CELSIUS, atSoc, temperatureC);
    }

    private static double line(double[] xs, double[] ys, double x) {
      int i = 0;
      while (i < xs.length - 2 && x > xs[i + 1]) {
        i++;
      }
      double held = Math.max(xs[0], Math.min(xs[xs.length - 1], x));
      return ys[i] + (held - xs[i]) / (xs[i + 1] - xs[i]) * (ys[i + 1] - ys[i]);
    }
  }

  private static double[] integrated(
      Equations equations, double soc, double temperatureC, double timeS) {
    DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 20, 1e-11, 1e-11);
    ODEStateAndDerivative end =
        integrator.integrate(
            equations, new ODEState(0, new double[] {soc, temperatureC, 0}), timeS);
    return end.getPrimaryState();
  }

  private static void agrees(ChargeResult charge, double[] oracle) {
    ChargeMoment last = charge.curve().get(charge.curve().size() - 1);
    assertThat(charge.end().fraction()).isCloseTo(oracle[0], AGREEMENT);
    assertThat(Kind.TEMPERATURE.siValueOf(last.temperature()))
        .isCloseTo(oracle[1] + 273.15, AGREEMENT);
    assertThat(Kind.ENERGY.siValueOf(charge.wallEnergy().orElseThrow()))
        .isCloseTo(oracle[2], AGREEMENT);
  }

  @Test
  void wholeChargeAtOneTemperature() {
    ChargeResult charge = TestParts.usual().voltageAtMost(volts(346)).run();
    assertThat(charge.endedBy()).isEqualTo(ChargeEnd.END_CURRENT);
    assertThat(charge.phases())
        .extracting(ChargePhase::limit)
        .containsExactly(ChargeLimit.CHARGER_POWER, ChargeLimit.CHARGE_VOLTAGE);
    Equations held = new Equations(25, 1e30, 0);
    agrees(charge, integrated(held, 0.2, 25, Kind.TIME.siValueOf(charge.time())));
  }

  @Test
  void coldPackThatWarmsOnTheWay() {
    ChargeResult charge =
        TestParts.usual()
            .voltageAtMost(volts(346))
            .from(percentCharge(10))
            .temperature(celsius(2))
            .cooling(AmbientCooling.of(kilojoulesPerKelvin(200), wattsPerKelvin(20), celsius(12)))
            .run();
    assertThat(charge.phases())
        .extracting(ChargePhase::limit)
        .containsExactly(
            ChargeLimit.CELL_TEMPERATURE, ChargeLimit.CHARGER_POWER, ChargeLimit.CHARGE_VOLTAGE);
    Equations warming = new Equations(12, 200e3, 20);
    agrees(charge, integrated(warming, 0.1, 2, Kind.TIME.siValueOf(charge.time())));
  }

  @Test
  void cutShortByTheClock() {
    ChargeResult charge = TestParts.usual().atMost(hours(2)).run();
    assertThat(charge.endedBy()).isEqualTo(ChargeEnd.TIME);
    assertThat(Kind.TIME.siValueOf(charge.time())).isCloseTo(7200, Percentage.withPercentage(1e-7));
    agrees(charge, integrated(new Equations(25, 1e30, 0), 0.2, 25, 7200));
  }

  @Test
  void chargeVoltageMayBeAskedForBelowTheCells() {
    ChargeResult charge = TestParts.usual().voltageAtMost(volts(330)).run();
    assertThat(charge.lastLimit()).isEqualTo(ChargeLimit.CHARGE_VOLTAGE);
    charge
        .curve()
        .forEach(
            moment ->
                assertThat(Kind.VOLTAGE.siValueOf(moment.voltage()))
                    .isLessThanOrEqualTo(330 * (1 + 1e-12)));
  }
}
