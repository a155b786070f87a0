package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.conductor.ConductorMaterial;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * Coil of a contactor: the voltage at which it pulls in, and what a hot coil does to it.
 *
 * <p>A plain coil pulls in at a current, so its voltage rises with its copper: U(θ) = U(θ₀)·(1 +
 * α·(θ − 20 °C))/(1 + α·(θ₀ − 20 °C)), α = 0.00393/K. A coil with electronics of its own drives its
 * current: its voltage holds up to a temperature, and beyond that nothing is known. Source: Ohm's
 * law; α of copper, IEC 60028. Immutable and thread-safe.
 */
public final class ContactorCoil implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double LOWEST_C = -60;
  private static final double HIGHEST_C = 200;

  private static final double COPPER_PER_K =
      Kind.TEMPERATURE_COEFFICIENT.siValueOf(ConductorMaterial.COPPER.temperatureCoefficient());

  private final double pullInV;
  private final double statedAtC;
  private final boolean electronic;
  private final @Nullable Double dropOutV;
  private final @Nullable Double resistanceOhm;
  private final @Nullable Double holdW;

  private ContactorCoil(
      double pullInV,
      double statedAtC,
      boolean electronic,
      @Nullable Double dropOutV,
      @Nullable Double resistanceOhm,
      @Nullable Double holdW) {
    this.pullInV = pullInV;
    this.statedAtC = statedAtC;
    this.electronic = electronic;
    this.dropOutV = dropOutV;
    this.resistanceOhm = resistanceOhm;
    this.holdW = holdW;
  }

  /**
   * A coil of copper wire alone.
   *
   * @param pullIn highest voltage at which it pulls in, &gt; 0 V
   * @param at coil temperature at which that is stated, −60 °C to 200 °C
   * @return the coil
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static ContactorCoil plain(Quantity<ElectricPotential> pullIn, Quantity<Temperature> at) {
    return of(pullIn, at, false);
  }

  /**
   * A coil with an economiser that drives the pull-in current.
   *
   * @param pullIn highest voltage at which it pulls in, &gt; 0 V
   * @param upTo highest temperature for which that is stated, −60 °C to 200 °C
   * @return the coil
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public static ContactorCoil electronic(
      Quantity<ElectricPotential> pullIn, Quantity<Temperature> upTo) {
    return of(pullIn, upTo, true);
  }

  private static ContactorCoil of(
      Quantity<ElectricPotential> pullIn, Quantity<Temperature> at, boolean electronic) {
    double pullInV = Require.quantity("ContactorCoil.pullIn", pullIn, VOLT).positive();
    return new ContactorCoil(
        pullInV, celsius("ContactorCoil.statedAt", at), electronic, null, null, null);
  }

  private static double celsius(String field, Quantity<Temperature> temperature) {
    Require.quantity(field, temperature, CELSIUS).between(LOWEST_C, HIGHEST_C);
    return CELSIUS.valueOf(temperature);
  }

  /**
   * With the voltage below which it may let go.
   *
   * @param value highest drop-out voltage, stated as the pull-in is, &gt; 0 V
   * @return the coil
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ContactorCoil dropOut(Quantity<ElectricPotential> value) {
    double volt = Require.quantity("ContactorCoil.dropOut", value, VOLT).positive();
    return new ContactorCoil(pullInV, statedAtC, electronic, volt, resistanceOhm, holdW);
  }

  /**
   * With its resistance.
   *
   * @param value at 20 °C, &gt; 0 Ω
   * @return the coil
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ContactorCoil resistance(Quantity<ElectricResistance> value) {
    double ohm = Require.quantity("ContactorCoil.resistance", value, OHM).positive();
    return new ContactorCoil(pullInV, statedAtC, electronic, dropOutV, ohm, holdW);
  }

  /**
   * With the power that its economiser takes to hold.
   *
   * @param value &gt; 0 W
   * @return the coil
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ContactorCoil holdPower(Quantity<Power> value) {
    double watt = Require.quantity("ContactorCoil.holdPower", value, WATT).positive();
    return new ContactorCoil(pullInV, statedAtC, electronic, dropOutV, resistanceOhm, watt);
  }

  /**
   * Voltage that the coil needs to pull in.
   *
   * @param temperature of the coil, −60 °C to 200 °C
   * @return in V; empty for a coil with electronics above the temperature that is stated
   * @throws org.wattwright.units.InvalidInputException if outside that range
   */
  public Optional<Quantity<ElectricPotential>> pullInAt(Quantity<Temperature> temperature) {
    return scaled(pullInV, temperature);
  }

  /**
   * Voltage below which the coil may let go.
   *
   * @param temperature of the coil, −60 °C to 200 °C
   * @return in V; empty if not stated
   * @throws org.wattwright.units.InvalidInputException if outside that range
   */
  public Optional<Quantity<ElectricPotential>> dropOutAt(Quantity<Temperature> temperature) {
    return dropOutV == null ? Optional.empty() : scaled(dropOutV, temperature);
  }

  private Optional<Quantity<ElectricPotential>> scaled(
      double volt, Quantity<Temperature> temperature) {
    double coilC = celsius("ContactorCoil.temperature", temperature);
    if (electronic) {
      return coilC <= statedAtC ? Optional.of(VOLT.of(volt)) : Optional.empty();
    }
    return Optional.of(VOLT.of(volt * resistanceFactor(coilC) / resistanceFactor(statedAtC)));
  }

  private static double resistanceFactor(double coilC) {
    return 1 + COPPER_PER_K * (coilC - 20);
  }

  /**
   * Power while it pulls in, U²/R: what the low-voltage supply must give for a moment.
   *
   * @param supply at the coil, &gt; 0 V
   * @param temperature of the coil, −60 °C to 200 °C; the cold coil takes most
   * @return in W; empty if the resistance is not stated
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Optional<Quantity<Power>> pullInPower(
      Quantity<ElectricPotential> supply, Quantity<Temperature> temperature) {
    double volt = Require.quantity("ContactorCoil.supply", supply, VOLT).positive();
    double factor = resistanceFactor(celsius("ContactorCoil.temperature", temperature));
    return Optional.ofNullable(resistanceOhm).map(ohm -> WATT.of(volt * volt / (ohm * factor)));
  }

  /**
   * Power while it holds: the economiser's; without one the whole U²/R.
   *
   * @param supply at the coil, &gt; 0 V
   * @param temperature of the coil, −60 °C to 200 °C
   * @return in W; empty if neither is stated
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Optional<Quantity<Power>> holdPower(
      Quantity<ElectricPotential> supply, Quantity<Temperature> temperature) {
    Optional<Quantity<Power>> pullIn = pullInPower(supply, temperature);
    if (holdW != null) {
      return Optional.of(WATT.of(holdW));
    }
    return electronic ? Optional.empty() : pullIn;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ContactorCoil that
        && pullInV == that.pullInV
        && statedAtC == that.statedAtC
        && electronic == that.electronic
        && Objects.equals(dropOutV, that.dropOutV)
        && Objects.equals(resistanceOhm, that.resistanceOhm)
        && Objects.equals(holdW, that.holdW);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pullInV, statedAtC, electronic, dropOutV, resistanceOhm, holdW);
  }

  /**
   * Pull-in voltage and the temperature that it is stated for.
   *
   * @return for example {@code pulls in at 8 V at 20 °C}
   */
  @Override
  public String toString() {
    String upTo = electronic ? " up to " : " at ";
    return "pulls in at " + Kind.VOLTAGE.ofSi(pullInV) + upTo + CELSIUS.of(statedAtC);
  }
}
