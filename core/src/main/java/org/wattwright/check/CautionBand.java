package org.wattwright.check;

import java.io.Serializable;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * How close to its limit a value may come before a pass becomes a caution.
 *
 * <p>Relative to the limit for most kinds; absolute where a per cent makes no sense: temperatures,
 * shares, counts, and any limit at zero. Immutable and thread-safe.
 */
public final class CautionBand implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Usual relative band; common practice. */
  private static final double USUAL_SHARE_OF_LIMIT = 0.05;

  /** Usual band of temperatures; common practice. */
  private static final double USUAL_TEMPERATURE_BAND_K = 5;

  /** Usual band of shares such as a state of charge: two percentage points; common practice. */
  private static final double USUAL_SHARE_BAND = 0.02;

  /** No band: a limit just kept is a pass. */
  public static final CautionBand NONE = new CautionBand(0, 0);

  private final double shareOfLimit;
  private final double absoluteSi;

  private CautionBand(double shareOfLimit, double absoluteSi) {
    this.shareOfLimit = shareOfLimit;
    this.absoluteSi = absoluteSi;
  }

  /**
   * A band relative to the limit.
   *
   * @param share 0 to 1
   * @return the band; no band at all where the limit is 0
   * @throws org.wattwright.units.InvalidInputException if share is outside 0 … 1
   */
  public static CautionBand shareOfLimit(double share) {
    return new CautionBand(Require.fraction("CautionBand.shareOfLimit", share), 0);
  }

  /**
   * An absolute band; for a temperature limit give a temperature difference.
   *
   * @param <Q> the quantity type
   * @param width ≥ 0
   * @param kind its kind
   * @return the band
   * @throws org.wattwright.units.InvalidInputException if width is negative
   */
  public static <Q extends Quantity<Q>> CautionBand absolute(Quantity<Q> width, Kind<Q> kind) {
    double widthSi = Require.quantity("CautionBand.absolute", width, kind.siUnit()).nonNegative();
    return new CautionBand(0, widthSi);
  }

  /** The usual band for a figure; the defaults are common practice. */
  static CautionBand usualFor(Figure limit) {
    @Nullable Kind<?> kind = limit.kind();
    if (kind == Kind.TEMPERATURE || kind == Kind.TEMPERATURE_DIFFERENCE) {
      return new CautionBand(0, USUAL_TEMPERATURE_BAND_K);
    }
    return switch (limit.type()) {
      case SHARE -> new CautionBand(0, USUAL_SHARE_BAND);
      case COUNT -> NONE;
      case QUANTITY, NUMBER -> new CautionBand(USUAL_SHARE_OF_LIMIT, 0);
    };
  }

  /** Width of the band at a limit, in SI. */
  double widthSi(double limitSi) {
    return absoluteSi + shareOfLimit * Math.abs(limitSi);
  }
}
