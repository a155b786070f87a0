package org.wattwright.protection;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;

/**
 * A fuse at a voltage as the search sees it, in SI.
 *
 * <p>The curve is asked of {@link ClearingSolver} at every current where it bends or jumps. Between
 * them it is straight on log–log paper, or bows below the chord where arcing is added to melting,
 * so that the chord lies on the safe side. Where a rule would make a higher current take longer,
 * the longer time counts for all lower currents. Times are virtual, I²t by I², as the cable's are.
 *
 * @param clearing longest clearing time against prospective current, as far as it is known
 * @param heat the same for what is let through with capacitors besides, I²t by I²; the chord is on
 *     the safe side here too, since roots that add bow below it
 * @param minimumBreakingA least current that it may break
 * @param breakingA highest current that it may break
 */
record FuseLine(TimeCurve clearing, TimeCurve heat, double minimumBreakingA, double breakingA) {
  private static final double SAME = 1e-10;

  /** The fuse at a voltage; null if nothing is known of its clearing. */
  static @Nullable FuseLine of(Fuse fuse, double voltageV, CapacitorInfeed infeed) {
    FuseData data = fuse.data();
    Double breakingA = data.breakingCapacityA();
    if (breakingA == null) {
      return null;
    }
    double minimumA = data.minimumBreakingA() == null ? 0 : data.minimumBreakingA();
    Points points = points(data, voltageV, minimumA, breakingA);
    if (points.size < 2) {
      return null;
    }
    TimeCurve clearing = points.curve(a2s -> a2s);
    TimeCurve heat =
        infeed.jouleA2S() == 0
            ? clearing
            : points.curve(a2s -> infeed.throughA2S(data, voltageV, a2s));
    return new FuseLine(clearing, heat, minimumA, breakingA);
  }

  private static Points points(FuseData data, double voltageV, double minimumA, double breakingA) {
    ClearingSolver solver = new ClearingSolver(data, voltageV);
    double[] atA = asked(solver, data, minimumA, breakingA);
    Points points = new Points(atA.length);
    for (double currentA : atA) {
      double totalA2S = letThroughA2S(solver, voltageV, currentA);
      if (totalA2S > 0) {
        points.add(currentA, totalA2S);
      } else {
        // Only the upper stretch counts where the data sheet is silent in between.
        points.size = 0;
      }
    }
    return points;
  }

  /** Currents and I²t while they are asked for. */
  private static final class Points {
    private final double[] currentsA;
    private final double[] integralsA2S;
    private int size;

    Points(int most) {
      currentsA = new double[most];
      integralsA2S = new double[most];
    }

    void add(double currentA, double totalA2S) {
      boolean isNew =
          size == 0
              || !isSame(
                  currentsA[size - 1],
                  integralsA2S[size - 1] / (currentsA[size - 1] * currentsA[size - 1]),
                  currentA,
                  totalA2S / (currentA * currentA));
      if (isNew) {
        currentsA[size] = currentA;
        integralsA2S[size++] = totalA2S;
      }
    }

    /** Never rising: where arcing begins to count, a rule steps up that no link follows. */
    TimeCurve curve(DoubleUnaryOperator through) {
      double[] timesS = new double[size];
      double longestS = 0;
      for (int i = size - 1; i >= 0; i--) {
        double timeS = through.applyAsDouble(integralsA2S[i]) / (currentsA[i] * currentsA[i]);
        longestS = Math.max(longestS, timeS);
        timesS[i] = longestS;
      }
      return TimeCurve.of(Arrays.copyOf(currentsA, size), timesS);
    }
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
    double firstA = minimumA * (1 + ClearingSolver.BESIDE);
    double lastA = breakingA * (1 - ClearingSolver.BESIDE);
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
    asked.add(currentA * (1 - ClearingSolver.BESIDE));
    asked.add(currentA * (1 + ClearingSolver.BESIDE));
  }

  /** Currents of which the curve says something and that the fuse may break. */
  CurrentRanges breaks() {
    return CurrentRanges.of(
        Math.max(clearing.lowestA(), minimumBreakingA), Math.min(clearing.highestA(), breakingA));
  }
}
