package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * A tyre by its designation: dimensions, load, speed.
 *
 * <p>Reads metric designations ({@code 175/70 R14 84T}, {@code 185R14C 102/100Q}, {@code 165 SR15})
 * and the inch cross-ply ones of older cars ({@code 5.60-15}, {@code 6.40-13 4PR}). Dimensions are
 * nominal; a tyre on the car differs by a few per cent with make, rim, wear and pressure.
 *
 * <pre>{@code
 * Tyre tyre = Tyre.parse("175/70 R14 84T");
 * tyre.overallDiameter();                    // 600.6 mm
 * tyre.maximumLoad().orElseThrow();          // 500 kg
 * }</pre>
 *
 * <p>Source: UN R30, UN R54, ETRTO Standards Manual. Immutable and thread-safe.
 */
public final class Tyre implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double METRES_PER_INCH = 0.0254;

  private static final Source R30 = Source.standard("UN R30", "paragraph 6.1, and ETRTO");
  private static final Source UNMARKED =
      Source.commonPractice("82 % for radial, 95 % or 88 % for cross-ply where none is marked");
  private static final Source ETRTO_ROLLING =
      Source.standard("ETRTO Standards Manual", "3.05·D at 60 km/h, -2.5 % to +1.5 %, from memory");
  private static final Source ETRTO_LOADED =
      Source.standard("ETRTO Standards Manual", "0.47·D, ±0.01·D, from memory");
  private static final Source CROSS_PLY_ROLLING =
      Source.commonPractice("rolling radius is the free radius less a third of the deflection");

  /** Rolling circumference over design diameter, radial; ETRTO, from memory. */
  private static final double RADIAL_ROLLING_FACTOR = 3.05;

  private static final Estimate.Band RADIAL_ROLLING_BAND = new Estimate.Band(0.975, 1.015);

  /** Static loaded radius over design diameter; ETRTO, from memory. */
  private static final double LOADED_RADIUS_FACTOR = 0.47;

  private static final Estimate.Band LOADED_RADIUS_BAND =
      new Estimate.Band(0.46 / LOADED_RADIUS_FACTOR, 0.48 / LOADED_RADIUS_FACTOR);

  /** 2·π·(0.5 − (0.5 − 0.47)/3); common practice. */
  private static final double CROSS_PLY_ROLLING_FACTOR = 2 * Math.PI * 0.49;

  /** From the loaded circumference 2·π·0.47 up to the free one, 2·π·0.5. */
  private static final Estimate.Band CROSS_PLY_ROLLING_BAND =
      new Estimate.Band(0.47 / 0.49, 0.50 / 0.49);

  /** Pressure at which the load index holds, standard and extra load; ETRTO. */
  private static final double STANDARD_REFERENCE_KPA = 250;

  private static final double EXTRA_LOAD_REFERENCE_KPA = 290;

  private final TyreSize size;
  private final TyreService service;
  private final Dimensions dimensions;

  Tyre(TyreSize size, TyreService service) {
    this.size = size;
    this.service = service;
    this.dimensions = dimensions(Recorder.OFF);
  }

  /** Lengths in m. */
  private record Dimensions(
      double sectionHeightM,
      double overallDiameterM,
      double designDiameterM,
      double rollingM,
      double loadedRadiusM)
      implements Serializable {}

  /**
   * Reads a designation; case and the spaces inside it are free where they do not separate numbers.
   *
   * @param text such as {@code 175/70 R14 84T}
   * @return the tyre
   * @throws org.wattwright.units.InvalidInputException if the text is no designation of a kind
   *     known here, or names an unknown load index or speed symbol
   */
  public static Tyre parse(String text) {
    return TyreParser.parse(text);
  }

  /**
   * Nominal rim diameter in whole millimetres, as regulations use it: 25.4 mm times the code,
   * rounded.
   *
   * @param rimCode in inches, 8 to 26
   * @return in mm
   * @throws org.wattwright.units.InvalidInputException if the code is outside its range
   */
  public static Quantity<Length> nominalRimDiameter(int rimCode) {
    Require.count("Tyre.rimCode", rimCode, 8, 26);
    return MILLIMETRE.of(nominalRimMm(rimCode));
  }

  private static double nominalRimMm(int rimCode) {
    return Math.rint(rimCode * 25.4);
  }

  private Dimensions dimensions(Recorder recorder) {
    double widthM = size.widthM();
    double aspect = size.effectiveAspectPercent() / 100.0;
    double heightM = widthM * aspect;
    double diameterM = size.rimCode() * METRES_PER_INCH + 2 * heightM;
    double designM = nominalRimMm(size.rimCode()) / 1000 + 2 * heightM;
    double rollingM = rollingFactor() * designM;
    double loadedM = LOADED_RADIUS_FACTOR * designM;
    if (recorder.isOn()) {
      recorder
          .step("H", "section height")
          .formula("S·A")
          .with("S", widthM, MILLIMETRE)
          .with("A", Figure.share(aspect))
          .basis(basis())
          .source(isAspectMarked() ? R30 : UNMARKED)
          .gives(heightM, MILLIMETRE);
      recordDiameters(recorder, heightM, diameterM, designM);
      recordDerived(recorder, "C", "rolling circumference", rollingFactor(), designM, rollingM);
      recordDerived(
          recorder, "r_l", "static loaded radius", LOADED_RADIUS_FACTOR, designM, loadedM);
    }
    return new Dimensions(heightM, diameterM, designM, rollingM, loadedM);
  }

  private void recordDiameters(
      Recorder recorder, double heightM, double diameterM, double designM) {
    recorder
        .step("D", "overall diameter, rim at 25.4 mm per inch")
        .formula("d + 2·H")
        .with("d", size.rimCode() * METRES_PER_INCH, MILLIMETRE)
        .with("H", heightM, MILLIMETRE)
        .basis(basis())
        .source(R30)
        .gives(diameterM, MILLIMETRE);
    recorder
        .step("D_n", "design diameter, rim in whole millimetres")
        .formula("d_n + 2·H")
        .with("d_n", nominalRimMm(size.rimCode()) / 1000, MILLIMETRE)
        .with("H", heightM, MILLIMETRE)
        .basis(basis())
        .source(R30)
        .gives(designM, MILLIMETRE);
  }

  private void recordDerived(
      Recorder recorder,
      String symbol,
      String meaning,
      double factor,
      double designM,
      double resultM) {
    Source rolling = size.isRadial() ? ETRTO_ROLLING : CROSS_PLY_ROLLING;
    recorder
        .step(symbol, meaning)
        .formula("k·D_n")
        .with("k", Figure.number(factor))
        .with("D_n", designM, MILLIMETRE)
        .basis(Basis.ESTIMATED)
        .source(symbol.equals("C") ? rolling : ETRTO_LOADED)
        .gives(resultM, MILLIMETRE);
  }

  private double rollingFactor() {
    return size.isRadial() ? RADIAL_ROLLING_FACTOR : CROSS_PLY_ROLLING_FACTOR;
  }

  /**
   * Whether the plies run radially.
   *
   * @return false for cross-ply and bias-belted
   */
  public boolean isRadial() {
    return size.isRadial();
  }

  /**
   * Whether it is marked {@code C}, for commercial vehicles.
   *
   * @return true with the letter C behind the rim
   */
  public boolean isCommercial() {
    return size.commercial();
  }

  /**
   * Whether it is marked extra load or reinforced.
   *
   * @return true with XL, EXTRA LOAD or REINFORCED
   */
  public boolean isExtraLoad() {
    return service.extraLoad();
  }

  /**
   * Whether the aspect ratio is marked; else a usual one is taken.
   *
   * @return false for {@code 165 R15} and all inch sizes
   */
  public boolean isAspectMarked() {
    return size.aspectPercent() > 0;
  }

  /**
   * What the dimensions rest on.
   *
   * @return data sheet, or estimated where no aspect ratio is marked
   */
  public Basis basis() {
    return isAspectMarked() ? Basis.DATA_SHEET : Basis.ESTIMATED;
  }

  /**
   * Section height over section width: as marked, else 82 % for radial tyres, 88 % for cross-ply
   * low sections (widths in halves of an inch on rims up to 14), 95 % for other cross-ply tyres.
   *
   * @return such as 0.70
   */
  public double aspectRatio() {
    return size.effectiveAspectPercent() / 100.0;
  }

  /**
   * Nominal section width.
   *
   * @return in mm
   */
  public Quantity<Length> sectionWidth() {
    return millimetres(size.widthM());
  }

  /**
   * Section height: width times aspect ratio.
   *
   * @return in mm
   */
  public Quantity<Length> sectionHeight() {
    return millimetres(dimensions.sectionHeightM());
  }

  /**
   * Overall diameter, free of load: 25.4 mm·code + 2·H.
   *
   * @return in mm
   */
  public Quantity<Length> overallDiameter() {
    return millimetres(dimensions.overallDiameterM());
  }

  /**
   * Design diameter, with the rim in whole millimetres; up to 0.4 mm from {@link #overallDiameter}.
   *
   * @return in mm
   */
  public Quantity<Length> designDiameter() {
    return millimetres(dimensions.designDiameterM());
  }

  /**
   * Distance rolled in one turn: 3.05 times the design diameter for radial tyres (ETRTO, from
   * memory), 3.08 times for others (common practice).
   *
   * @return an estimate; measure it on the car where it matters
   */
  public Estimate<Length> rollingCircumference() {
    Estimate.Band band = isRadial() ? RADIAL_ROLLING_BAND : CROSS_PLY_ROLLING_BAND;
    Source source = isRadial() ? ETRTO_ROLLING : CROSS_PLY_ROLLING;
    return Estimate.of(
        "rolling circumference of " + this,
        millimetres(dimensions.rollingM()),
        Kind.LENGTH,
        band,
        source);
  }

  /**
   * Rolling radius: rolling circumference over 2·π.
   *
   * @return an estimate
   */
  public Estimate<Length> rollingRadius() {
    Estimate.Band band = isRadial() ? RADIAL_ROLLING_BAND : CROSS_PLY_ROLLING_BAND;
    Source source = isRadial() ? ETRTO_ROLLING : CROSS_PLY_ROLLING;
    return Estimate.of(
        "rolling radius of " + this,
        millimetres(dimensions.rollingM() / (2 * Math.PI)),
        Kind.LENGTH,
        band,
        source);
  }

  /**
   * Height of the wheel centre above the ground under load, at rest: 0.47 times the design diameter
   * (ETRTO, from memory).
   *
   * @return an estimate; measure it on the car where it matters
   */
  public Estimate<Length> loadedRadius() {
    return Estimate.of(
        "loaded radius of " + this,
        millimetres(dimensions.loadedRadiusM()),
        Kind.LENGTH,
        LOADED_RADIUS_BAND,
        ETRTO_LOADED);
  }

  /**
   * Change of road speed at the same wheel speed when this tyre replaces another; nominal
   * diameters.
   *
   * @param replaced the tyre fitted before
   * @return share; −0.046 means 4.6 % slower than the speedometer shows if it was right before
   */
  public double speedChangeFrom(Tyre replaced) {
    return dimensions.overallDiameterM() / replaced.dimensions.overallDiameterM() - 1;
  }

  /**
   * Load index of a tyre alone on its side of the axle.
   *
   * @return empty if not marked
   */
  public Optional<LoadIndex> loadIndex() {
    return Optional.ofNullable(service.single());
  }

  /**
   * Load index of each of two tyres side by side.
   *
   * @return empty if not marked
   */
  public Optional<LoadIndex> twinLoadIndex() {
    return Optional.ofNullable(service.twin());
  }

  /**
   * Speed up to which the load index holds; of {@code SR} and {@code HR} sizes without a service
   * description the letter in the size.
   *
   * @return empty if not marked, or only as VR or ZR, which state no upper speed
   */
  public Optional<SpeedSymbol> speedSymbol() {
    if (service.speed() != null) {
      return Optional.of(service.speed());
    }
    return switch (size.construction()) {
      case "SR" -> Optional.of(SpeedSymbol.S);
      case "HR" -> Optional.of(SpeedSymbol.H);
      default -> Optional.empty();
    };
  }

  /**
   * Load that one tyre alone on its side may carry.
   *
   * @return in kg; empty if no load index is marked
   */
  public Optional<Quantity<Mass>> maximumLoad() {
    return loadIndex().map(LoadIndex::load);
  }

  /**
   * Load that an axle may carry on tyres of this designation.
   *
   * @param wheels two single wheels or four in pairs
   * @return in kg; empty if the load index needed is not marked
   */
  public Optional<Quantity<Mass>> axleCapacity(AxleWheels wheels) {
    Optional<LoadIndex> index = wheels == AxleWheels.SINGLE ? loadIndex() : twinLoadIndex();
    return index.map(i -> Si.mass(wheels.count() * LoadIndexTable.loadKg(i.index())));
  }

  /**
   * Pressure at which the load index holds: 250 kPa for a standard car tyre, 290 kPa for extra
   * load. Source: ETRTO Standards Manual, as quoted on a tyre-pressure page.
   *
   * @return empty for commercial and cross-ply tyres, where the maker's table must say
   */
  public Optional<Quantity<Pressure>> referencePressure() {
    if (!isRadial() || isCommercial()) {
      return Optional.empty();
    }
    double kpa = isExtraLoad() ? EXTRA_LOAD_REFERENCE_KPA : STANDARD_REFERENCE_KPA;
    return Optional.of(KILOPASCAL.of(kpa));
  }

  /**
   * The working of all dimensions.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    Worksheet.Recording recording = Worksheet.record("Tyre " + this);
    dimensions(recording);
    return recording.toWorksheet();
  }

  private static Quantity<Length> millimetres(double lengthM) {
    return MILLIMETRE.of(lengthM * 1000);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Tyre that && size.equals(that.size) && service.equals(that.service));
  }

  @Override
  public int hashCode() {
    return Objects.hash(size, service);
  }

  /**
   * The designation; {@link #parse} reads it back.
   *
   * @return for example {@code 185 R14C 102/100Q}
   */
  @Override
  public String toString() {
    return size.toString() + service;
  }
}
