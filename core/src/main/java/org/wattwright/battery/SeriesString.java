package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * Modules in series: groups of modules that sit in named bays, with link cables between them.
 *
 * <pre>{@code
 * SeriesString string = SeriesString.of("A")
 *     .group("under the bonnet", module, 4)
 *     .link(milliohms(0.4))
 *     .group("between the rails", module, 6)
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class SeriesString implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Far beyond any vehicle; the number of cells in series stays a whole number. */
  static final int MOST_MODULES = 10_000;

  private final String name;
  private final List<Group> groups;
  private final Quantity<ElectricResistance> linkResistance;

  private SeriesString(Builder builder) {
    name = builder.name;
    groups = List.copyOf(builder.groups);
    linkResistance = Kind.RESISTANCE.ofSi(builder.linkOhm);
  }

  /**
   * Modules of one type that sit together in one bay.
   *
   * @param bay name of the bay
   * @param module the type
   * @param count number of modules in series, 1 to 10 000
   */
  public record Group(String bay, BatteryModule module, int count) implements Serializable {
    /**
     * Checks the count.
     *
     * @param bay name of the bay
     * @param module the type
     * @param count 1 to 10 000
     * @throws InvalidInputException if the count is outside its range
     */
    public Group {
      bay = Require.text("SeriesString.bay", bay);
      Objects.requireNonNull(module, "module");
      Require.count("SeriesString.count", count, 1, MOST_MODULES);
    }
  }

  /**
   * Starts a string.
   *
   * @param name as reports print it
   * @return a builder
   */
  public static Builder of(String name) {
    return new Builder(Require.text("SeriesString.name", name));
  }

  /**
   * A string of one module type in one place.
   *
   * @param module the type
   * @param count number of modules in series, ≥ 1
   * @return the string
   * @throws InvalidInputException if the count is less than 1
   */
  public static SeriesString of(BatteryModule module, int count) {
    return of("string").group("one place", module, count).build();
  }

  /** Collects groups and links. */
  public static final class Builder {
    private final String name;
    private final List<Group> groups = new ArrayList<>();
    private double linkOhm;

    Builder(String name) {
      this.name = name;
    }

    /**
     * Adds modules in a bay.
     *
     * @param bay name of the bay
     * @param module the type
     * @param count number of modules in series, ≥ 1
     * @return this builder
     * @throws InvalidInputException if the count is less than 1
     */
    public Builder group(String bay, BatteryModule module, int count) {
      groups.add(new Group(bay, module, count));
      return this;
    }

    /**
     * Adds the resistance of a link cable, joints included, at its operating temperature.
     *
     * @param resistance ≥ 0 Ω
     * @return this builder
     * @throws InvalidInputException if negative
     */
    public Builder link(Quantity<ElectricResistance> resistance) {
      linkOhm +=
          Require.quantity("SeriesString.link", resistance, WorkshopUnits.MILLIOHM).nonNegative();
      return this;
    }

    /**
     * What is being built.
     *
     * @return for example {@code string A, to be built}
     */
    @Override
    public String toString() {
      return "string " + name + ", to be built";
    }

    /**
     * The string.
     *
     * @return an immutable string
     * @throws InvalidInputException if it has no modules
     */
    public SeriesString build() {
      if (groups.isEmpty()) {
        throw InvalidInputException.of("SeriesString.groups", "at least one group", "none");
      }
      return new SeriesString(this);
    }
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The groups in order.
   *
   * @return an immutable list
   */
  public List<Group> groups() {
    return groups;
  }

  /**
   * Resistance of all link cables together.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> linkResistance() {
    return linkResistance;
  }

  /**
   * Number of modules in series.
   *
   * @return ≥ 1
   */
  public int moduleCount() {
    return groups.stream().mapToInt(Group::count).sum();
  }

  /**
   * Number of cells, or parallel groups, in series.
   *
   * @return ≥ 1
   */
  public int cellsInSeries() {
    return groups.stream().mapToInt(g -> g.count() * g.module().series()).sum();
  }

  /**
   * Capacity: that of the smallest module.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> capacity() {
    return Kind.CHARGE.ofSi(capacityC());
  }

  /**
   * Mass of the modules.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    double massKg = 0;
    for (Group group : groups) {
      massKg += group.count() * Kind.MASS.siValueOf(group.module().mass());
    }
    return Kind.MASS.ofSi(massKg);
  }

  /**
   * This string with every estimated resistance at one end of its band.
   *
   * @param end low for the highest current, high for the lowest
   * @return a new string
   */
  public SeriesString atBandEnd(BandEnd end) {
    return withModules(module -> module.atBandEnd(end));
  }

  /**
   * What a property rests on: the weakest basis of all modules.
   *
   * @param property the property
   * @return the basis
   */
  public Basis basis(CellProperty property) {
    Basis weakest = Basis.MEASURED;
    for (Group group : groups) {
      weakest = weakest.and(group.module().basis(property));
    }
    return weakest;
  }

  /** Whether another string has the same modules in the same order and the same links. */
  boolean isLike(SeriesString other) {
    return groups.equals(other.groups) && linkResistance.equals(other.linkResistance);
  }

  /** From all modules full until the smallest is empty. */
  double nominalEnergyJ(Quantity<Temperature> temperature) {
    double energyJ = 0;
    for (Group group : groups) {
      double leftFull = 1 - capacityC() / group.module().capacityC();
      energyJ +=
          group.count() * group.module().energyDownToJ(StateOfCharge.of(leftFull), temperature);
    }
    return energyJ;
  }

  SeriesString withModules(UnaryOperator<BatteryModule> change) {
    Builder builder = new Builder(name);
    groups.forEach(g -> builder.group(g.bay(), change.apply(g.module()), g.count()));
    return builder.link(linkResistance).build();
  }

  double capacityC() {
    return groups.stream().mapToDouble(g -> g.module().capacityC()).min().orElseThrow();
  }

  double linkOhm() {
    return Kind.RESISTANCE.siValueOf(linkResistance);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeriesString that
        && name.equals(that.name)
        && groups.equals(that.groups)
        && linkResistance.equals(that.linkResistance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, groups);
  }

  /**
   * Name and groups.
   *
   * @return for example {@code A: 4 × flat module in under the bonnet, 6 × flat module in rails}
   */
  @Override
  public String toString() {
    List<String> texts =
        groups.stream().map(g -> g.count() + " × " + g.module().name() + " in " + g.bay()).toList();
    return name + ": " + String.join(", ", texts);
  }
}
