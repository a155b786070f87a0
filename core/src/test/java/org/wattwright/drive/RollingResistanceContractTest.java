package org.wattwright.drive;

import java.util.List;
import org.wattwright.testing.ValueTypeContract;

class RollingResistanceContractTest extends ValueTypeContract<RollingResistance> {
  @Override
  protected RollingResistance sample() {
    return RollingResistance.of(0.012);
  }

  @Override
  protected List<RollingResistance> different() {
    return List.of(
        RollingResistance.of(0.013),
        RollingResistance.radialTyre(),
        RoadLoadEstimates.rollingResistance(RoadSurface.ASPHALT));
  }
}
