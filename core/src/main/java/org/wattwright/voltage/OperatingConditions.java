package org.wattwright.voltage;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * The conditions between which a pack and its devices must work together.
 *
 * <pre>{@code
 * OperatingConditions conditions = OperatingConditions.builder()
 *     .stateOfCharge(percentCharge(10), percentCharge(100))
 *     .coldest(celsius(-5))
 *     .peakDischargePower(kilowatts(60), seconds(10))
 *     .regenerationCurrent(amperes(150))
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class OperatingConditions implements Serializable {
  private static final long serialVersionUID = 1L;

  private final StateOfCharge emptiest;
  private final StateOfCharge fullest;
  private final Quantity<Temperature> coldest;
  private final Quantity<Temperature> usual;
  private final @Nullable Quantity<Power> peakPower;
  private final @Nullable Quantity<ElectricCurrent> peakCurrent;
  private final Quantity<Time> peakDuration;
  private final @Nullable Quantity<ElectricCurrent> regenerationCurrent;

  private OperatingConditions(Builder builder) {
    emptiest = MissingFields.present(builder.emptiest);
    fullest = MissingFields.present(builder.fullest);
    coldest = MissingFields.present(builder.coldest);
    usual = builder.usual;
    peakPower = builder.peakPower;
    peakCurrent = builder.peakCurrent;
    peakDuration = MissingFields.present(builder.peakDuration);
    regenerationCurrent = builder.regenerationCurrent;
  }

  /**
   * Starts conditions.
   *
   * @return a builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /** Collects conditions. */
  public static final class Builder {
    private @Nullable StateOfCharge emptiest;
    private @Nullable StateOfCharge fullest;
    private @Nullable Quantity<Temperature> coldest;
    private Quantity<Temperature> usual = Measures.celsius(25);
    private @Nullable Quantity<Power> peakPower;
    private @Nullable Quantity<ElectricCurrent> peakCurrent;
    private @Nullable Quantity<Time> peakDuration;
    private @Nullable Quantity<ElectricCurrent> regenerationCurrent;

    Builder() {}

    /**
     * The band of states of charge in use. Required.
     *
     * @param emptiest lower end
     * @param fullest upper end, above the lower
     * @return this builder
     * @throws InvalidInputException if the upper end is not above the lower
     */
    public Builder stateOfCharge(StateOfCharge emptiest, StateOfCharge fullest) {
      if (!(fullest.compareTo(emptiest) > 0)) {
        throw InvalidInputException.of(
            "OperatingConditions.fullest", "> emptiest " + emptiest, fullest.toString());
      }
      this.emptiest = emptiest;
      this.fullest = fullest;
      return this;
    }

    /**
     * Coldest cell temperature at which the vehicle must still work. Required.
     *
     * @param value absolute
     * @return this builder
     */
    public Builder coldest(Quantity<Temperature> value) {
      coldest = Measure.from(value, Kind.TEMPERATURE);
      return this;
    }

    /**
     * Usual cell temperature, for the nominal voltage; 25 °C unless told.
     *
     * @param value absolute
     * @return this builder
     */
    public Builder usual(Quantity<Temperature> value) {
      usual = Measure.from(value, Kind.TEMPERATURE);
      return this;
    }

    /**
     * Peak discharge power of all loads together. Required, unless a current is given.
     *
     * @param power &gt; 0 kW
     * @param duration &gt; 0 s
     * @return this builder
     * @throws InvalidInputException if a value is not positive
     */
    public Builder peakDischargePower(Quantity<Power> power, Quantity<Time> duration) {
      Require.quantity("OperatingConditions.peakDischargePower", power, WorkshopUnits.KILOWATT)
          .positive();
      peakPower = Measure.from(power, Kind.POWER);
      peakCurrent = null;
      return peakDuration(duration);
    }

    /**
     * Peak discharge current of all loads together. Required, unless a power is given.
     *
     * @param current &gt; 0 A
     * @param duration &gt; 0 s
     * @return this builder
     * @throws InvalidInputException if a value is not positive
     */
    public Builder peakDischargeCurrent(
        Quantity<ElectricCurrent> current, Quantity<Time> duration) {
      Require.quantity("OperatingConditions.peakDischargeCurrent", current, WorkshopUnits.AMPERE)
          .positive();
      peakCurrent = Measure.from(current, Kind.CURRENT);
      peakPower = null;
      return peakDuration(duration);
    }

    private Builder peakDuration(Quantity<Time> duration) {
      Require.quantity("OperatingConditions.peakDuration", duration, WorkshopUnits.SECOND)
          .positive();
      peakDuration = Measure.from(duration, Kind.TIME);
      return this;
    }

    /**
     * Largest charge or regeneration current into a full pack. If it is not told, 0 A is taken and
     * a review is not complete: a check names it as missing. Without regeneration tell 0 A.
     *
     * @param value magnitude, ≥ 0 A
     * @return this builder
     * @throws InvalidInputException if negative
     */
    public Builder regenerationCurrent(Quantity<ElectricCurrent> value) {
      Require.quantity("OperatingConditions.regenerationCurrent", value, WorkshopUnits.AMPERE)
          .nonNegative();
      regenerationCurrent = Measure.from(value, Kind.CURRENT);
      return this;
    }

    /**
     * The conditions.
     *
     * @return immutable conditions
     * @throws InvalidInputException if required fields are missing
     */
    public OperatingConditions build() {
      new MissingFields("OperatingConditions")
          .field("stateOfCharge", emptiest)
          .field("coldest", coldest)
          .field("peakDischargePower or peakDischargeCurrent", peakDuration)
          .rejectIfAny();
      return new OperatingConditions(this);
    }
  }

  /**
   * Lower end of the band of states of charge.
   *
   * @return the emptiest state in use
   */
  public StateOfCharge emptiest() {
    return emptiest;
  }

  /**
   * Upper end of the band of states of charge.
   *
   * @return the fullest state in use
   */
  public StateOfCharge fullest() {
    return fullest;
  }

  /**
   * Coldest cell temperature.
   *
   * @return absolute, in the unit as given
   */
  public Quantity<Temperature> coldest() {
    return coldest;
  }

  /**
   * Usual cell temperature.
   *
   * @return absolute, in the unit as given
   */
  public Quantity<Temperature> usual() {
    return usual;
  }

  /**
   * Peak discharge power.
   *
   * @return empty if a current is given instead
   */
  public Optional<Quantity<Power>> peakDischargePower() {
    return Optional.ofNullable(peakPower);
  }

  /**
   * Peak discharge current.
   *
   * @return empty if a power is given instead
   */
  public Optional<Quantity<ElectricCurrent>> peakDischargeCurrent() {
    return Optional.ofNullable(peakCurrent);
  }

  /**
   * How long the peak lasts.
   *
   * @return in the unit as given
   */
  public Quantity<Time> peakDuration() {
    return peakDuration;
  }

  /**
   * Largest charge or regeneration current into a full pack.
   *
   * @return magnitude, in the unit as given; 0 A if not stated
   */
  public Quantity<ElectricCurrent> regenerationCurrent() {
    return regenerationCurrent != null ? regenerationCurrent : Measures.amperes(0);
  }

  /**
   * Whether the regeneration current was stated, be it 0 A.
   *
   * @return false if 0 A is taken for want of a statement
   */
  public boolean regenerationIsStated() {
    return regenerationCurrent != null;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof OperatingConditions that && fields().equals(that.fields());
  }

  @Override
  public int hashCode() {
    return fields().hashCode();
  }

  private List<Optional<Object>> fields() {
    return List.of(
        Optional.of(emptiest),
        Optional.of(fullest),
        Optional.of(coldest),
        Optional.of(usual),
        Optional.ofNullable(peakPower),
        Optional.ofNullable(peakCurrent),
        Optional.of(peakDuration),
        Optional.ofNullable(regenerationCurrent));
  }

  /**
   * The conditions in one line.
   *
   * @return for example {@code 10 % … 100 %, down to -5 °C, peak 60 kW for 10 s, regeneration 150
   *     A}
   */
  @Override
  public String toString() {
    return emptiest
        + " … "
        + fullest
        + ", down to "
        + coldest
        + ", peak "
        + (peakPower != null ? peakPower : peakCurrent)
        + " for "
        + peakDuration
        + ", regeneration "
        + (regenerationCurrent != null ? regenerationCurrent : "not stated");
  }
}
