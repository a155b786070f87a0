package org.wattwright.charging;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricResistance;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/**
 * A detachable charging cable and what its coding resistor says about its current.
 *
 * <p>1500 Ω: 13 A; 680 Ω: 20 A; 220 Ω: 32 A; 100 Ω: 63 A, or 70 A where one phase alone is used. A
 * measured resistance falls in the band of the nearest code; below 75 Ω it is an error and above
 * 2200 Ω there is no cable: nothing may be drawn, which is an answer.
 *
 * <p>Source: IEC 61851-1 Annex B, IEC 62196; the boundaries between the codes (150, 330, 1000, 2200
 * Ω) are those that one charging controller states. Immutable and thread-safe.
 */
public final class CableCoding implements Serializable {
  private static final long serialVersionUID = 1L;

  static final Source SOURCE = Source.standard("IEC 61851-1", "Annex B; IEC 62196");

  private static final double SHORTED_BELOW_OHM = 75;
  private static final double SINGLE_PHASE_63_A = 70;
  private static final double LARGEST_CODE_A = 63;

  /** Bands from low to high resistance: upper end, code, current. */
  private static final List<Band> BANDS =
      List.of(
          new Band(150, 100, LARGEST_CODE_A),
          new Band(330, 220, 32),
          new Band(1000, 680, 20),
          new Band(2200, 1500, 13));

  private record Band(double upToOhm, double codeOhm, double currentA) {}

  private final Quantity<ElectricResistance> resistance;
  private final boolean singlePhase;

  private CableCoding(Quantity<ElectricResistance> resistance, boolean singlePhase) {
    Require.quantity("CableCoding.resistance", resistance, WorkshopUnits.OHM).nonNegative();
    this.resistance = Measure.from(resistance, Kind.RESISTANCE);
    this.singlePhase = singlePhase;
  }

  /**
   * A cable by the resistance measured between proximity contact and earth.
   *
   * @param resistance ≥ 0 Ω
   * @return the cable
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public static CableCoding ofResistor(Quantity<ElectricResistance> resistance) {
    return new CableCoding(resistance, false);
  }

  /**
   * This cable used with one phase alone: the 63 A code then stands for 70 A.
   *
   * @return a new coding
   */
  public CableCoding singlePhaseOnly() {
    return new CableCoding(resistance, true);
  }

  /**
   * The resistor a cable of a current is made with.
   *
   * @param current 13 A, 20 A, 32 A or 63 A
   * @return empty for any other current
   */
  public static Optional<Quantity<ElectricResistance>> resistorFor(
      Quantity<ElectricCurrent> current) {
    double currentA = Kind.CURRENT.siValueOf(current);
    return BANDS.stream()
        .filter(band -> band.currentA() == currentA)
        .map(band -> Measures.ohms(band.codeOhm()))
        .findFirst();
  }

  /**
   * Where the band of a current ends and that of the next smaller one, or of no cable, begins.
   *
   * @param current 13 A, 20 A, 32 A or 63 A
   * @return empty for any other current
   */
  public static Optional<Quantity<ElectricResistance>> highestResistanceFor(
      Quantity<ElectricCurrent> current) {
    double currentA = Kind.CURRENT.siValueOf(current);
    return BANDS.stream()
        .filter(band -> band.currentA() == currentA)
        .map(band -> Measures.ohms(band.upToOhm()))
        .findFirst();
  }

  /**
   * The measured resistance.
   *
   * @return ≥ 0 Ω
   */
  public Quantity<ElectricResistance> resistance() {
    return resistance;
  }

  /**
   * Largest current of the cable, each phase.
   *
   * @return empty if the resistance says error or no cable
   */
  public Optional<Quantity<ElectricCurrent>> current() {
    double ohm = Kind.RESISTANCE.siValueOf(resistance);
    if (ohm < SHORTED_BELOW_OHM) {
      return Optional.empty();
    }
    return BANDS.stream()
        .filter(band -> ohm <= band.upToOhm())
        .findFirst()
        .map(band -> Kind.CURRENT.ofSi(currentA(band)));
  }

  private double currentA(Band band) {
    return singlePhase && band.currentA() == LARGEST_CODE_A ? SINGLE_PHASE_63_A : band.currentA();
  }

  /**
   * What the resistance says.
   *
   * @return for example {@code 32 A}, {@code error} or {@code no cable (0 A)}
   */
  public String meaning() {
    boolean shorted = Kind.RESISTANCE.siValueOf(resistance) < SHORTED_BELOW_OHM;
    return current().map(Object::toString).orElse(shorted ? "error" : "no cable (0 A)");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CableCoding that
        && resistance.equals(that.resistance)
        && singlePhase == that.singlePhase;
  }

  @Override
  public int hashCode() {
    return Objects.hash(resistance, singlePhase);
  }

  /**
   * Resistance and what it says.
   *
   * @return for example {@code cable coded 220 Ω: 32 A}
   */
  @Override
  public String toString() {
    return "cable coded " + resistance + ": " + meaning();
  }
}
