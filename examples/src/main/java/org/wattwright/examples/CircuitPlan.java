package org.wattwright.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.FaultDuty;
import org.wattwright.conductor.StrandClass;
import org.wattwright.conversion.Circuits;
import org.wattwright.conversion.IsolationBudget;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.protection.Bonding;
import org.wattwright.protection.BusDischarge;
import org.wattwright.protection.Circuit;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitDesigner;
import org.wattwright.protection.CircuitReview;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.protection.DischargeRule;
import org.wattwright.protection.FaultLoop;
import org.wattwright.protection.FaultPath;
import org.wattwright.protection.FaultSource;
import org.wattwright.protection.InletProtection;
import org.wattwright.protection.IsolationRule;
import org.wattwright.protection.SenseWiring;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.voltage.Device;

/** Chooses the parts of every circuit of a job and looks at what else protects people. */
final class CircuitPlan {
  private static final int MOST_RUNS = 2;

  private static final List<DischargeRule> DISCHARGES =
      List.of(DischargeRule.BLEED, DischargeRule.AFTER_CRASH_LATEST);

  private final CircuitsInput input;
  private final Pack pack;
  private final List<Device> devices;
  private final Quantity<ElectricPotential> highest;

  private CircuitPlan(
      CircuitsInput input, Pack pack, List<Device> devices, Quantity<ElectricPotential> highest) {
    this.input = input;
    this.pack = pack;
    this.devices = devices;
    this.highest = highest;
  }

  /**
   * Plans the circuits.
   *
   * @param pack strings as they lie in the bays, without link cables
   * @param highest voltage of the pack, charging or regenerating
   */
  static Circuits of(
      CircuitsInput input, Pack pack, List<Device> devices, Quantity<ElectricPotential> highest) {
    return new CircuitPlan(input, pack, devices, highest).circuits();
  }

  private Circuits circuits() {
    FaultSupplies supplies = FaultSupplies.of(input, pack, devices, highest);
    List<Circuit> circuits = CircuitParts.circuits(input, supplies);
    CircuitDesign design =
        CircuitDesigner.fedBy(supplies.battery())
            .circuits(circuits)
            .cables(input.catalogue().cables())
            .fuses(input.catalogue().fuses())
            .contactors(input.catalogue().contactors())
            .prechargeResistors(input.catalogue().resistors())
            .parallelRunsUpTo(MOST_RUNS)
            .allowProvisional()
            .run();
    return Circuits.of(design, review(circuits))
        .isolation(isolation())
        .checks(sense())
        .checks(discharge())
        .checks(bonding(design))
        .checks(
            input
                .shock()
                .bondBetweenBays()
                .map(r -> ChassisLoops.checks(input, pack, design, r))
                .orElseGet(CircuitPlan::loopsUnknown))
        .checks(inlet())
        .worksheets(faults())
        .worksheets(
            bus().map(bus -> DISCHARGES.stream().map(bus::worksheet).toList()).orElseGet(List::of));
  }

  /** Highest and lowest fault of the pack at its terminals, and of the rest into one string. */
  private List<Worksheet> faults() {
    FaultPath terminals =
        FaultPath.EMPTY.withInductance("pack and box", input.faults().inductance());
    FaultSource whole = FaultSupplies.source(input, pack);
    List<Worksheet> sheets = new ArrayList<>();
    whole
        .highest(terminals)
        .map(loop -> named("Highest fault, battery", loop))
        .ifPresent(sheets::add);
    sheets.add(named("Lowest fault, battery", whole.lowest(terminals)));
    if (pack.strings().size() > 1) {
      FaultSource others = whole.intoString(0);
      others
          .highest(terminals)
          .map(loop -> named("Highest fault into one string, from the others", loop))
          .ifPresent(sheets::add);
      sheets.add(named("Lowest fault into one string, from the others", others.lowest(terminals)));
    }
    return sheets;
  }

  private static Worksheet named(String title, FaultLoop loop) {
    Worksheet.Recording recording = Worksheet.record(title);
    loop.worksheet().steps().forEach(recording::add);
    return recording.toWorksheet();
  }

  /** A string that lies in one bay needs no link, only its feeder. */
  private CircuitReview review(List<Circuit> circuits) {
    int links = pack.strings().stream().mapToInt(string -> string.groups().size() - 1).sum();
    return CircuitReview.of(circuits).bays(1 + links).parallelStrings(pack.strings().size());
  }

  private IsolationBudget isolation() {
    IsolationBudget budget =
        IsolationBudget.at(
            highest, input.shock().joined() ? IsolationRule.JOINED : IsolationRule.DC);
    for (CircuitsInput.IsolationInput device : input.isolation()) {
      budget = budget.with(device.name(), device.leaks(), device.capacitor(), device.basis());
    }
    return budget;
  }

  private List<Check> sense() {
    SenseWiring wiring =
        input
            .shock()
            .senseTaps()
            .map(
                taps ->
                    SenseWiring.of("each measuring unit", taps.count(), highest)
                        .fusedTaps(taps.fused()))
            .orElseGet(() -> SenseWiring.of("each measuring unit", 2, highest));
    return wiring.checks();
  }

  private List<Check> discharge() {
    if (input.precharge().bleed().isEmpty()) {
      return List.of(
          Check.named("discharge.time", "time to harmless, " + DischargeRule.BLEED.name())
              .source(DischargeRule.BLEED.source())
              .safety()
              .notChecked("bleed resistance"));
    }
    return bus().stream().flatMap(bus -> DISCHARGES.stream().map(bus::check)).toList();
  }

  /** The capacitors of all devices at the upper end of their tolerance, and the bleed. */
  private Optional<BusDischarge> bus() {
    double upperF =
        Kind.CAPACITANCE.siValueOf(FaultSupplies.capacitance(devices))
            * (1 + input.precharge().tolerance());
    return input
        .precharge()
        .bleed()
        .map(bleed -> new BusDischarge(Kind.CAPACITANCE.ofSi(upperF), highest, bleed));
  }

  private List<Check> bonding(CircuitDesign design) {
    List<Check> checks = new ArrayList<>();
    for (CircuitsInput.IsolationInput device : input.isolation()) {
      checks.add(
          device
              .bond()
              .map(ohm -> Bonding.toChassis(device.name(), ohm))
              .orElseGet(
                  () ->
                      Check.named("bonding.resistance", device.name() + " to chassis")
                          .source(Source.standard("UN R100", "para 5.1.2.2"))
                          .safety()
                          .notChecked("bond to chassis of " + device.name())));
    }
    Optional<FaultDuty> worst = worstLetThrough(design);
    if (input.shock().bondConductor().isPresent() && worst.isPresent()) {
      ConductorSize bond =
          ConductorSize.metric(input.shock().bondConductor().get(), StrandClass.FLEXIBLE);
      checks.add(Bonding.withstand(bond, worst.get(), Measures.celsius(40), Measures.celsius(160)));
    }
    return checks;
  }

  /** Most that any fuse of the traction circuits lets through into two faults. */
  private Optional<FaultDuty> worstLetThrough(CircuitDesign design) {
    return design.circuits().stream()
        .filter(each -> each.circuit().role().isFedByTractionBattery())
        .map(DesignedCircuit::fuse)
        .flatMap(Optional::stream)
        .map(fuse -> fuse.totalJouleIntegralAt(highest))
        .flatMap(Optional::stream)
        .max(Comparator.comparingDouble(Kind.JOULE_INTEGRAL::siValueOf))
        .map(FaultDuty::of);
  }

  private static List<Check> loopsUnknown() {
    return List.of(
        Check.named("isolation.two-faults", "two faults in different boxes")
            .source(Source.commonPractice("a fuse in each loop that two faults can close"))
            .safety()
            .notChecked("bond between bays"));
  }

  private List<Check> inlet() {
    CircuitsInput.Inlet inlet = input.shock().inlet();
    List<Check> checks = new ArrayList<>();
    checks.add(
        inlet
            .attestedBy()
            .map(who -> InletProtection.residualCurrentAttested(who, true))
            .orElseGet(InletProtection::residualCurrentUnknown));
    checks.add(
        inlet
            .breakerAttestedBy()
            .map(who -> InletProtection.supplyBreakerAttested(who, true))
            .orElseGet(InletProtection::supplyBreakerUnknown));
    inlet.isolation().ifPresent(ohm -> checks.add(InletProtection.isolation(ohm)));
    inlet.protectiveEarth().ifPresent(ohm -> checks.add(InletProtection.protectiveEarth(ohm)));
    return checks;
  }
}
