package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * The ladder of voltage settings: charger end &lt; warning &lt; trip &lt; cell maximum, and the
 * same downward, each step far enough from the next for the tolerances of both.
 *
 * <p>Upward: highest cell at the end of charge U_end·(1 + charger tolerance) + imbalance, as read
 * plus the measuring tolerance, stays below the warning; trip plus measuring tolerance stays within
 * the cell maximum. Downward alike with the drive's cut-back. Source: interval arithmetic; the
 * order is common practice.
 *
 * <pre>{@code
 * SettingsLadder.of(96).step(LadderStep.CELL_MAXIMUM, volts(4.25)).step(LadderStep.HIGH_TRIP, volts(4.22))
 *     .measuringTolerance(millivolts(10)).build().checks()
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class SettingsLadder implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Fields fields;

  record Tolerances(
      @Nullable Double measuringV,
      @Nullable Double temperatureK,
      double imbalanceV,
      double chargerShare,
      double inverterShare,
      ToleranceMethod method)
      implements Serializable {}

  record Fields(
      int seriesCells,
      Map<LadderStep, Double> stepsV,
      Map<TemperatureStep, Double> stepsK,
      Tolerances tolerances,
      @Nullable CellLoad load,
      Basis basis)
      implements Serializable {}

  SettingsLadder(Fields fields) {
    this.fields = fields;
  }

  /**
   * Starts a ladder.
   *
   * @param seriesCells cell groups in series, 1 to 1000
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public static SettingsLadderBuilder of(int seriesCells) {
    return new SettingsLadderBuilder(
        Require.count("SettingsLadder.seriesCells", seriesCells, 1, 1000));
  }

  /**
   * Cell groups in series.
   *
   * @return 1 to 1000
   */
  public int seriesCells() {
    return fields.seriesCells;
  }

  /**
   * A step, by the cell.
   *
   * @param step which
   * @return in V; empty if not told
   */
  public Optional<Quantity<ElectricPotential>> perCell(LadderStep step) {
    return stepV(step).map(VOLT::of);
  }

  /**
   * A step, by the pack: by the cell times the cells in series.
   *
   * @param step which
   * @return in V; empty if not told
   */
  public Optional<Quantity<ElectricPotential>> perPack(LadderStep step) {
    return stepV(step).map(v -> VOLT.of(v * fields.seriesCells));
  }

  /**
   * A setting or limit of temperature.
   *
   * @param step which
   * @return absolute; empty if not told
   */
  public Optional<Quantity<Temperature>> temperature(TemperatureStep step) {
    return Optional.ofNullable(fields.stepsK.get(step)).map(Kind.TEMPERATURE::ofSi);
  }

  Optional<Double> stepV(LadderStep step) {
    return Optional.ofNullable(fields.stepsV.get(step));
  }

  /**
   * Highest voltage that the charger may put out: U_end·(1 + tolerance) for the pack.
   *
   * @return in V; empty if the charger end is not told
   */
  public Optional<Quantity<ElectricPotential>> highestChargerOutput() {
    return stepV(LadderStep.CHARGER_END)
        .map(v -> VOLT.of(fields.seriesCells * v * (1 + fields.tolerances.chargerShare)));
  }

  /**
   * Highest true cell at the end of charge: U_end·(1 + tolerance) + imbalance.
   *
   * @return in V; empty if the charger end is not told
   */
  public Optional<Quantity<ElectricPotential>> highestCellAtChargeEnd() {
    return stepV(LadderStep.CHARGER_END)
        .map(v -> VOLT.of(v * (1 + fields.tolerances.chargerShare) + imbalanceV()));
  }

  /**
   * Highest reading at the end of charge, all tolerances stacked.
   *
   * @return in V; empty if charger end or measuring tolerance are not told
   */
  public Optional<Quantity<ElectricPotential>> highestReadingAtChargeEnd() {
    Double measuringV = fields.tolerances.measuringV;
    Optional<Double> endV = stepV(LadderStep.CHARGER_END);
    return measuringV == null || endV.isEmpty()
        ? Optional.empty()
        : Optional.of(VOLT.of(readingAtChargeEndV(endV.get(), measuringV, Recorder.OFF)));
  }

  double readingAtChargeEndV(double endV, double measuringV, Recorder recorder) {
    double chargerV = endV * fields.tolerances.chargerShare;
    double readV = endV + imbalanceV() + fields.tolerances.method.combined(chargerV, measuringV);
    if (recorder.isOn()) {
      recorder
          .step("U_read", "highest reading at the end of charge")
          .formula(stacked("U_end", "+"))
          .with("U_end", endV, VOLT)
          .with("t_c", chargerV, VOLT)
          .with("ΔU", imbalanceV(), VOLT)
          .with("t_m", measuringV, VOLT)
          .basis(fields.basis)
          .gives(readV, VOLT);
    }
    return readV;
  }

  /**
   * Lowest reading when the drive has cut back to nothing, all tolerances stacked.
   *
   * @return in V; empty if cut-back or measuring tolerance are not told
   */
  public Optional<Quantity<ElectricPotential>> lowestReadingAtCutBack() {
    Double measuringV = fields.tolerances.measuringV;
    Optional<Double> cutV = stepV(LadderStep.CUT_BACK);
    return measuringV == null || cutV.isEmpty()
        ? Optional.empty()
        : Optional.of(VOLT.of(readingAtCutBackV(cutV.get(), measuringV, Recorder.OFF)));
  }

  double readingAtCutBackV(double cutV, double measuringV, Recorder recorder) {
    double inverterV = cutV * fields.tolerances.inverterShare;
    double readV = cutV - imbalanceV() - fields.tolerances.method.combined(inverterV, measuringV);
    if (recorder.isOn()) {
      recorder
          .step("U_low", "lowest reading when the drive has cut back")
          .formula(stacked("U_cut", "-"))
          .with("U_cut", cutV, VOLT)
          .with("t_c", inverterV, VOLT)
          .with("ΔU", imbalanceV(), VOLT)
          .with("t_m", measuringV, VOLT)
          .basis(fields.basis)
          .gives(readV, VOLT);
    }
    return readV;
  }

  private String stacked(String base, String sign) {
    boolean worst = fields.tolerances.method == ToleranceMethod.WORST_CASE;
    return worst
        ? base + " " + sign + " t_c " + sign + " ΔU " + sign + " t_m"
        : base + " " + sign + " ΔU " + sign + " √(t_c² + t_m²)";
  }

  private double imbalanceV() {
    return fields.tolerances.imbalanceV;
  }

  /**
   * The verdicts, steps from the top down, then temperatures.
   *
   * <p>Codes: {@code installation.high-trip-cell}, {@code installation.high-warning-trip}, {@code
   * installation.charge-end-warning}, {@code installation.cut-back-warning}, {@code
   * installation.low-warning-trip}, {@code installation.low-trip-cell}, {@code
   * installation.low-trip-load}, {@code installation.cold-charge-inhibit}, {@code
   * installation.hot-trip}.
   *
   * @return nine checks; NOT_CHECKED where a step or tolerance is missing
   */
  public List<Check> checks() {
    return new LadderChecks(this).all();
  }

  /**
   * What to set on every device.
   *
   * @return the sheet, with what is told
   */
  public SettingsSheet toSheet() {
    return new LadderSheet(this).toSheet();
  }

  /**
   * The working of the stacked tolerances.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    return new LadderSheet(this).toWorksheet();
  }

  Fields fields() {
    return fields;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SettingsLadder that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Cells and number of steps told.
   *
   * @return for example {@code ladder of 96 cells, 8 of 8 steps}
   */
  @Override
  public String toString() {
    return "ladder of "
        + fields.seriesCells
        + " cells, "
        + fields.stepsV.size()
        + " of "
        + LadderStep.values().length
        + " steps";
  }
}
