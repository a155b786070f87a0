package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import org.wattwright.installation.Ammeter;
import org.wattwright.installation.BleedBalancing;
import org.wattwright.installation.BrakeServo;
import org.wattwright.installation.DialScale;
import org.wattwright.installation.LadderStep;
import org.wattwright.installation.MonitorUnitType;
import org.wattwright.installation.PedalGear;
import org.wattwright.installation.SenderMapping;
import org.wattwright.installation.SettingsLadderBuilder;
import org.wattwright.installation.Shunt;
import org.wattwright.installation.StopLampRule;
import org.wattwright.installation.TemperatureStep;
import org.wattwright.installation.ThrottleMap;
import org.wattwright.installation.ThrottleSignal;
import org.wattwright.installation.ThrottleTrack;
import org.wattwright.installation.VacuumLevel;
import org.wattwright.installation.VacuumPump;
import org.wattwright.installation.VacuumReserve;
import org.wattwright.installation.VacuumSystem;
import org.wattwright.units.Kind;

/** Reads {@code controls.csv}. */
final class ControlsFile {
  static final String FILE = "controls.csv";

  private static final String SECONDARY = "line pressure for secondary braking";
  private static final int MOST = 1000;

  private final KeyValues values;

  private ControlsFile(KeyValues values) {
    this.values = values;
  }

  static ControlsInput read(Path folder) {
    KeyValues values = KeyValues.read(folder.resolve(FILE));
    ControlsFile file = new ControlsFile(values);
    ControlsInput input =
        new ControlsInput(
            file.brakes(),
            file.monitoring(),
            file.ladder(),
            file.throttle(),
            file.gauges(),
            values.statements());
    values.rejectUnknown();
    return input;
  }

  /** A value that the library rejects is reported with the line of the key that brought it. */
  private <T> T at(String key, Supplier<T> maker) {
    values.field(key);
    return values.statement(key).origin().locate(maker);
  }

  private ControlsInput.Brakes brakes() {
    VacuumSystem vacuum = vacuum();
    VacuumReserve reserve =
        VacuumReserve.of(
            values.field("vacuum reserve stops").count(1, MOST),
            values.field("vacuum reserve difference").positive(Kind.PRESSURE));
    Quantity<Length> bore = values.field("master cylinder bore").positive(Kind.LENGTH);
    double ratio = values.field("brake pedal ratio").plainNumber();
    Quantity<Pressure> secondary = values.field(SECONDARY).positive(Kind.PRESSURE);
    var lights = values.field("stop lamps light above").positive(Kind.ACCELERATION);
    var out = values.field("stop lamps go out below").positive(Kind.ACCELERATION);
    return new ControlsInput.Brakes(
        vacuum,
        reserve,
        values.field("time between stops").positive(Kind.TIME),
        at("brake pedal ratio", () -> new PedalGear(ratio, bore)),
        values.statement(SECONDARY).given(secondary),
        at("stop lamps go out below", () -> StopLampRule.lightsAbove(lights).putsOutBelow(out)));
  }

  private VacuumSystem vacuum() {
    var airSide = values.field("servo air side").positive(Kind.VOLUME);
    var held = values.field("servo and hose").positive(Kind.VOLUME);
    var road = values.field("highest road").quantity(Kind.LENGTH);
    VacuumSystem bare =
        VacuumSystem.of(at("servo and hose", () -> BrakeServo.of(airSide, held)))
            .reservoir(values.field("vacuum reservoir").nonNegative(Kind.VOLUME))
            .pump(pump())
            .pumpStopsAt(level("vacuum pump stops at"))
            .pumpRestartsAt(level("vacuum pump restarts at"))
            .warnsAt(level("vacuum warning at"));
    return at("highest road", () -> bare.altitude(road));
  }

  private VacuumPump pump() {
    var speed = values.field("vacuum pump speed").positive(Kind.VOLUME_FLOW);
    Quantity<Pressure> end = values.field("vacuum pump end pressure").nonNegative(Kind.PRESSURE);
    return at("vacuum pump end pressure", () -> VacuumPump.ofSpeed("brake vacuum pump", speed, end))
        .current(values.field("vacuum pump current").positive(Kind.CURRENT))
        .startingCurrent(values.field("vacuum pump starting current").positive(Kind.CURRENT));
  }

  private VacuumLevel level(String key) {
    return VacuumLevel.absolute(values.field(key).positive(Kind.PRESSURE));
  }

  private ControlsInput.Monitoring monitoring() {
    var current = values.field("balancing current").positive(Kind.CURRENT);
    double duty = values.field("balancing duty").share();
    return new ControlsInput.Monitoring(
        MonitorUnitType.of(
            values.field("measuring channels").count(1, MOST),
            values.field("temperature inputs").count(0, MOST),
            voltage("cell measuring tolerance")),
        yes("every tap fused"),
        yes("fuse in the middle of a string"),
        at("balancing duty", () -> new BleedBalancing(current, duty)),
        values.field("charge imbalance").share(),
        values.field("balancing within").positive(Kind.TIME));
  }

  private boolean yes(String key) {
    return values.field(key).choice(YesNo.class) == YesNo.YES;
  }

  private Quantity<ElectricPotential> voltage(String key) {
    return values.field(key).positive(Kind.VOLTAGE);
  }

  /** Everything is read before the ladder is built, so that a mistake shows at once. */
  private ControlsInput.Ladder ladder() {
    var steps =
        List.of(
            LadderStep.CHARGER_END,
            LadderStep.HIGH_WARNING,
            LadderStep.HIGH_TRIP,
            LadderStep.CUT_BACK,
            LadderStep.LOW_WARNING,
            LadderStep.LOW_TRIP);
    var volts = steps.stream().map(step -> voltage(step.toString())).toList();
    var measuring = voltage("cell measuring tolerance");
    var imbalance = values.field("cell imbalance").nonNegative(Kind.VOLTAGE);
    double charger = values.field("charger tolerance").share();
    double inverter = values.field("inverter tolerance").share();
    var inhibit = values.field("cold-charge inhibit").quantity(Kind.TEMPERATURE);
    var hot = values.field("hot trip").quantity(Kind.TEMPERATURE);
    var sensor = values.field("temperature tolerance").nonNegative(Kind.TEMPERATURE_DIFFERENCE);
    return builder -> {
      SettingsLadderBuilder ladder =
          builder
              .measuringTolerance(measuring)
              .imbalance(imbalance)
              .chargerTolerance(charger)
              .inverterTolerance(inverter)
              .temperature(TemperatureStep.CHARGE_INHIBIT, inhibit)
              .temperature(TemperatureStep.HOT_TRIP, hot)
              .temperatureTolerance(sensor);
      for (int i = 0; i < volts.size(); i++) {
        ladder.step(steps.get(i), volts.get(i));
      }
      return ladder;
    };
  }

  private ControlsInput.Throttle throttle() {
    double rest = values.field("throttle dead band at rest").share();
    double end = values.field("throttle dead band at the end").share();
    Quantity<Time> rise = values.field("throttle rises in").nonNegative(Kind.TIME);
    Quantity<Time> fall = values.field("throttle falls in").nonNegative(Kind.TIME);
    ThrottleMap map =
        at("throttle dead band at rest", () -> ThrottleMap.between(rest, end))
            .risesIn(rise)
            .fallsIn(fall);
    return new ControlsInput.Throttle(
        ThrottleSignal.of(track("first"), track("second"), voltage("throttle supply")),
        map,
        values.field("throttle tolerance").share(),
        values.field("throttle gone within").positive(Kind.TIME));
  }

  private ThrottleTrack track(String name) {
    var released = values.field(name + " track released").nonNegative(Kind.VOLTAGE);
    var pressed = values.field(name + " track pressed").nonNegative(Kind.VOLTAGE);
    return at(name + " track pressed", () -> new ThrottleTrack(released, pressed));
  }

  private ControlsInput.Gauges gauges() {
    Shunt shunt =
        new Shunt(values.field("shunt current").positive(Kind.CURRENT), voltage("shunt drop"));
    var empty = values.field("charge shown as empty").stateOfCharge();
    var full = values.field("charge shown as full").stateOfCharge();
    var cold = values.field("motor shown as cold").quantity(Kind.TEMPERATURE);
    var hot = values.field("motor shown as hot").quantity(Kind.TEMPERATURE);
    return new ControlsInput.Gauges(
        values.field("continuous current").positive(Kind.CURRENT),
        shunt,
        new Ammeter(
            shunt,
            values.field("ammeter discharge end").positive(Kind.CURRENT),
            values.field("ammeter charge end").nonNegative(Kind.CURRENT)),
        dial(),
        at("charge shown as full", () -> new DialScale.ChargeMarks(empty, full)),
        at("motor shown as hot", () -> new DialScale.TemperatureMarks(cold, hot)));
  }

  private SenderMapping dial() {
    var empty = values.field("dial empty").nonNegative(Kind.RESISTANCE);
    var half = values.field("dial half").nonNegative(Kind.RESISTANCE);
    var full = values.field("dial full").nonNegative(Kind.RESISTANCE);
    return at(
        "dial full",
        () ->
            SenderMapping.of(
                List.of(
                    new SenderMapping.DialPoint(0, empty),
                    new SenderMapping.DialPoint(0.5, half),
                    new SenderMapping.DialPoint(1, full))));
  }
}
