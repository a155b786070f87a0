package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;

/** Whether a cable suits the place and the circuit whatever it carries; null where not asked. */
final class FittingCriteria {
  private final SizingDuty duty;
  private final Cable cable;

  FittingCriteria(CandidateCase of) {
    this.duty = of.duty();
    this.cable = of.cable();
  }

  @Nullable Finding bendRadius() {
    @Nullable Double roomM = duty.bendM();
    if (roomM == null) {
      return null;
    }
    Source source = Source.requirement("room for the bend");
    Finding.Terms terms = new Finding.Terms(MILLIMETRE, false, Basis.DATA_SHEET, source);
    @Nullable Double neededM = cable.data().bendM();
    return neededM == null
        ? missing(SizingCriterion.BEND_RADIUS, terms, "Cable.minimumBendRadius")
        : Finding.atMost(SizingCriterion.BEND_RADIUS, neededM, roomM, terms);
  }

  @Nullable Finding mechanicalMinimum() {
    @Nullable Double leastM2 = duty.areaM2();
    if (leastM2 == null) {
      return null;
    }
    Source source = Source.requirement("mechanical minimum");
    Finding.Terms terms = new Finding.Terms(SQUARE_MILLIMETRE, true, Basis.DATA_SHEET, source);
    return Finding.atLeast(
        SizingCriterion.MECHANICAL_MINIMUM, cable.size().areaM2(), leastM2, terms);
  }

  @Nullable Finding voltageRating() {
    @Nullable Double highestV = duty.voltageV();
    if (highestV == null) {
      return null;
    }
    Source source = Source.dataSheet(cable.name());
    Finding.Terms terms = new Finding.Terms(VOLT, true, Basis.DATA_SHEET, source);
    @Nullable Double ratingV = cable.data().voltageV();
    return ratingV == null
        ? missing(SizingCriterion.VOLTAGE_RATING, terms, "Cable.voltageRating")
        : Finding.atLeast(SizingCriterion.VOLTAGE_RATING, ratingV, highestV, terms);
  }

  private Finding missing(SizingCriterion criterion, Finding.Terms terms, String field) {
    return Finding.notChecked(criterion, terms, List.of(field + " of " + cable.name()));
  }
}
