package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** The temperature at which a conductor settles under a steady current. Immutable. */
public final class SteadyState implements HeatingResult, Serializable {
  private static final long serialVersionUID = 1L;

  private final double currentA;
  private final double conductorK;
  private final double surfaceK;
  private final double heatWPerM;
  private final double radiationWPerM;

  SteadyState(double currentA, double conductorK, double surfaceK, HeatFlow flow) {
    this.currentA = currentA;
    this.conductorK = conductorK;
    this.surfaceK = surfaceK;
    this.heatWPerM = flow.totalWPerM();
    this.radiationWPerM = flow.radiationWPerM();
  }

  /** Heat made per metre, and the part that leaves by radiation. */
  record HeatFlow(double totalWPerM, double radiationWPerM) {}

  /**
   * The current.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> current() {
    return AMPERE.of(currentA);
  }

  /**
   * Temperature of the conductor.
   *
   * @return absolute
   */
  public Quantity<Temperature> conductor() {
    return Kind.TEMPERATURE.ofSi(conductorK);
  }

  /**
   * Temperature of the outer surface: what a hand would touch.
   *
   * @return absolute
   */
  public Quantity<Temperature> surface() {
    return Kind.TEMPERATURE.ofSi(surfaceK);
  }

  /**
   * Heat made by one conductor over a length.
   *
   * @param length &gt; 0
   * @return in W
   * @throws org.wattwright.units.InvalidInputException if the length is not positive
   */
  public Quantity<Power> heatOver(Quantity<Length> length) {
    double lengthM = Require.quantity("SteadyState.length", length, METRE).positive();
    return WATT.of(heatWPerM * lengthM);
  }

  /**
   * Share of the heat that leaves by radiation; the rest leaves by convection.
   *
   * @return share of the heat made; negative where hot surroundings heat the conductor
   */
  public double radiationShare() {
    return heatWPerM > 0 ? radiationWPerM / heatWPerM : 0;
  }

  double conductorK() {
    return conductorK;
  }

  double surfaceK() {
    return surfaceK;
  }

  double heatWPerM() {
    return heatWPerM;
  }

  @Override
  public <T> T fold(Function<SteadyState, T> ifSteady, Function<NoSteadyState, T> ifNot) {
    return ifSteady.apply(this);
  }

  @Override
  public boolean isSteady() {
    return true;
  }

  /**
   * Current and temperatures.
   *
   * @return for example {@code 150 A: conductor 71.3 °C, surface 66 °C}
   */
  @Override
  public String toString() {
    return current()
        + ": conductor "
        + Measures.format(conductor(), CELSIUS, 1)
        + ", surface "
        + Measures.format(surface(), CELSIUS, 1);
  }
}
