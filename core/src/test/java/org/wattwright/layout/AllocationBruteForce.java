package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Side;

/**
 * Every allocation one after another, each weighed module by module through the mass ledger in
 * plain doubles, and put in order by sorting.
 */
final class AllocationBruteForce {
  /** Far above rounding, far below the steps of the instances. */
  private static final double ROUNDING = 1e-7;

  private final AllocationDraft draft;

  AllocationBruteForce(BayAllocator allocator) {
    this.draft = allocator.draft();
  }

  /** An allocation with what it is compared by. */
  record Found(
      String pack,
      List<Integer> counts,
      double deviation,
      int enclosures,
      double linkM,
      double heightM) {}

  /** Every allocation that keeps all requirements, best first. */
  List<Found> ranked() {
    List<Found> all = new ArrayList<>();
    forEach((option, counts) -> addIfKept(all, option, counts));
    double best = all.stream().mapToDouble(Found::deviation).min().orElse(0);
    double threshold = best + (draft.target == null ? 0 : draft.target.band()) + 1e-12;
    all.sort(
        Comparator.comparingDouble((Found f) -> f.deviation() <= threshold ? 0 : f.deviation())
            .thenComparingInt(Found::enclosures)
            .thenComparingDouble(f -> Math.round(f.linkM() * 1e6))
            .thenComparingDouble(Found::heightM));
    return all;
  }

  long size() {
    long[] size = {0};
    forEach((option, counts) -> size[0]++);
    return size[0];
  }

  private void forEach(BiConsumer<PackOption, int[]> visitor) {
    for (PackOption option : draft.options) {
      fill(option, new int[draft.bays.size()], 0, option.moduleCount(), visitor);
    }
  }

  private void fill(
      PackOption option, int[] counts, int bay, int left, BiConsumer<PackOption, int[]> visitor) {
    if (bay == counts.length) {
      if (left == 0) {
        visitor.accept(option, counts.clone());
      }
      return;
    }
    int step = draft.equalStrings ? option.parallel() : 1;
    Bay here = draft.bays.get(bay);
    for (int count = 0; count <= Math.min(left, here.roomFor(option.module())); count += step) {
      counts[bay] = count;
      if (count == 0 || bayMassKg(here, option, count) <= bayLimitKg(here) + ROUNDING) {
        fill(option, counts, bay + 1, left - count, visitor);
      }
    }
    counts[bay] = 0;
  }

  private static double bayMassKg(Bay bay, PackOption option, int count) {
    double boxKg = bay.enclosure().map(box -> Kind.MASS.siValueOf(box.mass())).orElse(0.0);
    return count * Kind.MASS.siValueOf(option.module().mass()) + boxKg;
  }

  private static double bayLimitKg(Bay bay) {
    return bay.massLimit().map(Kind.MASS::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }

  private void addIfKept(List<Found> all, PackOption option, int[] counts) {
    List<MassItem> items = items(option, counts);
    MassLedger ledger = draft.ledger.adding(items);
    double linkM = linkM(option, counts);
    boolean kept = linkM < Double.POSITIVE_INFINITY;
    for (LoadCase loadCase : draft.loadCasesOrKerb()) {
      kept &= isKept(ledger.after(loadCase));
    }
    if (kept) {
      double deviation =
          draft.target == null
              ? 0
              : Math.abs(ledger.after(draft.target.loadCase()).frontShare() - draft.target.share());
      int used = (int) Arrays.stream(counts).filter(count -> count > 0).count();
      all.add(
          new Found(
              option.toString(),
              Arrays.stream(counts).boxed().toList(),
              deviation,
              used,
              linkM,
              heightM(items)));
    }
  }

  /** One item for each module. */
  private List<MassItem> items(PackOption option, int[] counts) {
    List<MassItem> items = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      Bay bay = draft.bays.get(i);
      for (int n = 1; n <= counts[i]; n++) {
        items.add(
            MassItem.of(
                "module",
                option.module().mass(),
                BayAxis.between(bay.first(), bay.second(), n - 1)));
      }
      if (counts[i] > 0) {
        bay.enclosure().ifPresent(items::add);
      }
    }
    return items;
  }

  private static double heightM(List<MassItem> items) {
    double momentKgM = 0;
    double massKg = 0;
    for (MassItem item : items) {
      double itemKg = Kind.MASS.siValueOf(item.mass());
      massKg += itemKg;
      momentKgM += itemKg * Kind.LENGTH.siValueOf(item.position().aboveGround().orElseThrow());
    }
    return momentKgM / massKg;
  }

  private boolean isKept(LoadState state) {
    boolean kept = true;
    if (draft.limits != null) {
      for (Axle axle : Axle.values()) {
        double loadKg = Kind.MASS.siValueOf(state.axles().on(axle));
        double plateKg = Kind.MASS.siValueOf(draft.limits.plate(axle).orElseThrow());
        double tyreKg = Kind.MASS.siValueOf(draft.limits.tyreCapacity(axle).orElseThrow());
        double wheelKg = Kind.MASS.siValueOf(state.wheels().orElseThrow().heavier(axle));
        kept &= loadKg >= -ROUNDING && loadKg <= Math.min(plateKg, tyreKg) + ROUNDING;
        kept &= wheelKg <= tyreKg / 2 + ROUNDING;
      }
      double grossKg = Kind.MASS.siValueOf(draft.limits.grossMass().orElseThrow());
      kept &= Kind.MASS.siValueOf(state.total()) <= grossKg + ROUNDING;
    }
    if (!Double.isNaN(draft.lowestFrontShare)) {
      kept &= state.frontShare() >= draft.lowestFrontShare - 1e-11;
      kept &= state.frontShare() <= draft.highestFrontShare + 1e-11;
    }
    if (draft.leftRight != null) {
      kept &= Math.abs(leftKg(state)) <= Kind.MASS.siValueOf(draft.leftRight) + ROUNDING;
    }
    return kept;
  }

  private static double leftKg(LoadState state) {
    double differenceKg = 0;
    for (Axle axle : Axle.values()) {
      differenceKg += Kind.MASS.siValueOf(state.wheels().orElseThrow().on(axle, Side.LEFT));
      differenceKg -= Kind.MASS.siValueOf(state.wheels().orElseThrow().on(axle, Side.RIGHT));
    }
    return differenceKg;
  }

  /** Shortest over all orders of the used bays. */
  private double linkM(PackOption option, int[] counts) {
    boolean stated = draft.bays.stream().anyMatch(bay -> !bay.links().isEmpty());
    int[] used =
        java.util.stream.IntStream.range(0, counts.length).filter(i -> counts[i] > 0).toArray();
    return stated ? shortest(option, counts, used, 0) : 0;
  }

  private double shortest(PackOption option, int[] counts, int[] order, int fixed) {
    if (fixed == order.length) {
      return lengthM(option, counts, order);
    }
    double best = Double.POSITIVE_INFINITY;
    for (int i = fixed; i < order.length; i++) {
      int[] swapped = order.clone();
      swapped[fixed] = order[i];
      swapped[i] = order[fixed];
      best = Math.min(best, shortest(option, counts, swapped, fixed + 1));
    }
    return best;
  }

  private double lengthM(PackOption option, int[] counts, int[] order) {
    double lengthM = 0;
    int modules = 0;
    for (int i = 0; i + 1 < order.length; i++) {
      modules += counts[order[i]];
      boolean crosses = modules % option.series() != 0;
      double strings = draft.equalStrings ? option.parallel() : crosses ? 1 : 0;
      if (strings > 0) {
        lengthM += strings * distanceM(order[i], order[i + 1], 1 << order[i]);
      }
    }
    return lengthM;
  }

  /** Along every path through the other bays, or along the link of the two alone. */
  private double distanceM(int from, int to, int seen) {
    double best = directM(from, to);
    for (int via = 0; via < draft.bays.size() && !draft.contiguous; via++) {
      if ((seen >> via & 1) == 0 && via != to) {
        best = Math.min(best, directM(from, via) + distanceM(via, to, seen | 1 << via));
      }
    }
    return best;
  }

  private double directM(int from, int to) {
    Bay one = draft.bays.get(from);
    Bay other = draft.bays.get(to);
    if (one.links().containsKey(other.name())) {
      return Kind.LENGTH.siValueOf(one.links().get(other.name()));
    }
    return other.links().containsKey(one.name())
        ? Kind.LENGTH.siValueOf(other.links().get(one.name()))
        : Double.POSITIVE_INFINITY;
  }
}
