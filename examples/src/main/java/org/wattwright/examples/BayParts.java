package org.wattwright.examples;

import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.examples.job.BayInput;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.layout.Bay;
import org.wattwright.layout.BayAllocator;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Position;

/** Makes the library's bays and the allocator out of what a job states. */
final class BayParts {
  private static final int ALTERNATIVES = 4;

  private BayParts() {}

  static BayAllocator allocator(
      VehicleInput input, BatteryModule module, MassLedger withoutPack, Loading loading) {
    List<Bay> bays = input.bays().stream().map(bay -> bay(bay, module)).toList();
    BayAllocator allocator =
        BayAllocator.over(withoutPack, bays)
            .limits(loading.limits())
            .alternatives(ALTERNATIVES)
            .allowProvisional();
    for (LoadCase loadCase : loading.loadCases()) {
      allocator = allocator.loadCase(loadCase);
    }
    if (input.frontShare().isEmpty()) {
      return allocator;
    }
    VehicleInput.FrontShare share = input.frontShare().get();
    return allocator.frontShareTarget(share.wanted(), share.band(), LoadCase.KERB);
  }

  /**
   * What the vehicle carries and may carry.
   *
   * @param loadCases in which every limit must hold
   * @param limits plates and tyres
   */
  record Loading(List<LoadCase> loadCases, AxleLimits limits) {}

  private static Bay bay(BayInput input, BatteryModule module) {
    return input.origin().locate(() -> checkedBay(input, module));
  }

  private static Bay checkedBay(BayInput input, BatteryModule module) {
    Position first = VehicleParts.position(input.first());
    Bay bay = Bay.at(input.name(), first).next(VehicleParts.position(input.next()));
    int room = input.roomFor(module.name());
    bay = room > 0 ? bay.holds(module, room) : bay.keptFree();
    if (input.massLimit().isPresent()) {
      bay = bay.massAtMost(input.massLimit().get());
    }
    if (Kind.MASS.siValueOf(input.enclosureTare()) > 0) {
      bay = bay.enclosure(box(input, bay, room));
    }
    for (var link : input.links().entrySet()) {
      bay = bay.linkedTo(link.getKey(), link.getValue());
    }
    return bay;
  }

  /** The enclosure is as long as the bay: its centre is that of the full bay. */
  private static MassItem box(BayInput input, Bay bay, int room) {
    return MassItem.of(
            "enclosure, " + input.name(), input.enclosureTare(), bay.middleOf(Math.max(1, room)))
        .withBasis(input.basis());
  }
}
