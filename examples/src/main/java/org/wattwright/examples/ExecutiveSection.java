package org.wattwright.examples;

import static org.wattwright.units.Measures.format;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;
import org.wattwright.conversion.ExecutiveLine;
import org.wattwright.conversion.ExecutivePage;
import org.wattwright.conversion.Motion;
import org.wattwright.conversion.RangeCase;
import org.wattwright.conversion.Section;
import org.wattwright.drive.DriveCycle;
import org.wattwright.drive.Performance;
import org.wattwright.examples.job.BayInput;
import org.wattwright.layout.Candidate;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;

/** The first page: the answer to the customer in ten lines. */
final class ExecutiveSection {
  private ExecutiveSection() {}

  static Section of(Design.Chosen chosen) {
    ExecutivePage page =
        ExecutivePage.of(chosen.conversion()).answer(ExecutiveLine.WHAT_GOES_IN, parts(chosen));
    page = page.answer(ExecutiveLine.ENERGY, energy(chosen, page));
    if (chosen.vehicle().isPresent()) {
      page = page.answer(ExecutiveLine.LOAD_SPACE, loadSpace(chosen.vehicle().get()));
    }
    Optional<Motion> motion = chosen.conversion().motion();
    if (motion.isPresent()) {
      page =
          page.answer(ExecutiveLine.RANGE, range(motion.get()))
              .answer(ExecutiveLine.PERFORMANCE, performance(motion.get()));
    }
    return page.toSection();
  }

  private static String range(Motion motion) {
    DriveCycle cycle = motion.cycles().get(0);
    String ranges =
        Stream.of(RangeCase.values())
            .flatMap(
                state ->
                    motion
                        .range(state, cycle)
                        .map(range -> state + " " + format(range.distance(), KILOMETRE, 0))
                        .stream())
            .collect(Collectors.joining(", "));
    return ranges
        + " on "
        + cycle.name()
        + ", down to a reserve of "
        + motion.reserve()
        + ". An estimate, no promise.";
  }

  private static String performance(Motion motion) {
    Performance full = motion.performance();
    String laden =
        motion
            .laden()
            .map(
                van ->
                    "; laden starts on "
                        + Figure.share(
                            Math.rint(Performance.of(van).startingGrade().grade() * 1000) / 1000))
            .orElse("");
    return "Top speed "
        + full.topSpeed()
        + "; 0–50 km/h in "
        + full.time(kilometresPerHour(0), kilometresPerHour(50))
            .time()
            .map(t -> format(t, SECOND, 1))
            .orElse("no time: not reached")
        + laden
        + ".";
  }

  private static String parts(Design.Chosen chosen) {
    Candidate pack = chosen.candidate();
    String devices =
        chosen.conversion().devices().stream().map(Device::name).collect(Collectors.joining(", "));
    return pack.moduleCount()
        + " × "
        + pack.module().name()
        + " ("
        + pack.series()
        + " in series, "
        + pack.parallel()
        + (pack.parallel() == 1 ? " string), " : " strings), ")
        + format(pack.mass(), Kind.MASS)
        + "; "
        + devices
        + chosen
            .conversion()
            .circuits()
            .map(all -> "; parts of " + all.design().circuits().size() + " circuits")
            .orElse("")
        + ".";
  }

  /** What the customer asked for first, then what the page knows itself. */
  private static String energy(Design.Chosen chosen, ExecutivePage page) {
    List<Check> asked = Checks.withCode(chosen.conversion().review(), "pack.energy");
    String usable =
        asked.stream()
            .map(check -> check.what() + ": " + check.comparison() + ". ")
            .collect(Collectors.joining());
    String first =
        usable.isEmpty() ? "" : usable.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
    return first + usable.substring(first.length()) + page.answers().get(ExecutiveLine.ENERGY);
  }

  private static String loadSpace(VehicleDesign vehicle) {
    String used =
        vehicle.placement().bays().stream()
            .map(filled -> filled.count() + " in " + filled.bay().name() + where(filled.bay()))
            .collect(Collectors.joining("; "));
    String free =
        vehicle.input().bays().stream()
            .filter(BayInput::keptFree)
            .map(BayInput::name)
            .collect(Collectors.joining(", "));
    return "Modules lie "
        + used
        + ". "
        + (free.isEmpty()
            ? "All else stays as it is; no bay was asked to be kept free."
            : "Kept free as asked: " + free + ".");
  }

  private static String where(BayInput bay) {
    return bay.source().isEmpty() ? "" : " (" + bay.source() + ")";
  }
}
