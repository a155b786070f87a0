package org.wattwright.conversion;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.CentreSpread;
import org.wattwright.vehicle.LoadSpread;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.Side;
import org.wattwright.vehicle.Spread;
import org.wattwright.vehicle.WheelSpread;

/** What the stated tolerances do to loads, centre of gravity and change. */
final class SpreadTable {
  static final String NOTE =
      "What the tolerances of scales, masses and places make of these figures: every one at its worst at "
          + "once, and the likely half-width if they are independent (root-sum-square). In the change the "
          + "scales and the load cancel.";

  private SpreadTable() {}

  /** The first load case and the heaviest one. */
  static DataTable of(VehicleReview review) {
    LoadState first = review.states().get(0);
    LoadState heaviest = review.heaviest();
    DataTable table =
        DataTable.of(
            "Tolerances", "Load case", "Figure", ">Lowest", ">Nominal", ">Highest", ">Likely ±");
    table = addState(table, first);
    if (!heaviest.equals(first)) {
      table = addState(table, heaviest);
    }
    LoadSpread change = first.changeSpread();
    table = add(table, "change", "front axle", change.front());
    table = add(table, "", "rear axle", change.rear());
    return add(table, "", "total", change.total());
  }

  private static DataTable addState(DataTable table, LoadState state) {
    LoadSpread loads = state.spread();
    DataTable longer = add(table, state.loadCase().name(), "front axle", loads.front());
    longer = add(longer, "", "rear axle", loads.rear());
    longer = add(longer, "", "total", loads.total());
    Optional<WheelSpread> wheels = state.wheelSpread();
    if (wheels.isPresent()) {
      for (Axle axle : Axle.values()) {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
          longer = add(longer, "", axle + " " + side + " wheel", wheels.get().on(axle, side));
        }
      }
    }
    CentreSpread centre = state.centreSpread();
    longer = addCentre(longer, "behind front axle", centre.behindFrontAxle());
    if (centre.leftOfCentre().isPresent()) {
      longer = addCentre(longer, "left of centre line", centre.leftOfCentre().get());
    }
    return centre.aboveGround().isPresent()
        ? addCentre(longer, "above ground", centre.aboveGround().get())
        : longer;
  }

  /** The first two cells of a row. */
  private record Label(String loadCase, String figure) {}

  private static <Q extends Quantity<Q>> DataTable add(
      DataTable table, Label label, Spread<Q> spread, Kind<Q> kind) {
    return table.row(
        label.loadCase(),
        label.figure(),
        Figure.of(spread.lowest(), kind).toString(),
        Figure.of(spread.nominal(), kind).toString(),
        Figure.of(spread.highest(), kind).toString(),
        Figure.of(spread.rootSumSquare(), kind).toString());
  }

  private static DataTable add(
      DataTable table, String loadCase, String figure, Spread<Mass> spread) {
    return add(table, new Label(loadCase, figure), spread, Kind.MASS);
  }

  private static DataTable addCentre(DataTable table, String where, Spread<Length> spread) {
    return add(table, new Label("", "centre " + where), spread, Kind.LENGTH);
  }
}
