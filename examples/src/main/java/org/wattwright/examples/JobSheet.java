package org.wattwright.examples;

import java.util.List;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.sheet.CalculationSheet;

/** Puts the calculation sheet of a job together: cautions first, then its sections. */
final class JobSheet {
  private JobSheet() {}

  static CalculationSheet of(JobInput job) {
    return new CalculationSheet(
        job.title(),
        job.customer() + " – " + job.vehicle(),
        List.of(CautionSection.of(job), InputSection.of(job), EstimateSection.of(job)));
  }
}
