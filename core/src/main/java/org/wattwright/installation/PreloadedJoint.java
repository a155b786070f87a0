package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A bolted joint with preload under an outside pull.
 *
 * <p>Bolt F_i + C·P, clamp F_i − (1 − C)·P, opens at F_i/(1 − C). Source: Shigley's Mechanical
 * Engineering Design, ch. 8. Immutable and thread-safe.
 *
 * @param bolt the bolt
 * @param preload F_i, ≥ 0 N
 * @param boltShare C, share of the outside pull that the bolt takes, above 0 and below 1
 */
public record PreloadedJoint(Bolt bolt, Quantity<Force> preload, double boltShare)
    implements Serializable {
  /** Where the formulas come from. */
  public static final Source SOURCE =
      Source.literature(
          "J. K. Nisbett, R. G. Budynas, Shigley's Mechanical Engineering Design", "ch. 8");

  /**
   * Checks the values.
   *
   * @param bolt the bolt
   * @param preload ≥ 0 N
   * @param boltShare above 0 and below 1
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public PreloadedJoint {
    Objects.requireNonNull(bolt, "bolt");
    Require.quantity("PreloadedJoint.preload", preload, NEWTON).nonNegative();
    preload = Measure.from(preload, Kind.FORCE);
    Require.positive("PreloadedJoint.boltShare", boltShare);
    Require.positive("PreloadedJoint.clampShare", 1 - boltShare);
  }

  private double preloadN() {
    return Kind.FORCE.siValueOf(preload);
  }

  private static double pullN(Quantity<Force> pull) {
    return Require.quantity("PreloadedJoint.pull", pull, NEWTON).nonNegative();
  }

  /**
   * Load of the bolt while the joint is closed: F_i + C·P.
   *
   * @param pull P, ≥ 0 N
   * @return in N
   * @throws org.wattwright.units.InvalidInputException if the pull is negative
   */
  public Quantity<Force> boltLoad(Quantity<Force> pull) {
    return Kind.FORCE.ofSi(preloadN() + boltShare * pullN(pull));
  }

  /**
   * Clamp force that is left: F_i − (1 − C)·P.
   *
   * @param pull P, ≥ 0 N
   * @return in N; 0 once the joint is open
   * @throws org.wattwright.units.InvalidInputException if the pull is negative
   */
  public Quantity<Force> clampForce(Quantity<Force> pull) {
    return Kind.FORCE.ofSi(Math.max(0, preloadN() - (1 - boltShare) * pullN(pull)));
  }

  /**
   * Pull at which the joint opens: F_i/(1 − C).
   *
   * @return in N
   */
  public Quantity<Force> separation() {
    return Kind.FORCE.ofSi(preloadN() / (1 - boltShare));
  }

  /**
   * How many times the pull may grow until the bolt reaches its proof load: (S_p·A_s − F_i)/(C·P).
   *
   * @param pull P, ≥ 0 N
   * @return infinite without a pull
   * @throws org.wattwright.units.InvalidInputException if the pull is negative
   */
  public double loadFactor(Quantity<Force> pull) {
    return (bolt.proofN() - preloadN()) / (boltShare * pullN(pull));
  }

  /**
   * Proof load over load of the bolt: S_p·A_s/(F_i + C·P).
   *
   * @param pull P, ≥ 0 N
   * @return above 1 while the bolt is below its proof load
   * @throws org.wattwright.units.InvalidInputException if the pull is negative
   */
  public double yieldFactor(Quantity<Force> pull) {
    return bolt.proofN() / (preloadN() + boltShare * pullN(pull));
  }

  /**
   * Side load at which clamped faces slip: n·μ·F.
   *
   * @param bolts how many, at least 1
   * @param friction μ between the faces, 0 to 1
   * @param clamp clamp force of each, ≥ 0 N
   * @return in N; below it the bolts see no shear. Not to be counted on in a crash
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Quantity<Force> slipLoad(int bolts, double friction, Quantity<Force> clamp) {
    Require.positiveCount("PreloadedJoint.bolts", bolts);
    Require.fraction("PreloadedJoint.friction", friction);
    return Kind.FORCE.ofSi(bolts * friction * pullN(clamp));
  }
}
