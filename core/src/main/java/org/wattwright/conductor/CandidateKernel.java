package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.OHM_PER_KILOMETRE;
import static org.wattwright.units.WorkshopUnits.PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_PER_METRE_KELVIN;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.profile.Profile;
import org.wattwright.units.NamedUnit;

/** Works out every criterion of one candidate, and tells a recorder how. */
final class CandidateKernel {
  private static final Source FIN =
      Source.literature(
          "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer",
          "infinite fin, from memory");

  private final SizingDuty duty;
  private final Installation installation;
  private final Candidate candidate;
  private final Cable cable;
  private final Recorder recorder;
  private final List<Finding> findings = new ArrayList<>();

  /** Share of the circuit's current in the worst loaded run. */
  private final double worstShare;

  private final @Nullable SteadyHeating heating;

  private CandidateKernel(
      SizingDuty duty, Installation installation, Candidate candidate, Recorder recorder) {
    this.duty = duty;
    this.installation = installation;
    this.candidate = candidate;
    this.cable = candidate.cable();
    this.recorder = recorder;
    int runs = candidate.runs();
    this.worstShare = runs == 1 ? 1 : (1 + duty.unbalance()) / runs;
    this.heating = cable.geometries().isEmpty() ? null : SteadyHeating.of(cable, installation);
  }

  static List<Finding> evaluate(
      SizingDuty duty, Installation installation, Candidate candidate, Recorder recorder) {
    return new CandidateKernel(duty, installation, candidate, recorder).evaluate();
  }

  private List<Finding> evaluate() {
    double steadyK = continuousTemperatureK();
    ampacity();
    double peakK = profilePeakK();
    double hottestK = Math.max(steadyK, peakK);
    terminal(hottestK);
    voltageDrop(hottestK);
    shortCircuit();
    bendRadius();
    mechanicalMinimum();
    voltageRating();
    return findings;
  }

  private Finding.Terms terms(NamedUnit<?> unit, Basis basis, Source source) {
    return new Finding.Terms(unit, false, basis, source);
  }

  private Finding.Terms heatTerms() {
    Basis basis = heating == null ? cable.basis() : heating.basis();
    return terms(CELSIUS, basis, SteadyHeating.BALANCE);
  }

  private void add(Finding finding) {
    findings.add(finding);
  }

  /** Conductor temperature in K at the heating current; negative infinity if it is unknown. */
  private double continuousTemperatureK() {
    double currentA = duty.heatingA(false) * worstShare;
    boolean isCriterion = duty.continuousA() != null;
    if (heating == null) {
      if (isCriterion) {
        add(
            Finding.notChecked(
                Criterion.CONTINUOUS_TEMPERATURE, heatTerms(), cable.missingGeometry()));
      }
      return Double.NEGATIVE_INFINITY;
    }
    if (recorder.isOn() && worstShare != 1) {
      recordShare(currentA);
    }
    double conductorK =
        heating
            .atSi(currentA, recorder)
            .fold(SteadyState::conductorK, none -> Double.POSITIVE_INFINITY);
    if (isCriterion) {
      add(
          Finding.temperature(
              Criterion.CONTINUOUS_TEMPERATURE,
              conductorK,
              cable.data().limitK(),
              installation.airK(),
              heatTerms()));
    }
    return conductorK;
  }

  private void recordShare(double currentA) {
    recorder
        .step("I₁", "current in the worst loaded of the parallel runs")
        .formula("I·(1 + u)/n")
        .with("I", duty.heatingA(false), AMPERE)
        .with("u", Figure.share(duty.unbalance()))
        .with("n", Figure.count(candidate.runs()))
        .source(Source.commonPractice("parallel runs share within ±10 %"))
        .gives(currentA, AMPERE);
  }

  private void ampacity() {
    AmpacityMethod method = duty.method();
    if (method == null) {
      return;
    }
    double currentA = duty.heatingA(false) * worstShare;
    add(
        method
            .ratingOf(cable, installation)
            .fold(
                rated ->
                    Finding.atMost(
                        Criterion.AMPACITY,
                        currentA,
                        rated.currentA(),
                        terms(AMPERE, rated.basis(), rated.source())),
                not ->
                    Finding.notChecked(
                        Criterion.AMPACITY,
                        terms(AMPERE, Basis.DATA_SHEET, Source.PHYSICS),
                        List.of(not.missing()))));
  }

  /** Peak of the repeated profile in K; negative infinity without a profile or where unknown. */
  private double profilePeakK() {
    Profile<ElectricCurrent> profile = duty.profile();
    if (profile == null) {
      return Double.NEGATIVE_INFINITY;
    }
    Criterion criterion = Criterion.PROFILE_PEAK_TEMPERATURE;
    if (heating == null) {
      add(Finding.notChecked(criterion, heatTerms(), cable.missingGeometry()));
      return Double.NEGATIVE_INFINITY;
    }
    double peakK = TransientHeating.of(heating).settledPeakK(profile, worstShare);
    double airK = installation.airK();
    add(Finding.temperature(criterion, peakK, cable.data().limitK(), airK, heatTerms()));
    if (recorder.isOn()) {
      recorder
          .step("θ_p", "highest conductor temperature over the repeated profile")
          .formula("peak of C·dθ/dt = I(t)²·R′(θ) − q(θ)")
          .basis(heatTerms().basis())
          .source(SteadyHeating.BALANCE)
          .gives(peakK, CELSIUS);
    }
    return peakK;
  }

  private void terminal(double conductorK) {
    @Nullable Double limitK = duty.lowestTerminalK();
    if (limitK == null) {
      return;
    }
    Criterion criterion = Criterion.TERMINAL_TEMPERATURE;
    Basis basis = heatTerms().basis();
    for (Joint joint : duty.joints()) {
      basis = basis.and(joint.basis());
    }
    Finding.Terms terms = terms(CELSIUS, basis, Source.dataSheet("terminal"));
    if (heating == null) {
      add(Finding.notChecked(criterion, terms, cable.missingGeometry()));
      return;
    }
    // Each joint against its own limit; the one that uses most of it speaks for all.
    @Nullable Finding worst = null;
    double airK = installation.airK();
    for (Joint joint : new LinkedHashSet<>(duty.joints())) {
      double jointK = jointK(joint, conductorK);
      double jointLimitK = lower(joint.limitK(), duty.terminalK(), limitK);
      Finding finding = Finding.temperature(criterion, jointK, jointLimitK, airK, terms);
      worst = worst == null || finding.use() > worst.use() ? finding : worst;
    }
    add(worst != null ? worst : Finding.temperature(criterion, conductorK, limitK, airK, terms));
  }

  private static double lower(@Nullable Double first, @Nullable Double second, double none) {
    if (first == null) {
      return second == null ? none : second;
    }
    return second == null ? first : Math.min(first, second);
  }

  /** The conductor's temperature and the joint's own rise; infinite where there is none. */
  private double jointK(Joint joint, double conductorK) {
    if (heating == null || !(conductorK < Double.POSITIVE_INFINITY)) {
      return Double.POSITIVE_INFINITY;
    }
    double currentA = duty.heatingA(false);
    double heatW = currentA * currentA * joint.highOhm();
    @Nullable Double thermalKPerW = joint.thermalKPerW();
    if (thermalKPerW != null) {
      return Math.max(conductorK, installation.airK() + heatW * thermalKPerW);
    }
    double conductance = heating.localConductanceWPerMK(currentA * worstShare, conductorK);
    ConductorSize size = cable.size();
    double metalWMPerK = size.material().thermalConductivityWPerMK() * size.areaM2();
    double riseK =
        conductance > 0
            ? heatW / (candidate.runs() * Math.sqrt(conductance * metalWMPerK))
            : Double.POSITIVE_INFINITY;
    if (recorder.isOn() && conductance > 0) {
      recorder
          .step("ΔT_j", "rise of " + joint.name() + " over the cable, which cools it as a fin")
          .formula("P/√(g·λ·A)/n")
          .with("P", heatW, WATT)
          .with("g", conductance, WATT_PER_METRE_KELVIN)
          .with("λ", size.material().thermalConductivityWPerMK(), WATT_PER_METRE_KELVIN)
          .with("A", Figure.of(size.area(), SQUARE_MILLIMETRE))
          .with("n", Figure.count(candidate.runs()))
          .basis(joint.basis())
          .source(FIN)
          .gives(riseK, KELVIN_OF_DIFFERENCE);
    }
    return conductorK + riseK;
  }

  private void voltageDrop(double conductorK) {
    @Nullable Double limitV = duty.dropV();
    if (limitV == null) {
      return;
    }
    // Without a known temperature the cable is taken at its limit: the most resistance it may have.
    double atK = Double.isInfinite(conductorK) ? cable.data().limitK() : conductorK;
    ConductorRun run = duty.run(candidate);
    double ohm = run.cableOhm(atK) + run.highJointsOhm();
    double dropV = duty.dropCurrentA() * ohm;
    Basis basis = run.basis();
    add(
        Finding.atMost(
            Criterion.VOLTAGE_DROP,
            dropV,
            limitV,
            terms(VOLT, basis, Source.requirement("voltage drop"))));
    if (recorder.isOn()) {
      recorder
          .step("R", "resistance of both polarities at the conductor temperature, with all joints")
          .formula("(L_out + L_back)·R′₂₀·[1 + α·(θ_c − 20 °C)]/n + ΣR_j")
          .with("L_out", run.outM(), METRE)
          .with("L_back", run.backM(), METRE)
          .with("R′₂₀", Figure.of(cable.size().resistance().value(), OHM_PER_KILOMETRE))
          .with("α", cable.size().material().coefficientPerK(), PER_KELVIN)
          .with("θ_c", atK, CELSIUS)
          .with("n", Figure.count(candidate.runs()))
          .with("ΣR_j", run.highJointsOhm(), OHM)
          .basis(basis)
          .source(cable.size().resistance().source())
          .gives(ohm, OHM);
      recorder
          .step("ΔU", "voltage drop")
          .formula("I·R")
          .with("I", duty.dropCurrentA(), AMPERE)
          .with("R", ohm, OHM)
          .basis(basis)
          .gives(dropV, VOLT);
    }
  }

  private void shortCircuit() {
    FaultDuty fault = duty.fault();
    if (fault == null) {
      return;
    }
    ConductorSize size = cable.size();
    double initialC = CELSIUS.valueOf(cable.temperatureLimit());
    double endC = CELSIUS.valueOf(cable.shortCircuitLimit());
    double withstandA2S =
        ShortCircuit.of(size.material()).withstandA2S(size.areaM2(), initialC, endC);
    double dutyA2S = fault.jouleIntegralA2S() * worstShare * worstShare;
    add(
        Finding.atMost(
            Criterion.SHORT_CIRCUIT,
            dutyA2S,
            withstandA2S,
            terms(AMPERE_SQUARED_SECOND, Basis.DATA_SHEET, ShortCircuit.ADIABATIC)
                .withNote(fault.remark())));
    if (recorder.isOn()) {
      recorder
          .step("k²S²", "joule integral that one run withstands, from its limit")
          .formula("K²·S²·ln[(θ_f + β)/(θ_i + β)]")
          .with("S", Figure.of(size.area(), SQUARE_MILLIMETRE))
          .with("θ_i", Figure.of(cable.temperatureLimit(), CELSIUS))
          .with("θ_f", Figure.of(cable.shortCircuitLimit(), CELSIUS))
          .basis(Basis.DATA_SHEET)
          .source(ShortCircuit.ADIABATIC)
          .gives(withstandA2S, AMPERE_SQUARED_SECOND);
    }
  }

  private void bendRadius() {
    @Nullable Double roomM = duty.bendM();
    if (roomM == null) {
      return;
    }
    Finding.Terms terms =
        terms(MILLIMETRE, Basis.DATA_SHEET, Source.requirement("room for the bend"));
    @Nullable Double neededM = cable.data().bendM();
    add(
        neededM == null
            ? missing(Criterion.BEND_RADIUS, terms, "Cable.minimumBendRadius")
            : Finding.atMost(Criterion.BEND_RADIUS, neededM, roomM, terms));
  }

  private void mechanicalMinimum() {
    @Nullable Double leastM2 = duty.areaM2();
    if (leastM2 != null) {
      Finding.Terms terms =
          new Finding.Terms(
              SQUARE_MILLIMETRE, true, Basis.DATA_SHEET, Source.requirement("mechanical minimum"));
      add(Finding.atLeast(Criterion.MECHANICAL_MINIMUM, cable.size().areaM2(), leastM2, terms));
    }
  }

  private void voltageRating() {
    @Nullable Double highestV = duty.voltageV();
    if (highestV == null) {
      return;
    }
    Finding.Terms terms =
        new Finding.Terms(VOLT, true, Basis.DATA_SHEET, Source.dataSheet(cable.name()));
    @Nullable Double ratingV = cable.data().voltageV();
    add(
        ratingV == null
            ? missing(Criterion.VOLTAGE_RATING, terms, "Cable.voltageRating")
            : Finding.atLeast(Criterion.VOLTAGE_RATING, ratingV, highestV, terms));
  }

  private Finding missing(Criterion criterion, Finding.Terms terms, String field) {
    return Finding.notChecked(criterion, terms, List.of(field + " of " + cable.name()));
  }
}
