package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.STANDARD_GRAVITY;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The accelerations a mounting must stand, as a rule states them for some vehicle categories.
 *
 * <p>Which rule applies is for the approval authority and the workshop to say: nothing is chosen
 * unasked. A direction that a rule does not state is NOT_CHECKED until it is added with {@link
 * #with}. The directions are load cases of their own and are not added together (common practice).
 *
 * <pre>{@code
 * AccelerationRules rules = AccelerationRules.published("un-r100-m1-n1")
 *     .with(LoadDirection.UP, standardGravities(10))
 *     .with(LoadDirection.DOWN, standardGravities(10));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param categories the vehicle categories it is for, such as {@code M1, N1}; may be empty
 * @param source where it stands
 * @param accelerations the directions it states, in the order of {@link LoadDirection}; &gt; 0 gn
 */
public record AccelerationRules(
    String name,
    String categories,
    Source source,
    Map<LoadDirection, Quantity<Acceleration>> accelerations)
    implements Serializable {
  /**
   * Copies the map.
   *
   * @param name as reports print it
   * @param categories may be empty
   * @param source where it stands
   * @param accelerations the directions it states
   * @throws InvalidInputException if the name is blank or an acceleration is not positive
   */
  public AccelerationRules {
    name = Require.text("AccelerationRules.name", name);
    categories = Objects.requireNonNull(categories, "categories").strip();
    Objects.requireNonNull(source, "source");
    Map<LoadDirection, Quantity<Acceleration>> copy = new EnumMap<>(LoadDirection.class);
    accelerations.forEach((direction, value) -> copy.put(direction, positive(direction, value)));
    accelerations = Collections.unmodifiableMap(copy);
  }

  private static Quantity<Acceleration> positive(
      LoadDirection direction, Quantity<Acceleration> value) {
    Require.quantity("AccelerationRules." + direction, value, STANDARD_GRAVITY).positive();
    return Measure.from(value, Kind.ACCELERATION);
  }

  /**
   * A rule that states nothing yet; add its directions with {@link #with}.
   *
   * @param name as reports print it
   * @param source where it stands
   * @return the rule
   * @throws InvalidInputException if the name is blank
   */
  public static AccelerationRules of(String name, Source source) {
    return new AccelerationRules(name, "", source, Map.of());
  }

  /**
   * This rule with one direction stated, in place of what it stated there. The name of a published
   * rule then says that the direction is the user's choice.
   *
   * @param direction which way the mass is thrown
   * @param acceleration &gt; 0 gn
   * @return a new rule
   * @throws InvalidInputException if not positive
   */
  public AccelerationRules with(LoadDirection direction, Quantity<Acceleration> acceleration) {
    Map<LoadDirection, Quantity<Acceleration>> more = new EnumMap<>(LoadDirection.class);
    more.putAll(accelerations);
    more.put(Objects.requireNonNull(direction, "direction"), acceleration);
    return new AccelerationRules(nameWith(direction), categories, source, more);
  }

  /** A published rule says which directions it does not state itself. */
  private String nameWith(LoadDirection direction) {
    boolean published =
        published().values().stream().anyMatch(rule -> name.startsWith(rule.name()));
    String chosen = ", " + direction + " as chosen";
    return published && !name.contains(chosen) ? name + chosen : name;
  }

  /**
   * This rule with both sideways directions stated.
   *
   * @param acceleration &gt; 0 gn
   * @return a new rule
   * @throws InvalidInputException if not positive
   */
  public AccelerationRules withLateral(Quantity<Acceleration> acceleration) {
    return with(LoadDirection.LEFT, acceleration).with(LoadDirection.RIGHT, acceleration);
  }

  /**
   * What the rule states for a direction.
   *
   * @param direction which way the mass is thrown
   * @return empty if it states nothing there
   */
  public Optional<Quantity<Acceleration>> acceleration(LoadDirection direction) {
    return Optional.ofNullable(accelerations.get(Objects.requireNonNull(direction, "direction")));
  }

  /**
   * The published rules the library carries, with their codes; some are recalled and say so. They
   * are not all road law: read the source before use.
   *
   * @return by code, in the order of the table
   */
  public static Map<String, AccelerationRules> published() {
    return PublishedAccelerations.ALL;
  }

  /**
   * A published rule.
   *
   * @param code one of {@link #published()}, such as {@code un-r100-m1-n1}
   * @return the rule
   * @throws InvalidInputException if there is none of this code
   */
  public static AccelerationRules published(String code) {
    AccelerationRules found = published().get(Objects.requireNonNull(code, "code"));
    if (found == null) {
      throw InvalidInputException.of(
          "AccelerationRules.code", "one of " + List.copyOf(published().keySet()), code);
    }
    return found;
  }

  /**
   * Name and categories.
   *
   * @return for example {@code UN R100 mechanical shock, lower line (M1, N1)}
   */
  @Override
  public String toString() {
    return categories.isEmpty() ? name : name + " (" + categories + ")";
  }
}
