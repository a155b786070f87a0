package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.WATT_HOUR;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Where the energy of the battery went, part by part; the parts add up to what the cells gave.
 *
 * <p>Immutable and thread-safe.
 */
public final class EnergyBalance implements Serializable {
  private static final long serialVersionUID = 1L;

  private final EnumMap<EnergyPart, Double> partsJ;
  private final double batteryJ;
  private final double returnedJ;

  EnergyBalance(Map<EnergyPart, Double> partsJ, double batteryJ, double returnedJ) {
    this.partsJ = new EnumMap<>(partsJ);
    this.batteryJ = batteryJ;
    this.returnedJ = returnedJ;
  }

  /**
   * Energy of one part.
   *
   * @param part the part
   * @return in kW·h
   */
  public Quantity<Energy> of(EnergyPart part) {
    return Kind.ENERGY.ofSi(partJ(part));
  }

  /**
   * What the cells gave at their open-circuit voltage, what they took back counted against it:
   * ∫OCV·I dt.
   *
   * @return in kW·h; the sum of all parts within rounding
   */
  public Quantity<Energy> battery() {
    return Kind.ENERGY.ofSi(batteryJ);
  }

  /**
   * What passed the terminals, out less in: ∫U·I dt, the battery's energy less its own losses.
   *
   * @return in kW·h
   */
  public Quantity<Energy> terminals() {
    return Kind.ENERGY.ofSi(terminalJ());
  }

  /**
   * Sum of all parts.
   *
   * @return in kW·h
   */
  public Quantity<Energy> sum() {
    return Kind.ENERGY.ofSi(Stream.of(EnergyPart.values()).mapToDouble(this::partJ).sum());
  }

  /**
   * What flowed back into the terminals while braking.
   *
   * @return in kW·h, ≥ 0
   */
  public Quantity<Energy> returned() {
    return Kind.ENERGY.ofSi(returnedJ);
  }

  private double partJ(EnergyPart part) {
    return partsJ.getOrDefault(part, 0.0);
  }

  double terminalJ() {
    return batteryJ - partJ(EnergyPart.PACK);
  }

  void record(Recorder recorder, Basis basis) {
    StringBuilder formula = new StringBuilder();
    StepBuilder total = recorder.step("E", "energy of the battery, sum of its parts").basis(basis);
    int number = 0;
    for (EnergyPart part : EnergyPart.values()) {
      String symbol = "E_" + ++number;
      formula.append(formula.length() == 0 ? "" : " + ").append(symbol);
      total.with(symbol, partJ(part), WATT_HOUR);
      recorder
          .step(symbol, part.toString())
          .formula("sum over the steps")
          .basis(basis)
          .gives(partJ(part), WATT_HOUR);
    }
    total.formula(formula.toString()).gives(batteryJ, WATT_HOUR);
  }

  /**
   * Parts with their energies and shares.
   *
   * @return a Markdown table, ending with a line feed
   */
  public String toMarkdown() {
    MarkdownTable table = MarkdownTable.withColumns("part", "energy", "share");
    for (EnergyPart part : EnergyPart.values()) {
      table.row(part.toString(), text(partJ(part)), share(partJ(part)));
    }
    table.row("battery", text(batteryJ), share(batteryJ));
    return table.toText();
  }

  private static String text(double energyJ) {
    return Measures.format(Kind.ENERGY.ofSi(energyJ), WATT_HOUR, 1);
  }

  private String share(double energyJ) {
    return batteryJ == 0
        ? ""
        : Figure.share(Math.rint(energyJ / batteryJ * 1000) / 1000).toString();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EnergyBalance that
        && partsJ.equals(that.partsJ)
        && batteryJ == that.batteryJ
        && returnedJ == that.returnedJ;
  }

  @Override
  public int hashCode() {
    return partsJ.hashCode();
  }

  /**
   * Energy of the battery and what flowed back.
   *
   * @return for example {@code 1432.1 W·h from the battery, 210.4 W·h returned}
   */
  @Override
  public String toString() {
    return text(batteryJ) + " from the battery, " + text(returnedJ) + " returned";
  }
}
