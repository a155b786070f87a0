package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassLedger;

/** Strings of two types of module: least deviation by the allocator and by a constraint solver. */
class MixedSolverOracleTest {
  private static int solvable;

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  @AfterAll
  static void enoughCasesHaveAnAnswer() {
    if (Long.getLong("wattwright.seed") == null) {
      assertThat(solvable).isGreaterThan(100);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void leastDeviationIsThatOfTheSolver(Generator random) {
    Grid grid = new Grid(random);
    OptionalLong choco = grid.leastByChoco();
    double ours =
        grid.allocator()
            .run()
            .best()
            .map(found -> found.frontShareDeviation().orElseThrow())
            .orElse(Double.POSITIVE_INFINITY);
    if (choco.isPresent()) {
      double doubledMoment = 2.0 * Grid.WHEELBASE * grid.mass();
      assertThat(ours).isCloseTo(choco.getAsLong() / doubledMoment, within(1e-12));
      solvable++;
    } else {
      assertThat(ours).isInfinite();
    }
  }

  /** Masses in 0.1 kg, places in 10 mm; the van has 400 kg on each axle. */
  private static final class Grid {
    static final int WHEELBASE = 250;
    private static final int BASE_AXLE = 4_000;
    private final int bays;
    private final int[][] room;
    private final int[] behind;
    private final int[] step;

    /** Heavy and light module: mass, number in the pack. */
    private final int[] moduleMass;

    private final int[] wanted;
    private final int frontLimitKg;
    private final int rearLimitKg;

    Grid(Generator random) {
      bays = random.count(2, 4);
      room = new int[bays][2];
      behind = new int[bays];
      step = new int[bays];
      for (int bay = 0; bay < bays; bay++) {
        room[bay][0] = random.count(1, 7);
        room[bay][1] = random.count(1, 9);
        behind[bay] = random.count(-50, 310);
        step[bay] = random.count(-15, 15);
      }
      moduleMass = new int[] {random.count(180, 260), random.count(80, 170)};
      wanted = new int[] {random.count(1, 6), random.count(1, 6)};
      frontLimitKg = random.count(450, 600);
      rearLimitKg = random.count(450, 650);
    }

    int mass() {
      return 2 * BASE_AXLE + wanted[0] * moduleMass[0] + wanted[1] * moduleMass[1];
    }

    /** Front axle load times wheelbase, module by module, the heavy ones first. */
    private int front(int bay, int heavy, int light) {
      int sum = 0;
      for (int place = 0; place < heavy + light; place++) {
        int lever = WHEELBASE - behind[bay] - place * step[bay];
        sum += (place < heavy ? moduleMass[0] : moduleMass[1]) * lever;
      }
      return sum;
    }

    OptionalLong leastByChoco() {
      Model model = new Model();
      IntVar[][] count = new IntVar[2][bays];
      IntVar[] front = new IntVar[bays];
      for (int bay = 0; bay < bays; bay++) {
        int heavyRoom = room[bay][0];
        int lightRoom = room[bay][1];
        count[0][bay] = model.intVar(0, heavyRoom);
        count[1][bay] = model.intVar(0, lightRoom);
        IntVar[] both = {count[0][bay], count[1][bay]};
        model.scalar(both, new int[] {lightRoom, heavyRoom}, "<=", heavyRoom * lightRoom).post();
        int[] table = new int[(heavyRoom + 1) * (lightRoom + 1)];
        for (int i = 0; i < table.length; i++) {
          table[i] = front(bay, i / (lightRoom + 1), i % (lightRoom + 1));
        }
        IntVar index = model.intVar(0, table.length - 1);
        model.scalar(both, new int[] {lightRoom + 1, 1}, "=", index).post();
        int least = Arrays.stream(table).min().getAsInt();
        int most = Arrays.stream(table).max().getAsInt();
        front[bay] = model.intVar(least, most, true);
        model.element(front[bay], table, index).post();
      }
      model.sum(count[0], "=", wanted[0]).post();
      model.sum(count[1], "=", wanted[1]).post();
      IntVar sum = model.intVar(-5_000_000, 5_000_000, true);
      model.sum(front, "=", sum).post();
      int rearKeeps = WHEELBASE * (mass() - rearLimitKg * 10 - BASE_AXLE);
      model.arithm(sum, ">=", Math.max(rearKeeps, -WHEELBASE * BASE_AXLE)).post();
      int frontKeeps = WHEELBASE * (frontLimitKg * 10 - BASE_AXLE);
      model.arithm(sum, "<=", Math.min(frontKeeps, WHEELBASE * (mass() - BASE_AXLE))).post();
      IntVar excess = model.intVar(-15_000_000, 15_000_000, true);
      int doubled = WHEELBASE * (mass() - 2 * BASE_AXLE);
      model.scalar(new IntVar[] {sum, excess}, new int[] {2, -1}, "=", doubled).post();
      IntVar deviation = model.intVar(0, 15_000_000, true);
      model.absolute(deviation, excess).post();
      Solution best = model.getSolver().findOptimalSolution(deviation, Model.MINIMIZE);
      return best == null ? OptionalLong.empty() : OptionalLong.of(best.getIntVal(deviation));
    }

    BayAllocator allocator() {
      BatteryModule heavy = RandomBays.module("heavy", moduleMass[0] / 10.0);
      BatteryModule light = RandomBays.module("a light one", moduleMass[1] / 10.0);
      List<Bay> list = new ArrayList<>();
      for (int bay = 0; bay < bays; bay++) {
        list.add(
            Bay.at("bay " + bay, RandomBays.at(behind[bay] / 100.0, 0, 0.5))
                .next(RandomBays.at((behind[bay] + step[bay]) / 100.0, 0, 0.5))
                .holds(heavy, room[bay][0])
                .holds(light, room[bay][1]));
      }
      return BayAllocator.over(MassLedger.of(RandomBays.van()), list)
          .limits(
              AxleLimits.builder()
                  .frontAxle(kilograms(frontLimitKg))
                  .rearAxle(kilograms(rearLimitKg))
                  .grossMass(kilograms(5_000))
                  .build())
          .allowProvisional()
          .frontShareTarget(0.5, 0, LoadCase.KERB)
          .pack(List.of(SeriesGroup.of(light, wanted[1]), SeriesGroup.of(heavy, wanted[0])), 1);
    }
  }
}
