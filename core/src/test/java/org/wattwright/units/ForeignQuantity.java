package org.wattwright.units;

import javax.measure.Quantity;
import javax.measure.Unit;

/** A quantity of nobody's implementation: carries, and refuses all arithmetic. */
record ForeignQuantity<Q extends Quantity<Q>>(Number value, Unit<Q> unit, Scale scale)
    implements Quantity<Q> {
  @Override
  public Number getValue() {
    return value;
  }

  @Override
  public Unit<Q> getUnit() {
    return unit;
  }

  @Override
  public Scale getScale() {
    return scale;
  }

  @Override
  public Quantity<Q> add(Quantity<Q> that) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<Q> subtract(Quantity<Q> that) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<?> divide(Quantity<?> that) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<Q> divide(Number that) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<?> multiply(Quantity<?> that) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<Q> multiply(Number that) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<Q> to(Unit<Q> target) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<?> inverse() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Quantity<Q> negate() {
    throw new UnsupportedOperationException();
  }

  @Override
  public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
    throw new UnsupportedOperationException();
  }

  @Override
  public boolean isEquivalentTo(Quantity<Q> that) {
    throw new UnsupportedOperationException();
  }
}
