package org.wattwright.protection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.Joint;
import org.wattwright.conductor.Wiring;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Where a circuit lies and what its conductors must fit, in SI; null where nothing is asked.
 *
 * @param backM of three phases as long as the way out
 * @param bodyReturn through the body, if the current comes back there
 * @param mostRuns null if the whole design's counts
 */
record CircuitRoute(
    @Nullable Double outM,
    @Nullable Double backM,
    Wiring wiring,
    @Nullable Joint bodyReturn,
    @Nullable Installation installation,
    Fit fit,
    List<Joint> joints,
    @Nullable Integer mostRuns)
    implements Serializable {
  /** The body is cooled as a whole: its resistance heats no terminal. */
  private static final double BODY_KELVIN_PER_WATT = 1e-9;

  /** What a cable must fit. */
  record Fit(
      @Nullable Double terminalK,
      @Nullable Double dropV,
      @Nullable Double bendM,
      @Nullable Double areaM2)
      implements Serializable {}

  CircuitRoute {
    joints = List.copyOf(joints);
  }

  static Joint body(Given<Quantity<ElectricResistance>> ohm) {
    return Joint.of("return through the body", ohm)
        .withThermalResistance(Measures.kelvinsPerWatt(BODY_KELVIN_PER_WATT));
  }

  /** Everything in the loop besides cable. */
  private List<Joint> allJoints() {
    if (bodyReturn == null) {
      return joints;
    }
    List<Joint> all = new ArrayList<>(joints);
    all.add(bodyReturn);
    return all;
  }

  /** The run of a cable; the lengths are known. */
  ConductorRun run(Cable cable, int parallelRuns) {
    return ConductorRun.of(cable, Kind.LENGTH.ofSi(outM == null ? 0 : outM))
        .withReturnLength(Kind.LENGTH.ofSi(backM == null ? 0 : backM))
        .wired(wiring)
        .withJoints(allJoints())
        .inParallel(parallelRuns);
  }

  /** The sizer that asks of a cable what the route asks. */
  ConductorSizer sizer(ConductorSizer empty) {
    ConductorSizer sizer = empty.wiring(wiring);
    if (installation != null) {
      sizer = sizer.installation(installation);
    }
    if (outM != null && backM != null) {
      sizer = sizer.lengths(Kind.LENGTH.ofSi(outM), Kind.LENGTH.ofSi(backM));
    }
    return fitted(sizer.joints(allJoints()).sharingUnbalance(CableWithstand.SHARING_UNBALANCE));
  }

  private ConductorSizer fitted(ConductorSizer running) {
    ConductorSizer sizer = running;
    if (fit.terminalK() != null) {
      sizer = sizer.terminalTemperatureAtMost(Kind.TEMPERATURE.ofSi(fit.terminalK()));
    }
    if (fit.dropV() != null) {
      sizer = sizer.voltageDropAtMost(Kind.VOLTAGE.ofSi(fit.dropV()));
    }
    if (fit.bendM() != null) {
      sizer = sizer.bendRadiusAvailable(Kind.LENGTH.ofSi(fit.bendM()));
    }
    if (fit.areaM2() != null) {
      sizer = sizer.areaAtLeast(Kind.AREA.ofSi(fit.areaM2()));
    }
    return sizer;
  }
}
