package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.protection.IsolationLeaks;
import org.wattwright.protection.IsolationRule;
import org.wattwright.protection.RailCapacitance;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * The leaks and interference capacitors of all devices on the traction circuit together: what each
 * takes of the isolation that the rule asks for.
 *
 * <pre>{@code
 * IsolationBudget budget = IsolationBudget.at(volts(100.8), IsolationRule.JOINED)
 *     .with("inverter", IsolationLeaks.even(megaohms(2)), nanofarads(470), Basis.DATA_SHEET)
 *     .with("battery", IsolationLeaks.even(megaohms(3)), nanofarads(60), Basis.MEASURED);
 * }</pre>
 *
 * <p>Immutable and thread-safe: every call returns a new budget.
 */
public final class IsolationBudget {
  private final Quantity<ElectricPotential> working;
  private final IsolationRule rule;
  private final List<Entry> entries;

  private IsolationBudget(
      Quantity<ElectricPotential> working, IsolationRule rule, List<Entry> entries) {
    this.working = working;
    this.rule = rule;
    this.entries = List.copyOf(entries);
  }

  /**
   * A device.
   *
   * @param name of the device or enclosure
   * @param leaks of both poles to the chassis
   * @param capacitor between each pole and the chassis, ≥ 0 F
   * @param basis what both rest on
   */
  public record Entry(
      String name, IsolationLeaks leaks, Quantity<ElectricCapacitance> capacitor, Basis basis) {
    /**
     * Checks the device.
     *
     * @param name of the device or enclosure
     * @param leaks of both poles to the chassis
     * @param capacitor between each pole and the chassis, ≥ 0 F
     * @param basis what both rest on
     * @throws InvalidInputException if the name is blank or the capacitance negative
     */
    public Entry {
      name = Require.text("IsolationBudget.name", name);
      Objects.requireNonNull(leaks, "leaks");
      Objects.requireNonNull(basis, "basis");
      Require.quantity("IsolationBudget.capacitor of " + name, capacitor, WorkshopUnits.FARAD)
          .nonNegative();
    }
  }

  /**
   * A budget without devices.
   *
   * @param working highest working voltage of the pack, &gt; 0 V and at most 1500 V
   * @param rule how alternating and direct current hang together
   * @return the start
   * @throws InvalidInputException if the voltage is outside its range
   */
  public static IsolationBudget at(Quantity<ElectricPotential> working, IsolationRule rule) {
    Require.quantity("IsolationBudget.working", working, WorkshopUnits.VOLT).positiveUpTo(1500);
    return new IsolationBudget(working, Objects.requireNonNull(rule, "rule"), List.of());
  }

  /**
   * With one more device.
   *
   * @param name of the device or enclosure
   * @param leaks of both poles to the chassis
   * @param capacitor between each pole and the chassis, ≥ 0 F
   * @param basis what both rest on
   * @return a new budget
   * @throws InvalidInputException if the name is blank or the capacitance negative
   */
  public IsolationBudget with(
      String name, IsolationLeaks leaks, Quantity<ElectricCapacitance> capacitor, Basis basis) {
    List<Entry> more = new ArrayList<>(entries);
    more.add(new Entry(name, leaks, capacitor, basis));
    return new IsolationBudget(working, rule, more);
  }

  /**
   * Highest working voltage.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> working() {
    return working;
  }

  /**
   * How alternating and direct current hang together.
   *
   * @return the rule
   */
  public IsolationRule rule() {
    return rule;
  }

  /**
   * The devices.
   *
   * @return in the order given
   */
  public List<Entry> entries() {
    return entries;
  }

  /**
   * Leaks of all devices in parallel, pole by pole.
   *
   * @return both poles
   * @throws InvalidInputException if there is no device
   */
  public IsolationLeaks together() {
    return IsolationLeaks.inParallel(entries.stream().map(Entry::leaks).toList());
  }

  /**
   * Capacitors of all devices on one pole.
   *
   * @return their sum
   */
  public RailCapacitance capacitors() {
    return RailCapacitance.of(entries.stream().map(Entry::capacitor).toList());
  }

  /**
   * The weakest basis of all devices.
   *
   * @return data sheet without devices
   */
  public Basis basis() {
    return entries.stream().map(Entry::basis).reduce(Basis.MEASURED, Basis::and);
  }

  /**
   * Isolation resistance and touch energy of all devices together.
   *
   * @return codes {@code isolation.resistance} and {@code isolation.touch-energy}; NOT_CHECKED
   *     without devices
   */
  public List<Check> checks() {
    if (entries.isEmpty()) {
      return List.of(unknown("isolation resistance of the devices"));
    }
    return List.of(together().check(working, rule), capacitors().check(working));
  }

  /**
   * How the leaks and capacitors of all devices add up, and what the rule asks for.
   *
   * @return the steps
   * @throws InvalidInputException if there is no device
   */
  public Worksheet worksheet() {
    return IsolationWorking.of(this);
  }

  /** For a traction circuit of whose isolation something is missing. */
  static Check unknown(String missing) {
    return Check.named("isolation.resistance", "isolation of the traction circuit")
        .source(Source.standard("UN R100", "para 5.1.3.1, 5.1.3.2"))
        .safety()
        .notChecked(missing);
  }

  /**
   * Voltage, devices and their sum.
   *
   * @return for example {@code 7 devices at 100.8 V: 436.6 kΩ}
   */
  @Override
  public String toString() {
    String sum =
        entries.isEmpty() ? "nothing known" : Measures.format(together().lesser(), Kind.RESISTANCE);
    return entries.size() + " devices at " + working + ": " + sum;
  }
}
