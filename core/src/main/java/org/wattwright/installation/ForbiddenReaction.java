package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import java.util.Set;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * Reactions that must never happen in a case. Immutable and thread-safe.
 *
 * @param code end of the check's code, lower case, such as {@code plug-in-while-ready}
 * @param what in words
 * @param when the case
 * @param reactions that are forbidden in it, at least one
 * @param source who forbids it
 */
public record ForbiddenReaction(
    String code, String what, InterlockCase when, Set<InterlockReaction> reactions, Source source)
    implements Serializable {
  /**
   * Copies the set.
   *
   * @param code end of the check's code
   * @param what in words
   * @param when the case
   * @param reactions that are forbidden in it
   * @param source who forbids it
   * @throws org.wattwright.units.InvalidInputException if a text is blank or no reaction is named
   */
  public ForbiddenReaction {
    code = Require.text("ForbiddenReaction.code", code);
    what = Require.text("ForbiddenReaction.what", what);
    Objects.requireNonNull(when, "when");
    Objects.requireNonNull(source, "source");
    Require.positiveCount("ForbiddenReaction.reactions", reactions.size());
    reactions = Set.copyOf(reactions);
  }
}
