package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.internal.Require;

/**
 * A pack as a chain from minus to plus: points in boxes, and between them cells, links and fuses.
 *
 * <pre>{@code
 * SeriesChain.startingAt("rear minus", "rear box")
 *     .cells(volts(200), milliohms(40), volts(150), milliohms(120))
 *     .fuse(linkFuse).to("rear plus", "rear box")
 *     .link(milliohms(1)).to("front minus", "front box")
 *     .cells(volts(200), milliohms(40), volts(150), milliohms(120)).to("front plus", "front box")
 *     .faultLoops(milliohms(1), milliohms(200));
 * }</pre>
 *
 * <p>Every step returns a new chain. Immutable and thread-safe.
 */
public final class SeriesChain {
  private final List<Point> points;
  private final List<Part> parts;

  /** A point where insulation can fail. */
  private record Point(String name, String box) {
    @Override
    public String toString() {
      return name + " (" + box + ")";
    }
  }

  /** What lies behind a point, up to the next one. */
  private record Part(TwoFaultLevel highest, TwoFaultLevel lowest, List<Fuse> fuses) {
    static final Part NOTHING = new Part(TwoFaultLevel.NOTHING, TwoFaultLevel.NOTHING, List.of());

    Part plus(Part other) {
      List<Fuse> all = new ArrayList<>(fuses);
      all.addAll(other.fuses);
      return new Part(highest.plus(other.highest), lowest.plus(other.lowest), all);
    }
  }

  private SeriesChain(List<Point> points, List<Part> parts) {
    this.points = List.copyOf(points);
    this.parts = List.copyOf(parts);
  }

  /**
   * Starts at the minus end.
   *
   * @param point name of the point
   * @param box where it lies
   * @return the chain
   * @throws org.wattwright.units.InvalidInputException if a name is blank
   */
  public static SeriesChain startingAt(String point, String box) {
    return new SeriesChain(List.of(point(point, box)), List.of(Part.NOTHING));
  }

  private static Point point(String point, String box) {
    return new Point(
        Require.text("SeriesChain.point", point), Require.text("SeriesChain.box", box));
  }

  /**
   * Adds cells of which the lowest current is not known: no fuse can be shown to melt.
   *
   * @param highest open-circuit voltage, &gt; 0 V
   * @param least resistance, &gt; 0 mΩ
   * @return the chain
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public SeriesChain cells(
      Quantity<ElectricPotential> highest, Quantity<ElectricResistance> least) {
    return with(new Part(cellLevel(highest, least), TwoFaultLevel.UNKNOWN, List.of()));
  }

  /**
   * Adds cells from full, warm and new to empty, cold and aged.
   *
   * @param highest open-circuit voltage, &gt; 0 V
   * @param least resistance, &gt; 0 mΩ
   * @param lowest open-circuit voltage, &gt; 0 V, at most the highest
   * @param most resistance, at least the least
   * @return the chain
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public SeriesChain cells(
      Quantity<ElectricPotential> highest,
      Quantity<ElectricResistance> least,
      Quantity<ElectricPotential> lowest,
      Quantity<ElectricResistance> most) {
    TwoFaultLevel high = cellLevel(highest, least);
    TwoFaultLevel low = cellLevel(lowest, most);
    Require.nonNegative(
        "SeriesChain.cells highest less lowest in V", high.voltageV() - low.voltageV());
    Require.nonNegative(
        "SeriesChain.cells most less least in Ω", low.resistanceOhm() - high.resistanceOhm());
    return with(new Part(high, low, List.of()));
  }

  private static TwoFaultLevel cellLevel(
      Quantity<ElectricPotential> voltage, Quantity<ElectricResistance> resistance) {
    return new TwoFaultLevel(
        Require.quantity("SeriesChain.voltage", voltage, VOLT).positive(),
        Require.quantity("SeriesChain.resistance", resistance, MILLIOHM).positive());
  }

  /**
   * Adds a link cable.
   *
   * @param resistance ≥ 0 mΩ
   * @return the chain
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public SeriesChain link(Quantity<ElectricResistance> resistance) {
    double ohm = Require.quantity("SeriesChain.resistance", resistance, MILLIOHM).nonNegative();
    TwoFaultLevel level = new TwoFaultLevel(0, ohm);
    return with(new Part(level, level, List.of()));
  }

  /**
   * Adds a fuse.
   *
   * @param fuse the part
   * @return the chain
   */
  public SeriesChain fuse(Fuse fuse) {
    return with(
        new Part(
            TwoFaultLevel.NOTHING,
            TwoFaultLevel.NOTHING,
            List.of(Objects.requireNonNull(fuse, "fuse"))));
  }

  private SeriesChain with(Part part) {
    List<Part> changed = new ArrayList<>(parts);
    int last = changed.size() - 1;
    changed.set(last, changed.get(last).plus(part));
    return new SeriesChain(points, changed);
  }

  /**
   * Ends a part at a point where insulation can fail.
   *
   * @param point name of the point
   * @param box where it lies
   * @return the chain
   * @throws org.wattwright.units.InvalidInputException if a name is blank
   */
  public SeriesChain to(String point, String box) {
    List<Point> more = new ArrayList<>(points);
    more.add(point(point, box));
    List<Part> longer = new ArrayList<>(parts);
    longer.add(Part.NOTHING);
    return new SeriesChain(more, longer);
  }

  /**
   * Every loop that two faults can close through a chassis of one known resistance.
   *
   * @param bond resistance of the way through chassis and bonds, ≥ 0 mΩ
   * @return as {@link #faultLoops(Quantity, Quantity)}
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public List<ChassisFaultLoop> faultLoops(Quantity<ElectricResistance> bond) {
    return faultLoops(bond, bond);
  }

  /**
   * Every loop that two faults in different boxes can close through the chassis.
   *
   * <p>Pairs of points in one box are a matter of that box; pairs without cells between drive no
   * current.
   *
   * @param least resistance of the way through chassis and bonds, ≥ 0 mΩ
   * @param most the same at its highest, such as twice the limit of a bond, at least the least
   * @return all pairs, from the minus end
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public List<ChassisFaultLoop> faultLoops(
      Quantity<ElectricResistance> least, Quantity<ElectricResistance> most) {
    double leastOhm = Require.quantity("SeriesChain.bond", least, MILLIOHM).nonNegative();
    double mostOhm = Require.quantity("SeriesChain.bond", most, MILLIOHM).nonNegative();
    Require.nonNegative("SeriesChain.bond most less least in Ω", mostOhm - leastOhm);
    TwoFaultLevel high = new TwoFaultLevel(0, leastOhm);
    Part bond = new Part(high, new TwoFaultLevel(0, mostOhm), List.of());
    List<ChassisFaultLoop> loops = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Part between = Part.NOTHING;
      for (int j = i + 1; j < points.size(); j++) {
        between = between.plus(parts.get(j - 1));
        boolean apart = !points.get(i).box().equals(points.get(j).box());
        if (apart && between.highest().voltageV() > 0) {
          loops.add(loop(i, j, between.plus(bond)));
        }
      }
    }
    return List.copyOf(loops);
  }

  private ChassisFaultLoop loop(int i, int j, Part closed) {
    return new ChassisFaultLoop(
        points.get(i) + " – " + points.get(j), closed.highest(), closed.lowest(), closed.fuses());
  }

  /**
   * The points from minus to plus.
   *
   * @return for example {@code rear minus (rear box) – rear plus (rear box)}
   */
  @Override
  public String toString() {
    return String.join(" – ", points.stream().map(Point::toString).toList());
  }
}
