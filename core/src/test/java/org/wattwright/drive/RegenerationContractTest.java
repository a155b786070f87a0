package org.wattwright.drive;

import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.newtons;

import java.util.List;
import org.wattwright.testing.ValueTypeContract;

class RegenerationContractTest extends ValueTypeContract<Regeneration> {
  @Override
  protected Regeneration sample() {
    return Regeneration.ofShare(0.6);
  }

  @Override
  protected List<Regeneration> different() {
    return List.of(
        Regeneration.none(),
        sample().withForceAtMost(newtons(900)),
        sample().fadingFrom(kilometresPerHour(20), kilometresPerHour(5)),
        sample().fadingFrom(kilometresPerHour(15), kilometresPerHour(6)));
  }
}
