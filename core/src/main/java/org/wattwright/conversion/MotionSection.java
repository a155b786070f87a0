package org.wattwright.conversion;

import static org.wattwright.units.Measures.format;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Speed;
import org.wattwright.battery.Ageing;
import org.wattwright.check.Figure;
import org.wattwright.drive.Ability;
import org.wattwright.drive.DriveCycle;
import org.wattwright.drive.EnergyBalance;
import org.wattwright.drive.EnergyPart;
import org.wattwright.drive.LimitedDrive;
import org.wattwright.drive.Performance;
import org.wattwright.drive.PowerLimitStudy;
import org.wattwright.drive.RangeResult;
import org.wattwright.drive.SmallestLimit;
import org.wattwright.drive.SteadyRange;
import org.wattwright.drive.SteadyRangePoint;
import org.wattwright.units.Kind;

/** The sections about performance, range and power limit. */
final class MotionSection {
  private static final String PERFORMANCE = "Performance";
  private static final String RANGE = "Range";
  private static final String LIMIT = "Power limit";
  private static final Quantity<Speed> SLOW = kilometresPerHour(20);

  private static final List<Quantity<Speed>> STEADY =
      List.of(
          kilometresPerHour(30),
          kilometresPerHour(50),
          kilometresPerHour(70),
          kilometresPerHour(90),
          kilometresPerHour(110));

  private MotionSection() {}

  static List<Section> missing() {
    return List.of(
        Section.of(PERFORMANCE)
            .with(
                new Paragraph(
                    "No motion was given: nothing is said about performance and range.")));
  }

  static Section performance(Motion motion) {
    List<Performance> columns = new ArrayList<>(List.of(motion.performance()));
    motion.laden().map(Performance::of).ifPresent(columns::add);
    Section working =
        Section.of("Working of the performance")
            .with(
                new Working(motion.performance().topSpeedWorksheet()),
                new Working(columns.get(columns.size() - 1).gradeWorksheet(SLOW)));
    return Section.of(PERFORMANCE)
        .with(
            new Paragraph(
                "Full pedal, on the level unless said, at "
                    + motion.vehicle().state()
                    + ". Grip, half-shafts and gears are among the checks."),
            table(columns))
        .with(ReviewSection.open("Performance, traction, half-shafts and range", motion.checks()))
        .withParts(working);
  }

  private static DataTable table(List<Performance> columns) {
    DataTable table =
        columns.size() == 1
            ? DataTable.of("", "", ">As given")
            : DataTable.of("", "", ">As given", ">Fully laden");
    table = row(table, columns, "top speed", p -> p.topSpeed().toString());
    table =
        row(
            table,
            columns,
            "0–50 km/h",
            p -> p.time(MotionDemand.STANDING, kilometresPerHour(50)).toString());
    table = row(table, columns, "steepest grade to start on", p -> p.startingGrade().toString());
    for (int speed : List.of(20, 50)) {
      table =
          row(
              table,
              columns,
              "steepest grade at " + speed + " km/h",
              p -> p.gradeAt(kilometresPerHour(speed)).toString());
    }
    table =
        row(
            table,
            columns,
            "torque of one half-shaft, at most",
            p -> p.checkHalfShaft().actual().map(Figure::toString).orElse("not known"));
    return row(table, columns, "force at the road against grip", p -> p.checkTraction().note());
  }

  private static DataTable row(
      DataTable table, List<Performance> columns, String name, Function<Performance, String> cell) {
    List<String> cells = new ArrayList<>(List.of(name));
    columns.forEach(column -> cells.add(cell.apply(column)));
    return table.row(cells.toArray(String[]::new));
  }

  static Section range(Motion motion) {
    DriveCycle first = motion.cycles().get(0);
    Section section =
        Section.of(RANGE)
            .with(
                new Paragraph(basis(motion)),
                ranges(motion),
                steady(motion),
                losses(motion, first));
    return motion
        .range(RangeCase.NEW, first)
        .map(
            range ->
                section.withParts(
                    Section.of("Working of the range").with(new Working(range.worksheet()))))
        .orElse(section);
  }

  private static String basis(Motion motion) {
    Ageing age = motion.ageing().value();
    String aged =
        "Aged: "
            + Figure.share(age.capacityFactor())
            + " of the capacity, "
            + Figure.number(age.resistanceFactor())
            + " times the resistance ("
            + motion.ageing().source()
            + ")";
    String winter =
        motion
            .vehicleIn(RangeCase.WINTER)
            .map(
                cold ->
                    "Winter: pack and air at "
                        + format(cold.state().temperature(), Kind.TEMPERATURE)
                        + ", heater and auxiliaries together "
                        + format(cold.steadyLoad(), Kind.POWER)
                        + ", tyres as in summer")
            .orElse("Nothing is said about winter");
    return "From "
        + motion.vehicle().state().stateOfCharge()
        + " to "
        + motion.reserve()
        + ", each cycle driven over and over. "
        + aged
        + ". "
        + winter
        + ". A range is an estimate and no promise.";
  }

  private static DataTable ranges(Motion motion) {
    DataTable table = DataTable.of("Range", "Cycle", "State", ">Range", ">Consumption", "Until");
    for (DriveCycle cycle : motion.cycles()) {
      for (RangeCase state : RangeCase.values()) {
        Optional<RangeResult> range = motion.range(state, cycle);
        table =
            range.isEmpty()
                ? table.row(cycle.name(), state.toString(), "not known", "", "")
                : table.row(cells(cycle, state, range.get()));
      }
    }
    return table;
  }

  private static String[] cells(DriveCycle cycle, RangeCase state, RangeResult range) {
    return new String[] {
      cycle.name(),
      state.toString(),
      format(range.distance(), KILOMETRE, 1),
      range.consumption().map(c -> format(c, WATT_HOUR_PER_KILOMETRE, 1)).orElse("–"),
      range.endedBy().toString()
    };
  }

  private static DataTable steady(Motion motion) {
    SteadyRange steady = SteadyRange.of(motion.vehicle());
    double topMs = Kind.SPEED.siValueOf(motion.performance().topSpeed().speed());
    DataTable table =
        DataTable.of("Steady speed on the level, as new", ">Speed", ">Range", ">Consumption");
    for (Quantity<Speed> speed : STEADY) {
      if (Kind.SPEED.siValueOf(speed) <= topMs) {
        SteadyRangePoint point = steady.at(speed, motion.reserve());
        table =
            table.row(
                format(speed, Kind.SPEED),
                format(point.range(), KILOMETRE, 1),
                format(point.consumption(), WATT_HOUR_PER_KILOMETRE, 1));
      }
    }
    return table;
  }

  private static DataTable losses(Motion motion, DriveCycle cycle) {
    List<RangeCase> states = new ArrayList<>();
    List<EnergyBalance> balances = new ArrayList<>();
    List<String> headings = new ArrayList<>(List.of("Part"));
    for (RangeCase state : RangeCase.values()) {
      motion.range(state, cycle).map(RangeResult::balance).ifPresent(balances::add);
      motion.range(state, cycle).ifPresent(range -> states.add(state));
    }
    states.forEach(state -> headings.addAll(List.of(">Energy, " + state, ">Share")));
    DataTable table =
        DataTable.of(
            "Where the energy of the battery goes until the reserve is reached, " + cycle.name(),
            headings.toArray(String[]::new));
    for (EnergyPart part : EnergyPart.values()) {
      table = table.row(losses(part.toString(), balances, balance -> balance.of(part)));
    }
    return table.row(losses("battery", balances, EnergyBalance::battery));
  }

  private static String[] losses(
      String name, List<EnergyBalance> balances, Function<EnergyBalance, Quantity<Energy>> part) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (EnergyBalance balance : balances) {
      double share =
          Kind.ENERGY.siValueOf(part.apply(balance)) / Kind.ENERGY.siValueOf(balance.battery());
      cells.add(format(part.apply(balance), WATT_HOUR, 0));
      cells.add(Figure.share(Math.rint(share * 1000) / 1000).toString());
    }
    return cells.toArray(String[]::new);
  }

  static Section limit(Motion motion) {
    Section section = Section.of(LIMIT);
    List<LimitedDrive> rows = motion.limitedDrives();
    if (!rows.isEmpty()) {
      DataTable table =
          DataTable.of(
              "Limit on the current of the pack, " + motion.cycles().get(0).name(),
              PowerLimitStudy.headings().stream().map(h -> ">" + h).toArray(String[]::new));
      for (LimitedDrive each : rows) {
        table = table.row(each.cells().toArray(String[]::new));
      }
      section = section.with(table);
    }
    Optional<SmallestLimit<ElectricCurrent>> least = motion.smallestCurrent();
    return least.isEmpty()
        ? section.with(new Paragraph("No ability was asked for: no smallest limit is worked out."))
        : section.with(new Paragraph("Smallest current: " + least.get() + "."), needs(least.get()));
  }

  private static DataTable needs(SmallestLimit<ElectricCurrent> least) {
    DataTable table = DataTable.of("Smallest current for each", "Ability", ">Current");
    for (Map.Entry<Ability, Quantity<ElectricCurrent>> need : least.needs().entrySet()) {
      table = table.row(need.getKey().toString(), format(need.getValue(), Kind.CURRENT));
    }
    return table;
  }
}
