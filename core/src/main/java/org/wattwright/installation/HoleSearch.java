package org.wattwright.installation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Looks at every choice of holes and bolts, fewest holes first. */
final class HoleSearch {
  private static final double ROUNDING = 1 + 1e-12;

  private final HoleSolver solver;
  private final List<List<Fixing>> options;
  private final AccelerationRules rules;
  private final List<Fixing> chosen = new ArrayList<>();
  private @Nullable Choice best;
  private @Nullable Choice nearest;
  private long seen;

  HoleSearch(HoleSolver solver, List<List<Fixing>> options, AccelerationRules rules) {
    this.solver = solver;
    this.options = options;
    this.rules = rules;
  }

  private record Choice(Retention retention, double areaM2, double share) {}

  HoleChoice run() {
    for (int count = solver.least(); count <= options.size() && best == null; count++) {
      choose(0, count);
    }
    Choice found = best != null ? best : nearest;
    return new HoleChoice(
        best != null, found == null ? null : found.retention(), Math.toIntExact(seen));
  }

  private void choose(int hole, int left) {
    if (left == 0) {
      judge();
      return;
    }
    if (options.size() - hole < left) {
      return;
    }
    for (Fixing fixing : options.get(hole)) {
      chosen.add(fixing);
      choose(hole + 1, left - 1);
      chosen.remove(chosen.size() - 1);
    }
    choose(hole + 1, left);
  }

  private void judge() {
    seen++;
    double areaM2 = chosen.stream().mapToDouble(f -> f.bolt().thread().nominalStressAreaM2()).sum();
    if (best != null && areaM2 > best.areaM2() * ROUNDING) {
      return;
    }
    Retention retention = solver.retention(chosen, rules);
    RetentionLoads loads = retention.loads();
    FixingShares shares = new FixingShares(retention.group(), retention.interaction());
    boolean hopeless = nearest != null && nearest.share() < shareAtBest(loads, shares.mostShearN());
    if (hopeless) {
      return;
    }
    double share = loads.highestShare(retention.group(), retention.interaction());
    Choice choice = new Choice(retention, areaM2, share);
    if (share <= 1 && isBetter(choice, best)) {
      best = choice;
    }
    if (share < (nearest == null ? Double.POSITIVE_INFINITY : nearest.share())) {
      nearest = choice;
    }
  }

  /** No pattern of these bolts gets below this share; above 1 it cannot hold. */
  private static double shareAtBest(RetentionLoads loads, double mostShearN) {
    double most = 0;
    for (RetentionLoads.Load load : loads.loads()) {
      most = Math.max(most, load.inPlanePerKg() * loads.massKg() / mostShearN);
    }
    return most > ROUNDING ? most : 0;
  }

  private static boolean isBetter(Choice choice, @Nullable Choice than) {
    if (than == null) {
      return true;
    }
    boolean lighter = choice.areaM2() * ROUNDING < than.areaM2();
    return lighter
        || (choice.areaM2() <= than.areaM2() * ROUNDING && choice.share() < than.share());
  }
}
