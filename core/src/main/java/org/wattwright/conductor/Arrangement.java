package org.wattwright.conductor;

import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.internal.ResourceTable;

/** How loaded cables lie together, which sets the factor on the current of each. */
public enum Arrangement {
  /** One cable, or several at least one diameter apart in every direction, in free air. */
  SINGLE("alone in free air"),
  /** In one bundle, or bunched on a surface. */
  BUNDLED("bundled"),
  /** In one layer on a wall or floor, touching. */
  TOUCHING_LAYER("in one layer, touching"),
  /** In one layer on a wall, one diameter apart. */
  SPACED_LAYER("in one layer, one diameter apart"),
  /** Together in one conduit. */
  CONDUIT("in one conduit");

  /**
   * Three loaded conductors in a raceway against one in free air: the lowest ratio of NEC Table
   * 310.16 to 310.17 at 90 °C, from 8 AWG to 4/0.
   */
  private static final double CONDUIT_AGAINST_FREE_AIR = 0.64;

  private static final Source CONDUIT_SOURCE =
      Source.standard("NFPA 70 (NEC)", "ratio of Table 310.16 to 310.17 (from memory), 90 °C");

  private final String label;

  Arrangement(String label) {
    this.label = label;
  }

  /** Factor on the current with its source. */
  record Factor(double value, Basis basis, Source source) {}

  private record Band(Arrangement arrangement, int from, int to, Factor factor) {}

  private static final class Table {
    static final List<Band> BANDS = PublishedRows.read("grouping.csv", Table::band);

    private static Band band(ResourceTable.Row row) {
      return new Band(
          row.constant("arrangement", Arrangement.class),
          row.count("from"),
          row.count("to"),
          new Factor(row.number("factor"), PublishedRows.basis(row), PublishedRows.source(row)));
    }
  }

  /**
   * Factor on the continuous current of one cable alone in free air.
   *
   * <p>Bundles and layers: IEC 60364-5-52 Table B.52.17, DIN VDE 0298-4 Table 21; each loaded cable
   * counts as a circuit, which is on the safe side. Conduit: 0.64 for up to three (NEC Table 310.16
   * against 310.17, the latter from memory), then NEC Table 310.15(C)(1).
   *
   * @param loadedCables number of loaded cables together: SINGLE 1; BUNDLED and TOUCHING_LAYER 1 to
   *     9; SPACED_LAYER 1 or 2; CONDUIT 1 to 40
   * @return 0 to 1
   * @throws org.wattwright.units.InvalidInputException if the table does not reach that far
   */
  public double currentFactor(int loadedCables) {
    return factor(loadedCables).value();
  }

  Factor factor(int loadedCables) {
    if (this == SINGLE) {
      Require.count("Installation.loadedCables", loadedCables, 1, 1);
      return new Factor(1, Basis.MEASURED, Source.PHYSICS);
    }
    int most = bands().stream().mapToInt(Band::to).max().orElse(0);
    Require.count("Installation.loadedCables", loadedCables, 1, most);
    Factor grouping =
        bands().stream()
            .filter(band -> loadedCables >= band.from() && loadedCables <= band.to())
            .findFirst()
            .orElseThrow()
            .factor();
    return this == CONDUIT
        ? new Factor(CONDUIT_AGAINST_FREE_AIR * grouping.value(), Basis.ESTIMATED, CONDUIT_SOURCE)
        : grouping;
  }

  private List<Band> bands() {
    return Table.BANDS.stream().filter(band -> band.arrangement() == this).toList();
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code bundled}
   */
  @Override
  public String toString() {
    return label;
  }
}
