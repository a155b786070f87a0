package org.wattwright.battery;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.FlatCell;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Series counts from published conditions; and why data of single cells prove nothing here. */
class CellDataReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("battery");

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/battery/cell-data.csv").stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agreesOrSaysWhyNot(ReferenceRow row) {
    switch (row.id()) {
      case "PAK-014" -> VALIDATION.computed(row, mostBelow(400));
      case "PAK-015" -> VALIDATION.computed(row, fewestAbove(240));
      default -> VALIDATION.notCovered(row, why(row));
    }
  }

  private static double mostBelow(double limitV) {
    return first(n -> Kind.VOLTAGE.siValueOf(pack(n).maximumVoltage()) > limitV) - 1;
  }

  private static double fewestAbove(double limitV) {
    return first(
        n ->
            Kind.VOLTAGE.siValueOf(
                    pack(n)
                        .terminalVoltage(
                            PackState.of(percentCharge(50), celsius(25)), amperes(350)))
                >= limitV);
  }

  private static int first(IntPredicate holds) {
    return IntStream.range(1, 500).filter(holds).findFirst().orElseThrow();
  }

  /** Cells of 3.0 V and 0.45 mΩ wherever they are, full at 3.65 V. */
  private static Pack pack(int series) {
    Cell cell =
        FlatCell.of(2.75, 2.8, 3.45)
            .openCircuit(
                OpenCircuitCurve.at(celsius(25))
                    .row(percentCharge(0), volts(3))
                    .row(percentCharge(100), volts(3))
                    .build())
            .resistance(ResistanceTable.constant(milliohms(0.45)))
            .continuousDischargeCurrent(amperes(350))
            .continuousChargeCurrent(amperes(105))
            .build();
    return Pack.of(BatteryModule.of(cell).series(1).build(), series, 1);
  }

  private static String why(ReferenceRow row) {
    String topic = row.id().substring(0, 3);
    String quantity = row.quantity();
    if (topic.equals("AGE")) {
      return "a law of ageing; an aged state is told, as capacity and resistance";
    }
    if (topic.equals("TLM") || topic.equals("EFF")) {
      return "a rule or definition that no calculation here needs";
    }
    if (quantity.contains("lead-acid") || quantity.contains("specific gravity")) {
      return "acid and charge rules of lead-acid cells; their voltage is carried by state of charge";
    }
    if (quantity.contains("electrode potential") || row.source().contains("Chen")) {
      return "electrodes of one cell; the library starts from the whole cell's curve";
    }
    if (quantity.startsWith("typical specific energy")) {
      return "a range of past cells; mass and capacity are told";
    }
    return "readings of one cell: what Cell takes as its data";
  }
}
