package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.battery.BatteryModule;
import org.wattwright.conversion.Chassis;
import org.wattwright.examples.job.PartMassInput;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Seating;

/**
 * The vehicle with the chosen pack in it.
 *
 * <p>Immutable.
 *
 * @param input what the job states
 * @param placement where the modules go
 * @param ledger what leaves and what goes in, the pack included
 * @param loadCases kerb, with driver, all seats taken, fully laden
 * @param limits plates and tyres
 * @param chassis brakes, springs, tyre pressures
 */
record VehicleDesign(
    VehicleInput input,
    PackPlacement placement,
    MassLedger ledger,
    List<LoadCase> loadCases,
    AxleLimits limits,
    Chassis chassis) {

  static VehicleDesign of(VehicleInput input, BatteryModule module, int count) {
    PackPlacement placement = PackPlacement.of(module, count, input.bays());
    List<MassItem> added = new ArrayList<>(VehicleParts.items(input, PartMassInput.Change.ADDED));
    added.addAll(placement.items());
    MassLedger ledger =
        input
            .origin()
            .locate(
                () ->
                    MassLedger.of(VehicleParts.weighed(input))
                        .removing(VehicleParts.items(input, PartMassInput.Change.REMOVED))
                        .adding(added));
    return new VehicleDesign(
        input,
        placement,
        ledger,
        loadCases(input, ledger),
        VehicleParts.limits(input),
        VehicleParts.chassis(input));
  }

  private static List<LoadCase> loadCases(VehicleInput input, MassLedger ledger) {
    Seating seating = VehicleParts.seating(input);
    LoadCase all = LoadCase.allSeats(seating);
    List<LoadCase> cases =
        new ArrayList<>(List.of(LoadCase.KERB, LoadCase.withDriver(seating), all));
    Optional<Quantity<Mass>> gross = input.plates().gross();
    Optional<Position> goods = VehicleParts.goods(input);
    if (gross.isPresent() && goods.isPresent()) {
      cases.add(ledger.ladenTo(gross.get(), all, goods.get()));
    }
    return cases;
  }
}
