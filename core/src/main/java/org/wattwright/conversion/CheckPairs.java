package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;

/** The checks of two reviews, paired by code and by what they compare. */
final class CheckPairs {
  private CheckPairs() {}

  /** What tells a check from the others; the count parts those that say the same words. */
  private record Key(String code, String what, int count) {}

  static List<ChangedCheck> changed(List<Check> before, List<Check> after) {
    Map<Key, Check> first = keyed(before);
    Map<Key, Check> second = keyed(after);
    List<ChangedCheck> changed = new ArrayList<>();
    first.forEach(
        (key, check) -> {
          Check other = second.get(key);
          if (other == null || differ(check, other)) {
            changed.add(new ChangedCheck(check, other));
          }
        });
    second.forEach(
        (key, check) -> {
          if (!first.containsKey(key)) {
            changed.add(new ChangedCheck(null, check));
          }
        });
    changed.sort(Comparison.ORDER);
    return List.copyOf(changed);
  }

  private static Map<Key, Check> keyed(List<Check> checks) {
    Map<Key, Check> keyed = new LinkedHashMap<>();
    for (Check check : checks) {
      int count = 0;
      while (keyed.containsKey(new Key(check.code(), check.what(), count))) {
        count++;
      }
      keyed.put(new Key(check.code(), check.what(), count), check);
    }
    return keyed;
  }

  /** A margin counts as it is printed; what rounding leaves behind that is no change. */
  private static boolean differ(Check one, Check other) {
    return one.outcome() != other.outcome()
        || !one.margin().map(Figure::toString).equals(other.margin().map(Figure::toString));
  }
}
