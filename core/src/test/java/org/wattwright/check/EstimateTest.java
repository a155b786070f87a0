package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.Locales;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class EstimateTest {
  private static final Source RULE = Source.commonPractice("invented rule");
  private static final Estimate<ElectricResistance> PACK =
      Estimate.of(
          "pack resistance", milliohms(40), Kind.RESISTANCE, new Estimate.Band(0.5, 2), RULE);

  @Test
  void bandLiesAroundTheTypicalValue() {
    assertThat(PACK.low()).isEqualTo(milliohms(20));
    assertThat(PACK.typical()).isEqualTo(milliohms(40));
    assertThat(PACK.high()).isEqualTo(milliohms(80));
    assertThat(PACK.band()).isEqualTo(new Estimate.Band(0.5, 2));
    assertThat(PACK.name()).isEqualTo("pack resistance");
    assertThat(PACK.source()).isEqualTo(RULE);
  }

  @Test
  void inputMadeOfItSaysThatItIsEstimated() {
    assertThat(PACK.toGiven()).isEqualTo(Given.estimated(milliohms(40), RULE));
  }

  /** Fault current of 100 V, which must stay below a breaking capacity. */
  private static Check highestFault(Given<Quantity<ElectricResistance>> resistance) {
    return Check.named("fault.highest", "highest fault current")
        .source(Source.dataSheet("fuse"))
        .safety()
        .basisOf(resistance)
        .atMost(fault(resistance), Figure.ofSi(6000, AMPERE));
  }

  /** Fault current of 100 V, which must melt a fuse. */
  private static Check lowestFault(Given<Quantity<ElectricResistance>> resistance) {
    return Check.named("fault.lowest", "lowest fault current")
        .source(Source.dataSheet("fuse"))
        .safety()
        .basisOf(resistance)
        .atLeast(fault(resistance), Figure.ofSi(1000, AMPERE));
  }

  private static Figure fault(Given<Quantity<ElectricResistance>> resistance) {
    return Figure.ofSi(100 / OHM.valueOf(resistance.value()), AMPERE);
  }

  @Test
  void safetyCheckTakesTheWorseEndEachWay() {
    Check highest = PACK.worstOf(EstimateTest::highestFault);
    assertThat(highest.actual()).contains(Figure.ofSi(5000, AMPERE));
    assertThat(highest.outcome()).isEqualTo(Outcome.CAUTION);
    Check lowest = PACK.worstOf(EstimateTest::lowestFault);
    assertThat(lowest.actual()).contains(Figure.ofSi(1250, AMPERE));
    assertThat(lowest.outcome()).isEqualTo(Outcome.CAUTION);
  }

  @Test
  void oneEndThatFailsIsEnough() {
    Estimate<ElectricResistance> wide =
        Estimate.of("pack", milliohms(40), Kind.RESISTANCE, new Estimate.Band(0.4, 2.6), RULE);
    assertThat(wide.worstOf(EstimateTest::highestFault).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(wide.worstOf(EstimateTest::lowestFault).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void rejectsCheckThatForgetsTheEstimate() {
    rejects(
        () ->
            PACK.worstOf(
                any ->
                    Check.named("a.b", "x")
                        .source(RULE)
                        .atMost(Figure.ofSi(1, VOLT), Figure.ofSi(2, VOLT))),
        "Check.basis of a.b must be estimated, but was data sheet");
  }

  @Test
  void readsWellUnderEveryLocale() {
    Locales.ALL.forEach(
        locale ->
            Locales.with(
                locale,
                () ->
                    assertThat(PACK)
                        .hasToString("pack resistance about 40 mΩ (20 mΩ … 80 mΩ), estimated")));
  }

  @Test
  void rejectsBadBandsAndValues() {
    rejects(() -> new Estimate.Band(-0.1, 2), "Band.lowFactor must be from 0 to 1, but was -0.1");
    rejects(() -> new Estimate.Band(1.1, 2), "Band.lowFactor must be from 0 to 1, but was 1.1");
    rejects(
        () -> new Estimate.Band(Double.NaN, 2), "Band.lowFactor must be from 0 to 1, but was NaN");
    rejects(() -> new Estimate.Band(1, 0.9), "Band.highFactor must be ≥ 1 and finite, but was 0.9");
    rejects(
        () -> new Estimate.Band(1, Double.POSITIVE_INFINITY),
        "Band.highFactor must be ≥ 1 and finite, but was Infinity");
    Estimate.Band band = new Estimate.Band(1, 1);
    rejects(
        () -> Estimate.of("x", ohms(-1), Kind.RESISTANCE, band, RULE),
        "Estimate.typical must be ≥ 0 Ω, but was -1 Ω");
    rejects(
        () -> Estimate.of("x", celsius(20), Kind.TEMPERATURE, band, RULE),
        "Estimate.kind must be one with a true zero, but was temperature");
    rejects(
        () -> Estimate.of(" ", ohms(1), Kind.RESISTANCE, band, RULE),
        "Estimate.name must be a text, but was \" \"");
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
