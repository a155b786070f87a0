package org.wattwright.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts numbers for symbols; a symbol is a run of letters, digits, _ and sub- or superscripts. */
final class Substitution {
  private Substitution() {}

  static String of(String formula, List<Step.Input> inputs) {
    Map<String, String> values = new HashMap<>();
    for (Step.Input input : inputs) {
      values.put(input.symbol(), text(input.value()));
    }
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < formula.length()) {
      int end = symbolEnd(formula, at);
      if (end > at) {
        String symbol = formula.substring(at, end);
        out.append(values.getOrDefault(symbol, symbol));
        at = end;
      } else {
        out.append(formula.charAt(at));
        at++;
      }
    }
    return out.toString();
  }

  /** A negative number needs brackets where a symbol stood. */
  private static String text(Figure value) {
    String text = value.toString();
    return text.startsWith("-") ? "(" + text + ")" : text;
  }

  private static int symbolEnd(String formula, int start) {
    if (!Character.isLetter(formula.charAt(start))) {
      return start;
    }
    int end = start;
    while (end < formula.length() && isSymbolPart(formula.charAt(end))) {
      end++;
    }
    return end;
  }

  private static boolean isSymbolPart(char c) {
    boolean subscript = c >= '₀' && c <= '₉';
    return Character.isLetter(c) || Character.isDigit(c) || c == '_' || c == '′' || subscript;
  }
}
