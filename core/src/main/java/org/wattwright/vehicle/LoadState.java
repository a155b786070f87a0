package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;

/**
 * The vehicle in one load case: axle loads, wheel loads, centre of gravity, and how far they moved.
 *
 * <p>m_r = m_r0 ± Σ m·d/L, m_f = m_f0 ± Σ m·(1 − d/L); centre of gravity L·m_r/m, Σm·y/m, Σm·z/m.
 * Four supports of a stiff body are indeterminate: wheel loads come from measured corner weights
 * and the split of the roll stiffness, or not at all. Source: statics; signs as in {@link
 * Position}. Immutable and thread-safe.
 */
public final class LoadState implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MassLedger ledger;
  private final LoadCase loadCase;
  private final LoadKernel.Sums sums;

  LoadState(MassLedger ledger, LoadCase loadCase) {
    this.ledger = ledger;
    this.loadCase = Objects.requireNonNull(loadCase, "loadCase");
    this.sums = LoadKernel.run(ledger.vehicle(), ledger.items(loadCase));
  }

  /**
   * What the vehicle carries.
   *
   * @return the load case
   */
  public LoadCase loadCase() {
    return loadCase;
  }

  /**
   * The vehicle as weighed.
   *
   * @return the base
   */
  public WeighedVehicle vehicle() {
    return ledger.vehicle();
  }

  /**
   * Load of each axle.
   *
   * @return in kg; negative on an axle that would lift
   */
  public AxleLoads axles() {
    return AxleLoads.ofKg(sums.frontKg(), sums.rearKg());
  }

  /**
   * Mass of the vehicle with its load.
   *
   * @return in kg
   */
  public Quantity<Mass> total() {
    return Si.mass(sums.totalKg());
  }

  /**
   * Share of the steering axle, the front one.
   *
   * @return 0 to 1 while neither axle lifts
   */
  public double frontShare() {
    return axles().share(Axle.FRONT);
  }

  /**
   * What the conversion did to the axles, in the same load case.
   *
   * @return after minus before, in kg
   */
  public AxleLoads change() {
    LoadKernel.Sums before = before().sums;
    return AxleLoads.ofKg(sums.frontKg() - before.frontKg(), sums.rearKg() - before.rearKg());
  }

  /**
   * The unconverted vehicle in the same load case.
   *
   * @return the state before
   */
  public LoadState before() {
    return ledger.before(loadCase);
  }

  /**
   * Load of each wheel.
   *
   * @return empty if not determined; {@link #missingForWheels} says why
   */
  public Optional<WheelLoads> wheels() {
    return Double.isNaN(sums.wheelsKg().get(0) + sums.wheelsKg().get(2))
        ? Optional.empty()
        : Optional.of(WheelLoads.ofKg(sums.wheelsKg()));
  }

  /**
   * The inputs without which wheel loads are not determined.
   *
   * @return empty if they are
   */
  public List<String> missingForWheels() {
    if (wheels().isPresent()) {
      return List.of();
    }
    List<String> missing = new ArrayList<>();
    if (vehicle().wheels().isEmpty()) {
      missing.add("WeighedVehicle.wheel readings");
    }
    if (Double.isNaN(vehicle().rollSplit().frontShare())) {
      missing.add("WeighedVehicle.rollStiffness");
    }
    for (Axle axle : Axle.values()) {
      if (vehicle().track(axle).isEmpty()) {
        missing.add("WeighedVehicle." + axle + "Track");
      }
    }
    ledger.items(loadCase).stream()
        .map(SignedItem::item)
        .filter(item -> item.position().leftOfCentre().isEmpty())
        .forEach(item -> missing.add("leftOfCentre of " + item.name()));
    return missing;
  }

  /**
   * Where the mass acts.
   *
   * @return what is determined; height at the typical value of an estimate
   */
  public CentreOfGravity centreOfGravity() {
    return new CentreOfGravity(
        Si.length(sums.behindM()),
        Si.lengthIfKnown(sums.leftM()),
        Si.lengthIfKnown(sums.height().typicalM()));
  }

  /**
   * The inputs without which the height of the centre of gravity is not determined.
   *
   * @return empty if it is
   */
  public List<String> missingForHeight() {
    List<String> missing = new ArrayList<>();
    if (vehicle().centreOfGravityHeight().isEmpty()) {
      missing.add("WeighedVehicle.centreOfGravityHeight");
    }
    ledger.items(loadCase).stream()
        .map(SignedItem::item)
        .filter(item -> item.position().aboveGround().isEmpty())
        .forEach(item -> missing.add("aboveGround of " + item.name()));
    return missing;
  }

  /**
   * What the stated tolerances do to the axle loads and the total.
   *
   * @return worst case and root-sum-square
   */
  public LoadSpread spread() {
    return spreads(Recorder.OFF).loads();
  }

  /**
   * What the stated tolerances do to the change against the unconverted vehicle. The readings of
   * the scales, people and luggage are the same before and after and do not count.
   *
   * @return worst case and root-sum-square of {@link #change} and of the change of the total
   */
  public LoadSpread changeSpread() {
    return spreads(Recorder.OFF).change();
  }

  /**
   * What the stated tolerances do to the wheel loads.
   *
   * @return worst case and root-sum-square; empty if wheel loads, or what a shift of a mass to the
   *     side does to them, are not determined
   */
  public Optional<WheelSpread> wheelSpread() {
    return spreads(Recorder.OFF).wheels();
  }

  /**
   * What the stated tolerances do to the centre of gravity.
   *
   * @return worst case and root-sum-square of what is determined
   */
  public CentreSpread centreSpread() {
    return spreads(Recorder.OFF).centre();
  }

  /**
   * The working of all spreads: for each figure the lowest and the highest value and the likely
   * half-width.
   *
   * @return the worksheet
   */
  public Worksheet spreadWorksheet() {
    Worksheet.Recording recording = Worksheet.record("Tolerances, " + loadCase.name());
    StateSpread spreads = spreads(recording);
    spreads.loads();
    spreads.change();
    spreads.wheels();
    spreads.centre();
    return recording.toWorksheet();
  }

  private StateSpread spreads(Recorder recorder) {
    return new StateSpread(ledger, this, recorder);
  }

  /**
   * What the loads rest on.
   *
   * @return weakest basis of all items
   */
  public Basis basis() {
    return sums.basis();
  }

  /**
   * The vehicle as a rigid body on two axles, for braking, grades and handling.
   *
   * @return empty if the height of the centre of gravity is not determined; {@link
   *     #missingForHeight} says why
   */
  public Optional<Stance> stance() {
    return Double.isNaN(sums.height().typicalM())
        ? Optional.empty()
        : Optional.of(Stance.of(sums, vehicle().wheelbaseM()));
  }

  /**
   * Where a further mass must sit for a wanted front share: d = L·((1 − s)·(m₀ + m) − m_r)/m.
   *
   * @param mass the further mass, &gt; 0 kg
   * @param frontShare wanted, 0 to 1
   * @return distance behind the front axle; may well lie outside the vehicle
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Quantity<Length> placeFor(Quantity<Mass> mass, double frontShare) {
    return placeFor(mass, frontShare, Recorder.OFF);
  }

  /**
   * The same with the working.
   *
   * @param mass the further mass, &gt; 0 kg
   * @param frontShare wanted, 0 to 1
   * @param recorder takes down the step
   * @return as {@link #placeFor(Quantity, double)}
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public Quantity<Length> placeFor(Quantity<Mass> mass, double frontShare, Recorder recorder) {
    double massKg = Require.quantity("LoadState.placeFor.mass", mass, KILOGRAM).positive();
    double rearShare = 1 - Require.fraction("LoadState.placeFor.frontShare", frontShare);
    double rearKg = rearShare * (sums.totalKg() + massKg) - sums.rearKg();
    double placeM = vehicle().wheelbaseM() * rearKg / massKg;
    if (recorder.isOn()) {
      recorder
          .step("d", "place of the further mass behind the front axle")
          .formula("L·((1 - s)·(m_t + m) - m_r)/m")
          .with("L", vehicle().wheelbaseM(), METRE)
          .with("s", Figure.share(frontShare))
          .with("m_t", sums.totalKg(), KILOGRAM)
          .with("m", massKg, KILOGRAM)
          .with("m_r", sums.rearKg(), KILOGRAM)
          .basis(sums.basis())
          .gives(placeM, METRE);
    }
    return Si.length(placeM);
  }

  /**
   * Change of the load that the springs of an axle carry, against the vehicle as weighed.
   *
   * @param axle front or rear
   * @return in kg, without what sits on the axle itself
   */
  public Quantity<Mass> sprungChange(Axle axle) {
    return Si.mass(axle == Axle.FRONT ? sums.sprungFrontChangeKg() : sums.sprungRearChangeKg());
  }

  /**
   * The whole working, item by item.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    return recorded("Loads, " + loadCase.name(), steps -> steps);
  }

  /**
   * The working of the sums alone, for a report that lists the items with their shares in a table
   * of its own.
   *
   * @return the worksheet
   */
  public Worksheet sumWorksheet() {
    return recorded("Sums, " + loadCase.name(), LoadSteps::withoutItems);
  }

  private Worksheet recorded(String title, UnaryOperator<LoadSteps> detail) {
    Worksheet.Recording recording = Worksheet.record(title);
    LoadSteps steps = detail.apply(LoadSteps.to(vehicle(), recording));
    LoadKernel.run(vehicle(), LoadKernel.Base.of(vehicle()), ledger.items(loadCase), steps);
    return recording.toWorksheet();
  }

  /**
   * The working of people, luggage and goods alone: from the same vehicle at kerb (index k), whose
   * working is that of the kerb state, to this load case.
   *
   * @return the worksheet
   */
  public Worksheet worksheetFromKerb() {
    Worksheet.Recording recording = Worksheet.record("Loads, " + loadCase.name() + ", from kerb");
    LoadKernel.Base kerb = LoadKernel.Base.of(ledger.after(LoadCase.KERB).sums);
    LoadSteps steps = LoadSteps.to(vehicle(), recording).fromKerb();
    LoadKernel.run(vehicle(), kerb, MassLedger.of(vehicle()).items(loadCase), steps);
    return recording.toWorksheet();
  }

  LoadKernel.Sums sums() {
    return sums;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof LoadState that
            && ledger.equals(that.ledger)
            && loadCase.equals(that.loadCase));
  }

  @Override
  public int hashCode() {
    return Objects.hash(ledger, loadCase);
  }

  /**
   * Load case and axle loads.
   *
   * @return for example {@code kerb: front 541.8 kg, rear 636.2 kg}
   */
  @Override
  public String toString() {
    return loadCase + ": " + axles();
  }
}
