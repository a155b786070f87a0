package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.conversion.CheckList;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;
import org.wattwright.examples.job.BayInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.MountingInput;
import org.wattwright.installation.Retention;
import org.wattwright.units.Kind;

/** How the battery boxes are bolted in: every pattern tried, and the checks of the ones built. */
final class MountingSection {
  private MountingSection() {}

  /** One pattern under the mass of its bay. */
  private record Tried(MountingInput input, Retention retention) {}

  static Optional<Section> of(JobInput job, Design.Chosen chosen) {
    List<Tried> tried =
        chosen.vehicle().map(vehicle -> tried(job.mountings(), vehicle)).orElse(List.of());
    return tried.isEmpty() ? Optional.empty() : Optional.of(section(tried));
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

  private static Section section(List<Tried> tried) {
    DataTable table =
        DataTable.of(
            "Patterns of fixings, in the order tried; the last one of a box is built",
            "Box",
            "Pattern",
            "Verdict on strength",
            ">Mass",
            ">Would carry",
            "Gives first",
            "Rule",
            "Source");
    Map<String, Tried> built = new LinkedHashMap<>();
    for (Tried each : tried) {
      table = row(table, each);
      built.put(each.input().bay(), each);
    }
    Section section =
        Section.of("Mountings")
            .with(
                new Paragraph(
                    "Forces of the fixings by the elastic method for a rigid base; the metal around"
                        + " the holes, the boxes and their lids need their own proof. Local codes"
                        + " and the approving engineer decide which accelerations apply."),
                table);
    for (Tried each : built.values()) {
      section =
          section.withParts(
              Section.of("Mounting of the box " + each.input().bay())
                  .with(
                      new CheckList(Checks.bySeverity(each.retention().checks())),
                      new Working(each.retention().worksheet())));
    }
    return section;
  }

  private static DataTable row(DataTable table, Tried tried) {
    Retention retention = tried.retention();
    return table.row(
        tried.input().bay(),
        tried.input().pattern(),
        verdict(retention.checks()).toString(),
        format(retention.mass().value(), Kind.MASS),
        retention.carriedMass().map(mass -> format(mass, Kind.MASS)).orElse("nothing"),
        retention.governing().map(Object::toString).orElse("turns freely"),
        tried.input().rules().toString(),
        tried.input().source());
  }

  /** Of the strength alone: what is not known of the clamping stays in the list of checks. */
  private static Outcome verdict(List<Check> checks) {
    return Outcome.worstOf(
        checks.stream().filter(check -> !check.code().equals("installation.slip")).toList());
  }
}
