package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Measures;

class ReviewAreaTest {
  private static final Pattern NAMED = Pattern.compile("named\\(\\s*\"([a-z0-9.-]+)\"");

  private static Check check(String code, double actual, double limit) {
    return Check.named(code, "of " + code + " at " + actual)
        .source(Source.PHYSICS)
        .atMost(Figure.number(actual), Figure.number(limit));
  }

  @ParameterizedTest
  @CsvSource({
    "pack.energy, PACK",
    "voltage.maximum, VOLTAGE",
    "wheel.front, MASSES",
    "parking.uphill, BRAKES",
    "handling.speed.critical, RIDE",
    "conductor.voltage-drop, CABLES",
    "precharge.time, PROTECTION",
    "bonding.resistance, SHOCK",
    "charging.time, CHARGING",
    "drive.traction, DRIVE",
    "thermal.pack-charge, HEAT",
    "requirement.mass, REQUIREMENTS",
    "own.wish, OTHER",
    "packing, OTHER"
  })
  void theFirstWordOfTheCodeDecides(String code, ReviewArea area) {
    assertThat(ReviewArea.of(check(code, 1, 2))).isEqualTo(area);
  }

  /** A new check of the library would else end up among those of the caller. */
  @Test
  void noCheckOfTheLibraryIsOfNoArea() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
      List<String> codes =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.toString().contains("check" + java.io.File.separator))
              .flatMap(file -> NAMED.matcher(read(file)).results().map(found -> found.group(1)))
              .toList();
      assertThat(codes)
          .hasSizeGreaterThan(60)
          .allSatisfy(
              code ->
                  assertThat(ReviewArea.of(check(code.replaceAll("[.-]$", ""), 1, 2)))
                      .as(code)
                      .isNotEqualTo(ReviewArea.OTHER));
    }
  }

  private static String read(Path file) {
    try {
      // A code in the Javadoc of an example is none of the library's.
      return Files.readString(file).replaceAll("(?m)^\\s*\\*.*$", "");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void areasStandInTheirOrderWithoutEmptyOnes() {
    List<AreaVerdict> areas =
        AreaVerdict.of(
            List.of(
                check("brake.a", 1, 2),
                check("pack.a", 3, 2),
                check("pack.b", 1, 2),
                check("own.a", 1, 2)));
    assertThat(areas)
        .extracting(AreaVerdict::toString)
        .containsExactly("pack: 1 FAIL, 1 PASS", "brakes: 1 PASS", "other: 1 PASS");
    assertThat(areas.get(0).count(Outcome.FAIL)).isEqualTo(1);
    assertThat(areas.get(0).count(Outcome.CAUTION)).isZero();
    assertThat(areas.get(0).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(areas.get(0).checks())
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.PASS);
  }

  @Test
  void theTightestUsesMostOfItsLimitWhateverTheDirection() {
    Check loose = check("pack.a", 1, 2);
    Check tight = check("pack.b", 1.8, 2);
    Check reached =
        Check.named("pack.c", "c")
            .source(Source.PHYSICS)
            .atLeast(Figure.number(10), Figure.number(9.5));
    assertThat(AreaVerdict.of(List.of(loose, tight)).get(0).tightest()).contains(tight);
    assertThat(AreaVerdict.of(List.of(loose, tight, reached)).get(0).tightest()).contains(reached);
  }

  @Test
  void countsAndTemperaturesAreNeverTheTightest() {
    Check count =
        Check.named("pack.a", "fuses")
            .source(Source.PHYSICS)
            .atLeast(Figure.count(13), Figure.count(13));
    Check hot =
        Check.named("pack.b", "hot")
            .source(Source.PHYSICS)
            .atMost(
                Figure.of(Measures.celsius(99), org.wattwright.units.Kind.TEMPERATURE),
                Figure.of(Measures.celsius(100), org.wattwright.units.Kind.TEMPERATURE));
    assertThat(AreaVerdict.of(List.of(count, hot)).get(0).tightest()).isEmpty();
  }

  @Test
  void anAreaWithoutChecksIsRefused() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> new AreaVerdict(ReviewArea.PACK, List.of()))
        .withMessageContaining("AreaVerdict.checks");
  }
}
