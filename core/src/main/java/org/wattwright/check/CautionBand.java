package org.wattwright.check;

import java.io.Serializable;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * How close to its limit a value may come before a pass becomes a caution.
 *
 * <p>Unless a check states its own, the usual band applies; all widths are common practice:
 *
 * <table>
 *   <caption>Usual bands</caption>
 *   <tr><th>limit</th><th>band</th></tr>
 *   <tr><td>temperature or temperature difference</td><td>5 K</td></tr>
 *   <tr><td>share, such as a state of charge</td><td>2 percentage points</td></tr>
 *   <tr><td>count</td><td>none: a count is kept or not</td></tr>
 *   <tr><td>0, where a per cent makes no sense</td><td>about what a workshop can measure: 2 mm,
 *       1 kg, 10 N, 0.5 V, 0.5 A, 50 W, 10 W·h, 0.1 s, 1 km/h, 1 N·m, 1 kPa, 0.5°; none for any
 *       other kind</td></tr>
 *   <tr><td>anything else</td><td>5 % of the limit</td></tr>
 * </table>
 *
 * <p>Immutable and thread-safe.
 */
public final class CautionBand implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double USUAL_SHARE_OF_LIMIT = 0.05;
  private static final double USUAL_TEMPERATURE_BAND_K = 5;
  private static final double USUAL_SHARE_BAND = 0.02;

  /** Usual bands of limits at zero, in SI. */
  private static final Map<Kind<?>, Double> USUAL_AT_ZERO_SI =
      Map.ofEntries(
          Map.entry(Kind.LENGTH, 0.002),
          Map.entry(Kind.MASS, 1.0),
          Map.entry(Kind.FORCE, 10.0),
          Map.entry(Kind.VOLTAGE, 0.5),
          Map.entry(Kind.CURRENT, 0.5),
          Map.entry(Kind.POWER, 50.0),
          Map.entry(Kind.ENERGY, 36_000.0),
          Map.entry(Kind.TIME, 0.1),
          Map.entry(Kind.SPEED, 1 / 3.6),
          Map.entry(Kind.TORQUE, 1.0),
          Map.entry(Kind.PRESSURE, 1000.0),
          Map.entry(Kind.ANGLE, Math.PI / 360));

  /** No band: a limit just kept is a pass. */
  public static final CautionBand NONE = new CautionBand(0, 0, null);

  private final double shareOfLimit;
  private final double absoluteSi;

  /** Kind of an absolute band. */
  private final @Nullable Kind<?> kind;

  private CautionBand(double shareOfLimit, double absoluteSi, @Nullable Kind<?> kind) {
    this.shareOfLimit = shareOfLimit;
    this.absoluteSi = absoluteSi;
    this.kind = kind;
  }

  /**
   * A band relative to the limit.
   *
   * @param share 0 to 1
   * @return the band; no band at all where the limit is 0
   * @throws InvalidInputException if share is outside 0 … 1
   */
  public static CautionBand shareOfLimit(double share) {
    return new CautionBand(Require.fraction("CautionBand.shareOfLimit", share), 0, null);
  }

  /**
   * An absolute band: a temperature difference for a temperature limit; a {@link
   * Kind#DIMENSIONLESS} number for a number, a share or a count.
   *
   * @param <Q> the quantity type
   * @param width ≥ 0
   * @param kind its kind
   * @return the band
   * @throws InvalidInputException if width is negative
   */
  public static <Q extends Quantity<Q>> CautionBand absolute(Quantity<Q> width, Kind<Q> kind) {
    double widthSi = Require.quantity("CautionBand.absolute", width, kind.siUnit()).nonNegative();
    return new CautionBand(0, widthSi, kind);
  }

  /** The usual band for a limit. */
  static CautionBand usualFor(Figure limit) {
    return switch (limit.type()) {
      case COUNT -> NONE;
      case SHARE -> new CautionBand(0, USUAL_SHARE_BAND, Kind.DIMENSIONLESS);
      case NUMBER, PRICE -> new CautionBand(USUAL_SHARE_OF_LIMIT, 0, null);
      case QUANTITY -> usualForQuantity(limit);
    };
  }

  private static CautionBand usualForQuantity(Figure limit) {
    Kind<?> kind = kindOfMargin(limit);
    if (kind == Kind.TEMPERATURE_DIFFERENCE) {
      return new CautionBand(0, USUAL_TEMPERATURE_BAND_K, kind);
    }
    return limit.value() == 0
        ? new CautionBand(0, USUAL_AT_ZERO_SI.getOrDefault(kind, 0.0), kind)
        : new CautionBand(USUAL_SHARE_OF_LIMIT, 0, null);
  }

  /** Width of the band at a limit, in SI; rejects a band of another kind than the limit. */
  double widthSi(Figure limit) {
    if (kind != null && kind != kindOfMargin(limit)) {
      throw InvalidInputException.of(
          "Check.cautionBand", "a " + kindOfMargin(limit) + " like the margin", "a " + kind);
    }
    return absoluteSi + shareOfLimit * Math.abs(limit.value());
  }

  private static Kind<?> kindOfMargin(Figure limit) {
    @Nullable Kind<?> kind = limit.kind();
    if (kind == null) {
      return Kind.DIMENSIONLESS;
    }
    return kind == Kind.TEMPERATURE ? Kind.TEMPERATURE_DIFFERENCE : kind;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CautionBand that
        && Double.compare(shareOfLimit, that.shareOfLimit) == 0
        && Double.compare(absoluteSi, that.absoluteSi) == 0
        && kind == that.kind;
  }

  @Override
  public int hashCode() {
    return Objects.hash(shareOfLimit, absoluteSi, kind == null ? "" : kind.name());
  }

  /**
   * The width.
   *
   * @return for example {@code 5 % of the limit}, {@code 5 K} or {@code none}
   */
  @Override
  public String toString() {
    if (kind != null) {
      return text(kind);
    }
    return shareOfLimit == 0 ? "none" : Figure.share(shareOfLimit) + " of the limit";
  }

  private <Q extends Quantity<Q>> String text(Kind<Q> of) {
    return Figure.of(of.ofSi(absoluteSi), of).toString();
  }
}
