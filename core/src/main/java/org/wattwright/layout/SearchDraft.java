package org.wattwright.layout;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.units.Price;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.OperatingConditions;

/** What has been stated of a search so far. Copied before every change, never changed after. */
final class SearchDraft {
  /** Cells of one module type in series for 800 V and a reserve; common practice. */
  static final int USUAL_SERIES = 250;

  /** Strings in parallel that a workshop can still supervise; common practice. */
  static final int USUAL_PARALLEL = 20;

  List<BatteryModule> modules;
  List<Enclosure> enclosures = List.of();
  List<Device> devices = List.of();
  List<PowerDemand> powers = List.of();
  List<Requirement> requirements = List.of();
  @Nullable OperatingConditions conditions;
  @Nullable Quantity<Power> meanPower;
  @Nullable Quantity<Energy> energy;
  @Nullable Quantity<Mass> mass;
  @Nullable Quantity<Volume> volume;
  @Nullable Price price;
  int seriesAtMost = USUAL_SERIES;
  int parallelAtMost = USUAL_PARALLEL;
  Criterion ranking = Criterion.MASS;
  boolean provisional;
  BooleanSupplier cancel = () -> false;
  long budget = Long.MAX_VALUE;
  LongConsumer progress = covered -> {};

  /** A power that must be reached in a state. */
  record PowerDemand(PowerState state, Quantity<Power> power) {}

  SearchDraft(List<BatteryModule> modules) {
    this.modules = modules;
  }

  SearchDraft(SearchDraft other) {
    modules = other.modules;
    enclosures = other.enclosures;
    devices = other.devices;
    powers = other.powers;
    requirements = other.requirements;
    conditions = other.conditions;
    meanPower = other.meanPower;
    energy = other.energy;
    mass = other.mass;
    volume = other.volume;
    price = other.price;
    seriesAtMost = other.seriesAtMost;
    parallelAtMost = other.parallelAtMost;
    ranking = other.ranking;
    provisional = other.provisional;
    cancel = other.cancel;
    budget = other.budget;
    progress = other.progress;
  }
}
