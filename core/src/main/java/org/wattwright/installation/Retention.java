package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/**
 * Whether a box, a drive unit or another heavy part stays where it is bolted, under the
 * accelerations of a rule.
 *
 * <p>F = m·a at the centre of gravity, each direction on its own, with the weight and without it,
 * so that a weight which helps is not counted on; forces of the fixings by {@link FixingGroup};
 * bolts by {@link Bolt} and {@link InteractionRule}, sheet metal by {@link Panel}. The body around
 * the holes, the box itself and its lid are not looked at: they need their own proof.
 *
 * <pre>{@code
 * Retention box = Retention.of("rear box", Given.measured(kilograms(92), "scales"))
 *     .on(MountingFace.FLOOR, FixingGroup.of(footprint, fixings))
 *     .centre(millimetres(300), millimetres(200), millimetres(140))
 *     .under(AccelerationRules.published("ncop14"))
 *     .build();
 * box.governing();     // which fixing gives first, and how
 * box.carriedMass();   // what these fixings would carry
 * }</pre>
 *
 * <p>Codes: {@code installation.acceleration-rules}, {@code installation.held}, {@code
 * installation.bolt-shear}, {@code installation.bolt-tension}, {@code installation.bolt-combined},
 * {@code installation.panel-bearing}, {@code installation.panel-pull-out}, {@code
 * installation.slip}, {@code installation.preload}. Immutable and thread-safe.
 */
public final class Retention implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Given<Quantity<Mass>> mass;
  private final MountingFace face;
  private final FixingGroup group;
  private final double[] pointM;
  private final @Nullable AccelerationRules rules;
  private final InteractionRule interaction;
  private final RetentionBuilder.@Nullable Clamping clamping;

  Retention(RetentionBuilder builder) {
    this.name = builder.name();
    this.mass = builder.mass();
    this.face = builder.face();
    this.group = builder.group();
    this.pointM = builder.pointM();
    this.rules = builder.rules();
    this.interaction = builder.interaction();
    this.clamping = builder.clamping();
  }

  /**
   * Starts to describe how a part is held.
   *
   * @param name as reports print it
   * @param mass of all that the fixings hold, &gt; 0 kg
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the mass not
   *     positive
   */
  public static RetentionBuilder of(String name, Given<Quantity<Mass>> mass) {
    return new RetentionBuilder(name, mass);
  }

  /**
   * The name.
   *
   * @return as reports print it
   */
  public String name() {
    return name;
  }

  /**
   * What the fixings hold.
   *
   * @return with its basis
   */
  public Given<Quantity<Mass>> mass() {
    return mass;
  }

  /**
   * The fixings.
   *
   * @return the group
   */
  public FixingGroup group() {
    return group;
  }

  /**
   * The rule that applies.
   *
   * @return empty if none was chosen
   */
  public Optional<AccelerationRules> rules() {
    return Optional.ofNullable(rules);
  }

  /**
   * How shear and tension add up.
   *
   * @return the rule
   */
  public InteractionRule interaction() {
    return interaction;
  }

  /**
   * Forces of the fixings when the mass is thrown one way.
   *
   * @param direction which way
   * @param withWeight whether the weight acts too
   * @return empty if the rule states nothing for the direction, or the group does not hold it
   */
  public Optional<GroupReactions> reactions(LoadDirection direction, boolean withWeight) {
    return loads().loads().stream()
        .filter(load -> load.direction() == direction && load.withWeight() == withWeight)
        .findFirst()
        .flatMap(load -> group.reactions(load(load)));
  }

  private GroupLoad load(RetentionLoads.Load load) {
    double[] forceN = load.forceN(loads().massKg());
    return new GroupLoad(
        Kind.FORCE.ofSi(forceN[0]),
        Kind.FORCE.ofSi(forceN[1]),
        Kind.FORCE.ofSi(forceN[2]),
        METRE.of(pointM[0]),
        METRE.of(pointM[1]),
        METRE.of(pointM[2]));
  }

  /**
   * How far each fixing is used, in each way it may give, under the worst load of that way.
   *
   * @return by fixing, then by mode; without what is not known: directions the rule does not state,
   *     panels not given, loads that are not held
   */
  public List<FixingUse> uses() {
    List<FixingUse> all = new ArrayList<>();
    for (int i = 0; i < group.fixings().size(); i++) {
      boolean known = group.fixings().get(i).panel().isPresent();
      for (FixingMode mode : FixingMode.values()) {
        if (known || !mode.isOfPanel()) {
          worst(i, mode).ifPresent(all::add);
        }
      }
    }
    return List.copyOf(all);
  }

  private Optional<FixingUse> worst(int i, FixingMode mode) {
    FixingShares shares = new FixingShares(group, interaction);
    RetentionLoads loads = loads();
    @Nullable FixingUse worst = null;
    for (RetentionLoads.Load load : loads.loads()) {
      FixingGroup.@Nullable Held held = loads.held(group, load);
      if (held != null && (worst == null || shares.share(i, mode, held) > worst.share())) {
        worst = shares.use(i, mode, load.direction(), held);
      }
    }
    return Optional.ofNullable(worst);
  }

  /**
   * Which fixing gives first, which way and how.
   *
   * @return empty if no rule was chosen or nothing is held
   */
  public Optional<FixingUse> governing() {
    return uses().stream().max(Comparator.comparingDouble(FixingUse::share));
  }

  /**
   * What these fixings would carry under the directions the rule states: m over the highest share,
   * because all forces grow with the mass.
   *
   * @return empty if no rule was chosen, a panel is not known, or a load is not held
   */
  public Optional<Quantity<Mass>> carriedMass() {
    boolean known = group.fixings().stream().allMatch(each -> each.panel().isPresent());
    double share = loads().highestShare(group, interaction);
    return known && share > 0 && Double.isFinite(share)
        ? Optional.of(Kind.MASS.ofSi(loads().massKg() / share))
        : Optional.empty();
  }

  /** The directions whose load the group does not hold at all. */
  List<LoadDirection> notHeld() {
    RetentionLoads loads = loads();
    return loads.loads().stream()
        .filter(load -> loads.held(group, load) == null)
        .map(RetentionLoads.Load::direction)
        .distinct()
        .toList();
  }

  RetentionLoads loads() {
    return new RetentionLoads(face, mass.value(), pointM, rules);
  }

  RetentionLoads serviceLoads() {
    return new RetentionLoads(
        face, mass.value(), pointM, clamping == null ? null : clamping.service());
  }

  RetentionBuilder.@Nullable Clamping clamping() {
    return clamping;
  }

  /** What mass and panels rest on. */
  Basis basis() {
    Basis weakest = mass.basis();
    for (Fixing fixing : group.fixings()) {
      weakest = fixing.panel().map(Panel::basis).orElse(Basis.MEASURED).and(weakest);
    }
    return weakest;
  }

  /**
   * All checks.
   *
   * @return at least one; NOT_CHECKED where the rule, a direction of it or a panel is missing
   */
  public List<Check> checks() {
    return new RetentionChecks(this).all();
  }

  /**
   * How the governing fixing comes about.
   *
   * @return the worksheet; short if nothing could be calculated
   */
  public Worksheet worksheet() {
    return new RetentionSheet(this).worksheet();
  }

  double[] pointM() {
    return pointM.clone();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Retention that
        && name.equals(that.name)
        && mass.equals(that.mass)
        && face == that.face
        && group.equals(that.group)
        && Arrays.equals(pointM, that.pointM)
        && Objects.equals(rules, that.rules)
        && interaction == that.interaction
        && Objects.equals(clamping, that.clamping);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        name, mass, face, group, Arrays.hashCode(pointM), rules, interaction, clamping);
  }

  /**
   * Name, mass and fixings.
   *
   * @return for example {@code rear box, 92 kg on FLOOR, 6 fixings: …}
   */
  @Override
  public String toString() {
    return name + ", " + mass.value() + " on " + face + ", " + group;
  }
}
