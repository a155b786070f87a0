package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.CUBIC_CENTIMETRE;
import static org.wattwright.units.WorkshopUnits.GIGAPASCAL;
import static org.wattwright.units.WorkshopUnits.MEGAPASCAL;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Torque;

/**
 * A bracket or rail bent by a load: largest moment, stress and deflection of a slender beam.
 * Source: strength of materials. A bolted end is nearer to free to turn than to built in. Immutable
 * and thread-safe.
 *
 * @param section its cross-section, net where the moment is largest
 * @param length from the support to the load of a cantilever, else between the supports; &gt; 0 m
 * @param loading how it is held and loaded
 */
public record BracketBeam(BeamSection section, Quantity<Length> length, Loading loading)
    implements Serializable {
  /** How a beam is held and loaded: largest moment F·L/k, deflection F·L³/(j·E·I). */
  public enum Loading {
    /** Built in at one end, loaded at the other. */
    CANTILEVER(1, 3),
    /** Both ends free to turn, loaded in the middle. */
    FREE_ENDS_MIDDLE(4, 48),
    /** Both ends built in, loaded in the middle. */
    BUILT_IN_MIDDLE(8, 192),
    /** Both ends free to turn, loaded evenly; F is the whole load. */
    FREE_ENDS_EVEN(8, 384.0 / 5);

    private final double momentDivisor;
    private final double deflectionDivisor;

    Loading(double momentDivisor, double deflectionDivisor) {
      this.momentDivisor = momentDivisor;
      this.deflectionDivisor = deflectionDivisor;
    }
  }

  /** Structural steel, up to 16 mm thick. EN 10025-2, from memory. */
  public enum Steel {
    /** Yield strength 235 MPa. */
    S235(235),
    /** Yield strength 355 MPa. */
    S355(355);

    private final double yieldMpa;

    Steel(double yieldMpa) {
      this.yieldMpa = yieldMpa;
    }

    /**
     * Yield strength up to 16 mm.
     *
     * @return in MPa
     */
    public Quantity<Pressure> yieldStrength() {
      return MEGAPASCAL.of(yieldMpa);
    }
  }

  /**
   * Checks the length.
   *
   * @param section its cross-section
   * @param length &gt; 0 m
   * @param loading how it is held and loaded
   * @throws org.wattwright.units.InvalidInputException if the length is not positive
   */
  public BracketBeam {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(loading, "loading");
    Require.quantity("BracketBeam.length", length, METRE).positive();
    length = Measure.from(length, Kind.LENGTH);
  }

  /**
   * Largest bending moment.
   *
   * @param load ≥ 0 N
   * @return in N·m
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Torque> moment(Quantity<Force> load) {
    double loadN = Require.quantity("BracketBeam.load", load, NEWTON).nonNegative();
    return NEWTON_METRE.of(loadN * Kind.LENGTH.siValueOf(length) / loading.momentDivisor);
  }

  /**
   * Largest bending stress.
   *
   * @param load ≥ 0 N
   * @return in MPa
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Pressure> stress(Quantity<Force> load) {
    return section.stress(moment(load), NEWTON.of(0));
  }

  /**
   * Largest deflection.
   *
   * @param load ≥ 0 N
   * @param elasticity of the material, &gt; 0 GPa; 210 GPa for steel
   * @return in mm
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Quantity<Length> deflection(Quantity<Force> load, Quantity<Pressure> elasticity) {
    double loadN = Require.quantity("BracketBeam.load", load, NEWTON).nonNegative();
    double pa = Require.quantity("BracketBeam.elasticity", elasticity, GIGAPASCAL).positive();
    double lengthM = Kind.LENGTH.siValueOf(length);
    double stiffness = loading.deflectionDivisor * pa * section.secondMomentM4();
    return MILLIMETRE.of(loadN * lengthM * lengthM * lengthM / stiffness * 1000);
  }

  /**
   * {@code installation.bracket-bending}: stress against the yield strength.
   *
   * @param load ≥ 0 N
   * @param yield strength of the material, &gt; 0 MPa
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Check check(Quantity<Force> load, Quantity<Pressure> yield) {
    Require.quantity("BracketBeam.yield", yield, MEGAPASCAL).positive();
    return Check.named("installation.bracket-bending", "bending stress of " + section)
        .source(Source.standard("EN 10025-2", "yield strength").fromMemory())
        .safety()
        .atMost(Figure.of(stress(load), MEGAPASCAL), Figure.of(yield, MEGAPASCAL));
  }

  /**
   * The working of moment and stress.
   *
   * @param load ≥ 0 N
   * @return the worksheet
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Worksheet worksheet(Quantity<Force> load) {
    Worksheet.Recording sheet = Worksheet.record("Bending of " + section);
    sheet
        .step("M", "largest bending moment")
        .formula("F·L/k")
        .with("F", Figure.of(load, NEWTON))
        .with("L", Figure.of(length, METRE))
        .with("k", Figure.number(loading.momentDivisor))
        .gives(Figure.of(moment(load), NEWTON_METRE));
    sheet
        .step("σ", "largest bending stress")
        .formula("M/W")
        .with("M", Figure.of(moment(load), NEWTON_METRE))
        .with("W", Figure.ofSi(section.modulusM3(), CUBIC_CENTIMETRE))
        .gives(Figure.of(stress(load), MEGAPASCAL));
    return sheet.toWorksheet();
  }
}
