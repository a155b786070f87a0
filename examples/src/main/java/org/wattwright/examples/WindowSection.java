package org.wattwright.examples;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.percentCharge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.examples.plot.LineSeriesPlot;
import org.wattwright.examples.plot.Point;
import org.wattwright.examples.plot.Series;
import org.wattwright.examples.plot.VoltageWindowPlot;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.PowerPoint;
import org.wattwright.voltage.VoltageEnvelope;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.WindowReview;

/** The pack's voltages against the windows of the devices, and the power they leave. */
final class WindowSection {
  private static final int STEP_PERCENT = 5;

  private WindowSection() {}

  static Section of(Design design, Design.Chosen chosen) {
    WindowReview review = chosen.conversion().windows();
    VoltageEnvelope envelope = review.envelope();
    Section section =
        SheetSections.of(chosen.conversion())
            .windows()
            .with(
                new Drawing(
                    windowPlot(envelope, design.devices()),
                    "Voltages of the pack against the windows of the devices",
                    "Each bar is a device: where it works, where it gives its full performance, and above "
                        + "which voltage it is damaged."));
    Optional<Device> inverter =
        design.devices().stream().filter(d -> d.role() == DeviceRole.INVERTER).findFirst();
    if (inverter.isPresent()) {
      section = section.with(power(design, review, inverter.get()));
    }
    return section;
  }

  private static String windowPlot(VoltageEnvelope envelope, List<Device> devices) {
    VoltageWindowPlot plot =
        VoltageWindowPlot.empty()
            .packVoltage("full, charging", volts(envelope.fullUnderCharge()))
            .packVoltage("full, at rest", volts(envelope.fullAtRest()))
            .packVoltage("nominal", volts(envelope.nominal()))
            .packVoltage("empty, at rest", volts(envelope.emptyAtRest()))
            .packVoltage("empty, cold, loaded", volts(envelope.emptyUnderLoad()));
    for (Device device : devices) {
      plot = plot.device(window(device));
    }
    return plot.svg("voltage-windows");
  }

  private static VoltageWindowPlot.Window window(Device device) {
    VoltageRange operating = device.window().operating();
    VoltageRange full = device.window().fullPerformance().orElse(operating);
    return new VoltageWindowPlot.Window(
        device.name(),
        band(operating),
        band(full),
        volts(device.window().absoluteMaximum().orElse(operating.highest())));
  }

  private static VoltageWindowPlot.Band band(VoltageRange range) {
    return new VoltageWindowPlot.Band(volts(range.lowest()), volts(range.highest()));
  }

  private static double volts(Quantity<javax.measure.quantity.ElectricPotential> voltage) {
    return WorkshopUnits.VOLT.valueOf(voltage);
  }

  private static Drawing power(Design design, WindowReview review, Device inverter) {
    List<StateOfCharge> charges =
        IntStream.rangeClosed(0, 100 / STEP_PERCENT)
            .mapToObj(i -> percentCharge(i * STEP_PERCENT))
            .toList();
    LineSeriesPlot plot =
        LineSeriesPlot.of("state of charge [%]", "power to the " + inverter.name() + " [kW]");
    for (Quantity<Temperature> temperature : temperatures(design)) {
      List<Point> points = new ArrayList<>();
      for (PowerPoint point : review.powerAvailable(inverter, List.of(temperature), charges)) {
        points.add(
            new Point(
                point.state().stateOfCharge().percent(),
                WorkshopUnits.KILOWATT.valueOf(point.power())));
      }
      plot = plot.series(Series.of("cells at " + temperature, points));
    }
    plot =
        plot.horizontalLimit(
            "peak asked for at " + design.job().requirement().peak().temperature(),
            WorkshopUnits.KILOWATT.valueOf(design.job().requirement().peak().power()));
    return new Drawing(
        plot.svg("power-by-charge"),
        "Power available to the "
            + inverter.name()
            + " for "
            + design.conditions().peakDuration()
            + " against the state of charge",
        "The least of what the pack gives and what the device takes at the voltage that is left.");
  }

  private static List<Quantity<Temperature>> temperatures(Design design) {
    return List.of(
        design.conditions().coldest(),
        design.job().requirement().peak().temperature(),
        celsius(25));
  }
}
