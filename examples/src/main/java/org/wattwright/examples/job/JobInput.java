package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;

/**
 * A whole job: who asks for what, and the parts at hand.
 *
 * <p>Immutable and thread-safe.
 *
 * @param title of the job
 * @param customer who asks
 * @param vehicle what is converted
 * @param notes remarks to print with the job; may be empty
 * @param requirement what is asked of the pack
 * @param modules candidate module types, at least one
 * @param devices devices on the traction circuit, at least one
 * @param weighed the vehicle as weighed and what changes in it; empty if the job is about the pack
 *     alone
 * @param circuits the circuits, the parts to choose from and what protection rests on; empty if the
 *     job leaves them out
 * @param controls brake vacuum, settings, pedal and gauges; empty if the job leaves them out
 * @param mountings patterns of fixings for the boxes of the bays; may be empty
 * @param drive how the vehicle is driven and what is asked of it; empty if the job leaves it out
 * @param chargingPoints where it is charged; may be empty
 * @param lowVoltage loads, battery and targets; empty if the job says nothing about them
 * @param statements every requirement of {@code job.csv}, with its basis
 */
public record JobInput(
    String title,
    String customer,
    String vehicle,
    String notes,
    Requirement requirement,
    List<ModuleInput> modules,
    List<DeviceInput> devices,
    Optional<VehicleInput> weighed,
    Optional<CircuitsInput> circuits,
    Optional<ControlsInput> controls,
    List<MountingInput> mountings,
    Optional<DriveInput> drive,
    List<ChargingPointInput> chargingPoints,
    Optional<LowVoltageInput> lowVoltage,
    List<Statement> statements) {
  /**
   * Copies the lists.
   *
   * @param title of the job
   * @param customer who asks
   * @param vehicle what is converted
   * @param notes remarks to print with the job
   * @param requirement what is asked of the pack
   * @param modules candidate module types
   * @param devices devices on the traction circuit
   * @param weighed the vehicle as weighed and what changes in it
   * @param circuits the circuits and what protection rests on
   * @param controls brake vacuum, settings, pedal and gauges
   * @param mountings patterns of fixings for the boxes of the bays
   * @param drive how the vehicle is driven and what is asked of it; empty if the job leaves it out
   * @param chargingPoints where it is charged; may be empty
   * @param lowVoltage loads, battery and targets; empty if the job says nothing about them
   * @param statements every requirement of {@code job.csv}
   */
  public JobInput {
    modules = List.copyOf(modules);
    devices = List.copyOf(devices);
    mountings = List.copyOf(mountings);
    chargingPoints = List.copyOf(chargingPoints);
    statements = List.copyOf(statements);
  }

  /**
   * The cells that the modules are made of.
   *
   * @return each once, in the order of the modules
   */
  public List<CellInput> cells() {
    return modules.stream().map(ModuleInput::cell).distinct().toList();
  }
}
