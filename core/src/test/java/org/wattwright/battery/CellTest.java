package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.flatCell;
import static org.wattwright.battery.PackTest.assertInvalid;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

class CellTest {
  @Test
  void everythingMissingIsListedAtOnce() {
    assertInvalid(
        () -> Cell.of("bare", Chemistry.LFP).capacity(ampereHours(100)).mass(kilograms(2)).build(),
        "Cell is missing 8 of 10 required fields: openCircuit, resistance, minimumVoltage, "
            + "maximumVoltage, continuousDischargeCurrent, continuousChargeCurrent, "
            + "dischargeTemperatures, chargeTemperatures");
  }

  @Test
  void everyFieldIsCheckedWhenSet() {
    CellBuilder cell = flatCell();
    assertInvalid(() -> Cell.of(" ", Chemistry.LFP), "Cell.name must be a text, but was \" \"");
    assertInvalid(
        () -> cell.capacity(ampereHours(-105)), "Cell.capacity must be > 0 A·h, but was -105 A·h");
    assertInvalid(
        () -> cell.minimumVoltage(volts(0)), "Cell.minimumVoltage must be > 0 V, but was 0 V");
    assertInvalid(
        () -> cell.maximumVoltage(volts(-1)), "Cell.maximumVoltage must be > 0 V, but was -1 V");
    assertInvalid(
        () -> cell.continuousDischargeCurrent(amperes(0)),
        "Cell.continuousDischargeCurrent must be > 0 A, but was 0 A");
    assertInvalid(
        () -> cell.continuousChargeCurrent(amperes(-5)),
        "Cell.continuousChargeCurrent must be > 0 A, but was -5 A");
    assertInvalid(
        () -> cell.ohmicResistance(milliohms(0)),
        "Cell.ohmicResistance must be > 0 mΩ, but was 0 mΩ");
    assertInvalid(() -> cell.mass(kilograms(0)), "Cell.mass must be > 0 kg, but was 0 kg");
    assertInvalid(
        () -> cell.specificHeat(joulesPerKilogramKelvin(0)),
        "Cell.specificHeat must be > 0 J/(kg·K), but was 0 J/(kg·K)");
    assertInvalid(
        () -> cell.pulseDischargeCurrent(amperes(300), seconds(0)),
        "PulseCurrent.duration must be > 0 s, but was 0 s");
    assertThatIllegalArgumentException().isThrownBy(() -> cell.capacity(ampereHours(Double.NaN)));
    assertThatNullPointerException().isThrownBy(() -> Cell.of("x", null));
  }

  @Test
  void combinationsAreCheckedInTheEnd() {
    assertInvalid(
        () -> flatCell().minimumVoltage(volts(3.7)).build(),
        "Cell.maximumVoltage must be > minimumVoltage 3.7 V, but was 3.65 V");
    assertInvalid(
        () -> flatCell().minimumVoltage(volts(2.56)).build(),
        "Cell.openCircuit when empty must be ≥ minimumVoltage 2.56 V, but was 2.55 V");
    assertInvalid(
        () -> flatCell().maximumVoltage(volts(3.4)).build(),
        "Cell.openCircuit when full must be ≤ maximumVoltage 3.4 V, but was 3.45 V");
    assertInvalid(
        () -> flatCell().pulseDischargeCurrent(amperes(100), seconds(10)).build(),
        "Cell.pulseDischargeCurrent must be ≥ the continuous current 105 A, but was 100 A");
    assertInvalid(
        () -> flatCell().pulseChargeCurrent(amperes(51), seconds(10)).build(),
        "Cell.pulseChargeCurrent must be ≥ the continuous current 52 A, but was 51 A");
  }

  @Test
  void ageScalesCapacityAndEveryResistance() {
    Cell cell = flatCell().rcPair(RcPair.of(milliohms(0.3), seconds(20))).build();
    Cell aged = cell.aged(Ageing.of(0.8, 2)).aged(Ageing.of(0.5, 1.5));
    assertThat(aged.ageing()).isEqualTo(Ageing.of(0.4, 3));
    assertThat(Kind.CHARGE.siValueOf(aged.capacity())).isCloseTo(0.4 * 105 * 3600, within(1e-6));
    for (Direction direction : Direction.values()) {
      assertThat(Kind.RESISTANCE.siValueOf(aged.resistance(direction).at(HALF)))
          .isCloseTo(3 * 0.7e-3, within(1e-15));
    }
    assertThat(Kind.RESISTANCE.siValueOf(aged.ohmicResistance().orElseThrow()))
        .isCloseTo(1.2e-3, within(1e-15));
    assertThat(Kind.RESISTANCE.siValueOf(aged.rcPair().orElseThrow().resistance()))
        .isCloseTo(0.9e-3, within(1e-15));
    assertThat(aged.rcPair().orElseThrow().timeConstant()).isEqualTo(seconds(20));
    assertThat(Fixtures.source(3, 1).build().aged(Ageing.NEW).ohmicResistance()).isEmpty();
  }

  @Test
  void ageIsWithinBounds() {
    assertInvalid(
        () -> Ageing.of(1.1, 1), "Ageing.capacityFactor must be from 0 to 1, but was 1.1");
    assertInvalid(
        () -> Ageing.of(0, 1), "Ageing.capacityFactor must be > 0 and finite, but was 0.0");
    assertInvalid(
        () -> Ageing.of(0.8, 0.9), "Ageing.resistanceFactor must be from 1 to 1000, but was 0.9");
  }

  @Test
  void everyEstimatedResistanceIsBracketedOnce() {
    Cell named =
        flatCell()
            .resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(105)))
            .ohmicResistance(CellEstimates.ohmicResistance(milliohms(0.5)))
            .build();
    double typical = 50e-3 / 105;
    assertThat(dischargeOhm(named)).isCloseTo(typical, within(1e-12));
    assertThat(dischargeOhm(named.atBandEnd(BandEnd.LOW))).isCloseTo(0.4 * typical, within(1e-12));
    assertThat(dischargeOhm(named.atBandEnd(BandEnd.HIGH))).isCloseTo(2 * typical, within(1e-12));
    Cell low = named.atBandEnd(BandEnd.LOW);
    assertThat(dischargeOhm(low.atBandEnd(BandEnd.LOW))).isEqualTo(dischargeOhm(low));
    assertThat(low.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.ESTIMATED);
    assertThat(ohmic(low)).isCloseTo(0.15e-3, within(1e-12));
    assertThat(ohmic(named.atBandEnd(BandEnd.HIGH))).isCloseTo(0.5e-3, within(1e-12));
  }

  @Test
  void anEstimateWithoutABandGetsTheUsualOne() {
    Given<ResistanceTable> overTemperature =
        CellEstimates.resistanceOverTemperature(milliohms(0.7));
    Cell cell = flatCell().resistance(overTemperature).build();
    assertThat(dischargeOhm(cell.atBandEnd(BandEnd.LOW))).isCloseTo(0.35e-3, within(1e-12));
    assertThat(dischargeOhm(cell.atBandEnd(BandEnd.HIGH))).isCloseTo(1.4e-3, within(1e-12));
    Cell narrow = flatCell().resistance(overTemperature, new Estimate.Band(0.9, 1.1)).build();
    assertThat(dischargeOhm(narrow.atBandEnd(BandEnd.LOW))).isCloseTo(0.63e-3, within(1e-12));
    Cell measured =
        flatCell()
            .resistance(Given.measured(ResistanceTable.constant(milliohms(0.7)), "bench"))
            .build();
    assertThat(measured.atBandEnd(BandEnd.LOW)).isSameAs(measured);
    assertThat(measured.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.MEASURED);
    Cell told = flatCell().basis(CellProperty.OHMIC_RESISTANCE, Basis.ESTIMATED).build();
    assertThat(ohmic(told.atBandEnd(BandEnd.LOW))).isCloseTo(0.2e-3, within(1e-12));
  }

  @Test
  void chargeResistanceFollowsThatForDischargeUnlessStated() {
    Cell cell =
        flatCell().build().toBuilder().resistance(ResistanceTable.constant(milliohms(9))).build();
    assertThat(cell.resistance(Direction.CHARGE)).isEqualTo(ResistanceTable.constant(milliohms(9)));
    Cell stated =
        flatCell().chargeResistance(ResistanceTable.constant(milliohms(2))).build().toBuilder()
            .resistance(ResistanceTable.constant(milliohms(9)))
            .build();
    assertThat(stated.resistance(Direction.CHARGE))
        .isEqualTo(ResistanceTable.constant(milliohms(2)));
    assertThat(stated.resistance(Direction.DISCHARGE))
        .isEqualTo(ResistanceTable.constant(milliohms(9)));
  }

  private static double dischargeOhm(Cell cell) {
    return Kind.RESISTANCE.siValueOf(cell.resistance(Direction.DISCHARGE).at(HALF));
  }

  private static double ohmic(Cell cell) {
    return Kind.RESISTANCE.siValueOf(cell.ohmicResistance().orElseThrow());
  }

  @ParameterizedTest
  @EnumSource(Chemistry.class)
  void estimatesMakeAWholeCell(Chemistry chemistry) {
    VoltageLimits limits = CellEstimates.voltageLimits(chemistry).value();
    boolean hasCurve = chemistry != Chemistry.LMO && chemistry != Chemistry.LTO;
    Given<OpenCircuitCurve> curve =
        hasCurve
            ? CellEstimates.openCircuit(chemistry)
            : Given.dataSheet(
                Fixtures.linear(Kind.VOLTAGE.siValueOf(limits.endOfDischarge()), 0.5), "cell");
    Cell cell =
        Cell.of("guessed", chemistry)
            .capacity(Given.measured(ampereHours(50), "capacity test"))
            .openCircuit(curve)
            .resistance(CellEstimates.resistance(chemistry, ampereHours(50)))
            .minimumVoltage(
                Given.estimated(limits.lowest(), CellEstimates.voltageLimits(chemistry).source()))
            .maximumVoltage(
                Given.estimated(limits.maximum(), CellEstimates.voltageLimits(chemistry).source()))
            .continuousDischargeCurrent(amperes(50))
            .continuousChargeCurrent(amperes(25))
            .dischargeTemperatures(CellEstimates.temperatures(chemistry, Direction.DISCHARGE))
            .chargeTemperatures(CellEstimates.temperatures(chemistry, Direction.CHARGE))
            .specificHeat(CellEstimates.specificHeat(chemistry))
            .mass(kilograms(1))
            .build();
    assertThat(cell.basis(CellProperty.VOLTAGE)).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.basis(CellProperty.TEMPERATURE)).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.basis(CellProperty.HEAT)).isEqualTo(Basis.ESTIMATED);
    assertThat(cell.basis(CellProperty.CAPACITY)).isEqualTo(Basis.MEASURED);
    assertThat(cell.source(CellProperty.RESISTANCE))
        .isEqualTo(CellEstimates.resistance(chemistry, ampereHours(50)).source());
    assertThat(cell.source(CellProperty.VOLTAGE)).isEqualTo(curve.source());
    assertThat(cell.source(CellProperty.CURRENT).toString()).isEqualTo("data sheet: guessed");
    assertThat(cell.aged(Ageing.NEW).source(CellProperty.TEMPERATURE))
        .isEqualTo(CellEstimates.temperatures(chemistry, Direction.CHARGE).source());
    assertThat(chemistry.description()).isNotBlank();
    assertThat(
            CellEstimates.temperatures(chemistry, Direction.CHARGE).value().contains(celsius(-5)))
        .isEqualTo(chemistry == Chemistry.LTO || chemistry == Chemistry.LEAD_ACID);
    Estimate.Band band = CellEstimates.specificHeat(chemistry).band();
    assertThat(band.lowFactor()).isLessThan(1);
    assertThat(band.highFactor()).isGreaterThan(1);
  }

  @Test
  void noCurveIsMadeUp() {
    assertInvalid(
        () -> CellEstimates.openCircuit(Chemistry.LTO),
        "chemistry must be LFP, NMC, NCA or lead-acid, but was LTO");
  }

  @Test
  void bandsOfAnEstimateUponAnEstimateCombine() {
    Estimate<javax.measure.quantity.ElectricResistance> seconds =
        CellEstimates.resistance(Chemistry.LFP, ampereHours(100));
    Estimate<javax.measure.quantity.ElectricResistance> ohmic =
        CellEstimates.ohmicResistance(seconds);
    assertThat(Kind.RESISTANCE.siValueOf(ohmic.typical())).isCloseTo(0.3e-3, within(1e-12));
    assertThat(Kind.RESISTANCE.siValueOf(ohmic.low())).isCloseTo(0.06e-3, within(1e-12));
    assertThat(Kind.RESISTANCE.siValueOf(ohmic.high())).isCloseTo(1e-3, within(1e-12));
  }

  @Test
  void tablesRejectWhatIsNoTable() {
    assertInvalid(
        () -> OpenCircuitCurve.at(celsius(25)).row(StateOfCharge.EMPTY, volts(3)).build(),
        "OpenCircuitCurve must be at least 2 rows, but was 1 rows");
    assertInvalid(
        () ->
            OpenCircuitCurve.at(celsius(25))
                .row(percentCharge(0), volts(3))
                .row(percentCharge(100), volts(2.9))
                .build(),
        "OpenCircuitCurve.voltage[100 %] must be ≥ 3 V (never falling with state of charge), but "
            + "was 2.9 V");
    assertInvalid(
        () -> OpenCircuitCurve.at(celsius(25)).row(percentCharge(0), volts(0)),
        "OpenCircuitCurve.voltage[0 %] must be > 0 V, but was 0 V");
    assertInvalid(
        () -> ResistanceTable.constant(milliohms(0)),
        "ResistanceTable.resistance[0 %] must be > 0 mΩ, but was 0 mΩ");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                ResistanceTable.at(celsius(0), celsius(25))
                    .row(percentCharge(0), milliohms(1))
                    .build());
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                OpenCircuitCurve.at(celsius(25))
                    .row(percentCharge(50), volts(3))
                    .row(percentCharge(50), volts(3.1))
                    .build());
    assertInvalid(
        () ->
            Fixtures.linear(3, 0.4).meanBetween(percentCharge(50), percentCharge(50), celsius(25)),
        "to must be different from 50 %, but was 50 %");
    assertInvalid(
        () -> ResistanceTable.quadratic(milliohms(1), milliohms(0.9)),
        "ResistanceTable.resistance.emptyOrFull must be ≥ halfCharged 1 mΩ, but was 0.9 mΩ");
    assertInvalid(
        () -> TemperatureRange.between(celsius(45), celsius(45)),
        "TemperatureRange.hottest must be > coldest 45 °C, but was 45 °C");
    assertInvalid(
        () -> CurrentByTemperature.from(celsius(0), amperes(-1)),
        "CurrentByTemperature.current must be ≥ 0 A, but was -1 A");
    assertInvalid(
        () -> Dimensions.of(millimetres(1), millimetres(0), millimetres(1)),
        "Dimensions.width must be > 0 mm, but was 0 mm");
    assertInvalid(
        () -> RcPair.ofCapacitance(milliohms(1), farads(0)),
        "RcPair.capacitance must be > 0 F, but was 0 F");
  }

  @Test
  void restVoltageOnAFlatCurveGivesTheLowestStateOfCharge() {
    OpenCircuitCurve flat =
        OpenCircuitCurve.at(celsius(25))
            .row(percentCharge(0), volts(2.5))
            .row(percentCharge(20), volts(3.3))
            .row(percentCharge(80), volts(3.3))
            .row(percentCharge(100), volts(3.5))
            .build();
    assertThat(flat.stateOfChargeAt(volts(3.3), celsius(25))).isEqualTo(percentCharge(20));
    assertThat(flat.stateOfChargeAt(volts(2), celsius(25))).isEqualTo(StateOfCharge.EMPTY);
    assertThat(flat.stateOfChargeAt(volts(4), celsius(25))).isEqualTo(StateOfCharge.FULL);
    assertThat(flat.stateOfChargeAt(volts(3.4), celsius(25)).fraction())
        .isCloseTo(0.9, within(1e-12));
  }

  @Test
  void tablesHoldTheirEdges() {
    OpenCircuitCurve curve = flatCell().build().openCircuit();
    assertThat(curve.at(PackState.of(percentCharge(50), celsius(-40)))).isEqualTo(volts(3.28));
    assertThat(curve.at(PackState.of(percentCharge(50), celsius(80)))).isEqualTo(volts(3.3));
  }
}
