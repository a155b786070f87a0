package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.STANDARD_GRAVITY;

import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.wattwright.check.Source;
import org.wattwright.internal.ResourceTable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Between which two courses of acceleration the shock test of a traction battery must lie, by
 * vehicle category: the test the battery itself passes, not the load case of its mounting.
 *
 * <p>Lower line A-B-C-D through 20, 50, 65 and 100 ms, upper line E-F-G-H through 0, 50, 80 and 120
 * ms. There is no vertical axis. Source: UN Regulation No. 100 Rev. 3, Annex 9C, Tables 1 to 3.
 */
public enum ShockCorridor {
  /** Along the vehicle, categories M1 and N1. */
  LONGITUDINAL_M1_N1,
  /** Across the vehicle, categories M1 and N1. */
  TRANSVERSE_M1_N1,
  /** Along the vehicle, categories M2 and N2. */
  LONGITUDINAL_M2_N2,
  /** Across the vehicle, categories M2 and N2. */
  TRANSVERSE_M2_N2,
  /** Along the vehicle, categories M3 and N3. */
  LONGITUDINAL_M3_N3,
  /** Across the vehicle, categories M3 and N3. */
  TRANSVERSE_M3_N3;

  /** Where the corridor stands. */
  public static final Source SOURCE =
      Source.standard("UN Regulation No. 100 Rev. 3", "Annex 9C mechanical shock, Tables 1 to 3");

  private static final double[] LOWER_S = {0.020, 0.050, 0.065, 0.100};
  private static final double[] UPPER_S = {0, 0.050, 0.080, 0.120};

  private final double lowerG;
  private final double upperG;
  private final double upperStartG;

  ShockCorridor() {
    String code = name().toLowerCase(Locale.ROOT);
    ResourceTable.Row row =
        ResourceTable.read(AccelerationRules.class, "shock-corridor.csv").rows().stream()
            .filter(r -> r.text("code").equals(code))
            .findFirst()
            .orElseThrow();
    this.lowerG = row.number("B, C [g]");
    this.upperG = row.number("F, G [g]");
    this.upperStartG = row.number("E [g]");
  }

  /**
   * The lower line: the test must not stay below it.
   *
   * @param time after the start of the shock
   * @return straight between the points, 0 outside A … D
   */
  public Quantity<Acceleration> lower(Quantity<Time> time) {
    return at(LOWER_S, lowerCourse(), time);
  }

  /**
   * The upper line: the test must not exceed it.
   *
   * @param time after the start of the shock
   * @return straight between the points, 0 outside E … H
   */
  public Quantity<Acceleration> upper(Quantity<Time> time) {
    return at(UPPER_S, upperCourse(), time);
  }

  /**
   * Change of speed under the lower line: ∫a·dt.
   *
   * @return in m/s
   */
  public Quantity<Speed> lowerSpeedChange() {
    return area(LOWER_S, lowerCourse());
  }

  /**
   * Change of speed under the upper line: ∫a·dt.
   *
   * @return in m/s
   */
  public Quantity<Speed> upperSpeedChange() {
    return area(UPPER_S, upperCourse());
  }

  /**
   * When a corner of the corridor stands.
   *
   * @param point A to D of the lower line, E to H of the upper
   * @return after the start of the shock
   * @throws InvalidInputException if there is no such point
   */
  public static Quantity<Time> timeOf(char point) {
    int index = "ABCDEFGH".indexOf(point);
    if (index < 0) {
      throw InvalidInputException.of("ShockCorridor.point", "one of A to H", "" + point);
    }
    return Kind.TIME.ofSi(index < 4 ? LOWER_S[index] : UPPER_S[index - 4]);
  }

  private double[] lowerCourse() {
    return new double[] {0, lowerG, lowerG, 0};
  }

  private double[] upperCourse() {
    return new double[] {upperStartG, upperG, upperG, 0};
  }

  private static Quantity<Acceleration> at(double[] timeS, double[] g, Quantity<Time> time) {
    double atS = Kind.TIME.siValueOf(Objects.requireNonNull(time, "time"));
    for (int i = 1; i < timeS.length; i++) {
      if (atS >= timeS[i - 1] && atS <= timeS[i]) {
        double share = (atS - timeS[i - 1]) / (timeS[i] - timeS[i - 1]);
        return STANDARD_GRAVITY.of(g[i - 1] + share * (g[i] - g[i - 1]));
      }
    }
    return STANDARD_GRAVITY.of(0);
  }

  private static Quantity<Speed> area(double[] timeS, double[] g) {
    double sum = 0;
    for (int i = 1; i < timeS.length; i++) {
      sum += (g[i - 1] + g[i]) / 2 * (timeS[i] - timeS[i - 1]);
    }
    return Kind.SPEED.ofSi(sum * Kind.ACCELERATION.siValueOf(STANDARD_GRAVITY.of(1)));
  }
}
