package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A flat bar: section, metal, bare or sleeved, on edge or flat.
 *
 * <p>Width 5 mm to 300 mm, thickness 0.5 mm to 20 mm, for direct current. Emissivities are common
 * practice: 0.4 oxidised copper, 0.9 painted or sleeved. The thermal resistance of a sleeve is
 * counted over the perimeter. Immutable and thread-safe.
 */
public final class Busbar implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How a bar lies. */
  public enum Orientation {
    /** Its broad faces are vertical: the better cooled. */
    ON_EDGE,
    /** Its broad faces are horizontal. */
    FLAT
  }

  /** What covers a bar. */
  public enum Cover {
    /** Bare metal, oxidised by use; emissivity 0.4. */
    BARE(0.4),
    /** Painted; emissivity 0.9. */
    PAINTED(0.9),
    /** In an insulating sleeve; emissivity 0.9. */
    SLEEVED(0.9);

    private final double emissivity;

    Cover(double emissivity) {
      this.emissivity = emissivity;
    }

    /**
     * Emissivity of the surface.
     *
     * @return 0 to 1
     */
    public double emissivity() {
      return emissivity;
    }
  }

  /** Width and thickness in m. */
  record Section(double widthM, double thicknessM) implements Serializable {
    double areaM2() {
      return widthM * thicknessM;
    }

    double perimeterM() {
      return 2 * (widthM + thicknessM);
    }
  }

  /** Sleeve: its wall in m and its material; no wall without one. */
  private record Sleeve(double wallM, @Nullable InsulationMaterial material)
      implements Serializable {}

  private final ConductorMaterial material;
  private final Section section;
  private final Cover cover;
  private final double emissivity;
  private final Orientation orientation;
  private final Sleeve sleeve;
  private final double limitK;

  private Busbar(
      ConductorMaterial material,
      Section section,
      Cover cover,
      double emissivity,
      Orientation orientation,
      Sleeve sleeve,
      double limitK) {
    this.material = material;
    this.section = section;
    this.cover = cover;
    this.emissivity = emissivity;
    this.orientation = orientation;
    this.sleeve = sleeve;
    this.limitK = limitK;
  }

  /**
   * A bare bar on edge that may reach 90 °C.
   *
   * @param material the metal
   * @param width 5 mm to 300 mm, at least the thickness
   * @param thickness 0.5 mm to 20 mm
   * @return the bar; the {@code with…} methods vary it
   * @throws InvalidInputException if a measure is outside its range
   */
  public static Busbar of(
      ConductorMaterial material, Quantity<Length> width, Quantity<Length> thickness) {
    double widthM = Require.quantity("Busbar.width", width, MILLIMETRE).between(5, 300);
    double thicknessM =
        Require.quantity("Busbar.thickness", thickness, MILLIMETRE).between(0.5, 20);
    if (!(thicknessM <= widthM)) {
      throw InvalidInputException.of("Busbar.thickness", "≤ width " + width, thickness.toString());
    }
    return new Busbar(
        Objects.requireNonNull(material, "material"),
        new Section(widthM, thicknessM),
        Cover.BARE,
        Cover.BARE.emissivity(),
        Orientation.ON_EDGE,
        new Sleeve(0, null),
        Kind.TEMPERATURE.siValueOf(CELSIUS.of(90)));
  }

  /**
   * The same bar, painted.
   *
   * @return the bar
   */
  public Busbar painted() {
    return covered(Cover.PAINTED, Cover.PAINTED.emissivity(), new Sleeve(0, null));
  }

  /**
   * The same bar in a sleeve.
   *
   * @param insulation of the sleeve
   * @param wall &gt; 0 and at most 5 mm
   * @return the bar; its limit is the lower of its own and the sleeve's
   * @throws InvalidInputException if the wall is outside its range
   */
  public Busbar sleeved(InsulationMaterial insulation, Quantity<Length> wall) {
    double wallM = Require.quantity("Busbar.sleeveWall", wall, MILLIMETRE).positiveUpTo(5);
    return covered(Cover.SLEEVED, Cover.SLEEVED.emissivity(), new Sleeve(wallM, insulation));
  }

  /**
   * The same bar with a measured emissivity.
   *
   * @param value 0 to 1; about 0.1 for new bright copper
   * @return the bar
   * @throws InvalidInputException if outside its range
   */
  public Busbar withEmissivity(double value) {
    return covered(cover, Require.fraction("Busbar.emissivity", value), sleeve);
  }

  private Busbar covered(Cover newCover, double newEmissivity, Sleeve newSleeve) {
    double sleeveLimitK =
        newSleeve.material() == null
            ? limitK
            : Kind.TEMPERATURE.siValueOf(newSleeve.material().temperatureLimit());
    return new Busbar(
        material,
        section,
        newCover,
        newEmissivity,
        orientation,
        newSleeve,
        Math.min(limitK, sleeveLimitK));
  }

  /**
   * The same bar lying another way.
   *
   * @param value on edge or flat
   * @return the bar
   */
  public Busbar withOrientation(Orientation value) {
    return new Busbar(material, section, cover, emissivity, value, sleeve, limitK);
  }

  /**
   * The same bar with another limit.
   *
   * @param value 40 °C to 200 °C; above about 110 °C copper oxidises fast and softens
   * @return the bar
   * @throws InvalidInputException if outside its range
   */
  public Busbar withTemperatureLimit(Quantity<Temperature> value) {
    double newLimitK = Require.quantity("Busbar.temperatureLimit", value, CELSIUS).between(40, 200);
    return new Busbar(material, section, cover, emissivity, orientation, sleeve, newLimitK);
  }

  /**
   * Cross-section of metal.
   *
   * @return in mm²
   */
  public Quantity<Area> area() {
    return Kind.AREA.ofSi(section.areaM2());
  }

  /**
   * The metal.
   *
   * @return the material
   */
  public ConductorMaterial material() {
    return material;
  }

  /**
   * Highest continuous temperature.
   *
   * @return absolute
   */
  public Quantity<Temperature> temperatureLimit() {
    return Kind.TEMPERATURE.ofSi(limitK);
  }

  /**
   * What covers it.
   *
   * @return the cover
   */
  public Cover cover() {
    return cover;
  }

  /**
   * How it lies.
   *
   * @return the orientation
   */
  public Orientation orientation() {
    return orientation;
  }

  /**
   * Resistance of a length at a temperature.
   *
   * @param length &gt; 0
   * @param temperature of the bar, −100 °C to 400 °C
   * @return in Ω
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<ElectricResistance> resistance(
      Quantity<Length> length, Quantity<Temperature> temperature) {
    return material.resistance(length, area(), temperature);
  }

  /**
   * Mass of metal.
   *
   * @param length &gt; 0
   * @return in kg
   * @throws InvalidInputException if the length is not positive
   */
  public Quantity<Mass> mass(Quantity<Length> length) {
    double lengthM = Require.quantity("Busbar.length", length, METRE).positive();
    return Kind.MASS.ofSi(section.areaM2() * lengthM * material.thermal().densityKgPerM3());
  }

  double limitK() {
    return limitK;
  }

  /** The formula of a flat bar is from memory. */
  Basis heatingBasis() {
    return orientation == Orientation.FLAT ? Basis.ESTIMATED : Basis.DATA_SHEET;
  }

  HeatedConductor heated(Installation installation) {
    boolean onEdge = orientation == Orientation.ON_EDGE;
    SurfaceLoss loss = new BarLoss(installation.surroundings(), emissivity, section, onEdge);
    return new HeatedConductor(
        material.resistivityOhmM() / section.areaM2(),
        material.coefficientPerK(),
        sleeveKmPerW(),
        new SteadyKernel(loss),
        section.areaM2() * material.thermal().heatCapacityJPerM3K());
  }

  private double sleeveKmPerW() {
    InsulationMaterial sleeveMaterial = sleeve.material();
    return sleeveMaterial == null
        ? 0
        : sleeveMaterial.properties().resistivityKmPerW() * sleeve.wallM() / section.perimeterM();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Busbar that
        && material.equals(that.material)
        && section.equals(that.section)
        && cover == that.cover
        && emissivity == that.emissivity
        && orientation == that.orientation
        && sleeve.equals(that.sleeve)
        && limitK == that.limitK;
  }

  @Override
  public int hashCode() {
    return Objects.hash(material.name(), section, cover, orientation);
  }

  /**
   * Section, metal, cover and orientation.
   *
   * @return for example {@code 40 mm x 5 mm copper, BARE, ON_EDGE}
   */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s x %s %s, %s, %s",
        Shown.millimetres(section.widthM()),
        Shown.millimetres(section.thicknessM()),
        material,
        cover,
        orientation);
  }
}
