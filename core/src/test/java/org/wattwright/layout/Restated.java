package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.LoadCase;

/** An allocator stated once more: on other bays, or in another order. */
final class Restated {
  private Restated() {}

  /** The same requirements and packs on other bays. */
  static BayAllocator over(BayAllocator allocator, List<Bay> bays) {
    return with(allocator.draft(), bays, UnaryOperator.identity(), UnaryOperator.identity());
  }

  /** The same with something changed that no call takes back. */
  static BayAllocator changed(BayAllocator allocator, Consumer<AllocationDraft> change) {
    AllocationDraft draft = new AllocationDraft(allocator.draft());
    change.accept(draft);
    return with(draft, draft.bays, UnaryOperator.identity(), UnaryOperator.identity());
  }

  /** Bays, packs and load cases in an order of chance. */
  static BayAllocator shuffled(BayAllocator allocator, Generator random) {
    return with(
        allocator.draft(),
        shuffled(allocator.draft().bays, random),
        options -> shuffled(options, random),
        cases -> shuffled(cases, random));
  }

  private static BayAllocator with(
      AllocationDraft draft,
      List<Bay> bays,
      UnaryOperator<List<PackOption>> packOrder,
      UnaryOperator<List<LoadCase>> caseOrder) {
    BayAllocator copy = BayAllocator.over(draft.ledger, bays).alternatives(draft.alternatives);
    for (PackOption option : packOrder.apply(draft.options)) {
      copy = copy.pack(reversed(option.groups()), option.parallel());
    }
    for (LoadCase loadCase : caseOrder.apply(draft.loadCases)) {
      copy = copy.loadCase(loadCase);
    }
    return withRequirements(copy, draft);
  }

  private static BayAllocator withRequirements(BayAllocator plain, AllocationDraft draft) {
    BayAllocator copy = draft.equalStrings ? plain.equalStrings() : plain;
    copy = draft.contiguous ? copy.contiguousStrings() : copy;
    copy = draft.provisional ? copy.allowProvisional() : copy;
    copy = draft.limits == null ? copy : copy.limits(draft.limits);
    copy = draft.leftRight == null ? copy : copy.leftRightDifferenceAtMost(draft.leftRight);
    copy =
        Double.isNaN(draft.lowestFrontShare)
            ? copy
            : copy.frontShareBetween(draft.lowestFrontShare, draft.highestFrontShare);
    return draft.target == null
        ? copy
        : copy.frontShareTarget(draft.target.share(), draft.target.band(), draft.target.loadCase());
  }

  /** Groups of a string in another order. */
  private static <T> List<T> reversed(List<T> list) {
    List<T> reversed = new ArrayList<>(list);
    java.util.Collections.reverse(reversed);
    return reversed;
  }

  static <T> List<T> shuffled(List<T> list, Generator random) {
    List<T> rest = new ArrayList<>(list);
    List<T> shuffled = new ArrayList<>();
    while (!rest.isEmpty()) {
      shuffled.add(rest.remove(random.count(0, rest.size() - 1)));
    }
    return shuffled;
  }
}
