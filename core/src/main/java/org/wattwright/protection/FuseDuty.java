package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/**
 * What a circuit asks of its fuse.
 *
 * <p>In a split pack a fault outside is seen by whichever fuse opens first: the voltage of every
 * fuse in series is then that of the <em>whole</em> pack.
 *
 * <p>Immutable and thread-safe.
 */
public final class FuseDuty implements Serializable {
  private static final long serialVersionUID = 1L;

  private final FaultRange faults;
  private final double highestV;
  private final double continuousA;
  private final double airK;
  private final @Nullable Profile<ElectricCurrent> profile;
  private final @Nullable Double clearWithinS;
  private final @Nullable Given<Quantity<JouleIntegral>> withstand;
  private final @Nullable Double otherDeviceUpToA;

  private FuseDuty(Builder builder) {
    this.faults = builder.faults;
    this.highestV = MissingFields.present(builder.highestV);
    this.continuousA = MissingFields.present(builder.continuousA);
    this.airK = MissingFields.present(builder.airK);
    this.profile = builder.profile;
    this.clearWithinS = builder.clearWithinS;
    this.withstand = builder.withstand;
    this.otherDeviceUpToA = builder.otherDeviceUpToA;
  }

  /**
   * Starts with the faults of the circuit.
   *
   * @param faults from the lowest to the highest
   * @return a builder that also wants highest voltage, continuous current and air temperature
   */
  public static Builder of(FaultRange faults) {
    return new Builder(faults);
  }

  /** Collects the fields of a {@link FuseDuty}. */
  public static final class Builder {
    private final FaultRange faults;
    private @Nullable Double highestV;
    private @Nullable Double continuousA;
    private @Nullable Double airK;
    private @Nullable Profile<ElectricCurrent> profile;
    private @Nullable Double clearWithinS;
    private @Nullable Given<Quantity<JouleIntegral>> withstand;
    private @Nullable Double otherDeviceUpToA;

    private Builder(FaultRange faults) {
      this.faults = Objects.requireNonNull(faults, "faults");
    }

    /**
     * Highest voltage that the circuit reaches, that of the whole pack, full and on charge.
     *
     * @param value &gt; 0 V
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if not positive
     */
    public Builder highestVoltage(Quantity<ElectricPotential> value) {
      highestV = Require.quantity("FuseDuty.highestVoltage", value, VOLT).positive();
      return this;
    }

    /**
     * Current that flows for hours.
     *
     * @param value ≥ 0 A
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if negative
     */
    public Builder continuousCurrent(Quantity<ElectricCurrent> value) {
      continuousA = Require.quantity("FuseDuty.continuousCurrent", value, AMPERE).nonNegative();
      return this;
    }

    /**
     * Warmest air around the fuse.
     *
     * @param value −60 °C to 200 °C
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if outside its range
     */
    public Builder air(Quantity<Temperature> value) {
      airK = Require.quantity("FuseDuty.air", value, CELSIUS).between(-60, 200);
      return this;
    }

    /**
     * Current against time, if it swings; its RMS is checked too.
     *
     * @param value a whole drive or charge
     * @return this builder
     */
    public Builder profile(Profile<ElectricCurrent> value) {
      profile = Objects.requireNonNull(value, "profile");
      return this;
    }

    /**
     * Time within which the lowest fault must be off.
     *
     * @param value &gt; 0 s
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if not positive
     */
    public Builder clearWithin(Quantity<Time> value) {
      clearWithinS = Require.quantity("FuseDuty.clearWithin", value, SECOND).positive();
      return this;
    }

    /**
     * Joule integral that the weakest part of the circuit bears, cable and contactor.
     *
     * @param value &gt; 0 A²s, with its basis
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if not positive
     */
    public Builder withstand(Given<Quantity<JouleIntegral>> value) {
      Require.quantity("FuseDuty.withstand", value.value(), AMPERE_SQUARED_SECOND).positive();
      withstand = value;
      return this;
    }

    /**
     * Another device, such as a trip that opens the contactor, interrupts over-currents up to here,
     * so that a partial-range link need not.
     *
     * @param value &gt; 0 A
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if not positive
     */
    public Builder otherDeviceUpTo(Quantity<ElectricCurrent> value) {
      otherDeviceUpToA = Require.quantity("FuseDuty.otherDeviceUpTo", value, AMPERE).positive();
      return this;
    }

    /**
     * The duty.
     *
     * @return the duty
     * @throws org.wattwright.units.InvalidInputException listing every required field that is
     *     missing
     */
    public FuseDuty build() {
      new MissingFields("FuseDuty")
          .field("highestVoltage", highestV)
          .field("continuousCurrent", continuousA)
          .field("air", airK)
          .rejectIfAny();
      return new FuseDuty(this);
    }

    /**
     * The faults.
     *
     * @return one line
     */
    @Override
    public String toString() {
      return "duty with faults of " + faults + " so far";
    }
  }

  /**
   * The faults of the circuit.
   *
   * @return from the lowest to the highest
   */
  public FaultRange faults() {
    return faults;
  }

  /**
   * Highest voltage of the circuit.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> highestVoltage() {
    return Kind.VOLTAGE.ofSi(highestV);
  }

  /**
   * Current that flows for hours.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> continuousCurrent() {
    return Kind.CURRENT.ofSi(continuousA);
  }

  /**
   * Warmest air around the fuse.
   *
   * @return absolute
   */
  public Quantity<Temperature> air() {
    return Kind.TEMPERATURE.ofSi(airK);
  }

  /**
   * Current against time.
   *
   * @return empty if it does not swing
   */
  public Optional<Profile<ElectricCurrent>> profile() {
    return Optional.ofNullable(profile);
  }

  /**
   * Time within which the lowest fault must be off.
   *
   * @return in s; empty if not stated
   */
  public Optional<Quantity<Time>> clearWithin() {
    return Optional.ofNullable(clearWithinS).map(Kind.TIME::ofSi);
  }

  /**
   * Joule integral that the weakest part bears.
   *
   * @return in A²s; empty if not stated
   */
  public Optional<Given<Quantity<JouleIntegral>>> withstand() {
    return Optional.ofNullable(withstand);
  }

  /**
   * Highest over-current that another device interrupts.
   *
   * @return in A; empty if there is none
   */
  public Optional<Quantity<ElectricCurrent>> otherDeviceUpTo() {
    return Optional.ofNullable(otherDeviceUpToA).map(Kind.CURRENT::ofSi);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FuseDuty that
        && faults.equals(that.faults)
        && highestV == that.highestV
        && continuousA == that.continuousA
        && airK == that.airK
        && Objects.equals(profile, that.profile)
        && Objects.equals(clearWithinS, that.clearWithinS)
        && Objects.equals(withstand, that.withstand)
        && Objects.equals(otherDeviceUpToA, that.otherDeviceUpToA);
  }

  @Override
  public int hashCode() {
    return Objects.hash(faults, highestV, continuousA, airK, clearWithinS, withstand);
  }

  /**
   * Current, voltage, air and faults.
   *
   * @return for example {@code 120 A at 403 V in air of 60 °C, faults 1.53 kA … 6.29 kA}
   */
  @Override
  public String toString() {
    return continuousCurrent()
        + " at "
        + highestVoltage()
        + " in air of "
        + air()
        + ", faults "
        + faults;
  }
}
