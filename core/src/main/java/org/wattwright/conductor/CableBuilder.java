package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.MassPerLength;
import org.wattwright.units.Price;

/** Collects the fields of a {@link Cable}; every field is optional. */
public final class CableBuilder {
  /** Widest cable for which the convection formula is claimed, in mm. */
  private static final double WIDEST_MM = 500;

  /** Dull plastics and rubbers; common practice. */
  private static final double DULL_PLASTIC_EMISSIVITY = 0.9;

  private final String name;
  private final ConductorSize size;
  private final InsulationMaterial insulation;
  private InsulationMaterial sheath;
  private @Nullable Double conductorM;
  private @Nullable Double insulationM;
  private @Nullable Double screenM;
  private @Nullable Double outerM;
  private double limitK;
  private double shortCircuitK;
  private double emissivity = DULL_PLASTIC_EMISSIVITY;
  private @Nullable Double massKgPerM;
  private @Nullable Double voltageV;
  private @Nullable Double bendM;
  private @Nullable Price pricePerMetre;

  CableBuilder(String name, ConductorSize size, InsulationMaterial insulation) {
    this.name = name;
    this.size = Objects.requireNonNull(size, "size");
    this.insulation = Objects.requireNonNull(insulation, "insulation");
    this.sheath = insulation;
    this.limitK = Kind.TEMPERATURE.siValueOf(insulation.temperatureLimit());
    this.shortCircuitK = Kind.TEMPERATURE.siValueOf(insulation.shortCircuitLimit());
  }

  CableBuilder(CableData data) {
    name = data.name();
    size = data.size();
    insulation = data.insulation();
    sheath = data.sheath();
    conductorM = data.conductorM();
    insulationM = data.insulationM();
    screenM = data.screenM();
    outerM = data.outerM();
    limitK = data.limitK();
    shortCircuitK = data.shortCircuitK();
    emissivity = data.emissivity();
    massKgPerM = data.massKgPerM();
    voltageV = data.voltageV();
    bendM = data.bendM();
    pricePerMetre = data.pricePerMetre();
  }

  /**
   * Diameter of the bare conductor.
   *
   * @param value &gt; 0 and at most 500 mm
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder conductorDiameter(Quantity<Length> value) {
    conductorM = diameter("Cable.conductorDiameter", value);
    return this;
  }

  /**
   * Diameter over the insulation, under the screen; needed for a screened cable only.
   *
   * @param value &gt; 0 and at most 500 mm
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder insulationDiameter(Quantity<Length> value) {
    insulationM = diameter("Cable.insulationDiameter", value);
    return this;
  }

  /**
   * Diameter over the screen; makes the cable a screened one.
   *
   * @param value &gt; 0 and at most 500 mm
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder screenDiameter(Quantity<Length> value) {
    screenM = diameter("Cable.screenDiameter", value);
    return this;
  }

  /**
   * Outer diameter.
   *
   * @param value &gt; 0 and at most 500 mm
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder outerDiameter(Quantity<Length> value) {
    outerM = diameter("Cable.outerDiameter", value);
    return this;
  }

  /**
   * Sheath over the screen, where it is not of the insulation's material.
   *
   * @param value the material
   * @return this builder
   */
  public CableBuilder sheath(InsulationMaterial value) {
    sheath = Objects.requireNonNull(value, "sheath");
    return this;
  }

  /**
   * Insulation temperature class; the insulation material's limit unless told.
   *
   * @param value 40 °C to 300 °C
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder temperatureLimit(Quantity<Temperature> value) {
    limitK = Require.quantity("Cable.temperatureLimit", value, CELSIUS).between(40, 300);
    return this;
  }

  /**
   * Highest conductor temperature at the end of a short circuit; the insulation material's unless
   * told.
   *
   * @param value 40 °C to 500 °C
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder shortCircuitLimit(Quantity<Temperature> value) {
    shortCircuitK = Require.quantity("Cable.shortCircuitLimit", value, CELSIUS).between(40, 500);
    return this;
  }

  /**
   * Emissivity of the outer surface; 0.9 for dull plastic and rubber unless told (common practice).
   *
   * @param value 0 to 1
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public CableBuilder emissivity(double value) {
    emissivity = Require.fraction("Cable.emissivity", value);
    return this;
  }

  /**
   * Mass per length.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CableBuilder massPerLength(Quantity<MassPerLength> value) {
    massKgPerM = Require.quantity("Cable.massPerLength", value, KILOGRAM_PER_METRE).positive();
    return this;
  }

  /**
   * Voltage rating, direct current.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CableBuilder voltageRating(Quantity<ElectricPotential> value) {
    voltageV = Require.quantity("Cable.voltageRating", value, VOLT).positive();
    return this;
  }

  /**
   * Smallest bend radius, to the inner side of the bend.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CableBuilder minimumBendRadius(Quantity<Length> value) {
    bendM = Require.quantity("Cable.minimumBendRadius", value, MILLIMETRE).positive();
    return this;
  }

  /**
   * Price per metre.
   *
   * @param value the price
   * @return this builder
   */
  public CableBuilder pricePerMetre(Price value) {
    pricePerMetre = Objects.requireNonNull(value, "pricePerMetre");
    return this;
  }

  private static double diameter(String field, Quantity<Length> value) {
    return Require.quantity(field, value, MILLIMETRE).positiveUpTo(WIDEST_MM);
  }

  /**
   * The cable.
   *
   * @return the cable
   * @throws InvalidInputException if diameters do not grow from the conductor outwards, or a screen
   *     lacks the diameter under it
   */
  public Cable build() {
    if (screenM != null && insulationM == null) {
      throw InvalidInputException.of(
          "Cable.insulationDiameter", "given for a screened cable", "missing");
    }
    growing("insulationDiameter", "conductorDiameter", conductorM, insulationM);
    growing("screenDiameter", "insulationDiameter", insulationM, screenM);
    growing("outerDiameter", "conductorDiameter", conductorM, outerM);
    growing("outerDiameter", "insulationDiameter", insulationM, outerM);
    growing("outerDiameter", "screenDiameter", screenM, outerM);
    if (!(limitK < shortCircuitK)) {
      throw InvalidInputException.of(
          "Cable.shortCircuitLimit",
          "> temperatureLimit " + Kind.TEMPERATURE.ofSi(limitK),
          Kind.TEMPERATURE.ofSi(shortCircuitK).toString());
    }
    CableData data =
        new CableData(
            name,
            size,
            insulation,
            sheath,
            conductorM,
            insulationM,
            screenM,
            outerM,
            limitK,
            shortCircuitK,
            emissivity,
            massKgPerM,
            voltageV,
            bendM,
            pricePerMetre);
    return new Cable(data, Basis.DATA_SHEET, geometry());
  }

  private List<CableGeometry> geometry() {
    if (conductorM == null || outerM == null) {
      return List.of();
    }
    if (screenM == null || insulationM == null) {
      return List.of(new CableGeometry(conductorM, outerM, outerM, outerM));
    }
    return List.of(new CableGeometry(conductorM, insulationM, screenM, outerM));
  }

  private static void growing(
      String outerName, String innerName, @Nullable Double innerM, @Nullable Double outerM) {
    if (innerM != null && outerM != null && !(outerM > innerM)) {
      throw InvalidInputException.of(
          "Cable." + outerName,
          "> " + innerName + " " + Shown.millimetres(innerM),
          Shown.millimetres(outerM).toString());
    }
  }
}
