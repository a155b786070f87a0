package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.internal.ResourceTable;
import org.wattwright.units.InvalidInputException;

/**
 * Published tables of continuous current. They differ by method: never compare across tables.
 *
 * <p>As an {@link AmpacityMethod} a table rates a size it lists, at the highest of its conductor
 * temperatures that the cable's limit allows, times the ambient factor √[(θ_c − θ_a)/(θ_c − θ_ref)]
 * (IEC 60364-5-52, convection taken as constant) and the factor of the arrangement. Everything else
 * is not rated: a size it does not list, a hot surface, air colder than 10 °C or within 5 K of the
 * conductor temperature, a conduit where the table is for free air.
 */
public enum AmpacityTable implements AmpacityMethod {
  /** One loaded core in free air, 70 °C conductor, 30 °C air; DIN VDE 0298-4 Table 11 column 2. */
  VDE_FREE_AIR(true),
  /** Multi-core cable on a surface, 2 or 3 loaded cores; DIN VDE 0298-4 Table 11 column 5. */
  VDE_MULTICORE_ON_SURFACE(false),
  /** Three single cores touching in free air, method F; IEC 60364-5-52 Tables B.52.10, B.52.12. */
  IEC_THREE_TOUCHING(false),
  /** Stranded copper outside engine spaces, 30 °C air; 33 CFR 183.425 Table 5, boats under 50 V. */
  BOAT_CABLE(false),
  /** Up to three conductors in a raceway, 30 °C air; NFPA 70 (NEC) Table 310.16. */
  NEC_RACEWAY(false),
  /** One conductor in free air, 90 °C, 30 °C air; NFPA 70 (NEC) Table 310.17, from memory. */
  NEC_FREE_AIR(true);

  private static final double LEAST_RISE_K = 5;
  private static final double COLDEST_AIR_C = 10;

  private final boolean isForOneCable;

  AmpacityTable(boolean isForOneCable) {
    this.isForOneCable = isForOneCable;
  }

  private record Entry(
      AmpacityTable table,
      String size,
      String material,
      double conductorC,
      double airC,
      double currentA,
      Basis basis,
      Source source) {}

  private static final class Table {
    static final List<Entry> ENTRIES = PublishedRows.read("ampacity.csv", Table::entry);

    private static Entry entry(ResourceTable.Row row) {
      return new Entry(
          row.constant("table", AmpacityTable.class),
          row.text("size"),
          row.text("material"),
          row.number("conductor [degC]"),
          row.number("air [degC]"),
          row.number("current [A]"),
          PublishedRows.basis(row),
          PublishedRows.source(row));
    }
  }

  /**
   * The printed current.
   *
   * @param size a size as the table names it, such as {@code 35 mm²} or {@code 1/0 AWG}, and its
   *     metal
   * @param conductor conductor temperature that heads the column
   * @return in A; empty if the table has no such entry
   */
  public Optional<Quantity<ElectricCurrent>> printed(
      ConductorSize size, Quantity<Temperature> conductor) {
    double conductorC = CELSIUS.valueOf(conductor);
    return entries(size)
        .filter(entry -> Math.abs(entry.conductorC() - conductorC) < 1e-9)
        .findFirst()
        .map(entry -> AMPERE.of(entry.currentA()));
  }

  private java.util.stream.Stream<Entry> entries(ConductorSize size) {
    return Table.ENTRIES.stream()
        .filter(entry -> entry.table() == this)
        .filter(entry -> entry.size().equals(size.name()))
        .filter(entry -> entry.material().equals(size.material().name()));
  }

  @Override
  public Rating ratingOf(Cable cable, Installation installation) {
    double limitC = CELSIUS.valueOf(cable.temperatureLimit());
    Optional<Entry> found =
        entries(cable.size())
            .filter(entry -> entry.conductorC() <= limitC + 1e-9)
            .reduce((a, b) -> a.conductorC() > b.conductorC() ? a : b);
    if (found.isEmpty()) {
      return new NotRated(
          name() + ": no entry for " + cable.size().name() + " up to " + limitC + " °C");
    }
    return rating(found.get(), installation);
  }

  private Rating rating(Entry entry, Installation installation) {
    double airC = CELSIUS.valueOf(installation.air());
    boolean isWarmEnough = airC >= COLDEST_AIR_C && airC <= entry.conductorC() - LEAST_RISE_K;
    if (installation.hotSurface().isPresent() || !isWarmEnough) {
      return new NotRated(name() + ": does not cover " + installation);
    }
    boolean isAlone = installation.arrangement() == Arrangement.SINGLE;
    if (!isAlone && !(isForOneCable && installation.arrangement() != Arrangement.CONDUIT)) {
      return new NotRated(name() + ": its own arrangement only, not " + installation);
    }
    double factor =
        ambientFactor(entry.conductorC(), airC, entry.airC()) * installation.currentFactor();
    return new Rated(
        AMPERE.of(entry.currentA() * factor),
        entry.basis().and(installation.basis()),
        entry.source());
  }

  private static double ambientFactor(double conductorC, double airC, double referenceC) {
    return Math.sqrt((conductorC - airC) / (conductorC - referenceC));
  }

  /**
   * Factor on a tabulated current for other air: √[(θ_c − θ_a)/(θ_c − θ_ref)].
   *
   * <p>Holds the heat transfer coefficient constant; far from the reference use {@link
   * SteadyHeating}. Source: IEC 60364-5-52, Table B.52.14.
   *
   * @param conductor conductor temperature of the table
   * @param air air temperature, below the conductor's
   * @param reference air temperature of the table, below the conductor's
   * @return the factor
   * @throws InvalidInputException if an air temperature is not below the conductor's
   */
  public static double ambientFactor(
      Quantity<Temperature> conductor, Quantity<Temperature> air, Quantity<Temperature> reference) {
    double conductorC = celsius("AmpacityTable.conductor", conductor, 400);
    double airC = celsius("AmpacityTable.air", air, conductorC - 1e-9);
    double referenceC = celsius("AmpacityTable.reference", reference, conductorC - 1e-9);
    return ambientFactor(conductorC, airC, referenceC);
  }

  private static double celsius(String field, Quantity<Temperature> value, double highestC) {
    Require.quantity(field, value, CELSIUS).between(-100, highestC);
    return CELSIUS.valueOf(value);
  }
}
