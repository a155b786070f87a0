package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.battery.BatteryModule;
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

  /** An allocation with what it is compared by; counts by bay, in each by type. */
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
            .thenComparingDouble(f -> Math.round(f.heightM() * 1e12)));
    return all;
  }

  long size() {
    long[] size = {0};
    forEach((option, counts) -> size[0]++);
    return size[0];
  }

  private void forEach(BiConsumer<PackOption, int[][]> visitor) {
    for (PackOption option : draft.options.stream().sorted(PackOption.BY_CONTENT).toList()) {
      int[] left = Arrays.stream(option.perString()).map(n -> n * option.parallel()).toArray();
      fill(option, new int[draft.bays.size()][option.types()], 0, left, visitor);
    }
  }

  /** Counts by bay and type: place after place, each bay's room checked when it is full. */
  private void fill(
      PackOption option,
      int[][] counts,
      int place,
      int[] left,
      BiConsumer<PackOption, int[][]> to) {
    if (place > 0 && place % option.types() == 0 && !isInBay(option, counts, place)) {
      return;
    }
    if (place == counts.length * option.types()) {
      if (Arrays.stream(left).allMatch(n -> n == 0)) {
        to.accept(option, Arrays.stream(counts).map(int[]::clone).toArray(int[][]::new));
      }
      return;
    }
    int bay = place / option.types();
    int type = place % option.types();
    int step = draft.equalStrings ? option.parallel() : 1;
    int most = Math.min(left[type], draft.bays.get(bay).roomFor(option.module(type)));
    for (int count = 0; count <= most; count += step) {
      counts[bay][type] = count;
      left[type] -= count;
      fill(option, counts, place + 1, left, to);
      left[type] += count;
    }
    counts[bay][type] = 0;
  }

  private boolean isInBay(PackOption option, int[][] counts, int place) {
    int index = place / option.types() - 1;
    Bay bay = draft.bays.get(index);
    double share = 0;
    for (int type = 0; type < option.types(); type++) {
      int count = counts[index][type];
      share += count == 0 ? 0 : (double) count / bay.roomFor(option.module(type));
    }
    boolean empty = Arrays.stream(counts[index]).allMatch(n -> n == 0);
    return share <= 1 + 1e-9
        && (empty || bayMassKg(bay, option, counts[index]) <= bayLimitKg(bay) + ROUNDING);
  }

  private static double bayMassKg(Bay bay, PackOption option, int[] counts) {
    double massKg = bay.enclosure().map(box -> Kind.MASS.siValueOf(box.mass())).orElse(0.0);
    for (int type = 0; type < counts.length; type++) {
      massKg += counts[type] * Kind.MASS.siValueOf(option.module(type).mass());
    }
    return massKg;
  }

  private static double bayLimitKg(Bay bay) {
    return bay.massLimit().map(Kind.MASS::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }

  private void addIfKept(List<Found> all, PackOption option, int[][] counts) {
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
      int used = (int) Arrays.stream(counts).filter(AllocationBruteForce::isUsed).count();
      all.add(
          new Found(
              option.toString(),
              Arrays.stream(counts).flatMapToInt(Arrays::stream).boxed().toList(),
              deviation,
              used,
              linkM,
              heightM(items)));
    }
  }

  /** One item for each module, heavy ones first. */
  private List<MassItem> items(PackOption option, int[][] counts) {
    List<MassItem> items = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      Bay bay = draft.bays.get(i);
      List<BatteryModule> modules = new ArrayList<>();
      for (int type = 0; type < option.types(); type++) {
        modules.addAll(Collections.nCopies(counts[i][type], option.module(type)));
      }
      modules.sort(Comparator.comparingDouble(m -> -Kind.MASS.siValueOf(m.mass())));
      for (int n = 0; n < modules.size(); n++) {
        Quantity<Mass> mass = modules.get(n).mass();
        items.add(MassItem.of("module", mass, BayAxis.between(bay.first(), bay.second(), n)));
      }
      if (!modules.isEmpty()) {
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

  private static boolean isUsed(int[] ofBay) {
    return Arrays.stream(ofBay).sum() > 0;
  }

  /** Shortest over all orders of the used bays. */
  private double linkM(PackOption option, int[][] counts) {
    boolean stated = draft.bays.stream().anyMatch(bay -> !bay.links().isEmpty());
    int[] used = IntStream.range(0, counts.length).filter(i -> isUsed(counts[i])).toArray();
    return stated ? shortest(option, counts, used, 0) : 0;
  }

  private double shortest(PackOption option, int[][] counts, int[] order, int fixed) {
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

  /** Every string laid module by module. */
  private double lengthM(PackOption option, int[][] counts, int[] order) {
    double lengthM = 0;
    int[][] left = Arrays.stream(order).mapToObj(i -> counts[i].clone()).toArray(int[][]::new);
    for (int string = 0; string < option.parallel(); string++) {
      TreeSet<Integer> places = new TreeSet<>();
      for (int type = 0; type < option.types(); type++) {
        lay(option, new Row(type, counts, order, left), places);
      }
      int spread = places.last() - places.first() + 1;
      if (draft.contiguous && places.size() < spread) {
        return Double.POSITIVE_INFINITY;
      }
      for (int i = places.first(); i < places.last(); i++) {
        lengthM += distanceM(order[i], order[i + 1], 1 << order[i]);
      }
    }
    return lengthM;
  }

  private record Row(int type, int[][] counts, int[] order, int[][] left) {}

  /** The modules of one type of one string. */
  private void lay(PackOption option, Row row, TreeSet<Integer> places) {
    int wanted = option.perString()[row.type()];
    for (int i = 0; i < row.order().length; i++) {
      int present = row.counts()[row.order()[i]][row.type()];
      int share = draft.equalStrings ? present / option.parallel() : present;
      int taken = Math.min(wanted, Math.min(share, row.left()[i][row.type()]));
      if (taken > 0) {
        places.add(i);
        row.left()[i][row.type()] -= taken;
        wanted -= taken;
      }
    }
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
