package org.wattwright.layout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;
import org.wattwright.layout.LoadRule.Identity;
import org.wattwright.layout.LoadRule.Limit;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.Side;

/** The requirements on an allocation as linear rules, and what is missing for some of them. */
final class RuleBook {
  private final AllocationDraft draft;
  private final List<BayInfluence> influences;
  private final List<LoadState> states;
  private final List<LoadRule> rules = new ArrayList<>();
  private final List<Gap> gaps = new ArrayList<>();

  /** A requirement that cannot be checked for want of an input. */
  record Gap(Identity identity, Set<String> missing) {}

  RuleBook(AllocationDraft draft, List<BayInfluence> influences) {
    this.draft = draft;
    this.influences = influences;
    this.states = draft.loadCasesOrKerb().stream().map(draft.ledger::after).toList();
    if (draft.limits != null) {
      addLimits(draft.limits);
    }
    addShares();
    if (draft.leftRight != null) {
      addLeftRight(Kind.MASS.siValueOf(draft.leftRight));
    }
  }

  List<LoadRule> rules() {
    return List.copyOf(rules);
  }

  List<Gap> gaps() {
    return List.copyOf(gaps);
  }

  List<LoadState> states() {
    return states;
  }

  /**
   * Distance from the wanted front share in its load case; as a moment, since masses and places as
   * people type them give round numbers, which loads on an axle do not.
   */
  static LoadRule target(AllocationDraft.ShareTarget target, LoadState state) {
    BayLoad base = BayLoad.of(state);
    double wheelbaseM = Kind.LENGTH.siValueOf(state.vehicle().wheelbase());
    ToDoubleFunction<BayLoad> excess =
        load -> (load.frontKg() - target.share() * load.massKg()) * wheelbaseM;
    long there = -Micrograms.of(excess.applyAsDouble(base));
    LoadRule.Case only =
        new LoadRule.Case(
            state.loadCase().name(),
            there,
            there,
            new LoadRule.Base(-there, Micrograms.of(base.massKg()), state.basis()));
    Identity identity = new Identity("layout.front-share-target", "front share against its target");
    return new LoadRule(
        identity,
        new Limit(target.share(), true, true),
        new LoadRule.Load(excess, wheelbaseM),
        List.of(only));
  }

  /** Modules and enclosure of one bay against what it may carry. */
  static LoadRule bayMass(Bay bay, double limitKg) {
    LoadRule.Case only =
        new LoadRule.Case(
            "",
            -Micrograms.UNBOUNDED,
            Micrograms.floor(limitKg),
            new LoadRule.Base(0, 0, Basis.DATA_SHEET));
    Identity identity =
        new Identity("layout.bay-mass", bay.name() + ": modules and enclosure against its limit");
    return new LoadRule(identity, new Limit(limitKg, false, true), BayLoad::massKg, List.of(only));
  }

  private void addLimits(AxleLimits limits) {
    for (Axle axle : Axle.values()) {
      ToDoubleFunction<BayLoad> load = axle == Axle.FRONT ? BayLoad::frontKg : BayLoad::rearKg;
      String name = axle + " axle load against ";
      most(
          "layout.axle-" + axle,
          name + "its plate",
          limits.plate(axle),
          load,
          "AxleLimits." + axle + "Axle");
      most(
          "layout.tyre-" + axle,
          name + "its tyres",
          limits.tyreCapacity(axle),
          load,
          "AxleLimits." + axle + "Tyre");
      add(
          new Identity("layout.grounded-" + axle, axle + " axle stays on the ground"),
          new Limit(0, false, false),
          load);
      addWheels(axle, limits);
    }
    most(
        "layout.gross",
        "mass of the vehicle against its gross mass",
        limits.grossMass(),
        BayLoad::massKg,
        "AxleLimits.grossMass");
  }

  private void addWheels(Axle axle, AxleLimits limits) {
    Optional<Quantity<Mass>> capacity = limits.tyreCapacity(axle);
    for (Side side : Side.values()) {
      Identity identity =
          new Identity(
              "layout.wheel-" + axle + "-" + side,
              axle + " " + side + " wheel against its tyres",
              true);
      int wheel = (axle == Axle.FRONT ? 0 : 2) + (side == Side.LEFT ? 0 : 1);
      Set<String> missing = missingForWheels();
      if (capacity.isEmpty()) {
        missing.add("AxleLimits." + axle + "Tyre");
      }
      if (!missing.isEmpty()) {
        gaps.add(new Gap(identity, missing));
        continue;
      }
      double perSideKg = Kind.MASS.siValueOf(capacity.orElseThrow()) / 2;
      add(identity, new Limit(perSideKg, false, true), load -> load.wheelKg(wheel));
    }
  }

  private void most(
      String code,
      String what,
      Optional<Quantity<Mass>> limit,
      ToDoubleFunction<BayLoad> load,
      String missing) {
    Identity identity = new Identity(code, what);
    if (limit.isEmpty()) {
      gaps.add(new Gap(identity, Set.of(missing)));
    } else {
      add(identity, new Limit(Kind.MASS.siValueOf(limit.get()), false, true), load);
    }
  }

  private void addShares() {
    if (!Double.isNaN(draft.lowestFrontShare)) {
      addShare("layout.front-share-least", draft.lowestFrontShare, false);
      addShare("layout.front-share-most", draft.highestFrontShare, true);
    }
  }

  private void addShare(String code, double share, boolean atMost) {
    String bound = atMost ? "largest" : "least";
    add(
        new Identity(code, "front share against the " + bound + " allowed"),
        new Limit(share, true, atMost),
        load -> load.frontKg() - share * load.massKg());
  }

  private void addLeftRight(double limitKg) {
    Identity left =
        new Identity("layout.left-heavier", "left side heavier than the right by", true);
    Identity right =
        new Identity("layout.right-heavier", "right side heavier than the left by", true);
    Set<String> missing = missingForWheels();
    if (!missing.isEmpty()) {
      gaps.add(new Gap(left, missing));
      gaps.add(new Gap(right, missing));
      return;
    }
    Limit limit = new Limit(limitKg, false, true);
    add(left, limit, BayLoad::leftMinusRightKg);
    add(right, limit, load -> -load.leftMinusRightKg());
  }

  private Set<String> missingForWheels() {
    Set<String> missing = new LinkedHashSet<>();
    states.forEach(state -> missing.addAll(state.missingForWheels()));
    if (missing.isEmpty()) {
      influences.stream()
          .filter(influence -> !influence.hasWheels())
          .forEach(influence -> missing.add("leftOfCentre of " + influence.bay().name()));
    }
    return missing;
  }

  /** Wheel loads rest on the roll stiffness too. */
  private static Basis basis(LoadState state, Identity identity) {
    Basis basis = state.basis().and(Basis.DATA_SHEET);
    return identity.sideways() ? basis.and(state.vehicle().rollStiffnessBasis()) : basis;
  }

  private void add(Identity identity, Limit limit, ToDoubleFunction<BayLoad> load) {
    List<LoadRule.Case> cases = new ArrayList<>();
    for (LoadState state : states) {
      BayLoad base = BayLoad.of(state);
      long baseLoad = Micrograms.of(load.applyAsDouble(base));
      long baseMass = Micrograms.of(base.massKg());
      long low = -Micrograms.UNBOUNDED;
      long high = Micrograms.UNBOUNDED;
      double bound = limit.share() ? 0 : limit.value();
      if (limit.atMost()) {
        high = Micrograms.floor(bound) - baseLoad;
      } else {
        low = Micrograms.ceiling(bound) - baseLoad;
      }
      LoadRule.Base without = new LoadRule.Base(baseLoad, baseMass, basis(state, identity));
      cases.add(new LoadRule.Case(state.loadCase().name(), low, high, without));
    }
    rules.add(new LoadRule(identity, limit, load, cases));
  }
}
