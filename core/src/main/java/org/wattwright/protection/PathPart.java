package org.wattwright.protection;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BandEnd;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.conductor.ConductorRun;

/** One part of the way to a fault, in SI: of a cable the run, of anything else two ends. */
record PathPart(
    String name,
    @Nullable ConductorRun run,
    double lowSi,
    double highSi,
    Basis basis,
    Source source)
    implements Serializable {

  double endSi(BandEnd end) {
    return end == BandEnd.LOW ? lowSi : highSi;
  }
}
