package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.NEWTON;

import org.wattwright.check.Figure;

/** What each fixing of a group can carry, in each of its modes. */
final class FixingShares {
  private static final FixingMode[] MODES = FixingMode.values();

  private final FixingGroup group;
  private final InteractionRule rule;
  private final double[] shearN;
  private final double[] tensionN;
  private final double[] bearingN;
  private final double[] pullOutN;

  /** A fixing of unknown panel has no limit there; its checks say so elsewhere. */
  FixingShares(FixingGroup group, InteractionRule rule) {
    this.group = group;
    this.rule = rule;
    int count = group.fixings().size();
    this.shearN = new double[count];
    this.tensionN = new double[count];
    this.bearingN = new double[count];
    this.pullOutN = new double[count];
    for (int i = 0; i < count; i++) {
      Fixing fixing = group.fixings().get(i);
      Bolt bolt = fixing.bolt();
      shearN[i] = bolt.shearN();
      tensionN[i] = bolt.tensionN();
      bearingN[i] = fixing.panel().map(p -> p.bearingN(bolt)).orElse(Double.POSITIVE_INFINITY);
      pullOutN[i] = fixing.panel().map(p -> p.pullOutN(bolt)).orElse(Double.POSITIVE_INFINITY);
    }
  }

  double share(int i, FixingMode mode, FixingGroup.Held held) {
    double shear = held.shear(i);
    double tension = Math.max(0, held.tension(i));
    return switch (mode) {
      case BOLT_SHEAR -> shear / shearN[i];
      case BOLT_TENSION -> tension / tensionN[i];
      case BOLT_COMBINED -> rule.loadShare(shear / shearN[i], tension / tensionN[i]);
      case PANEL_BEARING -> shear / bearingN[i];
      case PANEL_PULL_OUT -> tension / pullOutN[i];
    };
  }

  double highest(FixingGroup.Held held) {
    double highest = 0;
    for (int i = 0; i < shearN.length; i++) {
      for (FixingMode mode : MODES) {
        highest = Math.max(highest, share(i, mode, held));
      }
    }
    return highest;
  }

  /** Most that all fixings together can carry in their plane: a bound no pattern can beat. */
  double mostShearN() {
    double sum = 0;
    for (int i = 0; i < shearN.length; i++) {
      sum += Math.min(shearN[i], bearingN[i]);
    }
    return sum;
  }

  FixingUse use(int i, FixingMode mode, LoadDirection direction, FixingGroup.Held held) {
    double share = share(i, mode, held);
    String name = group.fixings().get(i).name();
    if (mode == FixingMode.BOLT_COMBINED) {
      double tension = Math.max(0, held.tension(i));
      Figure actual = Figure.number(rule.value(held.shear(i) / shearN[i], tension / tensionN[i]));
      return new FixingUse(name, direction, mode, actual, Figure.number(1), share);
    }
    boolean pull = mode == FixingMode.BOLT_TENSION || mode == FixingMode.PANEL_PULL_OUT;
    double loadN = pull ? Math.max(0, held.tension(i)) : held.shear(i);
    return new FixingUse(
        name,
        direction,
        mode,
        Figure.ofSi(loadN, NEWTON),
        Figure.ofSi(resistanceN(i, mode), NEWTON),
        share);
  }

  private double resistanceN(int i, FixingMode mode) {
    return switch (mode) {
      case BOLT_SHEAR -> shearN[i];
      case BOLT_TENSION -> tensionN[i];
      case PANEL_BEARING -> bearingN[i];
      case PANEL_PULL_OUT -> pullOutN[i];
      case BOLT_COMBINED -> throw new IllegalArgumentException("no single resistance");
    };
  }
}
