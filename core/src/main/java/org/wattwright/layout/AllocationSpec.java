package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.LoadState;

/** An allocation that is complete and consistent: bays, packs, rules, links. */
final class AllocationSpec {
  private final AllocationDraft draft;
  private final List<PackOption> options;
  private final List<BayInfluence> influences;
  private final RuleBook book;
  private final @Nullable LoadRule target;
  private final LinkMap links;
  private final List<@Nullable LoadRule> bayRules = new ArrayList<>();

  AllocationSpec(AllocationDraft draft) {
    this.draft = draft;
    this.options = draft.options.stream().distinct().sorted(PackOption.BY_CONTENT).toList();
    this.influences = draft.bays.stream().map(bay -> new BayInfluence(bay, draft.ledger)).toList();
    this.book = new RuleBook(draft, influences);
    this.target =
        draft.target == null
            ? null
            : RuleBook.target(draft.target, draft.ledger.after(draft.target.loadCase()));
    this.links = new LinkMap(draft.bays);
    for (Bay bay : draft.bays) {
      bayRules.add(
          bay.massLimit()
              .map(limit -> RuleBook.bayMass(bay, Kind.MASS.siValueOf(limit)))
              .orElse(null));
    }
  }

  AllocationDraft draft() {
    return draft;
  }

  List<Bay> bays() {
    return draft.bays;
  }

  /** Sorted by content. */
  List<PackOption> options() {
    return options;
  }

  List<BayInfluence> influences() {
    return influences;
  }

  List<LoadRule> rules() {
    return book.rules();
  }

  List<RuleBook.Gap> gaps() {
    return book.gaps();
  }

  List<LoadState> states() {
    return book.states();
  }

  @Nullable LoadRule target() {
    return target;
  }

  double band() {
    return draft.target == null ? 0 : draft.target.band();
  }

  LinkMap links() {
    return links;
  }

  /** Limit of what a bay may carry; null if it has none. */
  @Nullable LoadRule bayRule(int bay) {
    return bayRules.get(bay);
  }

  /** Whether the height of every bay that takes modules is known. */
  boolean hasHeights() {
    return influences.stream().allMatch(i -> i.bay().isKeptFree() || i.hasHeight());
  }

  StringRoute route(PackOption option) {
    return new StringRoute(links, option, draft.equalStrings, draft.contiguous);
  }

  /** Modules that move together: one, or one of each string. */
  int unit(PackOption option) {
    return draft.equalStrings ? option.parallel() : 1;
  }
}
