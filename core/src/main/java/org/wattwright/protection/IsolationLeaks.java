package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.OHM_PER_VOLT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.ResistancePerVoltage;

/**
 * Leaks from both poles of a bus to the chassis: of one device, or of all together.
 *
 * <p>Devices lie in parallel, pole by pole. The rule looks at the lesser leak; an isolation monitor
 * shows both in parallel, up to half as much: do not mix the two. Immutable and thread-safe.
 *
 * @param plus from the plus pole, &gt; 0 Ω
 * @param minus from the minus pole, &gt; 0 Ω
 */
public record IsolationLeaks(Quantity<ElectricResistance> plus, Quantity<ElectricResistance> minus)
    implements Serializable {
  /**
   * Checks the fields.
   *
   * @param plus &gt; 0 Ω
   * @param minus &gt; 0 Ω
   * @throws org.wattwright.units.InvalidInputException if a field is not positive
   */
  public IsolationLeaks {
    Require.quantity("IsolationLeaks.plus", plus, OHM).positive();
    Require.quantity("IsolationLeaks.minus", minus, OHM).positive();
    plus = Measure.from(plus, Kind.RESISTANCE);
    minus = Measure.from(minus, Kind.RESISTANCE);
  }

  /**
   * A device with the same leak from both poles.
   *
   * @param each &gt; 0 Ω
   * @return the leaks
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public static IsolationLeaks even(Quantity<ElectricResistance> each) {
    return new IsolationLeaks(each, each);
  }

  /**
   * All devices of a bus together: the budget.
   *
   * @param devices at least one
   * @return leaks in parallel, pole by pole
   * @throws org.wattwright.units.InvalidInputException if there is none
   */
  public static IsolationLeaks inParallel(List<IsolationLeaks> devices) {
    Require.nonEmpty("IsolationLeaks.devices", devices);
    double plusS = devices.stream().mapToDouble(leak -> 1 / leak.plusOhm()).sum();
    double minusS = devices.stream().mapToDouble(leak -> 1 / leak.minusOhm()).sum();
    return new IsolationLeaks(OHM.of(1 / plusS), OHM.of(1 / minusS));
  }

  private double plusOhm() {
    return Kind.RESISTANCE.siValueOf(plus);
  }

  private double minusOhm() {
    return Kind.RESISTANCE.siValueOf(minus);
  }

  private double lesserOhm() {
    return Math.min(plusOhm(), minusOhm());
  }

  /**
   * The lesser leak, which the rule looks at.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> lesser() {
    return OHM.of(lesserOhm());
  }

  /**
   * What an isolation monitor shows: both leaks in parallel.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> monitorReading() {
    return OHM.of(1 / (1 / plusOhm() + 1 / minusOhm()));
  }

  /**
   * The lesser leak per volt.
   *
   * @param working highest working voltage, &gt; 0 V
   * @return in Ω/V
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Quantity<ResistancePerVoltage> perVolt(Quantity<ElectricPotential> working) {
    return OHM_PER_VOLT.of(lesserOhm() / workingV(working));
  }

  private static double workingV(Quantity<ElectricPotential> working) {
    return Require.quantity("IsolationLeaks.working", working, VOLT).positive();
  }

  /**
   * Current through somebody who touches the other pole and the chassis: U over the lesser leak.
   *
   * @param working highest working voltage, &gt; 0 V
   * @return in A
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Quantity<ElectricCurrent> faultCurrent(Quantity<ElectricPotential> working) {
    return AMPERE.of(workingV(working) / lesserOhm());
  }

  /**
   * {@code isolation.resistance}: the lesser leak per volt against the rule.
   *
   * @param working highest working voltage, &gt; 0 V
   * @param rule how AC and DC hang together
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Check check(Quantity<ElectricPotential> working, IsolationRule rule) {
    return Check.named("isolation.resistance", "lesser leak per volt of working voltage")
        .source(IsolationRule.SOURCE)
        .safety()
        .atLeast(
            Figure.of(perVolt(working), OHM_PER_VOLT), Figure.of(rule.perVolt(), OHM_PER_VOLT));
  }
}
