package org.wattwright.installation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;

/**
 * The signed items of a conversion; what nobody has signed is NOT_CHECKED. Immutable and
 * thread-safe.
 */
public final class Attestations implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Attestations NONE = new Attestations(List.of());

  private final List<Attestation> signed;

  private Attestations(List<Attestation> signed) {
    this.signed = List.copyOf(signed);
  }

  /**
   * Nothing signed yet.
   *
   * @return no attestation
   */
  public static Attestations none() {
    return NONE;
  }

  /**
   * With one more.
   *
   * @param attestation of an item not yet signed
   * @return new attestations
   * @throws InvalidInputException if the item is signed already
   */
  public Attestations and(Attestation attestation) {
    if (of(attestation.item()).isPresent()) {
      throw InvalidInputException.of(
          "Attestations.item", "an item not yet signed", attestation.item().toString());
    }
    List<Attestation> all = new ArrayList<>(signed);
    all.add(attestation);
    return new Attestations(all);
  }

  /**
   * The attestation of an item.
   *
   * @param item what was looked at
   * @return empty if nobody has signed it
   */
  public Optional<Attestation> of(AttestedItem item) {
    return signed.stream().filter(a -> a.item() == item).findFirst();
  }

  /**
   * One check for each {@link AttestedItem}, by its code.
   *
   * @return NOT_CHECKED where nobody has signed
   */
  public List<Check> checks() {
    return List.of(AttestedItem.values()).stream().map(this::check).toList();
  }

  private Check check(AttestedItem item) {
    CheckBuilder check =
        Check.named(item.code(), item.toString())
            .source(Source.commonPractice("looked at and signed by a person"))
            .safety();
    return of(item)
        .map(a -> check.basis(Basis.MEASURED).note("signed by " + a.signature()).holds(a.inOrder()))
        .orElseGet(() -> check.notChecked("signature for " + item));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Attestations that && signed.equals(that.signed);
  }

  @Override
  public int hashCode() {
    return signed.hashCode();
  }

  /**
   * How many are signed.
   *
   * @return for example {@code 2 of 7 items signed}
   */
  @Override
  public String toString() {
    return signed.size() + " of " + AttestedItem.values().length + " items signed";
  }
}
