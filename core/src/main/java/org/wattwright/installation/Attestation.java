package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.internal.Require;

/**
 * A person's word on an item: who, when, and whether it was found in order. Immutable and
 * thread-safe.
 *
 * @param item what was looked at
 * @param signedBy name of the person
 * @param date as the person wrote it
 * @param inOrder whether it was found in order
 * @param remark may be empty
 */
public record Attestation(
    AttestedItem item, String signedBy, String date, boolean inOrder, String remark)
    implements Serializable {
  /**
   * Rejects blanks.
   *
   * @param item what was looked at
   * @param signedBy name of the person
   * @param date as the person wrote it
   * @param inOrder whether it was found in order
   * @param remark may be empty
   * @throws org.wattwright.units.InvalidInputException if name or date are blank
   */
  public Attestation {
    Objects.requireNonNull(item, "item");
    signedBy = Require.text("Attestation.signedBy", signedBy);
    date = Require.text("Attestation.date", date);
    remark = Objects.requireNonNull(remark, "remark").strip();
  }

  /**
   * Name, date and remark.
   *
   * @return for example {@code A. Mill, 3 May: two clips moved}
   */
  public String signature() {
    return signedBy + ", " + date + (remark.isEmpty() ? "" : ": " + remark);
  }
}
