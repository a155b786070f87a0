package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.charging.Charger;
import org.wattwright.charging.ChargingPoint;
import org.wattwright.charging.DcStation;
import org.wattwright.check.Source;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * Where and from what the vehicle is to be charged, from which state of charge to which, how warm
 * the cells are, and how long it may take.
 *
 * <pre>{@code
 * ChargePlan plan = ChargePlan.of(charger)
 *     .from(percentCharge(15)).to(percentCharge(100)).temperature(celsius(10))
 *     .supply("bakery", bakery, hours(9), Source.requirement("customer: overnight"))
 *     .supply("any household socket", socket)
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ChargePlan {
  private final Charger charger;
  private final StateOfCharge from;
  private final StateOfCharge to;
  private final Quantity<Temperature> temperature;
  private final List<Place> places;

  /** Where to charge: a point for the charger, or a station in its stead. */
  record Place(
      String label,
      @Nullable ChargingPoint point,
      @Nullable DcStation station,
      @Nullable Target target) {}

  /** The time allowed, and who asks for it. */
  record Target(Quantity<Time> time, Source source) {}

  private ChargePlan(Builder builder) {
    charger = builder.charger;
    from = MissingFields.present(builder.from);
    to = builder.to;
    temperature = MissingFields.present(builder.temperature);
    places = List.copyOf(builder.places);
  }

  /**
   * Starts a plan.
   *
   * @param charger the charger on board
   * @return a builder
   */
  public static Builder of(Charger charger) {
    return new Builder(Objects.requireNonNull(charger, "charger"));
  }

  /** Collects a plan. */
  public static final class Builder {
    private final Charger charger;
    private @Nullable StateOfCharge from;
    private StateOfCharge to = StateOfCharge.FULL;
    private @Nullable Quantity<Temperature> temperature;
    private final List<Place> places = new ArrayList<>();

    Builder(Charger charger) {
      this.charger = charger;
    }

    /**
     * State of charge at the start. Required.
     *
     * @param value of all cells
     * @return this builder
     */
    public Builder from(StateOfCharge value) {
      from = Objects.requireNonNull(value, "from");
      return this;
    }

    /**
     * State of charge asked for; full unless told.
     *
     * @param value of all cells
     * @return this builder
     */
    public Builder to(StateOfCharge value) {
      to = Objects.requireNonNull(value, "to");
      return this;
    }

    /**
     * Temperature of the cells all along. Required.
     *
     * @param value the temperature
     * @return this builder
     */
    public Builder temperature(Quantity<Temperature> value) {
      temperature = Measure.from(value, Kind.TEMPERATURE);
      return this;
    }

    /**
     * Adds a supply whose charge may take as long as it takes.
     *
     * @param label as reports print it, no label twice
     * @param point supply with pilot and cable
     * @return this builder
     * @throws InvalidInputException if the label is blank
     */
    public Builder supply(String label, ChargingPoint point) {
      return add(label, Objects.requireNonNull(point, "point"), null, null);
    }

    /**
     * Adds a supply at which the charge must be done in a time.
     *
     * @param label as reports print it, no label twice
     * @param point supply with pilot and cable
     * @param allowed the time it may take, &gt; 0 h
     * @param source who asks for it
     * @return this builder
     * @throws InvalidInputException if the label is blank or the time not positive
     */
    public Builder supply(
        String label, ChargingPoint point, Quantity<Time> allowed, Source source) {
      Require.quantity("ChargePlan.allowed", allowed, WorkshopUnits.HOUR).positive();
      Target target =
          new Target(Measure.from(allowed, Kind.TIME), Objects.requireNonNull(source, "source"));
      return add(label, Objects.requireNonNull(point, "point"), null, target);
    }

    /**
     * Adds a DC station, which charges past the charger on board.
     *
     * @param station its name is the label
     * @return this builder
     */
    public Builder station(DcStation station) {
      return add(station.name(), null, station, null);
    }

    private Builder add(
        String label,
        @Nullable ChargingPoint point,
        @Nullable DcStation station,
        @Nullable Target target) {
      Place place = new Place(Require.text("ChargePlan.label", label), point, station, target);
      if (places.stream().anyMatch(other -> other.label().equals(place.label()))) {
        throw InvalidInputException.of(
            "ChargePlan.label", "told once each", '"' + place.label() + '"');
      }
      places.add(place);
      return this;
    }

    /**
     * The plan.
     *
     * @return an immutable plan
     * @throws InvalidInputException if start, temperature or any supply is missing; one error lists
     *     all
     */
    public ChargePlan build() {
      new MissingFields("ChargePlan")
          .field("from", from)
          .field("temperature", temperature)
          .field("supply", places.isEmpty() ? null : places)
          .rejectIfAny();
      return new ChargePlan(this);
    }
  }

  /**
   * The charger on board.
   *
   * @return the charger
   */
  public Charger charger() {
    return charger;
  }

  /**
   * State of charge at the start.
   *
   * @return of all cells
   */
  public StateOfCharge from() {
    return from;
  }

  /**
   * State of charge asked for.
   *
   * @return of all cells
   */
  public StateOfCharge to() {
    return to;
  }

  /**
   * Temperature of the cells.
   *
   * @return all along
   */
  public Quantity<Temperature> temperature() {
    return temperature;
  }

  /**
   * The supplies and stations.
   *
   * @return their labels, in the order given
   */
  public List<String> labels() {
    return places.stream().map(Place::label).toList();
  }

  /**
   * The time that a charge may take.
   *
   * @param label a supply of the plan
   * @return empty if none was asked for
   */
  public Optional<Quantity<Time>> allowed(String label) {
    return places.stream()
        .filter(place -> place.label().equals(label))
        .map(Place::target)
        .filter(Objects::nonNull)
        .map(Target::time)
        .findFirst();
  }

  List<Place> places() {
    return places;
  }

  /**
   * Charger, states of charge, number of supplies.
   *
   * @return for example {@code charger (…), 15 % … 100 % at 10 °C from 3 supplies}
   */
  @Override
  public String toString() {
    return charger
        + ", "
        + from
        + " … "
        + to
        + " at "
        + temperature
        + " from "
        + places.size()
        + (places.size() == 1 ? " supply" : " supplies");
  }
}
