package org.wattwright.units;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.wattwright.testing.ValueTypeContract;

class PriceContractTest extends ValueTypeContract<Price> {
  @Override
  protected Price sample() {
    return Price.of("1250.50", "EUR");
  }

  @Override
  protected List<Price> different() {
    return List.of(Price.of("1250.51", "EUR"), Price.of("1250.5", "GBP"), Price.of("0", "EUR"));
  }

  @Override
  protected List<Price> rising() {
    return List.of(Price.of("0.00", "EUR"), Price.of("9.99", "EUR"), Price.of("1e3", "EUR"));
  }

  @Override
  protected Optional<Function<String, Price>> parser() {
    return Optional.of(Price::parse);
  }
}
