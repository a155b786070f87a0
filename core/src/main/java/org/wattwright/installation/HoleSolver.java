package org.wattwright.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Existing mounting holes only: which of them, with which bolts, hold a part.
 *
 * <p>Every choice of holes and bolts is looked at, fewest holes first: the answer is the fewest
 * holes that do; among those the least steel (sum of stress areas), then the lowest share of any
 * fixing, then the order given. A choice is passed over unseen only if all its bolts and panels
 * together could not carry the force along the face, whatever the pattern. At most a million
 * choices.
 *
 * <pre>{@code
 * HoleSolver.holding("rear box", mass)
 *     .on(MountingFace.FLOOR, footprint, holes)
 *     .centre(millimetres(300), millimetres(200), millimetres(140))
 *     .bolts(List.of(Bolt.of("M8", CLASS_8_8), Bolt.of("M10", CLASS_8_8)))
 *     .under(AccelerationRules.published("ncop14"))
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class HoleSolver {
  private static final long MOST_CHOICES = 1_000_000;

  private final String name;
  private final Given<Quantity<Mass>> mass;
  private final @Nullable Place place;
  private final @Nullable Centre centre;
  private final List<Bolt> bolts;
  private final int least;

  private HoleSolver(
      String name,
      Given<Quantity<Mass>> mass,
      @Nullable Place place,
      @Nullable Centre centre,
      List<Bolt> bolts,
      int least) {
    this.name = name;
    this.mass = mass;
    this.place = place;
    this.centre = centre;
    this.bolts = bolts;
    this.least = least;
  }

  /** Face, footprint and holes. */
  record Place(MountingFace face, Footprint footprint, List<MountingHole> holes) {}

  /** Centre of gravity in the directions of the face. */
  record Centre(Quantity<Length> u, Quantity<Length> v, Quantity<Length> height) {}

  /**
   * Starts to describe the part.
   *
   * @param name as reports print it
   * @param mass of all that the fixings hold, &gt; 0 kg
   * @return a solver that needs holes, centre and bolts
   */
  public static HoleSolver holding(String name, Given<Quantity<Mass>> mass) {
    return new HoleSolver(
        Require.text("HoleSolver.name", name),
        Objects.requireNonNull(mass),
        null,
        null,
        List.of(),
        1);
  }

  /**
   * With the holes there are.
   *
   * @param face the face
   * @param footprint where the part presses on it; the holes lie within
   * @param holes at least one
   * @return a new solver
   * @throws InvalidInputException if there is no hole
   */
  public HoleSolver on(MountingFace face, Footprint footprint, List<MountingHole> holes) {
    Place at = new Place(face, footprint, Require.nonEmpty("HoleSolver.holes", holes));
    return new HoleSolver(name, mass, at, centre, bolts, least);
  }

  /**
   * With the centre of gravity in the directions of the face.
   *
   * @param u place along u
   * @param v place along v
   * @param height distance from the face, ≥ 0 m
   * @return a new solver
   */
  public HoleSolver centre(Quantity<Length> u, Quantity<Length> v, Quantity<Length> height) {
    return new HoleSolver(name, mass, place, new Centre(u, v, height), bolts, least);
  }

  /**
   * With the bolts to choose from.
   *
   * @param choices at least one; each hole takes those that fit
   * @return a new solver
   * @throws InvalidInputException if there is none
   */
  public HoleSolver bolts(List<Bolt> choices) {
    return new HoleSolver(
        name, mass, place, centre, Require.nonEmpty("HoleSolver.bolts", choices), least);
  }

  /**
   * With at least so many holes, so that one that fails is not the end; 1 unless told. Four are
   * common practice for a battery box.
   *
   * @param holes at least 1
   * @return a new solver
   * @throws InvalidInputException if not positive
   */
  public HoleSolver atLeast(int holes) {
    int count = Require.positiveCount("HoleSolver.atLeast", holes);
    return new HoleSolver(name, mass, place, centre, bolts, count);
  }

  int least() {
    return least;
  }

  /**
   * Solves under a rule; a direction that the rule does not state stays NOT_CHECKED in the checks
   * of the answer.
   *
   * @param rules the user's choice, with at least one direction
   * @return which holes hold the part, or why none do
   * @throws InvalidInputException if holes, centre or bolts are missing, the rule states nothing, a
   *     hole lies outside the footprint, or there are more than a million choices
   */
  public HoleChoice under(AccelerationRules rules) {
    Place at = given("HoleSolver.holes", place);
    given("HoleSolver.centre", centre);
    if (rules.accelerations().isEmpty()) {
      throw InvalidInputException.of("HoleSolver.rules", "with a direction stated", "none");
    }
    List<List<Fixing>> options = new ArrayList<>();
    long choices = 1;
    for (MountingHole hole : at.holes()) {
      List<Fixing> fitting = bolts.stream().filter(hole::takes).map(hole::with).toList();
      options.add(fitting);
      choices = Math.min(choices * (fitting.size() + 1), MOST_CHOICES + 1);
    }
    if (bolts.isEmpty() || choices > MOST_CHOICES) {
      throw InvalidInputException.of(
          "HoleSolver.bolts", "at least one, and at most a million choices", bolts.toString());
    }
    return new HoleSearch(this, options, rules).run();
  }

  private static <T> T given(String field, @Nullable T value) {
    if (value == null) {
      throw InvalidInputException.of(field, "given", "missing");
    }
    return value;
  }

  /** The retention with some fixings. */
  Retention retention(List<Fixing> fixings, AccelerationRules rules) {
    Place at = given("HoleSolver.holes", place);
    Centre point = given("HoleSolver.centre", centre);
    return Retention.of(name, mass)
        .on(at.face(), FixingGroup.of(at.footprint(), fixings))
        .centre(point.u(), point.v(), point.height())
        .under(rules)
        .build();
  }

  /**
   * What is to be held by how many holes.
   *
   * @return for example {@code rear box, 60 kg, 5 holes}
   */
  @Override
  public String toString() {
    int holes = place == null ? 0 : place.holes().size();
    return name + ", " + mass.value() + ", " + holes + " holes";
  }
}
