package org.wattwright.examples.job;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column heading such as {@code capacity [Ah]}.
 *
 * @param written as it stands in the file
 * @param name without the unit
 * @param unit in the brackets; empty if there are none
 * @param index of the column, from 0
 */
record Heading(String written, String name, String unit, int index) {
  private static final Pattern WITH_UNIT = Pattern.compile("([^\\[\\]]*)\\[([^\\[\\]]*)]");

  static Heading parse(String cell, int index) {
    String written = cell.strip();
    Matcher matcher = WITH_UNIT.matcher(written);
    return matcher.matches()
        ? new Heading(written, matcher.group(1).strip(), matcher.group(2).strip(), index)
        : new Heading(written, written, "", index);
  }
}
