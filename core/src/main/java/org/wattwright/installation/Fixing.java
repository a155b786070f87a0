package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * One bolt at its place in the mounting face, and the panel it goes through. Immutable and
 * thread-safe.
 */
public final class Fixing implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Quantity<Length> u;
  private final Quantity<Length> v;
  private final Bolt bolt;
  private final @Nullable Panel panel;

  private Fixing(
      String name, Quantity<Length> u, Quantity<Length> v, Bolt bolt, @Nullable Panel panel) {
    this.name = name;
    this.u = u;
    this.v = v;
    this.bolt = bolt;
    this.panel = panel;
  }

  /**
   * A fixing whose panel is not known yet: bearing and pull-out are NOT_CHECKED.
   *
   * @param name as reports print it
   * @param u place along u of the {@link MountingFace}
   * @param v place along v
   * @param bolt the bolt
   * @return the fixing
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static Fixing at(String name, Quantity<Length> u, Quantity<Length> v, Bolt bolt) {
    return new Fixing(
        Require.text("Fixing.name", name),
        Measure.from(u, Kind.LENGTH),
        Measure.from(v, Kind.LENGTH),
        Objects.requireNonNull(bolt, "bolt"),
        null);
  }

  /**
   * The same fixing through a panel.
   *
   * @param value the panel
   * @return a new fixing
   * @throws org.wattwright.units.InvalidInputException if the hole is smaller than the bolt
   */
  public Fixing in(Panel value) {
    Require.quantity("Fixing " + name + ".panel.hole", value.hole(), MILLIMETRE)
        .between(bolt.thread().diameterM() * 1000, Double.MAX_VALUE);
    return new Fixing(name, u, v, bolt, value);
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
   * Place along u.
   *
   * @return as given
   */
  public Quantity<Length> u() {
    return u;
  }

  /**
   * Place along v.
   *
   * @return as given
   */
  public Quantity<Length> v() {
    return v;
  }

  /**
   * The bolt.
   *
   * @return size and class
   */
  public Bolt bolt() {
    return bolt;
  }

  /**
   * The panel it goes through.
   *
   * @return empty if not known
   */
  public Optional<Panel> panel() {
    return Optional.ofNullable(panel);
  }

  double uM() {
    return Kind.LENGTH.siValueOf(u);
  }

  double vM() {
    return Kind.LENGTH.siValueOf(v);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Fixing that
        && name.equals(that.name)
        && u.equals(that.u)
        && v.equals(that.v)
        && bolt.equals(that.bolt)
        && Objects.equals(panel, that.panel);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, u, v, bolt, panel);
  }

  /**
   * Name, bolt and place.
   *
   * @return for example {@code front left, M8 8.8 at 40 mm, 300 mm}
   */
  @Override
  public String toString() {
    return name + ", " + bolt + " at " + u + ", " + v;
  }
}
