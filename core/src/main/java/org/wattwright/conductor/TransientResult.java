package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Course of a conductor's temperature over one pass of a current profile.
 *
 * <p>If the conductor gets hotter than the model covers, the course ends there and {@link
 * #leavesModelAfter()} says when. Immutable and thread-safe.
 */
public final class TransientResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double startK;
  private final double peakK;
  private final double peakAtS;
  private final double endK;
  private final double leftAtS;
  private final double[] durationsS;
  private final double[] endsK;

  TransientResult(double startK, TransientKernel.Run run, double[] durationsS, double[] endsK) {
    this.startK = startK;
    this.peakK = run.peakK;
    this.peakAtS = run.peakAtS;
    this.endK = run.endK;
    this.leftAtS = run.leftAtS;
    this.durationsS = durationsS;
    this.endsK = endsK;
  }

  /**
   * Conductor temperature at the start.
   *
   * @return absolute
   */
  public Quantity<Temperature> start() {
    return Kind.TEMPERATURE.ofSi(startK);
  }

  /**
   * Highest conductor temperature; that of the model's limit if it was left.
   *
   * @return absolute
   */
  public Quantity<Temperature> peak() {
    return Kind.TEMPERATURE.ofSi(peakK);
  }

  /**
   * When the highest temperature is reached, to the end of the stretch that heats last.
   *
   * @return in s from the start
   */
  public Quantity<Time> peakAt() {
    return SECOND.of(peakAtS);
  }

  /**
   * Conductor temperature at the end.
   *
   * @return absolute
   */
  public Quantity<Temperature> end() {
    return Kind.TEMPERATURE.ofSi(endK);
  }

  /**
   * When the conductor got hotter than the model covers.
   *
   * @return in s from the start; empty if it did not
   */
  public Optional<Quantity<Time>> leavesModelAfter() {
    return Double.isNaN(leftAtS) ? Optional.empty() : Optional.of(SECOND.of(leftAtS));
  }

  /**
   * The course, with a point at the end of every stretch of the current profile.
   *
   * @return temperature against time, to the end or to where the model was left
   */
  public Profile<Temperature> course() {
    int count = endsK.length;
    while (count > 1 && endsK[count - 1] == 0) {
      count--;
    }
    double[] timesS = new double[count + 1];
    double[] valuesK = new double[count + 1];
    valuesK[0] = startK;
    for (int i = 0; i < count; i++) {
      timesS[i + 1] = timesS[i] + durationsS[i];
    }
    System.arraycopy(endsK, 0, valuesK, 1, count);
    return Profile.ofPoints(SECOND, timesS, KELVIN, valuesK);
  }

  double peakK() {
    return peakK;
  }

  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof TransientResult that
        && startK == that.startK
        && Arrays.equals(durationsS, that.durationsS)
        && Arrays.equals(endsK, that.endsK);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(endsK);
  }

  /**
   * Start, peak and end.
   *
   * @return for example {@code 62.1 °C, peak 78.4 °C after 340 s, 62.1 °C at the end}
   */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s, peak %s after %s, %s at the end",
        Measures.format(start(), CELSIUS, 1),
        Measures.format(peak(), CELSIUS, 1),
        Measures.format(peakAt(), SECOND, 0),
        Measures.format(end(), CELSIUS, 1));
  }
}
