package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import java.util.stream.DoubleStream;
import org.wattwright.check.Basis;
import org.wattwright.check.Recorder;

/** Adds the items of a ledger to the weighed vehicle; the one place where loads are computed. */
final class LoadKernel {
  private final WeighedVehicle vehicle;
  private final LoadSteps steps;
  private final Base base;
  private final double[] wheelsKg = new double[4];
  private double frontChangeKg;
  private double rearChangeKg;
  private double sprungFrontChangeKg;
  private double sprungRearChangeKg;
  private double lateralChangeKgM;
  private double heightChangeKgM;
  private final double[] leanKgM = new double[3];
  private Basis basis;

  private LoadKernel(WeighedVehicle vehicle, Base base, LoadSteps steps) {
    this.vehicle = vehicle;
    this.base = base;
    this.steps = steps;
    this.basis = base.basis();
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

  /** What items are added to: the vehicle as weighed, or the converted one at kerb. */
  record Base(
      double frontKg,
      double rearKg,
      List<Double> wheelsKg,
      double lateralKgM,
      WeighedVehicle.Height height,
      Basis basis) {
    static Base of(WeighedVehicle vehicle) {
      double[] unknown = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
      return new Base(
          vehicle.frontKg(),
          vehicle.rearKg(),
          DoubleStream.of(vehicle.wheels().map(WheelLoads::kg).orElse(unknown)).boxed().toList(),
          vehicle.lateralKgM(),
          vehicle.height(),
          Basis.MEASURED);
    }

    static Base of(Sums sums) {
      return new Base(
          sums.frontKg(),
          sums.rearKg(),
          sums.wheelsKg(),
          sums.leftM() * sums.totalKg(),
          sums.height(),
          sums.basis());
    }

    double totalKg() {
      return frontKg + rearKg;
    }
  }

  /**
   * What the items sum to.
   *
   * @param frontKg on the front axle
   * @param rearKg on the rear axle
   * @param wheelsKg on each wheel
   * @param lateralKgM moment about the centre line
   * @param heightKgM moment about the ground
   * @param leanKgM moment about the centre line of what the springs carry, of what the front axle
   *     carries itself, and of what the rear axle does
   */
  record Change(
      double frontKg,
      double rearKg,
      List<Double> wheelsKg,
      double lateralKgM,
      double heightKgM,
      List<Double> leanKgM) {}

  static Sums run(WeighedVehicle vehicle, List<SignedItem> items) {
    return run(vehicle, Base.of(vehicle), items, LoadSteps.to(vehicle, Recorder.OFF));
  }

  static Sums run(WeighedVehicle vehicle, Base base, List<SignedItem> items, LoadSteps steps) {
    LoadKernel kernel = new LoadKernel(vehicle, base, steps);
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
    addLean(item, signedKg, influence);
    for (int i = 0; i < 4; i++) {
      wheelsKg[i] += signedKg * influence.wheel(axleOf(i), sideOf(i));
    }
    basis = basis.and(item.basis());
    steps.item(signed, frontKg, rearKg);
  }

  private void addLean(MassItem item, double signedKg, LoadInfluence influence) {
    double momentKgM = signedKg * item.position().leftM();
    if (item.isUnsprung()) {
      leanKgM[1] += momentKgM * influence.on(Axle.FRONT);
      leanKgM[2] += momentKgM * influence.on(Axle.REAR);
    } else {
      leanKgM[0] += momentKgM;
    }
  }

  /** Order of the wheels: front left, front right, rear left, rear right. */
  static Axle axleOf(int wheel) {
    return wheel < 2 ? Axle.FRONT : Axle.REAR;
  }

  static Side sideOf(int wheel) {
    return wheel % 2 == 0 ? Side.LEFT : Side.RIGHT;
  }

  private Sums sums() {
    double frontKg = base.frontKg() + frontChangeKg;
    double rearKg = base.rearKg() + rearChangeKg;
    double totalKg = frontKg + rearKg;
    double[] loadsKg = new double[4];
    for (int i = 0; i < 4; i++) {
      loadsKg[i] = base.wheelsKg().get(i) + wheelsKg[i];
    }
    Sums sums =
        new Sums(
            frontKg,
            rearKg,
            DoubleStream.of(loadsKg).boxed().toList(),
            sprungFrontChangeKg,
            sprungRearChangeKg,
            vehicle.wheelbaseM() * rearKg / totalKg,
            (base.lateralKgM() + lateralChangeKgM) / totalKg,
            height(totalKg),
            basis);
    steps.sums(base, change(), sums);
    return sums;
  }

  private Change change() {
    return new Change(
        frontChangeKg,
        rearChangeKg,
        DoubleStream.of(wheelsKg).boxed().toList(),
        lateralChangeKgM,
        heightChangeKgM,
        DoubleStream.of(leanKgM).boxed().toList());
  }

  private WeighedVehicle.Height height(double totalKg) {
    return new WeighedVehicle.Height(
        heightM(base.height().lowM(), totalKg),
        heightM(base.height().typicalM(), totalKg),
        heightM(base.height().highM(), totalKg),
        base.height().basis().and(basis));
  }

  private double heightM(double baseHeightM, double totalKg) {
    return (base.totalKg() * baseHeightM + heightChangeKgM) / totalKg;
  }
}
