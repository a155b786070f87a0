package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * What came of a charge: time, energies, losses, the curve, and which limit governed when.
 *
 * <p>Energy from the mains = stored + lost in the pack + auxiliaries + lost in the charger.
 * Immutable and thread-safe.
 */
public final class ChargeResult implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Moments closer together than this are one point of a profile. */
  private static final double LEAST_SPACING_S = 1e-3;

  private final List<ChargeMoment> curve;
  private final List<ChargePhase> phases;
  private final ChargeEnd end;
  private final boolean complete;
  private final Basis basis;
  private final Sums sums;
  private final List<Check> checks;
  private final Worksheet worksheet;

  /** Energies in J; NaN from the mains where that is not known. */
  record Sums(double wallJ, double terminalJ, double heatJ, double auxiliaryJ)
      implements Serializable {
    double chargerLossJ() {
      return wallJ - terminalJ - auxiliaryJ;
    }

    double storedJ() {
      return terminalJ - heatJ;
    }
  }

  private ChargeResult(
      ChargeRun.Course course, Sums sums, ChargeChecks checks, Worksheet worksheet) {
    this.curve = course.states().stream().map(ChargeMoment::of).toList();
    this.phases = phasesOf(course.states());
    this.end = course.end();
    this.complete = checks.complete();
    this.basis = checks.basis();
    this.sums = sums;
    this.checks = checks.all();
    this.worksheet = worksheet;
  }

  static ChargeResult of(
      ChargeSimulation simulation, ChargeKernel kernel, ChargeRun.Course course) {
    ChargeRun.State last = course.last();
    double auxiliaryJ = kernel.settings().auxiliaryW() * last.timeS();
    Sums sums = new Sums(last.wallJ(), last.terminalJ(), last.heatJ(), auxiliaryJ);
    ChargeSheet sheet = new ChargeSheet(simulation, kernel, course, sums);
    return new ChargeResult(
        course, sums, new ChargeChecks(simulation, kernel, course), sheet.toWorksheet());
  }

  static List<ChargePhase> phasesOf(List<ChargeRun.State> states) {
    List<ChargePhase> phases = new ArrayList<>();
    ChargeRun.State first = states.get(0);
    for (int i = 1; i < states.size(); i++) {
      ChargeRun.State state = states.get(i);
      boolean last = i == states.size() - 1;
      if (last || state.moment().limit() != first.moment().limit()) {
        phases.add(ChargePhase.between(first, state));
        first = state;
      }
    }
    return List.copyOf(phases);
  }

  /**
   * Time taken.
   *
   * @return in s; 0 s if no current flowed
   */
  public Quantity<Time> time() {
    return curve.get(curve.size() - 1).time();
  }

  /**
   * State of charge at the start.
   *
   * @return as told
   */
  public StateOfCharge start() {
    return curve.get(0).stateOfCharge();
  }

  /**
   * State of charge at the end.
   *
   * @return the target, or what was reached
   */
  public StateOfCharge end() {
    return curve.get(curve.size() - 1).stateOfCharge();
  }

  /**
   * Why it ended.
   *
   * @return the reason
   */
  public ChargeEnd endedBy() {
    return end;
  }

  /**
   * What limited the current at the end; the reason where no current could flow.
   *
   * @return the limit
   */
  public ChargeLimit lastLimit() {
    return curve.get(curve.size() - 1).limit();
  }

  /**
   * Energy drawn from the mains.
   *
   * @return in kW·h; empty at a station whose efficiency is not known
   */
  public Optional<Quantity<Energy>> wallEnergy() {
    return known(sums.wallJ());
  }

  /**
   * Energy lost in chargers or station.
   *
   * @return in kW·h; empty at a station whose efficiency is not known
   */
  public Optional<Quantity<Energy>> chargerLoss() {
    return known(sums.chargerLossJ());
  }

  private static Optional<Quantity<Energy>> known(double energyJ) {
    return Double.isNaN(energyJ) ? Optional.empty() : Optional.of(Kind.ENERGY.ofSi(energyJ));
  }

  /**
   * Energy into the pack's terminals.
   *
   * @return in kW·h
   */
  public Quantity<Energy> packEnergy() {
    return Kind.ENERGY.ofSi(sums.terminalJ());
  }

  /**
   * Energy stored, at rest voltage.
   *
   * @return in kW·h
   */
  public Quantity<Energy> storedEnergy() {
    return Kind.ENERGY.ofSi(sums.storedJ());
  }

  /**
   * Energy lost as I²·R in the pack.
   *
   * @return in kW·h
   */
  public Quantity<Energy> packLoss() {
    return Kind.ENERGY.ofSi(sums.heatJ());
  }

  /**
   * Energy that auxiliaries took meanwhile.
   *
   * @return in kW·h
   */
  public Quantity<Energy> auxiliaryEnergy() {
    return Kind.ENERGY.ofSi(sums.auxiliaryJ());
  }

  /**
   * Share of the energy from the mains that is stored.
   *
   * @return 0 to 1; empty if the energy from the mains is not known, or none was drawn
   */
  public Optional<Double> efficiency() {
    return sums.wallJ() > 0 ? Optional.of(sums.storedJ() / sums.wallJ()) : Optional.empty();
  }

  /**
   * The curve: moments from first to last, no further apart than 1 % of the capacity, with every
   * change of limit among them.
   *
   * @return an immutable list of at least one
   */
  public List<ChargeMoment> curve() {
    return curve;
  }

  /**
   * One figure of the curve against time, with straight lines between the moments.
   *
   * @param <Q> the quantity type
   * @param kind its kind
   * @param figure which one, such as {@code ChargeMoment::current}
   * @return empty if no current flowed
   */
  public <Q extends Quantity<Q>> Optional<Profile<Q>> profile(
      Kind<Q> kind, Function<ChargeMoment, Quantity<Q>> figure) {
    List<ChargeMoment> spaced = spaced();
    if (spaced.size() < 2) {
      return Optional.empty();
    }
    double[] timesS = new double[spaced.size()];
    double[] values = new double[spaced.size()];
    for (int i = 0; i < timesS.length; i++) {
      timesS[i] = Kind.TIME.siValueOf(spaced.get(i).time());
      values[i] = kind.siValueOf(figure.apply(spaced.get(i)));
    }
    return Optional.of(Profile.ofPoints(WorkshopUnits.SECOND, timesS, kind.siUnit(), values));
  }

  private List<ChargeMoment> spaced() {
    List<ChargeMoment> spaced = new ArrayList<>();
    double beforeS = Double.NEGATIVE_INFINITY;
    for (ChargeMoment moment : curve) {
      double timeS = Kind.TIME.siValueOf(moment.time());
      if (timeS - beforeS >= LEAST_SPACING_S) {
        spaced.add(moment);
        beforeS = timeS;
      }
    }
    return spaced;
  }

  /**
   * Which limit governed when.
   *
   * @return in order; empty if no current flowed
   */
  public List<ChargePhase> phases() {
    return phases;
  }

  /**
   * Distance that an hour of this charge brings on average: energy stored over time and
   * consumption.
   *
   * @param consumption at rest voltage of the pack, &gt; 0 W·h/km
   * @return distance per time; 0 if no current flowed
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public Quantity<Speed> distanceGainedPerTime(Quantity<EnergyPerDistance> consumption) {
    double jPerM =
        Require.quantity(
                "ChargeResult.consumption", consumption, WorkshopUnits.WATT_HOUR_PER_KILOMETRE)
            .positive();
    double timeS = Kind.TIME.siValueOf(time());
    return Kind.SPEED.ofSi(timeS > 0 ? sums.storedJ() / jPerM / timeS : 0);
  }

  /**
   * Whether the charge is done in a time, code {@code charging.time}.
   *
   * @param allowed such as the hours between two working days
   * @param source who asks for it
   * @return FAIL also where the charge did not come to its end: the state of charge asked for, or,
   *     if full is asked for, the end current at the charge voltage
   */
  public Check timeCheck(Quantity<Time> allowed, Source source) {
    org.wattwright.check.CheckBuilder check =
        Check.named(
                "charging.time", "time to charge " + Figure.of(start()) + " … " + Figure.of(end()))
            .source(source)
            .basis(basis)
            .note(endText());
    return complete
        ? check.atMost(
            Figure.of(time(), WorkshopUnits.HOUR), Figure.of(allowed, WorkshopUnits.HOUR))
        : check.holds(false);
  }

  /**
   * What must be looked at, with the codes {@code charging.completes}, {@code charging.set-voltage}
   * (safety, where a voltage is asked for), {@code charging.unthrottled-current} and {@code
   * charging.temperature} (safety).
   *
   * @return the checks
   */
  public List<Check> checks() {
    return checks;
  }

  /**
   * The working.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    return worksheet;
  }

  private String endText() {
    return end == ChargeEnd.BLOCKED ? end + ": " + lastLimit() : end.toString();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ChargeResult that
        && curve.equals(that.curve)
        && end == that.end
        && sums.equals(that.sums)
        && checks.equals(that.checks);
  }

  @Override
  public int hashCode() {
    return Objects.hash(curve, end, sums);
  }

  /**
   * States of charge, time, energy and why it ended.
   *
   * @return for example {@code 20 % … 97.5 % in 6 h 2 min, 26.1 kW·h from the mains; end current
   *     reached}
   */
  @Override
  public String toString() {
    String drawn =
        wallEnergy()
            .map(energy -> Figure.of(energy, KILOWATT_HOUR) + " from the mains")
            .orElseGet(() -> Figure.of(packEnergy(), KILOWATT_HOUR) + " into the pack");
    return Figure.of(start())
        + " … "
        + Figure.of(end())
        + " in "
        + Clock.text(Kind.TIME.siValueOf(time()))
        + ", "
        + drawn
        + "; "
        + endText();
  }
}
