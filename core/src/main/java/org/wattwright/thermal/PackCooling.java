package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.CUBIC_METRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.LITRE_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.ThermalConductance;
import org.wattwright.units.VolumeFlow;

/**
 * A stream of air or coolant that passes a pack and takes up heat, or gives it.
 *
 * <p>The stream warms up on its way along a body at one temperature: P = C·ε·(T − Tin), ε = 1 −
 * e^(−UA/C), C = ρ·V̇·c. Source: effectiveness–NTU method, one stream at constant temperature. The
 * conductance UA is that of plate or duct at this flow, from a measurement or a data sheet; it is
 * taken as given, also where a cold, thick coolant would lower it. Immutable and thread-safe.
 */
public final class PackCooling implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source SOURCE =
      Source.literature("effectiveness–NTU method", "one stream at constant temperature");

  private final String stream;
  private final Basis basis;
  private final double inletK;
  private final double capacityRateWPerK;
  private final double wallWPerK;

  private PackCooling(String stream, Basis basis, double[] inletRateWall) {
    this.stream = stream;
    this.basis = basis;
    this.inletK = inletRateWall[0];
    this.capacityRateWPerK = inletRateWall[1];
    this.wallWPerK = inletRateWall[2];
  }

  /**
   * Coolant through plates or pipes.
   *
   * @param coolant the liquid; its properties are taken at the inlet
   * @param flow ≥ 0; 0 cools nothing
   * @param inlet temperature at which it enters the pack, within the coolant's table
   * @param wall conductance between cells and coolant, UA, ≥ 0 W/K
   * @return the cooling
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static PackCooling coolant(
      Coolant coolant,
      Quantity<VolumeFlow> flow,
      Quantity<Temperature> inlet,
      Quantity<ThermalConductance> wall) {
    double flowM3PerS = Require.quantity("PackCooling.flow", flow, LITRE_PER_MINUTE).nonNegative();
    double rateWPerK = flowM3PerS * coolant.volumetricHeatJPerM3K(inlet);
    double[] numbers = {Kind.TEMPERATURE.siValueOf(inlet), rateWPerK, wallWPerK(wall)};
    return new PackCooling(flow + " of " + coolant, coolant.basis(), numbers);
  }

  /**
   * Air blown or drawn past the cells; dry, at sea level.
   *
   * @param flow ≥ 0, measured at the inlet temperature; 0 cools nothing
   * @param inlet temperature at which it enters the pack, −60 °C to 100 °C
   * @param wall conductance between cells and air, UA, ≥ 0 W/K
   * @return the cooling
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static PackCooling air(
      Quantity<VolumeFlow> flow, Quantity<Temperature> inlet, Quantity<ThermalConductance> wall) {
    double flowM3PerS =
        Require.quantity("PackCooling.flow", flow, CUBIC_METRE_PER_HOUR).nonNegative();
    double inletK = Surroundings.temperatureK("PackCooling.inlet", inlet);
    double rateWPerK = Air.capacityRateWPerK(flowM3PerS, inletK);
    double[] numbers = {inletK, rateWPerK, wallWPerK(wall)};
    return new PackCooling(flow + " of air", Basis.DATA_SHEET, numbers);
  }

  private static double wallWPerK(Quantity<ThermalConductance> wall) {
    return Require.quantity("PackCooling.wall", wall, WATT_PER_KELVIN).nonNegative();
  }

  /**
   * Temperature at which the stream enters.
   *
   * @return absolute
   */
  public Quantity<Temperature> inlet() {
    return Kind.TEMPERATURE.ofSi(inletK);
  }

  /**
   * Share of the heat that an endless plate would take up: 1 − e^(−UA/C).
   *
   * @return 0 to 1; 1 if nothing flows
   */
  public double effectiveness() {
    return capacityRateWPerK > 0 ? -Math.expm1(-wallWPerK / capacityRateWPerK) : 1;
  }

  /**
   * Conductance between the pack and the stream's inlet temperature: C·ε. Less than both UA and C.
   *
   * @return in W/K
   */
  public Quantity<ThermalConductance> conductance() {
    return Kind.THERMAL_CONDUCTANCE.ofSi(conductanceWPerK());
  }

  /**
   * Heat that the stream takes from the pack.
   *
   * @param pack temperature of the pack
   * @return positive if it cools, negative if it warms
   */
  public Quantity<Power> heatFrom(Quantity<Temperature> pack) {
    return Kind.POWER.ofSi(conductanceWPerK() * (Kind.TEMPERATURE.siValueOf(pack) - inletK));
  }

  /**
   * Temperature at which the stream leaves: Tin + ε·(T − Tin).
   *
   * @param pack temperature of the pack
   * @return empty if nothing flows
   */
  public Optional<Quantity<Temperature>> outletFrom(Quantity<Temperature> pack) {
    double packK = Kind.TEMPERATURE.siValueOf(pack);
    return capacityRateWPerK > 0
        ? Optional.of(Kind.TEMPERATURE.ofSi(inletK + effectiveness() * (packK - inletK)))
        : Optional.empty();
  }

  double conductanceWPerK() {
    return capacityRateWPerK > 0 ? capacityRateWPerK * effectiveness() : 0;
  }

  double inletK() {
    return inletK;
  }

  Basis basis() {
    return basis;
  }

  private String inletText() {
    return Figure.ofSi(inletK, CELSIUS).toString();
  }

  void record(Recorder recorder) {
    recorder
        .step("C_c", "capacity rate of " + stream + " at " + inletText())
        .formula("ρ·V̇·c")
        .basis(basis)
        .gives(capacityRateWPerK, WATT_PER_KELVIN);
    recorder
        .step("G_c", "conductance from pack to the stream's inlet")
        .formula("C_c·(1 − e^(−UA/C_c))")
        .with("C_c", capacityRateWPerK, WATT_PER_KELVIN)
        .with("UA", wallWPerK, WATT_PER_KELVIN)
        .basis(basis)
        .source(SOURCE)
        .gives(conductanceWPerK(), WATT_PER_KELVIN);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PackCooling that
        && stream.equals(that.stream)
        && basis == that.basis
        && Double.compare(inletK, that.inletK) == 0
        && Double.compare(capacityRateWPerK, that.capacityRateWPerK) == 0
        && Double.compare(wallWPerK, that.wallWPerK) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(stream, inletK, capacityRateWPerK, wallWPerK);
  }

  /**
   * The stream, where it enters, and its conductance.
   *
   * @return for example {@code 6 L/min of ethylene glycol 50 % at 22 °C, 239.1 W/K}
   */
  @Override
  public String toString() {
    return stream + " at " + inletText() + ", " + Figure.ofSi(conductanceWPerK(), WATT_PER_KELVIN);
  }
}
