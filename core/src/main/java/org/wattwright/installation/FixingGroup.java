package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Any pattern of fixings in one face, with the footprint of what they hold: eccentric shear and
 * overturning by the elastic method.
 *
 * <p>Shear: f_u = k/Σk·F_u − M·k·(v − v_c)/J, f_v = k/Σk·F_v + M·k·(u − u_c)/J with M = (u_P −
 * u_c)·F_v − (v_P − v_c)·F_u and J = Σk·r². Tension: the base turns about the edge of its footprint
 * that it leans on, F_t = M·k·y/Σk·y² with y from that edge; about a corner, or lifting off, where
 * the load does that. k is the stress area, so that equal bolts share equally.
 *
 * <p>Assumed: bracket and base are rigid, the face under the edge does not give way, friction
 * carries nothing, preload does not add to the pull at failure. A base that bends pries its bolts
 * and loads them more. Adding a bolt lowers Σf²/k, but may raise the highest single force where it
 * sits further out than the others. Source: elastic bolt-group method, J. K. Nisbett, R. G.
 * Budynas, Shigley's Mechanical Engineering Design, ch. 8. Immutable and thread-safe.
 */
public final class FixingGroup implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where the method comes from. */
  public static final Source SOURCE =
      Source.literature(
          "J. K. Nisbett, R. G. Budynas, Shigley's Mechanical Engineering Design",
          "ch. 8, elastic bolt-group method; rigid base turning about its edge");

  private final Footprint footprint;
  private final List<Fixing> fixings;

  private FixingGroup(Footprint footprint, List<Fixing> fixings) {
    this.footprint = footprint;
    this.fixings = fixings;
  }

  /**
   * A group of fixings.
   *
   * @param footprint where the component presses on the face; all fixings lie within it
   * @param fixings at least one, no two of one name
   * @return the group
   * @throws InvalidInputException if there is none, a name comes twice or a fixing lies outside
   */
  public static FixingGroup of(Footprint footprint, List<Fixing> fixings) {
    Objects.requireNonNull(footprint, "footprint");
    List<Fixing> copy = Require.nonEmpty("FixingGroup.fixings", fixings);
    Set<String> names = new HashSet<>();
    for (Fixing fixing : copy) {
      if (!names.add(fixing.name())) {
        throw InvalidInputException.of("FixingGroup.fixings", "of different names", fixing.name());
      }
      if (!footprint.contains(fixing)) {
        throw InvalidInputException.of(
            "FixingGroup.fixings", "within the footprint", fixing.toString());
      }
    }
    return new FixingGroup(footprint, copy);
  }

  /**
   * The fixings.
   *
   * @return in the order given
   */
  public List<Fixing> fixings() {
    return fixings;
  }

  /**
   * Where the component presses on the face.
   *
   * @return the rectangle
   */
  public Footprint footprint() {
    return footprint;
  }

  /**
   * Centre of stiffness along u.
   *
   * @return for equal bolts the mean of their places
   */
  public Quantity<Length> centreU() {
    return METRE.of(shearKernel().centreU());
  }

  /**
   * Centre of stiffness along v.
   *
   * @return for equal bolts the mean of their places
   */
  public Quantity<Length> centreV() {
    return METRE.of(shearKernel().centreV());
  }

  /**
   * Σr² about the centre of stiffness, each bolt weighted by its share of stiffness times their
   * number.
   *
   * @return for equal bolts the plain sum of squares
   */
  public Quantity<Area> sumOfSquaredRadii() {
    return Kind.AREA.ofSi(shearKernel().sumOfSquares());
  }

  /**
   * How the group holds a load.
   *
   * @param load force and the point it acts at
   * @return empty if it does not: a base that turns freely about a row of bolts, or a single bolt
   */
  public Optional<GroupReactions> reactions(GroupLoad load) {
    return Optional.ofNullable(solve(load.forceN(), load.pointM())).map(this::reactions);
  }

  private GroupReactions reactions(Held held) {
    List<FixingReaction> each = new ArrayList<>();
    for (int i = 0; i < fixings.size(); i++) {
      each.add(
          new FixingReaction(
              fixings.get(i).name(),
              Kind.FORCE.ofSi(held.shearU[i]),
              Kind.FORCE.ofSi(held.shearV[i]),
              Kind.FORCE.ofSi(held.tension[i])));
    }
    List<Quantity<Force>> corners = Arrays.stream(held.contact).mapToObj(Kind.FORCE::ofSi).toList();
    return new GroupReactions(each, corners);
  }

  /** Forces in N, by fixing and by corner. */
  static final class Held {
    private final double[] shearU;
    private final double[] shearV;
    private final double[] tension;
    private final double[] contact;

    Held(double[] shearU, double[] shearV, PullKernel.Pull pull) {
      this.shearU = shearU;
      this.shearV = shearV;
      this.tension = pull.tension();
      this.contact = pull.contact();
    }

    double shear(int i) {
      return Math.hypot(shearU[i], shearV[i]);
    }

    double tension(int i) {
      return tension[i];
    }
  }

  /** Null if the group does not hold the load. */
  @Nullable Held solve(double[] forceN, double[] pointM) {
    double[][] springs = springs();
    ShearKernel shear = new ShearKernel(springs[0], springs[1], springs[2]);
    double[] alongU = new double[fixings.size()];
    double[] alongV = new double[fixings.size()];
    double momentNm = shear.moment(forceN, pointM[0], pointM[1]);
    if (!shear.solve(forceN, momentNm, alongU, alongV)) {
      return null;
    }
    double[][] corners = {footprint.cornersUM(), footprint.cornersVM()};
    PullKernel.@Nullable Pull pull = new PullKernel(springs, corners).solve(forceN, pointM);
    return pull == null ? null : new Held(alongU, alongV, pull);
  }

  private ShearKernel shearKernel() {
    double[][] springs = springs();
    return new ShearKernel(springs[0], springs[1], springs[2]);
  }

  /** u, v and stiffness, the latter relative to the first. */
  private double[][] springs() {
    double first = fixings.get(0).bolt().thread().nominalStressAreaM2();
    return new double[][] {
      fixings.stream().mapToDouble(Fixing::uM).toArray(),
      fixings.stream().mapToDouble(Fixing::vM).toArray(),
      fixings.stream()
          .mapToDouble(each -> each.bolt().thread().nominalStressAreaM2() / first)
          .toArray()
    };
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FixingGroup that
        && footprint.equals(that.footprint)
        && fixings.equals(that.fixings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(footprint, fixings);
  }

  /**
   * The fixings.
   *
   * @return for example {@code 4 fixings: a, M8 8.8 at 20 mm, 20 mm; …}
   */
  @Override
  public String toString() {
    return fixings.size()
        + " fixings: "
        + String.join("; ", fixings.stream().map(Fixing::toString).toList());
  }
}
