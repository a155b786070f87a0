package org.wattwright.conversion;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * One figure of two variants, and by how much the second differs.
 *
 * <p>Immutable and thread-safe.
 */
public final class ComparedFigure implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double ROUNDING = 1e-12;

  private final String name;
  private final @Nullable Figure before;
  private final @Nullable Figure after;
  private final @Nullable Figure difference;

  private ComparedFigure(
      String name, @Nullable Figure before, @Nullable Figure after, @Nullable Figure difference) {
    this.name = name;
    this.before = before;
    this.after = after;
    this.difference = difference;
  }

  /**
   * A quantity of both variants.
   *
   * @param <Q> the quantity type
   * @param name what it is
   * @param kind its kind; not an absolute temperature, whose difference is another kind
   * @param sides of the first and of the second variant, as far as known
   * @return the figure
   * @throws InvalidInputException if the kind is that of absolute temperatures
   */
  public static <Q extends Quantity<Q>> ComparedFigure of(
      String name, Kind<Q> kind, Sides<Quantity<Q>> sides) {
    if (kind.equals(Kind.TEMPERATURE)) {
      throw InvalidInputException.of(
          "ComparedFigure.kind", "one whose difference is of the same kind", kind.toString());
    }
    @Nullable Figure difference =
        sides.before().isPresent() && sides.after().isPresent()
            ? difference(kind, sides.before().get(), sides.after().get())
            : null;
    return new ComparedFigure(
        name,
        sides.before().map(q -> Figure.of(q, kind)).orElse(null),
        sides.after().map(q -> Figure.of(q, kind)).orElse(null),
        difference);
  }

  /** In the unit of the second. */
  private static <Q extends Quantity<Q>> Figure difference(
      Kind<Q> kind, Quantity<Q> before, Quantity<Q> after) {
    double difference = difference(kind.siValueOf(before), kind.siValueOf(after));
    return Figure.ofSi(difference, Measure.from(after, kind).namedUnit());
  }

  /** What the rounding of sums leaves is no difference. */
  private static double difference(double before, double after) {
    double difference = after - before;
    return Math.abs(difference) <= ROUNDING * Math.abs(after) ? 0 : difference;
  }

  /** A number of things on both sides. */
  static ComparedFigure count(String name, long before, long after) {
    return new ComparedFigure(
        name, Figure.count(before), Figure.count(after), Figure.count(after - before));
  }

  /** A share on both sides. */
  static ComparedFigure share(String name, double before, double after) {
    return new ComparedFigure(
        name, Figure.share(before), Figure.share(after), Figure.share(difference(before, after)));
  }

  /**
   * A value of the first variant and one of the second.
   *
   * @param <T> what it is
   * @param before of the first; empty if not known
   * @param after of the second; empty if not known
   */
  public record Sides<T>(Optional<T> before, Optional<T> after) {
    /**
     * Checks both.
     *
     * @param before of the first
     * @param after of the second
     */
    public Sides {
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }
  }

  /**
   * What it is.
   *
   * @return in words
   */
  public String name() {
    return name;
  }

  /**
   * The figure of the first variant.
   *
   * @return empty if not known
   */
  public Optional<Figure> before() {
    return Optional.ofNullable(before);
  }

  /**
   * The figure of the second variant.
   *
   * @return empty if not known
   */
  public Optional<Figure> after() {
    return Optional.ofNullable(after);
  }

  /**
   * Second less first.
   *
   * @return empty unless both are known
   */
  public Optional<Figure> difference() {
    return Optional.ofNullable(difference);
  }

  /** The difference with its sign; that of shares in points, since it is no share of anything. */
  String signedDifference() {
    if (difference == null) {
      return "";
    }
    String text = difference.toString();
    String signed = text.startsWith("-") || text.matches("0( .*)?") ? text : "+" + text;
    return difference.type() == Figure.Type.SHARE ? signed.replace(" %", " points") : signed;
  }

  /** A side in words. */
  static String text(Optional<Figure> side) {
    return side.map(Figure::toString).orElse("not known");
  }

  /**
   * One line.
   *
   * @return for example {@code mass of the modules: 194.4 kg → 211.2 kg (+16.8 kg)}
   */
  @Override
  public String toString() {
    String change = difference == null ? "" : " (" + signedDifference() + ")";
    return name + ": " + text(before()) + " → " + text(after()) + change;
  }
}
