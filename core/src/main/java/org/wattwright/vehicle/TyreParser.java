package org.wattwright.vehicle;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Reads what stands on a sidewall.
 *
 * <pre>
 *   metric  175/70 R14 84T    185 R14C 102/100Q    165 SR15    145-10
 *   inch    5.60-15           6.40-13 4PR          7.00 R16C 117/116L
 * </pre>
 */
final class TyreParser {
  private static final Pattern METRIC =
      Pattern.compile("(\\d{3})(?:/(\\d{2,3}))?\\s*([SHVZ]?R|-|B)\\s*(\\d{1,2})(?:\\s*(C))?(.*)");
  private static final Pattern INCH =
      Pattern.compile("(\\d{1,2}\\.\\d{2})()\\s*([SHVZ]?R|-|B)\\s*(\\d{1,2})(?:\\s*(C))?(.*)");
  private static final Pattern SERVICE =
      Pattern.compile(
          "(?:\\s+(\\d{1,2})\\s*PR)?"
              + "(?:\\s+(\\d{2,3})(?:/(\\d{2,3}))?\\s*([A-Z]))?"
              + "(?:\\s+(XL|EXTRA LOAD|REINFORCED))?\\s*");

  private static final int NARROWEST_MM = 100;
  private static final int WIDEST_MM = 365;
  private static final int LOWEST_ASPECT_PERCENT = 25;
  private static final int HIGHEST_ASPECT_PERCENT = 100;
  private static final int SMALLEST_RIM = 8;
  private static final int LARGEST_RIM = 26;

  private TyreParser() {}

  static Tyre parse(String text) {
    String trimmed = Objects.requireNonNull(text, "text").strip().toUpperCase(Locale.ROOT);
    Matcher metric = METRIC.matcher(trimmed);
    boolean inch = !metric.matches();
    Matcher size = inch ? INCH.matcher(trimmed) : metric;
    if (!size.matches()) {
      throw unknown(text);
    }
    Matcher service = SERVICE.matcher(size.group(6));
    if (!service.matches()) {
      throw unknown(text);
    }
    return new Tyre(size(size, inch), service(service));
  }

  private static InvalidInputException unknown(String text) {
    return InvalidInputException.of(
        "Tyre",
        "a designation such as 175/70 R14 84T, 185R14C 102/100Q or 5.60-15",
        "\"" + text + "\"");
  }

  private static TyreSize size(Matcher matcher, boolean inch) {
    double width = Double.parseDouble(matcher.group(1));
    if (!inch) {
      Require.count("Tyre.width [mm]", (int) width, NARROWEST_MM, WIDEST_MM);
    } else {
      Require.between("Tyre.width [in]", width, NARROWEST_MM / 25.4, WIDEST_MM / 25.4);
    }
    String aspect = matcher.group(2);
    int percent = aspect == null || aspect.isEmpty() ? 0 : Integer.parseInt(aspect);
    if (percent != 0) {
      Require.count("Tyre.aspect [%]", percent, LOWEST_ASPECT_PERCENT, HIGHEST_ASPECT_PERCENT);
    }
    int rim = Integer.parseInt(matcher.group(4));
    Require.count("Tyre.rim [in]", rim, SMALLEST_RIM, LARGEST_RIM);
    return new TyreSize(width, inch, percent, matcher.group(3), rim, matcher.group(5) != null);
  }

  private static TyreService service(Matcher matcher) {
    @Nullable LoadIndex single = index(matcher.group(2));
    @Nullable LoadIndex twin = index(matcher.group(3));
    if (single != null && twin != null && twin.compareTo(single) > 0) {
      throw InvalidInputException.of(
          "Tyre.twinLoadIndex", "≤ " + single.index() + ", the single one", "" + twin.index());
    }
    String symbol = matcher.group(4);
    return new TyreService(
        single,
        twin,
        symbol == null ? null : SpeedSymbol.parse(symbol),
        matcher.group(5) != null,
        matcher.group(1) == null ? 0 : Integer.parseInt(matcher.group(1)));
  }

  private static @Nullable LoadIndex index(@Nullable String text) {
    return text == null ? null : new LoadIndex(Integer.parseInt(text));
  }
}
