package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.testing.Generator;

/** The balance of a surface where the model ends. */
class SteadyKernelTest {
  /** The kernel's own error of a surface temperature. */
  private static final double ERROR_K = 1e-6;

  private static final SurfaceLoss LOSS =
      new CylinderLoss(SurfaceLoss.Surroundings.at(313.15), 0.9, 0.0117);

  private static double excess(SurfaceLoss loss, double surfaceK, double slope) {
    return loss.lossWPerM(surfaceK) - slope * (surfaceK - loss.airK());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.05, -0.2, -5})
  void justBelowTheEndIsFoundAndJustAboveIsNot(double slopeWPerMK) {
    SteadyKernel kernel = new SteadyKernel(LOSS);
    double inflow = excess(LOSS, SteadyKernel.HIGHEST_K, slopeWPerMK);
    assertThat(kernel.surfaceK(inflow * (1 - 1e-9), slopeWPerMK))
        .isLessThanOrEqualTo(SteadyKernel.HIGHEST_K)
        .isCloseTo(SteadyKernel.HIGHEST_K, within(1e-3));
    assertThat(kernel.surfaceK(inflow * (1 + 1e-9), slopeWPerMK)).isPositive().isInfinite();
  }

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aRootAtTheVeryEndOfTheModelIsFoundWhateverTheSurface(Generator random) {
    SurfaceLoss loss =
        new CylinderLoss(
            SurfaceLoss.Surroundings.at(random.between(233, 393)),
            random.between(0.05, 0.95),
            random.betweenDecades(0.001, 0.05));
    double endWPerM = loss.lossWPerM(SteadyKernel.HIGHEST_K);
    SteadyKernel kernel = new SteadyKernel(loss);
    assertThat(kernel.surfaceK(endWPerM, 0)).isCloseTo(SteadyKernel.HIGHEST_K, within(ERROR_K));
    assertThat(kernel.surfaceK(Math.nextUp(endWPerM), 0)).isPositive().isInfinite();
  }

  @Test
  void withoutInflowTheSurfaceIsAsWarmAsTheAir() {
    assertThat(new SteadyKernel(LOSS).surfaceK(0, 0)).isEqualTo(313.15);
  }
}
