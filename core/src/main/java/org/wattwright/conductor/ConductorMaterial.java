package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.Kind;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.TemperatureCoefficient;

/**
 * A conductor metal: how well it conducts, how that falls with temperature, how much heat it takes.
 *
 * <p>R(θ) = R₂₀·[1 + α·(θ − 20 °C)] from −100 °C to 400 °C; common practice. For short circuits K =
 * √(Q_c·(β + 20)/ρ₂₀) and β, both to IEC 60949, rounded as the standard prints them for copper and
 * aluminium. Immutable and thread-safe.
 */
public final class ConductorMaterial implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Resistivity of annealed copper of 100 % IACS at 20 °C, 1/58 Ω·mm²/m; IEC 60028. */
  static final double IACS_RESISTIVITY_OHM_M = 1e-6 / 58;

  /** Wiedemann–Franz constant of copper at 0 °C, W·Ω/K², the low end; Kittel (from memory). */
  private static final double LORENZ_W_OHM_PER_K2 = 2.23e-8;

  /** Temperature at which resistances of conductors are stated. */
  static final double REFERENCE_K = 293.15;

  static final double LOWEST_C = -100;
  static final double HIGHEST_C = 400;

  /**
   * Annealed copper, 100 % IACS: ρ₂₀ = 1/58 Ω·mm²/m, α = 0.00393 1/K, 8.89 g/cm³ (IEC 60028); K =
   * 226 A·√s/mm², β = 234.5 K (IEC 60949); melts at 1083 °C.
   */
  public static final ConductorMaterial COPPER =
      new ConductorMaterial(
          "copper",
          new Electrical(IACS_RESISTIVITY_OHM_M, 0.00393),
          new Thermal(8890, 3.45e6 / 8890, 1083 + 273.15),
          new Adiabatic(226e6, 234.5),
          Source.standard("IEC 60028, IEC 60949", ""));

  /**
   * Aluminium for conductors: ρ₂₀ = 0.028264 Ω·mm²/m, α = 0.00403 1/K, 2.703 g/cm³ (IEC 60889); K =
   * 148 A·√s/mm², β = 228 K (IEC 60949); melts at 660 °C.
   */
  public static final ConductorMaterial ALUMINIUM =
      new ConductorMaterial(
          "aluminium",
          new Electrical(2.8264e-8, 0.00403),
          new Thermal(2703, 2.5e6 / 2703, 660 + 273.15),
          new Adiabatic(148e6, 228),
          Source.standard("IEC 60889, IEC 60949", ""));

  /** Resistivity at 20 °C in Ω·m and its temperature coefficient in 1/K. */
  record Electrical(double resistivityOhmM, double coefficientPerK) implements Serializable {}

  /** Density in kg/m³, specific heat in J/(kg·K), melting point in K. */
  record Thermal(double densityKgPerM3, double specificHeatJPerKgK, double meltingK)
      implements Serializable {
    double heatCapacityJPerM3K() {
      return densityKgPerM3 * specificHeatJPerKgK;
    }
  }

  /** IEC 60949: K in A·√s/m², β in K. */
  record Adiabatic(double constantSi, double betaK) implements Serializable {}

  private final String name;
  private final Electrical electrical;
  private final Thermal thermal;
  private final Adiabatic adiabatic;
  private final Source source;

  private ConductorMaterial(
      String name, Electrical electrical, Thermal thermal, Adiabatic adiabatic, Source source) {
    this.name = name;
    this.electrical = electrical;
    this.thermal = thermal;
    this.adiabatic = adiabatic;
    this.source = source;
  }

  ConductorMaterial(ConductorMaterialBuilder builder, Electrical electrical, Thermal thermal) {
    this(builder.name(), electrical, thermal, derived(electrical, thermal), builder.source());
  }

  private static Adiabatic derived(Electrical electrical, Thermal thermal) {
    double betaK = 1 / electrical.coefficientPerK() - 20;
    double constantSi =
        Math.sqrt(thermal.heatCapacityJPerM3K() * (betaK + 20) / electrical.resistivityOhmM());
    return new Adiabatic(constantSi, betaK);
  }

  /**
   * Starts a metal of your own.
   *
   * @param name as reports print it
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static ConductorMaterialBuilder named(String name) {
    return new ConductorMaterialBuilder(Require.text("ConductorMaterial.name", name));
  }

  /**
   * Copper of another conductivity, such as 0.99 for bars.
   *
   * <p>The temperature coefficient falls in proportion, since impurities add a resistance that does
   * not depend on temperature (IEC 60028).
   *
   * @param conductivity share of 100 % IACS (58 MS/m), 0.1 to 1.05
   * @return the metal
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public static ConductorMaterial copperOf(double conductivity) {
    double share = Require.between("ConductorMaterial.conductivity", conductivity, 0.1, 1.05);
    Electrical electrical = new Electrical(IACS_RESISTIVITY_OHM_M / share, 0.00393 * share);
    return new ConductorMaterial(
        "copper of conductivity " + share,
        electrical,
        COPPER.thermal,
        derived(electrical, COPPER.thermal),
        Source.standard("IEC 60028", "coefficient in proportion to conductivity"));
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
   * Conductivity at 20 °C.
   *
   * @return share of 100 % IACS (58 MS/m)
   */
  public double conductivity() {
    return IACS_RESISTIVITY_OHM_M / electrical.resistivityOhmM();
  }

  /**
   * Temperature coefficient of resistance at 20 °C.
   *
   * @return α in 1/K
   */
  public Quantity<TemperatureCoefficient> temperatureCoefficient() {
    return Kind.TEMPERATURE_COEFFICIENT.ofSi(electrical.coefficientPerK());
  }

  /**
   * Density.
   *
   * @return in kg/m³
   */
  public Quantity<Density> density() {
    return Kind.DENSITY.ofSi(thermal.densityKgPerM3());
  }

  /**
   * Specific heat capacity near room temperature.
   *
   * @return in J/(kg·K)
   */
  public Quantity<SpecificHeatCapacity> specificHeatCapacity() {
    return Kind.SPECIFIC_HEAT_CAPACITY.ofSi(thermal.specificHeatJPerKgK());
  }

  /**
   * Melting point.
   *
   * @return absolute
   */
  public Quantity<Temperature> meltingPoint() {
    return Kind.TEMPERATURE.ofSi(thermal.meltingK());
  }

  /**
   * Where the constants come from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Resistance of a solid bar or wire: R = ρ₂₀·L/A·[1 + α·(θ − 20 °C)].
   *
   * @param length &gt; 0
   * @param area cross-section of metal, &gt; 0
   * @param temperature of the metal, −100 °C to 400 °C
   * @return resistance in Ω
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Quantity<ElectricResistance> resistance(
      Quantity<Length> length, Quantity<Area> area, Quantity<Temperature> temperature) {
    double lengthM = Require.quantity("ConductorMaterial.length", length, METRE).positive();
    double areaM2 = Require.quantity("ConductorMaterial.area", area, SQUARE_METRE).positive();
    double ratio = resistanceRatio(temperatureK("ConductorMaterial.temperature", temperature));
    return Kind.RESISTANCE.ofSi(electrical.resistivityOhmM() * lengthM / areaM2 * ratio);
  }

  /**
   * Resistance at a temperature relative to 20 °C.
   *
   * @param temperature of the metal, −100 °C to 400 °C
   * @return R(θ)/R₂₀
   * @throws org.wattwright.units.InvalidInputException if the temperature is outside its range
   */
  public double resistanceRatioAt(Quantity<Temperature> temperature) {
    return resistanceRatio(temperatureK("ConductorMaterial.temperature", temperature));
  }

  /** A conductor temperature within the range of the linear law, in K. */
  static double temperatureK(String field, Quantity<Temperature> temperature) {
    return Require.quantity(field, temperature, CELSIUS).between(LOWEST_C, HIGHEST_C);
  }

  double resistanceRatio(double temperatureK) {
    return 1 + electrical.coefficientPerK() * (temperatureK - REFERENCE_K);
  }

  double coefficientPerK() {
    return electrical.coefficientPerK();
  }

  double resistivityOhmM() {
    return electrical.resistivityOhmM();
  }

  Thermal thermal() {
    return thermal;
  }

  Adiabatic adiabatic() {
    return adiabatic;
  }

  /** Thermal conductivity by Wiedemann and Franz: λ = L₀·T/ρ, at 20 °C. */
  double thermalConductivityWPerMK() {
    return LORENZ_W_OHM_PER_K2 * REFERENCE_K / electrical.resistivityOhmM();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ConductorMaterial that
        && name.equals(that.name)
        && electrical.equals(that.electrical)
        && thermal.equals(that.thermal)
        && adiabatic.equals(that.adiabatic);
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + electrical.hashCode();
  }

  /**
   * The name.
   *
   * @return as {@link #name()}
   */
  @Override
  public String toString() {
    return name;
  }
}
