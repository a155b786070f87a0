package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CUBIC_METRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM_PER_CUBIC_METRE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Density;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.VolumeFlow;

/**
 * A water-to-air heat exchanger, such as the car's own heater matrix fed by an electric heater: P =
 * ε·C_air·(T_w − T_a), the air being the smaller stream.
 *
 * <p>Source: effectiveness method. Immutable and thread-safe.
 *
 * @param effectiveness 0 to 1, from a data sheet or a measurement at this flow
 * @param air flow of air, ≥ 0
 * @param airDensity of the air where its flow is measured, &gt; 0
 */
public record HeaterCore(
    double effectiveness, Quantity<VolumeFlow> air, Quantity<Density> airDensity)
    implements Serializable {
  private static final double DENSITY_AT_20_C_KG_PER_M3 = 1.2041;
  private static final Source SOURCE =
      Source.literature("effectiveness method", "air is the smaller capacity stream");

  /**
   * Checks the range.
   *
   * @param effectiveness 0 to 1
   * @param air ≥ 0
   * @param airDensity &gt; 0
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public HeaterCore {
    Require.fraction("HeaterCore.effectiveness", effectiveness);
    Require.quantity("HeaterCore.air", air, CUBIC_METRE_PER_HOUR).nonNegative();
    Require.quantity("HeaterCore.airDensity", airDensity, KILOGRAM_PER_CUBIC_METRE).positive();
    air = Measure.from(air, Kind.VOLUME_FLOW);
    airDensity = Measure.from(airDensity, Kind.DENSITY);
  }

  /**
   * A heat exchanger with air measured at 20 °C, 1.2041 kg/m³.
   *
   * @param effectiveness 0 to 1
   * @param air ≥ 0
   * @return the heat exchanger
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static HeaterCore of(double effectiveness, Quantity<VolumeFlow> air) {
    return new HeaterCore(effectiveness, air, Kind.DENSITY.ofSi(DENSITY_AT_20_C_KG_PER_M3));
  }

  /**
   * Heat into the air.
   *
   * @param water inlet temperature of the water
   * @param airIn inlet temperature of the air
   * @return negative if the water is the colder
   */
  public Quantity<Power> heat(Quantity<Temperature> water, Quantity<Temperature> airIn) {
    return Kind.POWER.ofSi(heatW(water, airIn, Recorder.OFF));
  }

  /**
   * Temperature of the air that leaves: T_a + ε·(T_w − T_a).
   *
   * @param water inlet temperature of the water
   * @param airIn inlet temperature of the air
   * @return absolute
   */
  public Quantity<Temperature> airOut(Quantity<Temperature> water, Quantity<Temperature> airIn) {
    double airK = Kind.TEMPERATURE.siValueOf(airIn);
    return Kind.TEMPERATURE.ofSi(airK + effectiveness * (Kind.TEMPERATURE.siValueOf(water) - airK));
  }

  /**
   * The working of the heat.
   *
   * @param water inlet temperature of the water
   * @param airIn inlet temperature of the air
   * @return the steps as computed
   */
  public Worksheet worksheet(Quantity<Temperature> water, Quantity<Temperature> airIn) {
    Worksheet.Recording recording =
        Worksheet.record("Heater core with water at " + water + ", air at " + airIn);
    heatW(water, airIn, recording);
    return recording.toWorksheet();
  }

  private double heatW(
      Quantity<Temperature> water, Quantity<Temperature> airIn, Recorder recorder) {
    double riseK = Kind.TEMPERATURE.siValueOf(water) - Kind.TEMPERATURE.siValueOf(airIn);
    double rateWPerK =
        Kind.VOLUME_FLOW.siValueOf(air)
            * Kind.DENSITY.siValueOf(airDensity)
            * Air.SPECIFIC_HEAT_J_PER_KG_K;
    double heatW = effectiveness * rateWPerK * riseK;
    if (recorder.isOn()) {
      recorder
          .step("P", "heat into the air")
          .formula("ε·V̇·ρ·c_p·(T_w − T_a)")
          .with("ε", Figure.number(effectiveness))
          .with("V̇", Figure.of(air, CUBIC_METRE_PER_HOUR))
          .with("ρ", Figure.of(airDensity, KILOGRAM_PER_CUBIC_METRE))
          .with("(T_w − T_a)", riseK, KELVIN_OF_DIFFERENCE)
          .source(SOURCE)
          .gives(heatW, WATT);
    }
    return heatW;
  }

  /**
   * Effectiveness and flow.
   *
   * @return for example {@code 0.75 with 200 m³/h of air}
   */
  @Override
  public String toString() {
    return effectiveness + " with " + air + " of air";
  }
}
