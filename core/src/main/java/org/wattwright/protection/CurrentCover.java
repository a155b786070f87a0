package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * The whole current axis of a circuit, from the highest operating current to the highest fault:
 * what deals with each current, and the gaps.
 *
 * <p>A current is dealt with if cable and contactor bear it for ever; or the fuse, slow end of its
 * curve, clears it within what cable and contactor bear, between its minimum breaking current and
 * its breaking capacity; or a trip opens a contactor that may break it, delay and opening time
 * within what cable and contactor bear. The ends of the bands are exact for curves that are
 * straight on log–log paper. Immutable and thread-safe.
 */
public final class CurrentCover {
  private final String circuit;
  private final double fromA;
  private final double toA;
  private final List<CoverBand> bands;
  private final Basis basis;

  private CurrentCover(
      String circuit, double fromA, double toA, List<CoverBand> bands, Basis basis) {
    this.basis = basis;
    this.circuit = circuit;
    this.fromA = fromA;
    this.toA = toA;
    this.bands = List.copyOf(bands);
  }

  /** The same cover, said to rest on something. */
  CurrentCover restingOn(Basis value) {
    return new CurrentCover(circuit, fromA, toA, bands, value);
  }

  static CurrentCover of(String circuit, double fromA, double toA, CoverRules rules) {
    CurrentRanges fuse = CoverRules.all(rules.fuse());
    CurrentRanges trip = rules.tripped();
    double[] cuts = cuts(fromA, toA, rules);
    List<CoverBand> bands = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.length; i++) {
      double midA = Math.sqrt(cuts[i] * cuts[i + 1]);
      CoverBand.By by =
          CoverBand.By.of(rules.borne().contains(midA), fuse.contains(midA), trip.contains(midA));
      List<CoverShortfall> shortfalls =
          by == CoverBand.By.NOTHING ? rules.shortfallsAt(midA) : List.of();
      add(bands, new CoverBand(AMPERE.of(cuts[i]), AMPERE.of(cuts[i + 1]), by, shortfalls));
    }
    return new CurrentCover(circuit, fromA, toA, bands, Basis.DATA_SHEET);
  }

  /** A band, joined to the last one if the same deals with it. */
  private static void add(List<CoverBand> bands, CoverBand next) {
    if (!bands.isEmpty()) {
      CoverBand last = bands.get(bands.size() - 1);
      if (last.by() == next.by() && last.shortfalls().equals(next.shortfalls())) {
        bands.set(
            bands.size() - 1, new CoverBand(last.from(), next.to(), last.by(), last.shortfalls()));
        return;
      }
    }
    bands.add(next);
  }

  /** The ends of all ranges within the axis, rising, with the axis' own ends. */
  private static double[] cuts(double fromA, double toA, CoverRules rules) {
    List<CurrentRanges> all = new ArrayList<>(List.of(rules.borne()));
    rules.fuse().forEach(condition -> all.add(condition.holds()));
    rules.trips().stream()
        .flatMap(trip -> trip.conditions().stream())
        .forEach(condition -> all.add(condition.holds()));
    NavigableSet<Double> cuts = new TreeSet<>(List.of(fromA, toA));
    for (CurrentRanges ranges : all) {
      for (int i = 0; i < ranges.count(); i++) {
        addWithin(cuts, fromA, toA, ranges.fromA(i));
        addWithin(cuts, fromA, toA, ranges.toA(i));
      }
    }
    return cuts.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void addWithin(NavigableSet<Double> cuts, double fromA, double toA, double cutA) {
    double rounding = 1e-11 * cutA;
    if (cutA - fromA > rounding
        && toA - cutA > rounding
        && cuts.subSet(cutA - rounding, cutA + rounding).isEmpty()) {
      cuts.add(cutA);
    }
  }

  /**
   * Where the axis begins: the highest operating current.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> from() {
    return Kind.CURRENT.ofSi(fromA);
  }

  /**
   * Where the axis ends: the highest fault.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> to() {
    return Kind.CURRENT.ofSi(toA);
  }

  /**
   * The bands from low to high; they touch and fill the axis.
   *
   * @return at least one
   */
  public List<CoverBand> bands() {
    return bands;
  }

  /**
   * The bands that nothing deals with.
   *
   * @return empty if the axis is covered
   */
  public List<CoverBand> gaps() {
    return bands.stream().filter(CoverBand::isGap).toList();
  }

  /**
   * Whether no current is left.
   *
   * @return true if there is no gap
   */
  public boolean isComplete() {
    return gaps().isEmpty();
  }

  /**
   * The verdict.
   *
   * @return code {@code protection.current-cover}; its note lists the gaps
   */
  public Check check() {
    CheckBuilder check =
        Check.named(
                "protection.current-cover",
                "currents of "
                    + circuit
                    + " from "
                    + Measures.format(from(), Kind.CURRENT)
                    + " to "
                    + Measures.format(to(), Kind.CURRENT)
                    + " dealt with")
            .source(Source.standard("IEC 60364-4-43", "433 and 434"))
            .basis(basis)
            .estimated(basis == Basis.ESTIMATED ? new String[] {CableCase.LAYING} : new String[0])
            .safety();
    List<String> gaps = gaps().stream().map(CoverBand::toString).toList();
    return check.note(String.join("; ", gaps)).holds(gaps.isEmpty());
  }

  /**
   * The bands.
   *
   * @return for example {@code 300 A to 410 A: trip; 410 A to 6200 A: fuse}
   */
  @Override
  public String toString() {
    return String.join("; ", bands.stream().map(CoverBand::toString).toList());
  }
}
