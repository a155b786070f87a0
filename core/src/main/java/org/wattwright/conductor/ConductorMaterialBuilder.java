package org.wattwright.conductor;

import static org.wattwright.internal.MissingFields.present;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.PER_KELVIN;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Source;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.TemperatureCoefficient;

/** Collects the constants of a {@link ConductorMaterial}; all but the source are required. */
public final class ConductorMaterialBuilder {
  private final String name;
  private @Nullable Double conductivity;
  private @Nullable Double coefficientPerK;
  private @Nullable Double densityKgPerM3;
  private @Nullable Double specificHeatJPerKgK;
  private @Nullable Double meltingK;
  private Source source = Source.dataSheet("metal");

  ConductorMaterialBuilder(String name) {
    this.name = name;
  }

  /**
   * Conductivity at 20 °C.
   *
   * @param shareOfIacs share of 100 % IACS (58 MS/m), &gt; 0, at most 1.2
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public ConductorMaterialBuilder conductivity(double shareOfIacs) {
    conductivity = Require.between("ConductorMaterial.conductivity", shareOfIacs, 1e-3, 1.2);
    return this;
  }

  /**
   * Temperature coefficient of resistance at 20 °C.
   *
   * @param value α, &gt; 0
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ConductorMaterialBuilder temperatureCoefficient(Quantity<TemperatureCoefficient> value) {
    String field = "ConductorMaterial.temperatureCoefficient";
    coefficientPerK = Require.quantity(field, value, PER_KELVIN).positiveUpTo(0.02);
    return this;
  }

  /**
   * Density.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ConductorMaterialBuilder density(Quantity<Density> value) {
    String field = "ConductorMaterial.density";
    densityKgPerM3 = Require.quantity(field, value, KILOGRAM_PER_CUBIC_METRE).positive();
    return this;
  }

  /**
   * Specific heat capacity.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public ConductorMaterialBuilder specificHeatCapacity(Quantity<SpecificHeatCapacity> value) {
    String field = "ConductorMaterial.specificHeatCapacity";
    specificHeatJPerKgK = Require.quantity(field, value, JOULE_PER_KILOGRAM_KELVIN).positive();
    return this;
  }

  /**
   * Melting point.
   *
   * @param value 50 °C to 4000 °C
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public ConductorMaterialBuilder meltingPoint(Quantity<Temperature> value) {
    meltingK = Require.quantity("ConductorMaterial.meltingPoint", value, CELSIUS).between(50, 4000);
    return this;
  }

  /**
   * Where the constants come from.
   *
   * @param value the source
   * @return this builder
   */
  public ConductorMaterialBuilder source(Source value) {
    source = Objects.requireNonNull(value, "source");
    return this;
  }

  String name() {
    return name;
  }

  Source source() {
    return source;
  }

  /**
   * The metal; K and β of the short-circuit formula follow from its constants.
   *
   * @return the metal
   * @throws org.wattwright.units.InvalidInputException if a field is missing
   */
  public ConductorMaterial build() {
    new MissingFields("ConductorMaterial")
        .field("conductivity", conductivity)
        .field("temperatureCoefficient", coefficientPerK)
        .field("density", densityKgPerM3)
        .field("specificHeatCapacity", specificHeatJPerKgK)
        .field("meltingPoint", meltingK)
        .rejectIfAny();
    double resistivityOhmM = ConductorMaterial.IACS_RESISTIVITY_OHM_M / present(conductivity);
    return new ConductorMaterial(
        this,
        new ConductorMaterial.Electrical(resistivityOhmM, present(coefficientPerK)),
        new ConductorMaterial.Thermal(
            present(densityKgPerM3), present(specificHeatJPerKgK), present(meltingK)));
  }
}
