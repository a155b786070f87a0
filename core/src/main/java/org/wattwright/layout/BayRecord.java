package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;

/** The working of what one bay puts on the vehicle. Not thread-safe. */
final class BayRecord {
  private final String bay;
  private final double boxKg;
  private final double boxShare;
  private final List<Row> rows = new ArrayList<>();

  /** So many modules of a type, and the share of their mass that is on the front axle. */
  record Row(String name, int count, double moduleKg, double share) {}

  BayRecord(String bay, double boxKg, double boxShare) {
    this.bay = bay;
    this.boxKg = boxKg;
    this.boxShare = boxShare;
  }

  void add(Row row) {
    rows.add(row);
  }

  void record(Recorder recorder, double frontKg) {
    double massKg = boxKg + rows.stream().mapToDouble(row -> row.count() * row.moduleKg()).sum();
    StepBuilder mass =
        recorder
            .step("m_b", bay + ": modules and enclosure" + names())
            .formula(sum("n%·m%") + " + m_e");
    rows.forEach(row -> addMass(mass, row));
    mass.with("m_e", boxKg, KILOGRAM).gives(massKg, KILOGRAM);
    StepBuilder front =
        recorder
            .step("Δm_f", bay + ": front axle (c = 1 - d/L at the middle of the n modules)")
            .formula(sum("n%·m%·c%") + " + m_e·c_e");
    for (Row row : rows) {
      addMass(front, row).with("c" + index(row), Figure.number(row.share()));
    }
    front
        .with("m_e", boxKg, KILOGRAM)
        .with("c_e", Figure.number(boxShare))
        .gives(frontKg, KILOGRAM);
  }

  private StepBuilder addMass(StepBuilder step, Row row) {
    return step.with("n" + index(row), Figure.count(row.count()))
        .with("m" + index(row), row.moduleKg(), KILOGRAM);
  }

  /** One type needs no index. */
  private String index(Row row) {
    return rows.size() == 1 ? "" : "_" + (rows.indexOf(row) + 1);
  }

  private String sum(String term) {
    return String.join(" + ", rows.stream().map(row -> term.replace("%", index(row))).toList());
  }

  private String names() {
    return rows.size() == 1
        ? ""
        : " (" + String.join(", ", rows.stream().map(Row::name).toList()) + ", in this order)";
  }
}
