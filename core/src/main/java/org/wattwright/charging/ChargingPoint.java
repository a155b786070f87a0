package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.PERCENT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/**
 * Where an AC charge is drawn from: a supply, with a control pilot and a coded cable where they
 * exist.
 *
 * <pre>{@code
 * ChargingPoint kerb = ChargingPoint.of(Supply.threePhase(volts(230), amperes(32)))
 *     .pilot(ControlPilot.of(percent(50)))
 *     .cable(CableCoding.ofResistor(ohms(680)));
 * kerb.allows(charger);   // 16 A, 3.68 kW, limited by charger input current
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ChargingPoint implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Supply supply;
  private final @Nullable ControlPilot pilot;
  private final @Nullable CableCoding cable;

  private ChargingPoint(Supply supply, @Nullable ControlPilot pilot, @Nullable CableCoding cable) {
    this.supply = Objects.requireNonNull(supply, "supply");
    this.pilot = pilot;
    this.cable = cable;
  }

  /**
   * A point of which only the supply limits the current.
   *
   * @param supply the supply
   * @return the point
   */
  public static ChargingPoint of(Supply supply) {
    return new ChargingPoint(supply, null, null);
  }

  /**
   * This point with a control pilot.
   *
   * @param value the pilot
   * @return a new point
   */
  public ChargingPoint pilot(ControlPilot value) {
    return new ChargingPoint(supply, Objects.requireNonNull(value, "pilot"), cable);
  }

  /**
   * This point with a coded cable.
   *
   * @param value the cable
   * @return a new point
   */
  public ChargingPoint cable(CableCoding value) {
    return new ChargingPoint(supply, pilot, Objects.requireNonNull(value, "cable"));
  }

  /**
   * The supply.
   *
   * @return the supply
   */
  public Supply supply() {
    return supply;
  }

  /**
   * The control pilot.
   *
   * @return empty if there is none
   */
  public Optional<ControlPilot> pilot() {
    return Optional.ofNullable(pilot);
  }

  /**
   * The coded cable.
   *
   * @return empty if there is none
   */
  public Optional<CableCoding> cable() {
    return Optional.ofNullable(cable);
  }

  /**
   * The current one charger alone may draw here.
   *
   * @param charger the charger
   * @return the least of pilot, cable, supply and charger; 0 A is an answer
   */
  public AcCurrent allows(Charger charger) {
    Worksheet.Recording recording =
        Worksheet.record("Current from " + supply + " for " + charger.name());
    AcLimits limits = limits().and(AcLimit.CHARGER, charger.maximumInputA());
    double currentA = limits.leastA();
    double powerW = charger.inputPowerW(supply, currentA);
    recordLimits(limits, recording);
    recordPower(charger, currentA, powerW, recording);
    return new AcCurrent(limits, powerW, recording.toWorksheet());
  }

  /** What the point itself allows each phase to carry. */
  AcLimits limits() {
    AcLimits limits = AcLimits.of(AcLimit.SUPPLY, supply.continuousA());
    if (pilot != null) {
      limits = limits.and(AcLimit.PILOT, pilot.current().map(Kind.CURRENT::siValueOf).orElse(0.0));
    }
    if (cable != null) {
      limits = limits.and(AcLimit.CABLE, cable.current().map(Kind.CURRENT::siValueOf).orElse(0.0));
    }
    return limits;
  }

  void recordLimits(AcLimits limits, Recorder recorder) {
    if (pilot != null) {
      recorder
          .step("I_pilot", "offered by the control pilot, in A for D in %: " + pilot.meaning())
          .formula(pilot.formula())
          .with("D", Figure.of(pilot.dutyCycle(), PERCENT))
          .source(ControlPilot.SOURCE)
          .gives(limits.currentA(AcLimit.PILOT), AMPERE);
    }
    if (cable != null) {
      recorder
          .step("I_cable", "allowed by the cable, R_c = " + Figure.of(cable.resistance(), OHM))
          .source(CableCoding.SOURCE)
          .gives(limits.currentA(AcLimit.CABLE), AMPERE);
    }
    recorder
        .step("I_supply", "carried by the supply circuit for hours")
        .formula("I_rated·k")
        .with("I_rated", Figure.of(supply.circuitRating(), AMPERE))
        .with("k", Figure.number(supply.rule().share()))
        .source(supply.rule().source())
        .gives(limits.currentA(AcLimit.SUPPLY), AMPERE);
    recordLeast(limits, recorder);
  }

  private static void recordLeast(AcLimits limits, Recorder recorder) {
    if (limits.has(AcLimit.CHARGER)) {
      recorder
          .step("I_charger", "drawn by the charger at most")
          .gives(limits.currentA(AcLimit.CHARGER), AMPERE);
    }
    recorder
        .step("I_AC", "allowed in each phase: " + limits.governing())
        .formula("the least of them")
        .source(ControlPilot.SOURCE)
        .gives(limits.leastA(), AMPERE);
  }

  private void recordPower(Charger charger, double currentA, double powerW, Recorder recorder) {
    if (powerW < charger.uncappedInputW(supply, currentA)) {
      recorder
          .step("P_AC", "drawn: the charger's largest input power")
          .source(Source.dataSheet(charger.name()))
          .gives(powerW, KILOWATT);
      return;
    }
    recorder
        .step("P_AC", "power drawn")
        .formula("n·U·I_AC·cos φ")
        .with("n", Figure.count(charger.phasesOn(supply)))
        .with("U", Figure.of(supply.voltage(), VOLT))
        .with("I_AC", currentA, AMPERE)
        .with("cos φ", Figure.number(charger.powerFactor()))
        .gives(powerW, KILOWATT);
  }

  /**
   * Whether a charger suits this point.
   *
   * <p>Codes {@code charging.current-allowed} (some current may be drawn) and, where no pilot holds
   * the charger back, {@code charging.circuit-current} (what it draws by itself against what the
   * circuit carries for hours; safety).
   *
   * @param charger the charger
   * @return the checks
   */
  public List<Check> checks(Charger charger) {
    List<Check> checks = new ArrayList<>();
    AcCurrent allowed = allows(charger);
    checks.add(
        Check.named("charging.current-allowed", "current for " + charger.name())
            .source(ControlPilot.SOURCE)
            .note(allowed.toString())
            .holds(allowed.isAllowed()));
    if (pilot == null) {
      checks.add(
          Check.named(
                  "charging.circuit-current",
                  charger.name() + " by itself, no pilot to hold it back, against the circuit")
              .source(
                  supply.rule().equals(ContinuousLoadRule.NONE)
                      ? circuit()
                      : supply.rule().source())
              .safety()
              .note("set the charger to at most what the circuit carries for hours")
              .cautionBand(CautionBand.NONE)
              .atMost(
                  Figure.ofSi(charger.maximumInputA(), AMPERE),
                  Figure.of(supply.continuousCurrent(), AMPERE)));
    }
    return List.copyOf(checks);
  }

  private static Source circuit() {
    return Source.requirement("rating of the supply circuit");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ChargingPoint that
        && supply.equals(that.supply)
        && Objects.equals(pilot, that.pilot)
        && Objects.equals(cable, that.cable);
  }

  @Override
  public int hashCode() {
    return Objects.hash(supply, pilot, cable);
  }

  /**
   * Supply, pilot and cable.
   *
   * @return for example {@code 230 V, 32 A; pilot 50 %: 30 A; cable coded 680 Ω: 20 A}
   */
  @Override
  public String toString() {
    String piloted = pilot == null ? "" : "; " + pilot;
    return supply + piloted + (cable == null ? "" : "; " + cable);
  }
}
