package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.battery.BatteryModule;
import org.wattwright.conversion.Chassis;
import org.wattwright.examples.job.Origin;
import org.wattwright.examples.job.PartMassInput;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.layout.Allocation;
import org.wattwright.layout.AllocationResult;
import org.wattwright.layout.Candidate;
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
 * @param allocation what the allocator found
 * @param placement where the modules go
 * @param ledger what leaves and what goes in, the pack included
 * @param loadCases kerb, with driver, all seats taken, fully laden
 * @param limits plates and tyres
 * @param chassis brakes, springs, tyre pressures
 */
record VehicleDesign(
    VehicleInput input,
    AllocationResult allocation,
    PackPlacement placement,
    MassLedger ledger,
    List<LoadCase> loadCases,
    AxleLimits limits,
    Chassis chassis) {

  /** Modules and enclosures as they count in the ledger. */
  List<MassItem> packItems() {
    return allocation.best().map(Allocation::items).orElseGet(placement::items);
  }

  static VehicleDesign of(VehicleInput input, Candidate candidate) {
    BatteryModule module = candidate.module();
    MassLedger withoutPack = withoutPack(input);
    PackPlacement inOrder = PackPlacement.inOrder(module, candidate.moduleCount(), input.bays());
    // The goods that fill up to the gross mass must leave room for the enclosures of any split.
    List<LoadCase> loadCases =
        loadCases(input, withoutPack.adding(inOrder.itemsWithAllEnclosures(input.bays())));
    AxleLimits limits = VehicleParts.limits(input);
    AllocationResult allocation =
        BayParts.allocator(input, module, withoutPack, new BayParts.Loading(loadCases, limits))
            .pack(module, candidate.series(), candidate.parallel())
            .run();
    PackPlacement placement =
        allocation.best().map(best -> PackPlacement.of(best, input.bays())).orElse(inOrder);
    List<MassItem> items = allocation.best().map(Allocation::items).orElseGet(inOrder::items);
    MassLedger ledger = withoutPack.adding(items);
    return new VehicleDesign(
        input,
        allocation,
        placement,
        ledger,
        loadCases(input, ledger),
        limits,
        VehicleParts.chassis(input));
  }

  /** More removed than weighed is a mistake in the list of parts: its last removed one is named. */
  static MassLedger withoutPack(VehicleInput input) {
    MassLedger weighed = MassLedger.of(VehicleParts.weighed(input));
    List<PartMassInput> removed = input.parts(PartMassInput.Change.REMOVED);
    Origin origin = removed.isEmpty() ? input.origin() : removed.get(removed.size() - 1).origin();
    return origin
        .locate(() -> weighed.removing(VehicleParts.items(input, PartMassInput.Change.REMOVED)))
        .adding(VehicleParts.items(input, PartMassInput.Change.ADDED));
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
