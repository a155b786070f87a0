package org.wattwright.battery;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * Sourced estimates for cells whose data sheet is silent; each is asked for by name and marked.
 *
 * <p>Estimates have wide bands: measure wherever you can.
 */
public final class CellEstimates {
  private static final Source LFP_DATA =
      Source.literature(
          "G. L. Plett, Battery Management Systems I (2015)", "released data of a 2 Ah LFP cell");

  /** Ratio of resistance to that at 25 °C, 1 s steps; from {@link #LFP_DATA}. */
  private static final double[][] COLD_FACTORS = {
    {-25, 12.16}, {-5, 2.90}, {5, 1.767}, {15, 1.251}, {25, 1}, {35, 0.868}, {45, 0.770}
  };

  private CellEstimates() {}

  /**
   * Resistance for seconds at 25 °C, new, from the capacity: R ≈ k/Q.
   *
   * <p>k = 50 mΩ·A·h (20 … 100) for lithium, 22 mΩ·A·h (15 … 45) for lead-acid.
   *
   * <p>Source: common practice; the 2 Ah LFP cell of Plett (2015) has 21 mΩ·A·h. Lead-acid: J.
   * Larminie, J. Lowry, Electric Vehicle Technology Explained.
   *
   * @param chemistry the chemistry
   * @param capacity &gt; 0 A·h
   * @return the estimate with its band
   * @throws org.wattwright.units.InvalidInputException if the capacity is not positive
   */
  public static Estimate<ElectricResistance> resistance(
      Chemistry chemistry, Quantity<ElectricCharge> capacity) {
    double capacityAh =
        Require.quantity("capacity", capacity, WorkshopUnits.AMPERE_HOUR).positive() / 3600;
    boolean leadAcid = chemistry == Chemistry.LEAD_ACID;
    double productMilliohmAh = leadAcid ? 22 : 50;
    Estimate.Band band = leadAcid ? new Estimate.Band(0.7, 2) : new Estimate.Band(0.4, 2);
    Source source =
        leadAcid
            ? Source.literature(
                "J. Larminie, J. Lowry, Electric Vehicle Technology Explained", "R = 0.022/C10")
            : Source.commonPractice("resistance times capacity about 50 mΩ·A·h");
    return Estimate.of(
        "cell resistance",
        Measures.milliohms(productMilliohmAh / capacityAh),
        Kind.RESISTANCE,
        band,
        source);
  }

  /**
   * Resistance over temperature from a single value at 25 °C, by the measured course of an LFP
   * cell: 12 times at −25 °C, 2.9 times at −5 °C, 0.77 times at 45 °C.
   *
   * <p>Source: G. L. Plett, Battery Management Systems I (2015), released data of a 2 Ah LFP cell.
   *
   * @param at25Celsius resistance at 25 °C, &gt; 0 Ω
   * @return a table over temperature, marked as estimated
   * @throws org.wattwright.units.InvalidInputException if the resistance is not positive
   */
  public static Given<ResistanceTable> resistanceOverTemperature(
      Quantity<ElectricResistance> at25Celsius) {
    double ohm = Require.quantity("resistance", at25Celsius, WorkshopUnits.MILLIOHM).positive();
    return Given.estimated(
        ResistanceTable.overTemperature(
            StateOfCharge.EMPTY,
            java.util.Arrays.stream(COLD_FACTORS)
                .map(
                    row ->
                        new ResistanceTable.At(celsius(row[0]), Kind.RESISTANCE.ofSi(ohm * row[1])))
                .toList()),
        LFP_DATA);
  }

  /**
   * Resistance for milliseconds from the resistance for seconds: 0.6 times (0.3 … 1).
   *
   * <p>Source: common practice. For the highest fault current take the low end.
   *
   * @param forSeconds resistance for seconds at 25 °C, &gt; 0 Ω
   * @return the estimate with its band
   * @throws org.wattwright.units.InvalidInputException if the resistance is not positive
   */
  public static Estimate<ElectricResistance> ohmicResistance(
      Quantity<ElectricResistance> forSeconds) {
    double ohm = Require.quantity("resistance", forSeconds, WorkshopUnits.MILLIOHM).positive();
    return Estimate.of(
        "ohmic resistance",
        Kind.RESISTANCE.ofSi(0.6 * ohm),
        Kind.RESISTANCE,
        new Estimate.Band(0.5, 1 / 0.6),
        Source.commonPractice("ohmic part about 0.6 of the resistance for seconds"));
  }

  /**
   * Specific heat of a whole cell by chemistry: LFP 1130, NMC 1040, NCA 830, others 1000 J/(kg·K).
   *
   * <p>Source: compilation of published measurements, 30 … 40 °C; literature as a whole 800 … 1100.
   *
   * @param chemistry the chemistry
   * @return the estimate with its band
   */
  public static Estimate<SpecificHeatCapacity> specificHeat(Chemistry chemistry) {
    double typical =
        switch (chemistry) {
          case LFP -> 1130;
          case NMC -> 1040;
          case NCA -> 830;
          case LMO, LTO, LEAD_ACID -> 1000;
        };
    return Estimate.of(
        "specific heat",
        Measures.joulesPerKilogramKelvin(typical),
        Kind.SPECIFIC_HEAT_CAPACITY,
        new Estimate.Band(800 / Math.max(800, typical), Math.max(1100, typical) / typical),
        Source.literature("Specific Heat Capacity of Lithium Ion Cells", "web compilation"));
  }

  /**
   * Open-circuit curve by chemistry, 25 °C, for a first look.
   *
   * <p>Sources: LFP: mean of slow charge and discharge, Plett (2015), ends at the voltage limits;
   * NMC and NCA: NMC811, C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534; lead-acid: BCI
   * table of rest voltages, per cell.
   *
   * @param chemistry LFP, NMC, NCA or lead-acid
   * @return the curve, marked as estimated
   * @throws org.wattwright.units.InvalidInputException for another chemistry: no curve is published
   *     here
   */
  public static Given<OpenCircuitCurve> openCircuit(Chemistry chemistry) {
    return switch (chemistry) {
      case LFP -> Given.estimated(curve(LFP_CURVE), LFP_DATA);
      case NMC, NCA ->
          Given.estimated(
              curve(NMC_CURVE),
              Source.literature(
                  "C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534", "equilibrium"));
      case LEAD_ACID ->
          Given.estimated(
              curve(LEAD_ACID_CURVE), Source.literature("BCI", "rest voltage, flooded, 26.7 °C"));
      case LMO, LTO ->
          throw org.wattwright.units.InvalidInputException.of(
              "chemistry", "LFP, NMC, NCA or lead-acid", chemistry.toString());
    };
  }

  private static final double[][] LFP_CURVE = {
    {0, 2.5},
    {5, 3.0251},
    {10, 3.1782},
    {20, 3.2445},
    {40, 3.3011},
    {50, 3.308},
    {60, 3.3171},
    {80, 3.3454},
    {90, 3.352},
    {95, 3.3691},
    {100, 3.6}
  };

  private static final double[][] NMC_CURVE = {
    {0, 2.5},
    {10, 3.2959},
    {20, 3.4852},
    {40, 3.6670},
    {50, 3.7509},
    {60, 3.8406},
    {70, 3.9479},
    {90, 4.0967},
    {100, 4.2}
  };

  private static final double[][] LEAD_ACID_CURVE = {
    {0, 11.89 / 6}, {50, 12.24 / 6}, {75, 12.45 / 6}, {100, 12.65 / 6}
  };

  private static OpenCircuitCurve curve(double[][] points) {
    OpenCircuitCurve.Builder builder = OpenCircuitCurve.at(celsius(25));
    for (double[] point : points) {
      builder.row(percentCharge(point[0]), volts(point[1]));
    }
    return builder.build();
  }
}
