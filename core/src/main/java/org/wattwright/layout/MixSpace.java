package org.wattwright.layout;

import org.wattwright.units.InvalidInputException;

/**
 * Numbers of units of several types as one whole number: Σ nₜ·strideₜ with strides (N₁ + 1), (N₁ +
 * 1)·(N₂ + 1), …. No nₜ is ever above its Nₜ, so sums of these numbers are the numbers of the sums.
 */
final class MixSpace {
  /** Beyond, tables by mix no longer are small. */
  private static final int MOST_MIXES = 50_000;

  private final int[] all;
  private final int[] stride;
  private final int size;

  /** Units of each type of the whole pack. */
  MixSpace(PackOption option, int unit) {
    int types = option.types();
    all = new int[types];
    stride = new int[types];
    long mixes = 1;
    for (int type = 0; type < types; type++) {
      all[type] = option.perString()[type] * option.parallel() / unit;
      stride[type] = (int) mixes;
      mixes *= all[type] + 1L;
      if (mixes > MOST_MIXES) {
        throw InvalidInputException.of(
                "BayAllocator.pack " + option + ": mixes of its modules",
                "at most " + MOST_MIXES + ", the product of (modules of a type + 1)",
                "more")
            .withHint("equalStrings() counts the modules of one string only");
      }
    }
    size = (int) mixes;
  }

  int types() {
    return all.length;
  }

  int all(int type) {
    return all[type];
  }

  int size() {
    return size;
  }

  /** The whole pack. */
  int full() {
    return size - 1;
  }

  int code(int[] units) {
    int code = 0;
    for (int type = 0; type < units.length; type++) {
      code += units[type] * stride[type];
    }
    return code;
  }

  /** Units of one type in a mix. */
  int units(int code, int type) {
    return code / stride[type] % (all[type] + 1);
  }

  int units(int code) {
    int sum = 0;
    for (int type = 0; type < all.length; type++) {
      sum += units(code, type);
    }
    return sum;
  }

  /** Whether one mix and another together are no more than the pack. */
  boolean fit(int one, int other) {
    for (int type = 0; type < all.length; type++) {
      if (units(one, type) + units(other, type) > all[type]) {
        return false;
      }
    }
    return true;
  }
}
