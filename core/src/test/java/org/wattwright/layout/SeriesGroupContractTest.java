package org.wattwright.layout;

import java.util.List;
import org.wattwright.testing.ValueTypeContract;

class SeriesGroupContractTest extends ValueTypeContract<SeriesGroup> {
  @Override
  protected SeriesGroup sample() {
    return SeriesGroup.of(RandomBays.module("flat", 20), 4);
  }

  @Override
  protected List<SeriesGroup> different() {
    return List.of(
        SeriesGroup.of(RandomBays.module("flat", 20), 5),
        SeriesGroup.of(RandomBays.module("tall", 20), 4));
  }
}
