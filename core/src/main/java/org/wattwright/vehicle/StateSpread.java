package org.wattwright.vehicle;

import static org.wattwright.vehicle.CentreKernel.around;
import static org.wattwright.vehicle.CentreKernel.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;

/** What the stated tolerances do to the figures of a load state. */
final class StateSpread {
  private static final String CENTRE = "centre of gravity, ";

  private final MassLedger ledger;
  private final List<SignedItem> items;
  private final Recorder recorder;
  private final WeighedVehicle vehicle;
  private final Basis basis;

  StateSpread(MassLedger ledger, LoadState state, Recorder recorder) {
    this.ledger = ledger;
    this.items = ledger.items(state.loadCase());
    this.recorder = recorder;
    this.vehicle = ledger.vehicle();
    this.basis = state.basis();
  }

  private int readings(int ofWheels, int ofAxles) {
    return vehicle.wheels().isPresent() ? ofWheels : ofAxles;
  }

  LoadSpread loads() {
    return new LoadSpread(
        mass(axle(Axle.FRONT, vehicle.frontKg(), items), "m_f", "front axle load"),
        mass(axle(Axle.REAR, vehicle.rearKg(), items), "m_r", "rear axle load"),
        mass(
            total(vehicle.frontKg() + vehicle.rearKg(), readings(4, 2), items),
            "m_t",
            "mass of the vehicle"));
  }

  /** Readings and people are the same before and after: only what leaves and goes in counts. */
  LoadSpread change() {
    List<SignedItem> changed = ledger.items(LoadCase.KERB);
    return new LoadSpread(
        mass(axle(Axle.FRONT, Double.NaN, changed), "Δm_f", "change of the front axle load"),
        mass(axle(Axle.REAR, Double.NaN, changed), "Δm_r", "change of the rear axle load"),
        mass(total(0, 0, changed), "Δm_t", "change of the mass"));
  }

  private Spread<Mass> mass(SpreadKernel kernel, String symbol, String meaning) {
    return new Spread<>(
        Kind.MASS, kernel.toSpread(new SpreadKernel.Label(symbol, meaning, basis), recorder));
  }

  /** Without a weighed load (not a number) no reading counts. */
  private SpreadKernel axle(Axle axle, double weighedKg, List<SignedItem> counted) {
    boolean change = Double.isNaN(weighedKg);
    return new SpreadKernel(
            change ? 0 : weighedKg, change ? 0 : readings(2, 1), vehicle.readingToleranceKg())
        .addAll(
            counted,
            item ->
                SpreadKernel.Coefficient.of(
                    item, (d, y) -> LoadInfluence.at(vehicle, d, 0, false).on(axle)));
  }

  private SpreadKernel total(double weighedKg, int readings, List<SignedItem> counted) {
    return new SpreadKernel(weighedKg, readings, vehicle.readingToleranceKg())
        .addAll(counted, item -> SpreadKernel.Coefficient.ONE);
  }

  Optional<WheelSpread> wheels() {
    Optional<WheelLoads> weighed = vehicle.wheels();
    if (weighed.isEmpty()) {
      return Optional.empty();
    }
    List<Spread.Ends> spreads = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Axle axle = LoadKernel.axleOf(i);
      Side side = LoadKernel.sideOf(i);
      SpreadKernel kernel = wheel(axle, side, weighed.get().kg()[i]);
      if (!kernel.toSpread().isKnown()) {
        return Optional.empty();
      }
      String symbol = "m_" + (axle == Axle.FRONT ? "f" : "r") + (side == Side.LEFT ? "l" : "r");
      Basis weakest = basis.and(vehicle.rollStiffnessBasis());
      spreads.add(
          kernel.toSpread(
              new SpreadKernel.Label(symbol, axle + " " + side + " wheel load", weakest),
              recorder));
    }
    return Optional.of(WheelSpread.of(spreads));
  }

  private SpreadKernel wheel(Axle axle, Side side, double weighedKg) {
    return new SpreadKernel(weighedKg, 1, vehicle.readingToleranceKg())
        .addAll(
            items,
            item ->
                SpreadKernel.Coefficient.of(
                    item,
                    (d, y) ->
                        LoadInfluence.at(vehicle, d, y, item.isUnsprung()).wheel(axle, side)));
  }

  CentreSpread centre() {
    return new CentreSpread(
        length(along(), new SpreadKernel.Label("d_cg", CENTRE + "behind front axle", basis))
            .orElseThrow(),
        length(across(), new SpreadKernel.Label("y", CENTRE + "left of centre line", basis)),
        length(
            up(),
            new SpreadKernel.Label(
                "h", CENTRE + "above ground", basis.and(vehicle.heightBasis()))));
  }

  private Optional<Spread<Length>> length(CentreKernel kernel, SpreadKernel.Label label) {
    Spread.Ends spread = kernel.toSpread(label, recorder);
    return spread.isKnown() ? Optional.of(new Spread<>(Kind.LENGTH, spread)) : Optional.empty();
  }

  private CentreKernel along() {
    CentreKernel kernel = new CentreKernel();
    double toleranceKg = vehicle.readingToleranceKg();
    Optional<WheelLoads> wheels = vehicle.wheels();
    if (wheels.isPresent()) {
      for (int i = 0; i < 4; i++) {
        double placeM = LoadKernel.axleOf(i) == Axle.FRONT ? 0 : vehicle.wheelbaseM();
        kernel.add(reading(wheels.get().kg()[i], toleranceKg, placeM));
      }
    } else {
      kernel.add(reading(vehicle.frontKg(), toleranceKg, 0));
      kernel.add(reading(vehicle.rearKg(), toleranceKg, vehicle.wheelbaseM()));
    }
    return kernel.addAll(items, Position::behindM);
  }

  private CentreKernel across() {
    CentreKernel kernel = new CentreKernel();
    double[] unknown = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
    double[] kg = vehicle.wheels().map(WheelLoads::kg).orElse(unknown);
    for (int i = 0; i < 4; i++) {
      double placeM = LoadKernel.sideOf(i).sign() * vehicle.trackM(LoadKernel.axleOf(i)) / 2;
      kernel.add(reading(kg[i], vehicle.readingToleranceKg(), placeM));
    }
    return kernel.addAll(items, Position::leftM);
  }

  private static CentreKernel.Term reading(double kg, double toleranceKg, double placeM) {
    return new CentreKernel.Term(1, around(kg, toleranceKg), exact(placeM));
  }

  /** The weighed vehicle is one mass at one height, with the band of that height. */
  private CentreKernel up() {
    WeighedVehicle.Height height = vehicle.height();
    int readings = readings(4, 2);
    double weighedKg = vehicle.frontKg() + vehicle.rearKg();
    double toleranceKg = vehicle.readingToleranceKg();
    Spread.Ends mass =
        new Spread.Ends(
            weighedKg - readings * toleranceKg,
            weighedKg,
            weighedKg + readings * toleranceKg,
            Math.sqrt(readings) * toleranceKg);
    double likelyM = (height.highM() - height.lowM()) / 2;
    Spread.Ends place = new Spread.Ends(height.lowM(), height.typicalM(), height.highM(), likelyM);
    return new CentreKernel()
        .add(new CentreKernel.Term(1, mass, place))
        .addAll(items, Position::heightM);
  }
}
