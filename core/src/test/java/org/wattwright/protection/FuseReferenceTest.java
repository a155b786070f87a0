package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.percentPerKelvin;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Outcome;
import org.wattwright.profile.Profile;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;

/** Ratings, derating, curves and gates of fuses. */
class FuseReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("protection");

  private static final Map<String, String> WHY = new LinkedHashMap<>();

  static {
    for (int i = 1; i <= 20; i++) {
      why("a gate of time and current, from memory: only the I²t gates are carried", i);
    }
    for (int i = 43; i <= 53; i++) {
      why("a conventional time or current: overloads are judged by the link's own curve", i);
    }
    why("the scope of a standard: the link's own rated voltage counts", 56);
    why("a test's time constant belongs to the link: Fuse.testTimeConstant", 57, 58);
    why("a first estimate; joule integrals are compared instead", 60);
    why("an input of AmbientDerating.linear; FUS-063 computes with it", 62);
    why("belongs in Fuse.continuousFactor", 67, 68);
    why("the chart of one family of small links; the link's own belongs in Fuse.cyclicFactor", 71);
    why("the chart of one family of small links; the link's own belongs in Fuse.cyclicFactor", 72);
    why("the chart of one family of small links; the link's own belongs in Fuse.cyclicFactor", 73);
    why("the chart of one family of small links; the link's own belongs in Fuse.cyclicFactor", 74);
    WHY.put("FUSH-003", "one end of a gate alone");
  }

  private static void why(String reason, int... numbers) {
    for (int number : numbers) {
      WHY.put(String.format(java.util.Locale.ROOT, "FUS-%03d", number), reason);
    }
  }

  static Stream<ReferenceRow> all() {
    return ReferenceRows.read("/protection/fuses.csv").stream();
  }

  static Stream<ReferenceRow> rows() {
    return all().filter(row -> !WHY.containsKey(row.id()));
  }

  static Stream<ReferenceRow> lowVoltage() {
    return ReferenceRows.read("/protection/low-voltage-fuses.csv").stream();
  }

  @Test
  void everyReasonBelongsToARow() {
    Map<String, ReferenceRow> found = new LinkedHashMap<>();
    all().filter(row -> WHY.containsKey(row.id())).forEach(row -> found.put(row.id(), row));
    found.values().forEach(row -> VALIDATION.notCovered(row, WHY.get(row.id())));
    assertThat(found.keySet()).containsExactlyInAnyOrderElementsOf(WHY.keySet());
  }

  @Test
  void bladeFusesBringTheirOwnData() {
    assertThat(lowVoltage())
        .isNotEmpty()
        .allSatisfy(
            row -> VALIDATION.notCovered(row, "data of a part: its curve and ratings in Fuse"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void fuseAgrees(ReferenceRow row) {
    if (row.quantity().startsWith("gG pre-arcing I2t")) {
      gate(row);
      return;
    }
    switch (row.id()) {
      case "FUS-054" -> VALIDATION.computed(row, full().breakingRange().orElseThrow().toString());
      case "FUS-055" ->
          VALIDATION.computed(row, FaultParts.fuse().build().breakingRange().orElseThrow() + "");
      case "FUS-059" -> VALIDATION.transcribed(row, ratioOfGeneralPurposeLinks());
      case "FUS-061" -> VALIDATION.computed(row, verdict(row));
      default -> VALIDATION.computed(row, number(row));
    }
  }

  private static void gate(ReferenceRow row) {
    double ratedA = row.givenNumber("In");
    switch (row.id()) {
      case "FUSH-001" -> VALIDATION.bound(row, gates(160).largestA2S());
      case "FUSH-002" -> VALIDATION.bound(row, gates(200).smallestA2S());
      default -> {
        Gates gates = gates(ratedA);
        boolean least = row.quantity().contains("minimum");
        VALIDATION.transcribed(row, least ? gates.smallestA2S() : gates.largestA2S());
      }
    }
  }

  private record Gates(double smallestA2S, double largestA2S) {}

  private static Gates gates(double ratedA) {
    FuseGates gates = FuseGates.generalPurpose(amperes(ratedA)).orElseThrow();
    return new Gates(
        Kind.JOULE_INTEGRAL.siValueOf(gates.smallest()),
        Kind.JOULE_INTEGRAL.siValueOf(gates.largest()));
  }

  private static Fuse full() {
    return FaultParts.fuse().fullRange().build();
  }

  private static double ratioOfGeneralPurposeLinks() {
    Fuse upstream = Fuse.of("up", amperes(100)).build();
    Fuse downstream = Fuse.of("down", amperes(63)).build();
    return Selectivity.of(upstream).over(downstream).ofRatings(true).limit().orElseThrow().number();
  }

  /** Both melt without losing heat. */
  private static String verdict(ReferenceRow row) {
    double totalA2S = number(row, "downstream total I2t");
    double preArcingA2S = number(row, "upstream pre-arcing I2t");
    Fuse downstream =
        Fuse.of("down", amperes(100))
            .directVoltage(volts(500))
            .testTimeConstant(seconds(0.015))
            .breakingCapacity(amperes(50_000))
            .fullRange()
            .preArcingJouleIntegral(ampereSquaredSeconds(27_000))
            .totalJouleIntegral(ampereSquaredSeconds(totalA2S), volts(500))
            .build();
    Fuse upstream =
        Fuse.of("up", amperes(200))
            .preArcingJouleIntegral(ampereSquaredSeconds(preArcingA2S))
            .build();
    FaultRange faults = FaultRange.of(FaultParts.fault(9000), FaultParts.fault(6000));
    Outcome outcome = Selectivity.of(upstream).over(downstream).check(faults, volts(400)).outcome();
    return outcome == Outcome.PASS ? "selective" : "not selective";
  }

  private static double number(ReferenceRow row, String words) {
    String key =
        row.conditions().keySet().stream()
            .filter(k -> k.startsWith(words))
            .findFirst()
            .orElseThrow();
    return Double.parseDouble(key.substring(words.length()).replace("A2s", "").strip());
  }

  private static double number(ReferenceRow row) {
    TimeCurrentCurve curve = FaultParts.curve().build();
    return switch (row.id()) {
      case "FUS-063" -> linearlyDeratedA();
      case "FUS-064", "FUS-065", "FUS-066" ->
          squareRoot(row).factorAt(celsius(row.givenNumber("T")));
      case "FUS-069" -> leastRatingA();
      case "FUS-070" -> Kind.CURRENT.siValueOf(FuseRatings.atLeast(amperes(179.3)).orElseThrow());
      case "FUS-075" -> pulse(Profile.constant(Kind.CURRENT, amperes(50), seconds(0.02)));
      case "FUS-076" ->
          pulse(
              Profile.ofPoints(
                  WorkshopUnits.SECOND,
                  new double[] {0, 0.02},
                  WorkshopUnits.AMPERE,
                  new double[] {50, 0}));
      case "FUS-077" ->
          pulse(
              Profile.sampled(
                  Kind.CURRENT,
                  seconds(0.02),
                  5000,
                  t -> amperes(50 * Math.sin(Math.PI * Kind.TIME.siValueOf(t) / 0.02))));
      case "FUS-078" ->
          Kind.JOULE_INTEGRAL.siValueOf(
              CapacitorDischarge.of("pulse", Measures.farads(0.004), volts(100))
                  .through(Measures.ohms(10), Measures.henries(0))
                  .jouleIntegral());
      case "FUS-079" -> Kind.TIME.siValueOf(curve.timeAt(amperes(300)).orElseThrow());
      case "FUS-080" -> Kind.CURRENT.siValueOf(curve.currentAt(seconds(10)).orElseThrow());
      case "FUS-081" -> lastA2S(curve);
      case "FUS-082" ->
          Kind.TIME.siValueOf(
              FaultParts.fault(5000).timeToReach(ampereSquaredSeconds(lastA2S(curve))));
      default -> throw new AssertionError("no answer for " + row);
    };
  }

  private static double linearlyDeratedA() {
    Fuse fuse =
        Fuse.of("F", amperes(100))
            .ambientDerating(AmbientDerating.linear(percentPerKelvin(0.5), celsius(40)))
            .build();
    return Kind.CURRENT.siValueOf(fuse.continuousCurrentAt(celsius(55)).orElseThrow());
  }

  private static AmbientDerating squareRoot(ReferenceRow row) {
    return AmbientDerating.squareRoot(celsius(row.givenNumber("a")), celsius(row.givenNumber("T0")))
        .withUprating();
  }

  private static double leastRatingA() {
    Fuse ofOneAmpere =
        Fuse.of("F", amperes(1))
            .ambientDerating(AmbientDerating.squareRoot(celsius(130), celsius(30)))
            .continuousFactor(0.8)
            .build();
    return 120 / Kind.CURRENT.siValueOf(ofOneAmpere.continuousCurrentAt(celsius(60)).orElseThrow());
  }

  private static double pulse(Profile<ElectricCurrent> profile) {
    return Kind.JOULE_INTEGRAL.siValueOf(profile.jouleIntegral());
  }

  private static double lastA2S(TimeCurrentCurve curve) {
    double lastA = Kind.CURRENT.siValueOf(curve.highestCurrent());
    return lastA
        * lastA
        * WorkshopUnits.SECOND.valueOf(curve.timeAt(curve.highestCurrent()).orElseThrow());
  }
}
