package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.LITRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A vacuum brake servo as a consumer of vacuum.
 *
 * <p>At rest both sides of its diaphragm are evacuated. On application the side behind the
 * diaphragm is shut off and filled with air: it grows from its volume at rest V_r to V_s at full
 * stroke. On release this air goes to the vacuum side. Each full application lets p_atm·V_s − p·V_r
 * of air in. A servo of which V_r is not known counts with V_r = 0, which asks for the most vacuum;
 * V_r = V_s is the plain exchange of volumes that many hand calculations use, and lets in least.
 * Immutable and thread-safe.
 */
public final class BrakeServo implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Fields fields;

  private record Fields(
      double strokeM3, double heldM3, double restM3, @Nullable Double diaphragmM, int diaphragms)
      implements Serializable {}

  private BrakeServo(Fields fields) {
    this.fields = fields;
  }

  /**
   * A servo from its volumes.
   *
   * @param airSide behind the diaphragm at full stroke, &gt; 0 L
   * @param held by servo and hose together at rest, at least the air side, L
   * @return the servo, nothing behind its diaphragm at rest
   * @throws InvalidInputException if a volume is outside its range
   */
  public static BrakeServo of(Quantity<Volume> airSide, Quantity<Volume> held) {
    double strokeM3 = Require.quantity("BrakeServo.airSide", airSide, LITRE).positive();
    double heldM3 = Require.quantity("BrakeServo.held", held, LITRE).positive();
    if (!(heldM3 >= strokeM3)) {
      throw InvalidInputException.of("BrakeServo.held", "≥ " + airSide, held.toString());
    }
    return new BrakeServo(new Fields(strokeM3, heldM3, 0, null, 1));
  }

  /**
   * With the volume that lies behind the diaphragm at rest.
   *
   * @param volume 0 L to the volume of the air side
   * @return a new servo
   * @throws InvalidInputException if outside its range
   */
  public BrakeServo restVolume(Quantity<Volume> volume) {
    double restM3 = Require.quantity("BrakeServo.restVolume", volume, LITRE).nonNegative();
    if (!(restM3 <= fields.strokeM3)) {
      throw InvalidInputException.of(
          "BrakeServo.restVolume", "≤ " + LITRE.of(fields.strokeM3 * 1000), volume.toString());
    }
    return new BrakeServo(
        new Fields(fields.strokeM3, fields.heldM3, restM3, fields.diaphragmM, fields.diaphragms));
  }

  /**
   * With its diaphragms, for the force.
   *
   * @param diameter effective, of each, &gt; 0 mm
   * @param count one behind the other, 1 to 4
   * @return a new servo
   * @throws InvalidInputException if a value is outside its range
   */
  public BrakeServo diaphragms(Quantity<Length> diameter, int count) {
    double diaphragmM = Require.quantity("BrakeServo.diaphragm", diameter, MILLIMETRE).positive();
    int diaphragms = Require.count("BrakeServo.diaphragms", count, 1, 4);
    return new BrakeServo(
        new Fields(fields.strokeM3, fields.heldM3, fields.restM3, diaphragmM, diaphragms));
  }

  /**
   * Largest force: F = n·π/4·D²·Δp, no losses, the rod's area left out.
   *
   * @param difference between air and vacuum, ≥ 0 kPa
   * @return in N; empty if the diaphragm is not known
   * @throws InvalidInputException if the difference is negative
   */
  public Optional<Quantity<Force>> force(Quantity<Pressure> difference) {
    double differencePa =
        Require.quantity("BrakeServo.difference", difference, KILOPASCAL).nonNegative();
    if (fields.diaphragmM == null) {
      return Optional.empty();
    }
    double diameterM = fields.diaphragmM;
    double areaM2 = fields.diaphragms * Math.PI / 4 * diameterM * diameterM;
    return Optional.of(NEWTON.of(areaM2 * differencePa));
  }

  /**
   * Volume of servo and hose at rest.
   *
   * @return in L
   */
  public Quantity<Volume> held() {
    return LITRE.of(fields.heldM3 * 1000);
  }

  double strokeM3() {
    return fields.strokeM3;
  }

  double heldM3() {
    return fields.heldM3;
  }

  double restM3() {
    return fields.restM3;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BrakeServo that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Volumes and diaphragms.
   *
   * @return for example {@code servo with 0.5 L behind the diaphragm, 2.5 L held}
   */
  @Override
  public String toString() {
    String rest = fields.restM3 > 0 ? " (" + Kind.VOLUME.ofSi(fields.restM3) + " at rest)" : "";
    String force =
        fields.diaphragmM == null
            ? ""
            : ", " + fields.diaphragms + " × " + MILLIMETRE.of(fields.diaphragmM * 1000);
    return "servo with "
        + LITRE.of(fields.strokeM3 * 1000)
        + " behind the diaphragm"
        + rest
        + ", "
        + held()
        + " held"
        + force;
  }
}
