package org.wattwright.protection;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;

/**
 * A fuse at a voltage as the search sees it, in SI.
 *
 * <p>The curve is asked of {@link ClearingSolver} at every current where it bends or jumps. Between
 * them it is straight on log–log paper, or bows below the chord where arcing is added to melting,
 * so that the chord lies on the safe side. Times are virtual, I²t by I², as the cable's are.
 *
 * @param clearing longest clearing time against prospective current, as far as it is known, with
 *     what capacitors add
 * @param minimumBreakingA least current that it may break
 * @param breakingA highest current that it may break
 */
record FuseLine(TimeCurve clearing, double minimumBreakingA, double breakingA) {
  /** A step is asked for on both sides, this far apart. */
  private static final double BESIDE = 1e-12;

  private static final double SAME = 1e-10;

  /** The fuse at a voltage; null if nothing is known of its clearing. */
  static @Nullable FuseLine of(Fuse fuse, double voltageV, CapacitorInfeed infeed) {
    FuseData data = fuse.data();
    Double breakingA = data.breakingCapacityA();
    if (breakingA == null) {
      return null;
    }
    double minimumA = data.minimumBreakingA() == null ? 0 : data.minimumBreakingA();
    ClearingSolver solver = new ClearingSolver(data, voltageV);
    double[] atA = asked(solver, data, minimumA, breakingA);
    double[] currentsA = new double[atA.length];
    double[] timesS = new double[atA.length];
    int size = 0;
    for (double currentA : atA) {
      double aloneA2S = letThroughA2S(solver, voltageV, currentA);
      if (aloneA2S > 0) {
        double totalA2S = infeed.throughA2S(data, voltageV, aloneA2S);
        double timeS = totalA2S / (currentA * currentA);
        if (size == 0 || !isSame(currentsA[size - 1], timesS[size - 1], currentA, timeS)) {
          currentsA[size] = currentA;
          timesS[size++] = timeS;
        }
      } else {
        // Only the upper stretch counts where the data sheet is silent in between.
        size = 0;
      }
    }
    return size < 2
        ? null
        : new FuseLine(
            TimeCurve.of(Arrays.copyOf(currentsA, size), Arrays.copyOf(timesS, size)),
            minimumA,
            breakingA);
  }

  /** Both sides of a bend without a step are one point. */
  private static boolean isSame(double oneA, double oneS, double otherA, double otherS) {
    return otherA <= oneA * (1 + SAME) && Math.abs(otherS - oneS) <= oneS * SAME;
  }

  /** I²t let through in a loop without inductance; 0 if it is not cleared or not known. */
  private static double letThroughA2S(ClearingSolver solver, double voltageV, double currentA) {
    FaultCurrent.Loop loop = new FaultCurrent.Loop(voltageV, voltageV / currentA, 0);
    return solver.solve(new FaultCurrent(loop, Basis.DATA_SHEET, List.of()))
            instanceof Clearing.Cleared cleared
        ? Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough())
        : 0;
  }

  /** Where the curve may bend or jump, up to the breaking capacity. */
  private static double[] asked(
      ClearingSolver solver, FuseData data, double minimumA, double breakingA) {
    // The prospective current is taken from a voltage and a resistance: stay inside the limits.
    double firstA = minimumA * (1 + BESIDE);
    double lastA = breakingA * (1 - BESIDE);
    Set<Double> asked = new TreeSet<>(solver.bendsBetween(firstA, lastA));
    Double meltA2S = data.preArcingA2S();
    if (meltA2S != null) {
      addBeside(asked, Math.sqrt(meltA2S / Melting.ADIABATIC_S));
    }
    asked.add(firstA);
    asked.add(lastA);
    return asked.stream()
        .mapToDouble(Double::doubleValue)
        .filter(currentA -> currentA > 0 && currentA >= firstA && currentA <= lastA)
        .toArray();
  }

  private static void addBeside(Set<Double> asked, double currentA) {
    asked.add(currentA * (1 - BESIDE));
    asked.add(currentA * (1 + BESIDE));
  }

  /** Currents of which the curve says something and that the fuse may break. */
  CurrentRanges breaks() {
    return CurrentRanges.of(
        Math.max(clearing.lowestA(), minimumBreakingA), Math.min(clearing.highestA(), breakingA));
  }
}
