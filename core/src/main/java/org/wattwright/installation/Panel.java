package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * The sheet or plate a bolt goes through: bearing on the edge of the hole, and the washer pulled
 * through.
 *
 * <p>F_b,Rd = k₁·α_b·f_u·d·t/γ with α_b = min(e₁/(3·d₀), f_ub/f_u, 1) and k₁ = min(2.8·e₂/d₀ − 1.7,
 * 2.5); B_p,Rd = 0.6·π·D·t·f_u/γ with D of the washer, or of a spreader plate as far as that does
 * not fold. Source: EN 1993-1-8 cl. 3.6.1 Table 3.4. Because the load may come from any side, the
 * shorter edge distance stands for both.
 *
 * <p>Rust counts: give the thickness that is left. Immutable and thread-safe.
 */
public final class Panel implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Given<Quantity<Length>> thickness;
  private final Given<Quantity<Pressure>> strength;
  private final double thicknessM;
  private final double strengthPa;
  private final double holeM;
  private final double washerM;
  private final double edgeM;
  private final @Nullable SpreaderPlate spreader;

  private Panel(Data data) {
    this.thickness = data.thickness;
    this.strength = data.strength;
    this.thicknessM = Kind.LENGTH.siValueOf(thickness.value());
    this.strengthPa = Kind.PRESSURE.siValueOf(strength.value());
    this.holeM = data.holeM;
    this.washerM = data.washerM;
    this.edgeM = data.edgeM;
    this.spreader = data.spreader;
  }

  private record Data(
      Given<Quantity<Length>> thickness,
      Given<Quantity<Pressure>> strength,
      double holeM,
      double washerM,
      double edgeM,
      @Nullable SpreaderPlate spreader) {}

  /**
   * A sheet with a hole and a washer, far from any edge.
   *
   * @param thickness sound metal left, &gt; 0 mm
   * @param tensileStrength f_u, &gt; 0 MPa
   * @param hole diameter d₀, &gt; 0 mm
   * @param washer outer diameter, larger than the hole
   * @return the panel
   * @throws InvalidInputException if a value is outside its range
   */
  public static Panel of(
      Given<Quantity<Length>> thickness,
      Given<Quantity<Pressure>> tensileStrength,
      Quantity<Length> hole,
      Quantity<Length> washer) {
    Require.quantity("Panel.thickness", thickness.value(), MILLIMETRE).positive();
    Require.quantity("Panel.tensileStrength", tensileStrength.value(), MEGAPASCAL).positive();
    double holeM = Require.quantity("Panel.hole", hole, MILLIMETRE).positive();
    double washerM = Require.quantity("Panel.washer", washer, MILLIMETRE).positive();
    if (!(washerM > holeM)) {
      throw InvalidInputException.of("Panel.washer", "> the hole of " + hole, washer.toString());
    }
    return new Panel(
        new Data(thickness, tensileStrength, holeM, washerM, Double.POSITIVE_INFINITY, null));
  }

  /**
   * The same panel with the distance from the middle of the hole to the nearest edge.
   *
   * @param distance more than half the hole
   * @return a new panel
   * @throws InvalidInputException if the hole would reach the edge
   */
  public Panel withEdgeDistance(Quantity<Length> distance) {
    double newEdgeM = Require.quantity("Panel.edgeDistance", distance, MILLIMETRE).positive();
    if (!(newEdgeM > holeM / 2)) {
      throw InvalidInputException.of(
          "Panel.edgeDistance",
          "> half the hole of " + MILLIMETRE.of(holeM * 1000),
          distance.toString());
    }
    return new Panel(new Data(thickness, strength, holeM, washerM, newEdgeM, spreader));
  }

  /**
   * The same panel with a spreader plate behind it.
   *
   * @param plate the plate
   * @return a new panel
   */
  public Panel withSpreader(SpreaderPlate plate) {
    Objects.requireNonNull(plate, "plate");
    return new Panel(new Data(thickness, strength, holeM, washerM, edgeM, plate));
  }

  /**
   * The spreader plate.
   *
   * @return empty if there is none
   */
  public Optional<SpreaderPlate> spreader() {
    return Optional.ofNullable(spreader);
  }

  /**
   * Diameter of the hole.
   *
   * @return in mm
   */
  public Quantity<Length> hole() {
    return MILLIMETRE.of(holeM * 1000);
  }

  /**
   * What thickness and strength rest on; the weaker.
   *
   * @return the basis
   */
  public Basis basis() {
    return Given.weakestOf(thickness, strength);
  }

  /**
   * Where the resistances come from.
   *
   * @return EN 1993-1-8
   */
  public static Source source() {
    return Source.standard("EN 1993-1-8", "cl. 3.6.1 Table 3.4");
  }

  /**
   * Bearing factor: α_b = min(e₁/(3·d₀), f_ub/f_u, 1).
   *
   * @param boltClass gives f_ub
   * @return above 0 and at most 1
   */
  public double bearingFactor(PropertyClass boltClass) {
    return Math.min(Math.min(edgeM / (3 * holeM), boltClass.nominalTensilePa() / strengthPa), 1);
  }

  /**
   * Bearing factor across the load: k₁ = min(2.8·e₂/d₀ − 1.7, 2.5), not below 0.
   *
   * @return 0 to 2.5
   */
  public double crossBearingFactor() {
    return Math.max(0, Math.min(2.8 * edgeM / holeM - 1.7, 2.5));
  }

  /**
   * Bearing resistance of the hole: F_b,Rd = k₁·α_b·f_u·d·t/γ.
   *
   * @param bolt the bolt in it
   * @return in N
   */
  public Quantity<Force> bearingResistance(Bolt bolt) {
    return Kind.FORCE.ofSi(bearingN(bolt));
  }

  /**
   * Pull at which washer or spreader plate comes through: B_p,Rd = 0.6·π·D·t·f_u/γ.
   *
   * @param bolt gives γ
   * @return in N
   */
  public Quantity<Force> pullOutResistance(Bolt bolt) {
    return Kind.FORCE.ofSi(pullOutN(bolt));
  }

  double bearingN(Bolt bolt) {
    return crossBearingFactor()
        * bearingFactor(bolt.propertyClass())
        * strengthPa
        * bolt.thread().diameterM()
        * thicknessM
        / bolt.partialFactor();
  }

  double pullOutN(Bolt bolt) {
    double washerN = punchingN(washerM, bolt);
    if (spreader == null) {
      return washerN;
    }
    double plateN = Math.min(punchingN(spreader.diameterM(), bolt), spreader.foldingN(washerM));
    return Math.max(washerN, plateN);
  }

  private double punchingN(double acrossM, Bolt bolt) {
    return 0.6 * Math.PI * acrossM * thicknessM * strengthPa / bolt.partialFactor();
  }

  double thicknessM() {
    return thicknessM;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Panel that
        && thickness.equals(that.thickness)
        && strength.equals(that.strength)
        && holeM == that.holeM
        && washerM == that.washerM
        && edgeM == that.edgeM
        && Objects.equals(spreader, that.spreader);
  }

  @Override
  public int hashCode() {
    return Objects.hash(thickness, strength, holeM, washerM, edgeM, spreader);
  }

  /**
   * Thickness and strength.
   *
   * @return for example {@code 1.5 mm, 270 MPa}
   */
  @Override
  public String toString() {
    String plate = spreader == null ? "" : ", spreader " + spreader.diameter();
    return thickness.value() + ", " + strength.value() + plate;
  }
}
