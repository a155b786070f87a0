package org.wattwright.voltage;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The voltages a device stands, works at, and works fully at.
 *
 * <p>Above the absolute maximum it is damaged. Inside the operating band it works; inside the
 * full-performance band it gives all its power. Between the two bands its power falls on a straight
 * line to zero at the end of the operating band.
 *
 * <pre>{@code
 * VoltageWindow window = VoltageWindow.operating(VoltageRange.between(volts(70), volts(126)))
 *     .fullPerformance(VoltageRange.between(volts(84), volts(120)))
 *     .absoluteMaximum(volts(140));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class VoltageWindow implements Serializable {
  private static final long serialVersionUID = 1L;

  private final VoltageRange operating;
  private final @Nullable VoltageRange fullPerformance;
  private final @Nullable Quantity<ElectricPotential> absoluteMaximum;

  private VoltageWindow(
      VoltageRange operating,
      @Nullable VoltageRange fullPerformance,
      @Nullable Quantity<ElectricPotential> absoluteMaximum) {
    this.operating = operating;
    this.fullPerformance = fullPerformance;
    this.absoluteMaximum = absoluteMaximum;
  }

  /**
   * A window of which only the operating band is known.
   *
   * @param band the operating band
   * @return the window
   */
  public static VoltageWindow operating(VoltageRange band) {
    return new VoltageWindow(Objects.requireNonNull(band, "operating"), null, null);
  }

  /**
   * This window with its full-performance band.
   *
   * @param band inside the operating band
   * @return a new window
   * @throws InvalidInputException if the band leaves the operating band
   */
  public VoltageWindow fullPerformance(VoltageRange band) {
    if (!operating.contains(band)) {
      throw InvalidInputException.of(
          "VoltageWindow.fullPerformance",
          "inside the operating band " + operating,
          band.toString());
    }
    return new VoltageWindow(operating, band, absoluteMaximum);
  }

  /**
   * This window with its absolute maximum.
   *
   * @param voltage at or above the operating band
   * @return a new window
   * @throws InvalidInputException if the voltage lies below the top of the operating band
   */
  public VoltageWindow absoluteMaximum(Quantity<ElectricPotential> voltage) {
    Measure<ElectricPotential> maximum = Measure.from(voltage, Kind.VOLTAGE);
    if (!(Kind.VOLTAGE.compare(maximum, operating.highest()) >= 0)) {
      throw InvalidInputException.of(
          "VoltageWindow.absoluteMaximum",
          "≥ the top of the operating band " + operating.highest(),
          voltage.toString());
    }
    return new VoltageWindow(operating, fullPerformance, maximum);
  }

  /**
   * The band in which the device works.
   *
   * @return the operating band
   */
  public VoltageRange operating() {
    return operating;
  }

  /**
   * The band in which the device gives all its power.
   *
   * @return empty if not known
   */
  public Optional<VoltageRange> fullPerformance() {
    return Optional.ofNullable(fullPerformance);
  }

  /**
   * The voltage above which the device is damaged.
   *
   * @return empty if not known
   */
  public Optional<Quantity<ElectricPotential>> absoluteMaximum() {
    return Optional.ofNullable(absoluteMaximum);
  }

  /**
   * Share of its power that the device gives at a voltage.
   *
   * @param voltage the voltage at its terminals
   * @return 1 in the full-performance band (or the operating band if that is not known), 0 outside
   *     the operating band, on a straight line between
   */
  public double deratingAt(Quantity<ElectricPotential> voltage) {
    return deratingAtV(Kind.VOLTAGE.siValueOf(voltage));
  }

  double deratingAtV(double voltageV) {
    double lowestV = operating.lowestV();
    double highestV = operating.highestV();
    if (!(voltageV >= lowestV && voltageV <= highestV)) {
      return 0;
    }
    if (fullPerformance == null) {
      return 1;
    }
    double fullFromV = fullPerformance.lowestV();
    double fullToV = fullPerformance.highestV();
    if (voltageV < fullFromV) {
      return (voltageV - lowestV) / (fullFromV - lowestV);
    }
    return voltageV > fullToV ? (highestV - voltageV) / (highestV - fullToV) : 1;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof VoltageWindow that
        && operating.equals(that.operating)
        && Objects.equals(fullPerformance, that.fullPerformance)
        && Objects.equals(absoluteMaximum, that.absoluteMaximum);
  }

  @Override
  public int hashCode() {
    return Objects.hash(operating, fullPerformance, absoluteMaximum);
  }

  /**
   * The bands that are known.
   *
   * @return for example {@code operating 70 V … 126 V, full 84 V … 120 V, absolute maximum 140 V}
   */
  @Override
  public String toString() {
    String full = fullPerformance == null ? "" : ", full " + fullPerformance;
    String absolute = absoluteMaximum == null ? "" : ", absolute maximum " + absoluteMaximum;
    return "operating " + operating + full + absolute;
  }
}
