package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Time;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.protection.IsolationLeaks;

/**
 * The circuits of a job, the parts to choose from, and what protection rests on.
 *
 * <p>Immutable and thread-safe.
 *
 * @param circuits each after the one that feeds it, at least one
 * @param supplies what feeds faults besides the traction pack
 * @param catalogue parts to choose from
 * @param faults what the faults of the pack rest on
 * @param precharge times of the pre-charge, and the discharge after it
 * @param shock what protects people
 * @param isolation of each device
 * @param statements every line of {@code protection.csv}, with its basis
 */
public record CircuitsInput(
    List<CircuitInput> circuits,
    List<SupplyInput> supplies,
    CatalogueInput catalogue,
    Faults faults,
    Bus precharge,
    Shock shock,
    List<IsolationInput> isolation,
    List<Statement> statements) {
  /**
   * Copies the lists.
   *
   * @param circuits each after the one that feeds it
   * @param supplies what feeds faults besides the traction pack
   * @param catalogue parts to choose from
   * @param faults what the faults of the pack rest on
   * @param precharge times of the pre-charge, and the discharge after it
   * @param shock what protects people
   * @param isolation of each device
   * @param statements every line of {@code protection.csv}
   */
  public CircuitsInput {
    circuits = List.copyOf(circuits);
    supplies = List.copyOf(supplies);
    isolation = List.copyOf(isolation);
    statements = List.copyOf(statements);
  }

  /**
   * A supply with its highest and lowest fault.
   *
   * @param origin where it stands
   * @param name its name
   * @param highestVoltage when charging
   * @param highest voltage that drives the highest fault
   * @param leastResistance through which
   * @param inductance of both, at most
   * @param lowest voltage that drives the lowest fault
   * @param mostResistance through which
   */
  public record SupplyInput(
      Origin origin,
      String name,
      Quantity<ElectricPotential> highestVoltage,
      Quantity<ElectricPotential> highest,
      Quantity<ElectricResistance> leastResistance,
      Quantity<ElectricInductance> inductance,
      Quantity<ElectricPotential> lowest,
      Quantity<ElectricResistance> mostResistance) {}

  /**
   * What the faults of the pack rest on.
   *
   * @param oldest factor of the resistance of the oldest pack
   * @param cells temperatures of the cells
   * @param inductance of pack and box
   * @param capacitorLoop resistance of the loop of the capacitors
   * @param arc voltage of an arc in the lowest fault; empty for the usual estimate
   * @param lug resistance of a bolted lug; empty for the usual estimate
   */
  public record Faults(
      Given<Double> oldest,
      TemperatureRange cells,
      Given<Quantity<ElectricInductance>> inductance,
      Given<Quantity<ElectricResistance>> capacitorLoop,
      Optional<Given<Quantity<ElectricPotential>>> arc,
      Optional<Given<Quantity<ElectricResistance>>> lug) {}

  /**
   * Pre-charge and discharge of the capacitors.
   *
   * @param within time of the slowest pre-charge
   * @param timeOut after which it is given up
   * @param repeats how often it may be repeated within a period; empty if not known
   * @param bleed resistance that discharges them; empty if not known
   * @param tolerance of the capacitance, 0 to 1
   */
  public record Bus(
      Quantity<Time> within,
      Quantity<Time> timeOut,
      Optional<Repeats> repeats,
      Optional<Quantity<ElectricResistance>> bleed,
      double tolerance) {}

  /**
   * How often pre-charge may be repeated.
   *
   * @param count at least 1
   * @param period in which they fall
   */
  public record Repeats(int count, Quantity<Time> period) {}

  /**
   * What protects people.
   *
   * @param joined whether alternating and direct current hang together
   * @param bondBetweenBays resistance of the chassis between two bays; empty if not measured
   * @param bondConductor area of the bond; empty if not known
   * @param senseTaps of one measuring unit, and how many are fused; empty if not known
   * @param inlet what was measured of the inlet
   */
  public record Shock(
      boolean joined,
      Optional<Quantity<ElectricResistance>> bondBetweenBays,
      Optional<Quantity<Area>> bondConductor,
      Optional<SenseTaps> senseTaps,
      Inlet inlet) {}

  /**
   * Taps of one measuring unit.
   *
   * @param count number of taps
   * @param fused how many have a fuse
   */
  public record SenseTaps(int count, int fused) {}

  /**
   * The inlet for alternating current; what is empty was not measured or attested.
   *
   * @param isolation unplugged, to chassis
   * @param protectiveEarth earth pin to chassis
   * @param attestedBy who attests the residual-current device
   * @param breakerAttestedBy who attests the breaker of the supply
   */
  public record Inlet(
      Optional<Quantity<ElectricResistance>> isolation,
      Optional<Quantity<ElectricResistance>> protectiveEarth,
      Optional<String> attestedBy,
      Optional<String> breakerAttestedBy) {}

  /**
   * Insulation of a device.
   *
   * @param origin where it stands
   * @param name the device or enclosure
   * @param leaks of both poles to the chassis
   * @param capacitor between each pole and the chassis
   * @param bond its case to the chassis; empty if not measured
   * @param basis what leaks and capacitor rest on
   * @param source where they come from
   */
  public record IsolationInput(
      Origin origin,
      String name,
      IsolationLeaks leaks,
      Quantity<ElectricCapacitance> capacitor,
      Optional<Quantity<ElectricResistance>> bond,
      Basis basis,
      String source) {}
}
