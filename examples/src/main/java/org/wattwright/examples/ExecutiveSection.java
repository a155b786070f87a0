package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.List;
import java.util.stream.Collectors;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.conversion.ExecutiveLine;
import org.wattwright.conversion.ExecutivePage;
import org.wattwright.conversion.Section;
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
    return page.toSection();
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
