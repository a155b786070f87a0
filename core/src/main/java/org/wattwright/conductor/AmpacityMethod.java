package org.wattwright.conductor;

import java.io.Serializable;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/**
 * A rule for the continuous current of a cable in its place: an extension point.
 *
 * <p>The library brings {@link #heatBalance()} and the tables of {@link AmpacityTable}; write your
 * own for a maker's table or a national code. An implementation must not change with time, and must
 * refuse with {@link NotRated} what its method does not cover.
 */
@FunctionalInterface
public interface AmpacityMethod {
  /**
   * The continuous current by this method.
   *
   * @param cable the cable
   * @param installation where it lies
   * @return the current, or why there is none
   */
  Rating ratingOf(Cable cable, Installation installation);

  /**
   * The heat balance at the cable's temperature limit.
   *
   * @return the method
   */
  static AmpacityMethod heatBalance() {
    return (cable, installation) -> {
      if (cable.geometries().isEmpty()) {
        return new NotRated(String.join(", ", cable.missingGeometry()));
      }
      SteadyHeating heating = SteadyHeating.of(cable, installation);
      return new Rated(heating.ampacity(), heating.basis(), SteadyHeating.BALANCE);
    };
  }

  /** A continuous current, or why there is none. */
  sealed interface Rating extends Serializable permits Rated, NotRated {
    /**
     * One value from either case.
     *
     * @param <T> type of the value
     * @param ifRated of a current
     * @param ifNot where the method does not apply
     * @return the value
     */
    <T> T fold(Function<Rated, T> ifRated, Function<NotRated, T> ifNot);
  }

  /**
   * A continuous current.
   *
   * @param current in A, factors of the installation included
   * @param basis what it rests on
   * @param source the table or method
   */
  record Rated(Quantity<ElectricCurrent> current, Basis basis, Source source) implements Rating {
    @Override
    public <T> T fold(Function<Rated, T> ifRated, Function<NotRated, T> ifNot) {
      return ifRated.apply(this);
    }

    double currentA() {
      return Kind.CURRENT.siValueOf(current);
    }
  }

  /**
   * Why there is no current.
   *
   * @param missing what is missing, or what the method does not cover
   */
  record NotRated(String missing) implements Rating {
    @Override
    public <T> T fold(Function<Rated, T> ifRated, Function<NotRated, T> ifNot) {
      return ifNot.apply(this);
    }
  }
}
