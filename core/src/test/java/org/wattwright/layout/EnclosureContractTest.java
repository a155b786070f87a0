package org.wattwright.layout;

import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.kilograms;

import java.util.List;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.Price;

class EnclosureContractTest extends ValueTypeContract<Enclosure> {
  @Override
  protected Enclosure sample() {
    return Enclosure.of("steel box", 6, kilograms(9.5)).withPrice(Price.of("180", "EUR"));
  }

  @Override
  protected List<Enclosure> different() {
    return List.of(
        Enclosure.of("tray", 6, kilograms(9.5)).withPrice(Price.of("180", "EUR")),
        Enclosure.of("steel box", 5, kilograms(9.5)).withPrice(Price.of("180", "EUR")),
        Enclosure.of("steel box", 6, grams(9400)).withPrice(Price.of("180", "EUR")),
        Enclosure.of("steel box", 6, kilograms(9.5)));
  }
}
