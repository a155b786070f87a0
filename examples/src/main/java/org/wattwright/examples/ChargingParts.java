package org.wattwright.examples;

import java.util.List;
import java.util.Optional;
import org.wattwright.charging.Charger;
import org.wattwright.conversion.ChargePlan;
import org.wattwright.conversion.LowVoltage;
import org.wattwright.examples.job.ChargingPointInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.Requirement;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;

/**
 * The charge plan of a job, from empty to full as the customer drives with the cells as after a
 * round; and its low-voltage side.
 */
final class ChargingParts {
  private ChargingParts() {}

  /** Empty if the job names no place to charge at, or says too little about its charger. */
  static Optional<ChargePlan> plan(JobInput job, List<Device> devices) {
    Optional<Charger> charger =
        devices.stream().filter(Charger.class::isInstance).map(Charger.class::cast).findFirst();
    return job.chargingPoints().isEmpty() ? Optional.empty() : charger.map(c -> plan(job, c));
  }

  /** Empty if the job states no loads, or no converter whose efficiency is known. */
  static Optional<LowVoltage> lowVoltage(JobInput job) {
    return job.lowVoltage()
        .flatMap(
            input ->
                job.devices().stream()
                    .filter(device -> device.role() == DeviceRole.CONVERTER)
                    .filter(device -> device.efficiency().isPresent())
                    .findFirst()
                    .map(
                        device ->
                            new LowVoltage(
                                input.budget(),
                                Parts.converter(device, input.voltage()),
                                job.requirement().climate().hottest(),
                                input.targets())));
  }

  private static ChargePlan plan(JobInput job, Charger charger) {
    Requirement.UsableEnergy energy = job.requirement().energy();
    ChargePlan.Builder plan =
        ChargePlan.of(charger)
            .from(energy.empty())
            .to(energy.full())
            .temperature(energy.temperature());
    for (ChargingPointInput place : job.chargingPoints()) {
      place
          .allowed()
          .ifPresentOrElse(
              time -> plan.supply(place.name(), place.point(), time.value(), time.source()),
              () -> plan.supply(place.name(), place.point()));
    }
    return plan.build();
  }
}
