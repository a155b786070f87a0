package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.seconds;

import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.profile.Profile;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Duty factors, short-time currents and time constants. */
class DutyReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> duties() {
    return CoveredRows.of("duty-and-time-constant");
  }

  @ParameterizedTest
  @MethodSource("duties")
  void dutyAgrees(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.matches("current at \\d+ % duty") && row.has("I100")) {
      double share = Double.parseDouble(quantity.replaceAll("[^0-9]", "")) / 100;
      VALIDATION.computed(
          row,
          Kind.CURRENT.siValueOf(DutyRating.onCurrent(amperes(row.givenNumber("I100")), share)));
    } else if (quantity.startsWith("RMS")) {
      VALIDATION.computed(row, Kind.CURRENT.siValueOf(profile(row).rms()));
    } else if (quantity.startsWith("short-time")) {
      double preloadA = row.has("preload") ? row.givenNumber("preload") : 0;
      VALIDATION.computed(
          row,
          Kind.CURRENT.siValueOf(
              DutyRating.shortTimeCurrent(
                  amperes(row.givenNumber("Iz")),
                  amperes(preloadA),
                  seconds(row.givenNumber("t")),
                  seconds(row.givenNumber("tau")))));
    } else if (quantity.startsWith("allowed on-current")) {
      VALIDATION.computed(
          row,
          Kind.CURRENT.siValueOf(
              DutyRating.periodicOnCurrent(
                  amperes(1),
                  seconds(row.givenNumber("on")),
                  seconds(row.givenNumber("period")),
                  seconds(row.givenNumber("tau")))));
    } else if (quantity.startsWith("heat capacity")) {
      double joulePerM3K = ConductorMaterial.COPPER.thermal().heatCapacityJPerM3K();
      VALIDATION.computed(row, row.givenNumber("S") * 1e-6 * joulePerM3K);
    } else if (quantity.startsWith("thermal time constant")) {
      FirstOrderHeating part =
          FirstOrderHeating.of(
              milliohms(1),
              ConductorMaterial.COPPER,
              kelvinsPerWatt(row.givenNumber("Rth")),
              joulesPerKelvin(row.givenNumber("C")));
      VALIDATION.computed(row, Kind.TIME.siValueOf(part.timeConstant(amperes(0)).orElseThrow()));
    } else if (row.id().equals("D-024")) {
      double factor = Kind.CURRENT.siValueOf(DutyRating.onCurrent(amperes(1), 0.6));
      VALIDATION.computed(row, 160 / factor);
    } else {
      throw new IllegalArgumentException(row.toString());
    }
  }

  private static Profile<ElectricCurrent> profile(ReferenceRow row) {
    double[] numbers =
        row.conditions().keySet().stream()
            .flatMap(text -> Stream.of(text.split("[^0-9.]+")))
            .filter(text -> !text.isEmpty())
            .mapToDouble(Double::parseDouble)
            .toArray();
    return Profile.segments(Kind.CURRENT)
        .hold(amperes(numbers[0]), seconds(numbers[1]))
        .hold(amperes(numbers[2]), seconds(numbers[3]))
        .build();
  }
}
