package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microohms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** What a sizing finds on one cable: each duty, each gap in the data, each way to fail. */
class SizingFindingsTest {
  private static final Installation SHOP = Installation.freeAir(celsius(40));
  private static final ConductorSize SIZE =
      ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE);
  private static final Cable BARE = Cable.of("bare", SIZE, InsulationMaterial.XLPE).build();
  private static final Cable FULL =
      BARE.toBuilder()
          .conductorDiameter(millimetres(7.9))
          .outerDiameter(millimetres(11.7))
          .voltageRating(volts(600))
          .build();
  private static final Profile<ElectricCurrent> PULSES =
      Profile.segments(Kind.CURRENT)
          .hold(amperes(200), seconds(30))
          .hold(amperes(50), seconds(90))
          .build();

  private static ConductorSizer sizer(Cable cable) {
    return ConductorSizer.over(List.of(cable)).installation(SHOP);
  }

  private static SizingLine line(ConductorSizer sizer) {
    return sizer.run().table().lines().get(0);
  }

  private static Check check(ConductorSizer sizer, SizingCriterion criterion) {
    return line(sizer).check(criterion).orElseThrow();
  }

  private static double dropV(ConductorSizer sizer) {
    return Kind.VOLTAGE.siValueOf(
        check(sizer, SizingCriterion.VOLTAGE_DROP).actual().orElseThrow().quantity(Kind.VOLTAGE));
  }

  @Test
  void dropCountsBothLengthsAndItsOwnCurrent() {
    ConductorSizer sizer = sizer(FULL).continuousCurrent(amperes(100)).length(metres(3));
    double evenV = dropV(sizer.voltageDropAtMost(volts(2)));
    assertThat(dropV(sizer.lengths(metres(3), metres(0)).voltageDropAtMost(volts(2))))
        .isCloseTo(evenV / 2, withPercentage(1e-10));
    assertThat(dropV(sizer.voltageDropAtMost(volts(2), amperes(250))))
        .isCloseTo(evenV * 2.5, withPercentage(1e-10));
    // Of a profile the peak counts, at the hottest the conductor gets.
    double hotK = TransientHeating.of(FULL, SHOP).settled(PULSES).peakK();
    double expectedV =
        Kind.VOLTAGE.siValueOf(
            ConductorRun.of(FULL, metres(3)).dropAt(amperes(200), Kind.TEMPERATURE.ofSi(hotK)));
    assertThat(dropV(sizer(FULL).profile(PULSES).length(metres(3)).voltageDropAtMost(volts(2))))
        .isCloseTo(expectedV, withPercentage(1e-9));
    // Without diameters the conductor is taken at its limit, 90 °C.
    assertThat(
            dropV(
                sizer(BARE)
                    .continuousCurrent(amperes(100))
                    .length(metres(3))
                    .voltageDropAtMost(volts(2))))
        .isCloseTo(
            Kind.VOLTAGE.siValueOf(
                ConductorRun.of(BARE, metres(3)).dropAt(amperes(100), celsius(90))),
            withPercentage(1e-10));
  }

  @Test
  void sharingOfRunsIsTheUsersToState() {
    ConductorSizer pair =
        sizer(FULL).continuousCurrent(amperes(300)).sharingUnbalance(0.25).parallelRunsUpTo(2);
    SizingResult.Sized sized = pair.run().orElseThrow();
    assertThat(sized.worksheet().toText()).contains("300 A · (1 + 25 %) / 2");
    assertThat(pair).hasToString("sizer over 1 cables, up to 2 in parallel");
  }

  @Test
  void whatNeedsDiametersIsNotCheckedWithoutThem() {
    ConductorSizer sizer = sizer(BARE).profile(PULSES).terminalTemperatureAtMost(celsius(105));
    for (SizingCriterion criterion :
        List.of(SizingCriterion.PROFILE_PEAK_TEMPERATURE, SizingCriterion.TERMINAL_TEMPERATURE)) {
      assertThat(check(sizer, criterion).outcome()).isEqualTo(Outcome.NOT_CHECKED);
      assertThat(check(sizer, criterion).missing())
          .containsExactly("Cable.conductorDiameter of bare", "Cable.outerDiameter of bare");
    }
    assertThat(line(sizer))
        .hasToString("35 mm² bare: not checked profile peak, terminal temperature");
    assertThat(sizer.allowProvisional().run().toString()).endsWith(", provisional");
  }

  @Test
  void aMethodThatDoesNotRateIsNotChecked() {
    Check check =
        check(
            sizer(FULL).continuousCurrent(amperes(10)).ampacityBy(AmpacityTable.NEC_RACEWAY),
            SizingCriterion.AMPACITY);
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing().get(0)).startsWith("NEC_RACEWAY: no entry for 35 mm²");
  }

  @Test
  void runawayFailsTheConductorAndItsTerminal() {
    Joint lug = joint(30).withTemperatureLimit(celsius(105));
    ConductorSizer sizer = sizer(FULL).continuousCurrent(amperes(2000)).joints(List.of(lug));
    for (SizingCriterion criterion :
        List.of(SizingCriterion.CONTINUOUS_TEMPERATURE, SizingCriterion.TERMINAL_TEMPERATURE)) {
      assertThat(check(sizer, criterion).outcome()).isEqualTo(Outcome.FAIL);
      assertThat(check(sizer, criterion).note()).contains("runs away");
    }
    SizingResult result = sizer.run();
    assertThat(result.toString())
        .startsWith("no size: continuous temperature blocks; ruled out by");
    assertThat(result.<String>fold(sized -> "sized", not -> not.blocking().toString()))
        .isEqualTo("continuous temperature");
    assertThat(line(sizer))
        .hasToString("35 mm² bare: fails continuous temperature, terminal temperature");
    assertThat(line(sizer(FULL).continuousCurrent(amperes(10)))).hasToString("35 mm² bare: passes");
  }

  private static Joint joint(double microohms) {
    return Joint.of("lug", Given.measured(microohms(microohms), "micro-ohmmeter"));
  }

  /** The rise of a fin: P/√(g·λ·A), by the working in the worksheet. */
  @Test
  void theWorstTerminalSpeaksAgainstItsOwnLimit() {
    Joint cool = joint(10).withTemperatureLimit(celsius(150));
    Joint hot = joint(60).withTemperatureLimit(celsius(110));
    Joint free = joint(20);
    ConductorSizer sizer = sizer(FULL).continuousCurrent(amperes(150));
    Check alone = terminal(sizer.joints(List.of(hot)));
    assertThat(terminal(sizer.joints(List.of(cool, hot, free)))).isEqualTo(alone);
    assertThat(terminal(sizer.joints(List.of(hot, free, cool)))).isEqualTo(alone);
    // The circuit's own limit holds for all, the lower of the two for each.
    Check strict =
        terminal(sizer.joints(List.of(cool, hot)).terminalTemperatureAtMost(celsius(90)));
    assertThat(strict.limit().orElseThrow().quantity(Kind.TEMPERATURE)).isEqualTo(celsius(90));
    Check loose = terminal(sizer.joints(List.of(hot)).terminalTemperatureAtMost(celsius(140)));
    assertThat(loose.limit()).isEqualTo(alone.limit());
    assertThat(sizer.joints(List.of(hot)).run().orElseThrow().worksheet().toText())
        .contains("rise of lug over the cable, which cools it as a fin [estimated]");
    Check without = terminal(sizer.joints(List.of(free)).terminalTemperatureAtMost(celsius(90)));
    assertThat(without.limit().orElseThrow().quantity(Kind.TEMPERATURE)).isEqualTo(celsius(90));
  }

  private static Check terminal(ConductorSizer sizer) {
    return check(sizer, SizingCriterion.TERMINAL_TEMPERATURE);
  }

  @Test
  void aTerminalIsNeverColderThanItsCable() {
    Joint perfect =
        joint(0).withThermalResistance(kelvinsPerWatt(1)).withTemperatureLimit(celsius(110));
    ConductorSizer sizer = sizer(FULL).continuousCurrent(amperes(150)).joints(List.of(perfect));
    assertThat(terminal(sizer).actual())
        .isEqualTo(check(sizer, SizingCriterion.CONTINUOUS_TEMPERATURE).actual());
  }

  @Test
  void voltageAndProfileStandInTheAnswer() {
    ConductorSizer sizer = sizer(FULL).profile(PULSES).circuitVoltage(volts(400));
    assertThat(check(sizer, SizingCriterion.VOLTAGE_RATING).outcome()).isEqualTo(Outcome.PASS);
    assertThat(check(sizer.circuitVoltage(volts(601)), SizingCriterion.VOLTAGE_RATING).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(sizer.run().orElseThrow().worksheet().toText())
        .contains("θ_p = peak of C·dθ/dt = I(t)²·R′(θ) − q(θ)");
  }

  @Test
  void ofTwoAlikeTheLighterThenTheFirstByName() {
    Cable light =
        FULL.toBuilder().massPerLength(org.wattwright.units.Measures.gramsPerMetre(300)).build();
    Cable heavy =
        FULL.toBuilder().massPerLength(org.wattwright.units.Measures.gramsPerMetre(400)).build();
    SizingResult result =
        ConductorSizer.over(List.of(heavy, FULL, light))
            .installation(SHOP)
            .continuousCurrent(amperes(50))
            .run();
    assertThat(result.orElseThrow().cable()).isEqualTo(light);
    assertThat(result.table().lines().stream().map(SizingLine::cable))
        .containsExactly(light, heavy, FULL);
  }

  @Test
  void airAsHotAsTheLimitLeavesNoRoom() {
    ConductorSizer hot =
        sizer(FULL).installation(Installation.freeAir(celsius(95))).continuousCurrent(amperes(1));
    assertThat(check(hot, SizingCriterion.CONTINUOUS_TEMPERATURE).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(line(hot).mostUsed()).isEqualTo(SizingCriterion.CONTINUOUS_TEMPERATURE);
  }
}
