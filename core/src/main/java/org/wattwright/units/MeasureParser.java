package org.wattwright.units;

import java.util.StringJoiner;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** Reads number and unit by a grammar of its own, free of any locale. */
final class MeasureParser {
  private MeasureParser() {}

  static <Q extends Quantity<Q>> Quantity<Q> parse(String text, Kind<Q> kind) {
    int start = skipSpaces(text, 0);
    int numberEnd = numberEnd(text, start);
    if (numberEnd == start) {
      throw error(text, start, kind, "a number with a decimal point and a unit");
    }
    int unitStart = skipSpaces(text, numberEnd);
    String symbol = withoutTrailingSpaces(text.substring(unitStart));
    if (symbol.startsWith(",")) {
      throw error(text, unitStart, kind, "a decimal point, not a comma,");
    }
    NamedUnit<Q> unit = unit(symbol, kind);
    if (unit == null) {
      InvalidInputException error = error(text, unitStart, kind, expectedUnit(kind));
      throw UnitTable.kindOf(symbol).map(other -> hinted(error, symbol, other)).orElse(error);
    }
    return Measure.of(number(text, start, numberEnd, kind), unit);
  }

  static <Q extends Quantity<Q>> NamedUnit<Q> parseUnit(String spelling, Kind<Q> kind) {
    int start = skipSpaces(spelling, 0);
    String symbol = withoutTrailingSpaces(spelling.substring(start));
    NamedUnit<Q> unit = UnitTable.find(kind, symbol);
    if (unit == null) {
      InvalidInputException error =
          InvalidInputException.of("unit of " + kind, expectedUnit(kind), "\"" + spelling + "\"");
      throw UnitTable.kindOf(symbol).map(other -> hinted(error, symbol, other)).orElse(error);
    }
    return unit;
  }

  private static <Q extends Quantity<Q>> @Nullable NamedUnit<Q> unit(String symbol, Kind<Q> kind) {
    // "5 1" is a slip of the keyboard, though 1 is the unit of a plain number.
    return symbol.equals("1") ? null : UnitTable.find(kind, symbol);
  }

  private static double number(String text, int start, int end, Kind<?> kind) {
    String digits = text.substring(start, end).replace('−', '-');
    double value = Double.parseDouble(digits);
    if (!Double.isFinite(value)) {
      throw error(text, start, kind, "a finite number");
    }
    if (value == 0 && digits.split("[eE]", 2)[0].matches(".*[1-9].*")) {
      throw error(text, start, kind, "a number that is not too small to hold");
    }
    return value;
  }

  /**
   * Index after {@code [sign] digits [. digits] [e [sign] digits]}; start if no number is there.
   */
  private static int numberEnd(String text, int start) {
    int integerStart = skipSign(text, start);
    int integerEnd = skipDigits(text, integerStart);
    int digits = integerEnd - integerStart;
    int end = integerEnd;
    if (end < text.length() && text.charAt(end) == '.') {
      end = skipDigits(text, integerEnd + 1);
      digits += end - integerEnd - 1;
    }
    return digits == 0 ? start : exponentEnd(text, end);
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

  private static int skipSpaces(String text, int at) {
    int end = at;
    while (end < text.length() && UnitSpelling.isSpace(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static String withoutTrailingSpaces(String text) {
    int end = text.length();
    while (end > 0 && UnitSpelling.isSpace(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(0, end);
  }

  private static String expectedUnit(Kind<?> kind) {
    StringJoiner symbols = new StringJoiner(", ", "a unit of " + kind + " (", ")");
    kind.units().forEach(unit -> symbols.add(unit.symbol()));
    return symbols.toString();
  }

  private static InvalidInputException hinted(
      InvalidInputException error, String symbol, Kind<?> other) {
    return error.withHint(symbol + " is a unit of " + other);
  }

  private static InvalidInputException error(
      String text, int position, Kind<?> kind, String expected) {
    String message =
        "cannot read \"" + text + "\" as " + kind + ": expected " + expected + " at position ";
    return InvalidInputException.withMessage(kind.name(), expected, text, message + (position + 1));
  }
}
