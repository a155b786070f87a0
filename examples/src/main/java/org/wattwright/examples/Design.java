package org.wattwright.examples;

import java.util.List;
import java.util.Optional;
import org.wattwright.battery.Pack;
import org.wattwright.conversion.Circuits;
import org.wattwright.conversion.Conversion;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.Requirement;
import org.wattwright.layout.Allocation;
import org.wattwright.layout.Candidate;
import org.wattwright.layout.Criterion;
import org.wattwright.layout.PackSearch;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;

/**
 * The design of a job: what was searched, what was found, and the conversion with the pack chosen.
 *
 * <p>Immutable.
 *
 * @param job what was asked for
 * @param devices the devices on the traction bus
 * @param conditions between which all must work together
 * @param found what the search found
 * @param chosen the best candidate and the conversion with it; empty if there is none
 */
record Design(
    JobInput job,
    List<Device> devices,
    OperatingConditions conditions,
    PackSearch.Result found,
    Optional<Chosen> chosen) {

  /**
   * The pack chosen.
   *
   * @param candidate as the search found it
   * @param links cables from bay to bay
   * @param conversion with that pack, its link cables included
   * @param vehicle with that pack in it; empty if the job says nothing about the vehicle
   * @param controls with that pack; empty if the job says nothing about them
   * @param mountings of the boxes; empty if the job says nothing about them
   */
  record Chosen(
      Candidate candidate,
      LinkCables links,
      Conversion conversion,
      Optional<VehicleDesign> vehicle,
      Optional<ControlsDesign> controls,
      Optional<MountingDesign> mountings) {}

  static Design of(JobInput job) {
    List<Device> devices = job.devices().stream().map(Parts::device).toList();
    OperatingConditions conditions = conditions(job.requirement());
    PackSearch.Result found = search(job, devices, conditions).run();
    Optional<Chosen> chosen = found.best().map(best -> chosen(job, devices, conditions, best));
    return new Design(job, devices, conditions, found, chosen);
  }

  /** The same job with another pack, to set beside the one chosen. */
  Chosen with(Candidate other) {
    return chosen(job, devices, conditions, other);
  }

  private static OperatingConditions conditions(Requirement requirement) {
    return OperatingConditions.builder()
        .stateOfCharge(requirement.energy().empty(), requirement.energy().full())
        .coldest(requirement.climate().coldest())
        .peakDischargePower(requirement.peak().whenEmpty(), requirement.peak().duration())
        .regenerationCurrent(requirement.regeneration().current())
        .build();
  }

  private static PackSearch search(
      JobInput job, List<Device> devices, OperatingConditions conditions) {
    Requirement requirement = job.requirement();
    Requirement.PeakPower peak = requirement.peak();
    PackSearch search =
        PackSearch.over(job.modules().stream().map(Parts::module).toList())
            .under(conditions)
            .usableEnergyAtLeast(requirement.energy().energy())
            .meanPower(requirement.energy().power())
            .peakPowerAtLeast(
                peak.power(), peak.duration(), peak.stateOfCharge(), peak.temperature())
            .parallelAtMost(requirement.mostStrings())
            .rankBy(criterion(job));
    for (Device device : devices) {
      search = search.device(device);
      search = withCurrentLimit(search, device, peak);
    }
    return limited(search, requirement.limits());
  }

  /**
   * A pack of few modules in series gives the peak power only at a current the inverter refuses.
   */
  private static PackSearch withCurrentLimit(
      PackSearch search, Device device, Requirement.PeakPower peak) {
    if (device.role() != DeviceRole.INVERTER || device.maximumCurrent().isEmpty()) {
      return search;
    }
    return search.require(
        org.wattwright.layout.Requirement.atMost(
            "current of " + device.name() + " at the peak power",
            WorkshopUnits.AMPERE,
            device.maximumCurrent().get(),
            candidate -> RequirementChecks.peakCurrent(candidate.pack(), peak)));
  }

  private static PackSearch limited(PackSearch search, Requirement.Limits limits) {
    PackSearch limited = search;
    if (limits.mass().isPresent()) {
      limited = limited.massAtMost(limits.mass().get());
    }
    if (limits.volume().isPresent()) {
      limited = limited.volumeAtMost(limits.volume().get());
    }
    if (limits.price().isPresent()) {
      limited = limited.priceAtMost(limits.price().get());
    }
    return limited;
  }

  private static Criterion criterion(JobInput job) {
    return switch (job.requirement().objective()) {
      case LOWEST_MASS -> Criterion.MASS;
      case MOST_USABLE_ENERGY -> Criterion.USABLE_ENERGY;
      case HIGHEST_PEAK_POWER -> Criterion.PEAK_POWER;
      case SMALLEST_VOLUME -> Criterion.VOLUME;
      case LOWEST_PRICE -> Criterion.PRICE;
    };
  }

  private static Chosen chosen(
      JobInput job, List<Device> devices, OperatingConditions conditions, Candidate best) {
    Optional<VehicleDesign> vehicle = job.weighed().map(w -> VehicleDesign.of(w, best));
    LinkCables links = LinkCables.of(best.pack(), job, vehicle);
    Conversion.Builder builder =
        Conversion.of(job.title())
            .customer(job.customer())
            .vehicle(job.vehicle())
            .pack(links.pack())
            .conditions(conditions);
    devices.forEach(builder::device);
    RequirementChecks.of(best, builder.build().pack(), job).forEach(builder::requirement);
    vehicle.ifPresent(design -> addVehicle(builder, design));
    ChargingParts.plan(job, devices).ifPresent(builder::charging);
    ChargingParts.lowVoltage(job).ifPresent(builder::lowVoltage);
    job.circuits()
        .ifPresent(input -> builder.circuits(circuits(input, builder.build(), best, vehicle)));
    Pack strings = strings(best, vehicle);
    Optional<ControlsDesign> controls =
        job.controls().map(input -> ControlsDesign.of(input, strings, job.requirement()));
    controls.ifPresent(design -> design.checks().forEach(builder::requirement));
    Optional<MountingDesign> mountings =
        vehicle.flatMap(design -> MountingDesign.of(job.mountings(), design));
    mountings.ifPresent(design -> design.checks().forEach(builder::requirement));
    job.drive()
        .map(input -> new DriveParts(input, job.requirement(), devices))
        .ifPresent(parts -> addMotion(builder, parts, vehicle));
    return new Chosen(best, links, builder.build(), vehicle, controls, mountings);
  }

  /** The strings as they lie in the bays, without the resistance of their links. */
  static Pack strings(Chosen chosen) {
    return strings(chosen.candidate(), chosen.vehicle());
  }

  private static Pack strings(Candidate best, Optional<VehicleDesign> vehicle) {
    return vehicle
        .flatMap(design -> design.allocation().best())
        .map(Allocation::pack)
        .orElse(best.pack());
  }

  private static Circuits circuits(
      CircuitsInput input, Conversion soFar, Candidate best, Optional<VehicleDesign> vehicle) {
    return CircuitPlan.of(
        input,
        strings(best, vehicle),
        soFar.devices(),
        soFar.windows().envelope().fullUnderCharge());
  }

  private static void addMotion(
      Conversion.Builder builder, DriveParts parts, Optional<VehicleDesign> vehicle) {
    parts.backEmf().ifPresent(builder::requirement);
    Pack pack = builder.build().pack();
    vehicle.ifPresent(design -> builder.motion(parts.motion(pack, design)));
  }

  private static void addVehicle(Conversion.Builder builder, VehicleDesign vehicle) {
    builder
        .masses(vehicle.ledger())
        .loadCases(vehicle.loadCases().toArray(LoadCase[]::new))
        .axleLimits(vehicle.limits())
        .chassis(vehicle.chassis())
        .requirement(vehicle.placement().check());
  }
}
