package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.OHM_PER_METRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.ResistancePerLength;

/**
 * A sense wire from a cell to its measuring unit. Source: Ohm's law. Immutable and thread-safe.
 *
 * @param length one way, &gt; 0 m
 * @param resistancePerLength &gt; 0 Ω/m
 */
public record SenseWire(Quantity<Length> length, Quantity<ResistancePerLength> resistancePerLength)
    implements Serializable {
  private static final Source PRACTICE =
      Source.commonPractice("tap fuse above the bleed current, below what the wire carries");

  /**
   * Checks the ranges.
   *
   * @param length one way, &gt; 0 m
   * @param resistancePerLength &gt; 0 Ω/m
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public SenseWire {
    Require.quantity("SenseWire.length", length, METRE).positive();
    Require.quantity("SenseWire.resistancePerLength", resistancePerLength, OHM_PER_METRE)
        .positive();
    length = Measure.from(length, Kind.LENGTH);
    resistancePerLength = Measure.from(resistancePerLength, Kind.RESISTANCE_PER_LENGTH);
  }

  /**
   * Resistance of one wire.
   *
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance() {
    return OHM.of(ohm());
  }

  private double ohm() {
    return Kind.LENGTH.siValueOf(length)
        * Kind.RESISTANCE_PER_LENGTH.siValueOf(resistancePerLength);
  }

  /**
   * Current through two wires of the harness that touch: U/(2·R), the cells' resistance left out.
   *
   * @param between voltage of the cells between the two taps, &gt; 0 V
   * @return in A
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Quantity<ElectricCurrent> shortCircuitCurrent(Quantity<ElectricPotential> between) {
    double volts = Require.quantity("SenseWire.between", between, VOLT).positive();
    return AMPERE.of(volts / (2 * ohm()));
  }

  /**
   * The working of resistance and short-circuit current.
   *
   * @param between voltage of the cells between the two taps, &gt; 0 V
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Worksheet worksheet(Quantity<ElectricPotential> between) {
    Worksheet.Recording sheet = Worksheet.record("Sense wire");
    sheet
        .step("R", "resistance of one wire")
        .formula("R'·L")
        .with("R'", Figure.of(resistancePerLength, OHM_PER_METRE))
        .with("L", Figure.of(length, METRE))
        .gives(Figure.of(resistance(), OHM));
    sheet
        .step("I", "current through two wires that touch")
        .formula("U/(2·R)")
        .with("U", Figure.of(between, VOLT))
        .with("R", Figure.of(resistance(), OHM))
        .gives(Figure.of(shortCircuitCurrent(between), AMPERE));
    return sheet.toWorksheet();
  }

  /**
   * The fuse at the cell end: {@code installation.tap-fuse-bleed} and {@code
   * installation.tap-fuse-wire}, and {@code installation.tap-fuse-voltage}.
   *
   * @param fuse what is fitted
   * @param bleed current of balancing, ≥ 0 A
   * @param wireCarries current that the wire carries for good, &gt; 0 A
   * @param pack highest voltage of the pack, &gt; 0 V
   * @return three checks
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static List<Check> checkTapFuse(
      TapFuse fuse,
      Quantity<ElectricCurrent> bleed,
      Quantity<ElectricCurrent> wireCarries,
      Quantity<ElectricPotential> pack) {
    Require.quantity("SenseWire.bleed", bleed, AMPERE).nonNegative();
    Require.quantity("SenseWire.wireCarries", wireCarries, AMPERE).positive();
    Require.quantity("SenseWire.pack", pack, VOLT).positive();
    return List.of(
        Check.named("installation.tap-fuse-bleed", "rating of the tap fuse against bleeding")
            .source(PRACTICE)
            .atLeast(Figure.of(fuse.rating(), AMPERE), Figure.of(bleed, AMPERE)),
        Check.named("installation.tap-fuse-wire", "rating of the tap fuse against the wire")
            .source(PRACTICE)
            .safety()
            .atMost(Figure.of(fuse.rating(), AMPERE), Figure.of(wireCarries, AMPERE)),
        Check.named("installation.tap-fuse-voltage", "voltage rating of the tap fuse")
            .source(PRACTICE)
            .answeredBy(Party.PARTS_SUPPLIER)
            .safety()
            .atLeast(Figure.of(fuse.voltage(), VOLT), Figure.of(pack, VOLT)));
  }

  /**
   * A fuse at the cell end of a sense wire.
   *
   * @param rating current, &gt; 0 A
   * @param voltage direct, that it breaks, &gt; 0 V
   */
  public record TapFuse(Quantity<ElectricCurrent> rating, Quantity<ElectricPotential> voltage)
      implements Serializable {
    /**
     * Checks the ranges.
     *
     * @param rating &gt; 0 A
     * @param voltage &gt; 0 V
     * @throws org.wattwright.units.InvalidInputException if a value is not positive
     */
    public TapFuse {
      Require.quantity("TapFuse.rating", rating, AMPERE).positive();
      Require.quantity("TapFuse.voltage", voltage, VOLT).positive();
      rating = Measure.from(rating, Kind.CURRENT);
      voltage = Measure.from(voltage, Kind.VOLTAGE);
    }
  }
}
