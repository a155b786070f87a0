package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.CELSIUS;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.TemperatureCoefficient;

/**
 * Share of its rated current that a fuse carries in warm air.
 *
 * <p>Never above 1 unless the maker allows more: then {@link #withUprating()}. Immutable and
 * thread-safe.
 */
public final class AmbientDerating implements Serializable {
  private static final long serialVersionUID = 1L;

  private enum Law {
    SQUARE_ROOT,
    LINEAR,
    TABLE
  }

  private final Law law;
  private final double firstSi;
  private final double secondSi;
  private final @Nullable LinearTable table;
  private final boolean isUprating;

  private AmbientDerating(
      Law law, double firstSi, double secondSi, @Nullable LinearTable table, boolean isUprating) {
    this.law = law;
    this.firstSi = firstSi;
    this.secondSi = secondSi;
    this.table = table;
    this.isUprating = isUprating;
  }

  /**
   * A1 = √((a − T)/(a − T0)): the link's element must stay below a.
   *
   * <p>Source: application guides of fuse links for semiconductors; a from 130 °C to 150 °C and T0
   * from 25 °C to 30 °C depend on the fuse.
   *
   * @param elementLimit a, above the reference
   * @param reference T0, air at which the rated current holds
   * @return the law
   * @throws InvalidInputException if the limit is not above the reference
   */
  public static AmbientDerating squareRoot(
      Quantity<Temperature> elementLimit, Quantity<Temperature> reference) {
    double limitK = kelvin("elementLimit", elementLimit);
    double referenceK = kelvin("reference", reference);
    if (!(limitK > referenceK)) {
      throw InvalidInputException.of(
          "AmbientDerating.elementLimit", "> reference " + reference, elementLimit.toString());
    }
    return new AmbientDerating(Law.SQUARE_ROOT, limitK, referenceK, null, false);
  }

  /**
   * 1 − k·(T − T0).
   *
   * <p>Common practice for links of general use: 0.5 % per kelvin above 40 °C.
   *
   * @param perKelvin k, &gt; 0 and below 5 %/K
   * @param reference T0, air at which the rated current holds
   * @return the law
   * @throws InvalidInputException if outside its range
   */
  public static AmbientDerating linear(
      Quantity<TemperatureCoefficient> perKelvin, Quantity<Temperature> reference) {
    double slopePerK =
        Require.quantity(
                "AmbientDerating.perKelvin",
                perKelvin,
                org.wattwright.units.WorkshopUnits.PERCENT_PER_KELVIN)
            .positiveUpTo(5);
    return new AmbientDerating(Law.LINEAR, slopePerK, kelvin("reference", reference), null, false);
  }

  /** A point of a maker's table. */
  public record Point(Quantity<Temperature> air, double factor) implements Serializable {
    /**
     * Checks the range.
     *
     * @param air absolute
     * @param factor share of the rated current, &gt; 0
     * @throws InvalidInputException if the factor is not positive
     */
    public Point {
      kelvin("air", air);
      Require.positive("AmbientDerating.factor", factor);
    }
  }

  /**
   * A maker's table, straight between its points. Below its first point the first factor holds,
   * above its last point the fuse is not rated: factor 0.
   *
   * @param points at least one, air rising
   * @return the law
   * @throws InvalidInputException if there is none, or air does not rise
   */
  public static AmbientDerating table(List<Point> points) {
    List<Point> all = Require.nonEmpty("AmbientDerating.points", points);
    double[] kelvins = all.stream().mapToDouble(p -> kelvin("air", p.air())).toArray();
    double[] factors = all.stream().mapToDouble(Point::factor).toArray();
    LinearTable table = LinearTable.of("AmbientDerating.air", kelvins, factors);
    return new AmbientDerating(Law.TABLE, 0, 0, table, false);
  }

  /**
   * The same law where the maker allows more than the rated current in cool air.
   *
   * @return a new law whose factor may exceed 1
   */
  public AmbientDerating withUprating() {
    return new AmbientDerating(law, firstSi, secondSi, table, true);
  }

  /**
   * Share of the rated current.
   *
   * @param air temperature around the fuse, absolute
   * @return 0 to 1, or more if {@link #withUprating()}
   * @throws InvalidInputException if below absolute zero
   */
  public double factorAt(Quantity<Temperature> air) {
    return factorAtK(kelvin("air", air));
  }

  double factorAtK(double airK) {
    double factor =
        switch (law) {
          case SQUARE_ROOT -> Math.sqrt(Math.max(0, (firstSi - airK) / (firstSi - secondSi)));
          case LINEAR -> Math.max(0, 1 - firstSi * (airK - secondSi));
          case TABLE -> tableFactor(Objects.requireNonNull(table), airK);
        };
    return isUprating ? factor : Math.min(1, factor);
  }

  private static double tableFactor(LinearTable table, double airK) {
    return airK <= table.lastX() ? table.at(airK) : 0;
  }

  private static double kelvin(String field, Quantity<Temperature> temperature) {
    return Require.quantity("AmbientDerating." + field, temperature, CELSIUS)
        .between(-273.15, 1000);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof AmbientDerating that
        && law == that.law
        && firstSi == that.firstSi
        && secondSi == that.secondSi
        && Objects.equals(table, that.table)
        && isUprating == that.isUprating;
  }

  @Override
  public int hashCode() {
    return Objects.hash(law, firstSi, secondSi, table, isUprating);
  }

  /**
   * The law with its numbers.
   *
   * @return for example {@code √((130 °C − T)/(130 °C − 30 °C))}
   */
  @Override
  public String toString() {
    return switch (law) {
      case SQUARE_ROOT -> {
        String limit = celsius(firstSi);
        yield "√((" + limit + " − T)/(" + limit + " − " + celsius(secondSi) + "))";
      }
      case LINEAR -> String.format(Locale.ROOT, "1 − %.3g/K·(T − %s)", firstSi, celsius(secondSi));
      case TABLE -> "table of " + Objects.requireNonNull(table).size() + " points";
    };
  }

  private static String celsius(double kelvin) {
    return org.wattwright.units.Measures.format(Kind.TEMPERATURE.ofSi(kelvin), Kind.TEMPERATURE);
  }
}
