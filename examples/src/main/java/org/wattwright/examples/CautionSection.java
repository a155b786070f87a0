package org.wattwright.examples;

import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.examples.job.JobInput;

/** The cautions that open every calculation sheet, and the job's own notes. */
final class CautionSection {
  private CautionSection() {}

  static Section of(JobInput job) {
    Section section = SheetSections.cautions();
    return job.notes().isEmpty() ? section : section.with(new Paragraph(job.notes()));
  }
}
