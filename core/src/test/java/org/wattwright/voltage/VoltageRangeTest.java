package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;

class VoltageRangeTest extends ValueTypeContract<VoltageRange> {
  @Override
  protected VoltageRange sample() {
    return TestParts.range(72, 118.8);
  }

  @Override
  protected List<VoltageRange> different() {
    return List.of(TestParts.range(71, 118.8), TestParts.range(72, 119));
  }

  @Test
  void containsBothEnds() {
    assertThat(sample().contains(volts(72))).isTrue();
    assertThat(sample().contains(millivolts(118_800))).isTrue();
    assertThat(sample().contains(volts(71.999))).isFalse();
    assertThat(sample().contains(volts(118.801))).isFalse();
  }

  @Test
  void printsBothEndsAsGiven() {
    assertThat(sample()).hasToString("72 V … 118.8 V");
  }

  @Test
  void rejectsEndsOutOfOrder() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TestParts.range(420, 400))
        .withMessage("VoltageRange.lowest must be < highest: lowest 420 V, highest 400 V");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TestParts.range(400, 400));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TestParts.range(-1, 400))
        .withMessage("VoltageRange.lowest must be ≥ 0 V, but was -1 V");
    assertThatNullPointerException().isThrownBy(() -> VoltageRange.between(null, volts(1)));
  }
}
