package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Brake pedal and master cylinder: line pressure p = (F_pedal·i + F_servo)/(π/4·d²), no losses.
 * Source: lever law, equilibrium of the piston. Immutable and thread-safe.
 *
 * @param leverRatio pedal travel by piston travel, &gt; 0
 * @param bore of the master cylinder, &gt; 0 mm
 */
public record PedalGear(double leverRatio, Quantity<Length> bore) implements Serializable {
  private static final Source SECONDARY =
      Source.standard("Directive 71/320/EEC", "Annex I, secondary brake; UN R13-H");

  /** Whose pedal force is limited. */
  public enum Category {
    /** Passenger cars, 500 N. */
    M1(500),
    /** Vans and all others, 700 N. */
    OTHER(700);

    private final double pedalN;

    Category(double pedalN) {
      this.pedalN = pedalN;
    }

    /**
     * Highest pedal force of the secondary brake, Directive 71/320/EEC.
     *
     * @return in N
     */
    public Quantity<Force> highestPedalForce() {
      return NEWTON.of(pedalN);
    }
  }

  /**
   * Checks the ranges.
   *
   * @param leverRatio &gt; 0
   * @param bore &gt; 0 mm
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public PedalGear {
    Require.positive("PedalGear.leverRatio", leverRatio);
    Require.quantity("PedalGear.bore", bore, MILLIMETRE).positive();
    bore = Measure.from(bore, Kind.LENGTH);
  }

  /**
   * Line pressure without help of the servo.
   *
   * @param pedal force of the foot, ≥ 0 N
   * @return in MPa
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Pressure> linePressure(Quantity<Force> pedal) {
    double pedalN = Require.quantity("PedalGear.pedal", pedal, NEWTON).nonNegative();
    return MEGAPASCAL.of(pedalN * leverRatio / boreM2() / 1e6);
  }

  /**
   * Line pressure with the servo at its full force.
   *
   * @param pedal force of the foot, ≥ 0 N
   * @param servo what the servo adds at the piston
   * @param difference between air and vacuum, ≥ 0 kPa
   * @return in MPa; empty if the diaphragm of the servo is not known
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public Optional<Quantity<Pressure>> linePressure(
      Quantity<Force> pedal, BrakeServo servo, Quantity<Pressure> difference) {
    double unaidedPa = Kind.PRESSURE.siValueOf(linePressure(pedal));
    return servo
        .force(difference)
        .map(f -> MEGAPASCAL.of((unaidedPa + Kind.FORCE.siValueOf(f) / boreM2()) / 1e6));
  }

  /**
   * The working of the line pressure with the servo dead.
   *
   * @param pedal force of the foot, ≥ 0 N
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Worksheet worksheet(Quantity<Force> pedal) {
    Worksheet.Recording sheet = Worksheet.record("Line pressure with the servo dead");
    sheet
        .step("p", "line pressure")
        .formula("F·i/(π/4·d²)")
        .with("F", Figure.of(pedal, NEWTON))
        .with("i", Figure.number(leverRatio))
        .with("d", Figure.of(bore, MILLIMETRE))
        .gives(Figure.of(linePressure(pedal), MEGAPASCAL));
    return sheet.toWorksheet();
  }

  private double boreM2() {
    double boreM = Kind.LENGTH.siValueOf(bore);
    return Math.PI / 4 * boreM * boreM;
  }

  /**
   * {@code installation.brake-unassisted}, while it is not known what secondary performance needs.
   *
   * @param category of the vehicle
   * @return NOT_CHECKED, with the line pressure that the highest pedal force gives
   */
  public Check checkServoDead(Category category) {
    return servoDead(category)
        .notChecked(
            Figure.of(linePressure(category.highestPedalForce()), MEGAPASCAL),
            "line pressure for secondary braking");
  }

  /**
   * {@code installation.brake-unassisted}: line pressure at the highest pedal force with the servo
   * dead, against what secondary performance needs.
   *
   * @param category of the vehicle
   * @param needed for secondary performance, &gt; 0 MPa
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Check checkServoDead(Category category, Given<Quantity<Pressure>> needed) {
    Require.quantity("PedalGear.needed", needed.value(), MEGAPASCAL).positive();
    return servoDead(category)
        .basisOf(needed)
        .atLeast(
            Figure.of(linePressure(category.highestPedalForce()), MEGAPASCAL),
            Figure.of(needed.value(), MEGAPASCAL));
  }

  private static CheckBuilder servoDead(Category category) {
    return Check.named(
            "installation.brake-unassisted",
            "line pressure with the servo dead, at " + category.highestPedalForce())
        .source(SECONDARY)
        .safety();
  }

  /**
   * Ratio and bore.
   *
   * @return for example {@code pedal 4:1 on a cylinder of 22.22 mm}
   */
  @Override
  public String toString() {
    return "pedal " + leverRatio + ":1 on a cylinder of " + bore;
  }
}
