package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/**
 * Modules × series × parallel × bays in one call, against every pack and every allocation of it.
 */
class JointSearchTest {
  private static final int SERIES = 5;
  private static final int PARALLEL = 2;

  static Stream<Generator> cases() {
    return Generator.cases(60);
  }

  /** A pack with its best allocation, and what the front compares. */
  private record Point(String pack, List<Integer> counts, double[] costs) {
    boolean dominates(Point other) {
      boolean better = false;
      for (int i = 0; i < costs.length; i++) {
        double tolerance = i == costs.length - 1 ? 1e-11 : 1e-11 * Math.abs(costs[i]);
        if (costs[i] > other.costs[i] + tolerance) {
          return false;
        }
        better |= costs[i] < other.costs[i] - tolerance;
      }
      return better;
    }

    String key() {
      return pack + " " + counts;
    }
  }

  private record Problem(List<BatteryModule> modules, BayAllocator allocator) {
    static Problem of(Generator random) {
      BayAllocator allocator = new RandomBays(random).allocator();
      Set<BatteryModule> modules = new HashSet<>();
      allocator.draft().options.forEach(option -> modules.add(option.module(0)));
      return new Problem(List.copyOf(modules), allocator);
    }

    JointSearch.Result run() {
      PackSearch search =
          PackSearch.over(modules)
              .under(InventedParts.conditions())
              .seriesAtMost(SERIES)
              .parallelAtMost(PARALLEL);
      return JointSearch.of(search, allocator).run();
    }

    /** One for each pack that can be allocated at all. */
    List<Point> points() {
      List<Point> points = new ArrayList<>();
      for (BatteryModule module : modules) {
        for (int series = 1; series <= SERIES; series++) {
          for (int parallel = 1; parallel <= PARALLEL; parallel++) {
            add(points, new PackOption(module, series, parallel));
          }
        }
      }
      return points;
    }

    private void add(List<Point> points, PackOption option) {
      Pack pack = Pack.of(option.module(0), option.series(), option.parallel());
      List<AllocationBruteForce.Found> ranked =
          new AllocationBruteForce(allocator.withOnly(option)).ranked();
      if (!ranked.isEmpty()) {
        AllocationBruteForce.Found best = ranked.get(0);
        double[] costs = {
          Kind.MASS.siValueOf(pack.mass()), -option.moduleCount(), best.deviation()
        };
        points.add(new Point(option.toString(), best.counts(), costs));
      }
    }
  }

  private static String key(JointSearch.Pair pair) {
    Allocation allocation = pair.allocation();
    return allocation.tables().option() + " " + List.copyOf(allocation.counts().values());
  }

  /** Voltages and currents aside, every pack is feasible: without devices nothing limits them. */
  @ParameterizedTest
  @MethodSource("cases")
  void everyPackComesWithItsBestAllocation(Generator random) {
    Problem problem = Problem.of(random);
    JointSearch.Result found = problem.run();
    Set<String> feasible = new TreeSet<>();
    found.packs().ranked().forEach(pack -> feasible.add(pack.arrangement()));
    Set<String> expected = new TreeSet<>();
    problem.points().stream()
        .filter(point -> feasible.contains(point.pack()))
        .forEach(point -> expected.add(point.key()));
    Set<String> ours = new TreeSet<>();
    found.ranked().forEach(pair -> ours.add(key(pair)));
    assertThat(ours).isEqualTo(expected);
    assertThat(found.ranked().size() + found.notAllocated().size())
        .isEqualTo(found.packs().ranked().size());
    assertThat(found.status()).isEqualTo(Coverage.Status.PROVEN);
  }

  /** Mass, number of modules turned round, and deviation of the axle share from the one wanted. */
  @ParameterizedTest
  @MethodSource("cases")
  void theFrontIsThatOfAllPacksWithTheirBestAllocations(Generator random) {
    Problem problem = Problem.of(random);
    JointSearch.Result found = problem.run();
    Set<String> feasible = new TreeSet<>();
    found.packs().ranked().forEach(pack -> feasible.add(pack.arrangement()));
    List<Point> points =
        problem.points().stream().filter(point -> feasible.contains(point.pack())).toList();
    Set<String> expected = new TreeSet<>();
    points.stream()
        .filter(point -> points.stream().noneMatch(other -> other.dominates(point)))
        .forEach(point -> expected.add(point.key()));
    Criterion most =
        Criterion.largest(
            "modules",
            org.wattwright.units.WorkshopUnits.KILOGRAM,
            candidate -> org.wattwright.units.Measures.kilograms(candidate.moduleCount()));
    Set<String> front = new TreeSet<>();
    found.paretoFront(Criterion.MASS, most).forEach(pair -> front.add(key(pair)));
    assertThat(front).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void orderOfTheInputsDoesNotMatter(Generator random) {
    Problem problem = Problem.of(random);
    Problem other =
        new Problem(
            Restated.shuffled(problem.modules(), random),
            Restated.shuffled(problem.allocator(), random));
    assertThat(other.run().ranked().stream().map(JointSearch.Pair::toString).toList())
        .isEqualTo(problem.run().ranked().stream().map(JointSearch.Pair::toString).toList());
  }
}
