package org.wattwright.units;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.testing.ValueTypeContract;

class VoltageContractTest extends ValueTypeContract<Quantity<ElectricPotential>> {
  @Override
  protected Quantity<ElectricPotential> sample() {
    return Measures.millivolts(3700);
  }

  @Override
  protected List<Quantity<ElectricPotential>> different() {
    return List.of(
        Measures.volts(3.7001), Measures.volts(-3.7), Measures.volts(0), Measures.kilovolts(1e-9));
  }

  @Override
  protected List<Quantity<ElectricPotential>> rising() {
    return List.of(
        Measures.volts(-1e300),
        Measures.volts(-1),
        Measures.volts(0),
        Measures.volts(Double.MIN_VALUE),
        Measures.microvolts(999),
        Measures.millivolts(1),
        Measures.volts(0.3),
        Measures.volts(0.1 + 0.2),
        Measures.kilovolts(0.001));
  }

  @Override
  protected Optional<Function<String, Quantity<ElectricPotential>>> parser() {
    return Optional.of(Kind.VOLTAGE::parse);
  }
}
