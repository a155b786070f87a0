package org.wattwright.units;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.testing.ValueTypeContract;

class TemperatureContractTest extends ValueTypeContract<Quantity<Temperature>> {
  @Override
  protected Quantity<Temperature> sample() {
    return Measures.celsius(25);
  }

  @Override
  protected List<Quantity<Temperature>> different() {
    return List.of(Measures.celsius(-25), Measures.kelvins(25), Measures.fahrenheit(25));
  }

  @Override
  protected List<Quantity<Temperature>> rising() {
    return List.of(
        Measures.kelvins(0),
        Measures.celsius(-40.5),
        Measures.fahrenheit(-40),
        Measures.kelvins(273.15),
        Measures.celsius(0.1),
        Measures.fahrenheit(212));
  }

  @Override
  protected Optional<Function<String, Quantity<Temperature>>> parser() {
    return Optional.of(Kind.TEMPERATURE::parse);
  }
}
