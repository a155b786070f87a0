package org.wattwright.conductor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Worksheet;

/** Answer of a {@link ConductorSizer}: a cable, or what stands in the way of every one. */
public sealed interface SizingResult permits SizingResult.Sized, SizingResult.NoSize {
  /**
   * One value from either case.
   *
   * @param <T> type of the value
   * @param ifSized of the cable found
   * @param ifNot where none serves
   * @return the value
   */
  <T> T fold(Function<Sized, T> ifSized, Function<NoSize, T> ifNot);

  /**
   * Every candidate with each criterion's margin, smallest first.
   *
   * @return the table
   */
  SizingTable table();

  /**
   * The cable found.
   *
   * @return the answer
   * @throws IllegalStateException if none serves; the message says why
   */
  default Sized orElseThrow() {
    return fold(
        sized -> sized,
        none -> {
          throw new IllegalStateException(none.toString());
        });
  }

  /**
   * Whether a cable was found.
   *
   * @return true if one serves
   */
  default boolean isSized() {
    return this instanceof Sized;
  }

  /** The smallest candidate that serves. Immutable. */
  final class Sized implements SizingResult {
    private final SizingSearch search;
    private final SizingLine chosen;
    private final SizingCriterion governing;

    Sized(SizingSearch search, SizingLine chosen, SizingCriterion governing) {
      this.search = search;
      this.chosen = chosen;
      this.governing = governing;
    }

    /**
     * The cable.
     *
     * @return as the catalogue has it
     */
    public Cable cable() {
      return chosen.cable();
    }

    /**
     * Cables in parallel in each polarity.
     *
     * @return ≥ 1
     */
    public int parallelRuns() {
      return chosen.parallelRuns();
    }

    /**
     * The criterion that rules out the next smaller candidate, by most; for the smallest candidate
     * the one of which most is used.
     *
     * @return the criterion
     */
    public SizingCriterion governing() {
      return governing;
    }

    /**
     * The check of each criterion; none fails.
     *
     * @return in the order of {@link SizingCriterion}
     */
    public List<Check> checks() {
      return chosen.checks();
    }

    /**
     * Whether some criteria could not be checked.
     *
     * @return true if data is missing
     */
    public boolean isProvisional() {
      return chosen.isProvisional();
    }

    /**
     * The conductors of the circuit, for resistance, mass and inductance.
     *
     * @return the run
     */
    public ConductorRun conductors() {
      return search.runOf(chosen);
    }

    /**
     * The working.
     *
     * @return the steps of the kernel that chose
     */
    public Worksheet worksheet() {
      return search.worksheet(chosen);
    }

    @Override
    public SizingTable table() {
      return new SizingTable(search.lines());
    }

    @Override
    public <T> T fold(Function<Sized, T> ifSized, Function<NoSize, T> ifNot) {
      return ifSized.apply(this);
    }

    /**
     * Cable and governing criterion.
     *
     * @return for example {@code 35 mm² T-35, governed by voltage drop}
     */
    @Override
    public String toString() {
      String provisional = isProvisional() ? ", provisional" : "";
      return chosen.label() + ", governed by " + governing + provisional;
    }
  }

  /** No candidate serves. Immutable. */
  final class NoSize implements SizingResult {
    private final SizingSearch search;
    private final SizingCriterion blocking;
    private final Map<SizingCriterion, Integer> ruledOut;
    private final @Nullable SizingLine nearest;

    NoSize(
        SizingSearch search,
        SizingCriterion blocking,
        Map<SizingCriterion, Integer> ruledOut,
        @Nullable SizingLine nearest) {
      this.search = search;
      this.blocking = blocking;
      this.ruledOut = new EnumMap<>(ruledOut);
      this.nearest = nearest;
    }

    /**
     * The criterion that stands in the way: the only one that the nearest miss breaks or lacks data
     * for; if every candidate breaks several, the one that rules out most.
     *
     * @return the criterion
     */
    public SizingCriterion blocking() {
      return blocking;
    }

    /**
     * How many candidates each criterion rules out; one candidate may count several times.
     *
     * @return an immutable copy
     */
    public Map<SizingCriterion, Integer> ruledOut() {
      return Map.copyOf(ruledOut);
    }

    /**
     * The candidate that breaks one criterion only, and breaks it least.
     *
     * @return empty if every candidate breaks several
     */
    public Optional<SizingLine> nearestMiss() {
      return Optional.ofNullable(nearest);
    }

    /**
     * The smallest relaxation that would admit a candidate: the nearest miss's broken check, whose
     * actual value is what the limit would have to be.
     *
     * @return empty if every candidate breaks several
     */
    public Optional<Check> smallestRelaxation() {
      return nearestMiss().flatMap(line -> line.check(blocking));
    }

    @Override
    public SizingTable table() {
      return new SizingTable(search.lines());
    }

    @Override
    public <T> T fold(Function<Sized, T> ifSized, Function<NoSize, T> ifNot) {
      return ifNot.apply(this);
    }

    /**
     * What stands in the way.
     *
     * @return for example {@code no size: voltage drop blocks; nearest 95 mm² T-95: FAIL …}
     */
    @Override
    public String toString() {
      String counts = " " + ruledOut;
      String miss =
          nearest == null
              ? ""
              : "; nearest " + nearest.label() + ": " + smallestRelaxation().orElseThrow();
      return "no size: " + blocking + " blocks" + miss + "; ruled out by" + counts;
    }
  }
}
