package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Price;

/** Collects what a catalogue says of a {@link Contactor}; what it does not say stays unknown. */
public final class ContactorBuilder {
  private final String name;
  private final double voltageV;
  private @Nullable Double carryA;
  private @Nullable CarryCurve carryCurve;
  private @Nullable Double makeA;
  private final List<BreakRating> breaks = new ArrayList<>();
  private boolean polarised;
  private @Nullable Double withstandA2S;
  private @Nullable Double peakA;
  private @Nullable Double contactOhm;
  private @Nullable Double openingS;
  private @Nullable ContactorCoil coil;
  private @Nullable Double massKg;
  private @Nullable Price price;
  private Basis basis = Basis.DATA_SHEET;
  private Source source;

  ContactorBuilder(String name, double voltageV) {
    this.name = name;
    this.voltageV = voltageV;
    this.source = Source.dataSheet(name);
  }

  ContactorBuilder(ContactorData data) {
    name = data.name();
    voltageV = data.voltageV();
    carryA = data.carryA();
    carryCurve = data.carryCurve();
    makeA = data.makeA();
    breaks.addAll(data.breaks());
    polarised = data.polarised();
    withstandA2S = data.withstandA2S();
    peakA = data.peakA();
    contactOhm = data.contactOhm();
    openingS = data.openingS();
    coil = data.coil();
    massKg = data.massKg();
    price = data.price();
    basis = data.basis();
    source = data.source();
  }

  /**
   * Current that the closed contacts carry for any time, with the cable that the catalogue asks
   * for.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder carry(Quantity<ElectricCurrent> value) {
    carryA = Require.quantity("Contactor.carry", value, AMPERE).positive();
    return this;
  }

  /**
   * How long more than the continuous current may flow.
   *
   * @param value currents above the continuous one
   * @return this builder
   */
  public ContactorBuilder carryCurve(CarryCurve value) {
    carryCurve = Objects.requireNonNull(value, "carryCurve");
    return this;
  }

  /**
   * Highest current at the moment of closing.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder makeLimit(Quantity<ElectricCurrent> value) {
    makeA = Require.quantity("Contactor.makeLimit", value, AMPERE).positive();
    return this;
  }

  /**
   * Adds a current that it may break, at its voltage, in its direction, so many times.
   *
   * @param value the rating
   * @return this builder
   */
  public ContactorBuilder breaks(BreakRating value) {
    breaks.add(Objects.requireNonNull(value, "breaks"));
    return this;
  }

  /**
   * Says that its contacts are polarised: a direction without a break rating may not be broken.
   *
   * @return this builder
   */
  public ContactorBuilder polarised() {
    polarised = true;
    return this;
  }

  /**
   * Joule integral that the closed contacts stand without welding.
   *
   * @param value &gt; 0 A²s
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder withstand(Quantity<JouleIntegral> value) {
    withstandA2S = Require.quantity("Contactor.withstand", value, AMPERE_SQUARED_SECOND).positive();
    return this;
  }

  /**
   * Peak current that the closed contacts stand without lifting off.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder peakWithstand(Quantity<ElectricCurrent> value) {
    peakA = Require.quantity("Contactor.peakWithstand", value, AMPERE).positive();
    return this;
  }

  /**
   * Resistance from terminal to terminal, closed.
   *
   * @param value &gt; 0 mΩ
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder contactResistance(Quantity<ElectricResistance> value) {
    contactOhm = Require.quantity("Contactor.contactResistance", value, MILLIOHM).positive();
    return this;
  }

  /**
   * Time from the loss of coil voltage until the contacts are open and the arc is out.
   *
   * @param value &gt; 0 ms
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder openingTime(Quantity<Time> value) {
    openingS = Require.quantity("Contactor.openingTime", value, MILLISECOND).positive();
    return this;
  }

  /**
   * The coil.
   *
   * @param value the coil
   * @return this builder
   */
  public ContactorBuilder coil(ContactorCoil value) {
    coil = Objects.requireNonNull(value, "coil");
    return this;
  }

  /**
   * Mass.
   *
   * @param value &gt; 0 kg
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ContactorBuilder mass(Quantity<Mass> value) {
    massKg = Require.quantity("Contactor.mass", value, KILOGRAM).positive();
    return this;
  }

  /**
   * Price of one.
   *
   * @param value the price
   * @return this builder
   */
  public ContactorBuilder price(Price value) {
    price = Objects.requireNonNull(value, "price");
    return this;
  }

  /**
   * What the figures rest on; data sheet unless told.
   *
   * @param value the weakest basis of all
   * @return this builder
   */
  public ContactorBuilder basis(Basis value) {
    basis = Objects.requireNonNull(value, "basis");
    return this;
  }

  /**
   * Where the figures come from; the part's data sheet unless told.
   *
   * @param value the source
   * @return this builder
   */
  public ContactorBuilder source(Source value) {
    source = Objects.requireNonNull(value, "source");
    return this;
  }

  /**
   * The contactor.
   *
   * @return an immutable contactor
   * @throws InvalidInputException if the carry curve does not lie above the continuous current
   */
  public Contactor build() {
    if (carryCurve != null && carryA != null && !(carryCurve.currentA(0) > carryA)) {
      throw InvalidInputException.of(
          "Contactor.carryCurve",
          "above the continuous current " + AMPERE.of(carryA),
          carryCurve.toString());
    }
    return new Contactor(
        new ContactorData(
            name,
            voltageV,
            carryA,
            carryCurve,
            makeA,
            breaks,
            polarised,
            withstandA2S,
            peakA,
            contactOhm,
            openingS,
            coil,
            massKg,
            price,
            basis,
            source));
  }
}
