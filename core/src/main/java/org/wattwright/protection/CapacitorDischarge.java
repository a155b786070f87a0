package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.MICROFARAD;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * A charged capacitor that empties into a short circuit through resistance and inductance in
 * series, such as the link capacitor of an inverter.
 *
 * <p>L·di/dt + R·i + u = 0. With α = R/2L and ω₀² = 1/(LC): i = U/(ω_d·L)·e^(−αt)·sin ω_d·t for α
 * &lt; ω₀, U/L·t·e^(−αt) for α = ω₀, U/(β·L)·e^(−αt)·sinh β·t for α &gt; ω₀, U/R·e^(−t/RC) without
 * inductance. Until it is empty it passes ∫i²dt = ½CU²/R. Source: circuit theory.
 *
 * <p>Immutable and thread-safe.
 */
public final class CapacitorDischarge implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final double capacitanceF;
  private final double voltageV;
  private final double resistanceOhm;
  private final double inductanceH;

  private CapacitorDischarge(Charged charged, double resistanceOhm, double inductanceH) {
    this.name = charged.name;
    this.capacitanceF = charged.capacitanceF;
    this.voltageV = charged.voltageV;
    this.resistanceOhm = resistanceOhm;
    this.inductanceH = inductanceH;
  }

  /**
   * Starts with the capacitor.
   *
   * @param name of its device, as reports print it
   * @param capacitance &gt; 0 F
   * @param voltage to which it is charged, &gt; 0 V
   * @return a step that asks for its way to the fault
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static Charged of(
      String name, Quantity<ElectricCapacitance> capacitance, Quantity<ElectricPotential> voltage) {
    return new Charged(
        Require.text("CapacitorDischarge.name", name),
        Require.quantity("CapacitorDischarge.capacitance", capacitance, MICROFARAD).positive(),
        Require.quantity("CapacitorDischarge.voltage", voltage, VOLT).positive());
  }

  /** A charged capacitor, not yet connected. */
  public static final class Charged {
    private final String name;
    private final double capacitanceF;
    private final double voltageV;

    private Charged(String name, double capacitanceF, double voltageV) {
      this.name = name;
      this.capacitanceF = capacitanceF;
      this.voltageV = voltageV;
    }

    /**
     * Shorted through resistance and inductance.
     *
     * @param resistance of capacitor, cables and contacts, &gt; 0 Ω
     * @param inductance of the same loop, ≥ 0 H
     * @return the discharge
     * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
     */
    public CapacitorDischarge through(
        Quantity<ElectricResistance> resistance, Quantity<ElectricInductance> inductance) {
      return new CapacitorDischarge(
          this,
          Require.quantity("CapacitorDischarge.resistance", resistance, OHM).positive(),
          Require.quantity("CapacitorDischarge.inductance", inductance, HENRY).nonNegative());
    }

    /**
     * Name, capacitance and voltage.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return name + ", " + FARAD.of(capacitanceF) + " at " + VOLT.of(voltageV);
    }
  }

  /**
   * The device.
   *
   * @return as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * Current some time after the short.
   *
   * @param time ≥ 0 s
   * @return in A; swings to negative values if damping is weak
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<ElectricCurrent> at(Quantity<Time> time) {
    return Kind.CURRENT.ofSi(currentA(timeS(time)));
  }

  /**
   * Highest current.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> peak() {
    return Kind.CURRENT.ofSi(peakA());
  }

  /**
   * Time of the highest current.
   *
   * @return in s; 0 s without inductance
   */
  public Quantity<Time> timeOfPeak() {
    return Kind.TIME.ofSi(peakS());
  }

  /**
   * Joule integral until the capacitor is empty.
   *
   * @return ½·C·U²/R in A²s
   */
  public Quantity<JouleIntegral> jouleIntegral() {
    return Kind.JOULE_INTEGRAL.ofSi(energyJ() / resistanceOhm);
  }

  /**
   * Joule integral from the short until a time.
   *
   * @param time ≥ 0 s
   * @return ∫i²dt = (½CU² − ½Cu² − ½Li²)/R in A²s
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<JouleIntegral> jouleIntegralUntil(Quantity<Time> time) {
    return Kind.JOULE_INTEGRAL.ofSi(jouleIntegralA2S(timeS(time)));
  }

  /**
   * Energy in the capacitor before the short.
   *
   * @return ½·C·U² in J
   */
  public Quantity<Energy> energy() {
    return WorkshopUnits.JOULE.of(energyJ());
  }

  /**
   * Whether the current swings to and fro.
   *
   * @return whether R &lt; 2·√(L/C)
   */
  public boolean isOscillating() {
    return resistanceOhm * resistanceOhm * capacitanceF < 4 * inductanceH;
  }

  private static double timeS(Quantity<Time> time) {
    return Require.quantity("CapacitorDischarge.time", time, SECOND).nonNegative();
  }

  private double energyJ() {
    return capacitanceF * voltageV * voltageV / 2;
  }

  double currentA(double timeS) {
    return inductanceH == 0
        ? voltageV / resistanceOhm * Math.exp(-timeS / (resistanceOhm * capacitanceF))
        : damping().currentA(timeS);
  }

  double voltageV() {
    return voltageV;
  }

  double peakA() {
    return currentA(peakS());
  }

  private double peakS() {
    return inductanceH == 0 ? 0 : damping().peakS();
  }

  double jouleIntegralA2S(double timeS) {
    if (inductanceH == 0) {
      double rcS = resistanceOhm * capacitanceF;
      return -energyJ() / resistanceOhm * Math.expm1(-2 * timeS / rcS);
    }
    return damping().jouleIntegralA2S(timeS);
  }

  private SeriesDamping damping() {
    return new SeriesDamping(voltageV, resistanceOhm, inductanceH, capacitanceF);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CapacitorDischarge that
        && name.equals(that.name)
        && capacitanceF == that.capacitanceF
        && voltageV == that.voltageV
        && resistanceOhm == that.resistanceOhm
        && inductanceH == that.inductanceH;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, capacitanceF, voltageV, resistanceOhm, inductanceH);
  }

  /**
   * Name, peak and joule integral.
   *
   * @return for example {@code inverter, peak 9.2 kA after 21 µs, 4000 A²·s}
   */
  @Override
  public String toString() {
    return name
        + ", peak "
        + Measures.format(peak(), Kind.CURRENT)
        + " after "
        + Measures.format(timeOfPeak(), Kind.TIME)
        + ", "
        + Measures.format(jouleIntegral(), Kind.JOULE_INTEGRAL);
  }
}
