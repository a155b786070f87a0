package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.NOT_CHECKED;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Loops that two isolation faults close through the chassis, and bonding; parts are invented. */
class ChassisFaultLoopTest {
  private static List<ChassisFaultLoop> loops(Fuse rear) {
    return SeriesChain.startingAt("rear minus", "rear box")
        .cells(volts(200), milliohms(40), volts(160), milliohms(120))
        .fuse(rear)
        .to("rear plus", "rear box")
        .link(milliohms(1))
        .to("front minus", "front box")
        .cells(volts(180), milliohms(36), volts(144), milliohms(110))
        .to("front plus", "front box")
        .faultLoops(milliohms(9), milliohms(39));
  }

  private static FuseBuilder fuse() {
    return Fuse.of("F", amperes(200)).directVoltage(volts(450));
  }

  @Test
  void everyPairInDifferentBoxesWithCellsBetween() {
    List<ChassisFaultLoop> loops = loops(fuse().build());
    assertThat(loops)
        .extracting(ChassisFaultLoop::toString)
        .containsExactly(
            "rear minus (rear box) – front minus (front box)",
            "rear minus (rear box) – front plus (front box)",
            "rear plus (rear box) – front plus (front box)");
    assertThat(loops.get(0).voltage()).isEqualTo(volts(200));
    assertThat(Kind.CURRENT.siValueOf(loops.get(0).current()))
        .isCloseTo(200 / 0.050, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(loops.get(1).voltage()).isEqualTo(volts(380));
  }

  @Test
  void aLoopNeedsAFuseThatClearsIt() {
    Fuse good = fuse().breakingCapacity(kiloamperes(20)).partialRange(amperes(800)).build();
    List<ChassisFaultLoop> loops = loops(good);
    assertThat(loops.get(0).check().outcome()).isEqualTo(PASS);
    assertThat(loops.get(1).check().outcome()).isEqualTo(PASS);
    assertThat(loops.get(2).check().outcome()).isEqualTo(FAIL);
    assertThat(loops.get(2).check().note()).contains("no fuse in the loop");
    Fuse weak = fuse().breakingCapacity(amperes(3999)).partialRange(amperes(800)).build();
    assertThat(loops(weak).get(0).check().outcome()).isEqualTo(FAIL);
    // lowest of the first loop: 160 V through 120 + 1 + 39 mΩ
    Fuse late = fuse().breakingCapacity(kiloamperes(20)).partialRange(amperes(1001)).build();
    assertThat(loops(late).get(0).check().outcome()).isEqualTo(FAIL);
    Fuse low =
        Fuse.of("F", amperes(200))
            .directVoltage(volts(379))
            .breakingCapacity(kiloamperes(20))
            .partialRange(amperes(800))
            .build();
    assertThat(loops(low).get(1).check().outcome()).isEqualTo(FAIL);
  }

  @Test
  void theLowestCurrentCountsTheHighestResistance() {
    ChassisFaultLoop first = loops(fuse().build()).get(0);
    assertThat(Kind.CURRENT.siValueOf(first.lowestCurrent().orElseThrow()))
        .isCloseTo(1000, org.assertj.core.api.Assertions.within(1e-9));
    Fuse just = fuse().breakingCapacity(kiloamperes(20)).partialRange(amperes(999)).build();
    assertThat(loops(just).get(0).check().outcome()).isEqualTo(PASS);
    assertThat(loops(just).get(0).check().note()).isEqualTo("200 V, 1 kA … 4 kA, cleared by F");
  }

  @Test
  void withoutALowestCurrentNothingIsShown() {
    Fuse good = fuse().breakingCapacity(kiloamperes(20)).partialRange(amperes(800)).build();
    ChassisFaultLoop loop =
        SeriesChain.startingAt("minus", "rear box")
            .cells(volts(200), milliohms(40))
            .fuse(good)
            .to("plus", "front box")
            .faultLoops(milliohms(10))
            .get(0);
    assertThat(loop.lowestCurrent()).isEmpty();
    assertThat(loop.check().outcome()).isEqualTo(NOT_CHECKED);
    assertThat(loop.check().missing())
        .containsExactly("chain.lowestVoltage", "chain.highestResistance");
    ChassisFaultLoop bare =
        SeriesChain.startingAt("minus", "rear box")
            .cells(volts(200), milliohms(40))
            .to("plus", "front box")
            .faultLoops(milliohms(10))
            .get(0);
    assertThat(bare.check().outcome()).isEqualTo(FAIL);
  }

  @Test
  void theEndsOfABandKeepTheirOrder() {
    SeriesChain chain = SeriesChain.startingAt("minus", "rear box");
    assertThat(chain.to("plus", "front box")).hasToString("minus (rear box) – plus (front box)");
    assertThatThrownBy(() -> chain.cells(volts(200), milliohms(40), volts(201), milliohms(40)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("highest less lowest");
    assertThatThrownBy(() -> chain.cells(volts(200), milliohms(40), volts(200), milliohms(39)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("most less least");
    assertThatThrownBy(() -> chain.faultLoops(milliohms(2), milliohms(1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("SeriesChain.bond");
    assertThatThrownBy(() -> chain.faultLoops(milliohms(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("SeriesChain.bond");
    assertThatThrownBy(() -> chain.link(milliohms(-1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("SeriesChain.resistance");
    assertThatThrownBy(() -> chain.to(" ", "box"))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("SeriesChain.point");
  }

  @Test
  void anUnknownRatingIsNamed() {
    assertThat(loops(fuse().build()).get(0).check().outcome()).isEqualTo(NOT_CHECKED);
    assertThat(loops(fuse().build()).get(0).check().missing())
        .containsExactly("F.breakingCapacity", "F.minimumBreakingCurrent");
  }

  @Test
  void bondingIsStrictlyBelowItsLimit() {
    assertThat(Bonding.toChassis("box", ohms(0.09)).outcome()).isEqualTo(PASS);
    assertThat(Bonding.toChassis("box", ohms(0.1)).outcome()).isEqualTo(FAIL);
    assertThat(Bonding.testCurrent(amperes(0.1)).outcome()).isEqualTo(FAIL);
  }

  @Test
  void residualCurrentIsOpenUntilAttested() {
    assertThat(InletProtection.residualCurrentUnknown().outcome()).isEqualTo(NOT_CHECKED);
    assertThat(InletProtection.residualCurrentAttested("electrician", true).outcome())
        .isEqualTo(PASS);
    assertThat(InletProtection.residualCurrentAttested("electrician", false).outcome())
        .isEqualTo(FAIL);
  }
}
