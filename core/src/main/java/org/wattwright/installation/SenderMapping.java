package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * An old dial and the sender resistance it wants: shown level 0 to 1 against resistance, piecewise
 * linear between measured points. The resistance may rise or fall with the level. Measure the gauge
 * at hand: pairs of the trade are common practice, and many gauges are not linear. Immutable and
 * thread-safe.
 */
public final class SenderMapping implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Ω against level. */
  private final LinearTable table;

  /**
   * A point of the mapping.
   *
   * @param level shown, 0 empty or cold, 1 full or hot
   * @param sender resistance that shows it, ≥ 0 Ω
   */
  public record DialPoint(double level, Quantity<ElectricResistance> sender)
      implements Serializable {
    /**
     * Checks the ranges.
     *
     * @param level 0 to 1
     * @param sender ≥ 0 Ω
     * @throws InvalidInputException if a value is outside its range
     */
    public DialPoint {
      Require.fraction("SenderMapping.level", level);
      Require.quantity("SenderMapping.sender", sender, OHM).nonNegative();
      sender = Measure.from(sender, Kind.RESISTANCE);
    }
  }

  private SenderMapping(LinearTable table) {
    this.table = table;
  }

  /**
   * A straight line from empty to full.
   *
   * @param empty sender at level 0, ≥ 0 Ω
   * @param full sender at level 1, ≥ 0 Ω, unlike the first
   * @return the mapping
   * @throws InvalidInputException if a value is negative or both are alike
   */
  public static SenderMapping linear(
      Quantity<ElectricResistance> empty, Quantity<ElectricResistance> full) {
    return of(List.of(new DialPoint(0, empty), new DialPoint(1, full)));
  }

  /**
   * Through measured points.
   *
   * @param points by rising level from 0 to 1; resistance rising or falling throughout
   * @return the mapping
   * @throws InvalidInputException if levels do not rise from 0 to 1 or the resistance turns
   */
  public static SenderMapping of(List<DialPoint> points) {
    double[] levels = points.stream().mapToDouble(DialPoint::level).toArray();
    double[] ohms =
        points.stream().mapToDouble(p -> Kind.RESISTANCE.siValueOf(p.sender())).toArray();
    LinearTable table = LinearTable.of("SenderMapping.points", levels, ohms);
    if (!(table.size() >= 2 && table.firstX() == 0 && table.lastX() == 1)) {
      throw InvalidInputException.of("SenderMapping.points", "from level 0 to 1", "" + points);
    }
    double sign = Math.signum(ohms[ohms.length - 1] - ohms[0]);
    for (int i = 1; i < ohms.length; i++) {
      if (!(sign * (ohms[i] - ohms[i - 1]) > 0)) {
        throw InvalidInputException.of(
            "SenderMapping.points[" + i + "].sender",
            "rising or falling throughout",
            points.get(i).sender().toString());
      }
    }
    return new SenderMapping(table);
  }

  /**
   * Sender resistance that shows a level.
   *
   * @param level 0 to 1
   * @return in Ω
   * @throws InvalidInputException if outside its range
   */
  public Quantity<ElectricResistance> resistanceFor(double level) {
    return OHM.of(table.at(Require.fraction("SenderMapping.level", level)));
  }

  /**
   * Heat in a resistor that stands for the sender: (U/(R_g + R))²·R.
   *
   * @param level 0 to 1
   * @param gauge resistance of the gauge in series, ≥ 0 Ω
   * @param supply of the dial, &gt; 0 V
   * @return in W; 0 where both resistances are 0
   * @throws InvalidInputException if a value is outside its range
   */
  public Quantity<Power> heat(
      double level, Quantity<ElectricResistance> gauge, Quantity<ElectricPotential> supply) {
    double ohm = Kind.RESISTANCE.siValueOf(resistanceFor(level));
    double gaugeOhm = Require.quantity("SenderMapping.gauge", gauge, OHM).nonNegative();
    double volts = Require.quantity("SenderMapping.supply", supply, VOLT).positive();
    if (ohm == 0) {
      return WATT.of(0);
    }
    double amps = volts / (gaugeOhm + ohm);
    return WATT.of(amps * amps * ohm);
  }

  /**
   * Share of the time that a switched resistor is on in place of the sender.
   *
   * @param level 0 to 1
   * @param gauge resistance of the gauge in series, ≥ 0 Ω
   * @param switched the dial's driver
   * @return 0 to 1
   * @throws InvalidInputException if a value is outside its range, or the resistor in series is
   *     larger than the sender it stands for
   */
  public double dutyFor(double level, Quantity<ElectricResistance> gauge, SwitchedSender switched) {
    double ohm = Kind.RESISTANCE.siValueOf(resistanceFor(level));
    double gaugeOhm = Require.quantity("SenderMapping.gauge", gauge, OHM).positive();
    double onOhm = Kind.RESISTANCE.siValueOf(switched.whenOn());
    if (!(onOhm <= ohm)) {
      throw InvalidInputException.of(
          "SenderMapping.whenOn", "≤ " + resistanceFor(level), switched.whenOn().toString());
    }
    double ratio = (gaugeOhm + onOhm) / (gaugeOhm + ohm);
    return switched.movement() == Movement.THERMAL ? ratio * ratio : ratio;
  }

  /**
   * The working of the heat in a resistor that stands for the sender.
   *
   * @param level 0 to 1
   * @param gauge resistance of the gauge in series, ≥ 0 Ω
   * @param supply of the dial, &gt; 0 V
   * @return the worksheet
   * @throws InvalidInputException if a value is outside its range
   */
  public Worksheet worksheet(
      double level, Quantity<ElectricResistance> gauge, Quantity<ElectricPotential> supply) {
    Worksheet.Recording sheet = Worksheet.record("Resistor in place of the sender");
    sheet
        .step("R", "sender at " + Figure.share(level) + ", between the measured points")
        .gives(Figure.of(resistanceFor(level), OHM));
    sheet
        .step("P", "heat in the resistor")
        .formula("(U/(R_g + R))²·R")
        .with("U", Figure.of(supply, VOLT))
        .with("R_g", Figure.of(gauge, OHM))
        .with("R", Figure.of(resistanceFor(level), OHM))
        .gives(Figure.of(heat(level, gauge, supply), WATT));
    return sheet.toWorksheet();
  }

  /** What moves the needle. */
  public enum Movement {
    /** Coils with a slow filter: follows the mean current. */
    MOVING_IRON,
    /** A heated strip: follows the mean square of the current. */
    THERMAL
  }

  /**
   * A resistor that is switched on and off in place of a sender.
   *
   * @param whenOn series resistance when on, ≥ 0 Ω
   * @param movement what moves the needle
   */
  public record SwitchedSender(Quantity<ElectricResistance> whenOn, Movement movement)
      implements Serializable {
    /**
     * Checks the range.
     *
     * @param whenOn ≥ 0 Ω
     * @param movement what moves the needle
     * @throws InvalidInputException if negative
     */
    public SwitchedSender {
      Require.quantity("SenderMapping.whenOn", whenOn, OHM).nonNegative();
      whenOn = Measure.from(whenOn, Kind.RESISTANCE);
      Objects.requireNonNull(movement, "movement");
    }
  }

  /**
   * A Markdown table of level and resistance.
   *
   * @param steps equal steps of the level, 1 to 1000
   * @return the table, ending with a line feed
   * @throws InvalidInputException if outside its range
   */
  public String toMarkdown(int steps) {
    Require.count("SenderMapping.steps", steps, 1, 1000);
    MarkdownTable rows = MarkdownTable.withColumns("Level", "Sender");
    for (int i = 0; i <= steps; i++) {
      double level = (double) i / steps;
      rows.row(Figure.share(level).toString(), Figure.of(resistanceFor(level), OHM).toString());
    }
    return rows.toText();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SenderMapping that && table.equals(that.table);
  }

  @Override
  public int hashCode() {
    return table.hashCode();
  }

  /**
   * Both ends.
   *
   * @return for example {@code 240 Ω … 33 Ω}
   */
  @Override
  public String toString() {
    return resistanceFor(0) + " … " + resistanceFor(1);
  }
}
