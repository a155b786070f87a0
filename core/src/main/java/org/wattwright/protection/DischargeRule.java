package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * A case in which a bus must have become harmless, the time it has, and whether low energy will do.
 *
 * <p>Harmless is 60 V DC or less; where the rule admits it, less than 0.2 J as well. Immutable and
 * thread-safe.
 *
 * @param name of the case
 * @param within the time it has, &gt; 0 s
 * @param lowEnergyWillDo whether less than 0.2 J is enough at any voltage
 * @param source of the time
 */
public record DischargeRule(
    String name, Quantity<Time> within, boolean lowEnergyWillDo, Source source)
    implements Serializable {
  /** A connector that opens without tools and is not otherwise protected: 60 V in 1 s. */
  public static final DischargeRule SEPARATED_CONNECTOR =
      new DischargeRule(
          "separated connector",
          Measures.seconds(1),
          false,
          Source.standard("UN R100", "para 5.1.1, connectors; 82 FR 44945 (2017)"));

  /** Active discharge after the contactors open: 60 V in 5 s. */
  public static final DischargeRule ACTIVE_DISCHARGE =
      new DischargeRule(
          "active discharge",
          Measures.seconds(5),
          false,
          Source.commonPractice("active discharge in 5 s; no limit of UN R100"));

  /** Bleed resistor after the contactors open: 60 V in 120 s. */
  public static final DischargeRule BLEED =
      new DischargeRule(
          "bleed",
          Measures.seconds(120),
          false,
          Source.commonPractice("bleed in 120 s; no limit of UN R100"));

  /** After a crash, at the reading of a vehicle that came to rest within 5 s: 60 V or 0.2 J. */
  public static final DischargeRule AFTER_CRASH =
      new DischargeRule(
          "after a crash",
          Measures.seconds(10),
          true,
          Source.standard("ISO 6469-4:2015", "cl. 5.2.2, 5.2.3"));

  /** After a crash, latest time of the electrical annexes: 60 V or 0.2 J in 60 s. */
  public static final DischargeRule AFTER_CRASH_LATEST =
      new DischargeRule(
          "after a crash, latest",
          Measures.seconds(60),
          true,
          Source.standard("UN R94, R95, R137", "electrical annex").fromMemory());

  /**
   * Checks the fields.
   *
   * @param name of the case
   * @param within &gt; 0 s
   * @param lowEnergyWillDo whether less than 0.2 J is enough
   * @param source of the time
   * @throws org.wattwright.units.InvalidInputException if the name is blank or the time not
   *     positive
   */
  public DischargeRule {
    name = Require.text("DischargeRule.name", name);
    Require.quantity("DischargeRule.within", within, SECOND).positive();
    within = Measure.from(within, Kind.TIME);
    Objects.requireNonNull(source, "source");
  }

  /**
   * Case and time.
   *
   * @return for example {@code bleed: 60 V in 120 s}
   */
  @Override
  public String toString() {
    return name + ": 60 V" + (lowEnergyWillDo ? " or 0.2 J" : "") + " in " + within;
  }
}
