package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;

/** Writes down what {@link LoadKernel} computes: the items, if wanted, and what they sum to. */
final class LoadSteps {
  private static final Source ROLL =
      Source.literature(
          "W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics",
          "wheel loads of a rigid body on two axles, from memory");

  private static final String LEAN =
      " (λ: the axle's share of the roll stiffness; S_s, S_a: mass times place left of centre, on"
          + " the springs and on the axle, kg·m)";

  private final WeighedVehicle vehicle;
  private final Recorder recorder;
  private final boolean itemsWanted;
  private final String baseIndex;

  private LoadSteps(
      WeighedVehicle vehicle, Recorder recorder, boolean itemsWanted, String baseIndex) {
    this.vehicle = vehicle;
    this.recorder = recorder;
    this.itemsWanted = itemsWanted;
    this.baseIndex = baseIndex;
  }

  static LoadSteps to(WeighedVehicle vehicle, Recorder recorder) {
    return new LoadSteps(vehicle, recorder, true, "0");
  }

  LoadSteps withoutItems() {
    return new LoadSteps(vehicle, recorder, false, baseIndex);
  }

  /** The index of the figures at kerb, from which a load case starts. */
  LoadSteps fromKerb() {
    return new LoadSteps(vehicle, recorder, itemsWanted, "k");
  }

  void item(SignedItem signed, double frontKg, double rearKg) {
    if (!recorder.isOn() || !itemsWanted) {
      return;
    }
    String sign = signed.sign() < 0 ? "-" : "";
    step(signed, "Δm_f", "front axle", sign + "m·(1 - d/L)").gives(frontKg, KILOGRAM);
    step(signed, "Δm_r", "rear axle", sign + "m·d/L").gives(rearKg, KILOGRAM);
  }

  private StepBuilder step(SignedItem signed, String symbol, String where, String formula) {
    MassItem item = signed.item();
    String what = (signed.sign() < 0 ? "without " : "with ") + item.name() + ": " + where;
    return recorder
        .step(symbol, what)
        .formula(formula)
        .with("m", Figure.of(item.mass(), KILOGRAM))
        .with("d", item.position().behindM(), METRE)
        .with("L", vehicle.wheelbaseM(), METRE)
        .basis(item.basis());
  }

  void sums(LoadKernel.Base base, LoadKernel.Change change, LoadKernel.Sums sums) {
    if (!recorder.isOn()) {
      return;
    }
    axle("f", "front axle load", base.frontKg(), sums.frontKg(), sums.basis());
    axle("r", "rear axle load", base.rearKg(), sums.rearKg(), sums.basis());
    total(sums);
    behind(sums);
    if (!Double.isNaN(sums.leftM())) {
      moment("y", "left of centre line", sums.basis())
          .with("m_" + baseIndex, base.totalKg(), KILOGRAM)
          .with("y_" + baseIndex, base.lateralKgM() / base.totalKg(), METRE)
          .with("S", Figure.number(change.lateralKgM()))
          .with("m_t", sums.totalKg(), KILOGRAM)
          .gives(sums.leftM(), METRE);
    }
    if (!Double.isNaN(sums.height().typicalM())) {
      moment("h", "above ground", sums.height().basis())
          .with("m_" + baseIndex, base.totalKg(), KILOGRAM)
          .with("h_" + baseIndex, base.height().typicalM(), METRE)
          .with("S", Figure.number(change.heightKgM()))
          .with("m_t", sums.totalKg(), KILOGRAM)
          .gives(sums.height().typicalM(), METRE);
    }
    wheels(base, change, sums);
  }

  private void axle(String index, String meaning, double baseKg, double loadKg, Basis basis) {
    String symbol = "m_" + index;
    recorder
        .step(symbol, meaning)
        .formula(symbol + baseIndex + " + ΣΔ" + symbol)
        .with(symbol + baseIndex, baseKg, KILOGRAM)
        .with("ΣΔ" + symbol, loadKg - baseKg, KILOGRAM)
        .basis(basis)
        .gives(loadKg, KILOGRAM);
  }

  private void total(LoadKernel.Sums sums) {
    recorder
        .step("m_t", "mass of the vehicle")
        .formula("m_f + m_r")
        .with("m_f", sums.frontKg(), KILOGRAM)
        .with("m_r", sums.rearKg(), KILOGRAM)
        .basis(sums.basis())
        .gives(sums.totalKg(), KILOGRAM);
    recorder
        .step("s_f", "share of the front axle")
        .formula("m_f/m_t")
        .with("m_f", sums.frontKg(), KILOGRAM)
        .with("m_t", sums.totalKg(), KILOGRAM)
        .basis(sums.basis())
        .gives(Figure.share(sums.frontKg() / sums.totalKg()));
  }

  private void behind(LoadKernel.Sums sums) {
    recorder
        .step("d_cg", "centre of gravity, behind front axle")
        .formula("L·m_r/m_t")
        .with("L", vehicle.wheelbaseM(), METRE)
        .with("m_r", sums.rearKg(), KILOGRAM)
        .with("m_t", sums.totalKg(), KILOGRAM)
        .basis(sums.basis())
        .gives(sums.behindM(), METRE);
  }

  /** A centre across or above: (m_0·x_0 + S)/m_t. */
  private StepBuilder moment(String symbol, String where, Basis basis) {
    return recorder
        .step(
            symbol,
            "centre of gravity, " + where + " (S = sum of mass times " + symbol + " in kg·m)")
        .formula("(m_" + baseIndex + "·" + symbol + "_" + baseIndex + " + S)/m_t")
        .basis(basis);
  }

  private void wheels(LoadKernel.Base base, LoadKernel.Change change, LoadKernel.Sums sums) {
    for (int i = 0; i < 4 && !Double.isNaN(sums.wheelsKg().get(i)); i++) {
      wheel(i, base.wheelsKg().get(i), change)
          .basis(sums.basis().and(vehicle.rollSplit().basis()))
          .source(ROLL)
          .gives(sums.wheelsKg().get(i), KILOGRAM);
    }
  }

  /** Half of what the axle gains, and its share of what leans to the left. */
  private StepBuilder wheel(int wheel, double baseKg, LoadKernel.Change change) {
    Axle axle = LoadKernel.axleOf(wheel);
    Side side = LoadKernel.sideOf(wheel);
    boolean front = axle == Axle.FRONT;
    String index = front ? "f" : "r";
    String symbol = "m_" + index + (side == Side.LEFT ? "l" : "r");
    String half = symbol + baseIndex + " + ΣΔm_" + index + "/2";
    StepBuilder step = recorder.step(symbol, axle + " " + side + " wheel load" + LEAN);
    double springsKgM = change.leanKgM().get(0);
    double ownKgM = change.leanKgM().get(front ? 1 : 2);
    boolean leans = springsKgM != 0 || ownKgM != 0;
    String sign = side == Side.LEFT ? " + " : " - ";
    step.formula(leans ? half + sign + "(λ·S_s + S_a)/T" : half)
        .with(symbol + baseIndex, baseKg, KILOGRAM)
        .with("ΣΔm_" + index, front ? change.frontKg() : change.rearKg(), KILOGRAM);
    if (leans) {
      double share = vehicle.rollSplit().frontShare();
      step.with("λ", Figure.number(front ? share : 1 - share))
          .with("S_s", Figure.number(springsKgM))
          .with("S_a", Figure.number(ownKgM))
          .with("T", vehicle.trackM(axle), METRE);
    }
    return step;
  }
}
