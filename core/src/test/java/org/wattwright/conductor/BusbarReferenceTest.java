package org.wattwright.conductor;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Busbars against DIN 43671 and the Copper Development Association. */
class BusbarReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> busbars() {
    return CoveredRows.of("busbars").filter(row -> !row.quantity().equals("correction factor k2"));
  }

  @ParameterizedTest
  @MethodSource("busbars")
  void busbarsAgree(ReferenceRow row) {
    boolean inches = row.given("bar").contains("in");
    ConductorMaterial metal = inches ? ConductorMaterial.copperOf(0.99) : ConductorMaterial.COPPER;
    double[] sidesMm = sides(row.given("bar"));
    Busbar bar =
        Busbar.of(
            metal,
            millimetres(Math.max(sidesMm[0], sidesMm[1])),
            millimetres(Math.min(sidesMm[0], sidesMm[1])));
    if (row.has("surface") && row.given("surface").equals("painted")) {
      bar = bar.painted();
    }
    if (row.quantity().startsWith("mass")) {
      double kgPerM = Kind.MASS.siValueOf(bar.mass(metres(1)));
      VALIDATION.computed(row, inches ? kgPerM * 0.3048 / 0.45359237 : kgPerM);
    } else if (row.quantity().startsWith("DC resistance")) {
      VALIDATION.computed(
          row, Kind.RESISTANCE.siValueOf(bar.resistance(metres(0.3048), celsius(20))) * 1e6);
    } else {
      org.assertj.core.api.Assertions.assertThat(row.quantity())
          .matches("continuous .C current.*, one bar|.*ampacity of a flat bar.*");
      double airC = row.has("air") ? row.givenNumber("air") : 40;
      double barC = row.has("rise") ? airC + row.givenNumber("rise") : 65;
      SteadyHeating heating = SteadyHeating.of(bar, Installation.freeAir(celsius(airC)));
      VALIDATION.computed(row, Kind.CURRENT.siValueOf(heating.ampacityAt(celsius(barC))));
    }
  }

  static Stream<ReferenceRow> busbarCorrections() {
    return CoveredRows.of("busbars").filter(row -> row.quantity().equals("correction factor k2"));
  }

  /** The balance of a bare 40 x 5 mm bar against the chart of the standard. */
  @ParameterizedTest
  @MethodSource("busbarCorrections")
  void busbarCorrectionsAgree(ReferenceRow row) {
    double atA = barAmpere(row.givenNumber("bar"), row.givenNumber("air"));
    VALIDATION.computed(row, atA / barAmpere(65, 35));
  }

  private static double barAmpere(double barC, double airC) {
    Busbar bar = Busbar.of(ConductorMaterial.COPPER, millimetres(40), millimetres(5));
    return Kind.CURRENT.siValueOf(
        SteadyHeating.of(bar, Installation.freeAir(celsius(airC))).ampacityAt(celsius(barC)));
  }

  /** Such as {@code 40x5 mm} or {@code 1/8 x 1 in}. */
  static double[] sides(String text) {
    boolean inches = text.contains("in");
    String[] parts = text.replaceAll("(mm|in)", "").split("x");
    double[] sides = new double[2];
    for (int i = 0; i < 2; i++) {
      String[] fraction = parts[i].strip().split("/");
      double value = Double.parseDouble(fraction[0]);
      value = fraction.length == 2 ? value / Double.parseDouble(fraction[1]) : value;
      sides[i] = inches ? value * 25.4 : value;
    }
    return sides;
  }
}
