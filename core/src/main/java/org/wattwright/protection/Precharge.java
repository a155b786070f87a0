package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Charging the capacitors of a bus through a resistor before the main contactor closes: what is on
 * the bus, what loads it, and when the contactor may close.
 *
 * <p>The voltage that may be missing then, ΔU, is the lesser of (1 − share)·U and what the make
 * limit of the contactor allows by {@link ClosingInrush}. {@link #with} works a resistor out.
 *
 * <pre>{@code
 * PrechargeResult result = Precharge.from(volts(400))
 *     .capacitance(microfarads(1000)).capacitanceTolerance(0.2)
 *     .supplyResistance(milliohms(60)).contactor(contactor)
 *     .within(seconds(1)).timeOut(seconds(2)).build()
 *     .with(PrechargeResistor.of("W-50", ohms(150)).tolerance(0.05));
 * }</pre>
 *
 * <p>Source: circuit theory. Immutable and thread-safe.
 */
public final class Precharge {
  private static final double LOWEST_OHM = 1e-3;
  private static final double HIGHEST_OHM = 1e7;

  private final double supplyV;
  private final double capacitanceF;
  private final Given<Double> capacitanceTolerance;
  private final double closingShare;
  private final @Nullable Double supplyOhm;
  private final double inductanceH;
  private final PrechargeKernel.Load load;
  private final List<String> missing;
  private final @Nullable Contactor contactor;
  private final Timing timing;
  private final Basis basis;

  /** What is asked of time and repetition, in s. */
  record Timing(
      @Nullable Double wantedS, @Nullable Double timeOutS, int shots, @Nullable Double periodS) {}

  Precharge(PrechargeBuilder builder) {
    supplyV = builder.supplyV;
    capacitanceF = builder.capacitanceF;
    capacitanceTolerance = builder.capacitanceTolerance;
    closingShare = builder.closingShare;
    supplyOhm = builder.supplyOhm;
    inductanceH = builder.inductanceH;
    load =
        new PrechargeKernel.Load(
            builder.loads.stream().mapToDouble(PrechargeLoad::conductanceS).sum(),
            builder.loads.stream().mapToDouble(PrechargeLoad::currentA).sum());
    missing = List.copyOf(builder.missing);
    contactor = builder.contactor;
    timing = new Timing(builder.wantedS, builder.timeOutS, builder.shots, builder.shotPeriodS);
    basis = builder.basis;
  }

  /**
   * Starts a pre-charge.
   *
   * @param supply highest voltage of the pack, &gt; 0 V
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public static PrechargeBuilder from(Quantity<ElectricPotential> supply) {
    return new PrechargeBuilder(supply);
  }

  /**
   * Capacitance of the whole bus.
   *
   * @return in µF
   */
  public Quantity<ElectricCapacitance> capacitance() {
    return Kind.CAPACITANCE.ofSi(capacitanceF);
  }

  /**
   * Energy of the full capacitors, ½·C·U², at the upper tolerance: what the resistor takes at a
   * shot without loads, whatever its resistance.
   *
   * @return in J
   */
  public Quantity<Energy> energyPerShot() {
    double farad = capacitanceF * (1 + capacitanceTolerance());
    return JOULE.of(farad * supplyV * supplyV / 2);
  }

  /**
   * Greatest difference between supply and bus at which the contactor may close.
   *
   * @return ΔU in V
   */
  public Quantity<ElectricPotential> targetDifference() {
    return VOLT.of(targetDifferenceV());
  }

  double targetDifferenceV() {
    double byShareV = (1 - closingShare) * supplyV;
    Optional<Double> byMakeLimitV =
        Optional.ofNullable(contactor)
            .flatMap(Contactor::makeLimit)
            .map(limit -> Kind.CURRENT.siValueOf(limit) * inrush().impedanceOhm())
            .filter(volt -> volt > 0);
    return Math.min(byShareV, byMakeLimitV.orElse(byShareV));
  }

  /**
   * The circuit that the contactor closes, at the upper tolerance of the capacitance.
   *
   * @return its inrush
   */
  public ClosingInrush inrush() {
    return new ClosingInrush(
        Kind.RESISTANCE.ofSi(supplyOhmOrZero()),
        Kind.INDUCTANCE.ofSi(inductanceH),
        Kind.CAPACITANCE.ofSi(capacitanceF * (1 + capacitanceTolerance())));
  }

  double supplyOhmOrZero() {
    return supplyOhm == null ? 0 : supplyOhm;
  }

  /**
   * Works a resistor out: course at the nominal values and at both corners of the tolerances,
   * checks, and what happens if the bus is shorted.
   *
   * @param resistor the part
   * @return the result
   */
  public PrechargeResult with(PrechargeResistor resistor) {
    return new PrechargeResult(this, resistor);
  }

  /**
   * Largest value for sale with which even the slowest corner closes within a time.
   *
   * @param within &gt; 0 s
   * @param series preferred values
   * @param tolerance of the resistor as a share, 0 to 0.5
   * @return in Ω; empty if no value of 1 mΩ or more does, because a load keeps the bus down
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range, or the
   *     bus has no capacitance
   */
  public Optional<Quantity<ElectricResistance>> largestResistance(
      Quantity<Time> within, PreferredValues series, double tolerance) {
    double timeS = Require.quantity("Precharge.within", within, SECOND).positive();
    Require.between("Precharge.tolerance", tolerance, 0, 0.5);
    Require.positive("Precharge.capacitance in F", capacitanceF);
    double low = LOWEST_OHM;
    double high = HIGHEST_OHM;
    if (!(slowestS(low, tolerance) <= timeS)) {
      return Optional.empty();
    }
    while (high / low > 1 + 1e-12) {
      double middle = Math.sqrt(low * high);
      if (slowestS(middle, tolerance) <= timeS) {
        low = middle;
      } else {
        high = middle;
      }
    }
    // The bisection ends below the bound by a hair: a value that stands on it must count.
    return Optional.of(series.atMost(OHM.of(Math.min(HIGHEST_OHM, low * (1 + 1e-11)))));
  }

  private double slowestS(double ohm, double tolerance) {
    return course(ohm * (1 + tolerance), 1 + capacitanceTolerance()).timeToTargetS();
  }

  /**
   * Smallest value for sale of a resistor that bears a shorted bus until the time-out, by its pulse
   * energy: R ≥ U²·t/W.
   *
   * @param pulseEnergy that the resistor stands, &gt; 0 J
   * @param timeOut &gt; 0 s
   * @param series preferred values
   * @param tolerance of the resistor as a share, 0 to 0.5
   * @return in Ω
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Quantity<ElectricResistance> smallestResistance(
      Quantity<Energy> pulseEnergy,
      Quantity<Time> timeOut,
      PreferredValues series,
      double tolerance) {
    double joule = Require.quantity("Precharge.pulseEnergy", pulseEnergy, JOULE).positive();
    double timeS = Require.quantity("Precharge.timeOut", timeOut, SECOND).positive();
    Require.between("Precharge.tolerance", tolerance, 0, 0.5);
    double leastOhm = supplyV * supplyV * timeS / joule / (1 - tolerance);
    return series.atLeast(OHM.of(Math.max(LOWEST_OHM, leastOhm * (1 - 1e-12))));
  }

  PrechargeCourse course(double resistorOhm, double capacitanceFactor) {
    PrechargeKernel kernel =
        new PrechargeKernel(
            supplyV, resistorOhm, supplyOhmOrZero(), capacitanceF * capacitanceFactor, load);
    return new PrechargeCourse(kernel, supplyV - targetDifferenceV());
  }

  double closingShare() {
    return closingShare;
  }

  PrechargeKernel.Load load() {
    return load;
  }

  double supplyV() {
    return supplyV;
  }

  double capacitanceTolerance() {
    return capacitanceTolerance.value();
  }

  Given<Double> givenTolerance() {
    return capacitanceTolerance;
  }

  /** What is estimated of the capacitance, by name. */
  String[] estimatesOfCapacitance() {
    return capacitanceTolerance.basis() == Basis.ESTIMATED
        ? new String[] {"precharge.capacitanceTolerance"}
        : new String[0];
  }

  boolean boundsInrush() {
    return inrush().impedanceOhm() > 0;
  }

  List<String> missing() {
    return missing;
  }

  @Nullable Contactor contactor() {
    return contactor;
  }

  Timing timing() {
    return timing;
  }

  Basis basis() {
    return basis;
  }

  /**
   * Supply, capacitance and target.
   *
   * @return for example {@code 1000 µF to 400 V, closes at 20 V missing}
   */
  @Override
  public String toString() {
    return capacitance()
        + " to "
        + VOLT.of(supplyV)
        + ", closes at "
        + Measures.format(targetDifference(), Kind.VOLTAGE)
        + " missing";
  }
}
