package org.wattwright.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Objects;

/**
 * An amount of money with its currency, for ranking by price.
 *
 * <p>Immutable and thread-safe. Prices of different currencies are neither added nor compared.
 *
 * @param amount ≥ 0
 * @param currency ISO 4217 currency
 */
public record Price(BigDecimal amount, Currency currency)
    implements Comparable<Price>, Serializable {
  /**
   * Checks the amount.
   *
   * @param amount ≥ 0
   * @param currency ISO 4217 currency
   * @throws InvalidInputException if the amount is negative
   */
  public Price {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(currency, "currency");
    if (amount.signum() < 0) {
      throw InvalidInputException.of("Price.amount", "≥ 0", amount.toPlainString());
    }
    // 12.50 and 12.5 are the same money.
    amount = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
  }

  /**
   * From texts.
   *
   * @param amount decimal number such as {@code 1250.50}
   * @param currencyCode ISO 4217 code such as {@code EUR}
   * @return the price
   * @throws InvalidInputException if the amount is not a number ≥ 0 or the code is unknown
   */
  public static Price of(String amount, String currencyCode) {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(currencyCode, "currencyCode");
    return new Price(amountOf(amount), currencyOf(currencyCode));
  }

  /**
   * Reads {@code 1250.50 EUR}.
   *
   * @param text amount with a decimal point, space, ISO 4217 code
   * @return the price
   * @throws InvalidInputException if the text is anything else
   */
  public static Price parse(String text) {
    String[] words = Objects.requireNonNull(text, "text").strip().split("\\s+");
    if (words.length != 2) {
      throw InvalidInputException.of(
          "Price", "an amount and an ISO 4217 code, such as 1250.50 EUR", "\"" + text + "\"");
    }
    return of(words[0], words[1]);
  }

  private static BigDecimal amountOf(String amount) {
    try {
      return new BigDecimal(amount.strip());
    } catch (NumberFormatException e) {
      throw InvalidInputException.of("Price.amount", "a decimal number", "\"" + amount + "\"");
    }
  }

  private static Currency currencyOf(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException e) {
      throw InvalidInputException.of("Price.currency", "an ISO 4217 code", "\"" + code + "\"");
    }
  }

  /**
   * Sum of two prices.
   *
   * @param other in the same currency
   * @return the sum
   * @throws InvalidInputException if the currencies differ
   */
  public Price plus(Price other) {
    requireSameCurrency(other);
    return new Price(amount.add(other.amount), currency);
  }

  /**
   * This price several times over.
   *
   * @param count ≥ 0
   * @return the product
   * @throws InvalidInputException if count is negative
   */
  public Price times(int count) {
    if (count < 0) {
      throw InvalidInputException.of("Price.times", "≥ 0", Integer.toString(count));
    }
    return new Price(amount.multiply(BigDecimal.valueOf(count)), currency);
  }

  @Override
  public int compareTo(Price other) {
    requireSameCurrency(other);
    return amount.compareTo(other.amount);
  }

  private void requireSameCurrency(Price other) {
    if (!currency.equals(other.currency)) {
      throw InvalidInputException.of(
          "Price.currency", currency.getCurrencyCode(), other.currency.getCurrencyCode());
    }
  }

  /**
   * Amount and currency code, such as {@code 1250.5 EUR}.
   *
   * @return text that {@link #parse} reads
   */
  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency.getCurrencyCode();
  }
}
