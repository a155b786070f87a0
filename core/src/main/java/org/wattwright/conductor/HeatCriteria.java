package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.profile.Profile;

/** How hot the conductor itself becomes: steadily, by another method, over a profile. */
final class HeatCriteria {
  private final CandidateCase of;
  private final SizingDuty duty;
  private final List<Finding> findings;

  HeatCriteria(CandidateCase of, List<Finding> findings) {
    this.of = of;
    this.duty = of.duty();
    this.findings = findings;
  }

  /**
   * Hottest conductor temperature in K; negative infinity if it is unknown, positive if none is
   * steady.
   */
  double hottestK() {
    double steadyK = continuousTemperatureK();
    ampacity();
    return Math.max(steadyK, profilePeakK());
  }

  private double continuousTemperatureK() {
    SizingCriterion criterion = SizingCriterion.CONTINUOUS_TEMPERATURE;
    boolean isCriterion = duty.continuousA() != null;
    SteadyHeating heating = of.heating();
    if (heating == null) {
      if (isCriterion) {
        findings.add(Finding.notChecked(criterion, of.heatTerms(), of.cable().missingGeometry()));
      }
      return Double.NEGATIVE_INFINITY;
    }
    recordShare();
    double conductorK =
        heating
            .atSi(of.worstA(), of.recorder())
            .fold(SteadyState::conductorK, none -> Double.POSITIVE_INFINITY);
    if (isCriterion) {
      addTemperature(criterion, conductorK, of.heatTerms());
    }
    return conductorK;
  }

  private void addTemperature(SizingCriterion criterion, double conductorK, Finding.Terms terms) {
    double limitK = of.cable().data().limitK();
    double airK = of.installation().airK();
    findings.add(Finding.temperature(criterion, conductorK, limitK, airK, terms));
  }

  private void recordShare() {
    if (!of.recorder().isOn() || of.worstShare() == 1) {
      return;
    }
    of.recorder()
        .step("I₁", "current in the worst loaded of the parallel runs")
        .formula("I·(1 + u)/n")
        .with("I", duty.heatingA(false), AMPERE)
        .with("u", Figure.share(duty.unbalance()))
        .with("n", Figure.count(of.candidate().runs()))
        .source(Source.commonPractice("parallel runs share within ±10 %"))
        .gives(of.worstA(), AMPERE);
  }

  private void ampacity() {
    AmpacityMethod method = duty.method();
    if (method != null) {
      findings.add(
          method.ratingOf(of.cable(), of.installation()).fold(this::rated, HeatCriteria::notRated));
    }
  }

  private Finding rated(AmpacityMethod.Rated rated) {
    Finding.Terms terms = new Finding.Terms(AMPERE, false, rated.basis(), rated.source());
    return Finding.atMost(SizingCriterion.AMPACITY, of.worstA(), rated.currentA(), terms);
  }

  private static Finding notRated(AmpacityMethod.NotRated not) {
    Finding.Terms terms = new Finding.Terms(AMPERE, false, Basis.DATA_SHEET, Source.PHYSICS);
    return Finding.notChecked(SizingCriterion.AMPACITY, terms, List.of(not.missing()));
  }

  /** Peak of the repeated profile in K; negative infinity without a profile or where unknown. */
  private double profilePeakK() {
    Profile<ElectricCurrent> profile = duty.profile();
    if (profile == null) {
      return Double.NEGATIVE_INFINITY;
    }
    SizingCriterion criterion = SizingCriterion.PROFILE_PEAK_TEMPERATURE;
    SteadyHeating heating = of.heating();
    if (heating == null) {
      findings.add(Finding.notChecked(criterion, of.heatTerms(), of.cable().missingGeometry()));
      return Double.NEGATIVE_INFINITY;
    }
    double peakK = TransientHeating.of(heating).settledPeakK(profile, of.worstShare());
    // The swing leans on the heat that the insulation stores.
    Basis basis =
        heating.basis().and(of.cable().data().insulation().properties().heatCapacityBasis());
    addTemperature(
        criterion, peakK, new Finding.Terms(CELSIUS, false, basis, SteadyHeating.BALANCE));
    recordPeak(peakK, basis);
    return peakK;
  }

  private void recordPeak(double peakK, Basis basis) {
    if (of.recorder().isOn()) {
      of.recorder()
          .step("θ_p", "highest conductor temperature over the repeated profile")
          .formula("peak of C·dθ/dt = I(t)²·R′(θ) − q(θ)")
          .basis(basis)
          .source(SteadyHeating.BALANCE)
          .gives(peakK, CELSIUS);
    }
  }
}
