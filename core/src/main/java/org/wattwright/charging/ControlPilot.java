package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.PERCENT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Frequency;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * The control pilot of an AC charging point: its duty cycle tells the vehicle the largest current
 * it may draw from each phase.
 *
 * <p>With D in per cent: 6 A from 8 % (SAE J1772: 9.5 %) to 10 %; I = 0.6·D up to 85 %; I = 2.5·(D
 * − 64) up to 96 %; 80 A up to 97 % (SAE J1772: 96.5 %). The law jumps from 51 A to 52.5 A at 85 %.
 * Outside these bands nothing may be drawn, which is an answer; from 4.5 % to 5.5 % the current is
 * agreed by digital communication, which this class does not speak.
 *
 * <p>Source: IEC 61851-1 Annex A; SAE J1772. Immutable and thread-safe.
 *
 * @param dutyCycle share of the time the pilot is positive, 0 % to 100 %
 * @param edition whose bands hold
 */
public record ControlPilot(Quantity<Dimensionless> dutyCycle, PilotEdition edition)
    implements Serializable {
  /** Frequency of the modulated pilot. Source: IEC 61851-1, SAE J1772. */
  public static final Quantity<Frequency> FREQUENCY = Measures.hertz(1000);

  static final Source SOURCE =
      Source.standard("IEC 61851-1", "Annex A; SAE J1772 (duty-cycle table)");

  private static final double NO_CHARGING_BELOW = 3;
  private static final double DIGITAL_FROM = 4.5;
  private static final double DIGITAL_TO = 5.5;
  private static final double LAW_FROM = 10;
  private static final double UPPER_LAW_ABOVE = 85;
  private static final double UPPER_LAW_TO = 96;
  private static final double LOWEST_A = 6;
  private static final double LAW_A_PER_PERCENT = 0.6;
  private static final double UPPER_A_PER_PERCENT = 2.5;
  private static final double UPPER_OFFSET_PERCENT = 64;
  private static final double HIGHEST_A = 80;

  /** So that 0.85 read as 85.00000000000001 % does not jump to the next band. */
  private static final double ROUNDING = 1e-9;

  /**
   * Checks the range.
   *
   * @param dutyCycle 0 % to 100 %
   * @param edition whose bands hold
   * @throws org.wattwright.units.InvalidInputException if the duty cycle is outside its range
   */
  public ControlPilot {
    Require.quantity("ControlPilot.dutyCycle", dutyCycle, PERCENT).between(0, 100);
    dutyCycle = Measure.from(dutyCycle, Kind.DIMENSIONLESS);
    Objects.requireNonNull(edition, "edition");
  }

  /**
   * A pilot read by IEC 61851-1.
   *
   * @param dutyCycle 0 % to 100 %
   * @return the pilot
   * @throws org.wattwright.units.InvalidInputException if the duty cycle is outside its range
   */
  public static ControlPilot of(Quantity<Dimensionless> dutyCycle) {
    return new ControlPilot(dutyCycle, PilotEdition.IEC_61851_1);
  }

  /**
   * This pilot read by another standard.
   *
   * @param other whose bands hold
   * @return a new pilot
   */
  public ControlPilot readBy(PilotEdition other) {
    return new ControlPilot(dutyCycle, other);
  }

  /**
   * The pilot that offers a current: D = I/0.6 up to 51 A, D = I/2.5 + 64 above.
   *
   * @param current to offer each phase
   * @return empty below 6 A and above 80 A
   */
  public static Optional<ControlPilot> offering(Quantity<ElectricCurrent> current) {
    double currentA = Kind.CURRENT.siValueOf(current);
    if (!(currentA >= LOWEST_A && currentA <= HIGHEST_A)) {
      return Optional.empty();
    }
    double percent =
        currentA <= LAW_A_PER_PERCENT * UPPER_LAW_ABOVE
            ? currentA / LAW_A_PER_PERCENT
            : currentA / UPPER_A_PER_PERCENT + UPPER_OFFSET_PERCENT;
    return Optional.of(of(PERCENT.of(percent)));
  }

  /**
   * What the duty cycle says.
   *
   * @return the meaning
   */
  public PilotMeaning meaning() {
    double percent = percent();
    if (percent < NO_CHARGING_BELOW) {
      return PilotMeaning.NO_CHARGING;
    }
    if (percent >= DIGITAL_FROM && percent <= DIGITAL_TO) {
      return PilotMeaning.DIGITAL;
    }
    if (percent >= 100 * edition.lowestDutyCycle() - ROUNDING
        && percent <= 100 * edition.highestDutyCycle() + ROUNDING) {
      return PilotMeaning.CURRENT;
    }
    return percent == 100 ? PilotMeaning.NOT_MODULATED : PilotMeaning.ERROR;
  }

  /**
   * Largest current that each phase may carry.
   *
   * @return empty where the duty cycle offers none
   */
  public Optional<Quantity<ElectricCurrent>> current() {
    return meaning() == PilotMeaning.CURRENT
        ? Optional.of(Kind.CURRENT.ofSi(law(percent())))
        : Optional.empty();
  }

  private static double law(double percent) {
    if (percent < LAW_FROM) {
      return LOWEST_A;
    }
    if (percent <= UPPER_LAW_ABOVE + ROUNDING) {
      return LAW_A_PER_PERCENT * percent;
    }
    return percent <= UPPER_LAW_TO
        ? UPPER_A_PER_PERCENT * (percent - UPPER_OFFSET_PERCENT)
        : HIGHEST_A;
  }

  /** The law in symbols, for the band the duty cycle lies in. */
  String formula() {
    double percent = percent();
    if (meaning() != PilotMeaning.CURRENT || percent < LAW_FROM || percent > UPPER_LAW_TO) {
      return "by the table";
    }
    return percent <= UPPER_LAW_ABOVE + ROUNDING ? "0.6·D" : "2.5·(D − 64)";
  }

  private double percent() {
    return PERCENT.valueOf(dutyCycle);
  }

  /**
   * Duty cycle and what it says.
   *
   * @return for example {@code pilot 26.67 %: 16 A}
   */
  @Override
  public String toString() {
    String says =
        current().map(a -> Figure.of(a, AMPERE).toString()).orElseGet(() -> meaning().toString());
    return "pilot " + Figure.of(dutyCycle, PERCENT) + ": " + says;
  }
}
