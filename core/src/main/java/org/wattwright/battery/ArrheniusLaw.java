package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.MolarEnergy;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * How a thermally activated rate grows, and a resistance falls, with temperature.
 *
 * <p>R(T) = R_ref·e^((Ea/Rg)·(1/T − 1/T_ref)), temperatures in kelvin, Rg = 8.314462618 J/(mol·K)
 * (CODATA 2018). One activation energy rarely spans −25 °C … 45 °C: measured cells are steeper in
 * the cold, so fit it to the range that matters.
 *
 * <p>Immutable and thread-safe.
 *
 * @param activationEnergy Ea ≥ 0, up to 200 kJ/mol
 */
public record ArrheniusLaw(Quantity<MolarEnergy> activationEnergy) implements Serializable {
  /** Molar gas constant, CODATA 2018 (exact). */
  private static final double GAS_CONSTANT_J_PER_MOL_K = 8.31446261815324;

  private static final int COLDEST_CELSIUS = -40;
  private static final int HOTTEST_CELSIUS = 60;

  /**
   * Checks the range.
   *
   * @param activationEnergy Ea ≥ 0, up to 200 kJ/mol
   * @throws InvalidInputException if outside the range
   */
  public ArrheniusLaw {
    Require.quantity(
            "ArrheniusLaw.activationEnergy", activationEnergy, WorkshopUnits.KILOJOULE_PER_MOLE)
        .between(0, 200);
    activationEnergy = Measure.from(activationEnergy, Kind.MOLAR_ENERGY);
  }

  /**
   * From the activation energy.
   *
   * @param activationEnergy Ea ≥ 0, up to 200 kJ/mol
   * @return the law
   */
  public static ArrheniusLaw of(Quantity<MolarEnergy> activationEnergy) {
    return new ArrheniusLaw(activationEnergy);
  }

  /**
   * A resistance measured at a temperature.
   *
   * @param resistance &gt; 0 Ω
   * @param temperature absolute
   */
  public record Point(Quantity<ElectricResistance> resistance, Quantity<Temperature> temperature)
      implements Serializable {
    /**
     * Checks the resistance.
     *
     * @param resistance &gt; 0 Ω
     * @param temperature absolute
     * @throws InvalidInputException if the resistance is not positive
     */
    public Point {
      Require.quantity("ArrheniusLaw.resistance", resistance, WorkshopUnits.MILLIOHM).positive();
      resistance = Measure.from(resistance, Kind.RESISTANCE);
      temperature = Measure.from(temperature, Kind.TEMPERATURE);
    }
  }

  /**
   * The law through two measured resistances: Ea = Rg·ln(R_a/R_b)/(1/T_a − 1/T_b).
   *
   * @param cold at the lower temperature
   * @param warm at the higher
   * @return the law
   * @throws InvalidInputException if the temperatures are not in that order, or the resistance does
   *     not fall
   */
  public static ArrheniusLaw through(Point cold, Point warm) {
    if (!(Kind.TEMPERATURE.compare(cold.temperature(), warm.temperature()) < 0)) {
      throw InvalidInputException.of(
          "ArrheniusLaw.cold.temperature",
          "< " + warm.temperature(),
          cold.temperature().toString());
    }
    double ratio =
        Kind.RESISTANCE.siValueOf(cold.resistance()) / Kind.RESISTANCE.siValueOf(warm.resistance());
    double inverseK = inverseDifference(cold.temperature(), warm.temperature());
    return of(Kind.MOLAR_ENERGY.ofSi(GAS_CONSTANT_J_PER_MOL_K * Math.log(ratio) / inverseK));
  }

  private static double inverseDifference(
      Quantity<Temperature> temperature, Quantity<Temperature> reference) {
    return 1 / Kind.TEMPERATURE.siValueOf(temperature) - 1 / Kind.TEMPERATURE.siValueOf(reference);
  }

  /**
   * Resistance at a temperature against that at a reference.
   *
   * @param temperature absolute
   * @param reference absolute
   * @return above 1 where it is colder than the reference
   */
  public double resistanceFactor(
      Quantity<Temperature> temperature, Quantity<Temperature> reference) {
    double energyJPerMol = Kind.MOLAR_ENERGY.siValueOf(activationEnergy);
    return Math.exp(
        energyJPerMol / GAS_CONSTANT_J_PER_MOL_K * inverseDifference(temperature, reference));
  }

  /**
   * Rate of a process, such as ageing, at a temperature against that at a reference.
   *
   * @param temperature absolute
   * @param reference absolute
   * @return above 1 where it is warmer than the reference
   */
  public double rateFactor(Quantity<Temperature> temperature, Quantity<Temperature> reference) {
    return 1 / resistanceFactor(temperature, reference);
  }

  /**
   * A resistance table over temperature, one point for every kelvin from −40 °C to 60 °C, straight
   * between (off by less than 0.2 % up to 50 kJ/mol), held beyond.
   *
   * @param known a resistance at a temperature
   * @return the table, the same at every state of charge
   */
  public ResistanceTable table(Point known) {
    double ohm = Kind.RESISTANCE.siValueOf(known.resistance());
    List<ResistanceTable.At> points = new ArrayList<>();
    for (int celsius = COLDEST_CELSIUS; celsius <= HOTTEST_CELSIUS; celsius++) {
      Quantity<Temperature> temperature = Measures.celsius(celsius);
      double factor = resistanceFactor(temperature, known.temperature());
      points.add(new ResistanceTable.At(temperature, Kind.RESISTANCE.ofSi(ohm * factor)));
    }
    return ResistanceTable.overTemperature(StateOfCharge.EMPTY, points);
  }
}
