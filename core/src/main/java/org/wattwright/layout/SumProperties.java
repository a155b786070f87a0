package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.LITRE;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.wattwright.battery.CellProperty;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/** The sums over modules and enclosures that a search knows. */
final class SumProperties {
  private SumProperties() {}

  /** Modules and empty enclosures. */
  static Property mass() {
    return new SumProperty(
        new SumProperty.Words("pack mass", "m", "mass"),
        new SumProperty.Parts(
            module -> Kind.MASS.siValueOf(module.mass()),
            enclosure -> Kind.MASS.siValueOf(enclosure.tareMass()),
            candidate -> Kind.MASS.siValueOf(candidate.mass())),
        si -> Figure.ofSi(si, KILOGRAM),
        List.of(CellProperty.MASS));
  }

  /** The modules' outer boxes. */
  static Property volume() {
    return new SumProperty(
        new SumProperty.Words("pack volume", "V", "dimensions"),
        new SumProperty.Parts(
            module -> module.volume().map(Kind.VOLUME::siValueOf).orElse(Double.NaN),
            enclosure -> 0,
            candidate -> candidate.volume().map(Kind.VOLUME::siValueOf).orElse(Double.NaN)),
        si -> Figure.ofSi(si, LITRE),
        List.of(CellProperty.MASS));
  }

  /** Modules and enclosures, all in one currency; empty if nothing has a price. */
  static Property price(Optional<Currency> currency) {
    return new SumProperty(
        new SumProperty.Words("pack price", "C", "price"),
        new SumProperty.Parts(
            module -> amount(module.price()),
            enclosure -> amount(enclosure.price()),
            candidate -> amount(candidate.price())),
        si -> currency.map(c -> Figure.of(priceOf(si, c))).orElseGet(() -> Figure.number(si)),
        List.of());
  }

  private static double amount(Optional<Price> price) {
    return price.map(p -> p.amount().doubleValue()).orElse(Double.NaN);
  }

  /** Without the digits that only binary numbers have. */
  private static Price priceOf(double amount, Currency currency) {
    return new Price(new BigDecimal(amount).round(new MathContext(15)), currency);
  }

  /** Number of modules. */
  static Property moduleCount() {
    return new SumProperty(
        new SumProperty.Words("module count", "n", "count"),
        new SumProperty.Parts(module -> 1, enclosure -> 0, Candidate::moduleCount),
        si -> Figure.count((long) si),
        List.of());
  }
}
