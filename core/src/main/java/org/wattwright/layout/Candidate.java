package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;
import org.wattwright.voltage.VoltageEnvelope;
import org.wattwright.voltage.WindowReview;

/**
 * One pack that a search has looked at: module type, modules in series, strings in parallel, and
 * the enclosures they need.
 *
 * <p>Its figures and checks are worked out through {@link Pack} and the review of the voltage
 * windows when asked for; the worksheet replays the arithmetic of the search itself. Immutable;
 * thread-safe if your own requirements and criteria are. Equal if made of the same parts.
 */
public final class Candidate {
  private final SearchSpec spec;
  private final Variant variant;
  private final int series;
  private final int parallel;

  Candidate(SearchSpec spec, Variant variant, int series, int parallel) {
    this.spec = spec;
    this.variant = variant;
    this.series = series;
    this.parallel = parallel;
  }

  Variant variant() {
    return variant;
  }

  /**
   * The module type.
   *
   * @return the module
   */
  public BatteryModule module() {
    return variant.module();
  }

  /**
   * Modules in series in each string.
   *
   * @return ≥ 1
   */
  public int series() {
    return series;
  }

  /**
   * Strings in parallel.
   *
   * @return ≥ 1
   */
  public int parallel() {
    return parallel;
  }

  /**
   * Number of modules.
   *
   * @return series times parallel
   */
  public int moduleCount() {
    return series * parallel;
  }

  /**
   * The type of enclosure.
   *
   * @return empty if the search knows none
   */
  public Optional<Enclosure> enclosure() {
    return Optional.ofNullable(variant.enclosure());
  }

  /**
   * How many enclosures the modules need.
   *
   * @return 0 without enclosures
   */
  public int enclosureCount() {
    return variant.enclosuresFor(moduleCount());
  }

  /**
   * The pack, in one place; built anew on every call.
   *
   * @return the pack
   */
  public Pack pack() {
    return Pack.of(module(), series, parallel);
  }

  /**
   * Mass of modules and enclosures.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    double tareKg =
        enclosure().map(e -> enclosureCount() * Kind.MASS.siValueOf(e.tareMass())).orElse(0.0);
    return Kind.MASS.ofSi(Kind.MASS.siValueOf(pack().mass()) + tareKg);
  }

  /**
   * Energy over the states of charge of the conditions at their usual temperature: at rest voltage,
   * or at the mean power if the search states one.
   *
   * @return in kW·h; empty if the search has no conditions
   */
  public Optional<Quantity<Energy>> usableEnergy() {
    return spec.optionalEnergy().map(energy -> Kind.ENERGY.ofSi(energy.replayed(this)));
  }

  /**
   * Largest discharge power: the least over the states stated by {@code peakPowerAtLeast}, else
   * that at the emptiest state, coldest temperature and peak duration of the conditions.
   *
   * @return in kW; empty if the search has neither
   */
  public Optional<Quantity<Power>> peakPower() {
    return spec.optionalPeakPower().map(power -> Kind.POWER.ofSi(power.replayed(this)));
  }

  /**
   * Volume of the modules' outer boxes.
   *
   * @return empty if the size of the module is not known
   */
  public Optional<Quantity<Volume>> volume() {
    return pack().volume();
  }

  /**
   * Price of modules and enclosures.
   *
   * @return empty if a price is not known
   * @throws org.wattwright.units.InvalidInputException if module and enclosure are priced in two
   *     currencies
   */
  public Optional<Price> price() {
    Optional<Price> modules = module().price().map(price -> price.times(moduleCount()));
    if (enclosure().isEmpty()) {
      return modules;
    }
    Optional<Price> boxes = enclosure().get().price().map(price -> price.times(enclosureCount()));
    return modules.flatMap(m -> boxes.map(m::plus));
  }

  /**
   * The voltages of the pack between full and empty.
   *
   * @return empty if the search has no conditions
   */
  public Optional<VoltageEnvelope> envelope() {
    return spec.bus().map(bus -> VoltageEnvelope.of(pack(), bus.conditions()));
  }

  /**
   * The review of the devices' voltage windows.
   *
   * @return empty if the search has no devices
   */
  public Optional<WindowReview> review() {
    return spec.bus()
        .filter(bus -> !bus.devices().isEmpty())
        .map(bus -> WindowReview.of(pack(), bus.devices(), bus.conditions()));
  }

  /**
   * Every check: the requirements of the search, then those of the voltage windows.
   *
   * @return an immutable list
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    spec.rules().forEach(rule -> rule.check(this).ifPresent(checks::add));
    review().ifPresent(review -> checks.addAll(review.checks()));
    return List.copyOf(checks);
  }

  /**
   * The worst verdict of all checks.
   *
   * @return PASS if there is no check
   */
  public Outcome outcome() {
    return Outcome.worstOf(checks());
  }

  /**
   * The working: the arithmetic that the search ran, step by step.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Pack " + arrangement());
    for (Property property : spec.worksheetProperties()) {
      property.on(variant, recording).valueAt(series, parallel, recording);
    }
    return recording.toWorksheet();
  }

  /** What a criterion compares, as the search computed it. */
  double valueOf(Criterion criterion) {
    return criterion
        .property(spec)
        .on(variant, Recorder.OFF)
        .valueAt(series, parallel, Recorder.OFF);
  }

  /** Without figures, for example {@code 5s2p flat module in 2 × steel box}. */
  String arrangement() {
    String boxes =
        variant.enclosure() == null
            ? ""
            : " in " + enclosureCount() + " × " + variant.enclosureName();
    return series + "s" + parallel + "p " + module().name() + boxes;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Candidate that
        && variant.equals(that.variant)
        && series == that.series
        && parallel == that.parallel;
  }

  @Override
  public int hashCode() {
    return Objects.hash(variant.module().name(), variant.enclosureName(), series, parallel);
  }

  /**
   * Arrangement, mass and energy.
   *
   * @return for example {@code 5s2p flat module, 248 kg, 28.4 kW·h}
   */
  @Override
  public String toString() {
    String energy = usableEnergy().map(e -> ", " + Measures.format(e, Kind.ENERGY)).orElse("");
    return arrangement() + ", " + Measures.format(mass(), Kind.MASS) + energy;
  }
}
