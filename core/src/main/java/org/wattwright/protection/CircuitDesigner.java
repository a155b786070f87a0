package org.wattwright.protection;

import static java.util.Comparator.comparing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.wattwright.conductor.Cable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Chooses cable, fuse, contactor and pre-charge resistor of every circuit together, out of
 * catalogues, so that all checks hold.
 *
 * <p>Parts by themselves: temperatures, drop, terminals and voltage of the cable; continuous and
 * cyclic current, whole-pack direct voltage, time constant and breaking capacity of the fuse;
 * carry, voltage and break of the contactor; pre-charge. Together: every current from the highest
 * operating one to the highest fault is dealt with ({@link CurrentCover}); every fault from the
 * lowest on is cleared in time; the fuse lets through no more than cable and contactor bear; each
 * fuse clears before the next nearer to the source.
 *
 * <p>The highest fault is taken at the supply's terminals, as if the circuits had no resistance;
 * the lowest at the far end of each circuit, with all cables at their temperature limit and all
 * joints at the high end of their range. Both are on the safe side.
 *
 * <p>Smallest is the sum over all circuits by the objective, mass and then price unless told
 * otherwise; exact by dynamic programming over the tree. Immutable: each call returns a new
 * designer.
 *
 * <pre>{@code
 * CircuitDesign design =
 *     CircuitDesigner.fedBy(battery).circuits(List.of(traction, heater))
 *         .cables(cables).fuses(fuses).contactors(contactors).run();
 * design.best().ifPresentOrElse(System.out::println, () -> System.out.println(design.whyNone()));
 * }</pre>
 */
public final class CircuitDesigner {
  private final DesignSpec spec;

  private CircuitDesigner(DesignSpec spec) {
    this.spec = spec;
  }

  /**
   * With the supply of all circuits that have none of their own.
   *
   * @param supply the battery
   * @return a designer with no circuits and empty catalogues
   */
  public static CircuitDesigner fedBy(CircuitSupply supply) {
    Objects.requireNonNull(supply, "supply");
    return new CircuitDesigner(DesignSpec.of(supply));
  }

  /**
   * The circuits.
   *
   * @param value each after the one that feeds it, names unique
   * @return a new designer
   * @throws InvalidInputException if empty, a name occurs twice, or a circuit comes before the one
   *     that feeds it
   */
  public CircuitDesigner circuits(List<Circuit> value) {
    List<Circuit> all = Require.nonEmpty("CircuitDesigner.circuits", value);
    Set<String> names = new HashSet<>();
    for (Circuit circuit : all) {
      circuit.upstream().ifPresent(up -> requireListed(names, circuit, up));
      if (!names.add(circuit.name())) {
        throw InvalidInputException.of(
            "CircuitDesigner.circuits", "names that occur once", circuit.name());
      }
    }
    return new CircuitDesigner(spec.withCircuits(all));
  }

  private static void requireListed(Set<String> names, Circuit circuit, Circuit upstream) {
    if (!names.contains(upstream.name())) {
      throw InvalidInputException.of(
          "CircuitDesigner.circuits",
          "each after the one that feeds it",
          circuit.name() + " without " + upstream.name() + " before it");
    }
  }

  /**
   * Cables to choose from.
   *
   * @param value one or more, in any order
   * @return a new designer
   * @throws InvalidInputException if empty
   */
  public CircuitDesigner cables(List<Cable> value) {
    List<Cable> all = Require.nonEmpty("CircuitDesigner.cables", value);
    return new CircuitDesigner(spec.withCables(all));
  }

  /**
   * Fuses to choose from.
   *
   * @param value in any order
   * @return a new designer
   */
  public CircuitDesigner fuses(List<Fuse> value) {
    Comparator<Fuse> order =
        comparing((Fuse fuse) -> fuse.data().ratedA())
            .thenComparing(Fuse::name)
            .thenComparing(fuse -> fuse.data().toString());
    return new CircuitDesigner(spec.withFuses(sorted(value, order)));
  }

  /**
   * Contactors to choose from.
   *
   * @param value in any order
   * @return a new designer
   */
  public CircuitDesigner contactors(List<Contactor> value) {
    Comparator<Contactor> order =
        comparing(Contactor::name).thenComparing(CircuitDesigner::contentOf);
    return new CircuitDesigner(spec.withContactors(sorted(value, order)));
  }

  /** Everything that may tell two contactors of one name apart, so that order never matters. */
  private static String contentOf(Contactor contactor) {
    return String.join(
        " ",
        contactor.toString(),
        contactor.carryCurve().toString(),
        contactor.makeLimit().toString(),
        contactor.breakRatings().toString(),
        contactor.withstand().toString(),
        contactor.openingTime().toString(),
        contactor.mass().toString(),
        contactor.price().toString());
  }

  /**
   * Pre-charge resistors to choose from.
   *
   * @param value in any order
   * @return a new designer
   */
  public CircuitDesigner prechargeResistors(List<PrechargeResistor> value) {
    Comparator<PrechargeResistor> order =
        comparing(PrechargeResistor::ohm)
            .thenComparing(PrechargeResistor::name)
            .thenComparing(resistor -> resistor.mass().toString() + resistor.price());
    return new CircuitDesigner(spec.withResistors(sorted(value, order)));
  }

  private static <T> List<T> sorted(List<T> value, Comparator<T> order) {
    List<T> all = new ArrayList<>(value);
    all.sort(order);
    return all;
  }

  /**
   * Allows parallel cables in every circuit that has no number of its own.
   *
   * @param most 1 to 8 for each conductor
   * @return a new designer
   * @throws InvalidInputException if outside its range
   */
  public CircuitDesigner parallelRunsUpTo(int most) {
    return new CircuitDesigner(
        spec.withRuns(Require.count("CircuitDesigner.parallelRuns", most, 1, 8)));
  }

  /**
   * What the smallest parts are.
   *
   * @param value mass, then price unless told
   * @return a new designer
   */
  public CircuitDesigner smallestBy(CircuitObjective value) {
    return new CircuitDesigner(spec.withObjective(Objects.requireNonNull(value, "objective")));
  }

  /**
   * Also accepts parts of which something cannot be checked for want of data; the fewest such
   * choices, before the objective counts.
   *
   * @return a new designer
   */
  public CircuitDesigner allowProvisional() {
    return new CircuitDesigner(spec.withProvisional());
  }

  /**
   * Also accepts cables whose diameters the catalogue leaves out: these are estimated by {@link
   * org.wattwright.conductor.GenericGeometry}, the worse of the thinnest and the thickest counts,
   * and whatever rests on them is at most a caution. Without this they are not looked at, and
   * {@link CircuitDesign#passedOver} counts them.
   *
   * @return a new designer
   */
  public CircuitDesigner withGenericGeometry() {
    return new CircuitDesigner(spec.withGenericGeometry());
  }

  /**
   * Searches.
   *
   * @return the smallest parts of every circuit, or what stands in the way
   * @throws InvalidInputException if circuits or cables are missing, or prices are in several
   *     currencies
   */
  public CircuitDesign run() {
    return prepared().run();
  }

  DesignRun prepared() {
    Require.nonEmpty("CircuitDesigner.circuits", spec.circuits());
    Require.nonEmpty("CircuitDesigner.cables", spec.cables());
    return new DesignRun(spec);
  }

  /**
   * Sizes of the catalogues.
   *
   * @return for example {@code 3 circuits over 60 cables, 80 fuses, 20 contactors}
   */
  @Override
  public String toString() {
    int circuits = spec.circuits().size();
    return circuits
        + (circuits == 1 ? " circuit over " : " circuits over ")
        + spec.cables().size()
        + " cables, "
        + spec.fuses().size()
        + " fuses, "
        + spec.contactors().size()
        + " contactors, "
        + spec.resistors().size()
        + " pre-charge resistors";
  }
}
