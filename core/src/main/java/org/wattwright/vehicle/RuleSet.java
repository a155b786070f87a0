package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;

/**
 * The limits that an authority sets on conversions, as data; none is built in.
 *
 * <p>Rules differ between countries and years and change: whoever enters them names where they
 * stand, and the licensed engineer says whether they bind.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.of(
 *     "Isle of Example 2020",                          // invented
 *     Source.standard("Isle of Example, Conversion Order", "2020, invented"),
 *     new KerbMassRule(0.08, 0.20),
 *     new AxleShareRule("kerb", Axle.FRONT, 0.40, 0.60));
 * rules.check(subject).forEach(System.out::println);
 * }</pre>
 *
 * <p>Immutable and thread-safe if its rules are.
 *
 * @param name as reports print it
 * @param source where the limits stand
 * @param rules the limits, at least one
 */
public record RuleSet(String name, Source source, List<VehicleRule> rules) implements Serializable {
  /**
   * Copies the list.
   *
   * @param name as reports print it
   * @param source where the limits stand
   * @param rules the limits, at least one
   * @throws org.wattwright.units.InvalidInputException if the name is blank or there is no rule
   */
  public RuleSet {
    name = Require.text("RuleSet.name", name);
    Objects.requireNonNull(source, "source");
    rules = Require.nonEmpty("RuleSet.rules", rules);
  }

  /**
   * A set of rules.
   *
   * @param name as reports print it
   * @param source where the limits stand
   * @param rules the limits, at least one
   * @return the set
   * @throws org.wattwright.units.InvalidInputException if the name is blank or there is no rule
   */
  public static RuleSet of(String name, Source source, VehicleRule... rules) {
    return new RuleSet(name, source, List.of(rules));
  }

  /**
   * All rules against a conversion.
   *
   * @param subject the conversion
   * @return the checks, in the order of the rules
   */
  public List<Check> check(RuleSubject subject) {
    List<Check> checks = new ArrayList<>();
    rules.forEach(rule -> checks.addAll(rule.check(subject, source)));
    return List.copyOf(checks);
  }

  /**
   * How the compared figures come about.
   *
   * @param subject the conversion
   * @return the worksheet
   */
  public Worksheet worksheet(RuleSubject subject) {
    Worksheet.Recording recording = Worksheet.record("Limits of " + name);
    rules.forEach(rule -> rule.check(subject, source, recording));
    return recording.toWorksheet();
  }

  /**
   * Name and size.
   *
   * @return for example {@code Isle of Example, 3 rules}
   */
  @Override
  public String toString() {
    return name + ", " + rules.size() + (rules.size() == 1 ? " rule" : " rules");
  }
}
