package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;
import static org.wattwright.units.WorkshopUnits.REVOLUTION_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.BilinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.Torque;

/**
 * What motor and inverter lose between the traction bus and the shaft.
 *
 * <p>Motoring, the bus gives shaft power plus loss; generating, it gets shaft power less loss. A
 * motor at rest without torque loses nothing; what the inverter draws then counts as auxiliary.
 *
 * <p>Three ways to state it: one efficiency; a law of copper, iron, windage and standing loss, P =
 * k_c·T² + k_i·ω + k_w·ω³ + C (J. Larminie, J. Lowry, Electric Vehicle Technology Explained,
 * chapter on motors), each part from its value at one point; or an efficiency map.
 *
 * <p>Immutable and thread-safe.
 */
public final class MotorLoss implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double motoringFactor;
  private final double generatingFactor;
  private final double copperWPerNm2;
  private final double ironWs;
  private final double windageWs3;
  private final double standingW;
  private final @Nullable BilinearTable map;

  private MotorLoss(double efficiency, double[] law, @Nullable BilinearTable map) {
    this.motoringFactor = 1 / efficiency - 1;
    this.generatingFactor = 1 - efficiency;
    this.copperWPerNm2 = law[0];
    this.ironWs = law[1];
    this.windageWs3 = law[2];
    this.standingW = law[3];
    this.map = map;
  }

  /**
   * The same efficiency at every point, motoring and generating.
   *
   * @param efficiency of motor and inverter together, above 0 and at most 1
   * @return the loss
   * @throws InvalidInputException if the efficiency is outside its range
   */
  public static MotorLoss constantEfficiency(double efficiency) {
    return new MotorLoss(efficiency("MotorLoss.efficiency", efficiency), new double[4], null);
  }

  /**
   * A law without any part yet.
   *
   * @return no loss at all; add parts with {@link #copper}, {@link #iron}, {@link #windage} and
   *     {@link #standing}
   */
  public static MotorLoss law() {
    return new MotorLoss(1, new double[4], null);
  }

  static double efficiency(String field, double value) {
    if (!(value > 0 && value <= 1)) {
      throw InvalidInputException.of(field, "> 0 and ≤ 1", Double.toString(value));
    }
    return value;
  }

  /**
   * With the loss that grows with the square of torque.
   *
   * @param loss at that torque, ≥ 0 W
   * @param torque &gt; 0 N·m
   * @return a new loss
   * @throws InvalidInputException if an argument is outside its range
   */
  public MotorLoss copper(Quantity<Power> loss, Quantity<Torque> torque) {
    double torqueNm = Require.quantity("MotorLoss.torque", torque, NEWTON_METRE).positive();
    return with(0, watts(loss) / (torqueNm * torqueNm));
  }

  /**
   * With the loss that grows with speed.
   *
   * @param loss at that speed, ≥ 0 W
   * @param speed &gt; 0
   * @return a new loss
   * @throws InvalidInputException if an argument is outside its range
   */
  public MotorLoss iron(Quantity<Power> loss, Quantity<RotationalSpeed> speed) {
    return with(1, watts(loss) / radPerS(speed));
  }

  /**
   * With the loss that grows with the third power of speed.
   *
   * @param loss at that speed, ≥ 0 W
   * @param speed &gt; 0
   * @return a new loss
   * @throws InvalidInputException if an argument is outside its range
   */
  public MotorLoss windage(Quantity<Power> loss, Quantity<RotationalSpeed> speed) {
    return with(2, watts(loss) / Math.pow(radPerS(speed), 3));
  }

  /**
   * With the loss that is there whenever the motor turns or pulls.
   *
   * @param loss ≥ 0 W
   * @return a new loss
   * @throws InvalidInputException if negative
   */
  public MotorLoss standing(Quantity<Power> loss) {
    return with(3, watts(loss));
  }

  private static double watts(Quantity<Power> loss) {
    return Require.quantity("MotorLoss.loss", loss, WATT).nonNegative();
  }

  private static double radPerS(Quantity<RotationalSpeed> speed) {
    return Require.quantity("MotorLoss.speed", speed, REVOLUTION_PER_MINUTE).positive();
  }

  private MotorLoss with(int part, double value) {
    double[] law = {copperWPerNm2, ironWs, windageWs3, standingW};
    law[part] = value;
    return new MotorLoss(1 - generatingFactor, law, map);
  }

  /**
   * An efficiency map of motor and inverter, kept as a table of losses T·ω·(1/η − 1), with straight
   * lines between and the end values held outside: below the lowest torque the loss stays, it does
   * not vanish. Generating loses what motoring loses at the same torque and speed.
   *
   * @param speeds rising, &gt; 0; one row of the map each
   * @param torques rising, &gt; 0 N·m; one column each
   * @param efficiencies rows by speed, columns by torque, above 0 and at most 1
   * @return the loss
   * @throws InvalidInputException if the map is not of that shape or a value is out of range
   */
  public static MotorLoss map(
      List<Quantity<RotationalSpeed>> speeds,
      List<Quantity<Torque>> torques,
      double[][] efficiencies) {
    double[] rows = speeds.stream().mapToDouble(MotorLoss::radPerS).toArray();
    double[] columns =
        torques.stream()
            .mapToDouble(t -> Require.quantity("MotorLoss.torque", t, NEWTON_METRE).positive())
            .toArray();
    if (efficiencies.length != rows.length) {
      throw InvalidInputException.of(
          "MotorLoss.map",
          "as many rows as speeds (" + rows.length + ")",
          "" + efficiencies.length);
    }
    double[][] losses = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      losses[i] = lossRow(rows[i], columns, efficiencies[i]);
    }
    return new MotorLoss(
        1, new double[4], BilinearTable.of("MotorLoss.map", rows, columns, losses));
  }

  private static double[] lossRow(double speedRadPerS, double[] torquesNm, double[] efficiencies) {
    if (efficiencies.length != torquesNm.length) {
      throw InvalidInputException.of(
          "MotorLoss.map", "as many columns as torques", "" + efficiencies.length);
    }
    double[] row = new double[torquesNm.length];
    for (int j = 0; j < row.length; j++) {
      double share = 1 / efficiency("MotorLoss.map", efficiencies[j]) - 1;
      row[j] = torquesNm[j] * speedRadPerS * share;
    }
    return row;
  }

  /**
   * Loss at a point.
   *
   * @param torque positive motoring, negative generating
   * @param speed ≥ 0
   * @return in kW, ≥ 0
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<Power> at(Quantity<Torque> torque, Quantity<RotationalSpeed> speed) {
    double speedRadPerS =
        Require.quantity("MotorLoss.speed", speed, REVOLUTION_PER_MINUTE).nonNegative();
    return Kind.POWER.ofSi(lossW(Kind.TORQUE.siValueOf(torque), speedRadPerS));
  }

  /**
   * Share of the power that gets through: shaft over bus while motoring, bus over shaft while
   * generating.
   *
   * @param torque not 0; positive motoring, negative generating
   * @param speed &gt; 0
   * @return at most 1; negative where generating loses more than the shaft gives
   * @throws InvalidInputException if torque or speed is zero
   */
  public double efficiencyAt(Quantity<Torque> torque, Quantity<RotationalSpeed> speed) {
    double torqueNm = Kind.TORQUE.siValueOf(torque);
    double shaftW = torqueNm * radPerS(speed);
    if (shaftW == 0) {
      throw InvalidInputException.of("MotorLoss.torque", "not 0 N·m", torque.toString());
    }
    double busW = shaftW + lossW(torqueNm, Kind.ROTATIONAL_SPEED.siValueOf(speed));
    return shaftW > 0 ? shaftW / busW : busW / shaftW;
  }

  double lossW(double torqueNm, double speedRadPerS) {
    if (speedRadPerS == 0 && torqueNm == 0) {
      return 0;
    }
    double shaftW = torqueNm * speedRadPerS;
    double shareW = shaftW >= 0 ? shaftW * motoringFactor : -shaftW * generatingFactor;
    double lawW =
        copperWPerNm2 * torqueNm * torqueNm
            + (ironWs + windageWs3 * speedRadPerS * speedRadPerS) * speedRadPerS
            + standingW;
    double mapW = map == null ? 0 : map.at(speedRadPerS, Math.abs(torqueNm));
    return shareW + lawW + mapW;
  }

  private List<Object> fields() {
    return List.of(motoringFactor, copperWPerNm2, ironWs, windageWs3, standingW);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MotorLoss that
        && fields().equals(that.fields())
        && Objects.equals(map, that.map);
  }

  @Override
  public int hashCode() {
    return Objects.hash(fields(), map);
  }

  /**
   * How the loss is stated.
   *
   * @return for example {@code efficiency 0.9} or {@code loss law}
   */
  @Override
  public String toString() {
    if (map != null) {
      return "efficiency map of " + map.size() + " points";
    }
    return motoringFactor > 0 ? "efficiency " + (1 - generatingFactor) : "loss law";
  }
}
