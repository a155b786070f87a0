package org.wattwright.battery;

import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.wattwright.units.StateOfCharge;

/**
 * A fuller string that empties into another, on plain doubles in SI.
 *
 * <p>Against the charge moved, open-circuit voltages and resistances are straight between the
 * points of the tables. Each {@link Piece} between two such points is solved by itself.
 */
final class EqualisingCircuit {
  private static final int POINTS = 16;

  private final Side source;
  private final Side sink;
  private final double leadOhm;

  EqualisingCircuit(Side source, Side sink, double leadOhm) {
    this.source = source;
    this.sink = sink;
    this.leadOhm = leadOhm;
  }

  /** A string in its state; the direction says which way its current flows. */
  record Side(SeriesString string, PackState state, Direction direction) {
    StringModel model() {
      return new StringModel(string);
    }

    double capacityC() {
      return string.capacityC();
    }

    /** State of charge after a charge has moved. */
    double socAfter(double movedC) {
      double change = movedC / capacityC();
      double soc = direction == Direction.DISCHARGE ? state.soc() - change : state.soc() + change;
      return Math.max(0, Math.min(1, soc));
    }

    /** Charge that can still move until this side is empty or full. */
    double roomC() {
      return capacityC() * (direction == Direction.DISCHARGE ? state.soc() : 1 - state.soc());
    }

    private StringModel.State stateAfter(double movedC) {
      return new StringModel.State(socAfter(movedC), state.temperatureK());
    }

    double openCircuitV(double movedC) {
      return model().openCircuitV(stateAfter(movedC));
    }

    double ohm(double movedC) {
      return model().resistanceOhm(stateAfter(movedC), new Load(direction, 0));
    }

    /** Highest state of charge at which the open-circuit voltage is at most a value. */
    StateOfCharge highestAtMost(double limitV) {
      TreeSet<Double> socs = new TreeSet<>(Set.of(0.0, 1.0));
      for (SeriesString.Group group : string.groups()) {
        for (double soc : group.module().cell().openCircuit().table().rowAxis()) {
          socs.add(soc);
        }
      }
      double lower = 0;
      double lowerV = restV(0);
      for (double upper : socs) {
        double upperV = restV(upper);
        if (upperV > limitV) {
          double share = Math.max(0, (limitV - lowerV) / (upperV - lowerV));
          return StateOfCharge.of(upper == 0 ? 0 : lower + share * (upper - lower));
        }
        lower = upper;
        lowerV = upperV;
      }
      return StateOfCharge.FULL;
    }

    private double restV(double soc) {
      return model().openCircuitV(new StringModel.State(soc, state.temperatureK()));
    }

    double boundA() {
      return bound().currentA();
    }

    StringModel.CurrentBound bound() {
      return model()
          .bound(StringModel.State.of(state), new Load(direction, Double.POSITIVE_INFINITY));
    }

    /** Charges moved at which a table of this side has a point. */
    void addPoints(NavigableSet<Double> movedC) {
      for (SeriesString.Group group : string.groups()) {
        Cell cell = group.module().cell();
        addPoints(cell.openCircuit().table().rowAxis(), movedC);
        addPoints(cell.resistance(direction).table().rowAxis(), movedC);
      }
    }

    private void addPoints(double[] socs, NavigableSet<Double> movedC) {
      for (double soc : socs) {
        double away = direction == Direction.DISCHARGE ? state.soc() - soc : soc - state.soc();
        if (away > 0) {
          movedC.add(away * capacityC());
        }
      }
    }
  }

  double differenceV(double movedC) {
    return source.openCircuitV(movedC) - sink.openCircuitV(movedC);
  }

  double ohm(double movedC) {
    return source.ohm(movedC) + sink.ohm(movedC) + leadOhm;
  }

  double initialA() {
    return differenceV(0) / ohm(0);
  }

  double roomC() {
    return Math.min(source.roomC(), sink.roomC());
  }

  /** What moves until the voltages meet, or all there is room for if they do not. */
  record End(double movedC, double heatJ, boolean voltagesMeet) {}

  /** Heat = ∫(difference of open-circuit voltage) dq. */
  End end() {
    double heatJ = 0;
    double fromC = 0;
    double fromV = differenceV(0);
    if (!(fromV > 0)) {
      return new End(0, 0, true);
    }
    for (double toC : points()) {
      double toV = differenceV(toC);
      if (!(toV > 0)) {
        double lastC = (toC - fromC) * fromV / (fromV - toV);
        return new End(fromC + lastC, heatJ + lastC * fromV / 2, true);
      }
      heatJ += (toC - fromC) * (fromV + toV) / 2;
      fromC = toC;
      fromV = toV;
    }
    return new End(roomC(), heatJ, false);
  }

  /** Ends of the pieces, in the order of charge moved, up to all there is room for. */
  private NavigableSet<Double> points() {
    TreeSet<Double> points = new TreeSet<>();
    source.addPoints(points);
    sink.addPoints(points);
    TreeSet<Double> inside = new TreeSet<>(points.headSet(roomC()));
    if (roomC() > 0) {
      inside.add(roomC());
    }
    return inside;
  }

  /** τ = R/(b1/Q1 + b2/Q2) in the first piece; infinite where both curves are flat. */
  double timeConstantS() {
    NavigableSet<Double> points = points();
    if (points.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double toC = points.first();
    double fallV = differenceV(0) - differenceV(toC);
    return fallV > 0 ? ohm(0) * toC / fallV : Double.POSITIVE_INFINITY;
  }

  /** Time until the current has fallen to a value, or a string is empty or full. */
  double timeUntilS(double currentA) {
    double timeS = 0;
    double fromC = 0;
    if (initialA() <= currentA) {
      return 0;
    }
    for (double toC : points()) {
      Piece piece = new Piece(fromC, toC);
      double stopC = piece.chargeAt(currentA);
      timeS += piece.timeS(stopC);
      if (stopC < toC) {
        return timeS;
      }
      fromC = toC;
    }
    return timeS; // a string is empty or full: no more current
  }

  /** A range of charge moved in which voltage difference and resistance are straight. */
  private final class Piece {
    private final double fromC;
    private final double toC;
    private final double fromV;
    private final double toV;
    private final double fromOhm;
    private final double toOhm;

    Piece(double fromC, double toC) {
      this.fromC = fromC;
      this.toC = toC;
      fromV = differenceV(fromC);
      toV = differenceV(toC);
      fromOhm = ohm(fromC);
      toOhm = ohm(toC);
    }

    /** Charge moved at which the current is reached, V(q) = I·R(q); the end if it is not. */
    double chargeAt(double currentA) {
      double fromExcessV = fromV - currentA * fromOhm;
      double toExcessV = toV - currentA * toOhm;
      return toExcessV < 0 ? fromC + (toC - fromC) * fromExcessV / (fromExcessV - toExcessV) : toC;
    }

    /** ∫R/V dq, over ln V where V falls, so that the integrand stays smooth. */
    double timeS(double stopC) {
      double slopeVPerC = (toV - fromV) / (toC - fromC);
      double stopV = fromV + slopeVPerC * (stopC - fromC);
      double slopeOhmPerC = (toOhm - fromOhm) / (toC - fromC);
      if (!(stopV < fromV)) {
        return (stopC - fromC) * (fromOhm + slopeOhmPerC * (stopC - fromC) / 2) / fromV;
      }
      GaussIntegrator rule =
          new GaussIntegratorFactory().legendre(POINTS, Math.log(stopV), Math.log(fromV));
      return rule.integrate(
          lnV -> {
            double movedC = (Math.exp(lnV) - fromV) / slopeVPerC;
            return (fromOhm + slopeOhmPerC * movedC) / -slopeVPerC;
          });
    }
  }
}
