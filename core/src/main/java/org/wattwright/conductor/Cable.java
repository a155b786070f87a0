package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import org.wattwright.units.ThermalResistance;

/**
 * A single-core cable as a catalogue lists it.
 *
 * <p>Only size and insulation are required: a catalogue rarely gives all. What is missing makes the
 * checks that need it NOT_CHECKED, and they name the field. {@link #withGenericGeometry()} fills
 * missing diameters and mass with estimates, and marks the cable so. Immutable and thread-safe.
 *
 * <pre>{@code
 * Cable cable = Cable.of("T-35", ConductorSize.metric(squareMillimetres(35), FLEXIBLE), XLPE)
 *     .conductorDiameter(millimetres(7.9)).outerDiameter(millimetres(11.7))
 *     .temperatureLimit(celsius(125)).voltageRating(volts(1000)).build();
 * }</pre>
 */
public final class Cable implements Serializable {
  private static final long serialVersionUID = 1L;

  private final CableData data;
  private final Basis geometryBasis;

  /** One geometry as given, the thinnest and the thickest if estimated, none if unknown. */
  private final List<CableGeometry> geometries;

  Cable(CableData data, Basis geometryBasis, List<CableGeometry> geometries) {
    this.data = data;
    this.geometryBasis = geometryBasis;
    this.geometries = List.copyOf(geometries);
  }

  /**
   * Starts a cable.
   *
   * @param name as the catalogue has it
   * @param size the conductor
   * @param insulation insulation, and sheath unless told
   * @return a builder
   * @throws InvalidInputException if the name is blank
   */
  public static CableBuilder of(String name, ConductorSize size, InsulationMaterial insulation) {
    return new CableBuilder(Require.text("Cable.name", name), size, insulation);
  }

  /**
   * A builder with all fields of this cable, for a variant.
   *
   * @return a builder
   */
  public CableBuilder toBuilder() {
    return new CableBuilder(data);
  }

  /**
   * This cable with missing diameters and mass estimated, see {@link GenericGeometry}; checks that
   * rest on them take the worse of the thinnest and the thickest and are at most a caution.
   *
   * @return this cable if nothing is missing, else one marked as estimated
   */
  public Cable withGenericGeometry() {
    CableData filled = data;
    if (filled.massKgPerM() == null) {
      double kgPerM =
          Kind.MASS_PER_LENGTH.siValueOf(
              GenericGeometry.massPerLength(data.size(), data.insulation()).typical());
      filled = filled.withMass(kgPerM);
    }
    if (!geometries.isEmpty()) {
      return filled.equals(data) ? this : new Cable(filled, geometryBasis, geometries);
    }
    return new Cable(filled, Basis.ESTIMATED, List.of(estimated(false), estimated(true)));
  }

  private CableGeometry estimated(boolean thick) {
    var conductor = GenericGeometry.conductorDiameter(data.size());
    var outer = GenericGeometry.outerDiameter(data.size());
    @Nullable Double givenConductorM = data.conductorM();
    @Nullable Double givenOuterM = data.outerM();
    double conductorM =
        givenConductorM != null
            ? givenConductorM
            : Kind.LENGTH.siValueOf(thick ? conductor.low() : conductor.typical());
    double outerM =
        givenOuterM != null
            ? givenOuterM
            : Kind.LENGTH.siValueOf(thick ? outer.high() : outer.low());
    double atLeastM = Math.max(outerM, conductorM * 1.02);
    return new CableGeometry(conductorM, atLeastM, atLeastM, atLeastM);
  }

  /**
   * The name.
   *
   * @return as the catalogue has it
   */
  public String name() {
    return data.name();
  }

  /**
   * The conductor.
   *
   * @return its size
   */
  public ConductorSize size() {
    return data.size();
  }

  /**
   * The insulation.
   *
   * @return the material
   */
  public InsulationMaterial insulation() {
    return data.insulation();
  }

  /**
   * Diameter of the bare conductor.
   *
   * @return in mm; empty if the catalogue does not say
   */
  public Optional<Quantity<Length>> conductorDiameter() {
    return Optional.ofNullable(data.conductorM()).map(Shown::millimetres);
  }

  /**
   * Diameter over the insulation, under the screen.
   *
   * @return in mm; empty if the catalogue does not say
   */
  public Optional<Quantity<Length>> insulationDiameter() {
    return Optional.ofNullable(data.insulationM()).map(Shown::millimetres);
  }

  /**
   * Diameter over the screen.
   *
   * @return in mm; empty without a screen
   */
  public Optional<Quantity<Length>> screenDiameter() {
    return Optional.ofNullable(data.screenM()).map(Shown::millimetres);
  }

  /**
   * Outer diameter.
   *
   * @return in mm; empty if the catalogue does not say
   */
  public Optional<Quantity<Length>> outerDiameter() {
    return Optional.ofNullable(data.outerM()).map(Shown::millimetres);
  }

  /**
   * Whether the cable is screened.
   *
   * @return true if a screen diameter was given
   */
  public boolean isScreened() {
    return data.screenM() != null;
  }

  /**
   * Highest continuous conductor temperature: the cable's own class, else the insulation's limit.
   *
   * @return absolute
   */
  public Quantity<Temperature> temperatureLimit() {
    return Kind.TEMPERATURE.ofSi(data.limitK());
  }

  /**
   * Highest conductor temperature at the end of a short circuit of up to 5 s.
   *
   * @return absolute
   */
  public Quantity<Temperature> shortCircuitLimit() {
    return Kind.TEMPERATURE.ofSi(data.shortCircuitK());
  }

  /**
   * Mass per length.
   *
   * @return in g/m; empty if the catalogue does not say
   */
  public Optional<Quantity<MassPerLength>> massPerLength() {
    return Optional.ofNullable(data.massKgPerM()).map(Kind.MASS_PER_LENGTH::ofSi);
  }

  /**
   * Voltage rating, direct current.
   *
   * @return in V; empty if the catalogue does not say
   */
  public Optional<Quantity<ElectricPotential>> voltageRating() {
    return Optional.ofNullable(data.voltageV()).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * Smallest bend radius, to the inner side of the bend.
   *
   * @return in mm; empty if the catalogue does not say
   */
  public Optional<Quantity<Length>> minimumBendRadius() {
    return Optional.ofNullable(data.bendM()).map(Shown::millimetres);
  }

  /**
   * Price per metre.
   *
   * @return empty if the catalogue does not say
   */
  public Optional<Price> pricePerMetre() {
    return Optional.ofNullable(data.pricePerMetre());
  }

  /**
   * Emissivity of the outer surface.
   *
   * @return 0 to 1
   */
  public double emissivity() {
    return data.emissivity();
  }

  /**
   * What the diameters rest on.
   *
   * @return estimated after {@link #withGenericGeometry()}, else data sheet
   */
  public Basis geometryBasis() {
    return geometryBasis;
  }

  /**
   * Smallest bend radius by the multiples of DIN VDE 0298-3, for a cable whose sheet gives none.
   *
   * @param use how it is bent
   * @return the cable with that radius
   * @throws InvalidInputException if the outer diameter is unknown
   */
  public Cable withBendRadiusFor(BendUse use) {
    if (data.outerM() == null) {
      throw InvalidInputException.of(
          "Cable.outerDiameter", "given to work out a bend radius", "missing in " + name());
    }
    return toBuilder().minimumBendRadius(use.minimumRadius(METRE.of(data.outerM()))).build();
  }

  /**
   * Thermal resistance from the conductor to the outer surface: T₁ = ρ/(2π·L)·ln(D/d_c), with a
   * screen taken as a perfect conductor; IEC 60287-2-1.
   *
   * @param length of cable, &gt; 0
   * @return in K/W; of the thickest where the geometry is estimated; empty if a diameter is missing
   * @throws InvalidInputException if the length is not positive
   */
  public Optional<Quantity<ThermalResistance>> thermalResistance(Quantity<Length> length) {
    double lengthM = Require.quantity("Cable.length", length, METRE).positive();
    return geometries.stream()
        .map(g -> g.thermalResistanceKmPerW(data.insulation(), data.sheath()) / lengthM)
        .max(Double::compare)
        .map(Kind.THERMAL_RESISTANCE::ofSi);
  }

  CableData data() {
    return data;
  }

  List<CableGeometry> geometries() {
    return geometries;
  }

  List<String> missingGeometry() {
    List<String> missing = new ArrayList<>();
    if (geometries.isEmpty()) {
      if (data.conductorM() == null) {
        missing.add("Cable.conductorDiameter of " + name());
      }
      if (data.outerM() == null) {
        missing.add("Cable.outerDiameter of " + name());
      }
    }
    return missing;
  }

  /** Weakest basis of resistance and geometry. */
  Basis basis() {
    return geometryBasis.and(data.size().resistance().basis());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Cable that
        && data.equals(that.data)
        && geometryBasis == that.geometryBasis
        && geometries.equals(that.geometries);
  }

  @Override
  public int hashCode() {
    return data.hashCode();
  }

  /**
   * Name, size and insulation.
   *
   * @return for example {@code T-35: 35 mm² class 5 copper, XLPE, 125 °C}
   */
  @Override
  public String toString() {
    ConductorSize size = data.size();
    String estimated = geometryBasis == Basis.ESTIMATED ? ", geometry estimated" : "";
    return String.format(
        Locale.ROOT,
        "%s: %s %s %s, %s, %s%s",
        name(),
        size.name(),
        size.strandClass(),
        size.material(),
        data.insulation(),
        temperatureLimit(),
        estimated);
  }
}
