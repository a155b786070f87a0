package org.wattwright.battery;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
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

  /** Band of an estimated resistance whose source states none; common practice. */
  static final Estimate.Band RESISTANCE_BAND = new Estimate.Band(0.5, 2);

  /** Band of the ohmic resistance against 0.6 of that for seconds; common practice. */
  static final Estimate.Band OHMIC_BAND = new Estimate.Band(0.5, 1 / 0.6);

  private static final Source LIMITS =
      Source.literature(
          "I. Buchmann, Batteries in a Portable World", "summary table of lithium-based batteries");

  private static final Source TEMPERATURES =
      Source.literature(
          "I. Buchmann, BU-410: Charging at High and Low Temperatures", "table of limits");

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
   * @throws InvalidInputException if the capacity is not positive
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
   * <p>Its band, unless another is stated to the cell, is 0.5 to 2 times.
   *
   * @param at25Celsius resistance at 25 °C, &gt; 0 Ω
   * @return a table over temperature, marked as estimated
   * @throws InvalidInputException if the resistance is not positive
   */
  public static Given<ResistanceTable> resistanceOverTemperature(
      Quantity<ElectricResistance> at25Celsius) {
    double ohm = Require.quantity("resistance", at25Celsius, WorkshopUnits.MILLIOHM).positive();
    return Given.estimated(
        ResistanceTable.overTemperature(
            StateOfCharge.EMPTY,
            Arrays.stream(COLD_FACTORS)
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
   * @throws InvalidInputException if the resistance is not positive
   */
  public static Estimate<ElectricResistance> ohmicResistance(
      Quantity<ElectricResistance> forSeconds) {
    double ohm = Require.quantity("resistance", forSeconds, WorkshopUnits.MILLIOHM).positive();
    return Estimate.of(
        "ohmic resistance",
        Kind.RESISTANCE.ofSi(0.6 * ohm),
        Kind.RESISTANCE,
        OHMIC_BAND,
        Source.commonPractice("ohmic part about 0.6 of the resistance for seconds"));
  }

  /**
   * Resistance for milliseconds from an estimate of the resistance for seconds; both bands combine.
   *
   * @param forSeconds the estimate of the resistance for seconds
   * @return the estimate with its band
   */
  public static Estimate<ElectricResistance> ohmicResistance(
      Estimate<ElectricResistance> forSeconds) {
    Estimate<ElectricResistance> ohmic = ohmicResistance(forSeconds.typical());
    Estimate.Band band =
        new Estimate.Band(
            OHMIC_BAND.lowFactor() * forSeconds.band().lowFactor(),
            OHMIC_BAND.highFactor() * forSeconds.band().highFactor());
    return Estimate.of(ohmic.name(), ohmic.typical(), Kind.RESISTANCE, band, ohmic.source());
  }

  /**
   * Voltages of one cell by chemistry.
   *
   * <p>The estimated open-circuit curves of {@link #openCircuit} run down to the lowest voltage of
   * NMC and NCA, 2.5 V: take {@code lowest} as the minimum voltage with them.
   *
   * <p>Sources: lithium: I. Buchmann, Batteries in a Portable World, summary table. Lead-acid: V.
   * Sulzer et al., J. Electrochem. Soc. 166 (2019) A2363, 1.75 V and 2.42 V; nominal 2 V: D.
   * Linden, T. Reddy, Handbook of Batteries, from memory.
   *
   * @param chemistry the chemistry
   * @return the voltages, marked as estimated
   */
  public static Given<VoltageLimits> voltageLimits(Chemistry chemistry) {
    return switch (chemistry) {
      case LFP -> limits(2, 2.5, 3.2, 3.65);
      case NMC, NCA -> limits(2.5, 3, 3.6, 4.2);
      case LMO -> limits(2.5, 3, 3.7, 4.2);
      case LTO -> limits(1.5, 1.8, 2.4, 2.85);
      case LEAD_ACID ->
          Given.estimated(
              limits(1.75, 1.75, 2, 2.42).value(),
              Source.literature("V. Sulzer et al., J. Electrochem. Soc. 166 (2019) A2363", ""));
    };
  }

  private static Given<VoltageLimits> limits(double... v) {
    return Given.estimated(
        new VoltageLimits(volts(v[0]), volts(v[1]), volts(v[2]), volts(v[3])), LIMITS);
  }

  /**
   * Cell temperatures at which current may flow, by chemistry: lithium 0 °C … 45 °C on charge, −20
   * °C … 60 °C on discharge; lead-acid −20 °C … 50 °C both ways.
   *
   * <p>Charging a graphite anode below freezing plates lithium. Lithium titanate has none: −20 °C …
   * 45 °C on charge (common practice).
   *
   * <p>Source: I. Buchmann, BU-410: Charging at High and Low Temperatures.
   *
   * @param chemistry the chemistry
   * @param direction discharge or charge
   * @return the range, marked as estimated
   */
  public static Given<TemperatureRange> temperatures(Chemistry chemistry, Direction direction) {
    if (chemistry == Chemistry.LEAD_ACID) {
      return range(-20, 50, TEMPERATURES);
    }
    if (direction == Direction.DISCHARGE) {
      return range(-20, 60, TEMPERATURES);
    }
    return chemistry == Chemistry.LTO
        ? range(-20, 45, Source.commonPractice("titanate charges below freezing"))
        : range(0, 45, TEMPERATURES);
  }

  private static Given<TemperatureRange> range(double coldest, double hottest, Source source) {
    return Given.estimated(TemperatureRange.between(celsius(coldest), celsius(hottest)), source);
  }

  /**
   * Specific heat of a whole cell by chemistry: LFP 1130, NMC 1040, NCA 830, others 1000 J/(kg·K).
   *
   * <p>Source: compilation of published measurements, 30 … 40 °C; literature as a whole 800 … 1100.
   * LMO, LTO and lead-acid: common practice.
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
    boolean published =
        chemistry == Chemistry.LFP || chemistry == Chemistry.NMC || chemistry == Chemistry.NCA;
    return Estimate.of(
        "specific heat",
        Measures.joulesPerKilogramKelvin(typical),
        Kind.SPECIFIC_HEAT_CAPACITY,
        new Estimate.Band(800 / typical, Math.max(1100, typical + 100) / typical),
        published
            ? Source.literature("Specific Heat Capacity of Lithium Ion Cells", "web compilation")
            : Source.commonPractice("about 1000 J/(kg·K)"));
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
   * @throws InvalidInputException for another chemistry: no curve is published here
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
          throw InvalidInputException.of(
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
