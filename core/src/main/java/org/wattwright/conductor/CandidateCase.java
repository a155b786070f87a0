package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;

import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Recorder;

/**
 * One candidate in its circuit: what all its criteria start from.
 *
 * @param worstShare share of the circuit's current in the worst loaded run
 * @param heating its heat balance; null if a diameter is missing
 */
record CandidateCase(
    SizingDuty duty,
    Installation installation,
    Candidate candidate,
    Recorder recorder,
    double worstShare,
    @Nullable SteadyHeating heating) {

  static CandidateCase of(
      SizingDuty duty, Installation installation, Candidate candidate, Recorder recorder) {
    Cable cable = candidate.cable();
    int runs = candidate.runs();
    return new CandidateCase(
        duty,
        installation,
        candidate,
        recorder,
        runs == 1 ? 1 : (1 + duty.unbalance()) / runs,
        cable.geometries().isEmpty() ? null : SteadyHeating.of(cable, installation));
  }

  Cable cable() {
    return candidate.cable();
  }

  /** Continuous current in the worst loaded run. */
  double worstA() {
    return duty.heatingA(false) * worstShare;
  }

  /** Terms of a temperature that the heat balance gives. */
  Finding.Terms heatTerms() {
    Basis basis = heating == null ? cable().basis() : heating.basis();
    return new Finding.Terms(CELSIUS, false, basis, SteadyHeating.BALANCE);
  }
}
