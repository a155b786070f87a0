package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.MILLIVOLT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.protection.SenseWiring;
import org.wattwright.units.Kind;

/**
 * Which measuring unit reads which cells of a string, with the fewest units.
 *
 * <p>Along the string a new unit begins where the bay changes, where the channels or temperature
 * inputs run out, and at a fuse, a disconnect or a long link, unless the unit bears the voltage of
 * the whole pack between neighbouring taps. A module that fits one unit is not split. Taking as
 * many as go, from one end to the other, gives the fewest: the units are intervals of one order.
 * Source: common practice for the rules.
 *
 * <p>Immutable and thread-safe.
 */
public final class MonitoringPlan implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source PRACTICE =
      Source.commonPractice("one measuring unit to one unbroken row of cells");

  private final MonitorUnitType type;
  private final double packV;
  private final List<MeasuringUnit> units;
  private final @Nullable Boolean tapsFused;

  private MonitoringPlan(
      MonitorUnitType type, double packV, List<MeasuringUnit> units, @Nullable Boolean tapsFused) {
    this.type = type;
    this.packV = packV;
    this.units = List.copyOf(units);
    this.tapsFused = tapsFused;
  }

  /**
   * Allocates the modules of a string.
   *
   * @param modules in the order of the string, from negative to positive
   * @param type of all units
   * @param packVoltage highest voltage of the whole pack, &gt; 0 V
   * @return the plan with the fewest units; nothing said of tap fuses
   * @throws org.wattwright.units.InvalidInputException if there is no module or the voltage is not
   *     positive
   */
  public static MonitoringPlan of(
      List<MonitoredModule> modules,
      MonitorUnitType type,
      Quantity<ElectricPotential> packVoltage) {
    List<MonitoredModule> string = Require.nonEmpty("MonitoringPlan.modules", modules);
    Objects.requireNonNull(type, "type");
    double packV = Require.quantity("MonitoringPlan.packVoltage", packVoltage, VOLT).positive();
    return new MonitoringPlan(type, packV, new UnitAllocation(type, packV).allocate(string), null);
  }

  /**
   * Says whether every tap has a fuse or a fusible resistor where it leaves the cell.
   *
   * @param everyTap false if none is known to have one
   * @return a new plan
   */
  public MonitoringPlan tapsFused(boolean everyTap) {
    return new MonitoringPlan(type, packV, units, everyTap);
  }

  /**
   * The units in the order of the string; the first is the main unit.
   *
   * @return at least one
   */
  public List<MeasuringUnit> units() {
    return units;
  }

  /**
   * Sense wires of all units.
   *
   * @return at least 2
   */
  public int senseWires() {
    return units.stream().mapToInt(MeasuringUnit::taps).sum();
  }

  /**
   * Voltage that a link between taps adds to or takes from the cell beside it: I·R; discharge
   * lowers the reading, charge raises it.
   *
   * @param link between two taps, ≥ 0 mΩ
   * @param current ≥ 0 A
   * @return in mV
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public static Quantity<ElectricPotential> linkError(
      Quantity<ElectricResistance> link, Quantity<ElectricCurrent> current) {
    double ohm = Require.quantity("MonitoringPlan.link", link, MILLIOHM).nonNegative();
    double amps = Require.quantity("MonitoringPlan.current", current, AMPERE).nonNegative();
    return MILLIVOLT.of(ohm * amps * 1000);
  }

  /**
   * The verdicts on every unit: fused taps and interruptions as {@link SenseWiring} names them,
   * {@code installation.temperature-inputs}, {@code installation.module-sensors}, and {@code
   * installation.link-drop} for each join between taps that has a resistance.
   *
   * @param highestCurrent of the pack, either way, ≥ 0 A
   * @return the checks
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public List<Check> checks(Quantity<ElectricCurrent> highestCurrent) {
    Require.quantity("MonitoringPlan.highestCurrent", highestCurrent, AMPERE).nonNegative();
    List<Check> checks = new ArrayList<>();
    for (MeasuringUnit unit : units) {
      checks.addAll(wiring(unit).checks());
      checks.add(temperatureInputs(unit));
      checks.add(moduleSensors(unit));
      unit.joins().stream()
          .filter(join -> join.ohm() > 0)
          .map(join -> linkDrop(unit, join, highestCurrent))
          .forEach(checks::add);
    }
    return checks;
  }

  private SenseWiring wiring(MeasuringUnit unit) {
    SenseWiring wiring = SenseWiring.of(unit.name(), unit.taps(), VOLT.of(packV));
    if (tapsFused != null) {
      wiring = wiring.fusedTaps(tapsFused ? unit.taps() : 0);
    }
    if (type.withstand().isPresent()) {
      wiring = wiring.withstands(type.withstand().get());
    }
    for (MonitorJoin join : unit.joins()) {
      wiring = join.mayOpen() ? wiring.interruptedBy(join.name()) : wiring;
    }
    return wiring;
  }

  private Check temperatureInputs(MeasuringUnit unit) {
    return Check.named("installation.temperature-inputs", "temperature sensors on " + unit.name())
        .source(PRACTICE)
        .atMost(Figure.count(unit.temperatureSensors()), Figure.count(type.temperatureInputs()));
  }

  private static Check moduleSensors(MeasuringUnit unit) {
    long bare = unit.slices().stream().filter(s -> s.module().temperatureSensors() == 0).count();
    return Check.named(
            "installation.module-sensors", "modules without a temperature sensor on " + unit.name())
        .source(Source.commonPractice("at least one sensor in every module"))
        .safety()
        .atMost(Figure.count(bare), Figure.count(0));
  }

  private Check linkDrop(
      MeasuringUnit unit, MonitorJoin join, Quantity<ElectricCurrent> highestCurrent) {
    return Check.named("installation.link-drop", join.name() + " between taps of " + unit.name())
        .source(
            Source.commonPractice("a link within a cell's loop stays within the measuring error"))
        .cautionBand(CautionBand.NONE)
        .note("a tap at each end of the link takes it out of the reading")
        .atMost(
            Figure.of(linkError(join.resistance(), highestCurrent), MILLIVOLT),
            Figure.of(Kind.VOLTAGE.ofSi(type.errorV()), MILLIVOLT));
  }

  /**
   * A Markdown table of units, cells, wires and sensors.
   *
   * @return the table, ending with a line feed
   */
  public String toMarkdown() {
    MarkdownTable table =
        MarkdownTable.withColumns("Unit", "Bay", "Modules", "Cells", "Sense wires", "Sensors");
    for (MeasuringUnit unit : units) {
      table.row(
          unit.name(),
          unit.bay(),
          String.join(", ", unit.slices().stream().map(s -> s.module().name()).toList()),
          unit.cells() + " of " + type.channels(),
          Integer.toString(unit.taps()),
          unit.temperatureSensors() + " of " + type.temperatureInputs());
    }
    return table.toText();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MonitoringPlan that
        && type.equals(that.type)
        && packV == that.packV
        && units.equals(that.units)
        && Objects.equals(tapsFused, that.tapsFused);
  }

  @Override
  public int hashCode() {
    return Objects.hash(type, packV, units, tapsFused);
  }

  /**
   * Units and wires.
   *
   * @return for example {@code 3 measuring units, 99 sense wires}
   */
  @Override
  public String toString() {
    return units.size() + " measuring units, " + senseWires() + " sense wires";
  }
}
