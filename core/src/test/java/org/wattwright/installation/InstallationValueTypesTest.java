package org.wattwright.installation;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.litresPerMinute;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.testing.ValueTypeContract;

/** Equality, text and serialisation of the types with hidden fields. */
class InstallationValueTypesTest {
  private static final BrakeServo SERVO = BrakeServo.of(litres(0.5), litres(2));
  private static final VacuumPump PUMP =
      VacuumPump.ofSpeed("pump", litresPerMinute(30), kilopascals(12));
  private static final ThrottleTrack TRACK = new ThrottleTrack(volts(0.8), volts(4));
  private static final ThrottleTrack OTHER = new ThrottleTrack(volts(0.4), volts(2));
  private static final MonitorUnitType UNIT = MonitorUnitType.of(16, 4, millivolts(5));

  @Nested
  class Servos extends ValueTypeContract<BrakeServo> {
    @Override
    protected BrakeServo sample() {
      return BrakeServo.of(litres(0.5), litres(2));
    }

    @Override
    protected List<BrakeServo> different() {
      return List.of(
          BrakeServo.of(litres(0.6), litres(2)),
          BrakeServo.of(litres(0.5), litres(3)),
          SERVO.restVolume(litres(0.1)),
          SERVO.diaphragms(millimetres(200), 1),
          SERVO.diaphragms(millimetres(200), 2));
    }
  }

  @Nested
  class Pumps extends ValueTypeContract<VacuumPump> {
    @Override
    protected VacuumPump sample() {
      return VacuumPump.ofSpeed("pump", litresPerMinute(30), kilopascals(12));
    }

    @Override
    protected List<VacuumPump> different() {
      return List.of(
          VacuumPump.ofSpeed("other", litresPerMinute(30), kilopascals(12)),
          VacuumPump.ofSpeed("pump", litresPerMinute(31), kilopascals(12)),
          VacuumPump.ofSpeed("pump", litresPerMinute(30), kilopascals(13)),
          PUMP.current(amperes(9)),
          PUMP.startingCurrent(amperes(9)));
    }
  }

  @Nested
  class Systems extends ValueTypeContract<VacuumSystem> {
    @Override
    protected VacuumSystem sample() {
      return VacuumSystem.of(SERVO);
    }

    @Override
    protected List<VacuumSystem> different() {
      VacuumLevel level = VacuumLevel.absolute(kilopascals(30));
      return List.of(
          sample().reservoir(litres(1)),
          sample().ambient(kilopascals(90)),
          sample().pump(PUMP),
          sample().pumpRestartsAt(level),
          sample().pumpStopsAt(level),
          sample().warnsAt(level),
          sample().withBasis(Basis.ESTIMATED),
          sample().warnsAt(VacuumLevel.gauge(kilopascals(30))),
          VacuumSystem.of(SERVO.restVolume(litres(0.2))));
    }
  }

  @Nested
  class Ladders extends ValueTypeContract<SettingsLadder> {
    @Override
    protected SettingsLadder sample() {
      return SettingsLadder.of(30).step(LadderStep.LOW_TRIP, volts(2.5)).build();
    }

    private SettingsLadderBuilder again() {
      return SettingsLadder.of(30).step(LadderStep.LOW_TRIP, volts(2.5));
    }

    @Override
    protected List<SettingsLadder> different() {
      return List.of(
          SettingsLadder.of(31).step(LadderStep.LOW_TRIP, volts(2.5)).build(),
          again().step(LadderStep.LOW_TRIP, volts(2.6)).build(),
          again().step(LadderStep.HIGH_TRIP, volts(3.6)).build(),
          again().temperature(TemperatureStep.HOT_TRIP, celsius(50)).build(),
          again().measuringTolerance(millivolts(5)).build(),
          again().temperatureTolerance(kelvinsOfRise(2)).build(),
          again().imbalance(millivolts(5)).build(),
          again().chargerTolerance(0.01).build(),
          again().inverterTolerance(0.01).build(),
          again().method(ToleranceMethod.ROOT_SUM_SQUARE).build(),
          again().basis(Basis.ESTIMATED).build(),
          again().load(new CellLoad(volts(3), milliohms(1), amperes(100))).build());
    }
  }

  @Nested
  class Settings extends ValueTypeContract<Setting> {
    @Override
    protected Setting sample() {
      return Setting.of("charger", "current", Figure.number(16));
    }

    @Override
    protected List<Setting> different() {
      return List.of(
          Setting.of("inverter", "current", Figure.number(16)),
          Setting.of("charger", "limit", Figure.number(16)),
          Setting.of("charger", "current", Figure.number(10)),
          sample().within(Figure.share(0.01)),
          sample().because("supply", Source.AS_GIVEN),
          sample().because("supply", Source.PHYSICS));
    }
  }

  @Nested
  class Units extends ValueTypeContract<MonitorUnitType> {
    @Override
    protected MonitorUnitType sample() {
      return MonitorUnitType.of(16, 4, millivolts(5));
    }

    @Override
    protected List<MonitorUnitType> different() {
      return List.of(
          MonitorUnitType.of(15, 4, millivolts(5)),
          MonitorUnitType.of(16, 3, millivolts(5)),
          MonitorUnitType.of(16, 4, millivolts(6)),
          UNIT.withstands(volts(100)),
          UNIT.withstands(volts(101)));
    }
  }

  @Nested
  class Plans extends ValueTypeContract<MonitoringPlan> {
    private final List<MonitoredModule> modules = List.of(MonitoredModule.of("a", "rear", 6));

    @Override
    protected MonitoringPlan sample() {
      return MonitoringPlan.of(modules, UNIT, volts(100));
    }

    @Override
    protected List<MonitoringPlan> different() {
      return List.of(
          MonitoringPlan.of(List.of(MonitoredModule.of("b", "rear", 6)), UNIT, volts(100)),
          MonitoringPlan.of(modules, UNIT.withstands(volts(9)), volts(100)),
          MonitoringPlan.of(modules, UNIT, volts(101)),
          sample().tapsFused(true),
          sample().tapsFused(false));
    }

    @Override
    protected Stream<MonitoringPlan> madeFromInputsChangedLater() {
      List<MonitoredModule> list = new ArrayList<>(modules);
      MonitoringPlan plan = MonitoringPlan.of(list, UNIT, volts(100));
      list.clear();
      return Stream.of(plan);
    }

    @Override
    protected Stream<Object> partsHandedOut(MonitoringPlan value) {
      return Stream.of(value.units());
    }
  }

  @Nested
  class Signals extends ValueTypeContract<ThrottleSignal> {
    @Override
    protected ThrottleSignal sample() {
      return ThrottleSignal.of(TRACK, OTHER, volts(5));
    }

    @Override
    protected List<ThrottleSignal> different() {
      return List.of(
          ThrottleSignal.of(OTHER, TRACK, volts(5)),
          ThrottleSignal.of(TRACK, TRACK, volts(5)),
          ThrottleSignal.of(TRACK, OTHER, volts(5.1)),
          sample().deviationLimit(0.05),
          sample().timeLimit(milliseconds(70)));
    }
  }

  @Nested
  class Maps extends ValueTypeContract<ThrottleMap> {
    @Override
    protected ThrottleMap sample() {
      return ThrottleMap.between(0.1, 0.1);
    }

    @Override
    protected List<ThrottleMap> different() {
      return List.of(
          ThrottleMap.between(0.2, 0.1),
          ThrottleMap.between(0.1, 0.2),
          sample().through(0.5, 0.4),
          sample().risesIn(seconds(1)),
          sample().fallsIn(seconds(1)));
    }
  }

  @Nested
  class Cases extends ValueTypeContract<InterlockCase> {
    @Override
    protected InterlockCase sample() {
      return InterlockCase.when(InterlockSignal.KEY, SignalState.ON)
          .and(InterlockSignal.BRAKE, SignalState.PRESSED);
    }

    @Override
    protected List<InterlockCase> different() {
      return List.of(
          InterlockCase.any(),
          InterlockCase.when(InterlockSignal.KEY, SignalState.ON),
          InterlockCase.when(InterlockSignal.KEY, SignalState.OFF),
          sample().and(InterlockSignal.CRASH, SignalState.ON));
    }

    @Override
    protected Stream<Object> partsHandedOut(InterlockCase value) {
      return Stream.of(value.conditions());
    }
  }

  @Nested
  class Tables extends ValueTypeContract<TruthTable> {
    @Override
    protected TruthTable sample() {
      return TruthTable.of("t", InterlockSignal.KEY);
    }

    @Override
    protected List<TruthTable> different() {
      return List.of(
          TruthTable.of("u", InterlockSignal.KEY),
          TruthTable.of("t", InterlockSignal.CRASH),
          sample().line(InterlockCase.any(), InterlockReaction.READY),
          sample().line(InterlockCase.any(), InterlockReaction.NOT_READY));
    }

    @Override
    protected Stream<Object> partsHandedOut(TruthTable value) {
      return Stream.of(value.lines(), value.signals(), value.combinations());
    }
  }

  @Nested
  class Senders extends ValueTypeContract<SenderMapping> {
    @Override
    protected SenderMapping sample() {
      return SenderMapping.linear(ohms(240), ohms(33));
    }

    @Override
    protected List<SenderMapping> different() {
      return List.of(
          SenderMapping.linear(ohms(33), ohms(240)), SenderMapping.linear(ohms(240), ohms(30)));
    }
  }

  @Nested
  class Sections extends ValueTypeContract<BeamSection> {
    @Override
    protected BeamSection sample() {
      return tube(40, 30, 3);
    }

    private BeamSection tube(double width, double height, double wall) {
      return BeamSection.rectangularTube(
          millimetres(width), millimetres(height), millimetres(wall));
    }

    @Override
    protected List<BeamSection> different() {
      return List.of(
          tube(30, 40, 3),
          tube(40, 30, 4),
          tube(40, 30, 3).withHole(millimetres(9)),
          BeamSection.flatBar(millimetres(40), millimetres(30)),
          BeamSection.roundTube(millimetres(40), millimetres(3)));
    }
  }

  @Nested
  class Signatures extends ValueTypeContract<Attestations> {
    @Override
    protected Attestations sample() {
      return Attestations.none().and(attestation(AttestedItem.LABELS, true));
    }

    private Attestation attestation(AttestedItem item, boolean inOrder) {
      return new Attestation(item, "A. Mill", "3 May", inOrder, "");
    }

    @Override
    protected List<Attestations> different() {
      return List.of(
          Attestations.none(),
          Attestations.none().and(attestation(AttestedItem.INTERLOCK, true)),
          Attestations.none().and(attestation(AttestedItem.LABELS, false)));
    }
  }
}
