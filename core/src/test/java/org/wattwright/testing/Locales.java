package org.wattwright.testing;

import java.util.List;
import java.util.Locale;

/**
 * Default locales that trip up programs: a comma for the point, other digits, and the usual one.
 */
public final class Locales {
  /** Germany, Egypt with Arabic digits, United States, Turkey for its letter i. */
  public static final List<Locale> ALL =
      List.of(
          Locale.GERMANY,
          Locale.forLanguageTag("ar-EG-u-nu-arab"),
          Locale.US,
          Locale.forLanguageTag("tr-TR"));

  private Locales() {}

  /** Runs something under a default locale, and puts the old one back. */
  public static void with(Locale locale, Runnable action) {
    Locale before = Locale.getDefault();
    Locale.setDefault(locale);
    try {
      action.run();
    } finally {
      Locale.setDefault(before);
    }
  }
}
