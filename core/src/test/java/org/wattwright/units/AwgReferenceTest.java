package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;

/** American Wire Gauge against ASTM B258 and tables that carry it. */
class AwgReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("units");

  private static final ReferenceRows ROWS = ReferenceRows.read("/units/awg.csv");

  static Stream<ReferenceRow> diameters() {
    return ROWS.quantity("diameter of solid wire");
  }

  static Stream<ReferenceRow> areas() {
    return ROWS.stream().filter(row -> row.quantity().startsWith("area"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("diameters")
  void diameterIsAsPublished(ReferenceRow row) {
    double areaMm2 = WorkshopUnits.SQUARE_MILLIMETRE.valueOf(areaOf(row));
    VALIDATION.computed(row, Math.sqrt(4 * areaMm2 / Math.PI));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("areas")
  void areaIsAsPublished(ReferenceRow row) {
    VALIDATION.computed(row, areaOf(row), Kind.AREA);
  }

  @Test
  void everyRowIsCompared() {
    assertThat(diameters().count() + areas().count()).isEqualTo(ROWS.stream().count());
  }

  @Test
  void sixGaugesHalveTheDiameterAlmost() {
    // ASTM B258: 39 steps from 0.005 in to 0.46 in, a factor of 92.
    IntStream.rangeClosed(-3, 39)
        .forEach(
            gauge ->
                assertThat(Kind.AREA.siValueOf(Measures.awg(gauge)))
                    .isGreaterThan(Kind.AREA.siValueOf(Measures.awg(gauge + 1))));
    double ratio = Kind.AREA.siValueOf(Measures.awg(-3)) / Kind.AREA.siValueOf(Measures.awg(36));
    assertThat(ratio).isEqualTo(92 * 92, org.assertj.core.api.Assertions.within(1e-9));
  }

  private static Quantity<Area> areaOf(ReferenceRow row) {
    return row.has("AWG") ? Measures.awg(gauge(row.given("AWG"))) : row.given("size", Kind.AREA);
  }

  /** 4/0 is gauge −3. */
  private static int gauge(String text) {
    return text.endsWith("/0")
        ? 1 - Integer.parseInt(text.substring(0, text.length() - 2))
        : Integer.parseInt(text);
  }
}
