package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.wattwright.check.Check;
import org.wattwright.check.Worksheet;

/**
 * A pre-charge with one resistor: its course at the nominal values and at both corners of the
 * tolerances, and its checks.
 *
 * <p>Codes: {@code precharge.completes}, {@code .time}, {@code .pulse-energy}, {@code .mean-power},
 * {@code .resistor-voltage}, {@code .shorted-bus}, {@code .time-out}, and the contactor's make
 * check. Immutable and thread-safe.
 */
public final class PrechargeResult {
  private final Precharge precharge;
  private final PrechargeResistor resistor;
  private final PrechargeCourse nominal;
  private final PrechargeCourse slowest;
  private final PrechargeCourse quickest;

  Precharge precharge() {
    return precharge;
  }

  PrechargeResult(Precharge precharge, PrechargeResistor resistor) {
    this.precharge = precharge;
    this.resistor = resistor;
    double ohm = resistor.ohm();
    double byResistor = resistor.toleranceOrZero();
    double byCapacitance = precharge.capacitanceTolerance();
    nominal = precharge.course(ohm, 1);
    slowest = precharge.course(ohm * (1 + byResistor), 1 + byCapacitance);
    quickest = precharge.course(ohm * (1 - byResistor), 1 - byCapacitance);
  }

  /**
   * The resistor.
   *
   * @return the part
   */
  public PrechargeResistor resistor() {
    return resistor;
  }

  /**
   * Course at the nominal values.
   *
   * @return the course
   */
  public PrechargeCourse nominal() {
    return nominal;
  }

  /**
   * Course with the highest resistance and capacitance.
   *
   * @return the course
   */
  public PrechargeCourse slowest() {
    return slowest;
  }

  /**
   * Course with the lowest resistance and capacitance; its peak current and power are the highest.
   *
   * @return the course
   */
  public PrechargeCourse quickest() {
    return quickest;
  }

  /**
   * Most energy that the resistor takes at one shot, until the contactor closes; until the time-out
   * if it never may.
   *
   * @return in J; empty if it never completes and no time-out is set
   */
  public Optional<Quantity<Energy>> energyPerShot() {
    double joule = energyJ();
    return Double.isFinite(joule) ? Optional.of(JOULE.of(joule)) : Optional.empty();
  }

  double energyJ() {
    return worstShot().energyJ();
  }

  /** A shot at one corner: how long current flows through which resistance. */
  record Shot(PrechargeCourse course, double ohm, double timeS) {
    double energyJ() {
      return course.energyJ(timeS);
    }
  }

  /**
   * The shot that heats the resistor most: a load draws most through the lowest resistance; the
   * capacitors take most at their highest, whatever the resistance.
   */
  Shot worstShot() {
    double timeS = slowest.completes() ? slowest.timeToTargetS() : timeOutS();
    double mostOhm = resistor.ohm() * (1 + resistor.toleranceOrZero());
    double leastOhm = resistor.ohm() * (1 - resistor.toleranceOrZero());
    PrechargeCourse course = precharge.course(leastOhm, 1 + precharge.capacitanceTolerance());
    Shot slow = new Shot(slowest, mostOhm, timeS);
    Shot low = new Shot(course, leastOhm, course.completes() ? course.timeToTargetS() : timeS);
    return low.energyJ() > slow.energyJ() ? low : slow;
  }

  private double timeOutS() {
    Double timeOutS = precharge.timing().timeOutS();
    return timeOutS == null ? Double.POSITIVE_INFINITY : timeOutS;
  }

  /**
   * Mean power in the resistor at the stated rate of repetition.
   *
   * @return in W; empty if no rate is stated or the energy is not known
   */
  public Optional<Quantity<Power>> meanPower() {
    Double periodS = precharge.timing().periodS();
    double meanW = periodS == null ? Double.NaN : energyJ() * precharge.timing().shots() / periodS;
    return Double.isFinite(meanW) ? Optional.of(WATT.of(meanW)) : Optional.empty();
  }

  /**
   * How long the resistor lives if the bus is shorted, U²/R at its lowest resistance.
   *
   * @return in s; empty if for any time, or if not known
   */
  public Optional<Quantity<Time>> survivesShortedBus() {
    double timeS = resistor.bearsS(quickest.peakPowerW());
    return Double.isFinite(timeS) ? Optional.of(SECOND.of(timeS)) : Optional.empty();
  }

  /**
   * All checks.
   *
   * @return in the order of the class page
   */
  public List<Check> checks() {
    return new PrechargeChecks(this).all();
  }

  /**
   * How target, time, peak and energy come about.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    return new PrechargeSheet(precharge, resistor).write(this);
  }

  /**
   * Resistor and course.
   *
   * @return for example {@code W-50 (150 Ω): closes after 0.45 s}
   */
  @Override
  public String toString() {
    return resistor + ": " + nominal;
  }
}
