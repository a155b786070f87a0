package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Torque;

/**
 * How a torque wrench turns into preload: T = K·d·F, with the scatter of K.
 *
 * <p>K is a guess at friction: a torque meant for a dry thread overloads an oiled one by K₁/K₂.
 * Source: J. K. Nisbett, R. G. Budynas, Shigley's Mechanical Engineering Design, ch. 8. Immutable
 * and thread-safe.
 *
 * @param typical K, &gt; 0
 * @param low lowest K to be reckoned with: highest preload; above 0 and at most typical
 * @param high highest K to be reckoned with: lowest preload; at least typical
 * @param source where K comes from
 */
public record TorqueCoefficient(double typical, double low, double high, Source source)
    implements Serializable {
  /** Share of the proof load at which a joint that is to be undone again is tightened. */
  public static final double REUSABLE_SHARE = 0.75;

  /** Share of the proof load for a joint that stays; recalled. */
  public static final double PERMANENT_SHARE = 0.9;

  private static final String BOOK =
      "J. K. Nisbett, R. G. Budynas, Shigley's Mechanical Engineering Design";

  /** Preload by torque wrench scatters by about a quarter either way; common practice. */
  private static final double USUAL_SCATTER = 0.25;

  /** Not plated, black. */
  public static final TorqueCoefficient BLACK = usual(0.3, Source.literature(BOOK, "ch. 8"));

  /** Zinc plated; other handbooks give 0.17 to 0.35. */
  public static final TorqueCoefficient ZINC =
      new TorqueCoefficient(0.2, 0.17, 0.35, Source.literature(BOOK, "ch. 8"));

  /** Cadmium plated; poisonous, met on old hardware. */
  public static final TorqueCoefficient CADMIUM = usual(0.16, Source.literature(BOOK, "ch. 8"));

  /** Lubricated; recalled. */
  public static final TorqueCoefficient LUBRICATED =
      usual(0.18, Source.literature(BOOK, "ch. 8").fromMemory());

  /**
   * Checks the order.
   *
   * @param typical K
   * @param low lowest K
   * @param high highest K
   * @param source where K comes from
   * @throws InvalidInputException unless 0 &lt; low ≤ typical ≤ high
   */
  public TorqueCoefficient {
    Require.positive("TorqueCoefficient.low", low);
    Require.between("TorqueCoefficient.typical", typical, low, Double.MAX_VALUE);
    Require.between("TorqueCoefficient.high", high, typical, Double.MAX_VALUE);
    Objects.requireNonNull(source, "source");
  }

  private static TorqueCoefficient usual(double typical, Source source) {
    return new TorqueCoefficient(
        typical, typical * (1 - USUAL_SCATTER), typical * (1 + USUAL_SCATTER), source);
  }

  /**
   * Torque for a preload: T = K·d·F.
   *
   * @param bolt gives d
   * @param share of its proof load, above 0 and at most 1; see {@link #REUSABLE_SHARE}
   * @return in N·m, at the typical K
   * @throws InvalidInputException if the share is outside its range
   */
  public Quantity<Torque> torque(Bolt bolt, double share) {
    return NEWTON_METRE.of(
        typical * bolt.thread().diameterM() * Kind.FORCE.siValueOf(preload(bolt, share)));
  }

  /**
   * A share of the proof load: F = share·S_p·A_s.
   *
   * @param bolt the bolt
   * @param share above 0 and at most 1
   * @return in N
   * @throws InvalidInputException if the share is outside its range
   */
  public static Quantity<Force> preload(Bolt bolt, double share) {
    Require.positive("TorqueCoefficient.share", share);
    return Kind.FORCE.ofSi(Require.fraction("TorqueCoefficient.share", share) * bolt.proofN());
  }

  /**
   * Preload of a torque, with its scatter: F = T/(K·d).
   *
   * @param thread gives d
   * @param torque &gt; 0 N·m
   * @return an estimate: its low end for slip, its high end for the bolt
   * @throws InvalidInputException if the torque is not positive
   */
  public Estimate<Force> preloadOf(MetricThread thread, Quantity<Torque> torque) {
    double torqueNm = Require.quantity("TorqueCoefficient.torque", torque, NEWTON_METRE).positive();
    return Estimate.of(
        "preload",
        Kind.FORCE.ofSi(torqueNm / (typical * thread.diameterM())),
        Kind.FORCE,
        new Estimate.Band(typical / high, typical / low),
        source);
  }
}
