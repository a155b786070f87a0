package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.conversion.Block;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;
import org.wattwright.examples.job.ControlsInput;
import org.wattwright.installation.DialScale;
import org.wattwright.installation.InterlockSignal;
import org.wattwright.installation.Interlocks;
import org.wattwright.installation.MeasuringUnit;
import org.wattwright.installation.Setting;
import org.wattwright.installation.TruthTable;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** The sections about brake vacuum, settings, and controls and gauges. */
final class ControlsSections {
  private static final int DIAL_STEPS = 4;

  private ControlsSections() {}

  static List<Section> of(ControlsDesign design) {
    return List.of(vacuum(design), settings(design), controls(design));
  }

  private static Block[] checks(ControlsDesign design, String... beginnings) {
    List<Check> chosen = new ArrayList<>();
    for (Check check : design.checks()) {
      for (String beginning : beginnings) {
        if (check.code().startsWith(beginning)) {
          chosen.add(check);
        }
      }
    }
    return SectionChecks.of(chosen);
  }

  private static Section vacuum(ControlsDesign design) {
    ControlsInput.Brakes brakes = design.input().brakes();
    String load =
        brakes
            .vacuum()
            .load(brakes.betweenStops())
            .map(l -> " The pump as a load: " + l + ".")
            .orElse("");
    return Section.of("Brake vacuum")
        .with(
            new Paragraph(
                "At the highest road, where the air is "
                    + format(brakes.vacuum().ambient(), Kind.PRESSURE)
                    + ": "
                    + brakes.reserve()
                    + " are asked for with the pump dead."
                    + load))
        .with(checks(design, "installation.vacuum", "installation.brake", "installation.stop-lamp"))
        .with(new Working(brakes.vacuum().worksheet(brakes.reserve())));
  }

  private static Section settings(ControlsDesign design) {
    DataTable sheet =
        DataTable.of(
            "What to set on every device", "Device", "Setting", ">Value", ">Tolerance", "Why");
    for (Setting setting : design.ladder().toSheet().settings()) {
      sheet =
          sheet.row(
              setting.device(),
              setting.name(),
              setting.value().toString(),
              setting.tolerance().map(t -> "± " + t).orElse(""),
              setting.why());
    }
    DataTable units =
        DataTable.of(
            "Measuring units", "String", "Unit", "Modules", ">Cells", ">Sense wires", ">Sensors");
    for (int i = 0; i < design.plans().size(); i++) {
      for (MeasuringUnit unit : design.plans().get(i).units()) {
        units =
            units.row(
                Integer.toString(i + 1),
                unit.name() + ", " + unit.bay(),
                String.join(", ", unit.slices().stream().map(s -> s.module().name()).toList()),
                Integer.toString(unit.cells()),
                Integer.toString(unit.taps()),
                Integer.toString(unit.temperatureSensors()));
      }
    }
    return Section.of("Settings")
        .with(sheet)
        .with(
            checks(
                design,
                "installation.high",
                "installation.charge-end",
                "installation.cut-back",
                "installation.low",
                "installation.cold",
                "installation.hot",
                "installation.balancing"))
        .with(new Working(design.ladder().worksheet()))
        .withParts(
            Section.of("Cell monitoring")
                .with(units)
                .with(
                    checks(
                        design,
                        "protection.sense",
                        "installation.temperature",
                        "installation.module")));
  }

  private static Section controls(ControlsDesign design) {
    ControlsInput input = design.input();
    return Section.of("Controls and gauges")
        .with(
            new Paragraph(
                "Pedal: " + input.throttle().signal() + "; " + input.throttle().map() + "."))
        .with(checks(design, "installation.throttle", "installation.shunt", "installation.ammeter"))
        .withParts(
            Section.of("Interlocks")
                .with(
                    table(Interlocks.start()),
                    table(Interlocks.direction()),
                    table(Interlocks.faults()))
                .with(
                    checks(
                        design,
                        "installation.interlock-c",
                        "installation.interlock-u",
                        "installation.interlock-p",
                        "installation.interlock-a",
                        "installation.interlock-f",
                        "installation.interlock-r")),
            Section.of("Dials").with(dials(input.gauges())),
            Section.of("Signed items").with(checks(design, "installation.attested")));
  }

  private static DataTable table(TruthTable truth) {
    List<String> headings = new ArrayList<>();
    truth.signals().forEach(signal -> headings.add(signal.toString()));
    headings.add("reaction");
    DataTable table = DataTable.of("Truth table: " + truth.name(), headings.toArray(String[]::new));
    for (TruthTable.Line line : truth.lines()) {
      List<String> cells = new ArrayList<>();
      for (InterlockSignal signal : truth.signals()) {
        Object state = line.when().conditions().get(signal);
        cells.add(state == null ? "any" : state.toString());
      }
      cells.add(line.reaction().toString());
      table = table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  private static DataTable dials(ControlsInput.Gauges gauges) {
    DataTable table =
        DataTable.of(
            "Fuel dial as charge, temperature dial as motor",
            ">State of charge",
            ">Fuel dial shows",
            ">Sender",
            ">Motor",
            ">Temperature dial shows");
    double coldK = Kind.TEMPERATURE.siValueOf(gauges.motor().cold());
    double hotK = Kind.TEMPERATURE.siValueOf(gauges.motor().hot());
    for (int i = 0; i <= DIAL_STEPS; i++) {
      StateOfCharge charge = StateOfCharge.of((double) i / DIAL_STEPS);
      double level = DialScale.level(charge, gauges.charge());
      var motor = Kind.TEMPERATURE.ofSi(coldK + (hotK - coldK) * i / DIAL_STEPS);
      table =
          table.row(
              charge.toString(),
              share(level),
              format(gauges.dial().resistanceFor(level), Kind.RESISTANCE),
              format(motor, Kind.TEMPERATURE),
              share(DialScale.level(motor, gauges.motor())));
    }
    return table;
  }

  private static String share(double level) {
    return Figure.share(level).toString();
  }
}
