package org.wattwright.conversion;

import java.util.Arrays;
import org.wattwright.check.Check;

/** The part of a conversion that a check belongs to, by the first word of its code. */
public enum ReviewArea {
  /** Modules, strings, and what is asked of the pack. */
  PACK("pack", "battery", "pack", "layout", "cell"),
  /** The pack against the windows of its devices. */
  VOLTAGE("voltage windows", "voltage"),
  /** Axles, wheels, tyres, gross mass and the rules about them. */
  MASSES("masses, axles and tyres", "mass", "axle", "wheel", "tyre", "rule", "vehicle"),
  /** Service brake, parking brake, long descents. */
  BRAKES("brakes", "brake", "parking", "vacuum"),
  /** Springs, stability, steering. */
  RIDE("springs, stability and steering", "spring", "stability", "handling"),
  /** Conductors and their joints. */
  CABLES("cables", "conductor"),
  /** Fuses, contactors, pre-charge, and how they work together. */
  PROTECTION(
      "fuses and contactors", "fuse", "contactor", "protection", "precharge", "resistor", "duty"),
  /** What keeps people from a shock. */
  SHOCK("isolation and bonding", "isolation", "bonding", "inlet", "discharge", "insulation"),
  /** Supply, charger, low voltage. */
  CHARGING("charging and low voltage", "charging", "charge"),
  /** Performance and range. */
  DRIVE("drive and range", "drive", "performance", "range", "motion"),
  /** Pack, coolant and cabin temperatures. */
  HEAT("heat", "thermal", "heat"),
  /** Boxes, brackets and controls. */
  INSTALLATION("installation", "installation", "gauge", "settings"),
  /** What somebody asks for beside. */
  REQUIREMENTS("further requirements", "requirement"),
  /** A check of the caller's own, whose code begins with none of the words above. */
  OTHER("other");

  private final String label;

  /** Each with a space on either side. */
  private final String words;

  ReviewArea(String label, String... words) {
    this.label = label;
    this.words = " " + String.join(" ", words) + " ";
  }

  /**
   * The area of a check.
   *
   * @param check any check
   * @return the area; OTHER if the first word of its code is not one of the library's
   */
  public static ReviewArea of(Check check) {
    String word = " " + check.code().split("[.-]", 2)[0] + " ";
    return Arrays.stream(values())
        .filter(area -> area.words.contains(word))
        .findFirst()
        .orElse(OTHER);
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code voltage windows}
   */
  @Override
  public String toString() {
    return label;
  }
}
