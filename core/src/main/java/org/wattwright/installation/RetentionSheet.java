package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/** Writes down how the governing fixing of a retention comes about. */
final class RetentionSheet {
  private final Retention retention;
  private final Worksheet.Recording sheet;

  RetentionSheet(Retention retention) {
    this.retention = retention;
    this.sheet = Worksheet.record("Retention of " + retention.name());
  }

  Worksheet worksheet() {
    sheet
        .step("m", "mass held by " + retention.group().fixings().size() + " fixings")
        .basis(retention.mass().basis())
        .source(retention.mass().source())
        .gives(Figure.of(retention.mass().value(), KILOGRAM));
    retention.governing().ifPresent(this::governing);
    return sheet.toWorksheet();
  }

  private void governing(FixingUse use) {
    RetentionLoads loads = retention.loads();
    for (RetentionLoads.Load load : loads.loads()) {
      FixingGroup.@Nullable Held held = loads.held(retention.group(), load);
      if (held != null && load.direction() == use.direction() && matches(use, held)) {
        force(load, use);
        fixing(use, held);
        break;
      }
    }
    retention
        .carriedMass()
        .ifPresent(
            carried ->
                sheet
                    .step("m_max", "mass these fixings would carry")
                    .formula("m/share")
                    .with("m", Figure.of(retention.mass().value(), KILOGRAM))
                    .with("share", Figure.number(use.share()))
                    .basis(retention.basis())
                    .gives(Figure.of(carried, KILOGRAM)));
  }

  private boolean matches(FixingUse use, FixingGroup.Held held) {
    FixingShares shares = new FixingShares(retention.group(), retention.interaction());
    return shares.share(indexOf(use), use.mode(), held) == use.share();
  }

  private int indexOf(FixingUse use) {
    return retention.group().fixings().stream().map(Fixing::name).toList().indexOf(use.fixing());
  }

  private void force(RetentionLoads.Load load, FixingUse use) {
    AccelerationRules rules = retention.rules().orElseThrow();
    double ms2 = Kind.ACCELERATION.siValueOf(rules.acceleration(use.direction()).orElseThrow());
    double massKg = retention.loads().massKg();
    sheet
        .step("F", "force at the centre of gravity, thrown " + use.direction())
        .formula("m·a")
        .with("m", massKg, KILOGRAM)
        .with("a", ms2, METRE_PER_SECOND_SQUARED)
        .basis(retention.mass().basis())
        .source(rules.source())
        .gives(massKg * ms2, NEWTON);
    double[] forceN = load.forceN(massKg);
    double alongN = Math.hypot(forceN[0], forceN[1]);
    sheet
        .step("M", "overturning moment, " + (load.withWeight() ? "with" : "without") + " weight")
        .formula("F_along·h")
        .with("F_along", alongN, NEWTON)
        .with("h", retention.pointM()[2], MILLIMETRE)
        .basis(retention.mass().basis())
        .source(FixingGroup.SOURCE)
        .gives(alongN * retention.pointM()[2], NEWTON_METRE);
  }

  private void fixing(FixingUse use, FixingGroup.Held held) {
    int i = indexOf(use);
    sheet
        .step("F_v", "shear of " + use.fixing())
        .formula("√((k/Σk·F_u - M_z·k·v/J)² + (k/Σk·F_v + M_z·k·u/J)²)")
        .basis(retention.mass().basis())
        .source(FixingGroup.SOURCE)
        .gives(held.shear(i), NEWTON);
    sheet
        .step("F_t", "tension of " + use.fixing() + ", base turning about the edge it leans on")
        .formula("M·k·y/Σ(k·y²)")
        .basis(retention.mass().basis())
        .source(FixingGroup.SOURCE)
        .gives(held.tension(i), NEWTON);
    sheet
        .step("share", use.mode() + ", " + use.fixing())
        .formula("load/resistance")
        .with("load", use.actual())
        .with("resistance", use.limit())
        .basis(retention.basis())
        .source(use.mode().isOfPanel() ? Panel.source() : Bolt.SOURCE)
        .gives(Figure.number(use.share()));
  }
}
