package org.wattwright.protection;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.units.Price;

/** Fields of a contactor in SI; null where the catalogue does not say. */
record ContactorData(
    String name,
    double voltageV,
    @Nullable Double carryA,
    @Nullable CarryCurve carryCurve,
    @Nullable Double makeA,
    List<BreakRating> breaks,
    boolean polarised,
    @Nullable Double withstandA2S,
    @Nullable Double peakA,
    @Nullable Double contactOhm,
    @Nullable Double openingS,
    @Nullable ContactorCoil coil,
    @Nullable Double massKg,
    @Nullable Price price,
    Basis basis,
    Source source)
    implements Serializable {
  ContactorData {
    breaks = List.copyOf(breaks);
  }
}
