package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_PER_METRE_KELVIN;

import java.util.LinkedHashSet;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;

/**
 * How hot the hottest terminal becomes: the conductor's temperature and the joint's own rise.
 *
 * <p>Without a thermal resistance from the maker the cable is taken as an endless fin that carries
 * the joint's heat away. That model is from memory, so that the check rests on an estimate.
 */
final class TerminalCriterion {
  private static final Source FIN =
      Source.literature(
          "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer",
          "infinite fin, from memory");

  private final CandidateCase of;
  private final SizingDuty duty;
  private final double conductorK;

  TerminalCriterion(CandidateCase of, double conductorK) {
    this.of = of;
    this.duty = of.duty();
    this.conductorK = conductorK;
  }

  /** The terminal that uses most of its own limit speaks for all; null if none has a limit. */
  @Nullable Finding finding() {
    @Nullable Double lowestK = duty.lowestTerminalK();
    if (lowestK == null) {
      return null;
    }
    SteadyHeating heating = of.heating();
    if (heating == null) {
      return Finding.notChecked(
          SizingCriterion.TERMINAL_TEMPERATURE, terms(), of.cable().missingGeometry());
    }
    @Nullable Finding worst = null;
    for (Joint joint : new LinkedHashSet<>(duty.joints())) {
      double limitK = lower(joint.limitK(), duty.terminalK(), lowestK);
      Finding finding = at(jointK(joint, heating), limitK);
      worst = worst == null || finding.use() > worst.use() ? finding : worst;
    }
    return worst != null ? worst : at(conductorK, lowestK);
  }

  private Finding at(double temperatureK, double limitK) {
    double airK = of.installation().airK();
    return Finding.temperature(
        SizingCriterion.TERMINAL_TEMPERATURE, temperatureK, limitK, airK, terms());
  }

  private Finding.Terms terms() {
    Basis basis = of.heatTerms().basis();
    for (Joint joint : duty.joints()) {
      basis = basis.and(basis(joint));
    }
    return new Finding.Terms(CELSIUS, false, basis, Source.dataSheet("terminal"));
  }

  private static Basis basis(Joint joint) {
    return joint.thermalKPerW() == null ? Basis.ESTIMATED : joint.basis();
  }

  private static double lower(@Nullable Double first, @Nullable Double second, double none) {
    if (first == null) {
      return second == null ? none : second;
    }
    return second == null ? first : Math.min(first, second);
  }

  /** The conductor's temperature and the joint's own rise; infinite where there is none. */
  private double jointK(Joint joint, SteadyHeating heating) {
    if (!(conductorK < Double.POSITIVE_INFINITY)) {
      return Double.POSITIVE_INFINITY;
    }
    double currentA = duty.heatingA(false);
    double heatW = currentA * currentA * joint.highOhm();
    @Nullable Double thermalKPerW = joint.thermalKPerW();
    if (thermalKPerW != null) {
      return Math.max(conductorK, of.installation().airK() + heatW * thermalKPerW);
    }
    double conductance = heating.localConductanceWPerMK(of.worstA(), conductorK);
    return conductance > 0
        ? conductorK + finRiseK(joint, heatW, conductance)
        : Double.POSITIVE_INFINITY;
  }

  private double finRiseK(Joint joint, double heatW, double conductance) {
    ConductorSize size = of.cable().size();
    int runs = of.candidate().runs();
    double conductivity = size.material().thermalConductivityWPerMK();
    double riseK = heatW / (runs * Math.sqrt(conductance * conductivity * size.areaM2()));
    if (of.recorder().isOn()) {
      of.recorder()
          .step("ΔT_j", "rise of " + joint.name() + " over the cable, which cools it as a fin")
          .formula("P/√(g·λ·A)/n")
          .with("P", heatW, WATT)
          .with("g", conductance, WATT_PER_METRE_KELVIN)
          .with("λ", conductivity, WATT_PER_METRE_KELVIN)
          .with("A", Figure.of(size.area(), SQUARE_MILLIMETRE))
          .with("n", Figure.count(runs))
          .basis(Basis.ESTIMATED)
          .source(FIN)
          .gives(riseK, KELVIN_OF_DIFFERENCE);
    }
    return riseK;
  }
}
