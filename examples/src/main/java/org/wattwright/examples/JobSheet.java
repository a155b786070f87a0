package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.examples.job.JobInput;

/** Puts the calculation sheet of a job together: cautions first, then its sections. */
final class JobSheet {
  private JobSheet() {}

  static CalculationSheet of(JobInput job) {
    return new CalculationSheet(
        job.title(), job.customer() + " – " + job.vehicle(), sections(Design.of(job)));
  }

  private static List<Section> sections(Design design) {
    List<Section> sections = new ArrayList<>();
    sections.add(CautionSection.of(design.job()));
    sections.add(ResultSection.of(design));
    sections.add(InputSection.of(design.job()));
    design.chosen().ifPresent(chosen -> sections.add(PackSection.of(design, chosen)));
    design.chosen().ifPresent(chosen -> sections.add(WindowSection.of(design, chosen)));
    design.chosen().ifPresent(chosen -> sections.add(MassesSection.of(chosen)));
    design
        .chosen()
        .flatMap(chosen -> MountingSection.of(design.job(), chosen))
        .ifPresent(sections::add);
    design.chosen().ifPresent(chosen -> sections.addAll(CircuitSections.of(chosen)));
    design
        .chosen()
        .ifPresent(chosen -> sections.add(SheetSections.of(chosen.conversion()).checks()));
    sections.add(AlternativeSection.of(design));
    sections.add(RuledOutSection.of(design.found()));
    sections.add(OpenItemSection.of(design));
    sections.add(CellTables.of(design.job().cells()));
    return sections;
  }
}
