package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.protection.FaultCurrent;
import org.wattwright.protection.FaultPath;
import org.wattwright.protection.Fuse;
import org.wattwright.protection.SeriesChain;
import org.wattwright.units.Measures;

/**
 * Two faults to the chassis in different boxes: every string from the bus in the contactor box out
 * through its bays and back, a fuse in the middle of the modules of each bay.
 */
final class ChassisLoops {
  private static final Given<Quantity<ElectricPotential>> NO_ARC =
      Given.estimated(Measures.volts(0), Source.commonPractice("two bolted faults"));

  private static final String BOX = "contactor and fuse box";

  private final List<Fuse> links;
  private final CircuitsInput input;
  private final Quantity<ElectricResistance> bond;
  private int nextLink;

  private ChassisLoops(
      CircuitsInput input, CircuitDesign design, Quantity<ElectricResistance> bond) {
    this.input = input;
    this.bond = bond;
    this.links = fuses(design, CircuitRole.INTER_BAY_LINK);
  }

  static List<Check> checks(
      CircuitsInput input, Pack pack, CircuitDesign design, Quantity<ElectricResistance> bond) {
    ChassisLoops loops = new ChassisLoops(input, design, bond);
    List<Check> checks = new ArrayList<>();
    List<Fuse> own = fuses(design, CircuitRole.STRING);
    for (int i = 0; i < pack.strings().size(); i++) {
      Optional<Fuse> fuse = i < own.size() ? Optional.of(own.get(i)) : Optional.empty();
      checks.addAll(loops.checks(pack.strings().get(i), fuse));
    }
    return checks;
  }

  private static List<Fuse> fuses(CircuitDesign design, CircuitRole role) {
    return design.circuits().stream()
        .filter(each -> each.circuit().role() == role)
        .map(DesignedCircuit::fuse)
        .flatMap(Optional::stream)
        .toList();
  }

  private List<Check> checks(SeriesString string, Optional<Fuse> fuse) {
    SeriesChain chain = SeriesChain.startingAt(string.name() + ", bus minus", BOX);
    Optional<Fuse> own = fuse;
    for (SeriesString.Group group : string.groups()) {
      chain = chain.to(string.name() + ", first module", group.bay());
      chain = through(chain, group, own);
      chain = chain.to(string.name() + ", last module", group.bay());
      own = nextLink < links.size() ? Optional.of(links.get(nextLink)) : Optional.empty();
      nextLink += string.groups().indexOf(group) + 1 < string.groups().size() ? 1 : 0;
    }
    return chain.to(string.name() + ", bus plus", BOX).faultLoops(bond).stream()
        .map(loop -> loop.check())
        .toList();
  }

  private SeriesChain through(SeriesChain chain, SeriesString.Group group, Optional<Fuse> fuse) {
    SeriesChain half = cells(chain, group, group.count() / 2);
    if (fuse.isPresent()) {
      half = half.fuse(fuse.get());
    }
    return cells(half, group, group.count() - group.count() / 2);
  }

  /** From full, warm and new to empty, cold and aged; no arc, which burns at the faults. */
  private SeriesChain cells(SeriesChain chain, SeriesString.Group group, int count) {
    if (count == 0) {
      return chain;
    }
    Pack part = Pack.of(group.module(), count, 1);
    FaultCurrent weakest =
        FaultSupplies.source(input, part).withArcVoltage(NO_ARC).lowest(FaultPath.EMPTY).current();
    return chain.cells(
        part.maximumVoltage(),
        part.ohmicResistance().orElseThrow(),
        weakest.drivingVoltage(),
        weakest.resistance());
  }
}
