package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.flatCell;
import static org.wattwright.battery.Fixtures.linear;
import static org.wattwright.battery.Fixtures.string;
import static org.wattwright.battery.Fixtures.unlimited;
import static org.wattwright.battery.PackTest.assertInvalid;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kilojoulesPerMole;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

class EqualisationTest {
  private static final PackState FULL = PackState.of(percentCharge(100), celsius(25));
  private static final PackState EMPTY = PackState.of(percentCharge(0), celsius(25));

  private static SeriesString linearString(double emptyV, double slopeV) {
    return string(
        unlimited(linear(emptyV, slopeV), ResistanceTable.constant(milliohms(100))).build());
  }

  @Test
  void equalStringsDoNothing() {
    SeriesString one = linearString(345, 60);
    Equalisation join = Equalisation.between(one, HALF, one, HALF);
    assertThat(join.initialCurrent()).isEqualTo(amperes(0));
    assertThat(join.chargeMoved()).isEqualTo(ampereHours(0));
    assertThat(join.heat()).isEqualTo(Kind.ENERGY.ofSi(0));
    assertThat(join.timeUntilBelow(amperes(1))).isEqualTo(seconds(0));
    assertThat(join.finalOfFirst()).isEqualTo(percentCharge(50));
    assertThat(Outcome.worstOf(join.checks())).isEqualTo(Outcome.PASS);
  }

  @Test
  void theEmptierStringMayComeFirst() {
    SeriesString one = linearString(345, 60);
    Equalisation join = Equalisation.between(one, EMPTY, one, HALF);
    assertThat(Kind.CURRENT.siValueOf(join.initialCurrent())).isCloseTo(-150, within(1e-9));
    assertThat(join.finalOfFirst().fraction()).isCloseTo(0.25, within(1e-12));
    assertThat(join.finalOfSecond().fraction()).isCloseTo(0.25, within(1e-12));
    assertThat(join).hasToString("-150 A at first, -25 A·h moved, 375 W·h of heat");
  }

  @Test
  void stringsThatNeverMeetAreToldApart() {
    SeriesString high = linearString(400, 10);
    SeriesString low = linearString(345, 10);
    Equalisation join = Equalisation.between(high, HALF, low, EMPTY);
    assertThat(join.voltagesMeet()).isFalse();
    assertThat(join.finalOfFirst()).isEqualTo(StateOfCharge.EMPTY);
    assertThat(join.finalOfSecond()).isEqualTo(percentCharge(50));
    assertThat(join.checks())
        .filteredOn(check -> check.code().equals("battery.equalising-end"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL);
    // 50 A·h at a current between 60/0.2 and 50/0.2.
    assertThat(Kind.TIME.siValueOf(join.timeUntilBelow(amperes(1))))
        .isBetween(50 * 3600 / 300.0, 50 * 3600 / 250.0);
    Equalisation nothingLeft = Equalisation.between(high, EMPTY, low, FULL);
    assertThat(nothingLeft.timeConstant()).isEmpty();
    assertThat(nothingLeft.chargeMoved()).isEqualTo(ampereHours(0));
    assertThat(nothingLeft.timeUntilBelow(amperes(1))).isEqualTo(seconds(0));
  }

  @Test
  void aFlatCurveHasNoTimeConstantAndLastsAtOneCurrent() {
    SeriesString high = linearString(350, 0);
    SeriesString low = linearString(348, 0);
    Equalisation join = Equalisation.between(high, HALF, low, HALF);
    assertThat(join.timeConstant()).isEmpty();
    assertThat(Kind.CURRENT.siValueOf(join.initialCurrent())).isCloseTo(10, within(1e-9));
    assertThat(Kind.TIME.siValueOf(join.timeUntilBelow(amperes(5))))
        .isCloseTo(5 * 3600, within(1e-6));
  }

  @Test
  void admissibleIsWhatTheWeakerSideStands() {
    SeriesString flat = SeriesString.of(Fixtures.flatModule(), 5);
    PackState cool = PackState.of(percentCharge(20), celsius(5));
    Equalisation join = Equalisation.between(flat, HALF, flat, cool);
    // Charging the cool string: 35 A a cell at 5 °C, two side by side.
    assertThat(Kind.CURRENT.siValueOf(join.admissibleCurrent())).isCloseTo(70, within(1e-9));
    double ohm =
        Kind.RESISTANCE.siValueOf(Fixtures.pack(flat).resistance(HALF, Direction.DISCHARGE))
            + Kind.RESISTANCE.siValueOf(Fixtures.pack(flat).resistance(cool, Direction.CHARGE));
    assertThat(Kind.VOLTAGE.siValueOf(join.admissibleVoltageDifference()))
        .isCloseTo(70 * ohm, within(1e-9));
    PackState frozen = PackState.of(percentCharge(20), celsius(-5));
    Equalisation forbidden = Equalisation.between(flat, HALF, flat, frozen);
    assertThat(forbidden.admissibleCurrent()).isEqualTo(amperes(0));
    Check check = forbidden.checks().get(0);
    assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check.note()).isEqualTo("charge of string, limited by cell temperature");
  }

  @Test
  void highestAdmissibleStateOfChargeIsAtItsLimitOrFull() {
    Cell steep =
        unlimited(linear(345, 60), ResistanceTable.constant(milliohms(100)))
            .continuousChargeCurrent(amperes(50))
            .build();
    Equalisation join = Equalisation.between(string(steep), FULL, string(steep), HALF);
    StateOfCharge highest = join.admissibleStateOfCharge();
    Equalisation at =
        Equalisation.between(
            string(steep), PackState.of(highest, celsius(25)), string(steep), HALF);
    assertThat(Kind.CURRENT.siValueOf(at.initialCurrent())).isCloseTo(50, within(1e-9));
    SeriesString flat = linearString(350, 0.1);
    assertThat(Equalisation.between(flat, FULL, flat, EMPTY).admissibleStateOfCharge())
        .isEqualTo(StateOfCharge.FULL);
    SeriesString above =
        string(
            unlimited(linear(400, 1), ResistanceTable.constant(milliohms(100)))
                .continuousDischargeCurrent(amperes(1))
                .build());
    assertThat(Equalisation.between(above, FULL, flat, EMPTY).admissibleStateOfCharge())
        .isEqualTo(StateOfCharge.EMPTY);
  }

  @Test
  void anEstimatedResistanceIsCheckedAtItsLowEnd() {
    Cell guessed =
        flatCell().resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(105))).build();
    SeriesString one = string(guessed);
    PackState low = PackState.of(percentCharge(45), celsius(25));
    Equalisation join = Equalisation.between(one, HALF, one, low);
    Check check = join.checks().get(0);
    assertThat(check.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    double typicalA = Kind.CURRENT.siValueOf(join.initialCurrent());
    assertThat(Kind.CURRENT.siValueOf(check.actual().orElseThrow().quantity(Kind.CURRENT)))
        .isCloseTo(typicalA / 0.4, within(1e-9));
  }

  @Test
  void rejectsWrongInput() {
    SeriesString one = linearString(345, 60);
    Equalisation join = Equalisation.between(one, HALF, one, HALF);
    assertInvalid(
        () -> join.timeUntilBelow(amperes(0)), "Equalisation.current must be > 0 A, but was 0 A");
    assertInvalid(
        () -> join.withLeadResistance(milliohms(-1)),
        "Equalisation.leadResistance must be ≥ 0 mΩ, but was -1 mΩ");
  }

  @Test
  void pulseResponseEdges() {
    Cell plain = Fixtures.source(3.3, 0.001).build();
    PulseResponse step = plain.pulseResponse(HALF, amperes(-100), seconds(10));
    assertThat(step.voltageDuring(seconds(0))).isEqualTo(step.voltageAtEnd());
    assertThat(step.voltageAfter(seconds(0))).isEqualTo(volts(3.3));
    assertThat(step.polarisationHeat()).isEqualTo(Kind.ENERGY.ofSi(0));
    assertThat(step.heatAfter()).isEqualTo(Kind.ENERGY.ofSi(0));
    assertThat(Kind.CHARGE.siValueOf(step.chargeMoved())).isCloseTo(-1000, within(1e-9));
    assertThat(step.toString()).isEqualTo("-100 A for 10 s: 3.4 V rising to 3.4 V");
    assertInvalid(
        () -> step.voltageDuring(seconds(10.5)),
        "PulseResponse.sinceStart must be ≤ the duration 10 s, but was 10.5 s");
    assertInvalid(
        () -> step.voltageAfter(seconds(-1)), "PulseResponse.sinceEnd must be ≥ 0 s, but was -1 s");
    assertInvalid(
        () -> plain.pulseResponse(HALF, amperes(1), seconds(0)),
        "PulseResponse.duration must be > 0 s, but was 0 s");
  }

  /**
   * Energy given up at OCV = energy at the terminals + heat in R₀ + heat in R₁ + what is stored.
   */
  @Test
  void pulseHeatBalances() {
    Cell cell = flatCell().rcPair(RcPair.of(milliohms(0.5), seconds(20))).build();
    Pack pack = Pack.of(BatteryModule.of(cell).series(6).parallel(2).build(), 5, 2);
    PulseResponse pulse = pack.pulseResponse(HALF, amperes(300), seconds(30));
    int steps = 3000;
    double lostJ = 0;
    double openV = Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(HALF));
    for (int i = 0; i < steps; i++) {
      double voltageV =
          Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(30 * (i + 0.5) / steps)));
      lostJ += (openV - voltageV) * 300 * 30 / steps;
    }
    double heatJ =
        Kind.ENERGY.siValueOf(pulse.seriesHeat())
            + Kind.ENERGY.siValueOf(pulse.polarisationHeat())
            + Kind.ENERGY.siValueOf(pulse.heatAfter());
    assertThat(heatJ).isCloseTo(lostJ, within(1e-6 * lostJ));
    assertThat(pulse.voltageAtEnd())
        .isEqualTo(pack.terminalVoltage(HALF, amperes(300), seconds(30)));
  }

  @Test
  void lawsRejectWrongInput() {
    assertInvalid(
        () -> PeukertLaw.of(ampereHours(0), hours(10), 1.1),
        "PeukertLaw.capacity must be > 0 A·h, but was 0 A·h");
    assertInvalid(
        () -> PeukertLaw.of(ampereHours(42), hours(10), 0.9),
        "PeukertLaw.exponent must be from 1 to 2, but was 0.9");
    PeukertLaw.Rating rating = new PeukertLaw.Rating(amperes(5), hours(20));
    assertInvalid(
        () -> PeukertLaw.fromRatings(rating, new PeukertLaw.Rating(amperes(5), hours(3))),
        "PeukertLaw.other.current must be different from 5 A, but was the same");
    assertInvalid(
        () -> PeukertLaw.of(ampereHours(42), hours(10), 1.1).dischargeTime(amperes(0)),
        "PeukertLaw.current must be > 0 A, but was 0 A");
    assertInvalid(
        () -> ArrheniusLaw.of(kilojoulesPerMole(-1)),
        "ArrheniusLaw.activationEnergy must be from 0 to 200 kJ/mol, but was -1 kJ/mol");
    ArrheniusLaw.Point cold = new ArrheniusLaw.Point(milliohms(2), celsius(0));
    ArrheniusLaw.Point warm = new ArrheniusLaw.Point(milliohms(1), celsius(25));
    assertInvalid(
        () -> ArrheniusLaw.through(warm, cold),
        "ArrheniusLaw.cold.temperature must be < 0 °C, but was 25 °C");
    assertInvalid(
        () -> new SeriesBalance(List.of()),
        "SeriesBalance.members must be a list with at least one element, but was empty");
    assertInvalid(
        () -> SeriesBalance.of("one", ampereHours(0), StateOfCharge.FULL),
        "SeriesBalance.capacity must be > 0 A·h, but was 0 A·h");
  }

  @Test
  void arrheniusTableStaysCloseBetweenItsPoints() {
    ArrheniusLaw law = ArrheniusLaw.of(kilojoulesPerMole(50));
    ResistanceTable table = law.table(new ArrheniusLaw.Point(milliohms(1), celsius(25)));
    for (double celsius = -39.5; celsius < 60; celsius++) {
      double exact = 1e-3 * law.resistanceFactor(celsius(celsius), celsius(25));
      double ours =
          Kind.RESISTANCE.siValueOf(table.at(PackState.of(percentCharge(50), celsius(celsius))));
      assertThat(ours).isCloseTo(exact, within(2e-3 * exact));
    }
  }
}
