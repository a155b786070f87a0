package org.wattwright.drive;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/**
 * A pack at one temperature as plain numbers by state of charge, at every tenth of a per cent with
 * straight lines between: exact where the tables of its cells have their points there.
 */
final class PackTable {
  static final int INTERVALS = 1000;
  private static final int COLUMNS = 5;
  private static final int DISCHARGE_OHM = 1;
  private static final int CHARGE_OHM = 2;
  private static final int DISCHARGE_A = 3;
  private static final int CHARGE_A = 4;

  private final double[] rows;
  private final double capacityC;

  private PackTable(double[] rows, double capacityC) {
    this.rows = rows;
    this.capacityC = capacityC;
  }

  static PackTable of(Pack pack, Quantity<Temperature> temperature, Quantity<Time> duration) {
    double[] rows = new double[(INTERVALS + 1) * COLUMNS];
    for (int i = 0; i <= INTERVALS; i++) {
      PackState state = PackState.of(StateOfCharge.of((double) i / INTERVALS), temperature);
      int at = i * COLUMNS;
      rows[at] = Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(state));
      rows[at + DISCHARGE_OHM] =
          Kind.RESISTANCE.siValueOf(pack.resistance(state, Direction.DISCHARGE, duration));
      rows[at + CHARGE_OHM] =
          Kind.RESISTANCE.siValueOf(pack.resistance(state, Direction.CHARGE, duration));
      rows[at + DISCHARGE_A] =
          Kind.CURRENT.siValueOf(pack.maximumDischargePower(state, duration).current());
      rows[at + CHARGE_A] =
          Kind.CURRENT.siValueOf(pack.maximumChargePower(state, duration).current());
    }
    return new PackTable(rows, Kind.CHARGE.siValueOf(pack.capacity()));
  }

  /** Between this table and another one, 0 for this. */
  PackTable towards(PackTable other, double share) {
    double[] blended = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      blended[i] = rows[i] + share * (other.rows[i] - rows[i]);
    }
    return new PackTable(blended, capacityC + share * (other.capacityC - capacityC));
  }

  PackTable withCapacityTimes(double factor) {
    return new PackTable(rows, capacityC * factor);
  }

  double capacityC() {
    return capacityC;
  }

  double openCircuitV(double soc) {
    return at(soc, 0);
  }

  double ohm(double soc, boolean discharge) {
    return at(soc, discharge ? DISCHARGE_OHM : CHARGE_OHM);
  }

  double limitA(double soc, boolean discharge) {
    return at(soc, discharge ? DISCHARGE_A : CHARGE_A);
  }

  private double at(double soc, int column) {
    double x = Math.max(0, Math.min(soc, 1)) * INTERVALS;
    int i = Math.min((int) x, INTERVALS - 1);
    int at = i * COLUMNS + column;
    double low = rows[at];
    return low + (x - i) * (rows[at + COLUMNS] - low);
  }
}
