package org.wattwright.conductor;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** What a circuit asks of its conductors, in SI; null where nothing is asked. */
record SizingDuty(
    @Nullable Installation installation,
    @Nullable Double continuousA,
    @Nullable Profile<ElectricCurrent> profile,
    @Nullable Double lengthM,
    @Nullable Double returnM,
    List<Joint> joints,
    @Nullable Double dropV,
    @Nullable Double dropA,
    @Nullable FaultDuty fault,
    @Nullable Double terminalK,
    @Nullable Double bendM,
    @Nullable Double areaM2,
    @Nullable Double voltageV,
    @Nullable AmpacityMethod method,
    double unbalance,
    Wiring wiring) {

  static final SizingDuty NOTHING =
      new SizingDuty(
          null,
          null,
          null,
          null,
          null,
          List.of(),
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          0.1,
          Wiring.PAIR);

  /** Highest temperature that a terminal allows: the circuit's limit and those of the joints. */
  @Nullable Double lowestTerminalK() {
    @Nullable Double lowest = terminalK;
    for (Joint joint : joints) {
      @Nullable Double limitK = joint.limitK();
      if (limitK != null && (lowest == null || limitK < lowest)) {
        lowest = limitK;
      }
    }
    return lowest;
  }

  /** Current at which the voltage drop counts. */
  double dropCurrentA() {
    if (dropA != null) {
      return dropA;
    }
    return heatingA(true);
  }

  /** Continuous current; without one the profile's peak or RMS. */
  double heatingA(boolean peak) {
    if (continuousA != null) {
      return continuousA;
    }
    if (profile == null) {
      return 0;
    }
    return Kind.CURRENT.siValueOf(peak ? profile.peak() : profile.rms());
  }

  /** The run that a candidate makes; a metre where the length does not matter. */
  ConductorRun run(Candidate candidate) {
    double outM = lengthM == null ? 1 : lengthM;
    double backM = returnM == null ? outM : returnM;
    return new ConductorRun(candidate.cable(), outM, backM, candidate.runs(), joints).wired(wiring);
  }

  SizingDuty withInstallation(Installation value) {
    return new SizingDuty(
        value,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withContinuousA(double value) {
    return new SizingDuty(
        installation,
        value,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withProfile(Profile<ElectricCurrent> value) {
    return new SizingDuty(
        installation,
        continuousA,
        value,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withLengths(double out, @Nullable Double back) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        out,
        back,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withJoints(List<Joint> value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        value,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withDrop(double valueV, @Nullable Double atA) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        valueV,
        atA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withFault(FaultDuty value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        value,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withTerminalK(double value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        value,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withBendM(double value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        value,
        areaM2,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withAreaM2(double value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        value,
        voltageV,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withVoltageV(double value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        value,
        method,
        unbalance,
        wiring);
  }

  SizingDuty withMethod(AmpacityMethod value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        value,
        unbalance,
        wiring);
  }

  SizingDuty withUnbalance(double value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        value,
        wiring);
  }

  SizingDuty withWiring(Wiring value) {
    return new SizingDuty(
        installation,
        continuousA,
        profile,
        lengthM,
        returnM,
        joints,
        dropV,
        dropA,
        fault,
        terminalK,
        bendM,
        areaM2,
        voltageV,
        method,
        unbalance,
        value);
  }
}
