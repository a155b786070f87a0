package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import org.junit.jupiter.api.Test;
import org.wattwright.battery.Ageing;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.Joint;
import org.wattwright.conductor.StrandClass;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Highest and lowest fault of an invented pack: 288 V … 403.2 V, 60 mΩ ohmic, 90 mΩ in seconds. */
class FaultSourceTest {
  private static final FaultPath CABLE =
      FaultPath.EMPTY
          .with("cable", Given.measured(milliohms(4), "four-wire"))
          .withInductance("loop", Given.measured(microhenries(20), "bridge"));

  private static double ampere(FaultLoop loop) {
    return Kind.CURRENT.siValueOf(loop.current().prospective());
  }

  @Test
  void highestTakesAllStringsAndTheOhmicResistance() {
    FaultSource source = FaultSource.of(FaultParts.pack(2, FaultParts.stringCell()));
    FaultLoop loop = source.highest(CABLE).orElseThrow();
    assertThat(ampere(loop)).isCloseTo(403.2 / 0.034, within(1e-8));
    assertThat(loop.current().basis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(loop.current().estimates()).isEmpty();
  }

  @Test
  void lowestLosesAStringAgesAndBurnsAnArc() {
    FaultSource source = FaultSource.of(FaultParts.pack(2, FaultParts.stringCell()));
    FaultLoop loop = source.lowest(CABLE);
    assertThat(ampere(loop)).isCloseTo((288 - 20) / 0.184, within(1e-8));
    assertThat(loop.current().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(loop.current().estimates()).containsExactly("arc voltage", "resistance of pack");
  }

  @Test
  void theOnlyStringStays() {
    FaultSource source =
        FaultSource.of(FaultParts.pack(1, FaultParts.stringCell()))
            .withAge(Given.measured(Ageing.of(1, 1.5), "life test"))
            .withArcVoltage(Given.measured(volts(0), "bolted"));
    FaultCurrent usualTime = source.lowest(FaultPath.EMPTY).current();
    assertThat(usualTime.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(usualTime.estimates()).containsExactly("resistance of pack");
    FaultLoop loop =
        source
            .withPolarisationTime(org.wattwright.units.Measures.seconds(10))
            .lowest(FaultPath.EMPTY);
    assertThat(loop.current().prospective()).isEqualTo(usualTime.prospective());
    assertThat(loop.current().estimates()).isEmpty();
    assertThat(ampere(loop)).isCloseTo(288 / 0.135, within(1e-8));
    assertThat(loop.current().basis()).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void worksheetShowsEachPart() {
    FaultSource source = FaultSource.of(FaultParts.pack(1, FaultParts.stringCell()));
    String text = source.lowest(CABLE).worksheet().toText();
    assertThat(text)
        .contains("I∞ = U/R = 268 V / 184 mΩ = 1.457 kA")
        .contains("R = R_1 + R_2 = 180 mΩ + 4 mΩ = 184 mΩ")
        .contains("arc voltage [estimated]")
        .contains("τ = L/R = 20 µH / 184 mΩ");
  }

  @Test
  void unknownOhmicResistanceIsNamedNotGuessed() {
    var cell = FaultParts.stringCell().build();
    assertThat(cell.ohmicResistance()).isPresent();
    var silent =
        org.wattwright.battery.Cell.of("silent", org.wattwright.battery.Chemistry.NMC)
            .capacity(cell.capacity())
            .openCircuit(cell.openCircuit())
            .resistance(cell.resistance(org.wattwright.battery.Direction.DISCHARGE))
            .minimumVoltage(cell.minimumVoltage())
            .maximumVoltage(cell.maximumVoltage())
            .continuousDischargeCurrent(
                cell.continuousCurrent(org.wattwright.battery.Direction.DISCHARGE))
            .continuousChargeCurrent(
                cell.continuousCurrent(org.wattwright.battery.Direction.CHARGE))
            .dischargeTemperatures(cell.temperatures(org.wattwright.battery.Direction.DISCHARGE))
            .chargeTemperatures(cell.temperatures(org.wattwright.battery.Direction.CHARGE))
            .mass(cell.mass());
    FaultRange range = FaultSource.of(FaultParts.pack(1, silent)).range(CABLE, CABLE);
    assertThat(range.highest()).isEmpty();
    assertThat(range.highestCurrent()).isEmpty();
    assertThat(range.missing()).containsExactly("cell.ohmicResistance");
    assertThat(range.longestTimeConstant()).isEmpty();
    FuseDuty duty =
        FuseDuty.of(range)
            .highestVoltage(volts(403.2))
            .continuousCurrent(org.wattwright.units.Measures.amperes(10))
            .air(celsius(25))
            .build();
    assertThat(FaultParts.fuse().build().checks(duty))
        .filteredOn(check -> check.missing().contains("cell.ohmicResistance"))
        .extracting(org.wattwright.check.Check::code)
        .containsExactly("fuse.time-constant", "fuse.breaking-capacity");
  }

  @Test
  void cablesAndJointsTakeTheEndsOfTheirBands() {
    Cable cable =
        Cable.of(
                "T-35",
                ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE),
                InsulationMaterial.XLPE)
            .conductorDiameter(millimetres(7.9))
            .build();
    FaultPath path =
        FaultPath.EMPTY
            .with(ConductorRun.of(cable, metres(3)), millimetres(20))
            .with(Joint.estimatedBoltedLug("lug"));
    FaultSource source = FaultSource.of(FaultParts.pack(1, FaultParts.stringCell()));
    FaultLoop high = source.highest(path).orElseThrow();
    FaultLoop low = source.lowest(path);
    double coldOhm =
        Kind.RESISTANCE.siValueOf(ConductorRun.of(cable, metres(3)).loopResistanceAt(celsius(-20)));
    double hotOhm =
        Kind.RESISTANCE.siValueOf(
            ConductorRun.of(cable, metres(3)).loopResistanceAt(cable.temperatureLimit()));
    assertThat(partOhm(high, 1)).isCloseTo(0.9 * coldOhm, within(1e-12));
    assertThat(partOhm(low, 1)).isCloseTo(hotOhm, within(1e-12));
    assertThat(partOhm(high, 2)).isCloseTo(5e-6, within(1e-12));
    assertThat(partOhm(low, 2)).isCloseTo(60e-6, within(1e-12));
    assertThat(high.current().estimates()).containsExactly("resistance of lug");
    assertThat(path.isInductanceKnown()).isTrue();
  }

  private static double partOhm(FaultLoop loop, int index) {
    return Kind.RESISTANCE.siValueOf(loop.resistances().get(index).value().value());
  }

  @Test
  void inductanceIsUnknownUnlessAllOfItIsKnown() {
    Cable cable =
        Cable.of(
                "T-35",
                ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE),
                InsulationMaterial.XLPE)
            .build();
    FaultPath path = CABLE.with(ConductorRun.of(cable, metres(3)), millimetres(20));
    assertThat(path.isInductanceKnown()).isFalse();
    assertThat(FaultPath.EMPTY.isInductanceKnown()).isFalse();
    FaultSource source = FaultSource.of(FaultParts.pack(1, FaultParts.stringCell()));
    assertThat(source.range(CABLE, path).longestTimeConstant()).isEmpty();
    assertThat(source.range(CABLE, path).missing()).containsExactly("path.inductance");
    assertThat(Kind.TIME.siValueOf(source.range(CABLE, CABLE).longestTimeConstant().orElseThrow()))
        .isCloseTo(20e-6 / 0.064, within(1e-12));
  }

  @Test
  void capacitorsRaiseTheHighestCurrent() {
    CapacitorDischarge inverter =
        CapacitorDischarge.of("inverter", org.wattwright.units.Measures.millifarads(1), volts(400))
            .through(ohms(0.1), microhenries(0));
    FaultRange range =
        FaultSource.of(FaultParts.pack(1, FaultParts.stringCell()))
            .withCapacitor(inverter)
            .range(CABLE, CABLE);
    assertThat(Kind.CURRENT.siValueOf(range.highestCurrent().orElseThrow()))
        .isCloseTo(403.2 / 0.064 + 4000, within(1e-8));
  }

  @Test
  void nonsenseIsRefused() {
    FaultSource source = FaultSource.of(FaultParts.pack(1, FaultParts.stringCell()));
    assertThatThrownBy(() -> source.intoString(0))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("FaultSource.strings");
    assertThatThrownBy(
            () -> source.withArcVoltage(Given.measured(volts(300), "x")).lowest(FaultPath.EMPTY))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage("FaultLoop.arcVoltage must be < open-circuit voltage 288 V, but was 300 V");
    assertThatThrownBy(() -> FaultLoop.of(volts(400)).current())
        .hasMessage("FaultLoop.resistance must be > 0 Ω, but was 0 Ω");
    assertThatThrownBy(() -> FaultLoop.of(volts(0)))
        .hasMessage("FaultLoop.openCircuitVoltage must be > 0 V, but was 0 V");
    assertThatThrownBy(() -> FaultLoop.of(volts(400)).with("cable", ohms(-1)))
        .hasMessage("FaultLoop.cable must be ≥ 0 Ω, but was -1 Ω");
    assertThatThrownBy(() -> FaultCurrent.of(volts(400), ohms(0), microhenries(1)))
        .hasMessage("FaultCurrent.resistance must be > 0 Ω, but was 0 Ω");
    assertThatThrownBy(() -> FaultRange.of(FaultParts.fault(1000), FaultParts.fault(2000)))
        .hasMessageContaining("FaultRange.lowest must be ≤ highest");
  }
}
