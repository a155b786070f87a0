package org.wattwright.layout;

import java.util.ArrayList;
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
    this.tables = new BayTables(spec, spec.options().get(leaf.option()), BayTables.NO_LIMITS);
  }

  AllocationSpec spec() {
    return spec;
  }

  BayTables tables() {
    return tables;
  }

  /** Units in each bay. */
  int[] units() {
    return leaf.counts().clone();
  }

  /** Modules in each bay. */
  int[] modules() {
    int[] modules = units();
    for (int bay = 0; bay < modules.length; bay++) {
      modules[bay] *= tables.unit();
    }
    return modules;
  }

  /**
   * The module type.
   *
   * @return the module
   */
  public BatteryModule module() {
    return tables.option().module();
  }

  /**
   * Modules in series in each string.
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
   * How many modules go into each bay.
   *
   * @return by name of the bay, in alphabetical order, bays left empty with 0
   */
  public Map<String, Integer> counts() {
    int[] modules = modules();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int bay = 0; bay < modules.length; bay++) {
      counts.put(spec.bays().get(bay).name(), modules[bay]);
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
    int[] modules = modules();
    double moduleKg = Kind.MASS.siValueOf(module().mass());
    for (int bay = 0; bay < modules.length; bay++) {
      if (modules[bay] > 0) {
        Bay place = spec.bays().get(bay);
        String name = modules[bay] + " × " + module().name() + ", " + place.name();
        Quantity<Mass> mass = Kind.MASS.ofSi(modules[bay] * moduleKg);
        items.add(MassItem.of(name, mass, place.middleOf(modules[bay])));
        place.enclosure().ifPresent(items::add);
      }
    }
    return List.copyOf(items);
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
        && counts().equals(that.counts());
  }

  @Override
  public int hashCode() {
    return tables.option().hashCode() * 31 + counts().hashCode();
  }

  /**
   * Pack, counts, front share.
   *
   * @return for example {@code 10s1p flat: bonnet 4, boot 6; front share 0.497 in kerb}
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(tables.option().toString());
    String[] separator = {": "};
    counts()
        .forEach(
            (bay, count) -> {
              text.append(separator[0]).append(bay).append(' ').append(count);
              separator[0] = ", ";
            });
    LoadCase shown =
        spec.draft().target == null
            ? spec.draft().loadCasesOrKerb().get(0)
            : spec.draft().target.loadCase();
    String share = String.format(Locale.ROOT, "%.4f", frontShare(shown));
    return text + "; front share " + share + " in " + shown.name();
  }
}
