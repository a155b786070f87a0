package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The brakes of one axle as a store of heat, and how hot their linings may get.
 *
 * <p>An estimate states how far it may be off; a check then takes the end that gets hotter.
 * Immutable and thread-safe.
 */
public final class BrakeHeat implements Serializable {
  private static final long serialVersionUID = 1L;

  private final BrakeHeatSink sink;
  private final Quantity<Temperature> limit;
  private final double share;
  private final Basis basis;

  private BrakeHeat(BrakeHeatSink sink, Quantity<Temperature> limit, double share, Basis basis) {
    this.sink = sink;
    this.limit = limit;
    this.share = share;
    this.basis = basis;
  }

  /**
   * Brakes from a data sheet.
   *
   * @param sink drums or discs of the axle
   * @param limit absolute temperature that the lining stands without fading
   * @return the brakes
   */
  public static BrakeHeat of(BrakeHeatSink sink, Quantity<Temperature> limit) {
    Objects.requireNonNull(sink, "sink");
    return new BrakeHeat(sink, Measure.from(limit, Kind.TEMPERATURE), 0, Basis.DATA_SHEET);
  }

  /**
   * The same with another basis.
   *
   * @param value what capacity, cooling and limit rest on; data sheet unless told
   * @return new brakes
   */
  public BrakeHeat withBasis(Basis value) {
    return new BrakeHeat(sink, limit, share, Objects.requireNonNull(value, "basis"));
  }

  /**
   * The same as an estimate.
   *
   * @param mostOff share by which capacity and cooling may be off either way, 0.2 for ±20 %; 0 or
   *     more, below 1
   * @return new brakes, estimated
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public BrakeHeat estimatedWithin(double mostOff) {
    double off = CorneringStiffness.mostOff("BrakeHeat.mostOff", mostOff);
    return new BrakeHeat(sink, limit, off, Basis.ESTIMATED);
  }

  /**
   * Drums or discs of the axle.
   *
   * @return typical values of an estimate
   */
  public BrakeHeatSink sink() {
    return sink;
  }

  /**
   * What the lining stands.
   *
   * @return absolute temperature
   */
  public Quantity<Temperature> limit() {
    return limit;
  }

  /**
   * What capacity, cooling and limit rest on.
   *
   * @return the basis
   */
  public Basis basis() {
    return basis;
  }

  /**
   * The sinks between which the truth lies.
   *
   * @return this one alone, or the lowest and the highest of an estimate
   */
  public List<BrakeHeatSink> extremes() {
    return share == 0 ? List.of(sink) : List.of(sink.times(1 - share), sink.times(1 + share));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof BrakeHeat that
            && sink.equals(that.sink)
            && limit.equals(that.limit)
            && share == that.share
            && basis == that.basis);
  }

  @Override
  public int hashCode() {
    return Objects.hash(sink, limit, share, basis);
  }

  /**
   * Axle, capacity, limit and basis.
   *
   * @return for example {@code rear brakes, 6 kJ/K, up to 300 °C (estimated)}
   */
  @Override
  public String toString() {
    return sink.axle() + " brakes, " + sink.capacity() + ", up to " + limit + " (" + basis + ")";
  }
}
