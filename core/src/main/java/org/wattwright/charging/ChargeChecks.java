package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** What must be looked at when a pack is charged. */
final class ChargeChecks {
  private final Pack pack;
  private final ChargeKernel kernel;
  private final ChargeRun.Course course;
  private final boolean warms;
  private final boolean asksForVoltage;
  private final boolean asksForFull;

  ChargeChecks(ChargeSimulation simulation, ChargeKernel kernel, ChargeRun.Course course) {
    this.pack = simulation.pack();
    this.kernel = kernel;
    this.course = course;
    this.warms = simulation.cooling() != null;
    this.asksForVoltage = simulation.asksForVoltage();
    this.asksForFull = simulation.target().equals(StateOfCharge.FULL);
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    checks.add(completes());
    if (asksForVoltage) {
      checks.add(setVoltage());
    }
    checks.add(unthrottled());
    if (warms) {
      checks.add(hottest());
    }
    return List.copyOf(checks);
  }

  /**
   * A pack held at its charge voltage down to the end current is full. A lower state of charge that
   * was asked for, or a voltage that the charger cannot reach, leaves it short of what was asked.
   */
  boolean complete() {
    return course.end() == ChargeEnd.TARGET
        || (course.end() == ChargeEnd.END_CURRENT
            && asksForFull
            && course.last().moment().limit() == ChargeLimit.CHARGE_VOLTAGE);
  }

  /**
   * What time and end of the charge rest on: the weakest of capacity, voltage, resistance, limits.
   */
  Basis basis() {
    return pack.basis(CellProperty.CAPACITY)
        .and(pack.basis(CellProperty.VOLTAGE))
        .and(pack.basis(CellProperty.RESISTANCE))
        .and(pack.basis(CellProperty.CURRENT));
  }

  private Check completes() {
    return Check.named("charging.completes", "charge comes to its end")
        .source(Source.requirement("state of charge asked for"))
        .basis(basis())
        .note(
            course.end()
                + ", "
                + course.last().moment().limit()
                + " at "
                + Figure.of(StateOfCharge.of(course.last().soc())))
        .holds(complete());
  }

  private Check setVoltage() {
    return Check.named("charging.set-voltage", "charge voltage against every cell at its maximum")
        .source(Source.dataSheet("cell maximum voltage"))
        .basis(pack.basis(CellProperty.VOLTAGE))
        .safety()
        .cautionBand(CautionBand.NONE)
        .atMost(
            Figure.ofSi(kernel.settings().voltageV(), VOLT),
            Figure.of(pack.maximumVoltage(), VOLT));
  }

  /** A caution, not a failure, because the battery management asks for less. */
  private Check unthrottled() {
    ChargeRun.State first = course.first();
    PackModel.Bound cells = kernel.pack().at(first.soc(), first.temperatureK());
    double largestA =
        Math.min(
            kernel.source().currentA(),
            kernel.source().powerW(cells.openCircuitV()) / cells.openCircuitV());
    return Check.named(
            "charging.unthrottled-current",
            "largest current of the source against what the cells take at the start")
        .source(Source.dataSheet("cell charge current"))
        .basis(pack.basis(CellProperty.CURRENT))
        .note(
            Figure.ofSi(largestA, AMPERE)
                + " against "
                + Figure.ofSi(cells.currentA(), AMPERE)
                + "; above it the battery management must hold the charger back")
        .recommends(largestA <= cells.currentA());
  }

  private Check hottest() {
    double hottestK =
        course.states().stream().mapToDouble(ChargeRun.State::temperatureK).max().orElseThrow();
    return Check.named("charging.temperature", "hottest cells against their charge temperatures")
        .source(Source.dataSheet("cell charge temperatures"))
        .basis(pack.basis(CellProperty.TEMPERATURE))
        .basis(pack.basis(CellProperty.HEAT))
        .safety()
        .atMost(Figure.ofSi(hottestK, CELSIUS), Figure.of(limit(), CELSIUS));
  }

  /** The lowest of the upper ends of all cells. */
  private Quantity<Temperature> limit() {
    double limitK = Double.POSITIVE_INFINITY;
    for (SeriesString string : pack.strings()) {
      for (SeriesString.Group group : string.groups()) {
        Quantity<Temperature> hottest =
            group.module().cell().temperatures(org.wattwright.battery.Direction.CHARGE).hottest();
        limitK = Math.min(limitK, Kind.TEMPERATURE.siValueOf(hottest));
      }
    }
    return Kind.TEMPERATURE.ofSi(limitK);
  }
}
