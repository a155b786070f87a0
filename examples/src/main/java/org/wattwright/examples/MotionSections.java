package org.wattwright.examples;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Force;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Motion;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.drive.LimitedDrive;
import org.wattwright.drive.SmallestLimit;
import org.wattwright.drive.WheelForcePoint;
import org.wattwright.examples.plot.LineSeriesPlot;
import org.wattwright.examples.plot.Point;
import org.wattwright.examples.plot.Series;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Performance, range and power limit, with their drawings. */
final class MotionSections {
  private static final int STEPS = 80;
  private static final double GRADE = 0.1;

  private MotionSections() {}

  static List<Section> of(Design.Chosen chosen) {
    List<Section> sections = new ArrayList<>(SheetSections.of(chosen.conversion()).motion());
    Optional<Motion> motion = chosen.conversion().motion();
    if (motion.isPresent()) {
      sections.set(0, sections.get(0).with(force(motion.get())));
      List<LimitedDrive> limited = motion.get().limitedDrives();
      if (!limited.isEmpty()) {
        sections.set(2, sections.get(2).with(limits(motion.get(), limited)));
      }
    }
    return sections;
  }

  private static Drawing force(Motion motion) {
    List<WheelForcePoint> curve = motion.performance().forceCurve(STEPS);
    LineSeriesPlot plot =
        LineSeriesPlot.of("speed [km/h]", "force at the road [N]")
            .series(Series.of("drive, peak", points(curve, WheelForcePoint::peak)))
            .series(Series.of("drive, continuous", points(curve, WheelForcePoint::continuous)))
            .series(Series.of("road load, level", points(curve, WheelForcePoint::roadLoad)))
            .series(
                Series.of(
                    "road load, 10 %",
                    points(curve, p -> motion.vehicle().roadLoad().at(p.speed(), GRADE))));
    return new Drawing(
        plot.svg("wheel-force"),
        "Force at the road against what holds the vehicle back",
        "Where a line of the drive crosses one of the road, the vehicle goes no faster. Continuous:"
            + " for any length of time.");
  }

  private static List<Point> points(
      List<WheelForcePoint> curve, Function<WheelForcePoint, Quantity<Force>> force) {
    return curve.stream()
        .map(p -> new Point(KILOMETRE_PER_HOUR.valueOf(p.speed()), NEWTON.valueOf(force.apply(p))))
        .toList();
  }

  private static Drawing limits(Motion motion, List<LimitedDrive> limited) {
    LineSeriesPlot plot =
        LineSeriesPlot.of(
                "limit on the current of the pack [A]", "time [s], speed [km/h], grade [%]")
            .series(
                Series.of(
                    "0–50 km/h [s]",
                    limited.stream()
                        .filter(each -> each.zeroToFifty().isReached())
                        .map(
                            each ->
                                at(each, SECOND.valueOf(each.zeroToFifty().time().orElseThrow())))
                        .toList()))
            .series(
                Series.of(
                    "top speed [km/h]",
                    limited.stream()
                        .map(each -> at(each, KILOMETRE_PER_HOUR.valueOf(each.topSpeed().speed())))
                        .toList()))
            .series(
                Series.of(
                    "steepest grade at 20 km/h, laden [%]",
                    limited.stream()
                        .map(each -> at(each, 100 * each.ladenGrade().grade()))
                        .toList()));
    Optional<Quantity<ElectricCurrent>> least =
        motion.smallestCurrent().flatMap(SmallestLimit::limit);
    if (least.isPresent()) {
      plot =
          plot.verticalLimit(
              "all that is asked: " + Measures.format(least.get(), AMPERE, 0),
              AMPERE.valueOf(least.get()));
    }
    return new Drawing(
        plot.svg("power-limit"),
        "What a limit on the current of the pack costs",
        "Left of the upright line something that is asked for is no longer met; the range hardly"
            + " changes, since the cycle asks for little.");
  }

  private static Point at(LimitedDrive each, double y) {
    return new Point(AMPERE.valueOf(each.limit().quantity(Kind.CURRENT)), y);
  }
}
