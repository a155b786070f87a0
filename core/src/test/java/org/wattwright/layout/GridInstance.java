package org.wattwright.layout;

import static org.wattwright.units.Measures.kilograms;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassLedger;

/**
 * A small invented problem on a grid of 0.1 kg and 10 mm, as whole numbers for a general solver and
 * as bays for the allocator. The vehicle is that of {@link RandomBays}: wheelbase 2.5 m, 400 kg on
 * each axle; target share one half; no enclosures.
 */
final class GridInstance {
  private static final int WHEELBASE = 250;
  private static final int BASE_AXLE = 4_000;

  final int[] room;
  final int moduleMass;
  final List<Integer> packs = new ArrayList<>();
  final double band;
  private final int[] behind;
  private final int[] step;
  private final int frontLimitKg;
  private final int rearLimitKg;

  GridInstance(Generator random) {
    int bays = random.count(2, 4);
    room = new int[bays];
    behind = new int[bays];
    step = new int[bays];
    for (int bay = 0; bay < bays; bay++) {
      room[bay] = random.count(1, 7);
      behind[bay] = random.count(-50, 310);
      step[bay] = random.count(-15, 15);
    }
    moduleMass = random.count(100, 260);
    int first = random.count(2, 12);
    packs.add(first);
    packs.add(first + random.count(1, 4));
    frontLimitKg = random.count(420, 600);
    rearLimitKg = random.count(420, 650);
    band = random.between(0.0001, 0.03);
  }

  /** Front axle load times wheelbase that so many modules add, for each count, in each bay. */
  int[] front(int bay) {
    int[] table = new int[room[bay] + 1];
    for (int count = 1; count < table.length; count++) {
      int lever = WHEELBASE - behind[bay] - (count - 1) * step[bay];
      table[count] = table[count - 1] + moduleMass * lever;
    }
    return table;
  }

  /** Mass of the vehicle with a pack. */
  int mass(int modules) {
    return 2 * BASE_AXLE + modules * moduleMass;
  }

  /** Σ front must stay between the two; front and rear limit, no axle lifts. */
  int leastFront(int modules) {
    int rearKeeps = WHEELBASE * (mass(modules) - rearLimitKg * 10 - BASE_AXLE);
    return Math.max(rearKeeps, -WHEELBASE * BASE_AXLE);
  }

  int mostFront(int modules) {
    int rearGrounded = WHEELBASE * (mass(modules) - BASE_AXLE);
    return Math.min(WHEELBASE * (frontLimitKg * 10 - BASE_AXLE), rearGrounded);
  }

  /** Twice Σ front at which the share is one half: the deviation is |2·Σ − this|. */
  int doubleFrontWanted(int modules) {
    return WHEELBASE * (mass(modules) - 2 * BASE_AXLE);
  }

  double share(long doubleExcess, int modules) {
    return doubleExcess / (2.0 * WHEELBASE * mass(modules));
  }

  /** Largest doubled excess of a share; a hair of tolerance, far below one step. */
  long doubleExcess(double share, int modules) {
    return (long) Math.floor(share * 2.0 * WHEELBASE * mass(modules) + 1e-6);
  }

  BayAllocator allocator(double allowedBand) {
    BatteryModule module = RandomBays.module("module", moduleMass / 10.0);
    List<Bay> bays = new ArrayList<>();
    for (int bay = 0; bay < room.length; bay++) {
      bays.add(
          Bay.at("bay " + bay, RandomBays.at(behind[bay] / 100.0, 0, 0.5))
              .next(RandomBays.at((behind[bay] + step[bay]) / 100.0, 0, 0.5))
              .holds(module, room[bay]));
    }
    BayAllocator allocator =
        BayAllocator.over(MassLedger.of(RandomBays.van()), bays)
            .limits(
                AxleLimits.builder()
                    .frontAxle(kilograms(frontLimitKg))
                    .rearAxle(kilograms(rearLimitKg))
                    .grossMass(kilograms(5_000))
                    .build())
            .allowProvisional()
            .frontShareTarget(0.5, allowedBand, LoadCase.KERB);
    for (int modules : packs) {
      allocator = allocator.modules(module, modules);
    }
    return allocator;
  }
}
