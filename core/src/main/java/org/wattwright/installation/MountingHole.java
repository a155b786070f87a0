package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A hole that is there already, such as one of a removed engine mount or seat.
 *
 * <p>A bolt fits if it is not thicker than the hole and not thinner by more than 2 mm (common
 * practice). Immutable and thread-safe.
 *
 * @param name as reports print it
 * @param u place along u of the {@link MountingFace}
 * @param v place along v
 * @param panel the sheet it is in, with its diameter
 */
public record MountingHole(String name, Quantity<Length> u, Quantity<Length> v, Panel panel)
    implements Serializable {
  private static final double MOST_PLAY_MM = 2;
  private static final double ROUNDING_MM = 1e-9;

  /**
   * Checks the name.
   *
   * @param name as reports print it
   * @param u place along u
   * @param v place along v
   * @param panel the sheet it is in
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public MountingHole {
    name = Require.text("MountingHole.name", name);
    u = Measure.from(u, Kind.LENGTH);
    v = Measure.from(v, Kind.LENGTH);
    Objects.requireNonNull(panel, "panel");
  }

  /**
   * Whether a bolt fits.
   *
   * @param bolt the bolt
   * @return whether its play is 0 mm to 2 mm
   */
  public boolean takes(Bolt bolt) {
    double playMm = MILLIMETRE.valueOf(panel.hole()) - MILLIMETRE.valueOf(bolt.thread().diameter());
    return playMm >= -ROUNDING_MM && playMm <= MOST_PLAY_MM + ROUNDING_MM;
  }

  /**
   * A bolt in this hole.
   *
   * @param bolt one that fits
   * @return the fixing, of the same name
   */
  public Fixing with(Bolt bolt) {
    return Fixing.at(name, u, v, bolt).in(panel);
  }
}
