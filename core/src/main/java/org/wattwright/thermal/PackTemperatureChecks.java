package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.SeriesString;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** The worst of a bracket of courses against the temperature limits of the cells. */
final class PackTemperatureChecks {
  private final PackTemperature model;
  private final List<PackTemperatureCourse> hot;
  private final List<PackTemperatureCourse> cold;

  PackTemperatureChecks(
      PackTemperature model, List<PackTemperatureCourse> hot, List<PackTemperatureCourse> cold) {
    this.model = model;
    this.hot = hot;
    this.cold = cold;
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>();
    for (Direction direction : List.of(Direction.DISCHARGE, Direction.CHARGE)) {
      hot.stream()
          .flatMap(course -> course.highestWhile(direction).stream())
          .max(Kind.TEMPERATURE::compare)
          .ifPresent(value -> checks.add(hottest(direction, value)));
      cold.stream()
          .flatMap(course -> course.lowestWhile(direction).stream())
          .min(Kind.TEMPERATURE::compare)
          .ifPresent(value -> checks.add(coldest(direction, value)));
    }
    checks.add(charge());
    return checks;
  }

  private Check hottest(Direction direction, Quantity<Temperature> highest) {
    Quantity<Temperature> limit = limit(direction, TemperatureRange::hottest, -1);
    String note =
        hot.stream()
            .flatMap(course -> course.reaches(limit).stream())
            .min(Kind.TIME::compare)
            .map(time -> "reached after " + Measures.format(time, SECOND, 0))
            .orElse("one lump: the cell in the middle is warmer");
    return check(direction, "hottest")
        .note(note)
        .atMost(Figure.of(highest, CELSIUS), Figure.of(limit, CELSIUS));
  }

  private Check coldest(Direction direction, Quantity<Temperature> lowest) {
    Quantity<Temperature> limit = limit(direction, TemperatureRange::coldest, 1);
    String note = direction == Direction.CHARGE ? "charging a cold lithium cell plates metal" : "";
    return check(direction, "coldest")
        .note(note)
        .atLeast(Figure.of(lowest, CELSIUS), Figure.of(limit, CELSIUS));
  }

  private CheckBuilder check(Direction direction, String end) {
    String way = direction == Direction.CHARGE ? "charge" : "discharge";
    CheckBuilder check =
        Check.named("thermal.pack-" + end + "-" + way, end + " pack on " + way)
            .source(Source.dataSheet("cell"))
            .basis(pack().basis(CellProperty.TEMPERATURE))
            .safety();
    if (pack().basis(CellProperty.RESISTANCE) == Basis.ESTIMATED) {
      check.estimated("cell.resistance");
    }
    if (model.capacityBasis() == Basis.ESTIMATED) {
      check.estimated("cell.specificHeat");
    }
    return check;
  }

  /** The narrowest limit of all cells: sign −1 for the lowest, 1 for the highest. */
  private Quantity<Temperature> limit(
      Direction direction, Function<TemperatureRange, Quantity<Temperature>> end, int sign) {
    double narrowest = Double.NEGATIVE_INFINITY;
    for (SeriesString string : pack().strings()) {
      for (SeriesString.Group group : string.groups()) {
        TemperatureRange range = group.module().cell().temperatures(direction);
        narrowest = Math.max(narrowest, sign * Kind.TEMPERATURE.siValueOf(end.apply(range)));
      }
    }
    return Kind.TEMPERATURE.ofSi(sign * narrowest);
  }

  private Check charge() {
    CheckBuilder check =
        Check.named("thermal.pack-charge", "charge in the pack for the whole profile")
            .source(Source.PHYSICS)
            .basis(pack().basis(CellProperty.CAPACITY));
    Optional<Quantity<Time>> left = hot.get(0).leavesChargeAfter();
    left.ifPresent(
        time ->
            check.note(
                "empty or full after "
                    + Measures.format(time, SECOND, 0)
                    + "; the course beyond is of no use"));
    return check.holds(left.isEmpty());
  }

  private Pack pack() {
    return model.pack();
  }
}
