package org.wattwright.examples.job;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Reads the requirement out of {@code job.csv}. */
final class RequirementFile {
  private static final int MOST_STRINGS = 100;

  private RequirementFile() {}

  static Requirement requirement(KeyValues values) {
    return new Requirement(
        energy(values),
        peak(values),
        new Requirement.Regeneration(
            values.field("regeneration current").positive(Kind.CURRENT),
            values.field("regeneration duration").positive(Kind.TIME)),
        climate(values),
        new Requirement.Limits(
            values.optional("module mass limit").map(f -> f.positive(Kind.MASS)),
            values.optional("module volume limit").map(f -> f.positive(Kind.VOLUME)),
            values.optional("module price limit").map(Field::price)),
        links(values),
        values.field("most strings in parallel").count(1, MOST_STRINGS),
        values.field("objective").choice(Objective.class));
  }

  private static Requirement.UsableEnergy energy(KeyValues values) {
    StateOfCharge empty = values.field("state of charge when empty").stateOfCharge();
    Field fullField = values.field("state of charge when full");
    StateOfCharge full = fullField.stateOfCharge();
    if (full.compareTo(empty) <= 0) {
      throw fullField.error("must be above the state of charge when empty, but was " + full);
    }
    return new Requirement.UsableEnergy(
        values.field("usable energy").positive(Kind.ENERGY),
        empty,
        full,
        values.field("cruising power").positive(Kind.POWER),
        values.field("cruising temperature").quantity(Kind.TEMPERATURE));
  }

  private static Requirement.PeakPower peak(KeyValues values) {
    return new Requirement.PeakPower(
        values.field("peak power").positive(Kind.POWER),
        values.field("peak power duration").positive(Kind.TIME),
        values.field("peak power state of charge").stateOfCharge(),
        values.field("peak power temperature").quantity(Kind.TEMPERATURE),
        values.field("peak power when empty and coldest").positive(Kind.POWER));
  }

  private static Requirement.Links links(KeyValues values) {
    Optional<Field> whole = values.optional(Requirement.Links.WHOLE);
    Optional<Field> perLength = values.optional(Requirement.Links.PER_LENGTH);
    Optional<Field> joint = values.optional(Requirement.Links.JOINT);
    if (whole.isPresent() && perLength.isPresent()) {
      throw whole.get().error("must not stand beside " + Requirement.Links.PER_LENGTH);
    }
    if (joint.isPresent() && perLength.isEmpty()) {
      throw joint.get().error("must stand beside " + Requirement.Links.PER_LENGTH);
    }
    return new Requirement.Links(
        whole.map(f -> f.nonNegative(Kind.RESISTANCE)),
        perLength.map(f -> f.nonNegative(Kind.RESISTANCE_PER_LENGTH)),
        joint.map(f -> f.nonNegative(Kind.RESISTANCE)));
  }

  private static Requirement.Climate climate(KeyValues values) {
    Quantity<Temperature> coldest = values.field("coldest temperature").quantity(Kind.TEMPERATURE);
    Field hottestField = values.field("hottest temperature");
    Quantity<Temperature> hottest = hottestField.quantity(Kind.TEMPERATURE);
    if (Kind.TEMPERATURE.compare(hottest, coldest) <= 0) {
      throw hottestField.error("must be above the coldest " + coldest + ", but was " + hottest);
    }
    return new Requirement.Climate(coldest, hottest);
  }
}
