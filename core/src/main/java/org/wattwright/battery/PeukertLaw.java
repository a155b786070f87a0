package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * How the capacity of a lead-acid battery shrinks with the current it is drawn at.
 *
 * <p>t = T·(C/(I·T))ᵏ for a battery rated at C over T hours. k = 1 is an ideal battery; flooded
 * lead-acid about 1.1 … 1.3 (common practice). Constant current, from full, at the temperature of
 * the rating; not for lithium cells, whose loss of capacity at high current is their voltage limit.
 *
 * <p>Source: W. Peukert (1897), as given by J. Larminie, J. Lowry, Electric Vehicle Technology
 * Explained. Immutable and thread-safe.
 *
 * @param capacity rated, &gt; 0 A·h
 * @param time of that rating, &gt; 0 h: without it "100 A·h" means nothing here
 * @param exponent Peukert's k, 1 to 2
 */
public record PeukertLaw(Quantity<ElectricCharge> capacity, Quantity<Time> time, double exponent)
    implements Serializable {
  /**
   * Checks the range.
   *
   * @param capacity rated, &gt; 0 A·h
   * @param time of that rating, &gt; 0 h
   * @param exponent 1 to 2
   * @throws InvalidInputException if a value is outside its range
   */
  public PeukertLaw {
    Require.quantity("PeukertLaw.capacity", capacity, WorkshopUnits.AMPERE_HOUR).positive();
    Require.quantity("PeukertLaw.time", time, WorkshopUnits.HOUR).positive();
    Require.between("PeukertLaw.exponent", exponent, 1, 2);
    capacity = Measure.from(capacity, Kind.CHARGE);
    time = Measure.from(time, Kind.TIME);
  }

  /**
   * From a rating and a known exponent.
   *
   * @param capacity rated, &gt; 0 A·h
   * @param time of that rating, &gt; 0 h
   * @param exponent 1 to 2
   * @return the law
   */
  public static PeukertLaw of(
      Quantity<ElectricCharge> capacity, Quantity<Time> time, double exponent) {
    return new PeukertLaw(capacity, time, exponent);
  }

  /**
   * A current a full battery delivers for a time.
   *
   * @param current &gt; 0 A
   * @param time &gt; 0 h
   */
  public record Rating(Quantity<ElectricCurrent> current, Quantity<Time> time)
      implements Serializable {
    /**
     * Checks the range.
     *
     * @param current &gt; 0 A
     * @param time &gt; 0 h
     * @throws InvalidInputException if a value is not positive
     */
    public Rating {
      Require.quantity("PeukertLaw.Rating.current", current, WorkshopUnits.AMPERE).positive();
      Require.quantity("PeukertLaw.Rating.time", time, WorkshopUnits.HOUR).positive();
      current = Measure.from(current, Kind.CURRENT);
      time = Measure.from(time, Kind.TIME);
    }

    /**
     * From a capacity over a time.
     *
     * @param capacity &gt; 0 A·h
     * @param time &gt; 0 h
     * @return the rating with I = C/T
     */
    public static Rating ofCapacity(Quantity<ElectricCharge> capacity, Quantity<Time> time) {
      double timeS =
          Require.quantity("PeukertLaw.Rating.time", time, WorkshopUnits.HOUR).positive();
      return new Rating(Kind.CURRENT.ofSi(Kind.CHARGE.siValueOf(capacity) / timeS), time);
    }

    double currentA() {
      return Kind.CURRENT.siValueOf(current);
    }

    double timeS() {
      return Kind.TIME.siValueOf(time);
    }
  }

  /**
   * From two ratings of one battery: k = ln(T₁/T₂)/ln(I₂/I₁).
   *
   * @param rated the rating the law starts from
   * @param other another, at another current
   * @return the law
   * @throws InvalidInputException if both are at the same current, or the exponent is outside 1 … 2
   */
  public static PeukertLaw fromRatings(Rating rated, Rating other) {
    double currentRatio = other.currentA() / rated.currentA();
    if (currentRatio == 1) {
      throw InvalidInputException.of(
          "PeukertLaw.other.current", "different from " + rated.current(), "the same");
    }
    double exponent = Math.log(rated.timeS() / other.timeS()) / Math.log(currentRatio);
    return new PeukertLaw(
        Kind.CHARGE.ofSi(rated.currentA() * rated.timeS()), rated.time(), exponent);
  }

  /**
   * Time to empty a full battery.
   *
   * @param current constant, &gt; 0 A
   * @return in s
   * @throws InvalidInputException if the current is not positive
   */
  public Quantity<Time> dischargeTime(Quantity<ElectricCurrent> current) {
    return Kind.TIME.ofSi(dischargeS(current));
  }

  private double dischargeS(Quantity<ElectricCurrent> current) {
    double currentA =
        Require.quantity("PeukertLaw.current", current, WorkshopUnits.AMPERE).positive();
    double timeS = Kind.TIME.siValueOf(time);
    return timeS * Math.pow(Kind.CHARGE.siValueOf(capacity) / (currentA * timeS), exponent);
  }

  /**
   * Capacity delivered at a current.
   *
   * @param current constant, &gt; 0 A
   * @return in A·h
   * @throws InvalidInputException if the current is not positive
   */
  public Quantity<ElectricCharge> capacityAt(Quantity<ElectricCurrent> current) {
    return Kind.CHARGE.ofSi(dischargeS(current) * Kind.CURRENT.siValueOf(current));
  }

  /**
   * Depth of discharge of a full battery after a current for a time; shares of several add up.
   *
   * @param current constant, &gt; 0 A
   * @param duration ≥ 0 s
   * @return 0 full, 1 empty; above 1 it was empty before
   * @throws InvalidInputException if the current is not positive or the duration is negative
   */
  public double depthAfter(Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    double durationS =
        Require.quantity("PeukertLaw.duration", duration, WorkshopUnits.SECOND).nonNegative();
    return durationS / dischargeS(current);
  }

  /**
   * Rating and exponent.
   *
   * @return for example {@code 42 A·h at 10 h, k = 1.107}
   */
  @Override
  public String toString() {
    String k = org.wattwright.check.Figure.number(exponent).toString();
    return Measures.format(capacity, Kind.CHARGE) + " at " + time + ", k = " + k;
  }
}
