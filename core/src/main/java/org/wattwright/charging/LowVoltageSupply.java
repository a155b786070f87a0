package org.wattwright.charging;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.check.Source;
import org.wattwright.units.Measures;
import org.wattwright.voltage.VoltageRange;

/**
 * Supply voltages that devices of a low-voltage system must work at.
 *
 * <p>Codes A to D for 12 V and E to H for 24 V. Source: ISO 16750-2:2010, clause 4.2, Tables 1 and
 * 2; 14 V and 28 V with the generator running: ISO 16750-1. For 48 V: VDA 320 and LV 148, from
 * memory.
 */
public enum LowVoltageSupply {
  /** 12 V, 6 V to 16 V. */
  A(12, 6, 16),
  /** 12 V, 8 V to 16 V. */
  B(12, 8, 16),
  /** 12 V, 9 V to 16 V. */
  C(12, 9, 16),
  /** 12 V, 10.5 V to 16 V. */
  D(12, 10.5, 16),
  /** 24 V, 10 V to 32 V. */
  E(24, 10, 32),
  /** 24 V, 16 V to 32 V. */
  F(24, 16, 32),
  /** 24 V, 22 V to 32 V. */
  G(24, 22, 32),
  /** 24 V, 18 V to 32 V. */
  H(24, 18, 32),
  /** 48 V, unlimited operation, 36 V to 52 V. */
  UNLIMITED_48(48, 36, 52),
  /** 48 V, limited operation, 24 V to 54 V. */
  LIMITED_48(48, 24, 54);

  private static final double SYSTEM_12 = 12;
  private static final double SYSTEM_24 = 24;
  private static final double RUNNING_12 = 14;
  private static final double RUNNING_24 = 28;
  private static final double RUNNING_48 = 48;

  private final double systemV;
  private final double lowestV;
  private final double highestV;

  LowVoltageSupply(double systemV, double lowestV, double highestV) {
    this.systemV = systemV;
    this.lowestV = lowestV;
    this.highestV = highestV;
  }

  /**
   * Nominal voltage of the system.
   *
   * @return 12 V, 24 V or 48 V
   */
  public Quantity<ElectricPotential> systemVoltage() {
    return Measures.volts(systemV);
  }

  /**
   * Voltages at which a device works.
   *
   * @return the range
   */
  public VoltageRange range() {
    return VoltageRange.between(Measures.volts(lowestV), Measures.volts(highestV));
  }

  /**
   * Voltage with the generator, here the converter, running.
   *
   * @return 14 V, 28 V or 48 V
   */
  public Quantity<ElectricPotential> runningVoltage() {
    if (systemV == SYSTEM_12) {
      return Measures.volts(RUNNING_12);
    }
    return Measures.volts(systemV == SYSTEM_24 ? RUNNING_24 : RUNNING_48);
  }

  Source source() {
    return systemV <= SYSTEM_24
        ? Source.standard("ISO 16750-2:2010", "clause 4.2, code " + name())
        : Source.standard("VDA 320, LV 148", "voltage ranges").fromMemory();
  }

  /**
   * Code and range.
   *
   * @return for example {@code C (9 V … 16 V)}
   */
  @Override
  public String toString() {
    return name() + " (" + range() + ")";
  }
}
