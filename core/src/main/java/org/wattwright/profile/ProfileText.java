package org.wattwright.profile;

import javax.measure.Quantity;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** A profile in one line. */
final class ProfileText {
  private ProfileText() {}

  static <Q extends Quantity<Q>> String of(Profile<Q> profile) {
    Kind<Q> kind = profile.kind();
    String time = profile.isRepeating() ? "repeating every " : "over ";
    String rms = kind.equals(Kind.TEMPERATURE) ? "" : ", rms " + text(profile.rms(), kind);
    String range = text(profile.lowest(), kind) + " … " + text(profile.highest(), kind);
    String mean = ", mean " + text(profile.mean(), kind);
    return kind + " " + time + text(profile.duration(), Kind.TIME) + ": " + range + mean + rms;
  }

  private static <Q extends Quantity<Q>> String text(Quantity<Q> quantity, Kind<Q> kind) {
    return Measures.format(quantity, kind);
  }
}
