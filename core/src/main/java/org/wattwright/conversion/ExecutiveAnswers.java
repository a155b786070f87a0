package org.wattwright.conversion;

import static org.wattwright.units.Measures.format;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;
import org.wattwright.check.OpenItem;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.vehicle.LoadState;
import org.wattwright.voltage.Device;

/** What a conversion can answer of the ten lines by itself. */
final class ExecutiveAnswers {
  private static final int MOST_NAMED = 3;

  private final Conversion conversion;
  private final List<Check> review;

  private ExecutiveAnswers(Conversion conversion) {
    this.conversion = conversion;
    this.review = conversion.review();
  }

  static Map<ExecutiveLine, String> of(Conversion conversion) {
    ExecutiveAnswers answers = new ExecutiveAnswers(conversion);
    Map<ExecutiveLine, String> all = new EnumMap<>(ExecutiveLine.class);
    all.put(ExecutiveLine.VERDICT, answers.verdict());
    all.put(ExecutiveLine.WHAT_GOES_IN, answers.parts());
    all.put(ExecutiveLine.ENERGY, answers.energy());
    all.put(ExecutiveLine.RANGE, unknown("the range"));
    all.put(ExecutiveLine.CHARGE_TIME, answers.chargeTime());
    all.put(ExecutiveLine.PERFORMANCE, unknown("the performance"));
    all.put(ExecutiveLine.WEIGHT, answers.weight());
    all.put(ExecutiveLine.LOAD_SPACE, "Not told: nothing is known of the load space.");
    all.put(ExecutiveLine.MISSING, answers.missing());
    all.put(ExecutiveLine.NEXT, answers.next());
    return all;
  }

  private String chargeTime() {
    return conversion
        .charging()
        .map(
            review ->
                review.charges().stream()
                    .map(charge -> "From " + charge + ".")
                    .collect(Collectors.joining(" ")))
        .orElseGet(() -> unknown("the time of a charge"));
  }

  private static String unknown(String what) {
    return "Not reckoned: nothing is said about " + what + ".";
  }

  private String verdict() {
    String counts = " (" + Checks.summary(review) + " of " + review.size() + " checks).";
    return switch (conversion.outcome()) {
      case FAIL -> "Not like this: at least one limit is broken" + counts;
      case NOT_CHECKED -> "Open: no limit is broken as far as known, but data are missing" + counts;
      case CAUTION ->
          "Feasible with care: no limit is broken; some are near, or rest on estimates" + counts;
      case PASS -> "Feasible: every limit is kept with room to spare" + counts;
    };
  }

  private String parts() {
    Pack pack = conversion.pack();
    String devices =
        conversion.devices().stream().map(Device::name).collect(Collectors.joining(", "));
    return pack.moduleCount()
        + " modules, "
        + format(pack.mass(), Kind.MASS)
        + ", in "
        + pack.strings().size()
        + (pack.strings().size() == 1 ? " string; " : " strings; ")
        + devices
        + conversion
            .circuits()
            .map(
                all ->
                    "; cables, fuses and contactors of "
                        + all.design().circuits().size()
                        + " circuits")
            .orElse("")
        + ".";
  }

  private String energy() {
    Pack pack = conversion.pack();
    return format(pack.nominalEnergy(Measures.celsius(25)), Kind.ENERGY)
        + " from full to empty at rest and 25 °C; "
        + format(conversion.windows().envelope().nominal(), Kind.VOLTAGE)
        + " nominal. "
        + conversion
            .windows()
            .usableStateOfCharge()
            .map(band -> "All devices work from " + band.emptiest() + " to " + band.fullest() + ".")
            .orElse("There is no state of charge at which all devices work.");
  }

  private String weight() {
    if (conversion.masses().isEmpty()) {
      return "Not reckoned: the vehicle was not weighed.";
    }
    LoadState first = conversion.masses().get().states().get(0);
    LoadState laden = conversion.masses().get().heaviest();
    String text =
        first.loadCase().name()
            + " "
            + format(first.total(), Kind.MASS)
            + " ("
            + signed(Figure.of(first.change().total(), Kind.MASS))
            + "): front "
            + axle(
                Figure.of(first.axles().front(), Kind.MASS),
                Figure.of(first.change().front(), Kind.MASS))
            + ", rear "
            + axle(
                Figure.of(first.axles().rear(), Kind.MASS),
                Figure.of(first.change().rear(), Kind.MASS));
    return text
        + (laden.equals(first)
            ? "."
            : "; "
                + laden.loadCase().name()
                + " "
                + format(laden.total(), Kind.MASS)
                + ", front share "
                + Figure.share(laden.frontShare())
                + " (before "
                + Figure.share(laden.before().frontShare())
                + ").");
  }

  private static String axle(Figure load, Figure change) {
    return load + " (" + signed(change) + ")";
  }

  private static String signed(Figure change) {
    String text = change.toString();
    return text.startsWith("-") ? text : "+" + text;
  }

  private String missing() {
    List<OpenItem> items = conversion.openItems();
    if (items.isEmpty()) {
      return "Nothing: no check waits for an answer.";
    }
    long missing = items.stream().filter(i -> i.reason() == OpenItem.Reason.MISSING).count();
    return missing
        + " inputs missing, "
        + (items.size() - missing)
        + " estimated: "
        + items.stream().map(OpenItem::input).limit(MOST_NAMED).collect(Collectors.joining("; "))
        + (items.size() > MOST_NAMED ? "; and " + (items.size() - MOST_NAMED) + " more" : "")
        + ".";
  }

  private String next() {
    List<String> open =
        review.stream()
            .filter(check -> check.outcome() == Outcome.FAIL)
            .map(Check::what)
            .distinct()
            .toList();
    if (!open.isEmpty()) {
      return "Change what breaks a limit: "
          + open.stream().limit(MOST_NAMED).collect(Collectors.joining("; "))
          + (open.size() > MOST_NAMED ? "; and " + (open.size() - MOST_NAMED) + " more" : "")
          + ".";
    }
    boolean isOpen = !conversion.openItems().isEmpty();
    return (isOpen
            ? "Measure or ask for what is missing or estimated, who answers stands under Open items; then show"
            : "Show")
        + " the sheet to the approving engineer before parts are ordered or metal is cut.";
  }
}
