package org.wattwright.internal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;

/** Collects what a builder still lacks, so that one error lists everything at once. */
public final class MissingFields {
  private final String type;
  private final List<String> missing = new ArrayList<>();
  private int required;

  /** For a builder of the named type. */
  public MissingFields(String type) {
    this.type = type;
  }

  /** Notes a required field. */
  public MissingFields field(String name, @Nullable Object value) {
    required++;
    if (value == null) {
      missing.add(name);
    }
    return this;
  }

  /** Throws one error that lists all missing fields, if there are any. */
  public void rejectIfAny() {
    if (missing.isEmpty()) {
      return;
    }
    String names = String.join(", ", missing);
    String fields = required == 1 ? "field" : "fields";
    String message =
        type
            + " is missing "
            + missing.size()
            + " of "
            + required
            + " required "
            + fields
            + ": "
            + names;
    throw InvalidInputException.withMessage(
        type + "." + missing.get(0), "given", "missing", message);
  }

  /** The value of a field that {@link #rejectIfAny} has checked. */
  public static <T> T present(@Nullable T value) {
    if (value == null) {
      throw new IllegalStateException("required field read before it was checked");
    }
    return value;
  }
}
