package org.wattwright.testing;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.assertj.core.api.Assertions;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.NamedUnit;

/**
 * One published value: what it is, under which conditions, how exact, and where it was found.
 *
 * @param conditions {@code key=value} pairs of the row in their order; a remark without {@code =}
 *     is a key with an empty value
 * @param value as printed
 * @param obtained {@code seen: …}, {@code computed: …}, {@code memory} or {@code common practice}
 */
public record ReferenceRow(
    String id,
    String topic,
    String quantity,
    Map<String, String> conditions,
    String value,
    String unit,
    ReferenceTolerance tolerance,
    String source,
    String obtained,
    String note) {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");

  static Map<String, String> conditionsOf(String text) {
    Map<String, String> conditions = new LinkedHashMap<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        String[] sides = part.split("=", 2);
        conditions.putIfAbsent(sides[0].strip(), sides.length == 2 ? sides[1].strip() : "");
      }
    }
    return Collections.unmodifiableMap(conditions);
  }

  /** The published number in the unit of the row. */
  public double number() {
    return new BigDecimal(value).doubleValue();
  }

  /** The text of a condition. */
  public String given(String key) {
    String text = conditions.get(key);
    if (text == null) {
      throw new IllegalArgumentException(id + " has no condition " + key + ": " + conditions);
    }
    return text;
  }

  /** Whether the row states this condition. */
  public boolean has(String key) {
    return conditions.containsKey(key);
  }

  /** The first number in a condition, in the unit written there. */
  public double givenNumber(String key) {
    Matcher matcher = NUMBER.matcher(given(key));
    if (!matcher.find()) {
      throw new IllegalArgumentException(id + ": no number in " + key + "=" + given(key));
    }
    return Double.parseDouble(matcher.group());
  }

  /** A condition as a quantity; words behind the unit are passed over. */
  public <Q extends Quantity<Q>> Quantity<Q> given(String key, Kind<Q> kind) {
    String text = given(key);
    for (int end = text.length(); end > 0; end = text.lastIndexOf(' ', end - 1)) {
      try {
        return kind.parse(text.substring(0, end));
      } catch (InvalidInputException e) {
        // Try again without the last word.
      }
    }
    throw new IllegalArgumentException(id + ": no " + kind + " in " + key + "=" + text);
  }

  /** The published value as a quantity. */
  public <Q extends Quantity<Q>> Quantity<Q> quantity(Kind<Q> kind) {
    return kind.parse(value + " " + unit);
  }

  /** The unit of the row. */
  public <Q extends Quantity<Q>> NamedUnit<Q> unit(Kind<Q> kind) {
    return kind.unit(unit);
  }

  /** Whether the value, or a constant in it, was not seen in a text but recalled. */
  public boolean isFromMemory() {
    return obtained.contains("memory");
  }

  boolean admits(double ours) {
    return tolerance.admits(new BigDecimal(value), ours);
  }

  /** Fails unless ours, in the unit of the row, is within the row's tolerance. */
  public void assertMatches(double ours) {
    Assertions.assertThat(ours)
        .as("%s, tolerance %s", this, tolerance)
        .matches(this::admits, "agrees with the published value");
  }

  /** Fails unless ours is within the row's tolerance. */
  public <Q extends Quantity<Q>> void assertMatches(Quantity<Q> ours, Kind<Q> kind) {
    assertMatches(unit(kind).valueOf(ours));
  }

  /** Fails unless ours is the published text. */
  public void assertMatches(String ours) {
    Assertions.assertThat(ours).as(toString()).isEqualTo(value);
  }

  /** Identifier, what it is, source; the display name of a test. */
  @Override
  public String toString() {
    String memory = isFromMemory() ? " (from memory)" : "";
    return "%s %s (%s) = %s %s [%s]%s"
        .formatted(id, quantity, conditionsText(), value, unit, source, memory);
  }

  String conditionsText() {
    return String.join("; ", conditions.entrySet().stream().map(ReferenceRow::pair).toList());
  }

  private static String pair(Map.Entry<String, String> condition) {
    return condition.getValue().isEmpty()
        ? condition.getKey()
        : condition.getKey() + "=" + condition.getValue();
  }
}
