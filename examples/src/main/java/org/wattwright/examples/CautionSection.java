package org.wattwright.examples;

import java.util.List;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.sheet.Cautions;
import org.wattwright.examples.sheet.Paragraph;
import org.wattwright.examples.sheet.Section;

/** The cautions that open every calculation sheet. */
final class CautionSection {
  private static final List<String> CAUTIONS =
      List.of(
          "High voltage kills. A pack above 60 V DC (voltage class B of ISO 6469-3) is dangerous to touch, "
              + "cannot be switched off inside, and keeps its energy when the vehicle is wrecked. Only people "
              + "who are trained and authorised for it work on one.",
          "A wrong mass, brake, cable or fuse figure hurts people too. Check the inputs against the parts in "
              + "front of you: a result is no better than the basis printed beside it.",
          "This sheet supports local codes, approval rules and the judgement of a licensed engineer. It "
              + "replaces none of them, and nothing is built or driven on its strength alone.",
          "NOT CHECKED means that an input is missing and nothing is claimed. CAUTION means close to a limit, "
              + "or resting on an estimate.");

  private CautionSection() {}

  static Section of(JobInput job) {
    Section section = Section.of("Cautions").with(new Cautions(CAUTIONS));
    return job.notes().isEmpty() ? section : section.with(new Paragraph(job.notes()));
  }
}
