package org.wattwright.examples.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Things with names that must be unique within their file. */
final class Named {
  private Named() {}

  static <T> Map<String, T> unique(
      List<T> things, Function<T, String> nameOf, Function<T, Origin> originOf) {
    Map<String, T> byName = new LinkedHashMap<>();
    for (T thing : things) {
      T first = byName.putIfAbsent(nameOf.apply(thing), thing);
      if (first != null) {
        throw originOf
            .apply(thing)
            .error(
                "name %s stands twice, first in line %d"
                    .formatted(Quoted.of(nameOf.apply(thing)), originOf.apply(first).line()));
      }
    }
    return byName;
  }

  static <T> T find(Map<String, T> byName, String name, Origin origin) {
    return find("cell", byName, name, origin);
  }

  static <T> T find(String what, Map<String, T> byName, String name, Origin origin) {
    T thing = byName.get(name);
    if (thing == null) {
      String known = String.join(", ", byName.keySet());
      throw origin.error(
          "no " + what + " is named " + Quoted.of(name) + "; " + what + "s are " + known);
    }
    return thing;
  }
}
