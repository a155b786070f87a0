package org.wattwright.examples;

import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.OHM_PER_KILOMETRE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.examples.job.BayInput;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.Requirement;
import org.wattwright.examples.job.Statement;
import org.wattwright.layout.Allocation;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/**
 * The chosen pack with the cables that lead its strings from bay to bay: the search knows no bays.
 *
 * <p>Immutable.
 *
 * @param pack with its link cables
 * @param worksheet how their resistance comes about; empty if it was stated as a whole, or not at
 *     all
 */
record LinkCables(Pack pack, Optional<Worksheet> worksheet) {
  private static final int JOINTS_PER_CABLE = 2;

  /** One string, and the cables between its bays. */
  private record Route(SeriesString string, double lengthM, int cables) {
    String bays() {
      return string.groups().stream()
          .map(SeriesString.Group::bay)
          .distinct()
          .collect(Collectors.joining(" – "));
    }
  }

  static LinkCables of(Pack bare, JobInput job, Optional<VehicleDesign> vehicle) {
    Requirement.Links links = job.requirement().links();
    if (links.perLength().isEmpty()) {
      return new LinkCables(links.whole().map(r -> each(bare, r)).orElse(bare), Optional.empty());
    }
    VehicleDesign design = vehicle.orElseThrow(LinkCables::noLengths);
    List<Route> routes =
        design
            .allocation()
            .best()
            .map(LinkCables::allocated)
            .orElseGet(() -> inOrder(bare, design.placement()));
    return measured(routes, job);
  }

  /** Of one ohm for each metre: the resistance of the links of a string is their length. */
  private static List<Route> allocated(Allocation allocation) {
    if (allocation.enclosureCount() > 1 && allocation.linkLength().isEmpty()) {
      throw noLengths();
    }
    return allocation.pack(WorkshopUnits.OHM_PER_METRE.of(1)).strings().stream()
        .map(
            s -> new Route(s, Kind.RESISTANCE.siValueOf(s.linkResistance()), s.groups().size() - 1))
        .toList();
  }

  /** With no split that meets every limit, each string passes through all bays of the file. */
  private static List<Route> inOrder(Pack bare, PackPlacement placement) {
    double lengthM = 0;
    for (int i = 1; i < placement.bays().size(); i++) {
      BayInput from = placement.bays().get(i - 1).bay();
      String to = placement.bays().get(i).bay().name();
      lengthM +=
          Kind.LENGTH.siValueOf(
              Optional.ofNullable(from.links().get(to)).orElseThrow(LinkCables::noLengths));
    }
    List<Route> routes = new ArrayList<>();
    for (SeriesString string : bare.strings()) {
      routes.add(new Route(string, lengthM, Math.max(0, placement.bays().size() - 1)));
    }
    return routes;
  }

  private static LinkCables measured(List<Route> routes, JobInput job) {
    Worksheet.Recording recording = Worksheet.record("Link cables");
    Set<List<?>> shown = new HashSet<>();
    List<SeriesString> strings = new ArrayList<>();
    for (Route route : routes) {
      // Equal strings have equal cables: one working is enough.
      boolean isNew = shown.add(List.of(route.string().groups(), route.lengthM()));
      double ohm = resistanceOhm(route, job, isNew ? recording : Recorder.OFF);
      strings.add(withLinks(route.string(), WorkshopUnits.OHM.of(ohm)));
    }
    return new LinkCables(Pack.of(strings), Optional.of(recording.toWorksheet()));
  }

  private static double resistanceOhm(Route route, JobInput job, Recorder recorder) {
    Requirement.Links links = job.requirement().links();
    double perM = Kind.RESISTANCE_PER_LENGTH.siValueOf(links.perLength().orElseThrow());
    double jointOhm = links.joint().map(Kind.RESISTANCE::siValueOf).orElse(0.0);
    int joints = JOINTS_PER_CABLE * route.cables();
    double ohm = perM * route.lengthM() + joints * jointOhm;
    if (recorder.isOn()) {
      recorder
          .step("l", "link cables of a string, one way: " + route.bays())
          .source(Source.requirement("lengths between the bays"))
          .gives(route.lengthM(), METRE);
    }
    if (recorder.isOn() && route.cables() > 0) {
      recorder
          .step("R_links", "resistance of these link cables, two joints a cable")
          .formula("R′·l + n_j·R_j")
          .with("R′", perM, OHM_PER_KILOMETRE)
          .with("l", route.lengthM(), METRE)
          .with("n_j", Figure.count(joints))
          .with("R_j", jointOhm, MILLIOHM)
          .basis(basis(job))
          .source(Source.PHYSICS)
          .gives(ohm, MILLIOHM);
    }
    return ohm;
  }

  private static Basis basis(JobInput job) {
    Basis weakest = Basis.MEASURED;
    for (Statement statement : job.statements()) {
      if (Requirement.Links.KEYS.contains(statement.what())) {
        weakest = weakest.and(statement.basis());
      }
    }
    return weakest;
  }

  private static Pack each(Pack pack, Quantity<ElectricResistance> links) {
    return Pack.of(pack.strings().stream().map(string -> withLinks(string, links)).toList());
  }

  private static SeriesString withLinks(
      SeriesString string, Quantity<ElectricResistance> resistance) {
    SeriesString.Builder builder = SeriesString.of(string.name());
    string.groups().forEach(g -> builder.group(g.bay(), g.module(), g.count()));
    return builder.link(resistance).build();
  }

  private static JobFileException noLengths() {
    return JobFileException.of(
        "job.csv: "
            + Requirement.Links.PER_LENGTH
            + " needs the lengths between the bays that are used, in bay-links.csv");
  }
}
