package org.wattwright.conductor;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;

/**
 * The reference rows that the library answers; those that it does not stand here, with the reason.
 *
 * <p>Every row of a file is either compared by a test, which fails on one it does not know, or
 * listed here.
 */
final class CoveredRows {
  static final List<String> FILES =
      List.of(
          "air-and-convection",
          "awg",
          "bend-radius",
          "busbars",
          "correction-factors",
          "duty-and-time-constant",
          "fusing-current",
          "heat-balance",
          "inductance",
          "mass",
          "material",
          "rating-tables",
          "resistance-iec-60228",
          "short-circuit",
          "transient",
          "voltage-drop");

  private static final Map<String, String> WHY = new LinkedHashMap<>();

  static {
    why(
        "air of another book, from memory: the table carried here agrees within 4 %",
        "C-022 C-023 C-024 C-025 C-026 C-027 C-028 C-029 C-030");
    why("β = 1/T stands inside the Rayleigh number", "C-031");
    why("the laminar form; the form for every Rayleigh number is carried", "C-039 C-040");
    why("the example brings air of its own; the heat loss is compared instead", "C-048");
    why("another correlation, not to be mixed with Churchill and Chu", "C-050 C-051 C-065");
    why("a quantity that the library does not give", "C-053 C-058");
    why(
        "the table strands these two by 2.3 % and 2.6 %, ASTM B8 by 2 %: they agree within 1 %",
        "A-038 A-040");
    why(
        "a maker's own sheet, which belongs in Cable.minimumBendRadius",
        "G-013 G-014 G-015 G-016 G-017 HG-003");
    why("two bars together; one bar is carried", "U-019 U-020 U-021 HU-006");
    why("a rule of thumb: the heat balance agrees within 10 %", "U-032 U-034 U-035 U-036");
    why("a round rod is no busbar", "U-033");
    why("at 60 Hz; the same bar is compared at an emissivity of 0.4", "U-055 U-056 U-057");
    why("the product of rounded factors: the library agrees within their rounding", "F-056");
    why("the air temperature is not stated", "D-001 D-004 D-007 D-010 HD-001");
    why("the period that a standard's factors assume; nothing here rests on it", "D-025");
    why("another formula for the loss, from memory: agrees within 10 %", "B-001 B-002 B-003");
    why("another formula for the loss, from memory: agrees within 10 %", "B-004 B-005 B-006");
    why("follows from the run's resistance and inductance by Ohm's law", "L-010 L-011");
    why(
        "a thick rubber sheath on a small conductor: within the band of the generic estimate",
        "G-021 G-022 G-023 G-024 G-037 G-038 HG-007");
    why(
        "a rule of the tables for heat-resistant cables, which are not carried",
        "I-024 I-025 I-026 HI-007");
    why("engine spaces: the table is carried for outside of them", "I-051 I-052 I-053");
  }

  private CoveredRows() {}

  private static void why(String reason, String ids) {
    for (String id : ids.split(" ")) {
      WHY.put(id, reason);
    }
  }

  static Map<String, String> reasons() {
    return WHY;
  }

  /** The rows of one file that a test must compare. */
  static Stream<ReferenceRow> of(String file) {
    return all(file).filter(row -> !WHY.containsKey(row.id()));
  }

  static Stream<ReferenceRow> all(String file) {
    return ReferenceRows.read("/conductor/" + file + ".csv").stream();
  }
}
