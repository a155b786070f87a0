package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wattwright.battery.SeriesString;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.examples.job.JobFolder;
import org.wattwright.units.Kind;

class LinkCablesTest {
  private static final String PER_LENGTH = "link cable resistance per length,0.315,Ω/km,";
  private static final String JOINT = "link joint resistance,0.02,mΩ,";

  @TempDir Path folder;

  private void change(String file, String find, String replacement) throws IOException {
    if (!Files.exists(folder.resolve(file))) {
      DemonstrationFolder.copyTo(folder);
    }
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(find);
    Files.writeString(folder.resolve(file), text.replace(find, replacement));
  }

  private static LinkCables links(Path path) {
    return Design.of(JobFolder.read(path)).chosen().orElseThrow().links();
  }

  private static List<Double> milliohms(LinkCables links) {
    return links.pack().strings().stream()
        .map(SeriesString::linkResistance)
        .map(r -> 1e3 * Kind.RESISTANCE.siValueOf(r))
        .toList();
  }

  /**
   * Two strings lie in one bay each; the third leads from the engine bay behind the axle: 3.1 m at
   * 0.315 mΩ/m and two joints of 0.02 mΩ, 1.0165 mΩ.
   */
  @Test
  void aStringHasTheCablesBetweenItsOwnBays() {
    LinkCables links = links(DemonstrationFolder.PATH);
    List<Double> milliohms = milliohms(links);
    assertThat(milliohms.subList(0, 2)).containsExactly(0.0, 0.0);
    assertThat(milliohms.get(2)).isCloseTo(3.1 * 0.315 + 2 * 0.02, within(1e-12));
  }

  @Test
  void theWorkingSaysWhichBaysAndHowMuch() {
    assertThat(links(DemonstrationFolder.PATH).worksheet().orElseThrow().toText())
        .contains("engine bay – behind the axle", "0.315 Ω/km · 3.1 m + 2 · 20 µΩ", "1.017 mΩ");
  }

  @Test
  void theConversionHasThePackWithItsLinks() {
    Design.Chosen chosen =
        Design.of(JobFolder.read(DemonstrationFolder.PATH)).chosen().orElseThrow();
    assertThat(chosen.conversion().pack()).isEqualTo(chosen.links().pack());
  }

  @Test
  void withoutAJointTheCableAloneCounts() throws IOException {
    change("job.csv", JOINT, "# ");
    assertThat(milliohms(links(folder)).get(2)).isCloseTo(3.1 * 0.315, within(1e-12));
  }

  @Test
  void aWholeResistanceIsThatOfEveryString() throws IOException {
    change("job.csv", PER_LENGTH, "link cable resistance,0.9,mΩ,");
    change("job.csv", JOINT, "# ");
    LinkCables links = links(folder);
    assertThat(milliohms(links)).containsOnly(0.9);
    assertThat(links.worksheet()).isEmpty();
  }

  /**
   * If no split meets every limit, each string passes through all bays in use: two, 1.4 m apart.
   */
  @Test
  void withNoSplitTheBaysFollowOneAnotherAsInTheFile() throws IOException {
    change("vehicle.csv", "front axle plate,760", "front axle plate,100");
    assertThat(milliohms(links(folder)))
        .allSatisfy(r -> assertThat(r).isCloseTo(1.4 * 0.315 + 2 * 0.02, within(1e-12)));
  }

  @Test
  void bothWaysAtOnceAreAnError() throws IOException {
    change("job.csv", PER_LENGTH, "link cable resistance,0.9,mΩ,estimated,x\n" + PER_LENGTH);
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageContainingAll(
            "job.csv line", "link cable resistance", "beside link cable resistance per length");
  }

  @Test
  void aJointWithoutACableIsAnError() throws IOException {
    change("job.csv", PER_LENGTH, "# ");
    assertThatThrownBy(() -> JobFolder.read(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageContainingAll("job.csv line", "link joint resistance", "must stand beside");
  }

  @Test
  void lengthsBetweenTheBaysAreNeeded() throws IOException {
    DemonstrationFolder.copyTo(folder);
    for (String file : List.of("vehicle", "masses", "bays", "bay-room", "bay-links", "seats")) {
      Files.delete(folder.resolve(file + ".csv"));
    }
    assertThatThrownBy(() -> links(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining("needs the lengths between the bays");
  }
}
