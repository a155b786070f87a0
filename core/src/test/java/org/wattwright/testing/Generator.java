package org.wattwright.testing;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Random input that can be had again: one generator is one case of a parameterised test, and its
 * display name is its seed.
 *
 * <pre>{@code
 * static Stream<Generator> cases() {
 *   return Generator.cases(200);
 * }
 *
 * @ParameterizedTest
 * @MethodSource("cases")
 * void dropGrowsWithCurrent(Generator random) { … random.between(1, 400) … }
 * }</pre>
 *
 * <p>{@code -Dwattwright.seed=1017} runs only the case with that seed; {@code
 * -Dwattwright.firstSeed=5000} shifts the seeds of all cases.
 */
public final class Generator {
  private static final long FIRST_SEED = 1000;

  private final long seed;
  private final SplittableRandom random;

  private Generator(long seed) {
    this.seed = seed;
    this.random = new SplittableRandom(seed);
  }

  /** Several cases with seeds one after the other, or the one case asked for. */
  public static Stream<Generator> cases(int count) {
    Long only = Long.getLong("wattwright.seed");
    if (only != null) {
      return Stream.of(new Generator(only));
    }
    long first = Long.getLong("wattwright.firstSeed", FIRST_SEED);
    return LongStream.range(first, first + count).mapToObj(Generator::new);
  }

  /** One case, for a test that needs no more. */
  public static Generator ofSeed(long seed) {
    return new Generator(seed);
  }

  /** Evenly between two bounds, the lower one included. */
  public double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Evenly over the decades between two positive bounds. */
  public double betweenDecades(double low, double high) {
    double value = Math.exp(between(Math.log(low), Math.log(high)));
    return Math.min(Math.max(value, low), high);
  }

  /** Like {@link #betweenDecades}, with either sign. */
  public double signed(double low, double high) {
    return chance(0.5) ? betweenDecades(low, high) : -betweenDecades(low, high);
  }

  /** Rounded to some decimals, as people type numbers. */
  public double typed(double low, double high, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.rint(between(low, high) * scale) / scale;
  }

  /** A whole number between two bounds, both included. */
  public int count(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  /** True with this probability. */
  public boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  /** Any finite double: all signs, exponents and bit patterns. */
  public double anyFinite() {
    double value = Double.longBitsToDouble(random.nextLong());
    return Double.isFinite(value) ? value : between(-1, 1);
  }

  /** One of the choices, all alike. */
  public <T> T oneOf(List<? extends T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** Rising numbers between two bounds, no two alike. */
  public double[] rising(int length, double low, double high) {
    double[] rising = new double[length];
    double step = (high - low) / length;
    for (int i = 0; i < length; i++) {
      rising[i] = low + step * (i + between(0.05, 0.95));
    }
    return rising;
  }

  /** The seed, to run this case again. */
  @Override
  public String toString() {
    return "seed " + seed;
  }
}
