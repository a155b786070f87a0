package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * What leaves the vehicle and what goes in: from the scales before the conversion to the loads
 * after it.
 *
 * <pre>{@code
 * MassLedger ledger = MassLedger.of(van)
 *     .removing(engine, radiator, tank)
 *     .adding(driveUnit, frontBox, rearBox);
 * LoadState kerb = ledger.after(LoadCase.KERB);
 * System.out.println(kerb.axles() + ", was " + ledger.before(LoadCase.KERB).axles());
 * }</pre>
 *
 * <p>The order of items does not matter. Immutable and thread-safe.
 */
public final class MassLedger implements Serializable {
  private static final long serialVersionUID = 1L;

  private final WeighedVehicle vehicle;
  private final List<MassItem> removed;
  private final List<MassItem> added;

  private MassLedger(WeighedVehicle vehicle, List<MassItem> removed, List<MassItem> added) {
    this.vehicle = vehicle;
    this.removed = List.copyOf(removed);
    this.added = List.copyOf(added);
  }

  /**
   * Starts from the weighed vehicle.
   *
   * @param vehicle as it stood on the scales
   * @return a ledger without entries
   */
  public static MassLedger of(WeighedVehicle vehicle) {
    return new MassLedger(Objects.requireNonNull(vehicle, "vehicle"), List.of(), List.of());
  }

  /**
   * This ledger with parts taken out.
   *
   * @param items what is removed
   * @return a new ledger
   * @throws InvalidInputException if more is removed than was weighed
   */
  public MassLedger removing(MassItem... items) {
    return removing(List.of(items));
  }

  /**
   * This ledger with parts taken out.
   *
   * @param items what is removed
   * @return a new ledger
   * @throws InvalidInputException if more is removed than was weighed
   */
  public MassLedger removing(List<MassItem> items) {
    List<MassItem> all = joined(removed, items);
    double removedKg = all.stream().mapToDouble(MassItem::massKg).sum();
    if (!(removedKg < vehicle.frontKg() + vehicle.rearKg())) {
      throw InvalidInputException.of(
          "MassLedger.removed",
          "< " + vehicle.axles().total() + ", the weighed vehicle",
          Si.mass(removedKg).toString());
    }
    return new MassLedger(vehicle, all, added);
  }

  /**
   * This ledger with parts put in.
   *
   * @param items what is added
   * @return a new ledger
   */
  public MassLedger adding(MassItem... items) {
    return adding(List.of(items));
  }

  /**
   * This ledger with parts put in.
   *
   * @param items what is added
   * @return a new ledger
   */
  public MassLedger adding(List<MassItem> items) {
    return new MassLedger(vehicle, removed, joined(added, items));
  }

  private static List<MassItem> joined(List<MassItem> first, List<MassItem> second) {
    List<MassItem> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  /**
   * The vehicle as weighed.
   *
   * @return the base
   */
  public WeighedVehicle vehicle() {
    return vehicle;
  }

  /**
   * What is taken out.
   *
   * @return in the order given
   */
  public List<MassItem> removed() {
    return removed;
  }

  /**
   * What is put in.
   *
   * @return in the order given
   */
  public List<MassItem> added() {
    return added;
  }

  /**
   * The loads before the conversion.
   *
   * @param loadCase what the vehicle carries
   * @return the weighed vehicle with that load
   */
  public LoadState before(LoadCase loadCase) {
    return new LoadState(MassLedger.of(vehicle), loadCase);
  }

  /**
   * The loads after the conversion.
   *
   * @param loadCase what the vehicle carries
   * @return the vehicle without the removed parts, with the added parts and that load
   */
  public LoadState after(LoadCase loadCase) {
    return new LoadState(this, loadCase);
  }

  /**
   * Goods that bring a load case up to the gross mass, as type approval loads a vehicle.
   *
   * @param grossMass permitted mass of the laden vehicle, &gt; 0 kg
   * @param loadCase people and luggage already in it
   * @param goods middle of the load space
   * @return the case named {@code fully laden}; without goods if nothing is left to carry
   * @throws InvalidInputException if the gross mass is not positive
   */
  public LoadCase ladenTo(Quantity<Mass> grossMass, LoadCase loadCase, Position goods) {
    double grossKg = Require.quantity("MassLedger.grossMass", grossMass, KILOGRAM).positive();
    double leftKg = grossKg - after(loadCase).sums().totalKg();
    LoadCase laden = loadCase.named("fully laden");
    return leftKg > 0 ? laden.plus(MassItem.of("goods", Si.mass(leftKg), goods)) : laden;
  }

  /**
   * What a kilogram at a place adds to each axle and wheel, carried by the springs.
   *
   * @param position where it would sit
   * @return pure numbers, for searches over many arrangements
   */
  public LoadInfluence influenceOf(Position position) {
    return LoadInfluence.of(vehicle, position, false);
  }

  /** All entries and the load, with their signs. */
  List<SignedItem> items(LoadCase loadCase) {
    List<SignedItem> items = new ArrayList<>();
    removed.forEach(item -> items.add(new SignedItem(item, -1)));
    added.forEach(item -> items.add(new SignedItem(item, 1)));
    loadCase.load().forEach(item -> items.add(new SignedItem(item, 1)));
    return items;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof MassLedger that
            && vehicle.equals(that.vehicle)
            && removed.equals(that.removed)
            && added.equals(that.added));
  }

  @Override
  public int hashCode() {
    return Objects.hash(vehicle, removed, added);
  }

  /**
   * Size of the ledger.
   *
   * @return for example {@code front 560 kg, rear 470 kg, wheelbase 2.31 m; 5 removed, 5 added}
   */
  @Override
  public String toString() {
    return vehicle + "; " + removed.size() + " removed, " + added.size() + " added";
  }
}
