package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.conductor.Installation;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.OvercurrentTrip;

/**
 * A circuit as the job states it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the job
 * @param role what it does
 * @param feed what feeds it
 * @param load what it carries
 * @param route where it lies
 * @param guard what protects it
 * @param basis what the data rest on
 * @param source where they come from
 */
public record CircuitInput(
    Origin origin,
    String name,
    CircuitRole role,
    Feed feed,
    Load load,
    Route route,
    Guard guard,
    Basis basis,
    String source) {
  /**
   * What feeds a circuit.
   *
   * @param from the circuit nearer to the source; empty at the source
   * @param supply name of what feeds its faults; empty if a source limits itself
   * @param limit current to which the source holds itself; empty if it does not
   * @param limitedBy who holds it
   */
  public record Feed(
      Optional<String> from,
      Optional<String> supply,
      Optional<Quantity<ElectricCurrent>> limit,
      Optional<String> limitedBy) {}

  /**
   * What a circuit carries.
   *
   * @param continuous for any time; empty if not known
   * @param highest in normal operation; empty if the continuous one
   * @param duty steps that repeat for ever; may be empty
   * @param capacitance of the devices at its end; empty if not known
   * @param fedBackwards whether these empty into a fault on the circuit
   */
  public record Load(
      Optional<Quantity<ElectricCurrent>> continuous,
      Optional<Quantity<ElectricCurrent>> highest,
      List<DutyStep> duty,
      Optional<Quantity<ElectricCapacitance>> capacitance,
      boolean fedBackwards) {
    /**
     * Copies the list.
     *
     * @param continuous for any time
     * @param highest in normal operation
     * @param duty steps that repeat for ever
     * @param capacitance of the devices at its end
     * @param fedBackwards whether these empty into a fault on the circuit
     */
    public Load {
      duty = List.copyOf(duty);
    }
  }

  /**
   * A step of a duty.
   *
   * @param time how long, &gt; 0
   * @param current during it
   */
  public record DutyStep(Quantity<Time> time, Quantity<ElectricCurrent> current) {}

  /**
   * Where a circuit lies; what is empty is not known.
   *
   * @param out length out
   * @param back length back
   * @param installation air and neighbours
   * @param terminalLimit highest temperature of its terminals
   * @param drop voltage that may be lost
   * @param bend radius there is room for
   * @param leastArea of each cable, for strength
   * @param joints bolted lugs of both polarities
   */
  public record Route(
      Optional<Quantity<Length>> out,
      Optional<Quantity<Length>> back,
      Optional<Installation> installation,
      Optional<Quantity<Temperature>> terminalLimit,
      Optional<Quantity<ElectricPotential>> drop,
      Optional<Quantity<Length>> bend,
      Optional<Quantity<Area>> leastArea,
      int joints) {}

  /**
   * What protects a circuit.
   *
   * @param fused whether it has a fuse of its own
   * @param switching what opens it
   * @param trip setting that does so; empty without one
   * @param disconnect rated voltage of its service disconnect; empty without one
   */
  public record Guard(
      boolean fused,
      Switching switching,
      Optional<OvercurrentTrip> trip,
      Optional<Quantity<ElectricPotential>> disconnect) {}

  /** What opens a circuit in operation. */
  public enum Switching {
    /** Nothing. */
    NONE("none"),
    /** A contactor. */
    CONTACTOR("contactor"),
    /** A contactor that closes after pre-charge. */
    PRECHARGED("pre-charged");

    private final String label;

    Switching(String label) {
      this.label = label;
    }

    @Override
    public String toString() {
      return label;
    }
  }
}
