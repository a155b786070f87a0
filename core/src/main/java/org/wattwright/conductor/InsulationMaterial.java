package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.WATT_PER_METRE_KELVIN;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.Kind;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.ThermalConductivity;

/**
 * An insulation or sheath material: how it conducts and stores heat, how hot it may get.
 *
 * <p>The limits named here are those of the material in general cable standards; a cable of a
 * higher temperature class states its own limit, see {@link CableBuilder#temperatureLimit}. Heat
 * capacities are from memory of IEC 60853-2: a check that leans on them counts as estimated, unless
 * the material is one of your own. Immutable and thread-safe.
 */
public final class InsulationMaterial implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final String HEAT = "IEC 60287-2-1 (from memory), IEC 60853-2 (from memory)";

  /** Polyvinyl chloride: 5.0 K·m/W, 70 °C continuous, 160 °C in a short circuit. */
  public static final InsulationMaterial PVC =
      new InsulationMaterial(
          "PVC",
          Properties.fromMemory(5.0, 1.7e6, 1400),
          new Limits(70, 160),
          Source.standard(HEAT, "limits of IEC 60364-5-54 Table A.54"));

  /** Cross-linked polyethylene: 3.5 K·m/W, 90 °C continuous, 250 °C in a short circuit. */
  public static final InsulationMaterial XLPE =
      new InsulationMaterial(
          "XLPE",
          Properties.fromMemory(3.5, 2.4e6, 930),
          new Limits(90, 250),
          Source.standard(HEAT, "limits of IEC 60364-5-54 Table A.54"));

  /** Ethylene propylene rubber: 3.5 K·m/W, 90 °C continuous, 250 °C in a short circuit. */
  public static final InsulationMaterial EPR =
      new InsulationMaterial(
          "EPR",
          Properties.fromMemory(3.5, 2.0e6, 1200),
          new Limits(90, 250),
          Source.standard(HEAT, "limits of IEC 60364-5-54 Table A.54"));

  /** Silicone rubber: 5.0 K·m/W, 180 °C continuous, 350 °C in a short circuit. */
  public static final InsulationMaterial SILICONE =
      new InsulationMaterial(
          "silicone",
          Properties.fromMemory(5.0, 1.7e6, 1200),
          new Limits(180, 350),
          Source.commonPractice(
              "0.2 W/(m·K) for silicone rubber; limits of IEC 60364-4-43, from memory"));

  /** Thermal resistivity in K·m/W, heat capacity in J/(m³·K), density in kg/m³. */
  record Properties(
      double resistivityKmPerW,
      double heatCapacityJPerM3K,
      double densityKgPerM3,
      Basis heatCapacityBasis)
      implements Serializable {
    /** With a heat capacity from memory, which counts as an estimate. */
    static Properties fromMemory(
        double resistivityKmPerW, double heatCapacityJPerM3K, double densityKgPerM3) {
      return new Properties(
          resistivityKmPerW, heatCapacityJPerM3K, densityKgPerM3, Basis.ESTIMATED);
    }
  }

  /** Limits in °C. */
  record Limits(double continuousC, double shortCircuitC) implements Serializable {}

  private final String name;
  private final Properties properties;
  private final Limits limits;
  private final Source source;

  private InsulationMaterial(String name, Properties properties, Limits limits, Source source) {
    this.name = name;
    this.properties = properties;
    this.limits = limits;
    this.source = source;
  }

  /**
   * Starts a material of your own.
   *
   * @param name as reports print it
   * @return a builder
   */
  public static Builder named(String name) {
    return new Builder(Require.text("InsulationMaterial.name", name));
  }

  /** Collects the properties of an insulation material; all are required. */
  public static final class Builder {
    private final String name;
    private @Nullable Double conductivityWPerMK;
    private @Nullable Double densityKgPerM3;
    private @Nullable Double specificHeatJPerKgK;
    private @Nullable Double continuousC;
    private @Nullable Double shortCircuitC;

    Builder(String name) {
      this.name = name;
    }

    /**
     * Thermal conductivity.
     *
     * @param value &gt; 0 and at most 10 W/(m·K)
     * @return this builder
     */
    public Builder thermalConductivity(Quantity<ThermalConductivity> value) {
      String field = "InsulationMaterial.thermalConductivity";
      conductivityWPerMK = Require.quantity(field, value, WATT_PER_METRE_KELVIN).positiveUpTo(10);
      return this;
    }

    /**
     * Density.
     *
     * @param value &gt; 0
     * @return this builder
     */
    public Builder density(Quantity<Density> value) {
      String field = "InsulationMaterial.density";
      densityKgPerM3 = Require.quantity(field, value, KILOGRAM_PER_CUBIC_METRE).positive();
      return this;
    }

    /**
     * Specific heat capacity.
     *
     * @param value &gt; 0
     * @return this builder
     */
    public Builder specificHeatCapacity(Quantity<SpecificHeatCapacity> value) {
      String field = "InsulationMaterial.specificHeatCapacity";
      specificHeatJPerKgK = Require.quantity(field, value, JOULE_PER_KILOGRAM_KELVIN).positive();
      return this;
    }

    /**
     * Highest continuous conductor temperature.
     *
     * @param value 40 °C to 300 °C
     * @return this builder
     */
    public Builder temperatureLimit(Quantity<Temperature> value) {
      Require.quantity("InsulationMaterial.temperatureLimit", value, CELSIUS).between(40, 300);
      continuousC = CELSIUS.valueOf(value);
      return this;
    }

    /**
     * Highest conductor temperature at the end of a short circuit of up to 5 s.
     *
     * @param value 40 °C to 500 °C
     * @return this builder
     */
    public Builder shortCircuitLimit(Quantity<Temperature> value) {
      Require.quantity("InsulationMaterial.shortCircuitLimit", value, CELSIUS).between(40, 500);
      shortCircuitC = CELSIUS.valueOf(value);
      return this;
    }

    /**
     * The material.
     *
     * @param source where the properties come from
     * @return the material
     * @throws org.wattwright.units.InvalidInputException if a property is missing
     */
    public InsulationMaterial build(Source source) {
      new MissingFields("InsulationMaterial")
          .field("thermalConductivity", conductivityWPerMK)
          .field("density", densityKgPerM3)
          .field("specificHeatCapacity", specificHeatJPerKgK)
          .field("temperatureLimit", continuousC)
          .field("shortCircuitLimit", shortCircuitC)
          .rejectIfAny();
      double heatCapacity =
          MissingFields.present(densityKgPerM3) * MissingFields.present(specificHeatJPerKgK);
      return new InsulationMaterial(
          name,
          new Properties(
              1 / MissingFields.present(conductivityWPerMK),
              heatCapacity,
              MissingFields.present(densityKgPerM3),
              Basis.DATA_SHEET),
          new Limits(MissingFields.present(continuousC), MissingFields.present(shortCircuitC)),
          source);
    }
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
   * Thermal conductivity, the inverse of the thermal resistivity of cable standards.
   *
   * @return in W/(m·K)
   */
  public Quantity<ThermalConductivity> thermalConductivity() {
    return Kind.THERMAL_CONDUCTIVITY.ofSi(1 / properties.resistivityKmPerW());
  }

  /**
   * Highest continuous conductor temperature of the material in general cable standards.
   *
   * @return absolute
   */
  public Quantity<Temperature> temperatureLimit() {
    return CELSIUS.of(limits.continuousC());
  }

  /**
   * Highest conductor temperature at the end of a short circuit of up to 5 s.
   *
   * @return absolute
   */
  public Quantity<Temperature> shortCircuitLimit() {
    return CELSIUS.of(limits.shortCircuitC());
  }

  /**
   * Where the properties come from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  Properties properties() {
    return properties;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof InsulationMaterial that
        && name.equals(that.name)
        && properties.equals(that.properties)
        && limits.equals(that.limits);
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + properties.hashCode();
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
