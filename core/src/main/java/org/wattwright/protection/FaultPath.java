package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.OHM;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BandEnd;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.conductor.Joint;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * The way from a battery's terminals to the place of a fault: cables, joints, contacts, each with
 * the band within which its resistance may lie.
 *
 * <p>The low end of a cable is a cold one somewhat below its standard's limit, the high end one at
 * its temperature limit; of a joint or an estimate, the ends of its band. As soon as one inductance
 * is not known, or none is stated, that of the way is unknown, never zero.
 *
 * <pre>{@code
 * FaultPath far = FaultPath.EMPTY
 *     .with(ConductorRun.of(cable, metres(3.2)), millimetres(25))
 *     .with(Joint.estimatedBoltedLug("lug"))
 *     .withInductance("pack", microhenries(4));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class FaultPath implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A fault at the battery's terminals: nothing in the way, inductance unknown. */
  public static final FaultPath EMPTY = new FaultPath(List.of(), List.of(), false);

  private final List<PathPart> ohms;
  private final List<PathPart> henries;
  private final boolean lacksInductance;

  private FaultPath(List<PathPart> ohms, List<PathPart> henries, boolean lacksInductance) {
    this.ohms = List.copyOf(ohms);
    this.henries = List.copyOf(henries);
    this.lacksInductance = lacksInductance;
  }

  /**
   * The same way through a further resistance that is known.
   *
   * @param name as reports print it
   * @param resistance ≥ 0 Ω, with its basis
   * @return a new way
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public FaultPath with(String name, Given<Quantity<ElectricResistance>> resistance) {
    double ohm = Require.quantity("FaultPath." + name, resistance.value(), OHM).nonNegative();
    return plus(new PathPart(part(name), null, ohm, ohm, resistance.basis(), resistance.source()));
  }

  /**
   * The same way through a further resistance that is estimated.
   *
   * @param resistance with its band
   * @return a new way
   */
  public FaultPath with(Estimate<ElectricResistance> resistance) {
    double lowOhm = Kind.RESISTANCE.siValueOf(resistance.low());
    double highOhm = Kind.RESISTANCE.siValueOf(resistance.high());
    Source source = resistance.source();
    return plus(new PathPart(resistance.name(), null, lowOhm, highOhm, Basis.ESTIMATED, source));
  }

  /**
   * The same way through a further joint, contact or disconnect.
   *
   * @param joint across the range that a measurement at commissioning should show
   * @return a new way
   */
  public FaultPath with(Joint joint) {
    Estimate<ElectricResistance> band = joint.expectedAtCommissioning();
    double lowOhm = Kind.RESISTANCE.siValueOf(band.low());
    double highOhm = Kind.RESISTANCE.siValueOf(band.high());
    Given<?> given = joint.resistance();
    return plus(new PathPart(joint.name(), null, lowOhm, highOhm, given.basis(), given.source()));
  }

  /**
   * The same way through a further cable pair with its joints.
   *
   * @param run the cables
   * @param axisSpacing between the axes of the two polarities, for the inductance
   * @return a new way; its inductance is unknown if the cable's conductor diameter is
   * @throws org.wattwright.units.InvalidInputException if the conductors overlap
   */
  public FaultPath with(ConductorRun run, Quantity<Length> axisSpacing) {
    Optional<Quantity<ElectricInductance>> inductance = run.loopInductance(axisSpacing);
    String name = run.cable().name();
    Source source = run.cable().size().resistance().source();
    FaultPath longer = plus(new PathPart(name, run, 0, 0, run.basis(), source));
    if (inductance.isEmpty()) {
      return new FaultPath(longer.ohms, henries, true);
    }
    Source formula = Source.literature("F. W. Grover, Inductance Calculations", "round pair");
    return longer.withInductance(
        name, new Given<>(inductance.get(), run.cable().geometryBasis(), formula));
  }

  /**
   * The same way with a further inductance that is known.
   *
   * @param name as reports print it
   * @param inductance ≥ 0 H, with its basis
   * @return a new way
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public FaultPath withInductance(String name, Given<Quantity<ElectricInductance>> inductance) {
    double henry = Require.quantity("FaultPath." + name, inductance.value(), HENRY).nonNegative();
    return plusCoil(
        new PathPart(part(name), null, henry, henry, inductance.basis(), inductance.source()));
  }

  /**
   * The same way with a further inductance that is estimated.
   *
   * @param inductance with its band
   * @return a new way
   */
  public FaultPath withInductance(Estimate<ElectricInductance> inductance) {
    double lowH = Kind.INDUCTANCE.siValueOf(inductance.low());
    double highH = Kind.INDUCTANCE.siValueOf(inductance.high());
    Source source = inductance.source();
    return plusCoil(new PathPart(inductance.name(), null, lowH, highH, Basis.ESTIMATED, source));
  }

  private static String part(String name) {
    return Require.text("FaultPath.part", name);
  }

  private FaultPath plus(PathPart part) {
    List<PathPart> all = new ArrayList<>(ohms);
    all.add(part);
    return new FaultPath(all, henries, lacksInductance);
  }

  private FaultPath plusCoil(PathPart part) {
    List<PathPart> all = new ArrayList<>(henries);
    all.add(part);
    return new FaultPath(ohms, all, lacksInductance);
  }

  /**
   * Whether every inductance of the way is known, and at least one stated.
   *
   * @return whether a time constant can be given
   */
  public boolean isInductanceKnown() {
    return !lacksInductance && !henries.isEmpty();
  }

  /** A loop with the resistances and inductances of this way at one end of their bands. */
  FaultLoop addTo(FaultLoop loop, BandEnd end, Quantity<Temperature> cold) {
    return withInductances(withResistances(loop, end, cold), end);
  }

  FaultLoop withResistances(FaultLoop loop, BandEnd end, Quantity<Temperature> cold) {
    FaultLoop longer = loop;
    for (PathPart part : ohms) {
      double ohm = part.run() == null ? part.endSi(end) : runOhm(part.run(), end, cold);
      Quantity<ElectricResistance> value = Kind.RESISTANCE.ofSi(ohm);
      longer = longer.with(part.name(), new Given<>(value, part.basis(), part.source()));
    }
    return longer;
  }

  FaultLoop withInductances(FaultLoop loop, BandEnd end) {
    FaultLoop longer = loop;
    for (PathPart part : henries) {
      Quantity<ElectricInductance> value = Kind.INDUCTANCE.ofSi(part.endSi(end));
      longer = longer.withInductance(part.name(), new Given<>(value, part.basis(), part.source()));
    }
    return longer;
  }

  private static double runOhm(ConductorRun run, BandEnd end, Quantity<Temperature> cold) {
    return end == BandEnd.LOW
        ? Kind.RESISTANCE.siValueOf(run.expectedResistanceAt(cold).low())
        : Kind.RESISTANCE.siValueOf(
            run.expectedResistanceAt(run.cable().temperatureLimit()).high());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FaultPath that
        && ohms.equals(that.ohms)
        && henries.equals(that.henries)
        && lacksInductance == that.lacksInductance;
  }

  @Override
  public int hashCode() {
    return 31 * ohms.hashCode() + henries.hashCode();
  }

  /**
   * The names of its parts.
   *
   * @return for example {@code path through T-35, fuse holder}
   */
  @Override
  public String toString() {
    return ohms.isEmpty()
        ? "path of no length"
        : "path through " + String.join(", ", ohms.stream().map(PathPart::name).toList());
  }
}
