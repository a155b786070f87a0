package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;

/** The dynamic programme against every combination, on random trees of abstract options. */
class TreeSearchTest {
  private record Forest(int[] parents, List<List<PartsOption>> options, int[] heatOfFuse)
      implements CircuitChoices {
    @Override
    public List<PartsOption> options(int circuit, int fuseInCharge) {
      // A circuit without a fuse is served only behind a fuse that is small enough for its cable.
      return options.get(circuit).stream()
          .filter(o -> o.fuse() >= 0 || fuseInCharge < 0 || fuseInCharge <= o.cable())
          .toList();
    }

    @Override
    public boolean isSelective(int circuit, int fuseNearerToSource, int ownFuse) {
      return heatOfFuse[ownFuse] < heatOfFuse[fuseNearerToSource];
    }
  }

  static Stream<Generator> cases() {
    return Generator.cases(300);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void findsTheCheapestOfAllCombinations(Generator random) {
    Forest forest = forest(random);
    Optional<PartsOption[]> found = new TreeSearch(forest.parents(), forest).best();
    @Nullable PartCost cheapest = cheapest(forest, new PartsOption[forest.parents().length], 0);
    assertThat(found.isPresent()).isEqualTo(cheapest != null);
    found.ifPresent(
        chosen -> {
          assertThat(isServed(forest, chosen)).isTrue();
          assertThat(sum(chosen)).isEqualTo(cheapest);
        });
  }

  @Test
  void servesNoCircuitsWithNothing() {
    Forest none = new Forest(new int[0], List.of(), new int[0]);
    assertThat(new TreeSearch(none.parents(), none).best())
        .hasValueSatisfying(p -> assertThat(p).isEmpty());
  }

  private static Forest forest(Generator random) {
    int circuits = 1 + (int) random.between(0, 4);
    int[] parents = new int[circuits];
    List<List<PartsOption>> options = new ArrayList<>();
    int[] heat = new int[5];
    for (int i = 0; i < heat.length; i++) {
      heat[i] = (int) random.between(0, 8);
    }
    for (int i = 0; i < circuits; i++) {
      parents[i] = i == 0 ? -1 : (int) random.between(-1, i);
      boolean fused = i == 0 || random.between(0, 1) < 0.8;
      List<PartsOption> own = new ArrayList<>();
      int count = 1 + (int) random.between(0, 6);
      for (int j = 0; j < count; j++) {
        int fuse = fused ? (int) random.between(0, heat.length) : -1;
        PartCost cost =
            new PartCost(
                0,
                (long) random.between(0, 1.1),
                (long) random.between(1, 5),
                0,
                (long) random.between(0, 3));
        own.add(
            new PartsOption(
                (int) random.between(0, 5),
                fuse,
                -1,
                -1,
                cost,
                random.between(0, 3),
                random.between(-0.5, 6)));
      }
      options.add(own);
    }
    return new Forest(parents, options, heat);
  }

  private static @Nullable PartCost cheapest(Forest forest, PartsOption[] chosen, int at) {
    if (at == chosen.length) {
      return isServed(forest, chosen) ? sum(chosen) : null;
    }
    @Nullable PartCost best = null;
    for (PartsOption option : forest.options().get(at)) {
      chosen[at] = option;
      @Nullable PartCost cost = cheapest(forest, chosen, at + 1);
      best = best == null || (cost != null && cost.compareTo(best) < 0) ? cost : best;
    }
    return best;
  }

  private static PartCost sum(PartsOption[] chosen) {
    PartCost sum = PartCost.NOTHING;
    for (PartsOption option : chosen) {
      sum = sum.plus(option.cost());
    }
    return sum;
  }

  private static boolean isServed(Forest forest, PartsOption[] chosen) {
    for (int i = 0; i < chosen.length; i++) {
      double nearerOhm = 0;
      int inCharge = -1;
      for (int up = forest.parents()[i]; up >= 0; up = forest.parents()[up]) {
        nearerOhm += chosen[up].loopOhm();
        inCharge = inCharge < 0 ? chosen[up].fuse() : inCharge;
      }
      int own = chosen[i].fuse();
      boolean selective = own < 0 || inCharge < 0 || forest.isSelective(i, inCharge, own);
      boolean kept = own >= 0 || inCharge < 0 || inCharge <= chosen[i].cable();
      if (!selective || !kept || nearerOhm > chosen[i].allowedOhm()) {
        return false;
      }
    }
    return true;
  }
}
