package org.wattwright.check;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A sourced estimate with its band, so that a safety check can take the worse end each way: low
 * resistance for the highest fault current, high for the lowest.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the quantity type
 */
public final class Estimate<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Kind<Q> kind;
  private final double typicalSi;
  private final Band band;
  private final Source source;

  private Estimate(String name, Kind<Q> kind, double typicalSi, Band band, Source source) {
    this.name = name;
    this.kind = kind;
    this.typicalSi = typicalSi;
    this.band = band;
    this.source = source;
  }

  /**
   * An estimate whose band is given as factors of its typical value.
   *
   * @param <Q> the quantity type
   * @param name what is estimated, as reports print it
   * @param typical the typical value, ≥ 0
   * @param kind its kind
   * @param band the band around it
   * @param source the rule behind it
   * @return the estimate
   * @throws InvalidInputException if typical is negative
   */
  public static <Q extends Quantity<Q>> Estimate<Q> of(
      String name, Quantity<Q> typical, Kind<Q> kind, Band band, Source source) {
    double typicalSi = kind.siValueOf(typical);
    if (!(typicalSi >= 0)) {
      throw InvalidInputException.of("Estimate.typical", "≥ 0", typical.toString());
    }
    Objects.requireNonNull(source, "source");
    return new Estimate<>(name, kind, typicalSi, Objects.requireNonNull(band, "band"), source);
  }

  /**
   * Band around a typical value.
   *
   * @param lowFactor 0 to 1
   * @param highFactor ≥ 1
   */
  public record Band(double lowFactor, double highFactor) implements Serializable {
    /**
     * Checks the range.
     *
     * @param lowFactor 0 to 1
     * @param highFactor ≥ 1
     * @throws InvalidInputException if a factor is outside its range
     */
    public Band {
      if (!(lowFactor >= 0 && lowFactor <= 1)) {
        throw InvalidInputException.of("Band.lowFactor", "from 0 to 1", "" + lowFactor);
      }
      if (!(highFactor >= 1 && highFactor <= Double.MAX_VALUE)) {
        throw InvalidInputException.of("Band.highFactor", "≥ 1 and finite", "" + highFactor);
      }
    }
  }

  /**
   * What is estimated.
   *
   * @return the name as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * Low end of the band.
   *
   * @return in the customary unit of the kind
   */
  public Quantity<Q> low() {
    return kind.ofSi(typicalSi * band.lowFactor());
  }

  /**
   * Typical value.
   *
   * @return in the customary unit of the kind
   */
  public Quantity<Q> typical() {
    return kind.ofSi(typicalSi);
  }

  /**
   * High end of the band.
   *
   * @return in the customary unit of the kind
   */
  public Quantity<Q> high() {
    return kind.ofSi(typicalSi * band.highFactor());
  }

  /**
   * The band as factors of the typical value.
   *
   * @return the band
   */
  public Band band() {
    return band;
  }

  /**
   * The rule behind the estimate.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * The typical value as an input with its basis.
   *
   * @return an input marked as estimated
   */
  public Given<Quantity<Q>> toGiven() {
    return Given.estimated(typical(), source);
  }

  /**
   * Name, typical value and band.
   *
   * @return for example {@code cell resistance about 0.8 mΩ (0.5 mΩ … 1.2 mΩ), estimated}
   */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s about %s (%s … %s), estimated",
        name,
        Figure.of(typical(), kind),
        Figure.of(low(), kind),
        Figure.of(high(), kind));
  }
}
