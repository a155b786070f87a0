package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.examples.job.JobInput;

/**
 * Puts the calculation sheet of a job together: the answer in ten lines, cautions, its sections,
 * then the appendices: inputs, catalogues, tables, working, checks passed.
 */
final class JobSheet {
  private JobSheet() {}

  static CalculationSheet of(JobInput job) {
    Design design = Design.of(job);
    CalculationSheet sheet =
        new CalculationSheet(job.title(), job.customer() + " – " + job.vehicle(), sections(design))
            .withAppendix(InputSection.of(job));
    if (CatalogueSection.of(job).isPresent()) {
      sheet = sheet.withAppendix(CatalogueSection.of(job).get());
    }
    sheet = sheet.withAppendix(CellTables.of(job.cells())).withWorkingBehind();
    if (design.chosen().isPresent()) {
      sheet =
          sheet.withAppendix(SheetSections.of(design.chosen().get().conversion()).passedChecks());
    }
    return sheet;
  }

  private static List<Section> sections(Design design) {
    List<Section> sections = new ArrayList<>();
    design.chosen().ifPresent(chosen -> sections.add(ExecutiveSection.of(chosen)));
    sections.add(CautionSection.of(design.job()));
    sections.add(ResultSection.of(design));
    design.chosen().ifPresent(chosen -> sections.add(PackSection.of(design, chosen)));
    design.chosen().ifPresent(chosen -> sections.add(WindowSection.of(design, chosen)));
    design.chosen().ifPresent(chosen -> sections.add(MassesSection.of(chosen)));
    design
        .chosen()
        .flatMap(Design.Chosen::mountings)
        .map(MountingSection::of)
        .ifPresent(sections::add);
    design.chosen().ifPresent(chosen -> sections.addAll(CircuitSections.of(chosen)));
    design.chosen().ifPresent(chosen -> sections.add(ChargingSection.of(chosen.conversion())));
    design.chosen().ifPresent(chosen -> sections.addAll(MotionSections.of(chosen)));
    design
        .chosen()
        .flatMap(Design.Chosen::controls)
        .ifPresent(controls -> sections.addAll(ControlsSections.of(controls)));
    design
        .chosen()
        .ifPresent(chosen -> sections.add(SheetSections.of(chosen.conversion()).lowVoltage()));
    design
        .chosen()
        .ifPresent(chosen -> sections.add(SheetSections.of(chosen.conversion()).checks()));
    sections.add(AlternativeSection.of(design));
    sections.add(RuledOutSection.of(design.found()));
    sections.add(OpenItemSection.of(design));
    return sections;
  }
}
