package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Direction;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.TemperatureDifference;

/**
 * Temperature of a pack over one pass of a current profile: curve, peak, when a limit is reached,
 * heat by part.
 *
 * <p>Immutable and thread-safe.
 */
public final class PackTemperatureCourse implements Serializable {
  private static final long serialVersionUID = 1L;

  private final PackHeatModel model;
  private final CoursePieces pieces;
  private final double startSoc;
  private final boolean reversibleKnown;

  PackTemperatureCourse(
      PackHeatModel model, CoursePieces pieces, double startSoc, boolean reversibleKnown) {
    this.model = model;
    this.pieces = pieces;
    this.startSoc = startSoc;
    this.reversibleKnown = reversibleKnown;
  }

  /**
   * Temperature at the start.
   *
   * @return absolute
   */
  public Quantity<Temperature> start() {
    return Kind.TEMPERATURE.ofSi(pieces.startK(0));
  }

  /**
   * Highest temperature.
   *
   * @return absolute
   */
  public Quantity<Temperature> peak() {
    return Kind.TEMPERATURE.ofSi(Math.max(pieces.startK(0), pieces.endK(hottestPiece())));
  }

  /**
   * When the highest temperature is first reached.
   *
   * @return in s from the start
   */
  public Quantity<Time> peakAt() {
    int hottest = hottestPiece();
    boolean later = pieces.endK(hottest) > pieces.startK(0);
    return SECOND.of(later ? pieces.endS(hottest) : 0);
  }

  /** The first of the pieces that end hottest; within a piece the temperature is monotone. */
  private int hottestPiece() {
    int hottest = 0;
    for (int i = 1; i < pieces.size(); i++) {
      hottest = pieces.endK(i) > pieces.endK(hottest) ? i : hottest;
    }
    return hottest;
  }

  /**
   * Lowest temperature.
   *
   * @return absolute
   */
  public Quantity<Temperature> lowest() {
    double lowestK = pieces.startK(0);
    for (int i = 0; i < pieces.size(); i++) {
      lowestK = Math.min(lowestK, pieces.endK(i));
    }
    return Kind.TEMPERATURE.ofSi(lowestK);
  }

  /**
   * Temperature at the end.
   *
   * @return absolute
   */
  public Quantity<Temperature> end() {
    return Kind.TEMPERATURE.ofSi(pieces.endK(pieces.size() - 1));
  }

  /**
   * Highest temperature while current flows one way; a rest counts as discharge.
   *
   * @param direction charge or discharge
   * @return empty if the profile never does that
   */
  public Optional<Quantity<Temperature>> highestWhile(Direction direction) {
    return extreme(direction, 1);
  }

  /**
   * Lowest temperature while current flows one way; a rest counts as discharge.
   *
   * @param direction charge or discharge
   * @return empty if the profile never does that
   */
  public Optional<Quantity<Temperature>> lowestWhile(Direction direction) {
    return extreme(direction, -1);
  }

  private Optional<Quantity<Temperature>> extreme(Direction direction, int sign) {
    boolean charging = direction == Direction.CHARGE;
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.isCharging(i, charging)) {
        highest = Math.max(highest, sign * pieces.startK(i));
        highest = Math.max(highest, sign * pieces.endK(i));
      }
    }
    return highest > Double.NEGATIVE_INFINITY
        ? Optional.of(Kind.TEMPERATURE.ofSi(sign * highest))
        : Optional.empty();
  }

  /**
   * When a temperature is first reached from below.
   *
   * @param limit absolute
   * @return in s from the start, 0 s if it starts there or above; empty if it is never reached
   */
  public Optional<Quantity<Time>> reaches(Quantity<Temperature> limit) {
    double limitK = Kind.TEMPERATURE.siValueOf(limit);
    if (pieces.startK(0) >= limitK) {
      return Optional.of(SECOND.of(0));
    }
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.endK(i) >= limitK) {
        return Optional.of(SECOND.of(pieces.startS(i) + intoPieceS(i, limitK)));
      }
    }
    return Optional.empty();
  }

  private double intoPieceS(int i, double limitK) {
    double startK = pieces.startK(i);
    double rateKPerS = model.rateKPerS(pieces.lossW(i) + pieces.reversibleW(i), startK);
    double exactS = Relaxation.timeToS(limitK - startK, rateKPerS, model.decayPerS());
    return Math.min(exactS, pieces.lengthS(i));
  }

  /**
   * The curve, with a point wherever the solver stopped and at the end of every stretch of current.
   *
   * @return temperature against time
   */
  public Profile<Temperature> curve() {
    int size = pieces.size();
    double[] timesS = new double[size + 1];
    double[] valuesK = new double[size + 1];
    valuesK[0] = pieces.startK(0);
    for (int i = 0; i < size; i++) {
      timesS[i + 1] = pieces.endS(i);
      valuesK[i + 1] = pieces.endK(i);
    }
    return Profile.ofPoints(SECOND, timesS, KELVIN, valuesK);
  }

  /**
   * Heat by part.
   *
   * @return the balance over the whole course
   */
  public HeatBalance heat() {
    return HeatBalance.of(model, pieces, reversibleKnown);
  }

  /**
   * State of charge at the end, held within 0 % … 100 %.
   *
   * @return the state of charge
   */
  public StateOfCharge endCharge() {
    return StateOfCharge.of(Math.max(0, Math.min(pieces.endSoc(pieces.size() - 1), 1)));
  }

  /**
   * When the profile asks for charge that the pack does not hold, or has no room for. From there
   * the course is that of a pack that stays empty, or full.
   *
   * @return in s from the start, to the end of the solver's piece; empty if the charge suffices
   */
  public Optional<Quantity<Time>> leavesChargeAfter() {
    double slack = 1e-9;
    for (int i = 0; i < pieces.size(); i++) {
      if (!(pieces.endSoc(i) >= -slack && pieces.endSoc(i) <= 1 + slack)) {
        return Optional.of(SECOND.of(pieces.endS(i)));
      }
    }
    return Optional.empty();
  }

  /**
   * Bound of the summed error of the time steps.
   *
   * @return at most 1e-6 K unless the resistance jumps about within one stretch
   */
  public Quantity<TemperatureDifference> errorBound() {
    return Kind.TEMPERATURE_DIFFERENCE.ofSi(pieces.errorK());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PackTemperatureCourse that
        && model.equals(that.model)
        && pieces.equals(that.pieces)
        && Double.compare(startSoc, that.startSoc) == 0
        && reversibleKnown == that.reversibleKnown;
  }

  @Override
  public int hashCode() {
    return Objects.hash(model, pieces, startSoc);
  }

  /**
   * Start, peak and end.
   *
   * @return for example {@code 25.0 °C, peak 31.2 °C after 1800 s, 30.8 °C at the end}
   */
  @Override
  public String toString() {
    return Measures.format(start(), CELSIUS, 1)
        + ", peak "
        + Measures.format(peak(), CELSIUS, 1)
        + " after "
        + Measures.format(peakAt(), SECOND, 0)
        + ", "
        + Measures.format(end(), CELSIUS, 1)
        + " at the end";
  }
}
