package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Collects what a {@link Retention} needs. */
public final class RetentionBuilder {
  private final String name;
  private final Given<Quantity<Mass>> mass;
  private @Nullable MountingFace face;
  private @Nullable FixingGroup group;
  private double @Nullable [] pointM;
  private @Nullable AccelerationRules rules;
  private InteractionRule interaction = InteractionRule.LINEAR;
  private @Nullable Clamping clamping;

  RetentionBuilder(String name, Given<Quantity<Mass>> mass) {
    this.name = Require.text("Retention.name", name);
    Require.quantity("Retention.mass", mass.value(), KILOGRAM).positive();
    this.mass = mass;
  }

  /** Preload of each bolt, friction of the faces, and the accelerations of service. */
  record Clamping(Estimate<Force> preload, double friction, AccelerationRules service)
      implements Serializable {}

  /**
   * What it is bolted to, and how.
   *
   * @param on the face
   * @param fixings the fixings in it
   * @return this builder
   */
  public RetentionBuilder on(MountingFace on, FixingGroup fixings) {
    face = Objects.requireNonNull(on, "face");
    group = Objects.requireNonNull(fixings, "group");
    return this;
  }

  /**
   * The centre of gravity in the directions of the face.
   *
   * @param u place along u
   * @param v place along v
   * @param height distance from the face, ≥ 0 m
   * @return this builder
   * @throws InvalidInputException if the height is negative
   */
  public RetentionBuilder centre(Quantity<Length> u, Quantity<Length> v, Quantity<Length> height) {
    pointM =
        new double[] {
          Kind.LENGTH.siValueOf(u),
          Kind.LENGTH.siValueOf(v),
          Require.quantity("Retention.centre.height", height, METRE).nonNegative()
        };
    return this;
  }

  /**
   * The rule that applies; without it nothing is checked.
   *
   * @param value the user's choice
   * @return this builder
   */
  public RetentionBuilder under(AccelerationRules value) {
    rules = Objects.requireNonNull(value, "rules");
    return this;
  }

  /**
   * How shear and tension of a bolt add up; linear unless told.
   *
   * @param value the rule
   * @return this builder
   */
  public RetentionBuilder interaction(InteractionRule value) {
    interaction = Objects.requireNonNull(value, "interaction");
    return this;
  }

  /**
   * How the bolts clamp in service, so that the joint does not slip and work loose on the road.
   *
   * @param preload of each bolt: its low end holds the joint, its high end loads the bolt
   * @param friction between the faces, above 0 and at most 1; 0.15 for painted steel is common
   *     practice
   * @param service accelerations of ordinary driving
   * @return this builder
   * @throws InvalidInputException if the friction is outside its range
   */
  public RetentionBuilder clamped(
      Estimate<Force> preload, double friction, AccelerationRules service) {
    Require.positive("Retention.friction", friction);
    clamping =
        new Clamping(
            Objects.requireNonNull(preload, "preload"),
            Require.fraction("Retention.friction", friction),
            Objects.requireNonNull(service, "service"));
    return this;
  }

  /**
   * Makes it.
   *
   * @return the retention
   * @throws InvalidInputException if face, fixings or centre are missing
   */
  public Retention build() {
    new MissingFields("Retention").field("on", group).field("centre", pointM).rejectIfAny();
    return new Retention(this);
  }

  String name() {
    return name;
  }

  Given<Quantity<Mass>> mass() {
    return mass;
  }

  MountingFace face() {
    return MissingFields.present(face);
  }

  FixingGroup group() {
    return MissingFields.present(group);
  }

  double[] pointM() {
    return MissingFields.present(pointM).clone();
  }

  @Nullable AccelerationRules rules() {
    return rules;
  }

  InteractionRule interaction() {
    return interaction;
  }

  @Nullable Clamping clamping() {
    return clamping;
  }
}
