package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.KELVIN_PER_WATT;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.Kind;
import org.wattwright.units.ThermalResistance;

/**
 * Heating of a part with one heat capacity and one thermal resistance, for a quick estimate or a
 * part whose maker states both.
 *
 * <p>g = 1/R_th − I²·R₂₀·α; θ∞ = [I²·R₂₀·(1 − 20 °C·α) + θ_a/R_th]/g; τ = C/g; θ(t) = θ∞ + (θ₀ −
 * θ∞)·e^(−t/τ). Where g ≤ 0 the part runs away: no final temperature exists. First-order lumped
 * model, exact solution. Immutable and thread-safe.
 */
public final class FirstOrderHeating {
  private final double resistanceOhm;
  private final double coefficientPerK;
  private final double conductanceWPerK;
  private final double heatCapacityJPerK;
  private final double ambientK;

  private FirstOrderHeating(
      double resistanceOhm,
      double coefficientPerK,
      double conductanceWPerK,
      double heatCapacityJPerK,
      double ambientK) {
    this.resistanceOhm = resistanceOhm;
    this.coefficientPerK = coefficientPerK;
    this.conductanceWPerK = conductanceWPerK;
    this.heatCapacityJPerK = heatCapacityJPerK;
    this.ambientK = ambientK;
  }

  /**
   * A part in air at 30 °C.
   *
   * @param resistance at 20 °C, &gt; 0
   * @param material its metal, for the temperature coefficient
   * @param thermalResistance part to air, &gt; 0
   * @param heatCapacity of the part, &gt; 0
   * @return the model; {@link #inAir} sets another air temperature
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public static FirstOrderHeating of(
      Quantity<ElectricResistance> resistance,
      ConductorMaterial material,
      Quantity<ThermalResistance> thermalResistance,
      Quantity<HeatCapacity> heatCapacity) {
    String type = "FirstOrderHeating.";
    double ohm = Require.quantity(type + "resistance", resistance, OHM).positive();
    double kPerW =
        Require.quantity(type + "thermalResistance", thermalResistance, KELVIN_PER_WATT).positive();
    double jPerK =
        Require.quantity(type + "heatCapacity", heatCapacity, JOULE_PER_KELVIN).positive();
    double airK = Kind.TEMPERATURE.siValueOf(CELSIUS.of(30));
    return new FirstOrderHeating(ohm, material.coefficientPerK(), 1 / kPerW, jPerK, airK);
  }

  /**
   * The same part in other air.
   *
   * @param air −50 °C to 200 °C
   * @return the model
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public FirstOrderHeating inAir(Quantity<Temperature> air) {
    double airK = Require.quantity("FirstOrderHeating.air", air, CELSIUS).between(-50, 200);
    return new FirstOrderHeating(
        resistanceOhm, coefficientPerK, conductanceWPerK, heatCapacityJPerK, airK);
  }

  /**
   * Current from which on no final temperature exists: I = 1/√(R_th·R₂₀·α).
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> runawayCurrent() {
    return AMPERE.of(Math.sqrt(conductanceWPerK / (resistanceOhm * coefficientPerK)));
  }

  /**
   * Final temperature under a steady current.
   *
   * @param current ≥ 0 A
   * @return absolute; empty if the part runs away
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public Optional<Quantity<Temperature>> finalTemperature(Quantity<ElectricCurrent> current) {
    double currentA = currentA(current);
    return decayWPerK(currentA) > 0
        ? Optional.of(Kind.TEMPERATURE.ofSi(ambientK + finalRiseK(currentA)))
        : Optional.empty();
  }

  /**
   * Time constant under a steady current.
   *
   * @param current ≥ 0 A
   * @return in s; empty if the part runs away
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public Optional<Quantity<Time>> timeConstant(Quantity<ElectricCurrent> current) {
    double decayWPerK = decayWPerK(currentA(current));
    return decayWPerK > 0
        ? Optional.of(SECOND.of(heatCapacityJPerK / decayWPerK))
        : Optional.empty();
  }

  /**
   * Temperature after a steady current has flowed for a time.
   *
   * @param start temperature when it starts, −100 °C to 400 °C
   * @param current ≥ 0 A
   * @param time ≥ 0 s
   * @return absolute; also while running away
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Quantity<Temperature> temperatureAfter(
      Quantity<Temperature> start, Quantity<ElectricCurrent> current, Quantity<Time> time) {
    double startK = ConductorMaterial.temperatureK("FirstOrderHeating.start", start);
    double currentA = currentA(current);
    double timeS = Require.quantity("FirstOrderHeating.time", time, SECOND).nonNegative();
    double x = decayWPerK(currentA) * timeS / heatCapacityJPerK;
    double share = x == 0 ? 1 : -Math.expm1(-x) / x;
    return Kind.TEMPERATURE.ofSi(startK + rateKPerS(startK, currentA) * timeS * share);
  }

  /**
   * Time until a temperature is reached under a steady current.
   *
   * @param start temperature when it starts, −100 °C to 400 °C
   * @param current ≥ 0 A
   * @param limit −100 °C to 400 °C
   * @return in s; empty if it is never reached
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Optional<Quantity<Time>> timeToReach(
      Quantity<Temperature> start, Quantity<ElectricCurrent> current, Quantity<Temperature> limit) {
    double startK = ConductorMaterial.temperatureK("FirstOrderHeating.start", start);
    double limitK = ConductorMaterial.temperatureK("FirstOrderHeating.limit", limit);
    double currentA = currentA(current);
    double decayPerS = decayWPerK(currentA) / heatCapacityJPerK;
    double linearS = (limitK - startK) / rateKPerS(startK, currentA);
    if (limitK == startK) {
      return Optional.of(SECOND.of(0));
    }
    double x = decayPerS * linearS;
    boolean reached = linearS > 0 && x < 1;
    double timeS = x == 0 ? linearS : -Math.log1p(-x) / decayPerS;
    return reached ? Optional.of(SECOND.of(timeS)) : Optional.empty();
  }

  private double rateKPerS(double temperatureK, double currentA) {
    double sourceWPerK = currentA * currentA * resistanceOhm * coefficientPerK;
    double sourceW =
        currentA * currentA * resistanceOhm
            + sourceWPerK * (temperatureK - ConductorMaterial.REFERENCE_K);
    return (sourceW - conductanceWPerK * (temperatureK - ambientK)) / heatCapacityJPerK;
  }

  private double finalRiseK(double currentA) {
    double ratioAtAmbient = 1 + coefficientPerK * (ambientK - ConductorMaterial.REFERENCE_K);
    return currentA * currentA * resistanceOhm * ratioAtAmbient / decayWPerK(currentA);
  }

  private double decayWPerK(double currentA) {
    return conductanceWPerK - currentA * currentA * resistanceOhm * coefficientPerK;
  }

  private static double currentA(Quantity<ElectricCurrent> current) {
    return Require.quantity("FirstOrderHeating.current", current, AMPERE).nonNegative();
  }
}
