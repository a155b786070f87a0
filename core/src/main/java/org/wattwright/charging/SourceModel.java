package org.wattwright.charging;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;

/** What feeds the pack, on plain doubles in SI. */
interface SourceModel {
  /** Output power available at an output voltage; 0 outside the window. */
  double powerW(double voltageV);

  /** What limits that power. */
  ChargeLimit powerLimit();

  /** Largest output current. */
  double currentA();

  /** Lowest output voltage. */
  double lowestV();

  /** Highest output voltage. */
  double highestV();

  /** Power drawn from the mains for an output power; NaN if not known. */
  double wallW(double outputW, double voltageV);

  /** A station: constant efficiency, or none known. */
  record Station(DcStation station) implements SourceModel {
    @Override
    public double powerW(double voltageV) {
      boolean inside = voltageV >= lowestV() && voltageV <= highestV() * (1 + BankModel.ROUNDING);
      return inside ? Kind.POWER.siValueOf(station.maximumPower()) : 0;
    }

    @Override
    public ChargeLimit powerLimit() {
      return ChargeLimit.CHARGER_POWER;
    }

    @Override
    public double currentA() {
      return Kind.CURRENT.siValueOf(station.maximumCurrent());
    }

    @Override
    public double lowestV() {
      return siV(station.voltages().lowest());
    }

    @Override
    public double highestV() {
      return siV(station.voltages().highest());
    }

    @Override
    public double wallW(double outputW, double voltageV) {
      return outputW / station.efficiency().orElse(Double.NaN);
    }

    private static double siV(Quantity<ElectricPotential> voltage) {
      return Kind.VOLTAGE.siValueOf(voltage);
    }
  }
}
