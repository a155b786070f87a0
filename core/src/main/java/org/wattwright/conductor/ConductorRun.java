package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A circuit's conductors from terminal to terminal and back: both polarities, joints and parallel
 * runs.
 *
 * <p>R = (L_out + L_back)·R′(θ)/n + ΣR_joints. Every joint carries the whole current. Direct
 * current, or three phases in step without the skin effect ({@link Wiring}). Immutable and
 * thread-safe.
 *
 * <pre>{@code
 * ConductorRun.of(cable, metres(4)).withJoints(List.of(lug, lug, lug, lug))
 *     .dropAt(amperes(250), celsius(60))
 * }</pre>
 */
public final class ConductorRun implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A new cable may lie this far below the standard's limit; common practice. */
  private static final double LOWEST_SHARE_OF_LIMIT = 0.9;

  private final Cable cable;
  private final double outM;
  private final double backM;
  private final Wiring wiring;
  private final int parallelRuns;
  private final List<Joint> joints;

  ConductorRun(Cable cable, double outM, double backM, int parallelRuns, List<Joint> joints) {
    this(cable, new Lengths(outM, backM, Wiring.PAIR), parallelRuns, joints);
  }

  private ConductorRun(Cable cable, Lengths lengths, int parallelRuns, List<Joint> joints) {
    this.cable = cable;
    this.outM = lengths.outM();
    this.backM = lengths.backM();
    this.wiring = lengths.wiring();
    this.parallelRuns = parallelRuns;
    this.joints = List.copyOf(joints);
  }

  /** Lengths of the loop: of three phases two of them. */
  private record Lengths(double outM, double backM, Wiring wiring) {}

  private Lengths lengths() {
    return new Lengths(outM, backM, wiring);
  }

  /**
   * A go-and-return pair of equal length without joints.
   *
   * @param cable of both polarities
   * @param oneWay length from terminal to terminal, &gt; 0
   * @return the run
   * @throws InvalidInputException if the length is not positive
   */
  public static ConductorRun of(Cable cable, Quantity<Length> oneWay) {
    Objects.requireNonNull(cable, "cable");
    double lengthM = Require.quantity("ConductorRun.length", oneWay, METRE).positive();
    return new ConductorRun(cable, lengthM, lengthM, 1, List.of());
  }

  /**
   * The same run with a return of another length.
   *
   * @param length ≥ 0; zero where the return is another conductor, such as the body
   * @return the run
   * @throws InvalidInputException if negative
   */
  public ConductorRun withReturnLength(Quantity<Length> length) {
    double newBackM = Require.quantity("ConductorRun.returnLength", length, METRE).nonNegative();
    return new ConductorRun(cable, outM, newBackM, parallelRuns, joints);
  }

  /**
   * The same run with another number of conductors: of three phases each as long as the way out;
   * with a return through the body none back.
   *
   * @param value how the current comes back
   * @return the run
   */
  public ConductorRun wired(Wiring value) {
    Lengths lengths =
        switch (value) {
          case PAIR -> new Lengths(outM, backM, value);
          case THREE_PHASE -> new Lengths(outM, outM, value);
          case CHASSIS_RETURN -> new Lengths(outM, 0, value);
        };
    return new ConductorRun(cable, lengths, parallelRuns, joints);
  }

  /**
   * The same run with its joints.
   *
   * @param all of both polarities, or of two of three phases; each carries the whole current
   * @return the run
   */
  public ConductorRun withJoints(List<Joint> all) {
    return new ConductorRun(cable, lengths(), parallelRuns, all);
  }

  /**
   * The same run with several cables in parallel in each polarity.
   *
   * @param count 1 to 8
   * @return the run
   * @throws InvalidInputException if outside its range
   */
  public ConductorRun inParallel(int count) {
    int runs = Require.count("ConductorRun.parallelRuns", count, 1, 8);
    return new ConductorRun(cable, lengths(), runs, joints);
  }

  /**
   * The cable.
   *
   * @return of both polarities
   */
  public Cable cable() {
    return cable;
  }

  /**
   * Cables in parallel in each polarity.
   *
   * @return 1 to 8
   */
  public int parallelRuns() {
    return parallelRuns;
  }

  /**
   * How many conductors it has.
   *
   * @return a pair unless told
   */
  public Wiring wiring() {
    return wiring;
  }

  /**
   * The joints.
   *
   * @return of both polarities, or of two of three phases
   */
  public List<Joint> joints() {
    return joints;
  }

  /**
   * Length of cable to cut: out and back, or three phases, all parallel runs.
   *
   * @return in m
   */
  public Quantity<Length> cableLength() {
    return METRE.of(metalM());
  }

  private double metalM() {
    return wiring.loopsOfMetal() * (outM + backM) * parallelRuns;
  }

  /**
   * Resistance of the loop, of three phases between two of them: cables and joints, typical contact
   * resistances.
   *
   * @param conductor conductor temperature, −100 °C to 400 °C
   * @return in Ω
   * @throws InvalidInputException if the temperature is outside its range
   */
  public Quantity<ElectricResistance> loopResistanceAt(Quantity<Temperature> conductor) {
    return Kind.RESISTANCE.ofSi(cableOhm(conductorK(conductor)) + typicalJointsOhm());
  }

  /**
   * Voltage lost between source and load: ΔU = I·R; of three phases between two of them, ΔU =
   * √3/2·I·R, R of two phases.
   *
   * @param current of the whole circuit, ≥ 0 A
   * @param conductor conductor temperature, −100 °C to 400 °C
   * @return in V
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<ElectricPotential> dropAt(
      Quantity<ElectricCurrent> current, Quantity<Temperature> conductor) {
    double ohm = cableOhm(conductorK(conductor)) + typicalJointsOhm();
    return Kind.VOLTAGE.ofSi(wiring.dropShare() * currentA(current) * ohm);
  }

  /**
   * Power lost in all conductors: P = I²·R; of three phases P = 3/2·I²·R, R of two phases.
   *
   * @param current of the whole circuit, ≥ 0 A
   * @param conductor conductor temperature, −100 °C to 400 °C
   * @return in W
   * @throws InvalidInputException if an argument is outside its range
   */
  public Quantity<Power> lossAt(
      Quantity<ElectricCurrent> current, Quantity<Temperature> conductor) {
    double currentA = currentA(current);
    double ohm = cableOhm(conductorK(conductor)) + typicalJointsOhm();
    return WATT.of(wiring.loopsOfMetal() * currentA * currentA * ohm);
  }

  /**
   * Range in which the loop resistance should be measured at commissioning: cable between 0.9 and 1
   * times its limit (common practice), joints across their range.
   *
   * @param conductor temperature of the cable when measured, −100 °C to 400 °C
   * @return an estimate whose band is the range to be accepted
   * @throws InvalidInputException if the temperature is outside its range
   */
  public Estimate<ElectricResistance> expectedResistanceAt(Quantity<Temperature> conductor) {
    double cablesOhm = cableOhm(conductorK(conductor));
    double typicalOhm = cablesOhm + typicalJointsOhm();
    double lowOhm = LOWEST_SHARE_OF_LIMIT * cablesOhm;
    double highOhm = cablesOhm;
    for (Joint joint : joints) {
      Estimate<ElectricResistance> expected = joint.expectedAtCommissioning();
      lowOhm += Kind.RESISTANCE.siValueOf(expected.low());
      highOhm += Kind.RESISTANCE.siValueOf(expected.high());
    }
    Estimate.Band band = new Estimate.Band(lowOhm / typicalOhm, Math.max(1, highOhm / typicalOhm));
    return Estimate.of(
        "loop resistance of " + cable.name(),
        Kind.RESISTANCE.ofSi(typicalOhm),
        Kind.RESISTANCE,
        band,
        Source.commonPractice("measured cable lies 0 to 10 % below the standard's limit"));
  }

  /**
   * Inductance of the loop, direct current, cables laid in parallel at a spacing.
   *
   * @param axisSpacing between the axes of the two polarities, at least the conductor diameter
   * @return in µH, of the one-way length, without the benefit of parallel runs; empty if the
   *     conductor diameter is unknown
   * @throws InvalidInputException if the conductors overlap
   */
  public Optional<Quantity<ElectricInductance>> loopInductance(Quantity<Length> axisSpacing) {
    return cable
        .conductorDiameter()
        .map(d -> Kind.INDUCTANCE_PER_LENGTH.siValueOf(LoopInductance.ofRoundPair(d, axisSpacing)))
        .map(henryPerM -> Kind.INDUCTANCE.ofSi(henryPerM * Math.max(outM, backM)));
  }

  /**
   * Mass of all cables.
   *
   * @return in kg; empty if the mass per length is unknown
   */
  public Optional<Quantity<Mass>> mass() {
    return cable
        .massPerLength()
        .map(m -> Kind.MASS.ofSi(Kind.MASS_PER_LENGTH.siValueOf(m) * metalM()));
  }

  /**
   * What the resistance rests on.
   *
   * @return the weakest of cable and joints
   */
  public Basis basis() {
    Basis basis = cable.size().resistance().basis();
    for (Joint joint : joints) {
      basis = basis.and(joint.basis());
    }
    return basis;
  }

  double outM() {
    return outM;
  }

  double backM() {
    return backM;
  }

  double cableOhm(double conductorK) {
    ConductorSize size = cable.size();
    double ohmPerM = size.resistanceOhmPerM() * size.material().resistanceRatio(conductorK);
    return (outM + backM) * ohmPerM / parallelRuns;
  }

  private double typicalJointsOhm() {
    double sum = 0;
    for (Joint joint : joints) {
      sum += joint.resistanceOhm();
    }
    return sum;
  }

  /** Sum of the joints, each at the high end of its range. */
  double highJointsOhm() {
    double sum = 0;
    for (Joint joint : joints) {
      sum += joint.highOhm();
    }
    return sum;
  }

  private static double conductorK(Quantity<Temperature> conductor) {
    return ConductorMaterial.temperatureK("ConductorRun.conductor", conductor);
  }

  private static double currentA(Quantity<ElectricCurrent> current) {
    return Require.quantity("ConductorRun.current", current, AMPERE).nonNegative();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ConductorRun that
        && cable.equals(that.cable)
        && outM == that.outM
        && backM == that.backM
        && wiring == that.wiring
        && parallelRuns == that.parallelRuns
        && joints.equals(that.joints);
  }

  @Override
  public int hashCode() {
    return Objects.hash(cable, outM, backM, wiring, parallelRuns);
  }

  /**
   * Runs, size and lengths.
   *
   * @return for example {@code 2 x 35 mm² T-35, 4 m out, 4 m back, 4 joints}
   */
  @Override
  public String toString() {
    String runs = parallelRuns == 1 ? "" : parallelRuns + " x ";
    return String.format(
        Locale.ROOT,
        "%s%s %s, %s, %d joints",
        runs,
        cable.size().name(),
        cable.name(),
        way(),
        joints.size());
  }

  private String way() {
    return wiring == Wiring.PAIR
        ? METRE.of(outM) + " out, " + METRE.of(backM) + " back"
        : wiring + " of " + METRE.of(outM);
  }
}
