package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/**
 * A contactor as a catalogue lists it. To carry, to make and to break are three separate ratings.
 *
 * <p>Only name and voltage are required: a catalogue rarely gives all. What is missing makes the
 * checks that need it NOT_CHECKED, and they name the field. Immutable and thread-safe.
 *
 * <pre>{@code
 * Contactor contactor = Contactor.of("K-250", volts(450))
 *     .carry(amperes(250))
 *     .makeLimit(amperes(650))
 *     .breaks(BreakRating.forward(amperes(1500), volts(450)))
 *     .breaks(BreakRating.reverse(amperes(300), volts(450)).times(10))
 *     .polarised()
 *     .withstand(ampereSquaredSeconds(40_000)).build();
 * contactor.checks().make(amperes(135));
 * }</pre>
 */
public final class Contactor implements Serializable {
  private static final long serialVersionUID = 1L;

  private final ContactorData data;

  Contactor(ContactorData data) {
    this.data = data;
  }

  /**
   * Starts a contactor.
   *
   * @param name as the catalogue has it
   * @param voltage highest voltage that it may switch, &gt; 0 V DC
   * @return a builder
   * @throws InvalidInputException if the name is blank or the voltage not positive
   */
  public static ContactorBuilder of(String name, Quantity<ElectricPotential> voltage) {
    return new ContactorBuilder(
        Require.text("Contactor.name", name),
        Require.quantity("Contactor.voltage", voltage, VOLT).positive());
  }

  /**
   * A builder with everything that is known of this contactor.
   *
   * @return a builder
   */
  public ContactorBuilder toBuilder() {
    return new ContactorBuilder(data);
  }

  /**
   * What it is asked to do, against what the catalogue allows.
   *
   * @return its checks
   */
  public ContactorChecks checks() {
    return new ContactorChecks(data);
  }

  /**
   * Name as the catalogue has it.
   *
   * @return the name
   */
  public String name() {
    return data.name();
  }

  /**
   * Highest voltage that it may switch.
   *
   * @return in V DC
   */
  public Quantity<ElectricPotential> voltage() {
    return VOLT.of(data.voltageV());
  }

  /**
   * Current that it carries for any time.
   *
   * @return in A; empty if not stated
   */
  public Optional<Quantity<ElectricCurrent>> carry() {
    return Optional.ofNullable(data.carryA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * How long it carries more.
   *
   * @return empty if not stated
   */
  public Optional<CarryCurve> carryCurve() {
    return Optional.ofNullable(data.carryCurve());
  }

  /**
   * Highest current at the moment of closing.
   *
   * @return in A; empty if not stated
   */
  public Optional<Quantity<ElectricCurrent>> makeLimit() {
    return Optional.ofNullable(data.makeA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * What it may break.
   *
   * @return all ratings; may be empty
   */
  public List<BreakRating> breakRatings() {
    return data.breaks();
  }

  /**
   * Highest current that it may break once at a voltage in a direction.
   *
   * @param voltage before it opens, &gt; 0 V
   * @param direction of the current
   * @return in A; empty if no rating speaks of it
   * @throws InvalidInputException if the voltage is not positive
   */
  public Optional<Quantity<ElectricCurrent>> breakLimit(
      Quantity<ElectricPotential> voltage, BreakDirection direction) {
    return checks().breakLimit(voltage, direction);
  }

  /**
   * Whether a direction without a break rating may not be broken at all.
   *
   * @return whether its contacts are polarised
   */
  public boolean isPolarised() {
    return data.polarised();
  }

  /**
   * Joule integral that the closed contacts stand.
   *
   * @return in A²s; empty if not stated
   */
  public Optional<Quantity<JouleIntegral>> withstand() {
    return Optional.ofNullable(data.withstandA2S()).map(Kind.JOULE_INTEGRAL::ofSi);
  }

  /**
   * Current whose heat the closed contacts stand for a short time: √(I²t/t).
   *
   * <p>Contacts may lift off at less: see {@link #peakWithstand}.
   *
   * @param duration &gt; 0 s, short enough that no heat is lost
   * @return in A; empty if no joule integral is stated
   * @throws InvalidInputException if not positive
   */
  public Optional<Quantity<ElectricCurrent>> withstandCurrent(Quantity<Time> duration) {
    double durationS = Require.quantity("Contactor.duration", duration, SECOND).positive();
    return Optional.ofNullable(data.withstandA2S())
        .map(a2s -> Kind.CURRENT.ofSi(Math.sqrt(a2s / durationS)));
  }

  /**
   * Peak current that the closed contacts stand without lifting off.
   *
   * @return in A; empty if not stated
   */
  public Optional<Quantity<ElectricCurrent>> peakWithstand() {
    return Optional.ofNullable(data.peakA()).map(Kind.CURRENT::ofSi);
  }

  /**
   * Resistance from terminal to terminal, closed.
   *
   * @return in Ω; empty if not stated
   */
  public Optional<Quantity<ElectricResistance>> contactResistance() {
    return Optional.ofNullable(data.contactOhm()).map(Kind.RESISTANCE::ofSi);
  }

  /**
   * Time from the loss of coil voltage until the arc is out.
   *
   * @return in s; empty if not stated
   */
  public Optional<Quantity<Time>> openingTime() {
    return Optional.ofNullable(data.openingS()).map(Kind.TIME::ofSi);
  }

  /**
   * The coil.
   *
   * @return empty if not stated
   */
  public Optional<ContactorCoil> coil() {
    return Optional.ofNullable(data.coil());
  }

  /**
   * Mass.
   *
   * @return in kg; empty if not stated
   */
  public Optional<Quantity<Mass>> mass() {
    return Optional.ofNullable(data.massKg()).map(Kind.MASS::ofSi);
  }

  /**
   * Price of one.
   *
   * @return empty if not stated
   */
  public Optional<Price> price() {
    return Optional.ofNullable(data.price());
  }

  /**
   * What its figures rest on.
   *
   * @return the weakest basis of all
   */
  public Basis basis() {
    return data.basis();
  }

  /**
   * Where its figures come from.
   *
   * @return the source
   */
  public Source source() {
    return data.source();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Contactor that && data.equals(that.data);
  }

  @Override
  public int hashCode() {
    return data.hashCode();
  }

  /**
   * Name, voltage and continuous current.
   *
   * @return for example {@code K-250 (450 V, carries 250 A)}
   */
  @Override
  public String toString() {
    String carries = carry().map(current -> ", carries " + current).orElse("");
    return name() + " (" + voltage() + carries + ")";
  }
}
