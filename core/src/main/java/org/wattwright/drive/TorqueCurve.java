package org.wattwright.drive;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LinearTable;

/** Torque against speed: a constant torque with a constant power above it, or a table. */
record TorqueCurve(double torqueNm, double powerW, @Nullable LinearTable table)
    implements Serializable {
  static TorqueCurve of(double torqueNm, double powerW) {
    return new TorqueCurve(torqueNm, powerW, null);
  }

  static TorqueCurve of(LinearTable table) {
    double mostNm = 0;
    for (int i = 0; i < table.size(); i++) {
      mostNm = Math.max(mostNm, table.y(i));
    }
    return new TorqueCurve(mostNm, Double.POSITIVE_INFINITY, table);
  }

  double atNm(double speedRadPerS) {
    if (table != null) {
      return table.at(speedRadPerS);
    }
    return speedRadPerS * torqueNm > powerW ? powerW / speedRadPerS : torqueNm;
  }
}
