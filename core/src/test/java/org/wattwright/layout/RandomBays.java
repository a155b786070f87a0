package org.wattwright.layout;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetresPerDegree;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.check.Given;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Tyre;
import org.wattwright.vehicle.WeighedVehicle;

/** Small invented vehicles with bays, at random. */
final class RandomBays {
  static final Tyre TYRE = Tyre.parse("175/70 R14 84T");

  private final Generator random;
  private int leastRoom = 2;
  private int mostRoom = 7;

  RandomBays(Generator random) {
    this.random = random;
  }

  static BatteryModule module(String name, double massKg) {
    return BatteryModule.of(InventedParts.flatCell())
        .name(name)
        .series(2)
        .mass(kilograms(massKg))
        .build();
  }

  static WeighedVehicle van() {
    return WeighedVehicle.withWheelbase(metres(2.5))
        .frontLeft(kilograms(195))
        .frontRight(kilograms(205))
        .rearLeft(kilograms(210))
        .rearRight(kilograms(190))
        .frontTrack(metres(1.25))
        .rearTrack(metres(1.2))
        .frontRollStiffness(Given.dataSheet(newtonMetresPerDegree(220), "springs"))
        .rearRollStiffness(Given.dataSheet(newtonMetresPerDegree(140), "springs"))
        .build();
  }

  static Position at(double behindM, double leftM, double upM) {
    return Position.behindFrontAxle(metres(behindM))
        .leftOfCentre(metres(leftM))
        .aboveGround(metres(upM));
  }

  private double grid(double low, double high, double step) {
    return Math.round(random.between(low, high) / step) * step;
  }

  private int count(int low, int high) {
    return (int) Math.floor(random.between(low, high + 0.999));
  }

  private boolean coin() {
    return random.between(0, 1) < 0.5;
  }

  /** Three or four bays, one or two packs, every kind of requirement somewhere. */
  BayAllocator allocator() {
    BatteryModule flat = module("flat", grid(12, 26, 0.01));
    BatteryModule tall = module("tall", grid(12, 26, 0.01));
    List<Bay> bays = bays(List.of(flat, tall));
    LoadCase laden =
        LoadCase.KERB.named("laden").plus(MassItem.of("load", kilograms(300), at(2.2, 0, 0.7)));
    BayAllocator allocator =
        BayAllocator.over(MassLedger.of(van()), bays)
            .pack(flat, count(3, 6), count(1, 2))
            .loadCase(LoadCase.KERB)
            .loadCase(laden)
            .alternatives(count(0, 5));
    if (coin()) {
      allocator = allocator.pack(tall, count(3, 6), count(1, 2));
    }
    return requirements(allocator);
  }

  /**
   * Three or four bays, one pack of two or three types of module, at times one of a single type.
   */
  BayAllocator mixedAllocator() {
    leastRoom = 6;
    mostRoom = 11;
    BatteryModule flat = module("flat", grid(7, 14, 0.01));
    BatteryModule tall = module("tall", grid(7, 14, 0.01));
    BatteryModule tiny = module("tiny", grid(4, 7, 0.01));
    List<SeriesGroup> string = new ArrayList<>();
    string.add(SeriesGroup.of(flat, count(1, 3)));
    string.add(SeriesGroup.of(tall, count(1, 3)));
    if (random.between(0, 1) < 0.3) {
      string.add(SeriesGroup.of(tiny, 1));
    }
    LoadCase laden =
        LoadCase.KERB.named("laden").plus(MassItem.of("load", kilograms(300), at(2.2, 0, 0.7)));
    BayAllocator allocator =
        BayAllocator.over(MassLedger.of(van()), bays(List.of(flat, tall, tiny)))
            .pack(string, count(1, string.size() == 2 ? 3 : 2))
            .loadCase(LoadCase.KERB)
            .loadCase(laden)
            .alternatives(count(0, 5));
    if (random.between(0, 1) < 0.2) {
      allocator = allocator.pack(tall, count(3, 6), count(1, 2));
    }
    return requirements(allocator);
  }

  private BayAllocator requirements(BayAllocator plain) {
    BayAllocator allocator = plain;
    if (coin()) {
      allocator = allocator.equalStrings();
    }
    if (coin()) {
      allocator = allocator.contiguousStrings();
    }
    if (coin()) {
      allocator = allocator.leftRightDifferenceAtMost(kilograms(grid(20, 120, 1)));
    }
    if (coin()) {
      allocator = allocator.frontShareBetween(random.between(0.2, 0.45), random.between(0.46, 0.7));
    }
    if (random.between(0, 1) < 0.8) {
      double band = coin() ? 0 : random.between(0, 0.03);
      allocator = allocator.frontShareTarget(random.between(0.4, 0.6), band, LoadCase.KERB);
    }
    return allocator.limits(limits());
  }

  private AxleLimits limits() {
    return AxleLimits.builder()
        .frontAxle(kilograms(grid(480, 640, 1)))
        .rearAxle(kilograms(grid(600, 800, 1)))
        .grossMass(kilograms(grid(1250, 1400, 1)))
        .frontTyre(TYRE)
        .rearTyre(TYRE)
        .build();
  }

  private List<Bay> bays(List<BatteryModule> modules) {
    int size = count(2, 4);
    List<Bay> bays = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      bays.add(bay(i, modules));
    }
    if (coin()) {
      bays.set(0, bays.get(0).keptFree());
    }
    return bays;
  }

  private Bay bay(int index, List<BatteryModule> modules) {
    double behindM = grid(-0.4, 3.2, 0.001);
    double leftM = grid(-0.4, 0.4, 0.001);
    double upM = grid(0.3, 0.8, 0.001);
    Bay bay = Bay.at("bay " + index, at(behindM, leftM, upM));
    if (coin()) {
      bay = bay.next(at(behindM + 0.11, leftM - 0.02, upM + 0.03));
    }
    if (coin()) {
      MassItem box = MassItem.of("box", kilograms(grid(4, 15, 0.1)), at(behindM, leftM, upM));
      bay = bay.enclosure(box);
    }
    if (coin()) {
      bay = bay.massAtMost(kilograms(grid(60, 200, 1)));
    }
    for (BatteryModule module : modules) {
      bay = bay.holds(module, count(leastRoom, mostRoom));
    }
    return index == 0 ? bay : bay.linkedTo("bay " + count(0, index - 1), metres(grid(0.5, 3, 0.1)));
  }
}
