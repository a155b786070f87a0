package org.wattwright.vehicle;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * The service description of a tyre.
 *
 * @param single load index of a tyre alone on its side of the axle
 * @param twin load index of each of two tyres side by side
 * @param speed speed symbol
 * @param extraLoad whether it is marked as extra load or reinforced
 * @param plyRating 0 if not marked
 */
record TyreService(
    @Nullable LoadIndex single,
    @Nullable LoadIndex twin,
    @Nullable SpeedSymbol speed,
    boolean extraLoad,
    int plyRating)
    implements Serializable {
  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    if (plyRating > 0) {
      out.append(' ').append(plyRating).append("PR");
    }
    if (single != null) {
      out.append(' ').append(single.index());
      out.append(twin != null ? "/" + twin.index() : "").append(speed);
    }
    return out.append(extraLoad ? " XL" : "").toString();
  }
}
