package org.wattwright.benchmarks.layout;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.newtonMetresPerDegree;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Given;
import org.wattwright.layout.Bay;
import org.wattwright.layout.BayAllocator;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.WeighedVehicle;

/**
 * An invented vehicle with bays, on a grid: masses in whole steps, distances in whole steps, so
 * that every method sees the same whole numbers. Wheelbase 2,500 mm, both tracks 1,250 mm, target
 * share one half.
 *
 * <p>The linear core: all modules of a bay count at its middle, no enclosures, no links; limits of
 * front axle, rear axle and the difference of the sides. Moments about the middle of the wheelbase:
 * front minus half the mass, times the wheelbase, is Σ n·m·(1250 − d).
 */
final class BayProblem {
  static final int WHEELBASE_MM = 2_500;
  static final int HALF_MM = WHEELBASE_MM / 2;
  static final int TRACK_MM = 1_250;

  /** Steps of mass per kilogram, and of distance in millimetres. */
  record Grid(int perKg, int stepMm) {
    static final Grid FINE = new Grid(100, 1);
    static final Grid COARSE = new Grid(10, 10);
  }

  /** One pack: index of the module type, modules in series, strings in parallel. */
  record Pack(int type, int series, int parallel) {
    int modules() {
      return series * parallel;
    }
  }

  final Grid grid;
  final int[] moduleMass;
  final int[] behind;
  final int[] left;
  final int room;
  final List<Pack> packs = new ArrayList<>();
  final long baseFrontKg = 420;
  final long baseRearKg = 380;
  final long frontLimitKg;
  final long rearLimitKg;
  final long leftRightKg;

  private BayProblem(int types, int bays, int mostModules, int room, Grid grid, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    this.grid = grid;
    this.room = room;
    moduleMass = new int[types];
    behind = new int[bays];
    left = new int[bays];
    for (int b = 0; b < bays; b++) {
      behind[b] = -300 + 3_300 * b / Math.max(1, bays - 1) + random.nextInt(-150, 150);
      behind[b] -= Math.floorMod(behind[b], grid.stepMm());
      left[b] = (b % 2 == 0 ? 1 : -1) * random.nextInt(100, 400);
      left[b] -= Math.floorMod(left[b], grid.stepMm());
    }
    double heaviestKg = 500.0 / mostModules;
    for (int type = 0; type < types; type++) {
      moduleMass[type] = (int) Math.round(grid.perKg() * heaviestKg * random.nextDouble(0.6, 1.0));
      int series = Math.max(1, mostModules / 4 - 2 * type);
      for (int parallel = 1; parallel <= 4; parallel++) {
        packs.add(new Pack(type, series, parallel));
      }
    }
    frontLimitKg = 660;
    rearLimitKg = 680;
    leftRightKg = 60;
  }

  /** W is an ordinary workshop job; S, M, L and F grow from there. */
  static BayProblem of(String size) {
    return switch (size) {
      case "W" -> new BayProblem(1, 3, 16, 8, Grid.FINE, 14);
      case "S" -> new BayProblem(3, 2, 40, 36, Grid.FINE, 11);
      case "M" -> new BayProblem(4, 4, 100, 60, Grid.FINE, 12);
      case "L" -> new BayProblem(6, 6, 200, 41, Grid.COARSE, 13);
      case "F" -> new BayProblem(6, 6, 200, 41, Grid.FINE, 13);
      default -> throw new IllegalArgumentException(size);
    };
  }

  int bays() {
    return behind.length;
  }

  /** Distance of a bay from the middle of the wheelbase, forwards, in steps. */
  int lever(int bay) {
    return (HALF_MM - behind[bay]) / grid.stepMm();
  }

  /** Front excess over half the mass, without modules, times the wheelbase, in steps. */
  long baseExcess() {
    return (baseFrontKg - baseRearKg) * grid.perKg() * HALF_MM / grid.stepMm();
  }

  /** Mass of the vehicle with a pack, in steps. */
  long mass(Pack pack) {
    return (baseFrontKg + baseRearKg) * grid.perKg()
        + (long) pack.modules() * moduleMass[pack.type()];
  }

  /** Share deviation of an excess. */
  double share(long excess, Pack pack) {
    return Math.abs(excess) / ((double) mass(pack) * WHEELBASE_MM / grid.stepMm());
  }

  BayAllocator allocator() {
    return allocator(false);
  }

  /** The same, or the full problem: enclosures, fill positions, links, heights, two load cases. */
  BayAllocator allocator(boolean full) {
    List<BatteryModule> modules = new ArrayList<>();
    for (int type = 0; type < moduleMass.length; type++) {
      modules.add(module("type " + type, moduleMass[type] / (double) grid.perKg()));
    }
    List<Bay> bays = new ArrayList<>();
    for (int b = 0; b < bays(); b++) {
      bays.add(bay(b, modules, full));
    }
    BayAllocator allocator =
        BayAllocator.over(ledger(), bays)
            .limits(limits())
            .leftRightDifferenceAtMost(kilograms(leftRightKg))
            .frontShareTarget(0.5, full ? 0.0005 : 0, LoadCase.KERB)
            .allowProvisional();
    for (Pack pack : packs) {
      allocator = allocator.pack(modules.get(pack.type()), pack.series(), pack.parallel());
    }
    return full ? allocator.loadCase(LoadCase.KERB).loadCase(driver()) : allocator;
  }

  private static LoadCase driver() {
    return LoadCase.KERB
        .named("with driver")
        .plus(MassItem.of("driver", kilograms(75), at(1_300, 350, 600)));
  }

  private Bay bay(int b, List<BatteryModule> modules, boolean full) {
    Bay bay = Bay.at("bay " + b, at(behind[b], left[b], 400 + 20 * b));
    for (BatteryModule module : modules) {
      bay = bay.holds(module, room);
    }
    if (full) {
      bay =
          bay.next(at(behind[b] + 7, left[b], 402 + 20 * b))
              .enclosure(MassItem.of("box", kilograms(8), at(behind[b] + 100, left[b], 400)));
      bay = b == 0 ? bay : bay.linkedTo("bay " + (b - 1), metres(0.8 + 0.1 * b));
    }
    return bay;
  }

  private static Position at(int behindMm, int leftMm, int upMm) {
    return Position.behindFrontAxle(metres(behindMm / 1e3))
        .leftOfCentre(metres(leftMm / 1e3))
        .aboveGround(metres(upMm / 1e3));
  }

  private MassLedger ledger() {
    return MassLedger.of(
        WeighedVehicle.withWheelbase(metres(WHEELBASE_MM / 1e3))
            .frontLeft(kilograms(baseFrontKg / 2.0))
            .frontRight(kilograms(baseFrontKg / 2.0))
            .rearLeft(kilograms(baseRearKg / 2.0))
            .rearRight(kilograms(baseRearKg / 2.0))
            .frontTrack(metres(TRACK_MM / 1e3))
            .rearTrack(metres(TRACK_MM / 1e3))
            .frontRollStiffness(Given.dataSheet(newtonMetresPerDegree(200), "springs"))
            .rearRollStiffness(Given.dataSheet(newtonMetresPerDegree(200), "springs"))
            .build());
  }

  private AxleLimits limits() {
    return AxleLimits.builder()
        .frontAxle(kilograms(frontLimitKg))
        .rearAxle(kilograms(rearLimitKg))
        .grossMass(kilograms(5_000))
        .build();
  }

  private static BatteryModule module(String name, double massKg) {
    Cell cell =
        Cell.of("cell of " + name, Chemistry.LFP)
            .capacity(ampereHours(20))
            .openCircuit(
                OpenCircuitCurve.at(celsius(-10), celsius(25))
                    .row(percentCharge(0), volts(2.70), volts(2.75))
                    .row(percentCharge(100), volts(3.40), volts(3.43))
                    .build())
            .resistance(
                ResistanceTable.at(celsius(-10), celsius(25))
                    .row(percentCharge(10), milliohms(2.4), milliohms(0.7))
                    .row(percentCharge(90), milliohms(1.6), milliohms(0.5))
                    .build())
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .continuousDischargeCurrent(amperes(57))
            .continuousChargeCurrent(amperes(20))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
            .mass(kilograms(0.5))
            .build();
    return BatteryModule.of(cell).name(name).series(1).mass(kilograms(massKg)).build();
  }
}
