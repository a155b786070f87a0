package org.wattwright.protection;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;

/**
 * Answer of a {@link CircuitDesigner}: the smallest parts of every circuit, proven over the
 * catalogues, or what stands in the way. Immutable.
 */
public final class CircuitDesign {
  private final DesignTree tree;
  private final List<DesignedCircuit> circuits;
  private final @Nullable BlockedCircuit blocked;
  private final List<Check> open;
  private final BigInteger combinations;

  /** What a run leaves besides the parts. */
  record Remains(List<Check> open, BigInteger combinations) {}

  private CircuitDesign(
      DesignTree tree,
      List<DesignedCircuit> circuits,
      @Nullable BlockedCircuit blocked,
      Remains remains) {
    this.tree = tree;
    this.circuits = List.copyOf(circuits);
    this.blocked = blocked;
    this.open = List.copyOf(remains.open());
    this.combinations = remains.combinations();
  }

  static CircuitDesign found(DesignTree tree, PartsOption[] chosen, Remains remains) {
    List<DesignedCircuit> circuits = new ArrayList<>();
    for (int i = 0; i < chosen.length; i++) {
      circuits.add(new DesignedCircuit(tree, chosen, i));
    }
    return new CircuitDesign(tree, circuits, null, remains);
  }

  static CircuitDesign none(DesignTree tree, Remains remains) {
    return new CircuitDesign(tree, List.of(), new BlockedSearch(tree).blocked(), remains);
  }

  /**
   * The circuits with their parts.
   *
   * @return in the order given; empty if one is blocked
   */
  public List<DesignedCircuit> circuits() {
    return circuits;
  }

  /**
   * The circuit of a name.
   *
   * @param name as given
   * @return empty if it is not designed
   */
  public Optional<DesignedCircuit> circuit(String name) {
    return circuits.stream().filter(each -> each.circuit().name().equals(name)).findFirst();
  }

  /**
   * What stands in the way.
   *
   * @return empty if parts were found
   */
  public Optional<BlockedCircuit> blocked() {
    return Optional.ofNullable(blocked);
  }

  /**
   * What is open because data is missing: circuits that could not be designed, and those behind
   * them; faults that capacitors feed of which too little is known.
   *
   * @return NOT_CHECKED, each naming the fields; empty if nothing is
   */
  public List<Check> open() {
    return open;
  }

  /**
   * The parts that were no candidates because the catalogue leaves something out, though nothing
   * that is known of them fails.
   *
   * @return each circuit and kind of part with the count and the missing fields; empty if every
   *     part was looked at
   */
  public List<PassedOver> passedOver() {
    return PassedOverSearch.of(tree);
  }

  /**
   * Whether parts were found for every circuit and everything was checked.
   *
   * @return true if nothing is blocked, open or provisional
   */
  public boolean isComplete() {
    return blocked == null && open.isEmpty() && !isProvisional();
  }

  /**
   * Whether parts were found but something could not be checked.
   *
   * @return true if data of a part is missing
   */
  public boolean isProvisional() {
    return circuits.stream().anyMatch(DesignedCircuit::isProvisional);
  }

  /**
   * How many combinations of parts the answer is proven over.
   *
   * @return the product over all circuits that were designed
   */
  public BigInteger combinations() {
    return combinations;
  }

  /**
   * All checks of all circuits, and the open ones.
   *
   * @return each marked with its circuit
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>(open);
    for (DesignedCircuit each : circuits) {
      each.checks().forEach(check -> checks.add(check.in(each.circuit().name())));
    }
    return checks;
  }

  /**
   * The list of parts of all circuits.
   *
   * @return in the order of the circuits
   */
  public List<CircuitPart> parts() {
    return circuits.stream().flatMap(each -> each.parts().stream()).toList();
  }

  /**
   * Mass of all parts.
   *
   * @return empty if one is unknown, or nothing was found
   */
  public Optional<Quantity<Mass>> mass() {
    double sumKg = 0;
    for (CircuitPart part : parts()) {
      Double massKg = part.massKg();
      if (massKg == null) {
        return Optional.empty();
      }
      sumKg += massKg;
    }
    return circuits.isEmpty() ? Optional.empty() : Optional.of(Kind.MASS.ofSi(sumKg));
  }

  /**
   * Why no parts were found: requirement by requirement how many candidates do not meet it and the
   * nearest miss, then the parts that were not looked at.
   *
   * @return in words; blank if parts were found
   */
  public String whyNone() {
    return blocked == null ? "" : blocked + notLookedAt();
  }

  private String notLookedAt() {
    StringBuilder text = new StringBuilder();
    passedOver().forEach(each -> text.append("; ").append(each));
    return text.toString();
  }

  /**
   * One line a circuit, or why there is none.
   *
   * @return for example {@code traction: 35 mm² T, F-200, K-250; heater: …}
   */
  @Override
  public String toString() {
    if (blocked != null) {
      return whyNone();
    }
    String found = String.join("; ", circuits.stream().map(Object::toString).toList());
    String left = open.isEmpty() ? "" : " (" + open.size() + " open for want of data)";
    return found + left + notLookedAt();
  }
}
