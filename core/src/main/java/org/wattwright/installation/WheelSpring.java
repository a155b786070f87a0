package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.HERTZ;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_PER_MILLIMETRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.SpringRate;

/**
 * A spring seen from its wheel: ride height Δz = ΔF/k, natural frequency f = √(k/m)/(2π). Source:
 * linear spring. Touring cars lie between 1.0 Hz and 1.5 Hz, common practice. For axles with their
 * stops see {@link org.wattwright.vehicle.AxleSpring}. Immutable and thread-safe.
 *
 * @param rate at the wheel, &gt; 0 N/mm
 */
public record WheelSpring(Quantity<SpringRate> rate) implements Serializable {
  /**
   * Checks the range.
   *
   * @param rate at the wheel, &gt; 0 N/mm
   * @throws InvalidInputException if not positive
   */
  public WheelSpring {
    Require.quantity("WheelSpring.rate", rate, NEWTON_PER_MILLIMETRE).positive();
    rate = Measure.from(rate, Kind.SPRING_RATE);
  }

  /**
   * From the spring itself: k = k_spring·MR².
   *
   * @param spring rate of the spring, &gt; 0 N/mm
   * @param motionRatio spring travel by wheel travel, &gt; 0 to 2; some books use the inverse
   * @return the spring at its wheel
   * @throws InvalidInputException if a value is outside its range
   */
  public static WheelSpring behind(Quantity<SpringRate> spring, double motionRatio) {
    double k = Require.quantity("WheelSpring.spring", spring, NEWTON_PER_MILLIMETRE).positive();
    double ratio = ratio(motionRatio);
    return new WheelSpring(Kind.SPRING_RATE.ofSi(k * ratio * ratio));
  }

  private static double ratio(double motionRatio) {
    Require.positive("WheelSpring.motionRatio", motionRatio);
    return Require.between("WheelSpring.motionRatio", motionRatio, 0, 2);
  }

  /**
   * Rate of the spring itself that gives this rate at the wheel: k/MR².
   *
   * @param motionRatio spring travel by wheel travel, &gt; 0 to 2
   * @return in N/mm
   * @throws InvalidInputException if outside its range
   */
  public Quantity<SpringRate> springRate(double motionRatio) {
    double ratio = ratio(motionRatio);
    return NEWTON_PER_MILLIMETRE.of(rateNPerM() / (ratio * ratio) / 1000);
  }

  /**
   * How far one wheel's spring sinks under more load: ΔF/k.
   *
   * @param change of the load on this wheel, of either sign
   * @return in mm, negative where it rises
   */
  public Quantity<Length> sinksBy(Quantity<Force> change) {
    double changeN = Require.quantity("WheelSpring.change", change, NEWTON).any();
    return MILLIMETRE.of(changeN / rateNPerM() * 1000);
  }

  /**
   * Natural frequency of the sprung mass on this spring.
   *
   * @param sprung mass on this wheel, &gt; 0 kg
   * @return in Hz
   * @throws InvalidInputException if not positive
   */
  public Quantity<Frequency> naturalFrequency(Quantity<Mass> sprung) {
    double massKg = Require.quantity("WheelSpring.sprung", sprung, KILOGRAM).positive();
    return HERTZ.of(Math.sqrt(rateNPerM() / massKg) / (2 * Math.PI));
  }

  /**
   * The spring that keeps the natural frequency under another mass: k·m₂/m₁.
   *
   * @param before sprung mass on this wheel, &gt; 0 kg
   * @param after sprung mass on this wheel, &gt; 0 kg
   * @return a new spring
   * @throws InvalidInputException if a mass is not positive
   */
  public WheelSpring keepingFrequency(Quantity<Mass> before, Quantity<Mass> after) {
    double beforeKg = Require.quantity("WheelSpring.before", before, KILOGRAM).positive();
    double afterKg = Require.quantity("WheelSpring.after", after, KILOGRAM).positive();
    return new WheelSpring(Kind.SPRING_RATE.ofSi(rateNPerM() * afterKg / beforeKg));
  }

  /**
   * With the tyre in series: k·k_t/(k + k_t).
   *
   * @param tyre vertical rate of the tyre, &gt; 0 N/mm
   * @return the ride rate
   * @throws InvalidInputException if not positive
   */
  public WheelSpring onTyre(Quantity<SpringRate> tyre) {
    double tyreNPerM = Require.quantity("WheelSpring.tyre", tyre, NEWTON_PER_MILLIMETRE).positive();
    double k = rateNPerM();
    return new WheelSpring(Kind.SPRING_RATE.ofSi(k * tyreNPerM / (k + tyreNPerM)));
  }

  /**
   * The working of ride height and frequency.
   *
   * @param change of the load on this wheel, of either sign
   * @param sprung mass on this wheel after it, &gt; 0 kg
   * @return the worksheet
   * @throws InvalidInputException if the mass is not positive
   */
  public Worksheet worksheet(Quantity<Force> change, Quantity<Mass> sprung) {
    Worksheet.Recording sheet = Worksheet.record("Spring at its wheel");
    sheet
        .step("Δz", "how far the wheel's spring sinks")
        .formula("ΔF/k")
        .with("ΔF", Figure.of(change, NEWTON))
        .with("k", Figure.of(rate, NEWTON_PER_MILLIMETRE))
        .gives(Figure.of(sinksBy(change), MILLIMETRE));
    sheet
        .step("f", "natural frequency")
        .formula("√(k/m)/(2·π)")
        .with("k", Figure.of(rate, NEWTON_PER_MILLIMETRE))
        .with("m", Figure.of(sprung, KILOGRAM))
        .gives(Figure.of(naturalFrequency(sprung), HERTZ));
    return sheet.toWorksheet();
  }

  private double rateNPerM() {
    return Kind.SPRING_RATE.siValueOf(rate);
  }
}
