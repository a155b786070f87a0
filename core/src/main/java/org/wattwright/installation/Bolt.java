package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * A steel bolt or screw: thread, property class and how it is used.
 *
 * <p>F_v,Rd = α_v·f_ub·A_s/γ for one shear plane, F_t,Rd = k₂·f_ub·A_s/γ with k₂ 0.9, countersunk
 * 0.63; γ_M2 1.25 unless told. Source: EN 1993-1-8 cl. 3.6.1 Table 3.4; strengths ISO 898-1. The
 * stress area is taken for a plain shank too, on the safe side. Immutable and thread-safe.
 *
 * @param thread size and pitch
 * @param propertyClass as marked on the head
 * @param countersunk whether the head is countersunk
 * @param threadsInShearPlane whether thread crosses the shear plane; yes unless known otherwise
 * @param partialFactor γ_M2, 1 to 3
 */
public record Bolt(
    MetricThread thread,
    PropertyClass propertyClass,
    boolean countersunk,
    boolean threadsInShearPlane,
    double partialFactor)
    implements Serializable {
  /** Where the resistances come from. */
  public static final Source SOURCE = Source.standard("EN 1993-1-8", "cl. 3.6.1 Table 3.4");

  /** γ_M2 as EN 1993-1-8 cl. 2.2 recommends it. */
  public static final double USUAL_PARTIAL_FACTOR = 1.25;

  /**
   * Checks the factor.
   *
   * @param thread size and pitch
   * @param propertyClass as marked on the head
   * @param countersunk whether the head is countersunk
   * @param threadsInShearPlane whether thread crosses the shear plane
   * @param partialFactor 1 to 3
   * @throws org.wattwright.units.InvalidInputException if the factor is outside its range
   */
  public Bolt {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(propertyClass, "propertyClass");
    Require.between("Bolt.partialFactor", partialFactor, 1, 3);
  }

  /**
   * A hexagon or socket head bolt with thread in the shear plane and γ_M2 1.25.
   *
   * @param thread for example {@code M8} or {@code M8x1}
   * @param propertyClass as marked on the head
   * @return the bolt
   * @throws org.wattwright.units.InvalidInputException if the thread cannot be read
   */
  public static Bolt of(String thread, PropertyClass propertyClass) {
    return new Bolt(MetricThread.parse(thread), propertyClass, false, true, USUAL_PARTIAL_FACTOR);
  }

  /**
   * The same bolt with a countersunk head.
   *
   * @return a new bolt
   */
  public Bolt withCountersunkHead() {
    return new Bolt(thread, propertyClass, true, threadsInShearPlane, partialFactor);
  }

  /**
   * The same bolt with its plain shank in the shear plane.
   *
   * @return a new bolt
   */
  public Bolt withShankInShearPlane() {
    return new Bolt(thread, propertyClass, countersunk, false, partialFactor);
  }

  /**
   * The same bolt with another partial factor.
   *
   * @param factor γ_M2, 1 to 3
   * @return a new bolt
   * @throws org.wattwright.units.InvalidInputException if the factor is outside its range
   */
  public Bolt withPartialFactor(double factor) {
    return new Bolt(thread, propertyClass, countersunk, threadsInShearPlane, factor);
  }

  /**
   * Shear resistance of one plane: F_v,Rd = α_v·f_ub·A_s/γ.
   *
   * @return in N
   */
  public Quantity<Force> shearResistance() {
    return Kind.FORCE.ofSi(shearN());
  }

  /**
   * Tension resistance: F_t,Rd = k₂·f_ub·A_s/γ.
   *
   * @return in N
   */
  public Quantity<Force> tensionResistance() {
    return Kind.FORCE.ofSi(tensionN());
  }

  /**
   * Tension factor k₂.
   *
   * @return 0.9, or 0.63 for a countersunk head
   */
  public double tensionFactor() {
    return countersunk ? 0.63 : 0.9;
  }

  /**
   * Proof load: A_s·S_p.
   *
   * @return in N
   */
  public Quantity<Force> proofLoad() {
    return Kind.FORCE.ofSi(proofN());
  }

  /**
   * Least load at which it may break: A_s·R_m; printed tables round it.
   *
   * @return in N
   */
  public Quantity<Force> ultimateLoad() {
    return Kind.FORCE.ofSi(thread.nominalStressAreaM2() * propertyClass.tensilePa(thread));
  }

  double shearN() {
    return propertyClass.shearFactor(threadsInShearPlane) * designN();
  }

  double tensionN() {
    return tensionFactor() * designN();
  }

  double proofN() {
    return thread.nominalStressAreaM2() * propertyClass.proofPa(thread);
  }

  private double designN() {
    return propertyClass.nominalTensilePa() * thread.nominalStressAreaM2() / partialFactor;
  }

  /**
   * Thread and class.
   *
   * @return for example {@code M8 8.8}
   */
  @Override
  public String toString() {
    return thread + " " + propertyClass + (countersunk ? " countersunk" : "");
  }
}
