package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.gigapascals;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.ohmsPerMetre;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Worksheet;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Stance;

/** Gauges, stop lamps, springs, brackets and signatures: edges, verdicts and bad input. */
class GaugesTest {
  private static final Shunt SHUNT = new Shunt(amperes(500), millivolts(50));

  @Test
  void shuntVerdicts() {
    assertThat(SHUNT.checks(amperes(300), amperes(450)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS, Outcome.PASS);
    assertThat(SHUNT.checks(amperes(334), amperes(501)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.FAIL);
    assertThat(SHUNT).isEqualTo(new Shunt(kiloamperes(0.5), volts(0.05)));
    assertThat(SHUNT.worksheet(amperes(100)).step("P").orElseThrow().result()).hasToString("1 W");
  }

  @Test
  void bothWayAmmeter() {
    Ammeter meter =
        new Ammeter(new Shunt(amperes(500), millivolts(50)), amperes(400), amperes(100));
    assertThat(meter.needle(amperes(0), SHUNT)).isCloseTo(0.2, within(1e-12));
    assertThat(meter.needle(amperes(-100), SHUNT)).isCloseTo(0, within(1e-12));
    assertThat(meter.needle(amperes(-200), SHUNT)).isZero();
    assertThat(meter.needle(amperes(500), SHUNT)).isEqualTo(1);
    assertThat(meter.checks(SHUNT, amperes(400), amperes(100)))
        .extracting(Check::outcome)
        .containsOnly(Outcome.PASS);
    assertThat(meter.checks(SHUNT, amperes(401), amperes(101)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS, Outcome.FAIL, Outcome.FAIL);
    Shunt other = new Shunt(amperes(500), millivolts(75));
    assertThat(meter.checks(other, amperes(100), amperes(10)).get(0).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(meter.trueCurrent(meter.shown(amperes(123), other), other))
        .matches(a -> Math.abs(Kind.CURRENT.siValueOf(a) - 123) < 1e-9);
  }

  @Test
  void senderEdges() {
    SenderMapping falling = SenderMapping.linear(ohms(240), ohms(33));
    assertThat(falling.resistanceFor(0)).isEqualTo(ohms(240));
    assertThat(falling.resistanceFor(1)).isEqualTo(ohms(33));
    SenderMapping rising = SenderMapping.linear(ohms(0), ohms(90));
    assertThat(rising.heat(0, ohms(0), volts(12))).hasToString("0 W");
    assertThat(rising.toMarkdown(2)).contains("45 Ω").contains("50 %");
    SenderMapping.SwitchedSender thermal =
        new SenderMapping.SwitchedSender(ohms(10), SenderMapping.Movement.THERMAL);
    // the note of the moving-iron row: 0.1035011
    assertThat(falling.dutyFor(0.5, ohms(50), thermal)).isCloseTo(0.1035011, within(5e-8));
  }

  @Test
  void dialsHoldTheirEnds() {
    DialScale.TemperatureMarks marks = new DialScale.TemperatureMarks(celsius(40), celsius(140));
    assertThat(DialScale.level(celsius(90), marks)).isCloseTo(0.5, within(1e-12));
    assertThat(DialScale.level(celsius(20), marks)).isZero();
    assertThat(DialScale.level(celsius(150), marks)).isEqualTo(1);
    assertThat(DialScale.level(kilometres(30), kilometres(120))).isEqualTo(0.25);
    assertThat(DialScale.level(kilometres(130), kilometres(120))).isEqualTo(1);
  }

  @Test
  void stopLampSwitch() {
    assertThat(lamp(1.0, 0.8)).containsOnly(Outcome.PASS);
    assertThat(lamp(1.4, 0.8)).containsExactly(Outcome.FAIL, Outcome.PASS, Outcome.PASS);
    assertThat(lamp(0.6, 0.6)).containsExactly(Outcome.PASS, Outcome.FAIL, Outcome.FAIL);
    assertThat(StopLampRule.checkWithoutSignal(metresPerSecondSquared(1.3)).outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(StopLampRule.checkWithoutSignal(metresPerSecondSquared(1.31)).outcome())
        .isEqualTo(Outcome.FAIL);
  }

  private static List<Outcome> lamp(double on, double off) {
    return StopLampRule.lightsAbove(metresPerSecondSquared(on))
        .putsOutBelow(metresPerSecondSquared(off))
        .checks()
        .stream()
        .map(Check::outcome)
        .toList();
  }

  @Test
  void forceAndDecelerationAreInverse() {
    ReleaseRegeneration van = new ReleaseRegeneration(kilograms(1250), 1.05, newtons(250));
    for (double rate : new double[] {0.3, 0.7, 1.3, 2}) {
      double back =
          Kind.ACCELERATION.siValueOf(
              van.deceleration(van.wheelForceFor(metresPerSecondSquared(rate))));
      assertThat(back).isCloseTo(rate, within(1e-12));
    }
    assertThat(van.wheelForceFor(metresPerSecondSquared(0))).hasToString("0 N");
    assertThat(van.worksheet(newtons(1000)).step("a")).isPresent();
  }

  @Test
  void aSecondHoldIsRecommended() {
    Stance stance =
        Stance.of(
            kilograms(1500),
            metres(2.3),
            Position.behindFrontAxle(metres(1.2)).aboveGround(metres(0.6)));
    StandingHold.Ground ground = new StandingHold.Ground(0.2, 0.8);
    ParkingBrake brake = ParkingBrake.on(Axle.REAR);
    List<Check> alone = StandingHold.checks(brake, stance, ground, false);
    assertThat(alone).hasSize(4);
    assertThat(alone.get(3).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(StandingHold.checks(brake, stance, ground, true).get(3).outcome())
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void headlampBand() {
    assertThat(outcomes(new HeadlampAim(-0.0125).initialChecks())).containsOnly(Outcome.PASS);
    assertThat(outcomes(new HeadlampAim(0.001).initialChecks()))
        .containsExactly(Outcome.PASS, Outcome.FAIL);
    assertThat(outcomes(new HeadlampAim(-0.03).loadChecks()))
        .containsExactly(Outcome.FAIL, Outcome.PASS);
  }

  private static List<Outcome> outcomes(List<Check> checks) {
    return checks.stream().map(Check::outcome).toList();
  }

  @Test
  void aLongerOrHeavierLoadedBeamBendsMore() {
    BeamSection tube =
        BeamSection.rectangularTube(millimetres(40), millimetres(40), millimetres(3));
    for (BracketBeam.Loading loading : BracketBeam.Loading.values()) {
      BracketBeam small = new BracketBeam(tube, metres(0.5), loading);
      BracketBeam large = new BracketBeam(tube, metres(1.0), loading);
      double once = Kind.LENGTH.siValueOf(small.deflection(newtons(100), gigapascals(210)));
      double twice = Kind.LENGTH.siValueOf(large.deflection(newtons(100), gigapascals(210)));
      assertThat(twice).isCloseTo(8 * once, within(1e-12));
      assertThat(Kind.TORQUE.siValueOf(large.moment(newtons(100))))
          .isCloseTo(2 * Kind.TORQUE.siValueOf(small.moment(newtons(100))), within(1e-12));
    }
    assertThat(
            new BracketBeam(tube, metres(1), BracketBeam.Loading.CANTILEVER)
                .worksheet(newtons(100))
                .step("σ")
                .orElseThrow()
                .result())
        .hasToString("19.61 MPa");
  }

  @Test
  void handbookDeflections() {
    // F·L³/(48·E·I), F·L³/(192·E·I): a solid bar 10 mm × 10 mm, I = 833.33 mm⁴
    BeamSection bar = BeamSection.flatBar(millimetres(10), millimetres(10));
    double base = 100 * 1.0 / (210e9 * 1e-8 / 12);
    assertThat(deflection(bar, BracketBeam.Loading.FREE_ENDS_MIDDLE))
        .isCloseTo(base / 48, within(1e-15));
    assertThat(deflection(bar, BracketBeam.Loading.BUILT_IN_MIDDLE))
        .isCloseTo(base / 192, within(1e-15));
  }

  private static double deflection(BeamSection section, BracketBeam.Loading loading) {
    return Kind.LENGTH.siValueOf(
        new BracketBeam(section, metres(1), loading).deflection(newtons(100), gigapascals(210)));
  }

  @Test
  void nothingIsSignedUntilSomebodySigns() {
    assertThat(Attestations.none().checks())
        .hasSize(7)
        .allMatch(c -> c.outcome() == Outcome.NOT_CHECKED && c.isSafety());
    Attestation good = new Attestation(AttestedItem.LABELS, "A. Mill", "3 May", true, "two moved");
    Attestation bad = new Attestation(AttestedItem.HOSE_ROUTING, "A. Mill", "3 May", false, "");
    List<Check> checks = Attestations.none().and(good).and(bad).checks();
    assertThat(checks)
        .filteredOn(c -> c.outcome() == Outcome.PASS)
        .extracting(Check::code, Check::note)
        .containsExactly(
            tuple("installation.attested-labels", "signed by A. Mill, 3 May: two moved"));
    assertThat(checks)
        .filteredOn(c -> c.outcome() == Outcome.FAIL)
        .extracting(Check::code)
        .containsExactly("installation.attested-hoses");
    assertThatThrownBy(() -> Attestations.none().and(good).and(good))
        .hasMessageStartingWith("Attestations.item");
  }

  /** The formula with its numbers gives the result that the method gives. */
  @Test
  void workingOfTheSmallFormulas() {
    SenderMapping sender = SenderMapping.linear(ohms(240), ohms(33));
    assertThat(result(sender.worksheet(0.5, ohms(50), volts(12)), "P")).isEqualTo("565.1 mW");
    assertThat(result(new PedalGear(4, millimetres(22.22)).worksheet(newtons(500)), "p"))
        .isEqualTo("5.158 MPa");
    Ammeter meter = Ammeter.bothWays(amperes(100), millivolts(75));
    Shunt small = new Shunt(amperes(200), millivolts(50));
    assertThat(result(meter.worksheet(amperes(120), small), "I_shown")).isEqualTo("40 A");
    WheelSpring spring = new WheelSpring(newtonsPerMillimetre(20));
    assertThat(result(spring.worksheet(newtons(300), kilograms(300)), "Δz")).isEqualTo("15 mm");
    assertThat(result(spring.worksheet(newtons(0), kilograms(300)), "f")).isEqualTo("1.299 Hz");
    HeadlampAim.Pitch pitch = new HeadlampAim.Pitch(millimetres(8), millimetres(22), metres(2.3));
    assertThat(result(new HeadlampAim(-0.012).worksheet(pitch), "n")).isEqualTo("0.1043 %");
    ThrottleSignal throttle =
        ThrottleSignal.of(
            new ThrottleTrack(volts(0.8), volts(4)),
            new ThrottleTrack(volts(0.4), volts(2)),
            volts(5));
    assertThat(result(throttle.worksheet(volts(2.4), volts(1)), "Δx")).isEqualTo("12.5 %");
    SenseWire wire = new SenseWire(metres(1), ohmsPerMetre(0.01724 / 0.35));
    assertThat(result(wire.worksheet(volts(25.2)), "I")).isEqualTo("255.8 A");
  }

  private static String result(Worksheet sheet, String symbol) {
    return sheet.step(symbol).orElseThrow().result().toString();
  }

  @Test
  void rejectsWhatCannotBe() {
    SenderMapping sender = SenderMapping.linear(ohms(240), ohms(33));
    List.<ThrowingCallable>of(
            () -> new Shunt(amperes(0), millivolts(50)),
            () -> SHUNT.resolution(millivolts(80), 1),
            () -> SHUNT.burdenError(ohms(0)),
            () -> new Ammeter(SHUNT, amperes(0), amperes(0)),
            () -> SenderMapping.linear(ohms(10), ohms(10)),
            () -> sender.resistanceFor(1.1),
            () -> sender.dutyFor(1, ohms(50), switched(34)),
            () -> SenderMapping.of(List.of(point(0, 1), point(0.5, 3), point(1, 2))),
            () -> SenderMapping.of(List.of(point(0.1, 1), point(1, 2))),
            () -> new DialScale.ChargeMarks(percentCharge(50), percentCharge(50)),
            () -> new DialScale.TemperatureMarks(celsius(90), celsius(80)),
            () -> DialScale.level(kilometres(-1), kilometres(100)),
            () -> StopLampRule.signalFor(metresPerSecondSquared(-0.1)),
            () ->
                StopLampRule.lightsAbove(metresPerSecondSquared(1))
                    .putsOutBelow(metresPerSecondSquared(1.1)),
            () -> new ReleaseRegeneration(kilograms(1000), 0.9, newtons(0)),
            () -> new ReleaseRegeneration.Gearing(metres(0.3), 9, 1.1),
            () -> WheelSpring.behind(newtonsPerMillimetre(60), 0),
            () -> new HeadlampAim(Double.NaN),
            () -> BeamSection.rectangularTube(millimetres(40), millimetres(10), millimetres(5)),
            () -> BeamSection.flatBar(millimetres(40), millimetres(8)).withHole(millimetres(5)),
            () ->
                BeamSection.flatBar(millimetres(40), millimetres(8)).torsionStress(newtonMetres(1)),
            () -> new Attestation(AttestedItem.LABELS, " ", "3 May", true, ""))
        .forEach(call -> assertThatThrownBy(call).isInstanceOf(InvalidInputException.class));
  }

  private static SenderMapping.DialPoint point(double level, double ohm) {
    return new SenderMapping.DialPoint(level, ohms(ohm));
  }

  private static SenderMapping.SwitchedSender switched(double ohm) {
    return new SenderMapping.SwitchedSender(ohms(ohm), SenderMapping.Movement.MOVING_IRON);
  }
}
