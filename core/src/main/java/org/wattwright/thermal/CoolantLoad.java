package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.LITRE_PER_MINUTE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.MassFlow;
import org.wattwright.units.Measure;
import org.wattwright.units.TemperatureDifference;
import org.wattwright.units.VolumeFlow;

/**
 * A heat that a coolant carries away: how much must flow for a rise, how far a flow warms up.
 *
 * <p>P = ρ·V̇·c·ΔT. Source: energy balance. Immutable and thread-safe.
 *
 * @param coolant the liquid
 * @param heat into the coolant, &gt; 0 W
 * @param meanTemperature at which the liquid's properties are taken
 */
public record CoolantLoad(
    Coolant coolant, Quantity<Power> heat, Quantity<Temperature> meanTemperature)
    implements Serializable {

  /**
   * Checks the range.
   *
   * @param coolant the liquid
   * @param heat into the coolant, &gt; 0 W
   * @param meanTemperature within the coolant's table
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public CoolantLoad {
    Objects.requireNonNull(coolant, "coolant");
    Require.quantity("CoolantLoad.heat", heat, WATT).positive();
    heat = Measure.from(heat, Kind.POWER);
    coolant.volumetricHeatJPerM3K(meanTemperature);
    meanTemperature = Measure.from(meanTemperature, Kind.TEMPERATURE);
  }

  /**
   * A heat in a coolant.
   *
   * @param coolant the liquid
   * @param heat into the coolant, &gt; 0 W
   * @param meanTemperature within the coolant's table
   * @return the load
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static CoolantLoad of(
      Coolant coolant, Quantity<Power> heat, Quantity<Temperature> meanTemperature) {
    return new CoolantLoad(coolant, heat, meanTemperature);
  }

  /**
   * Flow by volume for a rise of the coolant: P/(ρ·c·ΔT).
   *
   * @param rise from inlet to outlet, &gt; 0 K
   * @return in L/min
   * @throws org.wattwright.units.InvalidInputException if the rise is not positive
   */
  public Quantity<VolumeFlow> volumeFlowFor(Quantity<TemperatureDifference> rise) {
    return Kind.VOLUME_FLOW.ofSi(volumeFlowM3PerS(rise, Recorder.OFF));
  }

  /**
   * Flow by mass for a rise of the coolant: P/(c·ΔT).
   *
   * @param rise from inlet to outlet, &gt; 0 K
   * @return in kg/s
   * @throws org.wattwright.units.InvalidInputException if the rise is not positive
   */
  public Quantity<MassFlow> massFlowFor(Quantity<TemperatureDifference> rise) {
    double densityKgPerM3 = Kind.DENSITY.siValueOf(coolant.density(meanTemperature));
    return Kind.MASS_FLOW.ofSi(volumeFlowM3PerS(rise, Recorder.OFF) * densityKgPerM3);
  }

  /**
   * Rise of the coolant at a flow: P/(ρ·V̇·c).
   *
   * @param flow ≥ 0
   * @return from inlet to outlet; empty if nothing flows
   * @throws org.wattwright.units.InvalidInputException if the flow is negative
   */
  public Optional<Quantity<TemperatureDifference>> riseAt(Quantity<VolumeFlow> flow) {
    double flowM3PerS = Require.quantity("CoolantLoad.flow", flow, LITRE_PER_MINUTE).nonNegative();
    double rateWPerK = flowM3PerS * volumetricHeatJPerM3K();
    return rateWPerK > 0
        ? Optional.of(Kind.TEMPERATURE_DIFFERENCE.ofSi(heatW() / rateWPerK))
        : Optional.empty();
  }

  /**
   * Reynolds number of a flow in a hose, 4·ρ·V̇/(π·D·μ): laminar below about 2300, turbulent above
   * about 4000; common practice.
   *
   * @param flow ≥ 0
   * @param innerDiameter &gt; 0
   * @return empty if the coolant's viscosity is not known
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Optional<Double> reynoldsNumber(
      Quantity<VolumeFlow> flow, Quantity<Length> innerDiameter) {
    double flowM3PerS = Require.quantity("CoolantLoad.flow", flow, LITRE_PER_MINUTE).nonNegative();
    double diameterM =
        Require.quantity("CoolantLoad.innerDiameter", innerDiameter, MILLIMETRE).positive();
    double densityKgPerM3 = Kind.DENSITY.siValueOf(coolant.density(meanTemperature));
    return coolant
        .viscosity(meanTemperature)
        .map(Kind.DYNAMIC_VISCOSITY::siValueOf)
        .map(
            viscosityPaS -> 4 * densityKgPerM3 * flowM3PerS / (Math.PI * diameterM * viscosityPaS));
  }

  /**
   * The working of the flow for a rise.
   *
   * @param rise from inlet to outlet, &gt; 0 K
   * @return the steps as computed
   * @throws org.wattwright.units.InvalidInputException if the rise is not positive
   */
  public Worksheet worksheet(Quantity<TemperatureDifference> rise) {
    Worksheet.Recording recording = Worksheet.record("Coolant flow for " + this);
    volumeFlowM3PerS(rise, recording);
    return recording.toWorksheet();
  }

  /**
   * What the pump delivers against the flow that a rise needs.
   *
   * @param delivered in this loop, with its pressure drop, ≥ 0
   * @param rise the greatest rise allowed, &gt; 0 K
   * @return the check {@code thermal.coolant-flow}
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Check flowCheck(Quantity<VolumeFlow> delivered, Quantity<TemperatureDifference> rise) {
    double deliveredM3PerS =
        Require.quantity("CoolantLoad.delivered", delivered, LITRE_PER_MINUTE).nonNegative();
    return Check.named("thermal.coolant-flow", "flow of " + coolant.name() + " for its rise")
        .source(Source.PHYSICS)
        .basis(Basis.DATA_SHEET.and(coolant.basis()))
        .note("the pump's flow in this loop, cold as well as warm: cold coolant is thick")
        .atLeast(
            Figure.ofSi(deliveredM3PerS, LITRE_PER_MINUTE),
            Figure.ofSi(volumeFlowM3PerS(rise, Recorder.OFF), LITRE_PER_MINUTE));
  }

  private double volumeFlowM3PerS(Quantity<TemperatureDifference> rise, Recorder recorder) {
    double riseK = Require.quantity("CoolantLoad.rise", rise, KELVIN_OF_DIFFERENCE).positive();
    double flowM3PerS = heatW() / (volumetricHeatJPerM3K() * riseK);
    if (recorder.isOn()) {
      recordProperties(recorder);
      recorder
          .step("V̇", "flow by volume")
          .formula("P/(ρ·c·ΔT)")
          .with("P", Figure.of(heat, WATT))
          .with("ρ", Figure.of(coolant.density(meanTemperature), KILOGRAM_PER_CUBIC_METRE))
          .with("c", Figure.of(coolant.specificHeat(meanTemperature), JOULE_PER_KILOGRAM_KELVIN))
          .with("ΔT", riseK, KELVIN_OF_DIFFERENCE)
          .basis(coolant.basis())
          .gives(flowM3PerS, LITRE_PER_MINUTE);
    }
    return flowM3PerS;
  }

  private void recordProperties(Recorder recorder) {
    Figure mean = Figure.of(meanTemperature, CELSIUS);
    recorder
        .step("ρ", "density of " + coolant.name())
        .formula("ρ(T)")
        .with("T", mean)
        .basis(coolant.basis())
        .source(coolant.source())
        .gives(Figure.of(coolant.density(meanTemperature), KILOGRAM_PER_CUBIC_METRE));
    recorder
        .step("c", "specific heat of " + coolant.name())
        .formula("c(T)")
        .with("T", mean)
        .basis(coolant.basis())
        .source(coolant.source())
        .gives(Figure.of(coolant.specificHeat(meanTemperature), JOULE_PER_KILOGRAM_KELVIN));
  }

  private double heatW() {
    return Kind.POWER.siValueOf(heat);
  }

  private double volumetricHeatJPerM3K() {
    return coolant.volumetricHeatJPerM3K(meanTemperature);
  }

  /**
   * Heat, liquid and temperature.
   *
   * @return for example {@code 3 kW in ethylene glycol 50 % at 20 °C}
   */
  @Override
  public String toString() {
    return heat + " in " + coolant + " at " + meanTemperature;
  }
}
