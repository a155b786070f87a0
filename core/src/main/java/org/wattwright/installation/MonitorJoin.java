package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MILLIOHM;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What joins two modules of the string. Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param type what it is
 * @param resistance with its contacts, ≥ 0 mΩ
 */
public record MonitorJoin(String name, Type type, Quantity<ElectricResistance> resistance)
    implements Serializable {
  /** A bar whose resistance does not matter. */
  public static final MonitorJoin SHORT_BAR =
      new MonitorJoin("short bar", Type.BAR, MILLIOHM.of(0));

  /** What may open, and what only drops voltage. */
  public enum Type {
    /** A bar within a row of modules. */
    BAR,
    /** A cable or long bar: it may come loose. */
    LONG_LINK,
    /** A fuse. */
    FUSE,
    /** A service disconnect, a contactor or a connector. */
    DISCONNECT
  }

  /**
   * Checks the range.
   *
   * @param name as reports print it
   * @param type what it is
   * @param resistance ≥ 0 mΩ
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the resistance
   *     negative
   */
  public MonitorJoin {
    name = Require.text("MonitorJoin.name", name);
    Objects.requireNonNull(type, "type");
    Require.quantity("MonitorJoin.resistance", resistance, MILLIOHM).nonNegative();
    resistance = Measure.from(resistance, Kind.RESISTANCE);
  }

  boolean mayOpen() {
    return type != Type.BAR;
  }

  double ohm() {
    return Kind.RESISTANCE.siValueOf(resistance);
  }
}
