package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Price;

/**
 * Collects the data sheet of a {@link Fuse}. Every field is optional: what is left out makes the
 * checks that need it say so.
 */
public final class FuseBuilder {
  private final String name;
  private final double ratedA;
  private @Nullable Double directV;
  private @Nullable Double alternatingV;
  private @Nullable Double testTimeConstantS;
  private @Nullable Double breakingCapacityA;
  private @Nullable BreakingRange breakingRange;
  private @Nullable Double minimumBreakingA;
  private @Nullable TimeCurrentCurve preArcing;
  private @Nullable TimeCurrentCurve total;
  private @Nullable Double preArcingA2S;
  private final List<FuseData.TotalIntegral> totals = new ArrayList<>();
  private @Nullable Double peakLetThroughA;
  private @Nullable AmbientDerating ambient;
  private double cooling = 1;
  private double load = 1;
  private @Nullable Double cyclic;
  private @Nullable Double massKg;
  private @Nullable Price price;
  private @Nullable Double lossW;
  private Basis basis = Basis.DATA_SHEET;
  private Source source;

  FuseBuilder(String name, Quantity<ElectricCurrent> ratedCurrent) {
    this.name = Require.text("Fuse.name", name);
    this.ratedA = Require.quantity("Fuse.ratedCurrent", ratedCurrent, AMPERE).positive();
    this.source = Source.dataSheet(this.name);
  }

  FuseBuilder(FuseData data) {
    name = data.name();
    ratedA = data.ratedA();
    directV = data.directV();
    alternatingV = data.alternatingV();
    testTimeConstantS = data.testTimeConstantS();
    breakingCapacityA = data.breakingCapacityA();
    breakingRange = data.breakingRange();
    minimumBreakingA = data.minimumBreakingA();
    preArcing = data.preArcing();
    total = data.total();
    preArcingA2S = data.preArcingA2S();
    totals.addAll(data.totals());
    peakLetThroughA = data.peakLetThroughA();
    ambient = data.derating().ambient();
    cooling = data.derating().cooling();
    load = data.derating().load();
    cyclic = data.derating().cyclic();
    massKg = data.trade().massKg();
    price = data.trade().price();
    lossW = data.trade().lossW();
    basis = data.trade().basis();
    source = data.trade().source();
  }

  /**
   * Rated voltage on direct current.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder directVoltage(Quantity<ElectricPotential> value) {
    directV = Require.quantity("Fuse.directVoltage", value, VOLT).positive();
    return this;
  }

  /**
   * Rated voltage on alternating current; it says nothing about direct current.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder alternatingVoltage(Quantity<ElectricPotential> value) {
    alternatingV = Require.quantity("Fuse.alternatingVoltage", value, VOLT).positive();
    return this;
  }

  /**
   * Time constant L/R of the circuit in which voltage and breaking capacity were tested.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder testTimeConstant(Quantity<Time> value) {
    testTimeConstantS = Require.quantity("Fuse.testTimeConstant", value, SECOND).positive();
    return this;
  }

  /**
   * Highest prospective direct current that it interrupts, at the tested time constant.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder breakingCapacity(Quantity<ElectricCurrent> value) {
    breakingCapacityA = Require.quantity("Fuse.breakingCapacity", value, AMPERE).positive();
    return this;
  }

  /**
   * It interrupts every current that melts it, up to its breaking capacity.
   *
   * @return this builder
   */
  public FuseBuilder fullRange() {
    breakingRange = BreakingRange.FULL;
    minimumBreakingA = null;
    return this;
  }

  /**
   * It interrupts currents from a lowest one on; below that it may melt and burn on.
   *
   * @param minimumBreakingCurrent lowest current that it interrupts, &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder partialRange(Quantity<ElectricCurrent> minimumBreakingCurrent) {
    String field = "Fuse.minimumBreakingCurrent";
    minimumBreakingA = Require.quantity(field, minimumBreakingCurrent, AMPERE).positive();
    breakingRange = BreakingRange.PARTIAL;
    return this;
  }

  /**
   * It interrupts currents from a lowest one on that its data sheet does not state.
   *
   * @return this builder
   */
  public FuseBuilder partialRange() {
    breakingRange = BreakingRange.PARTIAL;
    minimumBreakingA = null;
    return this;
  }

  /**
   * Time until the element has melted, against current.
   *
   * @param value cold, in air of 20 °C to 25 °C, as data sheets have it
   * @return this builder
   */
  public FuseBuilder preArcingCurve(TimeCurrentCurve value) {
    preArcing = Objects.requireNonNull(value, "preArcingCurve");
    return this;
  }

  /**
   * Time until the current is off, against current.
   *
   * @param value melting and arcing together, at the rated voltage
   * @return this builder
   */
  public FuseBuilder totalCurve(TimeCurrentCurve value) {
    total = Objects.requireNonNull(value, "totalCurve");
    return this;
  }

  /**
   * Smallest I²t that melts the element when no heat is lost, for times up to 10 ms.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder preArcingJouleIntegral(Quantity<JouleIntegral> value) {
    preArcingA2S =
        Require.quantity("Fuse.preArcingJouleIntegral", value, AMPERE_SQUARED_SECOND).positive();
    return this;
  }

  /**
   * Largest I²t that passes until the current is off; may be stated for several voltages, of which
   * the next above the circuit's counts.
   *
   * @param value &gt; 0 A²s
   * @param upTo highest direct voltage of the circuit for which it holds, &gt; 0 V
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder totalJouleIntegral(
      Quantity<JouleIntegral> value, Quantity<ElectricPotential> upTo) {
    String field = "Fuse.totalJouleIntegral";
    double integralA2S = Require.quantity(field, value, AMPERE_SQUARED_SECOND).positive();
    double voltageV = Require.quantity(field + ".voltage", upTo, VOLT).positive();
    totals.add(new FuseData.TotalIntegral(voltageV, integralA2S));
    return this;
  }

  /**
   * Highest current that passes at any fault up to the breaking capacity (cut-off current).
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder peakLetThrough(Quantity<ElectricCurrent> value) {
    peakLetThroughA = Require.quantity("Fuse.peakLetThrough", value, AMPERE).positive();
    return this;
  }

  /**
   * How much less it carries in warm air.
   *
   * @param value the maker's law
   * @return this builder
   */
  public FuseBuilder ambientDerating(AmbientDerating value) {
    ambient = Objects.requireNonNull(value, "ambientDerating");
    return this;
  }

  /**
   * How much more it carries in forced air.
   *
   * @param value 1 to 2; 1 unless told
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder coolingFactor(double value) {
    cooling = Require.between("Fuse.coolingFactor", value, 1, 2);
    return this;
  }

  /**
   * Share of its rated current that it carries for hours, apart from the air: 1 for ratings by IEC
   * 60269, 0.75 for North-American ones, common practice.
   *
   * @param value 0.1 to 1; 1 unless told
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder continuousFactor(double value) {
    load = Require.between("Fuse.continuousFactor", value, 0.1, 1);
    return this;
  }

  /**
   * Share of its continuous current that it bears as the RMS of a load that swings, lest its
   * element tire.
   *
   * @param value 0.1 to 1
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder cyclicFactor(double value) {
    cyclic = Require.between("Fuse.cyclicFactor", value, 0.1, 1);
    return this;
  }

  /**
   * Mass with its holder.
   *
   * @param value &gt; 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder mass(Quantity<Mass> value) {
    massKg = Require.quantity("Fuse.mass", value, KILOGRAM).positive();
    return this;
  }

  /**
   * Price of one.
   *
   * @param value the price
   * @return this builder
   */
  public FuseBuilder price(Price value) {
    price = Objects.requireNonNull(value, "price");
    return this;
  }

  /**
   * Heat at the rated current.
   *
   * @param value ≥ 0
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public FuseBuilder loss(Quantity<Power> value) {
    lossW = Require.quantity("Fuse.loss", value, WATT).nonNegative();
    return this;
  }

  /**
   * What the data rest on; a data sheet unless told.
   *
   * @param value the basis
   * @param where where they come from
   * @return this builder
   */
  public FuseBuilder basis(Basis value, Source where) {
    basis = Objects.requireNonNull(value, "basis");
    source = Objects.requireNonNull(where, "source");
    return this;
  }

  /**
   * The fuse.
   *
   * @return the fuse
   * @throws InvalidInputException if the minimum breaking current is above the breaking capacity,
   *     if a total I²t is below the pre-arcing one, or does not rise with voltage, or the peak let
   *     through is below the rated current
   */
  public Fuse build() {
    if (minimumBreakingA != null && breakingCapacityA != null) {
      requireOrder("minimumBreakingCurrent", minimumBreakingA, breakingCapacityA);
    }
    if (peakLetThroughA != null && !(peakLetThroughA >= ratedA)) {
      throw InvalidInputException.of(
          "Fuse.peakLetThrough",
          "≥ rated current " + AMPERE.of(ratedA),
          AMPERE.of(peakLetThroughA).toString());
    }
    requireRisingTotals();
    return new Fuse(data());
  }

  private void requireRisingTotals() {
    totals.sort(java.util.Comparator.comparingDouble(FuseData.TotalIntegral::voltageV));
    double lowestA2S = preArcingA2S == null ? 0 : preArcingA2S;
    for (FuseData.TotalIntegral each : totals) {
      if (!(each.integralA2S() >= lowestA2S)) {
        throw InvalidInputException.of(
            "Fuse.totalJouleIntegral",
            "≥ " + AMPERE_SQUARED_SECOND.of(lowestA2S) + " (pre-arcing, or of a lower voltage)",
            AMPERE_SQUARED_SECOND.of(each.integralA2S()).toString());
      }
      lowestA2S = each.integralA2S();
    }
  }

  private static void requireOrder(String field, double lowA, double highA) {
    if (!(lowA <= highA)) {
      throw InvalidInputException.of(
          "Fuse." + field, "≤ breaking capacity " + AMPERE.of(highA), AMPERE.of(lowA).toString());
    }
  }

  private FuseData data() {
    FuseData.Ratings ratings =
        new FuseData.Ratings(
            name,
            ratedA,
            new FuseData.Voltages(directV, alternatingV, testTimeConstantS),
            new FuseData.Breaking(breakingCapacityA, breakingRange, minimumBreakingA));
    FuseData.Melt melt =
        new FuseData.Melt(
            new FuseData.Curves(preArcing, total),
            preArcingA2S,
            List.copyOf(totals),
            peakLetThroughA);
    return new FuseData(
        ratings,
        melt,
        new FuseData.Derating(ambient, cooling, load, cyclic),
        new FuseData.Trade(massKg, price, lossW, new FuseData.Origin(basis, source)));
  }

  /**
   * Name and rated current.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return name + ", " + AMPERE.of(ratedA) + " so far";
  }
}
