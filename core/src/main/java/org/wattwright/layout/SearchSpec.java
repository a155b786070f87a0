package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Direction;
import org.wattwright.battery.PackState;
import org.wattwright.layout.SearchDraft.PowerDemand;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;
import org.wattwright.voltage.EnvelopePoint;
import org.wattwright.voltage.OperatingConditions;

/** A search that is complete and consistent: its space, its properties, its rules. */
final class SearchSpec {
  private final SearchDraft draft;
  private final Space space;
  private final @Nullable Bus bus;

  SearchSpec(SearchDraft draft) {
    this.draft = draft;
    this.space = Space.of(draft);
    @Nullable OperatingConditions conditions = conditionsOf(draft);
    if (conditions == null && !draft.devices.isEmpty()) {
      throw missingConditions("devices");
    }
    this.bus = conditions == null ? null : new Bus(draft.devices, conditions, draft.modules);
  }

  /**
   * As stated; else those of the one peak power asked for: its power, duration and temperature,
   * from its state of charge up to full, without regeneration into the full pack.
   */
  private static @Nullable OperatingConditions conditionsOf(SearchDraft draft) {
    if (draft.conditions != null) {
      return draft.conditions;
    }
    List<PowerDemand> peaks =
        draft.powers.stream().filter(p -> p.state().direction() == Direction.DISCHARGE).toList();
    if (peaks.size() != 1) {
      return null;
    }
    PowerState state = peaks.get(0).state();
    StateOfCharge emptiest = state.state().stateOfCharge();
    return emptiest.equals(StateOfCharge.FULL)
        ? null
        : OperatingConditions.builder()
            .stateOfCharge(emptiest, StateOfCharge.FULL)
            .coldest(state.state().temperature())
            .peakDischargePower(peaks.get(0).power(), state.duration())
            .regenerationCurrent(Measures.amperes(0))
            .build();
  }

  private static InvalidInputException missingConditions(String asked) {
    return InvalidInputException.of("PackSearch.conditions", "given by under(…)", "missing")
        .withHint(asked + " need them; one peakPowerAtLeast(…) alone would do as well");
  }

  Space space() {
    return space;
  }

  SearchDraft draft() {
    return draft;
  }

  Criterion ranking() {
    return draft.ranking;
  }

  Optional<Bus> bus() {
    return Optional.ofNullable(bus);
  }

  /** Every requirement, in no meaningful order. Own requirements come last: they cost most. */
  List<Rule> rules() {
    List<Rule> rules = new ArrayList<>();
    if (bus != null && !draft.devices.isEmpty()) {
      draft.devices.forEach(device -> rules.addAll(WindowLimit.of(device, bus)));
      rules.add(new PeakLoadRule(bus));
      rules.add(KnownRule.regeneration(bus.conditions()));
    }
    addSums(rules);
    for (PowerDemand demand : draft.powers) {
      String code = "pack.power." + demand.state().direction();
      double leastW = Kind.POWER.siValueOf(demand.power());
      Property power = new LeastPower(List.of(demand.state()));
      rules.add(new LimitRule(code, power, Bound.atLeast(leastW)));
    }
    rules.add(KnownRule.ranking(ranking().property(this)));
    draft.requirements.forEach(requirement -> rules.add(own(requirement)));
    return List.copyOf(rules);
  }

  private void addSums(List<Rule> rules) {
    if (draft.mass != null) {
      Bound bound = Bound.atMost(Kind.MASS.siValueOf(draft.mass));
      rules.add(new LimitRule("pack.mass", SumProperties.mass(), bound));
    }
    if (draft.volume != null) {
      Bound bound = Bound.atMost(Kind.VOLUME.siValueOf(draft.volume));
      rules.add(new LimitRule("pack.volume", SumProperties.volume(), bound));
    }
    if (draft.price != null) {
      Bound bound = Bound.atMost(draft.price.amount().doubleValue());
      rules.add(new LimitRule("pack.price", price(), bound));
    }
    if (draft.energy != null) {
      Bound bound = Bound.atLeast(Kind.ENERGY.siValueOf(draft.energy));
      rules.add(new LimitRule("pack.energy", energy(), bound));
    }
  }

  private Rule own(Requirement requirement) {
    return requirement instanceof MeasuredRequirement measured
        ? new LimitRule(
            MeasuredRequirement.CODE, new OwnProperty(measured.own(), this), measured.bound())
        : new OwnRule(requirement, this);
  }

  Property energy() {
    return optionalEnergy().orElseThrow(() -> missingConditions("states of charge"));
  }

  /** Energy over the states of charge of the conditions, if there are any. */
  Optional<Property> optionalEnergy() {
    return bus()
        .map(Bus::conditions)
        .map(
            conditions ->
                draft.meanPower != null
                    ? new EnergyAtPower(draft.meanPower, conditions)
                    : new EnergyAtRest(conditions));
  }

  Property peakPower() {
    return optionalPeakPower().orElseThrow(() -> missingConditions("peak states"));
  }

  /** Least of the states asked for, else that of the conditions, if there are any. */
  Optional<Property> optionalPeakPower() {
    List<PowerState> asked =
        draft.powers.stream()
            .map(PowerDemand::state)
            .filter(state -> state.direction() == Direction.DISCHARGE)
            .toList();
    if (!asked.isEmpty()) {
      return Optional.of(new LeastPower(asked));
    }
    return bus()
        .map(Bus::conditions)
        .map(
            conditions ->
                new LeastPower(
                    List.of(
                        new PowerState(
                            Direction.DISCHARGE,
                            conditions.peakDuration(),
                            PackState.of(conditions.emptiest(), conditions.coldest())))));
  }

  /** The price of a pack, after all prices were found to be in one currency. */
  Property price() {
    List<Currency> currencies = currencies();
    if (currencies.size() > 1) {
      List<String> codes = currencies.stream().map(Currency::getCurrencyCode).sorted().toList();
      throw InvalidInputException.of(
          "PackSearch.price", "in one currency", String.join(" and ", codes));
    }
    return SumProperties.price(currencies.stream().findFirst());
  }

  private List<Currency> currencies() {
    return Stream.of(
            draft.modules.stream().map(BatteryModule::price).flatMap(Optional::stream),
            draft.enclosures.stream().map(Enclosure::price).flatMap(Optional::stream),
            Optional.ofNullable(draft.price).stream())
        .flatMap(prices -> prices)
        .map(Price::currency)
        .distinct()
        .toList();
  }

  /** What a worksheet shows: the figures of a pack, then the points of its envelope. */
  List<Property> worksheetProperties() {
    List<Property> properties = new ArrayList<>();
    properties.add(SumProperties.mass());
    optionalEnergy().ifPresent(properties::add);
    draft.powers.forEach(demand -> properties.add(new LeastPower(List.of(demand.state()))));
    properties.add(SumProperties.volume());
    if (currencies().size() == 1) {
      properties.add(price());
    }
    if (bus != null) {
      for (EnvelopePoint point : EnvelopePoint.values()) {
        properties.add(new EnvelopeVoltage(point, bus));
      }
      properties.add(new PeakLoad(bus));
    }
    for (Requirement requirement : draft.requirements) {
      if (requirement instanceof MeasuredRequirement measured) {
        properties.add(new OwnProperty(measured.own(), this));
      }
    }
    return properties;
  }

  Candidate candidateAt(long index) {
    Variant variant = space.variants().get(space.variantOf(index));
    return new Candidate(this, variant, space.seriesOf(index), space.parallelOf(index));
  }
}
