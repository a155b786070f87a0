package org.wattwright.battery;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * What happens when two strings at different states of charge are connected in parallel, with no
 * load: the current that flows, how long, how much it moves and whether the cells stand it.
 *
 * <p>I = (OCV₁ − OCV₂)/(R₁ + R₂ + R_lead), with the resistances for seconds: the first milliseconds
 * can be higher, and polarisation, left out, only lowers it. Heat is the integral of the voltage
 * difference over the charge moved, whatever the resistance. On a flat open-circuit curve a large
 * difference in state of charge shows as a small voltage: the current is small and lasts long.
 *
 * <p>Connecting strings at different voltages can draw an arc and weld a contactor. Bring them to
 * the same voltage first, and follow the makers' instructions.
 *
 * <pre>{@code
 * Equalisation join = Equalisation.between(
 *     stringA, PackState.of(percentCharge(80), celsius(20)),
 *     stringB, PackState.of(percentCharge(60), celsius(20)));
 * join.initialCurrent();   // 80 A, positive out of the first string
 * join.checks();
 * }</pre>
 *
 * <p>Source: Kirchhoff's laws. Immutable and thread-safe.
 */
public final class Equalisation implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Party first;
  private final Party second;
  private final double leadOhm;

  private Equalisation(Party first, Party second, double leadOhm) {
    this.first = first;
    this.second = second;
    this.leadOhm = leadOhm;
  }

  /** A string in its state. */
  private record Party(SeriesString string, PackState state) implements Serializable {
    Party {
      Objects.requireNonNull(string, "string");
      Objects.requireNonNull(state, "state");
    }

    double openCircuitV() {
      return new StringModel(string).openCircuitV(StringModel.State.of(state));
    }

    EqualisingCircuit.Side flowing(Direction direction) {
      return new EqualisingCircuit.Side(string, state, direction);
    }

    Party atLowResistance() {
      return new Party(string.atBandEnd(BandEnd.LOW), state);
    }

    String name() {
      return string.name();
    }
  }

  /**
   * Two strings about to be connected.
   *
   * @param first one string
   * @param stateOfFirst its state
   * @param second the other
   * @param stateOfSecond its state
   * @return the answers
   */
  public static Equalisation between(
      SeriesString first, PackState stateOfFirst, SeriesString second, PackState stateOfSecond) {
    return new Equalisation(new Party(first, stateOfFirst), new Party(second, stateOfSecond), 0);
  }

  /**
   * The same with the resistance of the cables and contactors between the strings.
   *
   * @param resistance both poles together, ≥ 0 Ω
   * @return a new object
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Equalisation withLeadResistance(Quantity<ElectricResistance> resistance) {
    double ohm =
        Require.quantity("Equalisation.leadResistance", resistance, WorkshopUnits.MILLIOHM)
            .nonNegative();
    return new Equalisation(first, second, ohm);
  }

  private boolean firstIsSource() {
    return first.openCircuitV() >= second.openCircuitV();
  }

  private EqualisingCircuit.Side source() {
    return (firstIsSource() ? first : second).flowing(Direction.DISCHARGE);
  }

  private EqualisingCircuit.Side sink() {
    return (firstIsSource() ? second : first).flowing(Direction.CHARGE);
  }

  private EqualisingCircuit circuit() {
    return new EqualisingCircuit(source(), sink(), leadOhm);
  }

  private double sign() {
    return firstIsSource() ? 1 : -1;
  }

  /**
   * Current at the moment of connection.
   *
   * @return positive out of the first string, in A
   */
  public Quantity<ElectricCurrent> initialCurrent() {
    return Kind.CURRENT.ofSi(sign() * circuit().initialA());
  }

  /**
   * Charge moved in the end, if nothing interrupts.
   *
   * @return positive out of the first string, in A·h
   */
  public Quantity<ElectricCharge> chargeMoved() {
    return Kind.CHARGE.ofSi(sign() * circuit().end().movedC());
  }

  /**
   * Whether the voltages meet before a string is empty or full.
   *
   * @return false if the strings do not fit together
   */
  public boolean voltagesMeet() {
    return circuit().end().voltagesMeet();
  }

  /**
   * State of charge of the first string in the end.
   *
   * @return the state of charge
   */
  public StateOfCharge finalOfFirst() {
    return finalOf(firstIsSource() ? source() : sink());
  }

  /**
   * State of charge of the second string in the end.
   *
   * @return the state of charge
   */
  public StateOfCharge finalOfSecond() {
    return finalOf(firstIsSource() ? sink() : source());
  }

  private StateOfCharge finalOf(EqualisingCircuit.Side side) {
    return StateOfCharge.of(side.socAfter(circuit().end().movedC()));
  }

  /**
   * Heat in strings and leads together.
   *
   * @return in kW·h
   */
  public Quantity<Energy> heat() {
    return Kind.ENERGY.ofSi(circuit().end().heatJ());
  }

  /**
   * Time constant at the start: R/(b₁/Q₁ + b₂/Q₂), b the slopes of the open-circuit curves.
   *
   * @return in s; empty where both curves are flat
   */
  public Optional<Quantity<Time>> timeConstant() {
    return finite(circuit().timeConstantS());
  }

  /**
   * Time until the equalising current has fallen to a value.
   *
   * @param current magnitude, &gt; 0 A
   * @return in s; 0 s if it begins below; if the voltages never meet, until a string is empty or
   *     full
   * @throws org.wattwright.units.InvalidInputException if the current is not positive
   */
  public Quantity<Time> timeUntilBelow(Quantity<ElectricCurrent> current) {
    double currentA =
        Require.quantity("Equalisation.current", current, WorkshopUnits.AMPERE).positive();
    return Kind.TIME.ofSi(circuit().timeUntilS(currentA));
  }

  private static Optional<Quantity<Time>> finite(double timeS) {
    return Double.isFinite(timeS) ? Optional.of(Kind.TIME.ofSi(timeS)) : Optional.empty();
  }

  /**
   * Largest equalising current that the cells of both strings stand for any length of time: the
   * source's discharge and the sink's charge limit by rating, temperature and voltage.
   *
   * @return in A; 0 A where temperature forbids it
   */
  public Quantity<ElectricCurrent> admissibleCurrent() {
    return Kind.CURRENT.ofSi(admissibleA());
  }

  private double admissibleA() {
    return Math.min(source().boundA(), sink().boundA());
  }

  /**
   * Largest difference of open-circuit voltage at which the current is admissible: I·R.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> admissibleVoltageDifference() {
    return Kind.VOLTAGE.ofSi(admissibleA() * circuit().ohm(0));
  }

  /**
   * Highest state of charge of the fuller string at which it may be connected to the other as it
   * is, with the resistance it has now.
   *
   * @return the state of charge; on a flat curve it may lie far above that of the other string
   */
  public StateOfCharge admissibleStateOfCharge() {
    double limitV = sink().openCircuitV(0) + admissibleA() * circuit().ohm(0);
    return source().highestAtMost(limitV);
  }

  /**
   * Whether the equalising current is admissible, with the low end of estimated resistances, and
   * whether the voltages meet.
   *
   * @return codes {@code battery.equalising-current} and {@code battery.equalising-end}
   */
  public List<Check> checks() {
    Equalisation worst =
        new Equalisation(first.atLowResistance(), second.atLowResistance(), leadOhm);
    return List.of(worst.currentCheck(), worst.endCheck());
  }

  private Check currentCheck() {
    boolean sourceDecides = source().boundA() <= sink().boundA();
    EqualisingCircuit.Side tighter = sourceDecides ? source() : sink();
    return Check.named(
            "battery.equalising-current",
            "current between " + first.name() + " and " + second.name() + " when connected")
        .safety()
        .basis(
            basis(CellProperty.RESISTANCE)
                .and(basis(CellProperty.VOLTAGE))
                .and(basis(CellProperty.CURRENT)))
        .source(Source.dataSheet("cells of " + tighter.string().name()))
        .note(
            tighter.direction()
                + " of "
                + tighter.string().name()
                + ", limited by "
                + tighter.bound().limit())
        .atMost(
            Figure.of(Kind.CURRENT.ofSi(circuit().initialA()), Kind.CURRENT),
            Figure.of(admissibleCurrent(), Kind.CURRENT));
  }

  private Check endCheck() {
    return Check.named(
            "battery.equalising-end",
            "voltages of "
                + first.name()
                + " and "
                + second.name()
                + " meet before one is empty or full")
        .safety()
        .basis(basis(CellProperty.VOLTAGE))
        .source(Source.PHYSICS)
        .holds(voltagesMeet());
  }

  private Basis basis(CellProperty property) {
    return first.string().basis(property).and(second.string().basis(property));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Equalisation that
        && first.equals(that.first)
        && second.equals(that.second)
        && leadOhm == that.leadOhm;
  }

  @Override
  public int hashCode() {
    return Objects.hash(first, second, leadOhm);
  }

  /**
   * Current, charge and heat.
   *
   * @return for example {@code 80 A at first, 10 A·h moved, 60 W·h of heat}
   */
  @Override
  public String toString() {
    return Measures.format(initialCurrent(), Kind.CURRENT)
        + " at first, "
        + Measures.format(chargeMoved(), Kind.CHARGE)
        + " moved, "
        + Measures.format(heat(), Kind.ENERGY)
        + " of heat";
  }
}
