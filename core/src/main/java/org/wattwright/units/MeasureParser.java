package org.wattwright.units;

import java.util.StringJoiner;
import javax.measure.Quantity;

/** Reads number and unit by a grammar of its own, free of any locale. */
final class MeasureParser {
  private MeasureParser() {}

  static <Q extends Quantity<Q>> Quantity<Q> parse(String text, Kind<Q> kind) {
    String trimmed = text.strip();
    int start = text.indexOf(trimmed);
    int end = numberEnd(trimmed);
    if (end == 0) {
      throw error(text, start, kind, "a number with a decimal point and a unit");
    }
    String symbol = trimmed.substring(end).strip();
    NamedUnit<Q> unit = UnitTable.find(kind, symbol);
    if (symbol.startsWith(",")) {
      throw error(text, start + end, kind, "a decimal point, not a comma,");
    }
    if (unit == null) {
      int unitStart = start + trimmed.length() - symbol.length();
      throw error(text, unitStart, kind, "a unit of " + kind + " (" + symbols(kind) + ")");
    }
    String digits = trimmed.substring(0, end).replace('−', '-');
    double value = Double.parseDouble(digits);
    if (!Double.isFinite(value)) {
      throw error(text, start, kind, "a finite number");
    }
    return Measure.of(value, unit);
  }

  /** Index after {@code [sign] digits [. digits] [e [sign] digits]}; 0 if there is no number. */
  private static int numberEnd(String text) {
    int at = skipSign(text, 0);
    int integerEnd = skipDigits(text, at);
    int digits = integerEnd - at;
    at = integerEnd;
    if (at < text.length() && text.charAt(at) == '.') {
      int fractionEnd = skipDigits(text, at + 1);
      digits += fractionEnd - at - 1;
      at = fractionEnd;
    }
    return digits == 0 ? 0 : exponentEnd(text, at);
  }

  private static int exponentEnd(String text, int at) {
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      int digitsStart = skipSign(text, at + 1);
      int end = skipDigits(text, digitsStart);
      return end > digitsStart ? end : at;
    }
    return at;
  }

  private static int skipSign(String text, int at) {
    boolean sign = at < text.length() && "+-−".indexOf(text.charAt(at)) >= 0;
    return sign ? at + 1 : at;
  }

  private static int skipDigits(String text, int at) {
    int end = at;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  private static String symbols(Kind<?> kind) {
    StringJoiner joiner = new StringJoiner(", ");
    kind.units().forEach(unit -> joiner.add(unit.symbol()));
    return joiner.toString();
  }

  private static InvalidInputException error(
      String text, int position, Kind<?> kind, String expected) {
    String message =
        "cannot read \"%s\" as %s: expected %s at position %d"
            .formatted(text, kind, expected, position + 1);
    return InvalidInputException.withMessage(kind.name(), expected, text, message);
  }
}
