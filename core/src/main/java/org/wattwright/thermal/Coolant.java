package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.DynamicViscosity;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.ThermalConductivity;

/**
 * A liquid that carries heat: density, specific heat, and where known viscosity, conductivity and
 * freezing point.
 *
 * <p>Ethylene glycol in water, percent by volume (50 % by mass is 47.6 % by volume). Source: ASHRAE
 * Handbook Fundamentals, aqueous ethylene glycol; linear between the rows of the table. Immutable
 * and thread-safe.
 */
public final class Coolant implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double WATER_DENSITY_KG_PER_M3 = 998.207;
  private static final double WATER_SPECIFIC_HEAT_J_PER_KG_K = 4184.05;

  private final String name;
  private final LinearTable densityKgPerM3;
  private final LinearTable specificHeatJPerKgK;

  /** Share of glycol by volume; NaN if this is none of the table. */
  private final double glycolShare;

  private final Basis basis;
  private final Source source;

  private Coolant(
      String name, double glycolShare, Given<List<LinearTable>> densityAndSpecificHeat) {
    this.name = name;
    this.glycolShare = glycolShare;
    this.densityKgPerM3 = densityAndSpecificHeat.value().get(0);
    this.specificHeatJPerKgK = densityAndSpecificHeat.value().get(1);
    this.basis = densityAndSpecificHeat.basis();
    this.source = densityAndSpecificHeat.source();
  }

  /**
   * Ethylene glycol in water.
   *
   * <p>At 50 % the table spans −30 °C to 80 °C. At any other share it has 20 °C alone: the course
   * with temperature is taken from 50 %, and the coolant's basis is estimated.
   *
   * @param volumeShare share of glycol by volume, 0.3 to 0.6
   * @return the coolant
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public static Coolant ethyleneGlycol(double volumeShare) {
    Require.between("Coolant.volumeShare", volumeShare, 0.3, 0.6);
    List<LinearTable> tables =
        List.of(
            GlycolTable.densityKgPerM3(volumeShare), GlycolTable.specificHeatJPerKgK(volumeShare));
    boolean tabled = GlycolTable.isFull(volumeShare);
    String name =
        "ethylene glycol "
            + Measures.format(Measures.percent(volumeShare * 100), Kind.DIMENSIONLESS);
    Basis basis = tabled ? Basis.DATA_SHEET : Basis.ESTIMATED;
    return new Coolant(name, volumeShare, new Given<>(tables, basis, GlycolTable.SOURCE));
  }

  /**
   * Pure water with its values at 20 °C, for comparison. It freezes and corrodes: no coolant for a
   * vehicle.
   *
   * @return water, 998.207 kg/m³ and 4184.05 J/(kg·K)
   */
  public static Coolant water() {
    List<LinearTable> tables =
        List.of(constant(WATER_DENSITY_KG_PER_M3), constant(WATER_SPECIFIC_HEAT_J_PER_KG_K));
    Source source = Source.literature("IAPWS formulation", "20 °C, 1 atm");
    return new Coolant("water", Double.NaN, new Given<>(tables, Basis.DATA_SHEET, source));
  }

  /**
   * Any other liquid, from its data sheet, with values that hold at the temperature of use.
   *
   * @param name the liquid
   * @param density &gt; 0
   * @param specificHeat &gt; 0
   * @return the coolant
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public static Coolant of(
      String name, Quantity<Density> density, Quantity<SpecificHeatCapacity> specificHeat) {
    String checked = Require.text("Coolant.name", name);
    List<LinearTable> tables =
        List.of(
            constant(
                Require.quantity("Coolant.density", density, KILOGRAM_PER_CUBIC_METRE).positive()),
            constant(
                Require.quantity("Coolant.specificHeat", specificHeat, JOULE_PER_KILOGRAM_KELVIN)
                    .positive()));
    return new Coolant(checked, Double.NaN, Given.dataSheet(tables, checked));
  }

  private static LinearTable constant(double value) {
    return LinearTable.of("Coolant", new double[] {0}, new double[] {value});
  }

  /**
   * What it is called.
   *
   * @return for example {@code ethylene glycol 50 %}
   */
  public String name() {
    return name;
  }

  /**
   * What its values rest on.
   *
   * @return estimated for glycol between the columns of the table
   */
  public Basis basis() {
    return basis;
  }

  /**
   * Where its values come from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Density.
   *
   * @param temperature −30 °C to 80 °C for glycol; any for a liquid with constant values
   * @return in kg/m³
   * @throws org.wattwright.units.InvalidInputException if the temperature is outside the table
   */
  public Quantity<Density> density(Quantity<Temperature> temperature) {
    return Kind.DENSITY.ofSi(densityKgPerM3(celsius(temperature)));
  }

  /**
   * Specific heat.
   *
   * @param temperature −30 °C to 80 °C for glycol; any for a liquid with constant values
   * @return in J/(kg·K)
   * @throws org.wattwright.units.InvalidInputException if the temperature is outside the table
   */
  public Quantity<SpecificHeatCapacity> specificHeat(Quantity<Temperature> temperature) {
    return Kind.SPECIFIC_HEAT_CAPACITY.ofSi(specificHeatJPerKgK(celsius(temperature)));
  }

  /**
   * Dynamic viscosity.
   *
   * @param temperature absolute
   * @return in mPa·s; empty unless glycol at 50 % and −20 °C to 80 °C
   */
  public Optional<Quantity<DynamicViscosity>> viscosity(Quantity<Temperature> temperature) {
    return GlycolTable.at(GlycolTable.VISCOSITY, glycolShare, CELSIUS.valueOf(temperature))
        .map(Measures::millipascalSeconds);
  }

  /**
   * Thermal conductivity.
   *
   * @param temperature absolute
   * @return in W/(m·K); empty unless glycol at 50 % and −20 °C to 80 °C
   */
  public Optional<Quantity<ThermalConductivity>> conductivity(Quantity<Temperature> temperature) {
    return GlycolTable.at(GlycolTable.CONDUCTIVITY, glycolShare, CELSIUS.valueOf(temperature))
        .map(Kind.THERMAL_CONDUCTIVITY::ofSi);
  }

  /**
   * Prandtl number, μ·c/k.
   *
   * @param temperature absolute
   * @return empty where viscosity or conductivity is
   */
  public Optional<Double> prandtlNumber(Quantity<Temperature> temperature) {
    return viscosity(temperature)
        .flatMap(
            viscosity ->
                conductivity(temperature)
                    .map(
                        conductivity ->
                            Kind.DYNAMIC_VISCOSITY.siValueOf(viscosity)
                                * specificHeatJPerKgK(celsius(temperature))
                                / Kind.THERMAL_CONDUCTIVITY.siValueOf(conductivity)));
  }

  /**
   * Temperature at which the first ice forms.
   *
   * @return empty unless glycol from 30.6 % to 54.7 %
   */
  public Optional<Quantity<Temperature>> freezingPoint() {
    return GlycolTable.freezingPointC(glycolShare).map(Measures::celsius);
  }

  /**
   * The freezing point against the coldest that the vehicle stands in.
   *
   * @param coldest coldest surroundings
   * @return the check {@code thermal.coolant-freezing}; NOT_CHECKED if the freezing point is not
   *     known
   */
  public Check freezingCheck(Quantity<Temperature> coldest) {
    CheckBuilder check =
        Check.named("thermal.coolant-freezing", "freezing point of " + name)
            .source(GlycolTable.SOURCE)
            .cautionBand(
                CautionBand.absolute(Measures.kelvinsOfRise(5), Kind.TEMPERATURE_DIFFERENCE))
            .note("a hydrometer shows the share that is really in the loop");
    Figure limit = Figure.of(coldest, CELSIUS);
    return freezingPoint()
        .map(point -> check.atMost(Figure.of(point, CELSIUS), limit))
        .orElseGet(() -> check.notChecked(name + ".freezingPoint"));
  }

  private double celsius(Quantity<Temperature> temperature) {
    boolean bounded = densityKgPerM3.size() > 1;
    double kelvin = Kind.TEMPERATURE.siValueOf(temperature);
    if (bounded) {
      kelvin =
          Require.quantity("Coolant.temperature", temperature, CELSIUS)
              .between(densityKgPerM3.firstX(), densityKgPerM3.lastX());
    }
    return kelvin - GlycolTable.CELSIUS_ZERO_K;
  }

  double densityKgPerM3(double celsius) {
    return densityKgPerM3.at(celsius);
  }

  double specificHeatJPerKgK(double celsius) {
    return specificHeatJPerKgK.at(celsius);
  }

  /** ρ·c at a temperature within the table. */
  double volumetricHeatJPerM3K(Quantity<Temperature> temperature) {
    double celsius = celsius(temperature);
    return densityKgPerM3(celsius) * specificHeatJPerKgK(celsius);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Coolant that
        && name.equals(that.name)
        && Double.compare(glycolShare, that.glycolShare) == 0
        && densityKgPerM3.equals(that.densityKgPerM3)
        && specificHeatJPerKgK.equals(that.specificHeatJPerKgK)
        && basis == that.basis
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, densityKgPerM3, specificHeatJPerKgK);
  }

  /**
   * The name, and a mark if its values are estimated.
   *
   * @return for example {@code ethylene glycol 50 %}
   */
  @Override
  public String toString() {
    return basis == Basis.ESTIMATED ? name + " (estimated)" : name;
  }
}
