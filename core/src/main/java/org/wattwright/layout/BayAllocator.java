package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.battery.BatteryModule;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassLedger;

/**
 * Finds out how many modules go into which bay, so that axles, wheels and tyres stay inside their
 * limits in every load case and the front share comes as near as it can to the one wanted.
 *
 * <p>Order of allocations: those whose front share is as near to the target as the best one's, or
 * further by no more than the stated band, come first; among them fewest enclosures, then shortest
 * link cable, then lowest centre of gravity of modules and enclosures, then least deviation; then
 * all others by deviation. Ties are broken by content: the order of inputs never matters. Heights
 * and links that are not stated are not compared.
 *
 * <p>Exact: loads are whole numbers of 10⁻⁹ kg, and every allocation of the stated space is
 * covered. Without load cases the kerb case counts. Immutable: every call returns a new allocator.
 * Thread-safe.
 *
 * <pre>{@code
 * AllocationResult found = BayAllocator.over(ledger, List.of(bonnet, underFloor, boot))
 *     .pack(module, 14, 1)
 *     .limits(limits)
 *     .frontShareTarget(0.52, 0.005, LoadCase.KERB)
 *     .loadCase(LoadCase.KERB).loadCase(laden)
 *     .run();
 * }</pre>
 */
public final class BayAllocator {
  private static final int MOST_MODULES = 10_000;

  private final AllocationDraft draft;

  private BayAllocator(AllocationDraft draft) {
    this.draft = draft;
  }

  private BayAllocator with(Consumer<AllocationDraft> change) {
    AllocationDraft copy = new AllocationDraft(draft);
    change.accept(copy);
    return new BayAllocator(copy);
  }

  AllocationDraft draft() {
    return draft;
  }

  /** The same requirements for other packs. */
  BayAllocator withOnly(PackOption option) {
    return with(d -> d.options = List.of(option));
  }

  /**
   * Starts from the vehicle without modules and enclosures, and the bays.
   *
   * @param ledger what is removed and added already, without modules and their enclosures
   * @param bays 1 to 12, each with room or kept free; the same bay twice counts once
   * @return an allocator without packs
   * @throws InvalidInputException if there are no bays or too many, two share a name, or one has no
   *     room
   */
  public static BayAllocator over(MassLedger ledger, List<Bay> bays) {
    Objects.requireNonNull(ledger, "ledger");
    List<Bay> distinct = List.of();
    for (Bay bay : Require.nonEmpty("BayAllocator.bays", bays)) {
      if (!bay.hasRoom()) {
        throw InvalidInputException.of(
                "Bay.room of " + bay.name(), "stated for at least one type of module", "none")
            .withHint("state it with holds(…), or keep the bay free");
      }
      distinct = Distinct.with("BayAllocator.bays", distinct, bay, Bay::name);
    }
    Require.count("BayAllocator.bays", distinct.size(), 1, StringRoute.MOST_BAYS);
    List<Bay> sorted = new ArrayList<>(distinct);
    sorted.sort(Comparator.comparing(Bay::name));
    return new BayAllocator(new AllocationDraft(ledger, List.copyOf(sorted)));
  }

  /**
   * Adds a pack to be shared out; of several the best one is found.
   *
   * @param module the type of all its modules
   * @param series modules in series in each string, ≥ 1
   * @param parallel strings in parallel, ≥ 1
   * @return a new allocator
   * @throws InvalidInputException if a count is outside its range, or another type shares the name
   */
  public BayAllocator pack(BatteryModule module, int series, int parallel) {
    Objects.requireNonNull(module, "module");
    Require.positiveCount("BayAllocator.pack.series", series);
    Require.count("BayAllocator.pack.parallel", parallel, 1, MOST_MODULES / series);
    return adding(new PackOption(module, series, parallel));
  }

  /**
   * Adds a pack whose strings hold modules of several types in series, all strings alike. Types
   * share the room of a bay as {@link Bay#fits} says; in each bay the heaviest sit first, each
   * module one place on.
   *
   * @param string what each string holds, each type once, 1 to 4 of them, in any order
   * @param parallel strings in parallel, ≥ 1
   * @return a new allocator
   * @throws InvalidInputException if a type stands twice, a count is outside its range, or another
   *     type shares a name
   */
  public BayAllocator pack(List<SeriesGroup> string, int parallel) {
    Require.nonEmpty("BayAllocator.pack.string", string);
    List<BatteryModule> types = List.of();
    for (SeriesGroup group : string) {
      if (types.contains(group.module())) {
        throw InvalidInputException.of(
            "BayAllocator.pack.string", "each type once", "two groups of " + group.module().name());
      }
      types = Distinct.with("BayAllocator.pack", types, group.module(), BatteryModule::name);
    }
    Require.count("BayAllocator.pack.string types", types.size(), 1, RoomShare.MOST_TYPES);
    PackOption option = new PackOption(string, parallel);
    Require.count("BayAllocator.pack.series", option.series(), 1, MOST_MODULES);
    Require.count("BayAllocator.pack.parallel", parallel, 1, MOST_MODULES / option.series());
    return adding(option);
  }

  private BayAllocator adding(PackOption option) {
    List<BatteryModule> known =
        draft.options.stream()
            .flatMap(present -> present.groups().stream())
            .map(SeriesGroup::module)
            .distinct()
            .toList();
    for (SeriesGroup group : option.groups()) {
      Distinct.with("BayAllocator.pack", known, group.module(), BatteryModule::name);
    }
    List<PackOption> options = new ArrayList<>(draft.options);
    options.add(option);
    return with(d -> d.options = List.copyOf(options));
  }

  /**
   * Adds a number of modules, as one string.
   *
   * @param module their type
   * @param count ≥ 1
   * @return a new allocator
   * @throws InvalidInputException if the count is outside its range
   */
  public BayAllocator modules(BatteryModule module, int count) {
    return pack(module, count, 1);
  }

  /**
   * Adds a load case in which every requirement must hold; for the same name it replaces.
   *
   * @param loadCase what the vehicle carries
   * @return a new allocator
   */
  public BayAllocator loadCase(LoadCase loadCase) {
    Objects.requireNonNull(loadCase, "loadCase");
    List<LoadCase> cases = new ArrayList<>(draft.loadCases);
    cases.removeIf(present -> present.name().equals(loadCase.name()));
    cases.add(loadCase);
    cases.sort(Comparator.comparing(LoadCase::name));
    return with(d -> d.loadCases = List.copyOf(cases));
  }

  /**
   * The limits of axles, gross mass, tyres and wheels. One that is not given, or not determined,
   * makes the answer provisional.
   *
   * @param limits the limits
   * @return a new allocator
   */
  public BayAllocator limits(AxleLimits limits) {
    Objects.requireNonNull(limits, "limits");
    return with(d -> d.limits = limits);
  }

  /**
   * The front share wanted.
   *
   * @param share front axle load over mass of the vehicle, 0 to 1
   * @param band how much further from it than the best still counts as good, 0 to 1
   * @param loadCase the load case it is wanted in
   * @return a new allocator
   * @throws InvalidInputException if a share is outside its range
   */
  public BayAllocator frontShareTarget(double share, double band, LoadCase loadCase) {
    Require.fraction("BayAllocator.frontShareTarget", share);
    Require.fraction("BayAllocator.frontShareTarget.band", band);
    Objects.requireNonNull(loadCase, "loadCase");
    return with(d -> d.target = new AllocationDraft.ShareTarget(share, band, loadCase));
  }

  /**
   * The front share that must be kept in every load case.
   *
   * @param least 0 to 1
   * @param most from the least to 1
   * @return a new allocator
   * @throws InvalidInputException if a share is outside its range, or least above most
   */
  public BayAllocator frontShareBetween(double least, double most) {
    Require.fraction("BayAllocator.frontShareBetween.least", least);
    Require.between("BayAllocator.frontShareBetween.most", most, least, 1);
    return with(
        d -> {
          d.lowestFrontShare = least;
          d.highestFrontShare = most;
        });
  }

  /**
   * How much heavier one side may stand than the other, in every load case.
   *
   * @param mass ≥ 0 kg
   * @return a new allocator
   * @throws InvalidInputException if negative
   */
  public BayAllocator leftRightDifferenceAtMost(Quantity<Mass> mass) {
    Require.quantity("BayAllocator.leftRightDifference", mass, WorkshopUnits.KILOGRAM)
        .nonNegative();
    return with(d -> d.leftRight = Measure.from(mass, Kind.MASS));
  }

  /**
   * Asks that all strings in parallel take the same number of modules in each bay, so that they are
   * alike in cable and temperature.
   *
   * @return a new allocator
   */
  public BayAllocator equalStrings() {
    return with(d -> d.equalStrings = true);
  }

  /**
   * Asks that the modules of each string lie in bays next to each other: a string goes from bay to
   * bay only where a link between the two is stated.
   *
   * @return a new allocator
   */
  public BayAllocator contiguousStrings() {
    return with(d -> d.contiguous = true);
  }

  /**
   * How many of the next best are wanted besides the best; none unless told.
   *
   * @param count 0 to 1000
   * @return a new allocator
   * @throws InvalidInputException if outside its range
   */
  public BayAllocator alternatives(int count) {
    Require.count("BayAllocator.alternatives", count, 0, 1000);
    return with(d -> d.alternatives = count);
  }

  /**
   * Lets an answer pass although a requirement is not checked for want of an input.
   *
   * @return a new allocator
   */
  public BayAllocator allowProvisional() {
    return with(d -> d.provisional = true);
  }

  /**
   * A signal that stops the run; looked at every 1,024 steps.
   *
   * @param signal true to stop
   * @return a new allocator
   */
  public BayAllocator cancelWhen(BooleanSupplier signal) {
    Objects.requireNonNull(signal, "signal");
    return with(d -> d.cancel = signal);
  }

  /**
   * Most allocations to be covered; no limit unless told.
   *
   * @param count ≥ 1
   * @return a new allocator
   * @throws InvalidInputException if less than 1
   */
  public BayAllocator allocationBudget(long count) {
    if (count < 1) {
      throw InvalidInputException.of("BayAllocator.allocationBudget", "≥ 1", Long.toString(count));
    }
    return with(d -> d.budget = count);
  }

  /**
   * Told how many allocations are covered: every 65,536 steps, and at the end.
   *
   * @param listener takes the number
   * @return a new allocator
   */
  public BayAllocator progress(LongConsumer listener) {
    Objects.requireNonNull(listener, "listener");
    return with(d -> d.progress = listener);
  }

  /**
   * Finds the best allocation.
   *
   * @return the proven best and the next best, or what stands in the way
   * @throws InvalidInputException if no pack is given, a link leads to no bay of the list,
   *     contiguous strings are asked for and no link is stated, or a pack of several types has more
   *     than 50 000 mixes of its modules
   */
  public AllocationResult run() {
    Require.nonEmpty("BayAllocator.pack", draft.options);
    AllocationSpec spec = new AllocationSpec(draft);
    if (draft.contiguous && !spec.links().isStated()) {
      throw InvalidInputException.of(
          "Bay.links", "stated with linkedTo(…) where strings are to be contiguous", "none");
    }
    return AllocationResult.of(spec);
  }

  /**
   * Packs and bays in words.
   *
   * @return for example {@code bay allocator of 2 packs over 3 bays}
   */
  @Override
  public String toString() {
    String packs = draft.options.size() == 1 ? "1 pack" : draft.options.size() + " packs";
    String bays = draft.bays.size() == 1 ? "1 bay" : draft.bays.size() + " bays";
    return "bay allocator of " + packs + " over " + bays;
  }
}
