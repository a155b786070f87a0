package org.wattwright.units;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.wattwright.testing.ValueTypeContract;

class StateOfChargeContractTest extends ValueTypeContract<StateOfCharge> {
  @Override
  protected StateOfCharge sample() {
    return StateOfCharge.ofPercent(20);
  }

  @Override
  protected List<StateOfCharge> different() {
    return List.of(StateOfCharge.of(1 / 3.0), StateOfCharge.of(0.07), StateOfCharge.FULL);
  }

  @Override
  protected List<StateOfCharge> rising() {
    return List.of(
            StateOfCharge.EMPTY,
            StateOfCharge.of(Double.MIN_VALUE),
            StateOfCharge.of(1e-9),
            StateOfCharge.of(0.1 + 0.2 - 0.3),
            StateOfCharge.of(0.29),
            StateOfCharge.of(2 / 3.0),
            StateOfCharge.of(Math.nextDown(1.0)),
            StateOfCharge.FULL)
        .stream()
        .sorted()
        .toList();
  }

  @Override
  protected Optional<Function<String, StateOfCharge>> parser() {
    return Optional.of(StateOfCharge::parse);
  }
}
