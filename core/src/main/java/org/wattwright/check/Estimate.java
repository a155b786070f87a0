package org.wattwright.check;

import java.io.Serializable;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A sourced estimate with its band, so that a safety check can take the worse end each way: low
 * resistance for the highest fault current, high for the lowest.
 *
 * <pre>{@code
 * Estimate<ElectricResistance> joint =
 *     Estimate.of("joint resistance", microohms(50), Kind.RESISTANCE,
 *         new Estimate.Band(0.4, 4), Source.commonPractice("bolted lug, clean and torqued"));
 * Check check = joint.worstOf(r -> heatCheck(r));   // the worse of both ends, never a pass
 * }</pre>
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
    this.name = Require.text("Estimate.name", name);
    this.kind = kind;
    this.typicalSi = typicalSi;
    this.band = Objects.requireNonNull(band, "band");
    this.source = Objects.requireNonNull(source, "source");
  }

  /**
   * An estimate whose band is given as factors of its typical value.
   *
   * @param <Q> the quantity type
   * @param name what is estimated, as reports print it
   * @param typical the typical value, ≥ 0
   * @param kind its kind; not a temperature, which has no factors
   * @param band the band around it
   * @param source the rule behind it
   * @return the estimate
   * @throws InvalidInputException if typical is negative or a temperature
   */
  public static <Q extends Quantity<Q>> Estimate<Q> of(
      String name, Quantity<Q> typical, Kind<Q> kind, Band band, Source source) {
    if (kind.equals(Kind.TEMPERATURE)) {
      throw InvalidInputException.of("Estimate.kind", "one with a true zero", "temperature");
    }
    double typicalSi =
        Require.quantity("Estimate.typical", typical, kind.customaryUnit()).nonNegative();
    return new Estimate<>(name, kind, typicalSi, band, source);
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
      Require.fraction("Band.lowFactor", lowFactor);
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
   * A check at both ends of the band: the worse of the two.
   *
   * <p>For a check that gets worse steadily in one direction, whichever that is.
   *
   * @param check makes the check from an input; must hand on the input's basis
   * @return the worse check
   * @throws InvalidInputException if a check does not say that it rests on an estimate
   */
  public Check worstOf(Function<? super Given<Quantity<Q>>, Check> check) {
    return Checks.worse(checkAt(low(), check), checkAt(high(), check));
  }

  private Check checkAt(Quantity<Q> end, Function<? super Given<Quantity<Q>>, Check> check) {
    Check made = check.apply(Given.estimated(end, source));
    if (made.basis() != Basis.ESTIMATED) {
      throw InvalidInputException.of(
          "Check.basis of " + made.code(), Basis.ESTIMATED.toString(), made.basis().toString());
    }
    return made;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Estimate<?> that
        && name.equals(that.name)
        && kind == that.kind
        && Double.compare(typicalSi, that.typicalSi) == 0
        && band.equals(that.band)
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, typicalSi, band);
  }

  /**
   * Name, typical value and band.
   *
   * @return for example {@code cell resistance about 0.8 mΩ (0.5 mΩ … 1.2 mΩ), estimated}
   */
  @Override
  public String toString() {
    String ends = "(" + text(low()) + " … " + text(high()) + ")";
    return name + " about " + text(typical()) + " " + ends + ", estimated";
  }

  private Figure text(Quantity<Q> quantity) {
    return Figure.of(quantity, kind);
  }
}
