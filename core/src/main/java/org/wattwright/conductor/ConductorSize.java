package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.OHM_PER_KILOMETRE;
import static org.wattwright.units.WorkshopUnits.OHM_PER_METRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.MassPerLength;
import org.wattwright.units.Measures;
import org.wattwright.units.ResistancePerLength;

/**
 * A conductor size: its name, its area of metal and the highest resistance it may have.
 *
 * <p>A size name is a resistance limit: a 35 mm² class 5 conductor holds about 31 mm² of copper. So
 * resistance comes from the standard's table, and the nominal area serves for mass and short
 * circuit only. Metric sizes are to IEC 60228, gauges to ASTM B258. Immutable and thread-safe.
 */
public final class ConductorSize implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Stranding lengthens the wires by 2 %; ASTM B8, common practice. */
  private static final double STRANDED_GAUGE_FACTOR = 1.02;

  /** 1000 circular mils in m². */
  private static final double KCMIL_M2 = 5.067075e-7;

  private final String name;
  private final ConductorMaterial material;
  private final StrandClass strandClass;
  private final WireSurface surface;
  private final Quantity<Area> area;
  private final double areaM2;
  private final Given<Quantity<ResistancePerLength>> resistance;
  private final double resistanceOhmPerM;

  ConductorSize(
      String name, Make make, Quantity<Area> area, Given<Quantity<ResistancePerLength>> given) {
    this.name = name;
    this.material = make.material();
    this.strandClass = make.strandClass();
    this.surface = make.surface();
    this.area = area;
    this.areaM2 = Require.quantity("ConductorSize.area", area, SQUARE_METRE).positive();
    this.resistance = given;
    this.resistanceOhmPerM =
        Require.quantity("ConductorSize.resistance", given.value(), OHM_PER_METRE).positive();
  }

  /** What a conductor is made of and how. */
  record Make(ConductorMaterial material, StrandClass strandClass, WireSurface surface) {
    static final Make STRANDED_COPPER =
        new Make(ConductorMaterial.COPPER, StrandClass.STRANDED, WireSurface.PLAIN);
  }

  /**
   * A standard metric size of plain copper.
   *
   * @param area nominal area, one of the standard's: 0.5 mm² to 300 mm²
   * @param strandClass class 2, class 5 or road vehicle (to 120 mm²; from memory)
   * @return the size with the standard's resistance limit
   * @throws org.wattwright.units.InvalidInputException if there is no such size; the message lists
   *     the nearest ones
   */
  public static ConductorSize metric(Quantity<Area> area, StrandClass strandClass) {
    return metric(area, strandClass, WireSurface.PLAIN, ConductorMaterial.COPPER);
  }

  /**
   * A standard metric size.
   *
   * @param area nominal area, one of the standard's: 0.5 mm² to 300 mm²
   * @param strandClass class 2, class 5 or road vehicle
   * @param surface plain or tinned
   * @param material copper, or aluminium (class 2, 10 mm² to 300 mm²)
   * @return the size with the standard's resistance limit
   * @throws org.wattwright.units.InvalidInputException if there is no such size; the message lists
   *     the nearest ones
   */
  public static ConductorSize metric(
      Quantity<Area> area,
      StrandClass strandClass,
      WireSurface surface,
      ConductorMaterial material) {
    double areaMm2 = SQUARE_MILLIMETRE.valueOf(area);
    Require.quantity("ConductorSize.area", area, SQUARE_MILLIMETRE).positive();
    return StandardSizes.find(areaMm2, new Make(material, strandClass, surface));
  }

  /**
   * All standard metric sizes of one make, smallest first.
   *
   * @param strandClass class 2, class 5 or road vehicle
   * @param surface plain or tinned
   * @param material copper or aluminium
   * @return an immutable list; empty if the standard has none
   */
  public static List<ConductorSize> metricSizes(
      StrandClass strandClass, WireSurface surface, ConductorMaterial material) {
    return StandardSizes.all(new Make(material, strandClass, surface));
  }

  /**
   * A solid copper wire by its American Wire Gauge number; ASTM B258, 100 % IACS.
   *
   * @param gauge −3 (4/0) to 20
   * @return the size
   * @throws org.wattwright.units.InvalidInputException if the gauge is outside its range
   */
  public static ConductorSize awg(int gauge) {
    return gauge(gauge, new Make(ConductorMaterial.COPPER, StrandClass.SOLID, WireSurface.PLAIN));
  }

  /**
   * A stranded copper conductor by its American Wire Gauge number: 2 % more resistance than the
   * solid wire (ASTM B8, common practice).
   *
   * @param gauge −3 (4/0) to 20
   * @return the size
   * @throws org.wattwright.units.InvalidInputException if the gauge is outside its range
   */
  public static ConductorSize awgStranded(int gauge) {
    return gauge(gauge, Make.STRANDED_COPPER);
  }

  /**
   * A stranded copper conductor by thousands of circular mils, for the sizes above 4/0.
   *
   * @param kcmil 212 to 2000
   * @return the size
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static ConductorSize kilocircularMils(int kcmil) {
    Require.count("ConductorSize.kilocircularMils", kcmil, 212, 2000);
    Quantity<Area> area = SQUARE_MILLIMETRE.of(kcmil * KCMIL_M2 * 1e6);
    return fromArea(kcmil + " kcmil", Make.STRANDED_COPPER, area);
  }

  /**
   * A size of your own.
   *
   * @param name as reports print it
   * @param material the metal
   * @param area area of metal, &gt; 0
   * @param resistance resistance per length at 20 °C with its basis, &gt; 0
   * @return the size, taken as class 5
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static ConductorSize of(
      String name,
      ConductorMaterial material,
      Quantity<Area> area,
      Given<Quantity<ResistancePerLength>> resistance) {
    Make make = new Make(material, StrandClass.FLEXIBLE, WireSurface.PLAIN);
    return new ConductorSize(Require.text("ConductorSize.name", name), make, area, resistance);
  }

  private static ConductorSize gauge(int gauge, Make make) {
    Require.count("ConductorSize.gauge", gauge, -3, 20);
    String number = gauge > 0 ? Integer.toString(gauge) : (1 - gauge) + "/0";
    return fromArea(number + " AWG", make, Measures.awg(gauge));
  }

  private static ConductorSize fromArea(String name, Make make, Quantity<Area> area) {
    boolean solid = make.strandClass() == StrandClass.SOLID;
    double factor = solid ? 1 : STRANDED_GAUGE_FACTOR;
    double ohmPerM = factor * make.material().resistivityOhmM() / Kind.AREA.siValueOf(area);
    Quantity<ResistancePerLength> resistance = Kind.RESISTANCE_PER_LENGTH.ofSi(ohmPerM);
    Source source = Source.standard(solid ? "ASTM B258" : "ASTM B258, ASTM B8", "100 % IACS");
    return new ConductorSize(name, make, area, new Given<>(resistance, Basis.DATA_SHEET, source));
  }

  /**
   * The name.
   *
   * @return for example {@code 35 mm²} or {@code 2/0 AWG}
   */
  public String name() {
    return name;
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
   * How it is stranded.
   *
   * @return the class
   */
  public StrandClass strandClass() {
    return strandClass;
  }

  /**
   * Whether its wires are coated.
   *
   * @return plain or tinned
   */
  public WireSurface surface() {
    return surface;
  }

  /**
   * Nominal area of metal, for mass and short circuit.
   *
   * @return in mm²
   */
  public Quantity<Area> area() {
    return area;
  }

  /**
   * Highest resistance per length at 20 °C, with its basis and source.
   *
   * @return in Ω/km
   */
  public Given<Quantity<ResistancePerLength>> resistance() {
    return resistance;
  }

  /**
   * Resistance per length at a temperature: R′ = R′₂₀·[1 + α·(θ − 20 °C)].
   *
   * @param temperature of the conductor, −100 °C to 400 °C
   * @return in Ω/km
   * @throws org.wattwright.units.InvalidInputException if the temperature is outside its range
   */
  public Quantity<ResistancePerLength> resistanceAt(Quantity<Temperature> temperature) {
    double temperatureK = ConductorMaterial.temperatureK("ConductorSize.temperature", temperature);
    return Kind.RESISTANCE_PER_LENGTH.ofSi(
        resistanceOhmPerM * material.resistanceRatio(temperatureK));
  }

  /**
   * Factor that brings a resistance measured at a temperature to 20 °C for comparison with the
   * limit: k_t = 250/(230 + θ).
   *
   * <p>Source: IEC 60228:2004, annex. It differs by up to 0.5 % from the linear law of the metal.
   *
   * @param temperature of the conductor when measured, 5 °C to 100 °C
   * @return the factor
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static double factorTo20(Quantity<Temperature> temperature) {
    Require.quantity("ConductorSize.temperature", temperature, CELSIUS).between(5, 100);
    return 250 / (230 + CELSIUS.valueOf(temperature));
  }

  /**
   * Area of solid metal that has this resistance: A = ρ₂₀/R′₂₀.
   *
   * @return in mm²; smaller than the nominal area
   */
  public Quantity<Area> equivalentArea() {
    return Kind.AREA.ofSi(material.resistivityOhmM() / resistanceOhmPerM);
  }

  /**
   * Diameter of a solid wire of the nominal area: d = √(4·A/π).
   *
   * @return in m
   */
  public Quantity<Length> solidDiameter() {
    return Kind.LENGTH.ofSi(Math.sqrt(4 * areaM2 / Math.PI));
  }

  /**
   * Mass of metal per length, from the nominal area.
   *
   * @return in kg/m
   */
  public Quantity<MassPerLength> metalMass() {
    return Kind.MASS_PER_LENGTH.ofSi(areaM2 * material.thermal().densityKgPerM3());
  }

  double areaM2() {
    return areaM2;
  }

  double resistanceOhmPerM() {
    return resistanceOhmPerM;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ConductorSize that
        && name.equals(that.name)
        && material.equals(that.material)
        && strandClass == that.strandClass
        && surface == that.surface
        && areaM2 == that.areaM2
        && resistanceOhmPerM == that.resistanceOhmPerM;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, material.name(), strandClass, surface);
  }

  /**
   * Name, class, surface and metal.
   *
   * @return for example {@code 35 mm² class 5 plain copper, 0.554 Ω/km at 20 °C}
   */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s %s %s %s, %s at 20 °C",
        name,
        strandClass,
        surface,
        material,
        Measures.format(OHM_PER_KILOMETRE.of(resistanceOhmPerM * 1e3), Kind.RESISTANCE_PER_LENGTH));
  }
}
