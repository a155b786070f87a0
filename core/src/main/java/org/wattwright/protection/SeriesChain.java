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
 *     .cells(volts(200), milliohms(40)).fuse(linkFuse).to("rear plus", "rear box")
 *     .link(milliohms(1)).to("front minus", "front box")
 *     .cells(volts(200), milliohms(40)).to("front plus", "front box")
 *     .faultLoops(milliohms(10));
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
  private record Part(double voltageV, double resistanceOhm, List<Fuse> fuses) {
    static final Part NOTHING = new Part(0, 0, List.of());

    Part plus(Part other) {
      List<Fuse> all = new ArrayList<>(fuses);
      all.addAll(other.fuses);
      return new Part(voltageV + other.voltageV, resistanceOhm + other.resistanceOhm, all);
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
   * Adds cells.
   *
   * @param voltage highest open-circuit voltage, &gt; 0 V
   * @param resistance lowest, &gt; 0 mΩ
   * @return the chain
   * @throws org.wattwright.units.InvalidInputException if an argument is not positive
   */
  public SeriesChain cells(
      Quantity<ElectricPotential> voltage, Quantity<ElectricResistance> resistance) {
    double volt = Require.quantity("SeriesChain.voltage", voltage, VOLT).positive();
    double ohm = Require.quantity("SeriesChain.resistance", resistance, MILLIOHM).positive();
    return with(new Part(volt, ohm, List.of()));
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
    return with(new Part(0, ohm, List.of()));
  }

  /**
   * Adds a fuse.
   *
   * @param fuse the part
   * @return the chain
   */
  public SeriesChain fuse(Fuse fuse) {
    return with(new Part(0, 0, List.of(Objects.requireNonNull(fuse, "fuse"))));
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
   * Every loop that two faults in different boxes can close through the chassis.
   *
   * <p>Pairs of points in one box are a matter of that box; pairs without cells between drive no
   * current.
   *
   * @param bond resistance of the way through chassis and bonds, the lowest, ≥ 0 mΩ
   * @return all pairs, from the minus end
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public List<ChassisFaultLoop> faultLoops(Quantity<ElectricResistance> bond) {
    double bondOhm = Require.quantity("SeriesChain.bond", bond, MILLIOHM).nonNegative();
    List<ChassisFaultLoop> loops = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Part between = Part.NOTHING;
      for (int j = i + 1; j < points.size(); j++) {
        between = between.plus(parts.get(j - 1));
        boolean apart = !points.get(i).box().equals(points.get(j).box());
        if (apart && between.voltageV() > 0) {
          loops.add(loop(i, j, between, bondOhm));
        }
      }
    }
    return List.copyOf(loops);
  }

  private ChassisFaultLoop loop(int i, int j, Part between, double bondOhm) {
    return new ChassisFaultLoop(
        points.get(i) + " – " + points.get(j),
        between.voltageV(),
        between.resistanceOhm() + bondOhm,
        between.fuses());
  }
}
