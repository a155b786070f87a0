package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * The powers that a heater with switched elements can give, off among them.
 *
 * <p>Immutable and thread-safe.
 *
 * @param powers from 0 W up, each once
 */
public record HeaterSteps(List<Quantity<Power>> powers) implements Serializable {
  private static final int MOST_ELEMENTS = 10;

  /**
   * Sorts the powers, adds off and drops what stands twice.
   *
   * @param powers at least one, each ≥ 0 W, not all 0 W
   * @throws InvalidInputException if there is none, if one is negative, or if all are 0 W
   */
  public HeaterSteps {
    TreeSet<Double> risingW = new TreeSet<>(List.of(0.0));
    for (Quantity<Power> power : Require.nonEmpty("HeaterSteps.powers", powers)) {
      risingW.add(Require.quantity("HeaterSteps.power", power, WATT).nonNegative() + 0.0);
    }
    if (risingW.size() == 1) {
      throw InvalidInputException.of("HeaterSteps.powers", "one above 0 W", "0 W");
    }
    powers = risingW.stream().<Quantity<Power>>map(HeaterSteps::shown).toList();
  }

  private static Measure<Power> shown(double powerW) {
    return Measure.from(WATT.of(powerW), Kind.POWER);
  }

  /**
   * Powers as the heater's switch gives them.
   *
   * @param powers at least one, each ≥ 0 W, not all 0 W
   * @return the steps
   * @throws InvalidInputException if there is none, if one is negative, or if all are 0 W
   */
  public static HeaterSteps of(List<? extends Quantity<Power>> powers) {
    return new HeaterSteps(List.copyOf(powers));
  }

  /**
   * Every sum of elements that are switched one by one.
   *
   * @param elements 1 to 10, each &gt; 0 W
   * @return the steps
   * @throws InvalidInputException if the number or a power is outside its range
   */
  public static HeaterSteps ofElements(List<? extends Quantity<Power>> elements) {
    Require.count("HeaterSteps.elements", elements.size(), 1, MOST_ELEMENTS);
    double[] sumsW = new double[1 << elements.size()];
    for (int i = 0; i < elements.size(); i++) {
      double elementW = Require.quantity("HeaterSteps.element", elements.get(i), WATT).positive();
      for (int sum = 0; sum < 1 << i; sum++) {
        sumsW[sum + (1 << i)] = sumsW[sum] + elementW;
      }
    }
    return new HeaterSteps(
        Arrays.stream(sumsW).<Quantity<Power>>mapToObj(Kind.POWER::ofSi).toList());
  }

  /**
   * Highest power.
   *
   * @return &gt; 0 W
   */
  public Quantity<Power> highest() {
    return powers.get(powers.size() - 1);
  }

  /**
   * The two neighbouring steps that hold a load, and how long the upper one is on.
   *
   * @param load mean power to give, ≥ 0 W
   * @return the duty; empty if the load is above the highest step
   * @throws InvalidInputException if the load is negative
   */
  public Optional<HeaterDuty> holding(Quantity<Power> load) {
    double loadW = Require.quantity("HeaterSteps.load", load, WATT).nonNegative();
    for (int i = 1; i < powers.size(); i++) {
      double upperW = Kind.POWER.siValueOf(powers.get(i));
      if (loadW <= upperW) {
        double lowerW = Kind.POWER.siValueOf(powers.get(i - 1));
        double share = (loadW - lowerW) / (upperW - lowerW);
        return Optional.of(new HeaterDuty(powers.get(i - 1), powers.get(i), share));
      }
    }
    return Optional.empty();
  }

  /**
   * The powers.
   *
   * @return for example {@code 0 W, 1000 W, 2000 W, 3000 W}
   */
  @Override
  public String toString() {
    return String.join(", ", powers.stream().map(Object::toString).toList());
  }
}
