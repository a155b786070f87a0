package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator.SplittableGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.wattwright.battery.PackState;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.TemperatureDifference;

/**
 * How sure a range is: what each factor changes, by central differences over ±5 % or ±5 K, and how
 * it scatters over stated tolerances.
 *
 * <p>Scatter: every factor evenly over its tolerance, independent of the others. Samples are drawn
 * in chunks, each with a generator split off in order from one seed, so that the answer is the same
 * on any number of threads.
 *
 * <pre>{@code
 * RangeUncertainty.of(van, cycle, percentCharge(10))
 *     .tolerance(DriveFactor.MASS, 0.03).tolerance(DriveFactor.DRAG_AREA, 0.10)
 *     .spread(1000, 7);           // 98.1 km … 104.5 km … 111.2 km (5 %, 50 %, 95 % of 1000)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RangeUncertainty {
  private static final double STEP = 0.05;
  private static final double STEP_K = 5;
  private static final int CHUNK = 16;
  private static final int MOST_SAMPLES = 1_000_000;

  private final ElectricVehicle vehicle;
  private final DriveCycle cycle;
  private final StateOfCharge reserve;
  private final Map<DriveFactor, Double> tolerances;

  private RangeUncertainty(
      ElectricVehicle vehicle,
      DriveCycle cycle,
      StateOfCharge reserve,
      Map<DriveFactor, Double> tolerances) {
    this.vehicle = Objects.requireNonNull(vehicle, "vehicle");
    this.cycle = Objects.requireNonNull(cycle, "cycle");
    this.reserve = Objects.requireNonNull(reserve, "reserve");
    this.tolerances = tolerances;
  }

  /**
   * The range of a vehicle on a cycle, with full pedal where the trace is lost.
   *
   * @param vehicle the vehicle
   * @param cycle the cycle
   * @param reserve state of charge that stays in the pack
   * @return without tolerances
   */
  public static RangeUncertainty of(
      ElectricVehicle vehicle, DriveCycle cycle, StateOfCharge reserve) {
    return new RangeUncertainty(vehicle, cycle, reserve, Map.of());
  }

  /**
   * With the tolerance of a factor.
   *
   * @param factor mass, rolling resistance or drag area
   * @param share to either side, 0 to 0.9
   * @return a copy
   * @throws InvalidInputException if the share is outside its range, or for temperature
   */
  public RangeUncertainty tolerance(DriveFactor factor, double share) {
    if (factor == DriveFactor.TEMPERATURE) {
      throw InvalidInputException.of("RangeUncertainty.factor", "not temperature", "temperature");
    }
    return with(factor, Require.between("RangeUncertainty." + factor, share, 0, 0.9));
  }

  /**
   * With the tolerance of the cell temperature.
   *
   * @param difference to either side, 0 K to 50 K
   * @return a copy
   * @throws InvalidInputException if it is outside its range
   */
  public RangeUncertainty temperatureTolerance(Quantity<TemperatureDifference> difference) {
    double kelvin =
        Require.quantity("RangeUncertainty.temperature", difference, KELVIN_OF_DIFFERENCE)
            .between(0, 50);
    return with(DriveFactor.TEMPERATURE, kelvin);
  }

  private RangeUncertainty with(DriveFactor factor, double tolerance) {
    Map<DriveFactor, Double> more = new EnumMap<>(DriveFactor.class);
    more.putAll(tolerances);
    more.put(factor, tolerance);
    return new RangeUncertainty(vehicle, cycle, reserve, more);
  }

  /**
   * What each factor changes.
   *
   * @return one line for each factor
   */
  public List<DriveSensitivity> sensitivities() {
    return Stream.of(DriveFactor.values()).map(this::sensitivity).toList();
  }

  private DriveSensitivity sensitivity(DriveFactor factor) {
    boolean isTemperature = factor == DriveFactor.TEMPERATURE;
    double step = isTemperature ? STEP_K : STEP;
    ElectricVehicle more = changed(factor, step);
    ElectricVehicle less = changed(factor, -step);
    double stepsOfOne = isTemperature ? 2 * STEP_K : 2 * STEP * 100;
    return new DriveSensitivity(
        factor,
        (rangeM(more, more.packTable()) - rangeM(less, less.packTable())) / stepsOfOne,
        (toFiftyS(more) - toFiftyS(less)) / stepsOfOne);
  }

  private ElectricVehicle changed(DriveFactor factor, double by) {
    RoadLoad load = vehicle.roadLoad();
    return switch (factor) {
      case MASS -> vehicle.withRoadLoad(withMassTimes(load, 1 + by));
      case ROLLING_RESISTANCE -> vehicle.withRoadLoad(load.scaled(1 + by, 1));
      case DRAG_AREA -> vehicle.withRoadLoad(load.scaled(1, 1 + by));
      case TEMPERATURE -> warmer(by);
    };
  }

  private static RoadLoad withMassTimes(RoadLoad load, double factor) {
    return load.withMass(Kind.MASS.ofSi(load.massKg() * factor));
  }

  private ElectricVehicle warmer(double byK) {
    PackState state = vehicle.state();
    double kelvin = Kind.TEMPERATURE.siValueOf(state.temperature()) + byK;
    return vehicle.toBuilder()
        .at(PackState.of(state.stateOfCharge(), Kind.TEMPERATURE.ofSi(kelvin)))
        .build();
  }

  private double rangeM(ElectricVehicle changed, PackTable pack) {
    return CycleRun.of(changed, pack).carryingOnBehind().range(cycle, reserve).distanceM();
  }

  private static double toFiftyS(ElectricVehicle changed) {
    double soc = changed.state().stateOfCharge().fraction();
    return new FullPedal(DriveModel.of(changed), soc, FullPedal.BEST)
        .between(0, 50 / 3.6, 0)
        .time()
        .map(Kind.TIME::siValueOf)
        .orElse(Double.NaN);
  }

  /**
   * How the range scatters over the tolerances, on all processors.
   *
   * @param samples 20 to 1 000 000
   * @param seed of the random numbers; the same seed gives the same answer
   * @return 5 %, 50 % and 95 %
   * @throws InvalidInputException if the number of samples is outside its range
   */
  public RangeSpread spread(int samples, long seed) {
    Require.count("RangeUncertainty.samples", samples, 20, MOST_SAMPLES);
    int chunks = (samples + CHUNK - 1) / CHUNK;
    SplittableGenerator root = new SplittableRandom(seed);
    SplittableGenerator[] generators = new SplittableGenerator[chunks];
    for (int i = 0; i < chunks; i++) {
      generators[i] = root.split();
    }
    PackTable[] tables = tables();
    double[] rangesM = new double[samples];
    IntStream.range(0, chunks)
        .parallel()
        .forEach(
            chunk -> {
              int end = Math.min(samples, (chunk + 1) * CHUNK);
              for (int i = chunk * CHUNK; i < end; i++) {
                rangesM[i] = sampleM(generators[chunk], tables);
              }
            });
    Arrays.sort(rangesM);
    return RangeSpread.ofSorted(rangesM, seed);
  }

  /** The pack at the cold end of its tolerance, as it is, and at the warm end. */
  private PackTable[] tables() {
    double kelvin = tolerances.getOrDefault(DriveFactor.TEMPERATURE, 0.0);
    if (kelvin == 0) {
      return new PackTable[] {vehicle.packTable()};
    }
    return new PackTable[] {
      warmer(-kelvin).packTable(), vehicle.packTable(), warmer(kelvin).packTable()
    };
  }

  private double sampleM(SplittableGenerator random, PackTable[] tables) {
    double mass = factor(DriveFactor.MASS, random);
    double rolling = factor(DriveFactor.ROLLING_RESISTANCE, random);
    double drag = factor(DriveFactor.DRAG_AREA, random);
    double warmth = random.nextDouble(-1, 1);
    RoadLoad load = withMassTimes(vehicle.roadLoad().scaled(rolling, drag), mass);
    PackTable pack =
        tables.length == 1
            ? tables[0]
            : tables[1].towards(warmth < 0 ? tables[0] : tables[2], Math.abs(warmth));
    return rangeM(vehicle.withRoadLoad(load), pack);
  }

  /** Draws whether or not there is a tolerance, so that adding one leaves the others alone. */
  private double factor(DriveFactor which, SplittableGenerator random) {
    double drawn = random.nextDouble(-1, 1);
    return 1 + tolerances.getOrDefault(which, 0.0) * drawn;
  }

  /**
   * Vehicle, cycle and tolerances.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "range of " + vehicle + " on " + cycle.name() + ", tolerances of " + tolerances.keySet();
  }
}
