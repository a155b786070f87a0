package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.examples.DemonstrationFolder;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLoadRiseRule;
import org.wattwright.vehicle.AxleShareRule;
import org.wattwright.vehicle.AxleShareShiftRule;
import org.wattwright.vehicle.KerbMassRule;
import org.wattwright.vehicle.RuleSet;

class RuleFileTest {
  private static final String HEAD = "rule set,limit,load case,axle,least [%],most [%],source\n";

  @TempDir Path folder;

  private List<RuleSet> read(String rows) throws IOException {
    Files.writeString(folder.resolve("rules.csv"), HEAD + rows);
    return RuleFile.read(folder);
  }

  @Test
  void everyLimitOfTheDemonstrationIsRead() {
    List<RuleSet> sets = RuleFile.read(DemonstrationFolder.PATH);
    assertThat(sets.stream().flatMap(set -> set.rules().stream()))
        .containsExactly(
            new KerbMassRule(0.15, 0.20),
            new AxleShareRule("kerb", Axle.FRONT, 0.40, 0.65),
            new AxleShareRule("fully laden", Axle.FRONT, 0.30, 0.60),
            new AxleShareShiftRule(0.10),
            new AxleLoadRiseRule(Axle.REAR, 0.35));
    assertThat(sets.get(0).source().toString()).contains("clause 1");
  }

  @Test
  void rulesOfOneClauseAreOneSet() throws IOException {
    List<RuleSet> sets =
        read(
            "Isle,kerb mass,,,20,8,1\n"
                + "Isle,axle load rise,,rear,,5,2\n"
                + "Isle,axle share shift,,,,9,1\n");
    assertThat(sets).extracting(set -> set.rules().size()).containsExactly(2, 1);
  }

  @Test
  void withoutTheFileThereIsNoRule() {
    assertThat(RuleFile.read(folder)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Isle,track width,,,,8,1          | line 2, column \"limit\"      | track width",
        "Isle,kerb mass,,,20,,1           | line 2, column \"most [%]\"   | ",
        "Isle,kerb mass,,,20,a lot,1      | line 2, column \"most [%]\"   | a lot",
        "Isle,kerb mass,,,20,108,1        | line 2, column \"most [%]\"   | 108",
        "Isle,kerb mass,,,-1,8,1          | line 2, column \"least [%]\"  | -1",
        "Isle,axle share,kerb,middle,2,8,1| line 2, column \"axle\"       | middle",
        "Isle,axle share,kerb,front,8,2,1 | line 2                        | AxleShareRule",
        "Isle,kerb mass,kerb,,20,8,1      | line 2                        | load case",
        "Isle,axle share shift,,rear,,8,1 | line 2                        | axle",
        "Isle,axle load rise,,rear,5,8,1  | line 2                        | least",
        "Isle,axle share,,front,2,8,1     | line 2                        | load case",
        "Isle,axle share,kerb,,2,8,1      | line 2                        | axle",
        "Isle,axle load rise,,,,8,1       | line 2                        | axle",
        "Isle,kerb mass,,,,8,1            | line 2                        | least",
        ",kerb mass,,,20,8,1              | line 2, column \"rule set\"   | ",
        "Isle,kerb mass,,,20,8,           | line 2, column \"source\"     | "
      })
  void aBadRowNamesItsLineAndWhatIsWrong(String row, String where, String what) {
    assertThatThrownBy(() -> read(row.strip() + "\n"))
        .isInstanceOf(JobFileException.class)
        .hasMessageContainingAll("rules.csv", where, what == null ? "" : what);
  }
}
