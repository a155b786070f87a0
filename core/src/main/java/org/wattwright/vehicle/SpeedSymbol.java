package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;

import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.wattwright.units.InvalidInputException;

/**
 * Speed symbol of a tyre: the speed up to which it carries the load of its index.
 *
 * <p>H comes after U, not after G. Source: UN R30 and UN R54; F to V as printed in the French
 * decree of 24 October 1994, annex I; the others as on a club's and a shop's tyre-code page.
 */
public enum SpeedSymbol {
  /** 50 km/h. */
  B(50),
  /** 60 km/h. */
  C(60),
  /** 65 km/h. */
  D(65),
  /** 70 km/h. */
  E(70),
  /** 80 km/h. */
  F(80),
  /** 90 km/h. */
  G(90),
  /** 100 km/h. */
  J(100),
  /** 110 km/h. */
  K(110),
  /** 120 km/h. */
  L(120),
  /** 130 km/h. */
  M(130),
  /** 140 km/h. */
  N(140),
  /** 150 km/h. */
  P(150),
  /** 160 km/h. */
  Q(160),
  /** 170 km/h. */
  R(170),
  /** 180 km/h. */
  S(180),
  /** 190 km/h. */
  T(190),
  /** 200 km/h. */
  U(200),
  /** 210 km/h. */
  H(210),
  /** 240 km/h. */
  V(240),
  /** 270 km/h. */
  W(270),
  /** 300 km/h. */
  Y(300);

  private final int speedKmh;

  SpeedSymbol(int speedKmh) {
    this.speedKmh = speedKmh;
  }

  /**
   * Reads a symbol.
   *
   * @param text one capital letter
   * @return the symbol
   * @throws InvalidInputException if it is none of these
   */
  public static SpeedSymbol parse(String text) {
    for (SpeedSymbol symbol : values()) {
      if (symbol.name().equals(text)) {
        return symbol;
      }
    }
    throw InvalidInputException.of(
        "SpeedSymbol", "one of B C D E F G J K L M N P Q R S T U H V W Y", "\"" + text + "\"");
  }

  /**
   * The speed it stands for.
   *
   * @return in km/h
   */
  public Quantity<Speed> speed() {
    return KILOMETRE_PER_HOUR.of(speedKmh);
  }
}
