package org.wattwright.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.examples.job.BayInput;
import org.wattwright.examples.job.MountingInput;
import org.wattwright.installation.Retention;

/** Every pattern of fixings that was tried for the battery boxes, under the mass in its bay. */
record MountingDesign(List<Tried> tried) {
  /** One pattern under the mass of its bay. */
  record Tried(MountingInput input, Retention retention) {}

  MountingDesign {
    tried = List.copyOf(tried);
  }

  /** Of the bays that hold modules; empty if the job says nothing about mountings. */
  static Optional<MountingDesign> of(List<MountingInput> mountings, VehicleDesign vehicle) {
    List<Tried> tried = tried(mountings, vehicle);
    return tried.isEmpty() ? Optional.empty() : Optional.of(new MountingDesign(tried));
  }

  /** The last pattern of each box, which is built. */
  List<Tried> built() {
    Map<String, Tried> built = new LinkedHashMap<>();
    tried.forEach(each -> built.put(each.input().bay(), each));
    return List.copyOf(built.values());
  }

  /** Of the patterns that are built. */
  List<Check> checks() {
    return built().stream().flatMap(each -> each.retention().checks().stream()).toList();
  }

  private static List<Tried> tried(List<MountingInput> mountings, VehicleDesign vehicle) {
    List<Tried> tried = new ArrayList<>();
    for (MountingInput input : mountings) {
      BayInput bay =
          vehicle.input().bays().stream()
              .filter(each -> each.name().equals(input.bay()))
              .findFirst()
              .orElseThrow(() -> input.origin().error("there is no bay " + input.bay()));
      if (vehicle.placement().countIn(bay) > 0) {
        tried.add(new Tried(input, retention(input, vehicle.placement().massIn(bay), bay)));
      }
    }
    return tried;
  }

  private static Retention retention(MountingInput input, Quantity<Mass> mass, BayInput bay) {
    Source source = Source.requirement("modules and enclosure of the bay " + bay.name());
    return Retention.of(
            "box " + input.bay() + ", " + input.pattern(), new Given<>(mass, bay.basis(), source))
        .on(input.face(), input.group())
        .centre(input.centre().u(), input.centre().v(), input.centre().height())
        .under(input.rules())
        .build();
  }
}
