package org.wattwright.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Given;
import org.wattwright.examples.job.CircuitInput;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.protection.CapacitorDischarge;
import org.wattwright.protection.CircuitSupply;
import org.wattwright.protection.FaultCurrent;
import org.wattwright.protection.FaultPath;
import org.wattwright.protection.FaultRange;
import org.wattwright.protection.FaultSource;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;

/**
 * What feeds the circuits of a job and their faults: the whole battery, the other strings, one
 * string, and the supplies that the job states.
 *
 * <p>Immutable.
 */
final class FaultSupplies {
  private static final String BATTERY = "battery";
  private static final String OTHERS = "other strings";
  private static final String ONE = "one string";

  private final Map<String, CircuitSupply> byName;
  private final List<CircuitSupply> segments;

  private FaultSupplies(Map<String, CircuitSupply> byName, List<CircuitSupply> segments) {
    this.byName = byName;
    this.segments = List.copyOf(segments);
  }

  /**
   * Without the link cables, whose resistance belongs to the circuits.
   *
   * @param highest voltage, full and charging
   */
  static FaultSupplies of(
      CircuitsInput input, Pack pack, List<Device> devices, Quantity<ElectricPotential> highest) {
    Map<String, CircuitSupply> byName = new LinkedHashMap<>();
    FaultSource whole = source(input, pack);
    byName.put(BATTERY, supply(BATTERY, whole, highest, input));
    if (pack.strings().size() > 1) {
      FaultSource others = whole.intoString(0).withCapacitor(capacitors(input, devices, highest));
      byName.put(OTHERS, supply(OTHERS, others, highest, input));
    }
    byName.put(ONE, supply(ONE, source(input, oneString(pack)), highest, input));
    for (CircuitsInput.SupplyInput stated : input.supplies()) {
      byName.put(stated.name(), stated.origin().locate(() -> supply(stated)));
    }
    return new FaultSupplies(byName, segments(input, pack));
  }

  private static Pack oneString(Pack pack) {
    return Pack.of(pack.strings().subList(0, 1));
  }

  static FaultSource source(CircuitsInput input, Pack pack) {
    Given<Double> oldest = input.faults().oldest();
    FaultSource source =
        FaultSource.of(pack)
            .withCellTemperatures(input.faults().cells())
            .withAge(new Given<>(Ageing.of(1, oldest.value()), oldest.basis(), oldest.source()));
    return input.faults().arc().map(source::withArcVoltage).orElse(source);
  }

  /**
   * The capacitors of all devices empty into a fault inside a string before the contactor opens;
   * behind the battery the circuits state them.
   */
  private static CapacitorDischarge capacitors(
      CircuitsInput input, List<Device> devices, Quantity<ElectricPotential> highest) {
    return CapacitorDischarge.of("capacitors of the devices", capacitance(devices), highest)
        .through(input.faults().capacitorLoop().value(), input.faults().inductance().value());
  }

  static Quantity<ElectricCapacitance> capacitance(List<Device> devices) {
    return Kind.CAPACITANCE.ofSi(
        devices.stream()
            .flatMap(device -> device.capacitance().stream())
            .mapToDouble(Kind.CAPACITANCE::siValueOf)
            .sum());
  }

  private static CircuitSupply supply(
      String name, FaultSource source, Quantity<ElectricPotential> highest, CircuitsInput input) {
    FaultPath atTerminals =
        FaultPath.EMPTY.withInductance("pack and box", input.faults().inductance());
    return CircuitSupply.of(name, highest, source.range(atTerminals, atTerminals));
  }

  private static CircuitSupply supply(CircuitsInput.SupplyInput stated) {
    return CircuitSupply.of(
        stated.name(),
        stated.highestVoltage(),
        FaultRange.of(
            FaultCurrent.of(stated.highest(), stated.leastResistance(), stated.inductance()),
            FaultCurrent.of(stated.lowest(), stated.mostResistance(), stated.inductance())));
  }

  /** The groups of every string that lies in several bays, each on its own. */
  private static List<CircuitSupply> segments(CircuitsInput input, Pack pack) {
    List<CircuitSupply> segments = new ArrayList<>();
    for (SeriesString string : pack.strings()) {
      if (string.groups().size() > 1) {
        for (SeriesString.Group group : string.groups()) {
          Pack alone = Pack.of(group.module(), group.count(), 1);
          String name = group.count() + " modules, " + group.bay();
          segments.add(supply(name, source(input, alone), alone.maximumVoltage(), input));
        }
      }
    }
    return segments;
  }

  /** The supply that a circuit names. */
  CircuitSupply named(String name, CircuitInput circuit) {
    CircuitSupply supply = byName.get(name);
    if (supply == null) {
      throw circuit
          .origin()
          .error(
              "no supply is named \""
                  + name
                  + "\"; supplies are "
                  + String.join(", ", byName.keySet()));
    }
    return supply;
  }

  CircuitSupply battery() {
    return java.util.Objects.requireNonNull(byName.get(BATTERY));
  }

  List<CircuitSupply> segments() {
    return segments;
  }
}
