package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.wattwright.units.InvalidInputException;

/** Lists in which a name stands for one thing. */
final class Distinct {
  private Distinct() {}

  /** The list with one more; the same thing again changes nothing. */
  static <T> List<T> with(String field, List<T> list, T added, Function<T, String> name) {
    Objects.requireNonNull(added, field);
    for (T present : list) {
      if (present.equals(added)) {
        return list;
      }
      if (name.apply(present).equals(name.apply(added))) {
        throw InvalidInputException.of(
            field, "told apart by name", "two called \"" + name.apply(added) + "\"");
      }
    }
    List<T> more = new ArrayList<>(list);
    more.add(added);
    return List.copyOf(more);
  }
}
