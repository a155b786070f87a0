package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KELVIN_OF_DIFFERENCE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.TemperatureDifference;

/** Collects the steps of a {@link SettingsLadder}; what is left out is NOT_CHECKED. */
public final class SettingsLadderBuilder {
  private final int seriesCells;
  private final Map<LadderStep, Double> stepsV = new EnumMap<>(LadderStep.class);
  private final Map<TemperatureStep, Double> stepsK = new EnumMap<>(TemperatureStep.class);
  private @Nullable Double measuringV;
  private @Nullable Double temperatureK;
  private double imbalanceV;
  private double chargerShare;
  private double inverterShare;
  private ToleranceMethod method = ToleranceMethod.WORST_CASE;
  private @Nullable CellLoad load;
  private Basis basis = Basis.DATA_SHEET;

  SettingsLadderBuilder(int seriesCells) {
    this.seriesCells = seriesCells;
  }

  /**
   * A step of the ladder.
   *
   * @param step which
   * @param perCell &gt; 0 V
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public SettingsLadderBuilder step(LadderStep step, Quantity<ElectricPotential> perCell) {
    String field = "SettingsLadder." + Objects.requireNonNull(step, "step");
    stepsV.put(step, Require.quantity(field, perCell, VOLT).positive());
    return this;
  }

  /**
   * A setting or limit of temperature.
   *
   * @param step which
   * @param value absolute temperature
   * @return this builder
   */
  public SettingsLadderBuilder temperature(TemperatureStep step, Quantity<Temperature> value) {
    String field = "SettingsLadder." + Objects.requireNonNull(step, "step");
    stepsK.put(step, Require.quantity(field, value, CELSIUS).any());
    return this;
  }

  /**
   * How far a cell's reading may be off, either way.
   *
   * @param value ≥ 0 mV
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public SettingsLadderBuilder measuringTolerance(Quantity<ElectricPotential> value) {
    measuringV = Require.quantity("SettingsLadder.measuringTolerance", value, VOLT).nonNegative();
    return this;
  }

  /**
   * How far a temperature reading may be from the worst cell, either way.
   *
   * @param value ≥ 0 K
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public SettingsLadderBuilder temperatureTolerance(Quantity<TemperatureDifference> value) {
    temperatureK =
        Require.quantity("SettingsLadder.temperatureTolerance", value, KELVIN_OF_DIFFERENCE)
            .nonNegative();
    return this;
  }

  /**
   * How far the outermost cell may lie from the average at the end of charge or discharge; none
   * unless told.
   *
   * @param value ≥ 0 mV
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public SettingsLadderBuilder imbalance(Quantity<ElectricPotential> value) {
    imbalanceV = Require.quantity("SettingsLadder.imbalance", value, VOLT).nonNegative();
    return this;
  }

  /**
   * How far the charger's voltage may be off, either way; not at all unless told.
   *
   * @param share 0 to 1
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public SettingsLadderBuilder chargerTolerance(double share) {
    chargerShare = Require.fraction("SettingsLadder.chargerTolerance", share);
    return this;
  }

  /**
   * How far the inverter's reading of the pack may be off, either way; not at all unless told.
   *
   * @param share 0 to 1
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public SettingsLadderBuilder inverterTolerance(double share) {
    inverterShare = Require.fraction("SettingsLadder.inverterTolerance", share);
    return this;
  }

  /**
   * How tolerances of two devices add up; worst case unless told. The imbalance always adds in
   * full, and so does the only tolerance between a trip and the cell's limit.
   *
   * @param value the method
   * @return this builder
   */
  public SettingsLadderBuilder method(ToleranceMethod value) {
    method = Objects.requireNonNull(value, "method");
    return this;
  }

  /**
   * The largest current near empty, which must not trip.
   *
   * @param value the loaded cell
   * @return this builder
   */
  public SettingsLadderBuilder load(CellLoad value) {
    load = Objects.requireNonNull(value, "load");
    return this;
  }

  /**
   * What limits and tolerances rest on; data sheet unless told.
   *
   * @param value the weakest of them
   * @return this builder
   */
  public SettingsLadderBuilder basis(Basis value) {
    basis = Objects.requireNonNull(value, "basis");
    return this;
  }

  /**
   * The ladder.
   *
   * @return an immutable ladder
   */
  public SettingsLadder build() {
    SettingsLadder.Tolerances tolerances =
        new SettingsLadder.Tolerances(
            measuringV, temperatureK, imbalanceV, chargerShare, inverterShare, method);
    return new SettingsLadder(
        new SettingsLadder.Fields(
            seriesCells, Map.copyOf(stepsV), Map.copyOf(stepsK), tolerances, load, basis));
  }
}
