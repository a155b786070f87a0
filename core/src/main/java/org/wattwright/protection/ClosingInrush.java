package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Peak current when a contactor closes on a capacitance that still lacks some voltage.
 *
 * <p>i ≤ min(ΔU/R, ΔU·√(C/L)): the two bounds of a series circuit of R, L and C, each of which the
 * true peak never exceeds. Source: circuit theory. Immutable and thread-safe.
 *
 * @param resistance of the whole loop, ≥ 0 Ω
 * @param inductance of the whole loop, ≥ 0 H; 0 where it is not known
 * @param capacitance on the bus, ≥ 0 F
 */
public record ClosingInrush(
    Quantity<ElectricResistance> resistance,
    Quantity<ElectricInductance> inductance,
    Quantity<ElectricCapacitance> capacitance)
    implements Serializable {
  /**
   * Checks the fields.
   *
   * @param resistance ≥ 0 Ω
   * @param inductance ≥ 0 H
   * @param capacitance ≥ 0 F
   * @throws org.wattwright.units.InvalidInputException if a field is negative
   */
  public ClosingInrush {
    Require.quantity("ClosingInrush.resistance", resistance, OHM).nonNegative();
    Require.quantity("ClosingInrush.inductance", inductance, HENRY).nonNegative();
    Require.quantity("ClosingInrush.capacitance", capacitance, FARAD).nonNegative();
    resistance = Measure.from(resistance, Kind.RESISTANCE);
    inductance = Measure.from(inductance, Kind.INDUCTANCE);
    capacitance = Measure.from(capacitance, Kind.CAPACITANCE);
  }

  /** Ω: the inrush is the missing voltage over this; the greater of R and √(L/C). */
  double impedanceOhm() {
    double farad = Kind.CAPACITANCE.siValueOf(capacitance);
    double henry = Kind.INDUCTANCE.siValueOf(inductance);
    double surgeOhm = farad > 0 ? Math.sqrt(henry / farad) : Double.POSITIVE_INFINITY;
    return Math.max(Kind.RESISTANCE.siValueOf(resistance), surgeOhm);
  }

  /**
   * Highest current that a missing voltage can drive.
   *
   * @param missing ΔU between supply and bus, ≥ 0 V
   * @return in A; 0 A without capacitance
   * @throws org.wattwright.units.InvalidInputException if negative, or if neither resistance nor
   *     inductance bounds the current
   */
  public Quantity<ElectricCurrent> peak(Quantity<ElectricPotential> missing) {
    double missingV = Require.quantity("ClosingInrush.missing", missing, VOLT).nonNegative();
    return AMPERE.of(missingV / boundedOhm());
  }

  /**
   * Greatest missing voltage that keeps the current within a limit.
   *
   * @param limit make limit of the contactor, &gt; 0 A
   * @return ΔU in V
   * @throws org.wattwright.units.InvalidInputException if not positive, if there is no capacitance,
   *     or if neither resistance nor inductance bounds the current
   */
  public Quantity<ElectricPotential> admissible(Quantity<ElectricCurrent> limit) {
    double limitA = Require.quantity("ClosingInrush.limit", limit, AMPERE).positive();
    Require.quantity("ClosingInrush.capacitance", capacitance, FARAD).positive();
    return VOLT.of(limitA * boundedOhm());
  }

  private double boundedOhm() {
    double ohm = impedanceOhm();
    if (!(ohm > 0)) {
      throw InvalidInputException.of(
          "ClosingInrush.resistance", "> 0 Ω where no inductance is given", resistance.toString());
    }
    return ohm;
  }
}
