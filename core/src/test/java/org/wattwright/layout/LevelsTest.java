package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilograms;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.units.Kind;

/** Packs of as many cells in modules of another size hold the same energy, to the last digit. */
class LevelsTest {
  private static final BatteryModule NINE =
      BatteryModule.of(InventedParts.flatCell()).name("nine").series(9).mass(kilograms(20)).build();
  private static final BatteryModule SEVEN =
      BatteryModule.of(InventedParts.flatCell())
          .name("seven")
          .series(7)
          .mass(kilograms(16))
          .build();

  @Test
  void neighboursWithinRoundingAreOneLevel() {
    double next = Math.nextUp(3.0);
    assertThat(Levels.of(new double[] {next, 1, 3, 3 + 1e-9, Double.NaN}))
        .containsExactly(3, 1, 3, 3 + 1e-9, Double.NaN);
    assertThat(Levels.of(new double[] {-3, -next})).containsExactly(-next, -next);
    assertThat(Levels.of(new double[0])).isEmpty();
  }

  /** 63 cells: seven modules of nine weigh 140 kg, nine of seven weigh 144 kg. */
  @Test
  void roundingDecidesNeitherRankNorFront() {
    PackSearch search =
        PackSearch.over(List.of(NINE, SEVEN))
            .under(InventedParts.conditions())
            .seriesAtMost(9)
            .parallelAtMost(1)
            .require(
                Requirement.atLeast(
                    "nominal voltage",
                    org.wattwright.units.WorkshopUnits.VOLT,
                    org.wattwright.units.Measures.volts(205),
                    c -> c.envelope().orElseThrow().nominal()))
            .require(
                Requirement.atMost(
                    "nominal voltage, upper",
                    org.wattwright.units.WorkshopUnits.VOLT,
                    org.wattwright.units.Measures.volts(210),
                    c -> c.envelope().orElseThrow().nominal()));
    for (int factor : new int[] {1, 3, 7}) {
      PackSearch.Result found = search.rankBy(tilted(factor)).run();
      assertThat(found.ranked().stream().map(Candidate::arrangement))
          .containsExactly("7s1p nine", "9s1p seven");
      assertThat(found.best().orElseThrow().arrangement()).isEqualTo("7s1p nine");
      assertThat(found.paretoFront(Criterion.MASS, tilted(factor)))
          .containsExactly(found.best().orElseThrow());
    }
  }

  /** Energy, with a last digit that favours the heavier pack. */
  private static Criterion tilted(int ulps) {
    return Criterion.largest(
        "energy",
        org.wattwright.units.WorkshopUnits.JOULE,
        c -> {
          double energyJ = Kind.ENERGY.siValueOf(c.usableEnergy().orElseThrow());
          double tilt = c.module().equals(SEVEN) ? ulps * Math.ulp(energyJ) : 0;
          return Kind.ENERGY.ofSi(energyJ + tilt);
        });
  }
}
