package org.wattwright.conductor;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.ohmsPerKilometre;
import static org.wattwright.units.Measures.squareMillimetres;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Given;
import org.wattwright.testing.ReferenceRow;

/** What the conditions of a reference row mean in this package's terms. */
final class Conditions {
  private Conditions() {}

  static ConductorMaterial metal(ReferenceRow row) {
    boolean aluminium = row.has("metal") && row.given("metal").contains("alumin");
    return aluminium ? ConductorMaterial.ALUMINIUM : ConductorMaterial.COPPER;
  }

  /** A standard metric size by class, surface, metal and S. */
  static ConductorSize size(ReferenceRow row) {
    boolean road = row.quantity().contains("road-vehicle");
    boolean stranded = row.has("class") && row.given("class").startsWith("2");
    StrandClass strandClass =
        road ? StrandClass.ROAD_VEHICLE : stranded ? StrandClass.STRANDED : StrandClass.FLEXIBLE;
    boolean tinned = row.has("surface") && row.given("surface").contains("tinned");
    return ConductorSize.metric(
        squareMillimetres(row.givenNumber("S")),
        strandClass,
        tinned ? WireSurface.TINNED : WireSurface.PLAIN,
        metal(row));
  }

  /** A gauge such as {@code AWG=2/0}, {@code size=12 AWG 7-strand} or {@code size=250 kcmil}. */
  static ConductorSize gauge(ReferenceRow row) {
    String text = row.has("AWG") ? row.given("AWG") : row.given("size");
    ConductorMaterial metal =
        row.quantity().contains("alumin") ? ConductorMaterial.ALUMINIUM : metal(row);
    ConductorSize size;
    if (text.contains("kcmil")) {
      size = ConductorSize.kilocircularMils((int) number(text));
    } else {
      String number = text.split(" ")[0];
      int gauge = number.contains("/") ? 1 - (int) number(number) : (int) number(number);
      boolean solid = row.has("AWG") || text.contains("solid");
      size = solid ? ConductorSize.awg(gauge) : ConductorSize.awgStranded(gauge);
    }
    return metal == ConductorMaterial.COPPER ? size : inAluminium(size);
  }

  private static ConductorSize inAluminium(ConductorSize copper) {
    double ratio =
        ConductorMaterial.ALUMINIUM.resistivityOhmM() / ConductorMaterial.COPPER.resistivityOhmM();
    return ConductorSize.of(
        copper.name(),
        ConductorMaterial.ALUMINIUM,
        copper.area(),
        Given.dataSheet(
            ohmsPerKilometre(copper.resistanceOhmPerM() * 1e3 * ratio), "gauge in aluminium"));
  }

  private static double number(String text) {
    return Double.parseDouble(text.replaceAll("[^0-9.].*", ""));
  }

  /** A class 5 copper PVC cable by R20, d_c and D as the heat-balance rows give them. */
  static Cable cable(double areaMm2, double ohmPerKm, double conductorMm, double outerMm) {
    ConductorSize size =
        ConductorSize.of(
            areaMm2 + " mm²",
            ConductorMaterial.COPPER,
            squareMillimetres(areaMm2),
            Given.dataSheet(ohmsPerKilometre(ohmPerKm), "reference row"));
    return Cable.of("reference", size, InsulationMaterial.PVC)
        .conductorDiameter(millimetres(conductorMm))
        .outerDiameter(millimetres(outerMm))
        .build();
  }

  static Quantity<Temperature> temperature(ReferenceRow row, String key) {
    return celsius(row.givenNumber(key));
  }
}
