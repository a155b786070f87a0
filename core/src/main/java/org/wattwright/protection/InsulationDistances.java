package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.KILOVOLT;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * Clearance through air and creepage along a surface that a voltage asks for.
 *
 * <p>Creepage by working voltage, linear between rows; clearance by impulse voltage, next step
 * upward, times a factor for altitude above 2000 m (creepage has none). Reinforced insulation:
 * twice the creepage, and the clearance of the next impulse step (both from memory). Below the
 * first row the first row counts; where the tables carried here have no entry the answer is empty,
 * as for material group IIIb in pollution degree 3 above 630 V. Source: IEC 60664-1:2020 Tables
 * F.1, F.2, F.5 and A.2. Immutable and thread-safe.
 *
 * <pre>{@code
 * InsulationDistances.in(PollutionDegree.TWO).on(MaterialGroup.IIIa)
 *     .at(metres(3000)).creepage(volts(450));    // 4.5 mm
 * }</pre>
 */
public final class InsulationDistances {
  private static final Source CREEPAGE = Source.standard("IEC 60664-1:2020", "Table F.5");
  private static final Source CLEARANCE = Source.standard("IEC 60664-1:2020", "Tables F.2, A.2");

  private final PollutionDegree degree;
  private final MaterialGroup group;
  private final ElectricField field;
  private final double altitudeM;
  private final boolean reinforced;

  private InsulationDistances(
      PollutionDegree degree,
      MaterialGroup group,
      ElectricField field,
      double altitudeM,
      boolean reinforced) {
    this.degree = degree;
    this.group = group;
    this.field = field;
    this.altitudeM = altitudeM;
    this.reinforced = reinforced;
  }

  /**
   * Basic insulation on the weakest material, any field, up to 2000 m.
   *
   * @param degree of the place
   * @return the distances
   */
  public static InsulationDistances in(PollutionDegree degree) {
    return new InsulationDistances(
        Objects.requireNonNull(degree, "degree"),
        MaterialGroup.IIIb,
        ElectricField.INHOMOGENEOUS,
        0,
        false);
  }

  /**
   * On a better material.
   *
   * @param value group of the surface
   * @return the distances
   */
  public InsulationDistances on(MaterialGroup value) {
    return new InsulationDistances(
        degree, Objects.requireNonNull(value, "group"), field, altitudeM, reinforced);
  }

  /**
   * In a field of another shape.
   *
   * @param value shape of the field
   * @return the distances
   */
  public InsulationDistances in(ElectricField value) {
    return new InsulationDistances(
        degree, group, Objects.requireNonNull(value, "field"), altitudeM, reinforced);
  }

  /**
   * At an altitude.
   *
   * @param altitude −500 m to 10 000 m
   * @return the distances
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public InsulationDistances at(Quantity<Length> altitude) {
    double metre =
        Require.quantity("InsulationDistances.altitude", altitude, METRE).between(-500, 10_000);
    return new InsulationDistances(degree, group, field, metre, reinforced);
  }

  /**
   * For reinforced insulation: one that protects alone.
   *
   * @return the distances
   */
  public InsulationDistances reinforced() {
    return new InsulationDistances(degree, group, field, altitudeM, true);
  }

  /**
   * Impulse voltage that equipment on the mains must withstand.
   *
   * @param lineToNeutral rms, &gt; 0 V and at most 1000 V
   * @param category overvoltage category
   * @return in V; empty if the table carried here has no such entry
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static Optional<Quantity<ElectricPotential>> ratedImpulse(
      Quantity<ElectricPotential> lineToNeutral, OvervoltageCategory category) {
    double volt =
        Require.quantity("InsulationDistances.lineToNeutral", lineToNeutral, VOLT)
            .positiveUpTo(1000);
    OptionalDouble kilovolt = InsulationTables.impulseKv(volt, category);
    return kilovolt.isPresent()
        ? Optional.of(KILOVOLT.of(kilovolt.getAsDouble()))
        : Optional.empty();
  }

  /**
   * Creepage distance that is needed.
   *
   * @param working highest rms or DC working voltage, &gt; 0 V and at most 1000 V
   * @return in mm; empty if the table has no entry
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Optional<Quantity<Length>> creepage(Quantity<ElectricPotential> working) {
    double volt = Require.quantity("InsulationDistances.working", working, VOLT).positiveUpTo(1000);
    OptionalDouble mm = InsulationTables.creepageMm(volt, degree, group);
    return mm.isPresent()
        ? Optional.of(MILLIMETRE.of(mm.getAsDouble() * (reinforced ? 2 : 1)))
        : Optional.empty();
  }

  /**
   * Clearance that is needed.
   *
   * @param impulse impulse withstand voltage, &gt; 0 kV and at most 12 kV
   * @return in mm; empty if the table has no entry
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Optional<Quantity<Length>> clearance(Quantity<ElectricPotential> impulse) {
    Require.quantity("InsulationDistances.impulse", impulse, KILOVOLT).positiveUpTo(12);
    OptionalDouble kilovolt = InsulationTables.stepKv(KILOVOLT.valueOf(impulse), reinforced);
    if (kilovolt.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble mm = InsulationTables.clearanceMm(kilovolt.getAsDouble(), degree, field);
    return mm.isPresent()
        ? Optional.of(MILLIMETRE.of(mm.getAsDouble() * InsulationTables.altitudeFactor(altitudeM)))
        : Optional.empty();
  }

  /**
   * {@code insulation.creepage}: a distance along a surface against what is needed.
   *
   * @param actual measured along the surface, ≥ 0 mm
   * @param working highest rms or DC working voltage, &gt; 0 V and at most 1000 V
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Check checkCreepage(Quantity<Length> actual, Quantity<ElectricPotential> working) {
    CheckBuilder check =
        Check.named("insulation.creepage", "creepage against what " + working + " needs")
            .source(CREEPAGE);
    return compare(check, actual, creepage(working), "insulation.creepage table entry");
  }

  /**
   * {@code insulation.clearance}: a distance through air against what is needed.
   *
   * @param actual shortest way through air, ≥ 0 mm
   * @param impulse impulse withstand voltage, &gt; 0 kV and at most 12 kV
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Check checkClearance(Quantity<Length> actual, Quantity<ElectricPotential> impulse) {
    CheckBuilder check =
        Check.named("insulation.clearance", "clearance against what " + impulse + " needs")
            .source(CLEARANCE);
    return compare(check, actual, clearance(impulse), "insulation.clearance table entry");
  }

  private static Check compare(
      CheckBuilder check,
      Quantity<Length> actual,
      Optional<Quantity<Length>> needed,
      String entry) {
    Require.quantity("InsulationDistances.actual", actual, MILLIMETRE).nonNegative();
    Figure measured = Figure.of(actual, MILLIMETRE);
    CheckBuilder safe = check.safety().cautionBand(CautionBand.NONE);
    return needed.isPresent()
        ? safe.atLeast(measured, Figure.of(needed.get(), MILLIMETRE))
        : safe.notChecked(measured, entry);
  }

  /**
   * What the distances count with.
   *
   * @return for example {@code basic, pollution degree TWO, material group IIIb, INHOMOGENEOUS
   *     field, 0 m}
   */
  @Override
  public String toString() {
    return (reinforced ? "reinforced" : "basic")
        + ", pollution degree "
        + degree
        + ", material group "
        + group
        + ", "
        + field
        + " field, "
        + METRE.of(altitudeM);
  }
}
