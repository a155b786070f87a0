package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Section;
import org.wattwright.examples.job.JobFolder;
import org.wattwright.examples.job.JobInput;

/** The boxes of the invented van: one fails on its first pattern and passes on the second. */
class MountingSectionTest {
  private static Section section() {
    JobInput job = JobFolder.read(Path.of("data"));
    Design design = Design.of(job);
    return MountingSection.of(design.chosen().orElseThrow().mountings().orElseThrow());
  }

  @Test
  void theFirstPatternFailsAndTheSecondPasses() {
    DataTable table =
        section().blocks().stream()
            .filter(DataTable.class::isInstance)
            .map(DataTable.class::cast)
            .findFirst()
            .orElseThrow();
    List<List<String>> engineBay =
        table.rows().stream().filter(row -> row.get(0).equals("engine bay")).toList();
    assertThat(engineBay).hasSize(2);
    assertThat(engineBay.get(0).get(2)).isEqualTo("FAIL");
    assertThat(engineBay.get(1).get(2)).isEqualTo("PASS");
  }

  @Test
  void everyBoxThatIsBuiltHasItsChecksAndWorking() {
    assertThat(section().title()).isEqualTo("Mountings");
    assertThat(section().parts()).isNotEmpty();
    assertThat(section().parts()).allSatisfy(part -> assertThat(part.blocks()).hasSize(3));
  }

  /** What was tried and not built breaks no review. */
  @Test
  void theReviewHoldsTheChecksOfWhatIsBuilt() {
    Design.Chosen chosen = Design.of(JobFolder.read(Path.of("data"))).chosen().orElseThrow();
    MountingDesign mountings = chosen.mountings().orElseThrow();
    assertThat(chosen.conversion().review()).containsAll(mountings.checks());
    assertThat(mountings.checks()).noneMatch(check -> check.outcome() == Outcome.FAIL);
    assertThat(mountings.tried()).hasSizeGreaterThan(mountings.built().size());
  }
}
