package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Torque;

/**
 * Cross-section of a bracket or rail, sharp corners; catalogue values of rounded tubes are a little
 * lower.
 *
 * <p>Rectangular tube I = (b·h³ − (b − 2t)·(h − 2t)³)/12, flat bar b·h³/12, round tube π·(D⁴ −
 * d⁴)/64; W = 2·I/h; stress M/W. A hole through both flanges takes 2·(d·t·((h − t)/2)² + d·t³/12)
 * from I. Source: strength of materials; Bredt's formula for torsion. Immutable and thread-safe.
 */
public final class BeamSection implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Fields fields;

  private enum Shape {
    RECTANGULAR,
    FLAT,
    ROUND
  }

  private record Fields(Shape shape, double widthM, double heightM, double wallM, double holeM)
      implements Serializable {}

  private BeamSection(Fields fields) {
    this.fields = fields;
  }

  /**
   * A rectangular tube.
   *
   * @param width across the load, &gt; 0 mm
   * @param height along the load, &gt; 0 mm
   * @param wall &gt; 0 mm, below half the smaller side
   * @return the section
   * @throws InvalidInputException if a value is outside its range
   */
  public static BeamSection rectangularTube(
      Quantity<Length> width, Quantity<Length> height, Quantity<Length> wall) {
    double widthM = positive("BeamSection.width", width);
    double heightM = positive("BeamSection.height", height);
    double wallM = wall(wall, Math.min(widthM, heightM));
    return new BeamSection(new Fields(Shape.RECTANGULAR, widthM, heightM, wallM, 0));
  }

  /**
   * A flat bar.
   *
   * @param width across the load, &gt; 0 mm
   * @param height along the load, &gt; 0 mm: the thickness of a bar bent the thin way
   * @return the section
   * @throws InvalidInputException if a value is not positive
   */
  public static BeamSection flatBar(Quantity<Length> width, Quantity<Length> height) {
    double widthM = positive("BeamSection.width", width);
    double heightM = positive("BeamSection.height", height);
    return new BeamSection(new Fields(Shape.FLAT, widthM, heightM, heightM / 2, 0));
  }

  /**
   * A round tube.
   *
   * @param diameter outside, &gt; 0 mm
   * @param wall &gt; 0 mm, below half the diameter
   * @return the section
   * @throws InvalidInputException if a value is outside its range
   */
  public static BeamSection roundTube(Quantity<Length> diameter, Quantity<Length> wall) {
    double diameterM = positive("BeamSection.diameter", diameter);
    return new BeamSection(new Fields(Shape.ROUND, diameterM, diameterM, wall(wall, diameterM), 0));
  }

  /**
   * With a hole through both flanges of a rectangular tube, where a bolt goes through.
   *
   * @param diameter &gt; 0 mm, below the width
   * @return a new section, net
   * @throws InvalidInputException if not a rectangular tube, or outside its range
   */
  public BeamSection withHole(Quantity<Length> diameter) {
    double holeM = positive("BeamSection.hole", diameter);
    if (fields.shape != Shape.RECTANGULAR || !(holeM < fields.widthM)) {
      throw InvalidInputException.of(
          "BeamSection.hole", "narrower than a rectangular tube", diameter.toString());
    }
    return new BeamSection(
        new Fields(fields.shape, fields.widthM, fields.heightM, fields.wallM, holeM));
  }

  private static double positive(String field, Quantity<Length> value) {
    return Require.quantity(field, value, MILLIMETRE).positive();
  }

  private static double wall(Quantity<Length> wall, double smallestM) {
    double wallM = positive("BeamSection.wall", wall);
    if (!(wallM < smallestM / 2)) {
      throw InvalidInputException.of(
          "BeamSection.wall", "< " + MILLIMETRE.of(smallestM * 500), wall.toString());
    }
    return wallM;
  }

  /** Second moment of area, net. */
  double secondMomentM4() {
    double b = fields.widthM;
    double h = fields.heightM;
    double t = fields.wallM;
    return switch (fields.shape) {
      case RECTANGULAR -> (b * cube(h) - (b - 2 * t) * cube(h - 2 * t)) / 12 - holeM4();
      case FLAT -> b * cube(h) / 12;
      case ROUND -> Math.PI * (h * cube(h) - (h - 2 * t) * cube(h - 2 * t)) / 64;
    };
  }

  private double holeM4() {
    double d = fields.holeM;
    double t = fields.wallM;
    double arm = (fields.heightM - t) / 2;
    return 2 * (d * t * arm * arm + d * cube(t) / 12);
  }

  private static double cube(double x) {
    return x * x * x;
  }

  /** Section modulus, net. */
  double modulusM3() {
    return 2 * secondMomentM4() / fields.heightM;
  }

  /**
   * Area of the material, net of a hole.
   *
   * @return in mm²
   */
  public Quantity<Area> area() {
    return SQUARE_MILLIMETRE.of(areaM2() * 1e6);
  }

  private double areaM2() {
    double b = fields.widthM;
    double h = fields.heightM;
    double t = fields.wallM;
    return switch (fields.shape) {
      case RECTANGULAR -> b * h - (b - 2 * t) * (h - 2 * t) - 2 * fields.holeM * t;
      case FLAT -> b * h;
      case ROUND -> Math.PI / 4 * (h * h - (h - 2 * t) * (h - 2 * t));
    };
  }

  /**
   * Largest stress from bending and tension: N/A + M/W.
   *
   * @param moment ≥ 0 N·m
   * @param tension ≥ 0 N
   * @return in MPa
   * @throws InvalidInputException if a value is negative
   */
  public Quantity<Pressure> stress(Quantity<Torque> moment, Quantity<Force> tension) {
    double momentNm = Require.quantity("BeamSection.moment", moment, NEWTON_METRE).nonNegative();
    double tensionN = Require.quantity("BeamSection.tension", tension, NEWTON).nonNegative();
    return MEGAPASCAL.of((tensionN / areaM2() + momentNm / modulusM3()) / 1e6);
  }

  /**
   * Shear stress from torsion of a rectangular tube: T/(2·(b − t)·(h − t)·t), Bredt.
   *
   * @param torque ≥ 0 N·m
   * @return in MPa
   * @throws InvalidInputException if negative, or the section is no rectangular tube
   */
  public Quantity<Pressure> torsionStress(Quantity<Torque> torque) {
    double torqueNm = Require.quantity("BeamSection.torque", torque, NEWTON_METRE).nonNegative();
    if (fields.shape != Shape.RECTANGULAR) {
      throw InvalidInputException.of(
          "BeamSection.shape", "a rectangular tube for torsion", toString());
    }
    double enclosedM2 = (fields.widthM - fields.wallM) * (fields.heightM - fields.wallM);
    return MEGAPASCAL.of(torqueNm / (2 * enclosedM2 * fields.wallM) / 1e6);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BeamSection that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Shape and dimensions.
   *
   * @return for example {@code tube 40 mm × 40 mm × 3 mm}
   */
  @Override
  public String toString() {
    String wall = MILLIMETRE.of(fields.wallM * 1000).toString();
    String height = MILLIMETRE.of(fields.heightM * 1000).toString();
    String width = MILLIMETRE.of(fields.widthM * 1000).toString();
    String hole = fields.holeM > 0 ? ", hole " + MILLIMETRE.of(fields.holeM * 1000) : "";
    return switch (fields.shape) {
      case RECTANGULAR -> "tube " + width + " × " + height + " × " + wall + hole;
      case FLAT -> "flat bar " + width + " × " + height;
      case ROUND -> "round tube " + width + " × " + wall;
    };
  }
}
