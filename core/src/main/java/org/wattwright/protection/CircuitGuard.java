package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is to protect a circuit, in SI; null where nothing is asked. */
record CircuitGuard(
    boolean isFused,
    boolean isSwitched,
    boolean isPrecharged,
    PrechargeWish precharge,
    @Nullable Double disconnectV,
    List<OvercurrentTrip> trips,
    double clearingS)
    implements Serializable {
  /** Short-circuit limits of insulation hold up to here; IEC 60364-4-43, 434.5.2. */
  static final double USUAL_CLEARING_S = 5;
}
