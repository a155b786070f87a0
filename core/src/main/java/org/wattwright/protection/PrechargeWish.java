package org.wattwright.protection;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/** What a circuit asks of the times of its pre-charge, in s; null where nothing is asked. */
record PrechargeWish(
    @Nullable Double withinS, @Nullable Double timeOutS, int shots, @Nullable Double periodS)
    implements Serializable {
  static final PrechargeWish NONE = new PrechargeWish(null, null, 1, null);

  PrechargeWish withTimes(double within, double timeOut) {
    return new PrechargeWish(within, timeOut, shots, periodS);
  }

  PrechargeWish withRepeats(int count, double period) {
    return new PrechargeWish(withinS, timeOutS, count, period);
  }
}
