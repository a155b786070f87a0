package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;

/**
 * Dipped-beam aim after the springs have moved: change = (front rise + rear sink)/wheelbase. A
 * lighter nose and a heavier tail both raise the beam. Source: geometry. Immutable and thread-safe.
 *
 * @param inclination as a share of the distance, negative downward; −0.01 is 1 % down
 */
public record HeadlampAim(double inclination) implements Serializable {
  private static final Source AIM =
      Source.standard(
          "UN R48", "para 6.2.6.1, lamp below 0.8 m; Directive 76/756/EEC; newer series differ");

  private static final double INITIAL_LEAST = -0.015;
  private static final double INITIAL_MOST = -0.010;
  private static final double ALL_LOADS_LEAST = -0.025;
  private static final double ALL_LOADS_MOST = -0.005;

  /**
   * Checks the range.
   *
   * @param inclination −0.5 to 0.5
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public HeadlampAim {
    Require.between("HeadlampAim.inclination", inclination, -0.5, 0.5);
  }

  /**
   * Movement of the body over its axles.
   *
   * @param frontRise of the body at the front axle, of either sign
   * @param rearSink of the body at the rear axle, of either sign
   * @param wheelbase &gt; 0 m
   */
  public record Pitch(
      Quantity<Length> frontRise, Quantity<Length> rearSink, Quantity<Length> wheelbase)
      implements Serializable {
    /**
     * Checks the wheelbase.
     *
     * @param frontRise of either sign
     * @param rearSink of either sign
     * @param wheelbase &gt; 0 m
     * @throws org.wattwright.units.InvalidInputException if it is not positive
     */
    public Pitch {
      Require.quantity("HeadlampAim.frontRise", frontRise, MILLIMETRE).any();
      Require.quantity("HeadlampAim.rearSink", rearSink, MILLIMETRE).any();
      Require.quantity("HeadlampAim.wheelbase", wheelbase, METRE).positive();
      frontRise = MILLIMETRE.of(MILLIMETRE.valueOf(frontRise));
      rearSink = MILLIMETRE.of(MILLIMETRE.valueOf(rearSink));
      wheelbase = METRE.of(METRE.valueOf(wheelbase));
    }

    /**
     * Change of the aim.
     *
     * @return as a share of the distance, positive where the beam goes up
     */
    public double change() {
      double movedM = (MILLIMETRE.valueOf(frontRise) + MILLIMETRE.valueOf(rearSink)) / 1000;
      return movedM / METRE.valueOf(wheelbase);
    }

    /**
     * Pitch angle of the body.
     *
     * @return in °, positive where the nose goes up
     */
    public Quantity<Angle> angle() {
      return DEGREE.of(Math.toDegrees(Math.atan(change())));
    }
  }

  /**
   * The aim after the body has moved.
   *
   * @param pitch of the body
   * @return a new aim
   */
  public HeadlampAim after(Pitch pitch) {
    return new HeadlampAim(inclination + pitch.change());
  }

  /**
   * The working of the new aim.
   *
   * @param pitch of the body
   * @return the worksheet
   */
  public Worksheet worksheet(Pitch pitch) {
    Worksheet.Recording sheet = Worksheet.record("Dipped-beam aim");
    sheet
        .step("Δn", "change of the aim")
        .formula("(z_f + z_r)/L")
        .with("z_f", Figure.of(pitch.frontRise(), MILLIMETRE))
        .with("z_r", Figure.of(pitch.rearSink(), MILLIMETRE))
        .with("L", Figure.of(pitch.wheelbase(), METRE))
        .gives(Figure.share(pitch.change()));
    sheet
        .step("n", "new aim")
        .formula("n_0 + Δn")
        .with("n_0", Figure.share(inclination))
        .with("Δn", Figure.share(pitch.change()))
        .gives(Figure.share(after(pitch).inclination()));
    return sheet.toWorksheet();
  }

  /**
   * Height by which the cut-off moves on a screen.
   *
   * @param pitch of the body
   * @param distance of the screen, &gt; 0 m
   * @return in mm, positive upward
   * @throws org.wattwright.units.InvalidInputException if the distance is not positive
   */
  public static Quantity<Length> cutOffShift(Pitch pitch, Quantity<Length> distance) {
    double distanceM = Require.quantity("HeadlampAim.distance", distance, METRE).positive();
    return MILLIMETRE.of(pitch.change() * distanceM * 1000);
  }

  /**
   * The verdicts as the lamp is set: {@code installation.headlamp-initial-low}, {@code
   * installation.headlamp-initial-high}, 1.0 % to 1.5 % down.
   *
   * @return two checks
   */
  public List<Check> initialChecks() {
    return band("initial", INITIAL_LEAST, INITIAL_MOST);
  }

  /**
   * The verdicts in a load case: {@code installation.headlamp-loads-low}, {@code
   * installation.headlamp-loads-high}, 0.5 % to 2.5 % down.
   *
   * @return two checks
   */
  public List<Check> loadChecks() {
    return band("loads", ALL_LOADS_LEAST, ALL_LOADS_MOST);
  }

  private List<Check> band(String code, double least, double most) {
    Figure actual = Figure.share(inclination);
    return List.of(
        Check.named("installation.headlamp-" + code + "-low", "dipped beam not too far down")
            .source(AIM)
            .cautionBand(CautionBand.NONE)
            .atLeast(actual, Figure.share(least)),
        Check.named("installation.headlamp-" + code + "-high", "dipped beam not too far up")
            .source(AIM)
            .cautionBand(CautionBand.NONE)
            .safety()
            .atMost(actual, Figure.share(most)));
  }
}
