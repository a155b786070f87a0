package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN_PER_WATT;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.TemperatureDifference;
import org.wattwright.units.ThermalResistance;

/**
 * A lug, a bolted joint, a plug or a service disconnect in the path: contact resistance, heat and
 * the temperature it may reach.
 *
 * <p>P = I²·R. The rise above the cable follows from a thermal resistance where the maker states
 * one; else from the cable itself, which carries the heat away along its length like a fin, see
 * {@code ConductorSizer}. Immutable and thread-safe.
 */
public final class Joint implements Serializable {
  private static final long serialVersionUID = 1L;

  /** 5 µΩ to 60 µΩ about 20 µΩ; common practice for clean, tightened, bolted copper lugs. */
  private static final Estimate<ElectricResistance> BOLTED_LUG =
      Estimate.of(
          "contact resistance of a bolted lug",
          Kind.RESISTANCE.ofSi(20e-6),
          Kind.RESISTANCE,
          new Estimate.Band(0.25, 3),
          Source.commonPractice("crimped and bolted copper lug, clean and tightened: 5 to 60 µΩ"));

  private final String name;
  private final Given<Quantity<ElectricResistance>> resistance;
  private final double resistanceOhm;
  private final double highOhm;
  private final double lowOhm;
  private final @Nullable Double thermalKPerW;
  private final @Nullable Double limitK;

  private Joint(
      String name,
      Given<Quantity<ElectricResistance>> resistance,
      double[] bandOhm,
      @Nullable Double thermalKPerW,
      @Nullable Double limitK) {
    this.name = name;
    this.resistance = resistance;
    this.lowOhm = bandOhm[0];
    this.resistanceOhm = bandOhm[1];
    this.highOhm = bandOhm[2];
    this.thermalKPerW = thermalKPerW;
    this.limitK = limitK;
  }

  /**
   * A joint whose contact resistance is known.
   *
   * @param name as reports print it
   * @param resistance ≥ 0 Ω, with its basis
   * @return the joint
   * @throws org.wattwright.units.InvalidInputException if the resistance is negative
   */
  public static Joint of(String name, Given<Quantity<ElectricResistance>> resistance) {
    double ohm = Require.quantity("Joint.resistance", resistance.value(), OHM).nonNegative();
    double[] band = {ohm, ohm, ohm};
    return new Joint(Require.text("Joint.name", name), resistance, band, null, null);
  }

  /**
   * A joint whose contact resistance is estimated: safety checks take the high end of its band.
   *
   * @param name as reports print it
   * @param resistance the estimate
   * @return the joint
   */
  public static Joint estimated(String name, Estimate<ElectricResistance> resistance) {
    double[] band = {
      Kind.RESISTANCE.siValueOf(resistance.low()),
      Kind.RESISTANCE.siValueOf(resistance.typical()),
      Kind.RESISTANCE.siValueOf(resistance.high())
    };
    return new Joint(Require.text("Joint.name", name), resistance.toGiven(), band, null, null);
  }

  /**
   * A crimped and bolted copper lug whose resistance has not been measured: 20 µΩ, 5 µΩ to 60 µΩ
   * (common practice).
   *
   * @param name as reports print it
   * @return the joint
   */
  public static Joint estimatedBoltedLug(String name) {
    return estimated(name, BOLTED_LUG);
  }

  /**
   * The same joint with its thermal resistance to the air, where the maker states it.
   *
   * @param value &gt; 0 K/W
   * @return the joint
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Joint withThermalResistance(Quantity<ThermalResistance> value) {
    double kPerW = Require.quantity("Joint.thermalResistance", value, KELVIN_PER_WATT).positive();
    return new Joint(name, resistance, band(), kPerW, limitK);
  }

  /**
   * The same joint with the highest temperature its terminal or device allows.
   *
   * @param value 40 °C to 300 °C
   * @return the joint
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Joint withTemperatureLimit(Quantity<Temperature> value) {
    double newLimitK = Require.quantity("Joint.temperatureLimit", value, CELSIUS).between(40, 300);
    return new Joint(name, resistance, band(), thermalKPerW, newLimitK);
  }

  private double[] band() {
    return new double[] {lowOhm, resistanceOhm, highOhm};
  }

  /**
   * The name.
   *
   * @return as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * Contact resistance with its basis; the typical value of an estimate.
   *
   * @return in Ω
   */
  public Given<Quantity<ElectricResistance>> resistance() {
    return resistance;
  }

  /**
   * Lowest and highest contact resistance that a measurement should show at commissioning: half to
   * one and a half times a known value (common practice), or the band of an estimate.
   *
   * @return an estimate whose band is the range to be accepted
   */
  public Estimate<ElectricResistance> expectedAtCommissioning() {
    Estimate.Band band =
        basis() == Basis.ESTIMATED && resistanceOhm > 0
            ? new Estimate.Band(lowOhm / resistanceOhm, highOhm / resistanceOhm)
            : new Estimate.Band(0.5, 1.5);
    return Estimate.of(name, resistance.value(), Kind.RESISTANCE, band, resistance.source());
  }

  /**
   * Heat in the joint: P = I²·R.
   *
   * @param current ≥ 0 A
   * @return in W, at the typical resistance
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public Quantity<Power> heatAt(Quantity<ElectricCurrent> current) {
    double currentA = currentA(current);
    return WATT.of(currentA * currentA * resistanceOhm);
  }

  /**
   * Voltage across the joint: U = I·R, for measuring under load.
   *
   * @param current ≥ 0 A
   * @return in V, at the typical resistance
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public Quantity<ElectricPotential> dropAt(Quantity<ElectricCurrent> current) {
    return Kind.VOLTAGE.ofSi(currentA(current) * resistanceOhm);
  }

  /**
   * Rise above the air by the maker's thermal resistance: ΔT = I²·R·R_th.
   *
   * @param current ≥ 0 A
   * @return in K; empty if no thermal resistance is known
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public Optional<Quantity<TemperatureDifference>> riseAt(Quantity<ElectricCurrent> current) {
    double currentA = currentA(current);
    return Optional.ofNullable(thermalKPerW)
        .map(kPerW -> Kind.TEMPERATURE_DIFFERENCE.ofSi(currentA * currentA * highOhm * kPerW));
  }

  private static double currentA(Quantity<ElectricCurrent> current) {
    return Require.quantity("Joint.current", current, AMPERE).nonNegative();
  }

  /**
   * Highest temperature its terminal or device allows.
   *
   * @return absolute; empty if not stated
   */
  public Optional<Quantity<Temperature>> temperatureLimit() {
    return Optional.ofNullable(limitK).map(Kind.TEMPERATURE::ofSi);
  }

  Basis basis() {
    return resistance.basis();
  }

  double resistanceOhm() {
    return resistanceOhm;
  }

  double highOhm() {
    return highOhm;
  }

  double lowOhm() {
    return lowOhm;
  }

  @Nullable Double thermalKPerW() {
    return thermalKPerW;
  }

  @Nullable Double limitK() {
    return limitK;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Joint that
        && name.equals(that.name)
        && resistance.equals(that.resistance)
        && lowOhm == that.lowOhm
        && highOhm == that.highOhm
        && Objects.equals(thermalKPerW, that.thermalKPerW)
        && Objects.equals(limitK, that.limitK);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, resistanceOhm, thermalKPerW, limitK);
  }

  /**
   * Name and resistance.
   *
   * @return for example {@code battery lug, 20 µΩ estimated}
   */
  @Override
  public String toString() {
    return name
        + ", "
        + org.wattwright.units.Measures.format(resistance.value(), Kind.RESISTANCE)
        + " "
        + basis();
  }
}
