package org.wattwright.layout;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.wattwright.check.Basis;

/**
 * A linear rule on what the modules add: in each load case a load must stay between two bounds.
 *
 * <p>How far it is missed is a mass, or the mass divided by that of the vehicle if the rule is
 * about a share. Whole numbers of 10⁻⁹ kg throughout.
 */
final class LoadRule {
  /**
   * A load case: bounds on what the modules add, the vehicle without them, and what that rests on.
   */
  record Case(String name, long low, long high, Base base) {
    long baseLoad() {
      return base.load();
    }

    long baseMass() {
      return base.mass();
    }
  }

  /** The vehicle without modules: the load in question, and its mass. */
  record Base(long load, long mass, Basis basis) {}

  private final String code;
  private final String what;
  private final Limit limit;
  private final ToDoubleFunction<BayLoad> load;
  private final Case[] cases;
  private final double leverM;
  private final long low;
  private final long high;

  /** The limit as stated: a mass in kg, or a share. */
  record Limit(double value, boolean share, boolean atMost) {}

  LoadRule(Identity identity, Limit limit, ToDoubleFunction<BayLoad> load, List<Case> cases) {
    this(identity, limit, new Load(load, 1), cases);
  }

  /** The rule on a moment: a load times one lever for all. */
  LoadRule(Identity identity, Limit limit, Load load, List<Case> cases) {
    this.code = identity.code();
    this.what = identity.what();
    this.limit = limit;
    this.load = load.ofEntry();
    this.leverM = load.leverM();
    this.cases = cases.toArray(Case[]::new);
    this.low = Arrays.stream(this.cases).mapToLong(Case::low).max().orElse(-Micrograms.UNBOUNDED);
    this.high = Arrays.stream(this.cases).mapToLong(Case::high).min().orElse(Micrograms.UNBOUNDED);
  }

  /** What is compared, and the lever in m that is in it; 1 if it is a mass. */
  record Load(ToDoubleFunction<BayLoad> ofEntry, double leverM) {}

  /** Stable code of the checks, what is compared, and whether it is about one side or wheel. */
  record Identity(String code, String what, boolean sideways) {
    Identity(String code, String what) {
      this(code, what, false);
    }
  }

  String code() {
    return code;
  }

  String what() {
    return what;
  }

  Limit limit() {
    return limit;
  }

  List<Case> cases() {
    return List.of(cases);
  }

  /** Strictest lower bound of all load cases. */
  long low() {
    return low;
  }

  /** Strictest upper bound of all load cases. */
  long high() {
    return high;
  }

  boolean isKept(long sum) {
    return sum >= low && sum <= high;
  }

  long loadOf(BayLoad entry) {
    return Micrograms.of(load.applyAsDouble(entry));
  }

  /** How far the rule is missed in the worst load case: kg, or a share; 0 if it is kept. */
  double missedBy(long sum, long addedMass) {
    double worst = 0;
    for (Case loadCase : cases) {
      long missed = Math.max(loadCase.low() - sum, sum - loadCase.high());
      if (missed > 0) {
        worst = Math.max(worst, missed / per(loadCase, addedMass) / leverM);
      }
    }
    return worst;
  }

  /**
   * The least that a sum can miss the rule by, if it lies whole steps from {@code sum}; never more
   * than that, whatever the rounding.
   */
  double leastMissed(long sum, long step, long mostAddedMass) {
    double worst = 0;
    for (Case loadCase : cases) {
      double missed = (1 - 1e-12) * leastMissed(sum, step, loadCase);
      worst = Math.max(worst, missed / per(loadCase, mostAddedMass) / leverM);
    }
    return worst;
  }

  private static long leastMissed(long sum, long step, Case loadCase) {
    long below = loadCase.low() - sum;
    long above = sum - loadCase.high();
    if (step == 0) {
      return Math.max(0, Math.max(below, above));
    }
    boolean fits = Math.floorMod(-below, step) <= loadCase.high() - loadCase.low();
    return fits ? 0 : Math.min(Math.floorMod(below, step), Math.floorMod(above, step));
  }

  private double per(Case loadCase, long addedMass) {
    return limit.share() ? (double) (loadCase.baseMass() + addedMass) : 1e9;
  }

  /** Least sum that may miss the rule by no more; rounded outwards. */
  long lowFor(double missed, long mostAddedMass) {
    long bound = -Micrograms.UNBOUNDED;
    for (Case loadCase : cases) {
      bound = Math.max(bound, loadCase.low() - slack(missed, loadCase, mostAddedMass));
    }
    return bound;
  }

  /** Largest sum that may miss the rule by no more; rounded outwards. */
  long highFor(double missed, long mostAddedMass) {
    long bound = Micrograms.UNBOUNDED;
    for (Case loadCase : cases) {
      bound = Math.min(bound, loadCase.high() + slack(missed, loadCase, mostAddedMass));
    }
    return bound;
  }

  private long slack(double missed, Case loadCase, long mostAddedMass) {
    double slack = missed * per(loadCase, mostAddedMass) * leverM * (1 + 1e-12) + 1;
    return missed == 0 ? 0 : (long) Math.min((double) Micrograms.UNBOUNDED, slack);
  }
}
