package org.wattwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts values for the symbols of a formula.
 *
 * <p>A symbol is an input's symbol as it stands, the longest that fits, not part of a longer word:
 * {@code U} is neither in {@code U_min} nor in {@code UA}. Numbers, units behind a number or a
 * degree sign ({@code 20 °C}) and names of functions stay. A value gets brackets where its minus
 * sign or its unit would otherwise be read wrongly, and a multiplication sign where the formula has
 * none.
 */
final class Substitution {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?([eE][+-]?\\d+)?");

  private final String formula;
  private final List<Step.Input> inputs;
  private final List<Step.Input> unused;
  private final StringBuilder out = new StringBuilder();
  private int at;

  private Substitution(String formula, List<Step.Input> inputs) {
    this.formula = formula;
    this.inputs =
        inputs.stream()
            .sorted(Comparator.comparingInt((Step.Input input) -> -input.symbol().length()))
            .toList();
    this.unused = new ArrayList<>(inputs);
  }

  /** The formula with its values; inputs that it does not show stand behind it in brackets. */
  static String of(String formula, List<Step.Input> inputs) {
    return new Substitution(formula, inputs).run();
  }

  private String run() {
    while (at < formula.length()) {
      if (Character.isDigit(formula.charAt(at))) {
        copyNumberWithUnit();
      } else if (formula.charAt(at) == '°') {
        copyTo(wordEnd(at + 1));
      } else if (isWordPart(at)) {
        word();
      } else {
        operator(formula.charAt(at));
        at++;
      }
    }
    if (!unused.isEmpty()) {
      String rest = String.join("; ", unused.stream().map(Step.Input::toString).toList());
      out.append(out.isEmpty() ? "" : " ").append("(").append(rest).append(")");
    }
    return out.toString();
  }

  private void copyTo(int end) {
    out.append(formula, at, end);
    at = end;
  }

  /** A number such as 0.5 or 1e-6, and the unit that follows after a space. */
  private void copyNumberWithUnit() {
    Matcher number = NUMBER.matcher(formula).region(at, formula.length());
    copyTo(number.lookingAt() ? number.end() : at + 1);
    boolean unitFollows = formula.startsWith(" ", at) && at + 1 < formula.length();
    if (unitFollows && isWordPart(at + 1)) {
      copyTo(wordEnd(at + 1));
    }
  }

  private void word() {
    for (Step.Input input : inputs) {
      int end = at + input.symbol().length();
      if (formula.startsWith(input.symbol(), at) && (end >= formula.length() || !isWordPart(end))) {
        unused.remove(input);
        value(input.value().toString(), end);
        at = end;
        return;
      }
    }
    copyTo(wordEnd(at));
  }

  private void value(String value, int end) {
    char before = charAt(at - 1);
    char after = charAt(end);
    if (Character.isDigit(before) || before == ')') {
      out.append(" · ");
    }
    out.append(needsBrackets(value, before, after) ? "(" + value + ")" : value);
    if (after == '(') {
      out.append(" · ");
    }
  }

  private boolean needsBrackets(String value, char before, char after) {
    boolean power = "²³⁴⁵⁻⁰¹^".indexOf(after) >= 0;
    boolean root = before == '√' || before == '∛' || before == '^';
    boolean divisor = out.toString().endsWith("/ ") && (value.contains("/") || value.contains("·"));
    return value.startsWith("-") || power || root || divisor;
  }

  /** Products and quotients get room, so that their signs differ from those of units. */
  private void operator(char c) {
    if (c != '·' && c != '×' && c != '/') {
      out.append(c);
      return;
    }
    out.append(charAt(at - 1) == ' ' ? "" : " ").append(c);
    out.append(charAt(at + 1) == ' ' ? "" : " ");
  }

  /** A space beyond the ends. */
  private char charAt(int index) {
    return index < 0 || index >= formula.length() ? ' ' : formula.charAt(index);
  }

  private int wordEnd(int start) {
    int end = start;
    while (end < formula.length() && isWordPart(end)) {
      end++;
    }
    return end;
  }

  /** Letters, digits, _, primes, sub- and superscript letters, letters with a mark such as x̄. */
  private boolean isWordPart(int index) {
    char c = formula.charAt(index);
    boolean subscript = c >= '₀' && c <= '₎';
    boolean mark = Character.getType(c) == Character.NON_SPACING_MARK;
    return Character.isLetterOrDigit(c) || c == '_' || c == '′' || c == '″' || subscript || mark;
  }
}
