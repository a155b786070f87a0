package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOJOULE;
import static org.wattwright.units.WorkshopUnits.KILOJOULE_PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * A long descent at steady speed, held by the wheel brakes: the heat that goes into them and how
 * hot they get.
 *
 * <p>Heat: Q = m·g·H − F·s − P·t, not below zero, with drop H, distance s, mean resistance F of
 * rolling and air, and power P taken back by the drive. With a full or cold pack the drive takes
 * nothing back: P = 0, which is what a descent has unless told. A vehicle without an engine to slow
 * it needs this looked at.
 *
 * <p>Temperature of one axle's brakes with share b of the heat: C·dT/dt = b·Q/t − G·(T − T_air).
 * Source: energy balance; R. Limpert, Brake Design and Safety, chapter on continued braking.
 * Immutable and thread-safe.
 */
public final class Descent implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source LIMPERT =
      Source.literature("R. Limpert, Brake Design and Safety", "continued braking");

  private final DescentBuilder.Fields fields;

  Descent(DescentBuilder.Fields fields) {
    this.fields = fields;
  }

  /**
   * Starts to describe a descent.
   *
   * @return a builder
   */
  public static DescentBuilder builder() {
    return new DescentBuilder();
  }

  /**
   * The same descent with a full or cold pack, which takes nothing back.
   *
   * @return a new descent
   */
  public Descent withoutRegeneration() {
    return new Descent(fields.withRegenerationW(0));
  }

  /**
   * The same descent with another vehicle or load.
   *
   * @param mass of the laden vehicle, &gt; 0 kg
   * @return a new descent
   * @throws org.wattwright.units.InvalidInputException if the mass is not positive
   */
  public Descent withMass(Quantity<Mass> mass) {
    double massKg = Require.quantity("Descent.mass", mass, KILOGRAM).positive();
    return new Descent(fields.withMassKg(massKg));
  }

  /**
   * How long it takes.
   *
   * @return in s
   */
  public Quantity<Time> duration() {
    return Kind.TIME.ofSi(durationS());
  }

  private double durationS() {
    return fields.distanceM() / fields.speedMs();
  }

  /**
   * Heat that goes into the brakes of both axles.
   *
   * @return ≥ 0 J
   */
  public Quantity<Energy> heat() {
    return KILOJOULE.of(heatJ(Recorder.OFF) / 1000);
  }

  private double heatJ(Recorder recorder) {
    double heldJ =
        fields.massKg() * Si.GRAVITY_M_PER_S2 * fields.dropM()
            - fields.resistanceN() * fields.distanceM()
            - fields.regenerationW() * durationS();
    double heatJ = Math.max(0, heldJ);
    if (recorder.isOn()) {
      recorder
          .step("Q", "heat into the brakes, both axles")
          .formula("max(0 J, m·g·H - F·s - P·t)")
          .with("m", fields.massKg(), KILOGRAM)
          .with("g", Si.GRAVITY_M_PER_S2, METRE_PER_SECOND_SQUARED)
          .with("H", fields.dropM(), METRE)
          .with("F", fields.resistanceN(), NEWTON)
          .with("s", fields.distanceM(), METRE)
          .with("P", fields.regenerationW(), WATT)
          .with("t", durationS(), SECOND)
          .basis(Basis.DATA_SHEET)
          .source(LIMPERT)
          .gives(heatJ, KILOJOULE);
    }
    return heatJ;
  }

  /**
   * Temperature of one axle's brakes at the bottom.
   *
   * @param sink the brakes of the axle
   * @param share of the axle in the heat, 0 to 1; the brake force share
   * @return absolute temperature; an upper bound without cooling
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public Quantity<Temperature> temperature(BrakeHeatSink sink, double share) {
    return Kind.TEMPERATURE.ofSi(temperatureK(sink, share, Recorder.OFF));
  }

  private double temperatureK(BrakeHeatSink sink, double share, Recorder recorder) {
    Require.fraction("Descent.share", share);
    double heatJ = share * heatJ(recorder);
    double riseK = heatJ / sink.capacityJPerK() * retained(sink);
    double endK = fields.airK() + riseK;
    if (recorder.isOn()) {
      recorder
          .step("T", "temperature of the " + sink.axle() + " brakes at the bottom")
          .formula("T_air + b·Q/C·k, k = (1 - exp(-G·t/C))/(G·t/C), 1 without cooling")
          .with("T_air", fields.airK(), CELSIUS)
          .with("b", Figure.share(share))
          .with("Q", heatJ(Recorder.OFF), KILOJOULE)
          .with("C", sink.capacityJPerK(), KILOJOULE_PER_KELVIN)
          .with("G", sink.coolingWPerK(), WATT_PER_KELVIN)
          .with("t", durationS(), SECOND)
          .with("k", Figure.number(retained(sink)))
          .basis(Basis.DATA_SHEET)
          .source(LIMPERT)
          .gives(endK, CELSIUS);
    }
    return endK;
  }

  /** Share of the heat still in the body at the end: (1 − e^−x)/x with x = G·t/C. */
  private double retained(BrakeHeatSink sink) {
    double x = sink.coolingWPerK() * durationS() / sink.capacityJPerK();
    return x == 0 ? 1 : -Math.expm1(-x) / x;
  }

  /**
   * Temperature at the bottom against what lining and fluid stand.
   *
   * @param sink the brakes of the axle
   * @param share of the axle in the heat, 0 to 1
   * @param limit absolute temperature that the lining stands without fading
   * @param basis of sink and limit
   * @return the check {@code brake.descent.front} or {@code brake.descent.rear}
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public Check check(BrakeHeatSink sink, double share, Quantity<Temperature> limit, Basis basis) {
    String pack = fields.regenerationW() > 0 ? "with regeneration" : "full or cold pack";
    return Check.named(
            "brake.descent." + sink.axle(), sink.axle() + " brakes on a long descent, " + pack)
        .source(Source.dataSheet("brake lining"))
        .basis(basis)
        .estimated(
            basis == Basis.ESTIMATED
                ? new String[] {"heat capacity and share of the " + sink.axle() + " brakes"}
                : new String[0])
        .safety()
        .atMost(Figure.of(temperature(sink, share), CELSIUS), Figure.of(limit, CELSIUS));
  }

  /**
   * Temperature at the bottom against what the lining stands, with the end of an estimate that gets
   * hotter.
   *
   * @param heat the brakes of the axle
   * @param share of the axle in the heat, 0 to 1
   * @param rests what the share rests on
   * @return the check {@code brake.descent.front} or {@code brake.descent.rear}
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public Check check(BrakeHeat heat, double share, Basis rests) {
    BrakeHeatSink hottest = hottest(heat, share);
    return check(hottest, share, heat.limit(), heat.basis().and(rests));
  }

  private BrakeHeatSink hottest(BrakeHeat heat, double share) {
    return heat.extremes().stream()
        .max((a, b) -> Kind.TEMPERATURE.compare(temperature(a, share), temperature(b, share)))
        .orElseThrow();
  }

  /**
   * The working of that check.
   *
   * @param heat the brakes of the axle
   * @param share of the axle in the heat, 0 to 1
   * @return the worksheet, with the end of an estimate that gets hotter
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public Worksheet worksheet(BrakeHeat heat, double share) {
    return worksheet(hottest(heat, share), share);
  }

  /**
   * The working.
   *
   * @param sink the brakes of the axle
   * @param share of the axle in the heat, 0 to 1
   * @return the worksheet
   */
  public Worksheet worksheet(BrakeHeatSink sink, double share) {
    Worksheet.Recording recording = Worksheet.record("Long descent, " + sink.axle() + " brakes");
    temperatureK(sink, share, recording);
    return recording.toWorksheet();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof Descent that && fields.equals(that.fields));
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Drop and distance.
   *
   * @return for example {@code 400 m down over 6000 m, 600 s}
   */
  @Override
  public String toString() {
    return Figure.ofSi(fields.dropM(), METRE)
        + " down over "
        + Figure.ofSi(fields.distanceM(), METRE)
        + ", "
        + Figure.of(duration(), Kind.TIME);
  }
}
