package org.wattwright.charging;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * A mains supply as a charging point meets it: phases, voltage, rating of its circuit, and the rule
 * for loads that run for hours.
 *
 * <p>P = n·U·I·cos φ with U between line and neutral. A rule for continuous loads is data of the
 * country it holds in, and is passed where it does; there is none unless told.
 *
 * <pre>{@code
 * Supply garage = Supply.singlePhase(volts(240), amperes(40)).withRule(ContinuousLoadRule.NEC_2023);
 * garage.continuousCurrent();   // 32 A
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Supply implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Far beyond any charging supply; keeps a mistyped voltage out. */
  private static final double HIGHEST_V = 1000;

  private static final double SQRT_3 = Math.sqrt(3);

  private final int phases;
  private final Quantity<ElectricPotential> lineToNeutral;
  private final Quantity<ElectricCurrent> circuitRating;
  private final ContinuousLoadRule rule;

  private Supply(
      int phases,
      Quantity<ElectricPotential> lineToNeutral,
      Quantity<ElectricCurrent> circuitRating,
      ContinuousLoadRule rule) {
    Require.quantity("Supply.voltage", lineToNeutral, WorkshopUnits.VOLT).positiveUpTo(HIGHEST_V);
    Require.quantity("Supply.circuitRating", circuitRating, WorkshopUnits.AMPERE).nonNegative();
    this.phases = phases;
    this.lineToNeutral = Measure.from(lineToNeutral, Kind.VOLTAGE);
    this.circuitRating = Measure.from(circuitRating, Kind.CURRENT);
    this.rule = Objects.requireNonNull(rule, "rule");
  }

  /**
   * A supply with one phase, or with the two outer conductors of a split phase.
   *
   * @param voltage between its two conductors, &gt; 0 V and ≤ 1000 V
   * @param circuitRating of its overcurrent device, ≥ 0 A; 0 A is a dead supply
   * @return the supply
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Supply singlePhase(
      Quantity<ElectricPotential> voltage, Quantity<ElectricCurrent> circuitRating) {
    return new Supply(1, voltage, circuitRating, ContinuousLoadRule.NONE);
  }

  /**
   * A supply with three phases and neutral.
   *
   * @param lineToNeutral voltage between line and neutral, &gt; 0 V and ≤ 1000 V
   * @param circuitRating of its overcurrent device, each phase, ≥ 0 A
   * @return the supply
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Supply threePhase(
      Quantity<ElectricPotential> lineToNeutral, Quantity<ElectricCurrent> circuitRating) {
    return new Supply(3, lineToNeutral, circuitRating, ContinuousLoadRule.NONE);
  }

  /**
   * A supply with three phases, known by its voltage between lines: U_LN = U_LL/√3.
   *
   * @param lineToLine voltage between two lines, &gt; 0 V
   * @param circuitRating of its overcurrent device, each phase, ≥ 0 A
   * @return the supply
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static Supply threePhaseLineToLine(
      Quantity<ElectricPotential> lineToLine, Quantity<ElectricCurrent> circuitRating) {
    double lineToLineV =
        Require.quantity("Supply.lineToLine", lineToLine, WorkshopUnits.VOLT).positive();
    return new Supply(
        3, Kind.VOLTAGE.ofSi(lineToLineV / SQRT_3), circuitRating, ContinuousLoadRule.NONE);
  }

  /**
   * This supply under a rule for continuous loads.
   *
   * @param value the rule of the country, or of the customer
   * @return a new supply
   */
  public Supply withRule(ContinuousLoadRule value) {
    return new Supply(phases, lineToNeutral, circuitRating, value);
  }

  /**
   * Number of phases.
   *
   * @return 1 or 3
   */
  public int phases() {
    return phases;
  }

  /**
   * Voltage between line and neutral, or between the two conductors of a single phase.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> voltage() {
    return lineToNeutral;
  }

  /**
   * Rating of the overcurrent device, each phase.
   *
   * @return ≥ 0 A
   */
  public Quantity<ElectricCurrent> circuitRating() {
    return circuitRating;
  }

  /**
   * The rule for continuous loads.
   *
   * @return {@link ContinuousLoadRule#NONE} unless told
   */
  public ContinuousLoadRule rule() {
    return rule;
  }

  /**
   * Largest current that may flow for hours, each phase: the rating times the share of the rule.
   *
   * @return ≥ 0 A
   */
  public Quantity<ElectricCurrent> continuousCurrent() {
    return Kind.CURRENT.ofSi(continuousA());
  }

  /**
   * Power at a current in all phases and a power factor of 1: P = n·U·I.
   *
   * @param current each phase, ≥ 0 A
   * @return in kW
   * @throws org.wattwright.units.InvalidInputException if the current is negative
   */
  public Quantity<Power> powerAt(Quantity<ElectricCurrent> current) {
    double currentA =
        Require.quantity("Supply.current", current, WorkshopUnits.AMPERE).nonNegative();
    return Kind.POWER.ofSi(phases * voltageV() * currentA);
  }

  double continuousA() {
    return Kind.CURRENT.siValueOf(circuitRating) * rule.share();
  }

  double voltageV() {
    return Kind.VOLTAGE.siValueOf(lineToNeutral);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Supply that
        && phases == that.phases
        && lineToNeutral.equals(that.lineToNeutral)
        && circuitRating.equals(that.circuitRating)
        && rule.equals(that.rule);
  }

  @Override
  public int hashCode() {
    return Objects.hash(phases, lineToNeutral, circuitRating, rule);
  }

  /**
   * Phases, voltage, rating, and the rule if there is one.
   *
   * @return for example {@code 3 × 230 V, 32 A}
   */
  @Override
  public String toString() {
    String voltage = Figure.of(lineToNeutral, Kind.VOLTAGE).toString();
    String ruled = rule.equals(ContinuousLoadRule.NONE) ? "" : ", " + rule;
    return (phases == 1 ? voltage : phases + " × " + voltage) + ", " + circuitRating + ruled;
  }
}
