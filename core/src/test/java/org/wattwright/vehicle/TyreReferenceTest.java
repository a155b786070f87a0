package org.wattwright.vehicle;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.poundsPerSquareInch;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Tyre dimensions, loads, speeds and pressures against tables and rules. */
class TyreReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/tyres.csv");

  private static ReferenceRow row(String number) {
    return ROWS.row("TYR-" + number);
  }

  private static Tyre named(ReferenceRow row) {
    return Tyre.parse(row.conditions().keySet().iterator().next());
  }

  static Stream<ReferenceRow> loadIndices() {
    return ROWS.quantity("load index to maximum load");
  }

  @ParameterizedTest
  @MethodSource("loadIndices")
  void loadIndexTable(ReferenceRow row) {
    VALIDATION.transcribed(row, new LoadIndex((int) row.givenNumber("LI")).load(), Kind.MASS);
  }

  static Stream<ReferenceRow> speedSymbols() {
    return ROWS.quantity("speed symbol to maximum speed");
  }

  @ParameterizedTest
  @MethodSource("speedSymbols")
  void speedSymbolTable(ReferenceRow row) {
    VALIDATION.transcribed(row, SpeedSymbol.parse(row.given("symbol")).speed(), Kind.SPEED);
  }

  @Test
  void closedFormOfTheLoadIndexTable() {
    VALIDATION.transcribed(row("067"), new LoadIndex(80).load(), Kind.MASS);
  }

  static Stream<ReferenceRow> rims() {
    return ROWS.quantity("nominal rim diameter");
  }

  @ParameterizedTest
  @MethodSource("rims")
  void nominalRimDiameter(ReferenceRow row) {
    int code = (int) row.givenNumber("rim code");
    VALIDATION.computed(row, Tyre.nominalRimDiameter(code), Kind.LENGTH);
  }

  static Stream<ReferenceRow> sectionHeights() {
    return ROWS.quantity("section height");
  }

  @ParameterizedTest
  @MethodSource("sectionHeights")
  void sectionHeight(ReferenceRow row) {
    VALIDATION.computed(row, named(row).sectionHeight(), Kind.LENGTH);
  }

  static Stream<ReferenceRow> diameters() {
    return ROWS.quantity("nominal overall diameter");
  }

  @ParameterizedTest
  @MethodSource("diameters")
  void overallDiameter(ReferenceRow row) {
    VALIDATION.computed(row, named(row).overallDiameter(), Kind.LENGTH);
  }

  static Stream<ReferenceRow> crossPlyDiameters() {
    return ROWS.quantity("overall diameter of inch cross-ply tyre");
  }

  @ParameterizedTest
  @MethodSource("crossPlyDiameters")
  void overallDiameterOfCrossPly(ReferenceRow row) {
    VALIDATION.computed(row, named(row).overallDiameter(), Kind.LENGTH);
  }

  @Test
  void diametersByRule() {
    VALIDATION.computed(row("077"), Tyre.parse("175/70 R14").designDiameter(), Kind.LENGTH);
    VALIDATION.computed(row("085"), Tyre.parse("165 R15").overallDiameter(), Kind.LENGTH);
    VALIDATION.computed(row("086"), Tyre.parse("5.60-15").sectionWidth(), Kind.LENGTH);
    VALIDATION.transcribed(row("084"), 100 * Tyre.parse("165 R15").aspectRatio());
    VALIDATION.transcribed(row("087"), 100 * Tyre.parse("5.60-15").aspectRatio());
    VALIDATION.transcribed(row("088"), 100 * Tyre.parse("6.00-13").aspectRatio());
  }

  @Test
  void rollingAndLoadedRadius() {
    Tyre tyre = Tyre.parse("175/70 R14");
    Quantity<Length> circumference = tyre.rollingCircumference().typical();
    double circumferenceM = Kind.LENGTH.siValueOf(circumference);
    double designM = Kind.LENGTH.siValueOf(tyre.designDiameter());
    VALIDATION.transcribed(row("098"), circumferenceM / designM);
    VALIDATION.transcribed(
        row("099"), Kind.LENGTH.siValueOf(tyre.loadedRadius().typical()) / designM);
    VALIDATION.computed(row("100"), circumference, Kind.LENGTH);
    VALIDATION.computed(row("101"), tyre.rollingRadius().typical(), Kind.LENGTH);
    VALIDATION.computed(row("102"), 1000 / circumferenceM);
    VALIDATION.computed(row("103"), 1609.344 / circumferenceM);
  }

  @Test
  void speedometerAfterATyreChange() {
    Tyre old = Tyre.parse("165 R15");
    VALIDATION.computed(row("104"), 100 * Tyre.parse("185/65 R15").speedChangeFrom(old));
  }

  @Test
  void pressureForALoad() {
    InflationLaw law = InflationLaw.of(kilograms(750), poundsPerSquareInch(50));
    VALIDATION.computed(row("105"), law.pressureFor(kilograms(550)), Kind.PRESSURE);
    VALIDATION.computed(row("106"), law.pressureFor(kilograms(650)), Kind.PRESSURE);
    Tyre standard = Tyre.parse("175/70 R13 83T");
    VALIDATION.transcribed(row("107"), standard.referencePressure().orElseThrow(), Kind.PRESSURE);
    Tyre reinforced = Tyre.parse("175/70 R14 88T XL");
    VALIDATION.transcribed(row("108"), reinforced.referencePressure().orElseThrow(), Kind.PRESSURE);
    InflationLaw li83 = InflationLaw.of(standard).orElseThrow();
    VALIDATION.computed(row("109"), li83.pressureFor(kilograms(390)), Kind.PRESSURE);
    InflationLaw li84 = InflationLaw.of(Tyre.parse("175/70 R14 84T")).orElseThrow();
    VALIDATION.computed(row("110"), li84.loadAt(kilopascals(200)), Kind.MASS);
  }

  @Test
  void axleOnItsTyres() {
    Tyre tyre = Tyre.parse("175/70 R13 83T");
    double capacityKg = Kind.MASS.siValueOf(tyre.axleCapacity(AxleWheels.SINGLE).orElseThrow());
    VALIDATION.computed(row("111"), capacityKg);
    AxleLimits limits = AxleLimits.builder().rearTyre(tyre).build();
    WeighedVehicle car =
        WeighedVehicle.withWheelbase(org.wattwright.units.Measures.metres(2.3))
            .frontAxle(kilograms(600))
            .rearAxle(kilograms(905))
            .build();
    double marginKg =
        limits.check(MassLedger.of(car).after(LoadCase.KERB)).stream()
            .filter(check -> check.code().equals("tyre.rear"))
            .map(check -> check.margin().orElseThrow().quantity(Kind.MASS))
            .mapToDouble(Kind.MASS::siValueOf)
            .findFirst()
            .orElseThrow();
    VALIDATION.computed(row("112"), marginKg);
    VALIDATION.computed(row("113"), LoadIndex.lowestFor(kilograms(452.5)).orElseThrow().index());
  }
}
