package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.io.Serializable;
import java.util.List;
import java.util.stream.DoubleStream;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;

/** Adds the items of a ledger to the weighed vehicle; the one place where loads are computed. */
final class LoadKernel {
  private static final Source ROLL =
      Source.literature(
          "W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics",
          "wheel loads of a rigid body on two axles, from memory");

  private final WeighedVehicle vehicle;
  private final Recorder recorder;
  private final double[] wheelsKg = new double[4];
  private double frontChangeKg;
  private double rearChangeKg;
  private double sprungFrontChangeKg;
  private double sprungRearChangeKg;
  private double lateralChangeKgM;
  private double heightChangeKgM;
  private Basis basis = Basis.MEASURED;

  private LoadKernel(WeighedVehicle vehicle, Recorder recorder) {
    this.vehicle = vehicle;
    this.recorder = recorder;
  }

  /** Sums in kg and kg·m; NaN where an input is not known. */
  record Sums(
      double frontKg,
      double rearKg,
      List<Double> wheelsKg,
      double sprungFrontChangeKg,
      double sprungRearChangeKg,
      double behindM,
      double leftM,
      WeighedVehicle.Height height,
      Basis basis)
      implements Serializable {
    double totalKg() {
      return frontKg + rearKg;
    }
  }

  static Sums run(WeighedVehicle vehicle, List<SignedItem> items, Recorder recorder) {
    LoadKernel kernel = new LoadKernel(vehicle, recorder);
    for (SignedItem signed : items) {
      kernel.add(signed);
    }
    return kernel.sums();
  }

  private void add(SignedItem signed) {
    MassItem item = signed.item();
    LoadInfluence influence = LoadInfluence.of(vehicle, item.position(), item.isUnsprung());
    double signedKg = signed.sign() * item.massKg();
    double frontKg = signedKg * influence.on(Axle.FRONT);
    double rearKg = signedKg * influence.on(Axle.REAR);
    frontChangeKg += frontKg;
    rearChangeKg += rearKg;
    sprungFrontChangeKg += item.isUnsprung() ? 0 : frontKg;
    sprungRearChangeKg += item.isUnsprung() ? 0 : rearKg;
    lateralChangeKgM += signedKg * item.position().leftM();
    heightChangeKgM += signedKg * item.position().heightM();
    for (int i = 0; i < 4; i++) {
      wheelsKg[i] += signedKg * influence.wheel(axleOf(i), sideOf(i));
    }
    basis = basis.and(item.basis());
    record(signed, frontKg, rearKg);
  }

  /** Order of the wheels: front left, front right, rear left, rear right. */
  static Axle axleOf(int wheel) {
    return wheel < 2 ? Axle.FRONT : Axle.REAR;
  }

  static Side sideOf(int wheel) {
    return wheel % 2 == 0 ? Side.LEFT : Side.RIGHT;
  }

  private void record(SignedItem signed, double frontKg, double rearKg) {
    if (!recorder.isOn()) {
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

  private Sums sums() {
    double frontKg = vehicle.frontKg() + frontChangeKg;
    double rearKg = vehicle.rearKg() + rearChangeKg;
    double totalKg = frontKg + rearKg;
    recordAxle("f", "front axle load", vehicle.frontKg(), frontKg);
    recordAxle("r", "rear axle load", vehicle.rearKg(), rearKg);
    double behindM = vehicle.wheelbaseM() * rearKg / totalKg;
    recordBehind(rearKg, totalKg, behindM);
    double leftM = (vehicle.lateralKgM() + lateralChangeKgM) / totalKg;
    recordMoment("y", "y_0", "centre of gravity, left of centre line", leftM, totalKg);
    WeighedVehicle.Height height = height(totalKg);
    recordMoment("h", "h_0", "centre of gravity, above ground", height.typicalM(), totalKg);
    double[] wheels = wheels();
    recordWheels(wheels);
    return new Sums(
        frontKg,
        rearKg,
        DoubleStream.of(wheels).boxed().toList(),
        sprungFrontChangeKg,
        sprungRearChangeKg,
        behindM,
        leftM,
        height,
        basis);
  }

  private WeighedVehicle.Height height(double totalKg) {
    WeighedVehicle.Height base = vehicle.height();
    return new WeighedVehicle.Height(
        heightM(base.lowM(), totalKg),
        heightM(base.typicalM(), totalKg),
        heightM(base.highM(), totalKg),
        base.basis().and(basis));
  }

  private double heightM(double baseHeightM, double totalKg) {
    double baseKg = vehicle.frontKg() + vehicle.rearKg();
    return (baseKg * baseHeightM + heightChangeKgM) / totalKg;
  }

  private double[] wheels() {
    double[] sum = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
    double[] weighed = vehicle.wheels().map(WheelLoads::kg).orElse(sum);
    for (int i = 0; i < 4; i++) {
      sum[i] = weighed[i] + wheelsKg[i];
    }
    return sum;
  }

  private void recordAxle(String index, String meaning, double weighedKg, double loadKg) {
    if (recorder.isOn()) {
      recorder
          .step("m_" + index, meaning)
          .formula("m_" + index + "0 + ΣΔm_" + index)
          .with("m_" + index + "0", weighedKg, KILOGRAM)
          .with("ΣΔm_" + index, loadKg - weighedKg, KILOGRAM)
          .basis(basis)
          .gives(loadKg, KILOGRAM);
    }
  }

  private void recordBehind(double rearKg, double totalKg, double behindM) {
    if (recorder.isOn()) {
      recorder
          .step("d_cg", "centre of gravity, behind front axle")
          .formula("L·m_r/m_t")
          .with("L", vehicle.wheelbaseM(), METRE)
          .with("m_r", rearKg, KILOGRAM)
          .with("m_t", totalKg, KILOGRAM)
          .basis(basis)
          .gives(behindM, METRE);
    }
  }

  /** A centre across or above: (m_0·x_0 + S)/m_t, with S the sum of the items in kg·m. */
  private void recordMoment(
      String symbol, String baseSymbol, String meaning, double placeM, double totalKg) {
    if (!recorder.isOn() || Double.isNaN(placeM)) {
      return;
    }
    double baseKg = vehicle.frontKg() + vehicle.rearKg();
    boolean up = symbol.equals("h");
    double changeKgM = up ? heightChangeKgM : lateralChangeKgM;
    double basePlaceM = up ? vehicle.height().typicalM() : vehicle.lateralKgM() / baseKg;
    recorder
        .step(symbol, meaning + " (S = sum of mass times distance of all items, kg·m)")
        .formula("(m_0·" + baseSymbol + " + S)/m_t")
        .with("m_0", baseKg, KILOGRAM)
        .with(baseSymbol, basePlaceM, METRE)
        .with("S", Figure.number(changeKgM))
        .with("m_t", totalKg, KILOGRAM)
        .basis(up ? basis.and(vehicle.heightBasis()) : basis)
        .gives(placeM, METRE);
  }

  private void recordWheels(double[] loadsKg) {
    for (int i = 0; recorder.isOn() && i < 4 && !Double.isNaN(loadsKg[i]); i++) {
      recorder
          .step("m_w", axleOf(i) + " " + sideOf(i) + " wheel load")
          .formula("m_w0 + ΣΔm_w")
          .with("m_w0", loadsKg[i] - wheelsKg[i], KILOGRAM)
          .with("ΣΔm_w", wheelsKg[i], KILOGRAM)
          .basis(basis.and(vehicle.rollSplit().basis()))
          .source(ROLL)
          .gives(loadsKg[i], KILOGRAM);
    }
  }
}
