package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Direction;
import org.wattwright.battery.PackState;
import org.wattwright.internal.Require;
import org.wattwright.layout.SearchDraft.PowerDemand;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.OperatingConditions;

/**
 * Finds every pack of like modules, series × parallel (× enclosures), that meets all requirements.
 *
 * <p>The whole space is examined: the answer is proven over it, or says what is not covered. A
 * statement made twice replaces the earlier one, except where it says "adds". Immutable: every call
 * returns a new search. Thread-safe.
 *
 * <pre>{@code
 * PackSearch.Result found = PackSearch.over(List.of(flat, tall))
 *     .device(inverter).device(charger).under(conditions)
 *     .usableEnergyAtLeast(kilowattHours(28))
 *     .peakPowerAtLeast(kilowatts(80), seconds(10), percentCharge(20), celsius(0))
 *     .massAtMost(kilograms(290))
 *     .run();
 * }</pre>
 */
public final class PackSearch {
  /** Series times parallel must stay countable, and no pack comes near. */
  private static final int MOST = 10_000;

  private final SearchDraft draft;

  /** For tests of the parts. */
  SearchDraft draft() {
    return draft;
  }

  private PackSearch(SearchDraft draft) {
    this.draft = draft;
  }

  private PackSearch with(Consumer<SearchDraft> change) {
    SearchDraft copy = new SearchDraft(draft);
    change.accept(copy);
    return new PackSearch(copy);
  }

  /**
   * Starts a search over module types. Unless told otherwise: up to 250 in series and 20 in
   * parallel (common practice), least mass first.
   *
   * @param modules at least one; the same type twice counts once
   * @return a search without requirements
   * @throws InvalidInputException if there is none, or two different types share a name
   */
  public static PackSearch over(List<BatteryModule> modules) {
    List<BatteryModule> distinct = List.of();
    for (BatteryModule module : Require.nonEmpty("PackSearch.modules", modules)) {
      distinct = Distinct.with("PackSearch.modules", distinct, module, BatteryModule::name);
    }
    return new PackSearch(new SearchDraft(distinct));
  }

  /**
   * Adds a device on the traction bus: each side of its voltage window is a requirement.
   *
   * @param device the device
   * @return a new search
   * @throws InvalidInputException if another device has the same name
   */
  public PackSearch device(Device device) {
    return with(
        d -> d.devices = Distinct.with("PackSearch.devices", d.devices, device, Device::name));
  }

  /**
   * The conditions under which devices and pack work together, and between which states of charge
   * energy counts. Without them, one {@link #peakPowerAtLeast} stands for them: its power, duration
   * and temperature, from its state of charge up to full, and no regeneration into the full pack:
   * state conditions to have that checked.
   *
   * @param conditions the conditions
   * @return a new search
   */
  public PackSearch under(OperatingConditions conditions) {
    Objects.requireNonNull(conditions, "conditions");
    return with(d -> d.conditions = conditions);
  }

  /**
   * Least usable energy, between the states of charge of the conditions at their usual temperature:
   * at rest voltage, or at the {@link #meanPower} if that is stated.
   *
   * @param energy &gt; 0 kW·h
   * @return a new search
   * @throws InvalidInputException if not positive
   */
  public PackSearch usableEnergyAtLeast(Quantity<Energy> energy) {
    Require.quantity("PackSearch.usableEnergy", energy, WorkshopUnits.KILOWATT_HOUR).positive();
    return with(d -> d.energy = Measure.from(energy, Kind.ENERGY));
  }

  /**
   * Constant power at which usable energy is integrated, losses and limits included.
   *
   * @param power &gt; 0 kW
   * @return a new search
   * @throws InvalidInputException if not positive
   */
  public PackSearch meanPower(Quantity<Power> power) {
    Require.quantity("PackSearch.meanPower", power, WorkshopUnits.KILOWATT).positive();
    return with(d -> d.meanPower = Measure.from(power, Kind.POWER));
  }

  /**
   * Adds a discharge power that must be there in a state; for the same state it replaces.
   *
   * @param power &gt; 0 kW
   * @param duration ≥ 0 s
   * @param stateOfCharge of all cells
   * @param temperature absolute, of all cells
   * @return a new search
   * @throws InvalidInputException if a value is outside its range
   */
  public PackSearch peakPowerAtLeast(
      Quantity<Power> power,
      Quantity<Time> duration,
      StateOfCharge stateOfCharge,
      Quantity<Temperature> temperature) {
    PackState state = PackState.of(stateOfCharge, temperature);
    return power("PackSearch.peakPower", Direction.DISCHARGE, power, duration, state);
  }

  /**
   * Adds a charge or regeneration power that the pack must take in a state; for the same state it
   * replaces.
   *
   * @param power magnitude, &gt; 0 kW
   * @param duration ≥ 0 s
   * @param stateOfCharge of all cells
   * @param temperature absolute, of all cells
   * @return a new search
   * @throws InvalidInputException if a value is outside its range
   */
  public PackSearch chargePowerAtLeast(
      Quantity<Power> power,
      Quantity<Time> duration,
      StateOfCharge stateOfCharge,
      Quantity<Temperature> temperature) {
    PackState state = PackState.of(stateOfCharge, temperature);
    return power("PackSearch.chargePower", Direction.CHARGE, power, duration, state);
  }

  private PackSearch power(
      String field,
      Direction direction,
      Quantity<Power> power,
      Quantity<Time> duration,
      PackState state) {
    Require.quantity(field, power, WorkshopUnits.KILOWATT).positive();
    Require.quantity(field + ".duration", duration, WorkshopUnits.SECOND).nonNegative();
    PowerState asked = new PowerState(direction, Measure.from(duration, Kind.TIME), state);
    List<PowerDemand> powers = new ArrayList<>(draft.powers);
    powers.removeIf(demand -> demand.state().equals(asked));
    powers.add(new PowerDemand(asked, Measure.from(power, Kind.POWER)));
    return with(d -> d.powers = List.copyOf(powers));
  }

  /**
   * Most mass of modules and enclosures.
   *
   * @param mass &gt; 0 kg
   * @return a new search
   * @throws InvalidInputException if not positive
   */
  public PackSearch massAtMost(Quantity<Mass> mass) {
    Require.quantity("PackSearch.mass", mass, WorkshopUnits.KILOGRAM).positive();
    return with(d -> d.mass = Measure.from(mass, Kind.MASS));
  }

  /**
   * Most volume of the modules' outer boxes.
   *
   * @param volume &gt; 0 L
   * @return a new search
   * @throws InvalidInputException if not positive
   */
  public PackSearch volumeAtMost(Quantity<Volume> volume) {
    Require.quantity("PackSearch.volume", volume, WorkshopUnits.LITRE).positive();
    return with(d -> d.volume = Measure.from(volume, Kind.VOLUME));
  }

  /**
   * Highest price of modules and enclosures.
   *
   * @param price in the currency of all parts
   * @return a new search
   */
  public PackSearch priceAtMost(Price price) {
    Objects.requireNonNull(price, "price");
    return with(d -> d.price = price);
  }

  /**
   * Most modules in series to be examined; 250 unless told.
   *
   * @param count 1 to 10 000
   * @return a new search
   * @throws InvalidInputException if outside its range
   */
  public PackSearch seriesAtMost(int count) {
    Require.count("PackSearch.seriesAtMost", count, 1, MOST);
    return with(d -> d.seriesAtMost = count);
  }

  /**
   * Most strings in parallel to be examined; 20 unless told.
   *
   * @param count 1 to 10 000
   * @return a new search
   * @throws InvalidInputException if outside its range
   */
  public PackSearch parallelAtMost(int count) {
    Require.count("PackSearch.parallelAtMost", count, 1, MOST);
    return with(d -> d.parallelAtMost = count);
  }

  /**
   * Adds a type of enclosure. Each candidate then goes into one type, as many as its modules need.
   *
   * @param enclosure the enclosure
   * @return a new search
   * @throws InvalidInputException if another type has the same name
   */
  public PackSearch enclosure(Enclosure enclosure) {
    return with(
        d ->
            d.enclosures =
                Distinct.with("PackSearch.enclosures", d.enclosures, enclosure, Enclosure::name));
  }

  /**
   * Adds a requirement of your own.
   *
   * @param requirement the requirement
   * @return a new search
   * @throws InvalidInputException if another requirement has the same name, or the name is blank
   */
  public PackSearch require(Requirement requirement) {
    Objects.requireNonNull(requirement, "requirement");
    Require.text("Requirement.name", requirement.name());
    return with(
        d ->
            d.requirements =
                Distinct.with(
                    "PackSearch.requirements", d.requirements, requirement, Requirement::name));
  }

  /**
   * What candidates are ranked by; least mass unless told. Equal ones stand by mass, number of
   * modules, name, series and parallel.
   *
   * @param criterion the criterion
   * @return a new search
   */
  public PackSearch rankBy(Criterion criterion) {
    Objects.requireNonNull(criterion, "criterion");
    return with(d -> d.ranking = criterion);
  }

  /**
   * Lets candidates pass of which an input is missing. They are provisional and rank after every
   * complete one.
   *
   * @return a new search
   */
  public PackSearch allowProvisional() {
    return with(d -> d.provisional = true);
  }

  /**
   * A signal that stops the search; looked at every 1,024 candidates.
   *
   * @param signal true to stop
   * @return a new search
   */
  public PackSearch cancelWhen(BooleanSupplier signal) {
    Objects.requireNonNull(signal, "signal");
    return with(d -> d.cancel = signal);
  }

  /**
   * Most candidates to be examined; no limit unless told.
   *
   * @param count ≥ 1
   * @return a new search
   * @throws InvalidInputException if less than 1
   */
  public PackSearch candidateBudget(long count) {
    if (count < 1) {
      throw InvalidInputException.of("PackSearch.candidateBudget", "≥ 1", Long.toString(count));
    }
    return with(d -> d.budget = count);
  }

  /**
   * Told how many candidates are covered: every 65,536, and at the end.
   *
   * @param listener takes the number
   * @return a new search
   */
  public PackSearch progress(LongConsumer listener) {
    Objects.requireNonNull(listener, "listener");
    return with(d -> d.progress = listener);
  }

  /**
   * Examines the space.
   *
   * @return what was found, and what ruled out the rest
   * @throws InvalidInputException if devices, energy or peak power need conditions and none are
   *     given, or if prices in several currencies are to be compared
   */
  public Result run() {
    return new SearchRun(new SearchSpec(draft)).run();
  }

  /**
   * What a search has found. Candidates are kept as two numbers each and built when asked for.
   *
   * <p>Immutable; thread-safe if your own requirements and criteria are.
   */
  public sealed interface Result permits Findings {
    /**
     * The best candidate; no check of it fails.
     *
     * @return empty if no candidate meets every requirement; {@link #whyNone} says why
     */
    Optional<Candidate> best();

    /**
     * The best candidates, best first, provisional ones after all complete ones.
     *
     * @param count how many at most, ≥ 0
     * @return an immutable list
     * @throws InvalidInputException if count is negative
     */
    List<Candidate> top(int count);

    /**
     * All candidates that meet every requirement, best first.
     *
     * @return an immutable list
     */
    List<Candidate> ranked();

    /**
     * Candidates that no other one beats: none is at least as good by every criterion and better by
     * one. Among complete candidates, or among provisional ones if there are no others.
     *
     * @param criteria at least one
     * @return in order of the first criterion, then the second, and so on
     * @throws InvalidInputException if there is no criterion, or one needs what the search does not
     *     state
     */
    List<Candidate> paretoFront(Criterion... criteria);

    /**
     * Candidates examined.
     *
     * @return ≥ 0
     */
    long candidateCount();

    /**
     * Candidates that meet every requirement on complete data.
     *
     * @return ≥ 0
     */
    long feasibleCount();

    /**
     * Candidates that break no requirement, but of which an input is missing.
     *
     * @return 0 unless provisional candidates are allowed
     */
    long provisionalCount();

    /**
     * How many candidates each requirement ruled out, and each missing input.
     *
     * @return most first, without requirements that ruled out none
     */
    List<Rejection> rejections();

    /**
     * For each requirement the smallest change of its limit that would admit a candidate, over
     * those that break it alone.
     *
     * @return in the order of the rejections
     */
    List<Relaxation> relaxations();

    /**
     * How much of the space is covered.
     *
     * @return PROVEN, or STOPPED with what remains
     */
    Coverage coverage();

    /**
     * Why nothing was found: what ruled out how many, and what would admit one.
     *
     * @return text of several lines
     */
    String whyNone();
  }

  /**
   * The space in words.
   *
   * @return for example {@code pack search over 2 module types × 1 … 250 in series × …}
   */
  @Override
  public String toString() {
    return "pack search over " + Space.of(draft);
  }
}
