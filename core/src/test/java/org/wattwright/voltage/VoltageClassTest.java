package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.InvalidInputException;

class VoltageClassTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("voltage");

  private static final ReferenceRows ROWS = ReferenceRows.read("/voltage/voltage-class.csv");

  static Stream<ReferenceRow> circuits() {
    return ROWS.quantity("class of a DC circuit");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("circuits")
  void classOfACircuit(ReferenceRow row) {
    VALIDATION.computed(row, VoltageClass.of(volts(row.givenNumber("U"))).toString());
  }

  @Test
  void classOfAPackAtFullCharge() {
    ReferenceRow row = ROWS.row("HV-007");
    VALIDATION.computed(row, VoltageClass.of(volts(96 * row.givenNumber("Umax_cell"))).toString());
  }

  @Test
  void largestSeriesCountInClassA() {
    ReferenceRow row = ROWS.row("HV-008");
    int cells = 1;
    while (VoltageClass.of(volts((cells + 1) * row.givenNumber("Umax_cell"))) == VoltageClass.A) {
      cells++;
    }
    VALIDATION.computed(row, cells);
  }

  @Test
  void limitsAreInclusive() {
    VALIDATION.transcribed(ROWS.row("HV-001"), largest(VoltageClass.A));
    VALIDATION.transcribed(ROWS.row("HV-003"), largest(VoltageClass.B));
    VALIDATION.notCovered(ROWS.row("HV-002"), "direct-current circuits only");
    VALIDATION.notCovered(ROWS.row("HV-004"), "direct-current circuits only");
  }

  /** Largest voltage of a class, in steps of a tenth of a volt. */
  private static double largest(VoltageClass sought) {
    double largestV = Double.NaN;
    for (int tenths = 0; tenths <= 20_000; tenths++) {
      if (classOrNull(tenths / 10.0) == sought) {
        largestV = tenths / 10.0;
      }
    }
    return largestV;
  }

  private static VoltageClass classOrNull(double voltageV) {
    try {
      return VoltageClass.of(volts(voltageV));
    } catch (InvalidInputException e) {
      return null;
    }
  }

  @Test
  void rejectsWhatIsNoTractionVoltage() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> VoltageClass.of(volts(1501)))
        .withMessage("VoltageClass.highest must be from 0 to 1500 V, but was 1501 V");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> VoltageClass.of(volts(-1)));
  }
}
