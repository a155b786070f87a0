package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.percentCharge;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;

class StateOfChargeBandTest extends ValueTypeContract<StateOfChargeBand> {
  @Override
  protected StateOfChargeBand sample() {
    return new StateOfChargeBand(percentCharge(12), percentCharge(90));
  }

  @Override
  protected List<StateOfChargeBand> different() {
    return List.of(
        new StateOfChargeBand(percentCharge(13), percentCharge(90)),
        new StateOfChargeBand(percentCharge(12), percentCharge(91)));
  }

  @Test
  void widthIsTheShareOfTheCharge() {
    assertThat(sample().width()).isCloseTo(0.78, within(1e-15));
    assertThat(new StateOfChargeBand(percentCharge(50), percentCharge(50)).width()).isZero();
    assertThat(sample()).hasToString("12 % … 90 %");
  }

  @Test
  void rejectsEndsOutOfOrder() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> new StateOfChargeBand(percentCharge(60), percentCharge(50)))
        .withMessage("StateOfChargeBand.fullest must be ≥ emptiest 60 %, but was 50 %");
  }
}
