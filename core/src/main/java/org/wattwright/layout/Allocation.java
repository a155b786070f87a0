package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.ResistancePerLength;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;

/**
 * One way to share a pack out over the bays: how many modules go where, and what comes of it.
 *
 * <p>Checks and worksheet replay the arithmetic of the allocator. Immutable and thread-safe. Equal
 * if the same pack lies in the same bays in the same numbers.
 */
public final class Allocation {
  private final AllocationSpec spec;
  private final Leaf leaf;
  private final BayTables tables;

  Allocation(AllocationSpec spec, Leaf leaf) {
    this.spec = spec;
    this.leaf = leaf;
    this.tables = BayTables.of(spec, spec.options().get(leaf.option()), BayTables.NO_LIMITS);
  }

  AllocationSpec spec() {
    return spec;
  }

  BayTables tables() {
    return tables;
  }

  /** Entry of each bay in the tables. */
  int[] entries() {
    return leaf.counts().clone();
  }

  /** Modules of each type in each bay. */
  int[][] modules() {
    return tables.modules(leaf.counts());
  }

  /**
   * What each string holds in series, by type.
   *
   * @return heaviest module first, in which order each bay fills
   */
  public List<SeriesGroup> groups() {
    return tables.option().groups();
  }

  /**
   * The module type of a pack of one type; {@link #groups} has those of any pack.
   *
   * @return the module
   * @throws InvalidInputException if the strings hold several types
   */
  public BatteryModule module() {
    if (tables.option().isMixed()) {
      throw InvalidInputException.of(
              "Allocation.module", "asked of a pack of one type", tables.option().toString())
          .withHint("groups() has all types");
    }
    return tables.option().module(0);
  }

  /**
   * Modules in series in each string, of all types.
   *
   * @return ≥ 1
   */
  public int series() {
    return tables.option().series();
  }

  /**
   * Strings in parallel.
   *
   * @return ≥ 1
   */
  public int parallel() {
    return tables.option().parallel();
  }

  /**
   * Number of modules.
   *
   * @return series times parallel
   */
  public int moduleCount() {
    return tables.option().moduleCount();
  }

  /**
   * How many modules go into each bay, of all types.
   *
   * @return by name of the bay, in alphabetical order, bays left empty with 0
   */
  public Map<String, Integer> counts() {
    return byBay(modules());
  }

  /**
   * How many modules of one type go into each bay.
   *
   * @param module the type
   * @return by name of the bay, in alphabetical order, bays without one with 0
   */
  public Map<String, Integer> counts(BatteryModule module) {
    int[][] modules = modules();
    int[] none = new int[spec.bays().size()];
    for (int type = 0; type < modules.length; type++) {
      if (!tables.option().module(type).equals(module)) {
        modules[type] = none;
      }
    }
    return byBay(modules);
  }

  private Map<String, Integer> byBay(int[][] modules) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int bay = 0; bay < spec.bays().size(); bay++) {
      int sum = 0;
      for (int[] ofType : modules) {
        sum += ofType[bay];
      }
      counts.put(spec.bays().get(bay).name(), sum);
    }
    return Collections.unmodifiableMap(counts);
  }

  /**
   * Bays in use, and so enclosures.
   *
   * @return ≥ 1
   */
  public int enclosureCount() {
    return leaf.enclosures();
  }

  /**
   * Mass of modules and enclosures.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    return Kind.MASS.ofSi(Micrograms.toKg(tables.massOf(leaf.counts())));
  }

  /**
   * Length of cable that links the modules of each string from bay to bay, all strings together,
   * one way: along the shortest route through the bays.
   *
   * @return empty if no link is stated, or the bays are not linked
   */
  public Optional<Quantity<Length>> linkLength() {
    return spec.links().isStated() && leaf.linkNm() < LinkMap.NONE
        ? Optional.of(Kind.LENGTH.ofSi(LinkMap.toM(leaf.linkNm())))
        : Optional.empty();
  }

  /**
   * Height of the centre of gravity of modules and enclosures.
   *
   * @return empty if the height of a bay or of its enclosure is not known
   */
  public Optional<Quantity<Length>> centreOfGravityHeight() {
    return spec.hasHeights() ? Optional.of(Kind.LENGTH.ofSi(leaf.heightM())) : Optional.empty();
  }

  /**
   * How far the front share is from the one wanted, in the load case of the target.
   *
   * @return ≥ 0, as a share; empty if no share is wanted
   */
  public Optional<Double> frontShareDeviation() {
    LoadRule target = spec.target();
    return target == null ? Optional.empty() : Optional.of(missedBy(target));
  }

  private double missedBy(LoadRule rule) {
    long sum = BayTables.sum(tables.of(rule), leaf.counts());
    return rule.missedBy(sum, tables.massOf(leaf.counts()));
  }

  /**
   * Front share in a load case.
   *
   * @param loadCase what the vehicle carries
   * @return 0 to 1 while neither axle lifts
   */
  public double frontShare(LoadCase loadCase) {
    return after(loadCase).frontShare();
  }

  /**
   * The modules of each bay and the enclosures in use, for a ledger of your own.
   *
   * @return in the order of the bays by name
   */
  public List<MassItem> items() {
    List<MassItem> items = new ArrayList<>();
    int[] entries = entries();
    for (int bay = 0; bay < entries.length; bay++) {
      if (entries[bay] > 0) {
        addItems(items, spec.bays().get(bay), tables.modules(bay, entries[bay]));
        spec.bays().get(bay).enclosure().ifPresent(items::add);
      }
    }
    return List.copyOf(items);
  }

  private void addItems(List<MassItem> items, Bay bay, int[] modules) {
    int before = 0;
    for (int type = 0; type < modules.length; type++) {
      if (modules[type] > 0) {
        SeriesGroup placed = new SeriesGroup(tables.option().module(type), modules[type]);
        double moduleKg = Kind.MASS.siValueOf(placed.module().mass());
        items.add(
            MassItem.of(
                placed + ", " + bay.name(),
                Kind.MASS.ofSi(modules[type] * moduleKg),
                bay.middleOf(before, modules[type])));
        before += modules[type];
      }
    }
  }

  /**
   * The ledger with modules and enclosures added.
   *
   * @return a new ledger
   */
  public MassLedger ledger() {
    return spec.draft().ledger.adding(items());
  }

  /**
   * The loads of the vehicle with this allocation.
   *
   * @param loadCase what the vehicle carries
   * @return its state
   */
  public LoadState after(LoadCase loadCase) {
    return ledger().after(loadCase);
  }

  /**
   * The pack with its strings from bay to bay, links without resistance.
   *
   * @return the pack
   */
  public Pack pack() {
    return StringLayout.pack(this, 0);
  }

  /**
   * The pack with its strings from bay to bay and their link cables.
   *
   * @param perLength resistance of the link cable, one way, ≥ 0 Ω/km
   * @return the pack
   * @throws org.wattwright.units.InvalidInputException if the resistance is negative
   */
  public Pack pack(Quantity<ResistancePerLength> perLength) {
    return StringLayout.pack(
        this,
        Require.quantity("Allocation.linkResistance", perLength, WorkshopUnits.OHM_PER_KILOMETRE)
            .nonNegative());
  }

  /**
   * One check for each requirement and load case. Tolerances of masses are not in them: {@link
   * org.wattwright.vehicle.AxleLimits#check} of {@link #after} has those.
   *
   * @return an immutable list, in a fixed order
   */
  public List<Check> checks() {
    return AllocationSheet.checks(this);
  }

  /**
   * The worst verdict of all checks.
   *
   * @return PASS if there is no check
   */
  public Outcome outcome() {
    return Outcome.worstOf(checks());
  }

  /**
   * The working: what each bay adds, and what comes of it in each load case.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    return AllocationSheet.worksheet(this);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Allocation that
        && tables.option().equals(that.tables.option())
        && Arrays.equals(entries(), that.entries())
        && counts().keySet().equals(that.counts().keySet());
  }

  @Override
  public int hashCode() {
    return tables.option().hashCode() * 31 + counts().hashCode();
  }

  /**
   * Pack, counts (by type where there are several), front share.
   *
   * @return for example {@code 10s1p flat: bonnet 4, boot 6; front share 0.497 in kerb}
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(tables.option().toString());
    int[][] modules = modules();
    for (int bay = 0; bay < spec.bays().size(); bay++) {
      text.append(bay == 0 ? ": " : ", ").append(spec.bays().get(bay).name()).append(' ');
      for (int type = 0; type < modules.length; type++) {
        text.append(type == 0 ? "" : " + ").append(modules[type][bay]);
      }
    }
    LoadCase shown =
        spec.draft().target == null
            ? spec.draft().loadCasesOrKerb().get(0)
            : spec.draft().target.loadCase();
    String share = String.format(Locale.ROOT, "%.4f", frontShare(shown));
    return text + "; front share " + share + " in " + shown.name();
  }
}
