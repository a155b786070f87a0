package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.LITRE;
import static org.wattwright.units.WorkshopUnits.LITRE_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.VolumeFlow;

/**
 * An electric vacuum pump: free-air flow against absolute pressure at its inlet.
 *
 * <p>Evacuating a volume V at constant temperature: V·dp/dt = −Q(p), with throughput Q = inlet
 * pressure times volume flow at the inlet, linear between the points of the curve; each piece has
 * its closed form. A pump of constant speed S and end pressure p_u is Q = S·(p − p_u), so t =
 * V/S·ln((p₀ − p_u)/(p − p_u)). Source: law of ideal gases. The curve of absolute pressures counts
 * as the same at every altitude. Immutable and thread-safe.
 */
public final class VacuumPump implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Highest inlet pressure looked at: above any air pressure on land. */
  private static final double TOP_PA = 120_000;

  private static final double EVEN = 1e-9;

  private final String name;

  /** Pa·m³/s against Pa. */
  private final LinearTable throughput;

  private final @Nullable Quantity<ElectricCurrent> current;
  private final @Nullable Quantity<ElectricCurrent> peak;

  /**
   * A point of a pump's curve.
   *
   * @param inlet absolute pressure, &gt; 0 kPa
   * @param freeAir flow counted as air at 101.325 kPa, ≥ 0 L/min
   */
  public record FlowPoint(Quantity<Pressure> inlet, Quantity<VolumeFlow> freeAir)
      implements Serializable {
    /**
     * Checks the ranges.
     *
     * @param inlet absolute pressure, &gt; 0 kPa
     * @param freeAir flow counted as air at 101.325 kPa, ≥ 0 L/min
     * @throws InvalidInputException if a value is outside its range
     */
    public FlowPoint {
      Require.quantity("VacuumPump.inlet", inlet, KILOPASCAL).positive();
      Require.quantity("VacuumPump.freeAir", freeAir, LITRE_PER_MINUTE).nonNegative();
      inlet = Measure.from(inlet, Kind.PRESSURE);
      freeAir = Measure.from(freeAir, Kind.VOLUME_FLOW);
    }

    double inletPa() {
      return Kind.PRESSURE.siValueOf(inlet);
    }

    double throughputW() {
      return Kind.VOLUME_FLOW.siValueOf(freeAir) * AirPressure.SEA_LEVEL_PA;
    }
  }

  private VacuumPump(
      String name,
      LinearTable throughput,
      @Nullable Quantity<ElectricCurrent> current,
      @Nullable Quantity<ElectricCurrent> peak) {
    this.name = name;
    this.throughput = throughput;
    this.current = current;
    this.peak = peak;
  }

  /**
   * A pump of constant speed at its inlet.
   *
   * @param name as reports print it
   * @param speed volume flow at the inlet, &gt; 0 L/min
   * @param endPressure absolute, that it reaches with the inlet shut; 0 to 100 kPa
   * @return the pump
   * @throws InvalidInputException if a value is outside its range
   */
  public static VacuumPump ofSpeed(
      String name, Quantity<VolumeFlow> speed, Quantity<Pressure> endPressure) {
    double speedM3PerS = Require.quantity("VacuumPump.speed", speed, LITRE_PER_MINUTE).positive();
    double endPa =
        Require.quantity("VacuumPump.endPressure", endPressure, KILOPASCAL).between(0, 100);
    LinearTable line =
        LinearTable.of(
            "VacuumPump.curve",
            new double[] {endPa, TOP_PA},
            new double[] {0, speedM3PerS * (TOP_PA - endPa)});
    return new VacuumPump(Require.text("VacuumPump.name", name), line, null, null);
  }

  /**
   * A pump by its curve.
   *
   * @param name as reports print it
   * @param points by rising inlet pressure, at least two; flow not falling; below the first the
   *     pump counts for nothing, above the last the flow is held
   * @return the pump
   * @throws InvalidInputException if pressures do not rise or flows fall
   */
  public static VacuumPump ofCurve(String name, List<FlowPoint> points) {
    Require.count("VacuumPump.points", points.size(), 2, 1000);
    double[] pressuresPa = points.stream().mapToDouble(FlowPoint::inletPa).toArray();
    double[] throughputsW = points.stream().mapToDouble(FlowPoint::throughputW).toArray();
    for (int i = 1; i < throughputsW.length; i++) {
      if (!(throughputsW[i] >= throughputsW[i - 1] && throughputsW[i] > 0)) {
        throw InvalidInputException.of(
            "VacuumPump.curve[" + i + "].freeAir",
            "> 0 and ≥ " + points.get(i - 1).freeAir(),
            points.get(i).freeAir().toString());
      }
    }
    LinearTable curve = LinearTable.of("VacuumPump.curve", pressuresPa, throughputsW);
    return new VacuumPump(Require.text("VacuumPump.name", name), curve, null, null);
  }

  /**
   * With the current it draws while it runs.
   *
   * @param running &gt; 0 A
   * @return a new pump
   * @throws InvalidInputException if not positive
   */
  public VacuumPump current(Quantity<ElectricCurrent> running) {
    Require.quantity("VacuumPump.current", running, AMPERE).positive();
    return new VacuumPump(name, throughput, Measure.from(running, Kind.CURRENT), peak);
  }

  /**
   * With the current it draws for a moment when it starts.
   *
   * @param starting &gt; 0 A
   * @return a new pump
   * @throws InvalidInputException if not positive
   */
  public VacuumPump startingCurrent(Quantity<ElectricCurrent> starting) {
    Require.quantity("VacuumPump.startingCurrent", starting, AMPERE).positive();
    return new VacuumPump(name, throughput, current, Measure.from(starting, Kind.CURRENT));
  }

  /**
   * Time to evacuate a closed volume.
   *
   * @param volume &gt; 0 L
   * @param fall from and to which absolute pressure
   * @return in s; empty if the pump does not get there
   * @throws InvalidInputException if the volume is not positive
   */
  public Optional<Quantity<Time>> evacuationTime(Quantity<Volume> volume, PressureFall fall) {
    double volumeM3 = Require.quantity("VacuumPump.volume", volume, LITRE).positive();
    double timeS = volumeM3 * secondsPerM3(fall.fromPa(), fall.toPa());
    return timeS <= Double.MAX_VALUE ? Optional.of(SECOND.of(timeS)) : Optional.empty();
  }

  /** ∫ dp/Q(p) from the lower to the higher pressure; infinite out of reach. */
  double secondsPerM3(double fromPa, double toPa) {
    if (toPa == fromPa) {
      return 0;
    }
    if (toPa < throughput.firstX() || !(throughput.at(toPa) > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double sum = 0;
    double lowPa = toPa;
    for (int i = 0; i < throughput.size() && lowPa < fromPa; i++) {
      double highPa = Math.min(throughput.x(i), fromPa);
      if (highPa > lowPa) {
        sum += piece(lowPa, highPa);
        lowPa = highPa;
      }
    }
    return lowPa < fromPa ? sum + piece(lowPa, fromPa) : sum;
  }

  /** ∫ dp/Q over a piece where Q is linear: width over the logarithmic mean. */
  private double piece(double lowPa, double highPa) {
    double atLow = throughput.at(lowPa);
    double atHigh = throughput.at(highPa);
    double change = atHigh - atLow;
    if (Math.abs(change) <= EVEN * atLow) {
      return (highPa - lowPa) / (atLow + change / 2);
    }
    return (highPa - lowPa) * Math.log(atHigh / atLow) / change;
  }

  /**
   * Mean speed at the inlet that evacuates a volume in a time: S = V/t·ln(p₀/p), the speed taken as
   * constant. Real pumps slow down as the pressure falls: a curve says more.
   *
   * @param volume &gt; 0 L
   * @param fall from and to which absolute pressure
   * @param time &gt; 0 s
   * @return in L/min
   * @throws InvalidInputException if volume or time is not positive
   */
  public static Quantity<VolumeFlow> speedNeeded(
      Quantity<Volume> volume, PressureFall fall, Quantity<Time> time) {
    double volumeM3 = Require.quantity("VacuumPump.volume", volume, LITRE).positive();
    double timeS = Require.quantity("VacuumPump.time", time, SECOND).positive();
    double speedM3PerS = volumeM3 / timeS * Math.log(fall.fromPa() / fall.toPa());
    return LITRE_PER_MINUTE.of(speedM3PerS * 60_000);
  }

  /**
   * Lowest absolute pressure of its curve.
   *
   * @return in kPa
   */
  public Quantity<Pressure> endPressure() {
    return KILOPASCAL.of(throughput.firstX() / 1000);
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Current while it runs.
   *
   * @return empty if not told
   */
  public Optional<Quantity<ElectricCurrent>> current() {
    return Optional.ofNullable(current);
  }

  /**
   * Current when it starts.
   *
   * @return empty if not told
   */
  public Optional<Quantity<ElectricCurrent>> startingCurrent() {
    return Optional.ofNullable(peak);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof VacuumPump that
        && name.equals(that.name)
        && throughput.equals(that.throughput)
        && Objects.equals(current, that.current)
        && Objects.equals(peak, that.peak);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, throughput, current, peak);
  }

  /**
   * Name, end pressure and current.
   *
   * @return for example {@code vacuum pump, down to 12 kPa, 9 A}
   */
  @Override
  public String toString() {
    return name + ", down to " + endPressure() + (current == null ? "" : ", " + current);
  }
}
