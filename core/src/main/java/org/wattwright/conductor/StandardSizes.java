package org.wattwright.conductor;

import static org.wattwright.units.Measures.ohmsPerKilometre;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wattwright.check.Given;
import org.wattwright.internal.ResourceTable;
import org.wattwright.units.InvalidInputException;

/** The metric sizes of IEC 60228 and ISO 6722-1. */
final class StandardSizes {
  private static final Map<String, List<ConductorSize>> SIZES =
      PublishedRows.read("resistance.csv", StandardSizes::size).stream()
          .collect(Collectors.groupingBy(size -> key(makeOf(size))));

  private StandardSizes() {}

  static List<ConductorSize> all(ConductorSize.Make make) {
    return List.copyOf(SIZES.getOrDefault(key(make), List.of()));
  }

  static ConductorSize find(double areaMm2, ConductorSize.Make make) {
    List<ConductorSize> sizes = all(make);
    return sizes.stream()
        .filter(size -> Math.abs(size.areaM2() * 1e6 - areaMm2) <= 1e-9 * areaMm2)
        .findFirst()
        .orElseThrow(() -> unknown(areaMm2, make, sizes));
  }

  private static InvalidInputException unknown(
      double areaMm2, ConductorSize.Make make, List<ConductorSize> sizes) {
    String bound =
        sizes.isEmpty()
            ? "of a make the standards list"
            : sizes.stream()
                .map(ConductorSize::name)
                .collect(Collectors.joining(", ", "one of ", ""));
    String value =
        squareMillimetres(areaMm2)
            + " "
            + make.strandClass()
            + " "
            + make.surface()
            + " "
            + make.material();
    return InvalidInputException.of("ConductorSize.area", bound, value);
  }

  private static ConductorSize size(ResourceTable.Row row) {
    boolean copper = row.text("material").equals("copper");
    ConductorSize.Make make =
        new ConductorSize.Make(
            copper ? ConductorMaterial.COPPER : ConductorMaterial.ALUMINIUM,
            row.constant("strand class", StrandClass.class),
            row.constant("surface", WireSurface.class));
    double ohmPerKm = row.number("resistance at 20 degC [ohm/km]");
    return new ConductorSize(
        row.text("area [mm2]") + " mm²",
        make,
        squareMillimetres(row.number("area [mm2]")),
        new Given<>(
            ohmsPerKilometre(ohmPerKm), PublishedRows.basis(row), PublishedRows.source(row)));
  }

  private static ConductorSize.Make makeOf(ConductorSize size) {
    return new ConductorSize.Make(size.material(), size.strandClass(), size.surface());
  }

  private static String key(ConductorSize.Make make) {
    return make.material().name() + "/" + make.strandClass() + "/" + make.surface();
  }
}
