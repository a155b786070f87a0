package org.wattwright.layout;

import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.NamedUnit;

/** A quantity of a candidate that the caller works out. */
record OwnValue<Q extends Quantity<Q>>(
    String name, NamedUnit<Q> shownIn, Function<? super Candidate, ? extends Quantity<Q>> value) {

  static <Q extends Quantity<Q>> OwnValue<Q> of(
      String field,
      String name,
      NamedUnit<Q> shownIn,
      Function<? super Candidate, ? extends Quantity<Q>> value) {
    return new OwnValue<>(
        Require.text(field, name),
        Objects.requireNonNull(shownIn, "shownIn"),
        Objects.requireNonNull(value, "value"));
  }

  double siOf(Candidate candidate) {
    Quantity<Q> quantity = Objects.requireNonNull(value.apply(candidate), name);
    return shownIn.kind().siValueOf(quantity);
  }

  Figure figure(double si) {
    return Figure.ofSi(si, shownIn);
  }
}
