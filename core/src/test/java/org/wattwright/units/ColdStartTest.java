package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Plain use does not pay for loading the reference implementation. */
class ColdStartTest {
  /** What a short program does. */
  static final class PlainUse {
    private PlainUse() {}

    /** Makes, prints, parses, converts, compares and serialises; with an argument, also bridges. */
    public static void main(String[] arguments) {
      Quantity<ElectricPotential> cell = Measures.volts(3.2);
      Quantity<ElectricPotential> parsed = Kind.VOLTAGE.parse("3200 mV");
      String text =
          String.join(
              " | ",
              cell.toString(),
              Measures.format(Kind.VOLTAGE.ofSi(0.0032), Kind.VOLTAGE),
              String.valueOf(cell.equals(parsed)),
              String.valueOf(Kind.VOLTAGE.compare(cell, parsed)),
              String.valueOf(cell.isEquivalentTo(parsed)),
              cell.add(parsed).toString(),
              cell.multiply(2).toString(),
              Measures.difference(Measures.celsius(25), Measures.celsius(20)).toString(),
              Measures.awg(2).toString().substring(0, 5),
              StateOfCharge.parse("20 %").toString());
      System.out.println(text);
      if (arguments.length > 0) {
        System.out.println(cell.getUnit());
      }
    }
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void plainUseLoadsNothingOfTheReferenceImplementation() throws Exception {
    List<String> output = run();
    assertThat(output)
        .contains("3.2 V | 3.2 mV | true | 0 | true | 6.4 V | 6.4 V | 5 K | 33.63 | 20 %");
    assertThat(output).anyMatch(line -> line.startsWith("[Loaded org.wattwright.units.Measure"));
    assertThat(output).noneMatch(line -> line.startsWith("[Loaded tech.uom"));
    assertThat(output).noneMatch(line -> line.startsWith("[Loaded tech.units"));
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void bridgingLoadsIt() throws Exception {
    assertThat(run("bridge")).anyMatch(line -> line.startsWith("[Loaded tech.units"));
  }

  private static List<String> run(String... arguments) throws Exception {
    List<String> command =
        new java.util.ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:stdout:none",
                "-XX:TieredStopAtLevel=1",
                "-Dfile.encoding=UTF-8",
                "-cp",
                System.getProperty("java.class.path"),
                PlainUse.class.getName()));
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(output).isZero();
    return output
        .lines()
        .map(line -> line.matches("\\S+ source: .*") ? "[Loaded " + line : line)
        .toList();
  }
}
