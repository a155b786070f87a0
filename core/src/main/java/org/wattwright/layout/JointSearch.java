package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.wattwright.units.InvalidInputException;

/**
 * Searches modules × series × parallel × bays in one call: every pack that meets the requirements
 * of a {@link PackSearch} is shared out over the bays by a {@link BayAllocator}.
 *
 * <pre>{@code
 * JointSearch.Result found = JointSearch.of(search, allocator).run();
 * found.paretoFront(Criterion.MASS, Criterion.USABLE_ENERGY).forEach(System.out::println);
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class JointSearch {
  private final PackSearch search;
  private final BayAllocator allocator;

  private JointSearch(PackSearch search, BayAllocator allocator) {
    this.search = search;
    this.allocator = allocator;
  }

  /**
   * Joins the two.
   *
   * @param search which packs serve; without enclosures, since bays bring their own
   * @param allocator bays and requirements; packs of its own are not used
   * @return the joint search
   * @throws InvalidInputException if the search has enclosures
   */
  public static JointSearch of(PackSearch search, BayAllocator allocator) {
    if (!search.draft().enclosures.isEmpty()) {
      throw InvalidInputException.of(
          "JointSearch.search", "without enclosures: bays bring their own", "with enclosures");
    }
    return new JointSearch(search, Objects.requireNonNull(allocator, "allocator"));
  }

  /**
   * A pack with its best allocation.
   *
   * @param pack what the search found
   * @param allocation the best one of this pack
   */
  public record Pair(Candidate pack, Allocation allocation) {
    /**
     * Rejects null.
     *
     * @param pack what the search found
     * @param allocation the best one of this pack
     */
    public Pair {
      Objects.requireNonNull(pack, "pack");
      Objects.requireNonNull(allocation, "allocation");
    }

    /**
     * The allocation and the pack's figures.
     *
     * @return for example {@code 10s1p flat: bonnet 4, boot 6; …}
     */
    @Override
    public String toString() {
      return allocation + "; " + pack;
    }
  }

  /**
   * Runs both.
   *
   * @return every pack that can be allocated, with its best allocation
   */
  public Result run() {
    PackSearch.Result packs = search.run();
    List<Pair> pairs = new ArrayList<>();
    List<AllocationResult> without = new ArrayList<>();
    boolean proven = packs.coverage().status() == Coverage.Status.PROVEN;
    for (Candidate candidate : packs.ranked()) {
      PackOption option =
          new PackOption(candidate.module(), candidate.series(), candidate.parallel());
      AllocationResult found = allocator.withOnly(option).run();
      proven &= found.coverage().status() == Coverage.Status.PROVEN;
      found
          .best()
          .ifPresentOrElse(best -> pairs.add(new Pair(candidate, best)), () -> without.add(found));
    }
    return new Result(packs, List.copyOf(pairs), List.copyOf(without), proven);
  }

  /**
   * What a joint search has found.
   *
   * <p>Immutable and thread-safe.
   */
  public static final class Result {
    private final PackSearch.Result packs;
    private final List<Pair> pairs;
    private final List<AllocationResult> without;
    private final boolean proven;

    Result(
        PackSearch.Result packs, List<Pair> pairs, List<AllocationResult> without, boolean proven) {
      this.packs = packs;
      this.pairs = pairs;
      this.without = without;
      this.proven = proven;
    }

    /**
     * The search for packs alone.
     *
     * @return its result
     */
    public PackSearch.Result packs() {
      return packs;
    }

    /**
     * The pack that ranks first among those that can be allocated.
     *
     * @return empty if there is none
     */
    public Optional<Pair> best() {
      return pairs.stream().findFirst();
    }

    /**
     * Every pack that can be allocated, in the order of the search for packs.
     *
     * @return an immutable list
     */
    public List<Pair> ranked() {
      return pairs;
    }

    /**
     * The allocations that found nothing, one for each pack that does not fit the vehicle.
     *
     * @return each says what stands in its way
     */
    public List<AllocationResult> notAllocated() {
      return without;
    }

    /**
     * Whether every pack and every allocation of it was covered.
     *
     * @return PROVEN or STOPPED
     */
    public Coverage.Status status() {
      return proven ? Coverage.Status.PROVEN : Coverage.Status.STOPPED;
    }

    /**
     * Packs with their best allocation that no other one beats: none is at least as good by every
     * criterion and in front-share deviation, and better in one.
     *
     * @param criteria of the packs; may be none
     * @return in order of the first criterion, then the second, and so on, deviation last
     * @throws InvalidInputException if a criterion needs what the search does not state
     */
    public List<Pair> paretoFront(Criterion... criteria) {
      double[][] levels = new double[criteria.length + 1][];
      for (int i = 0; i < criteria.length; i++) {
        Criterion criterion = criteria[i];
        levels[i] = levels(pair -> criterion.cost(pair.pack().valueOf(criterion)));
      }
      levels[criteria.length] = levels(pair -> pair.allocation().frontShareDeviation().orElse(0.0));
      List<ParetoFront.Point> points = new ArrayList<>();
      for (int k = 0; k < pairs.size(); k++) {
        int pair = k;
        double[] costs = Arrays.stream(levels).mapToDouble(level -> level[pair]).toArray();
        points.add(new ParetoFront.Point(k, costs));
      }
      points.removeIf(point -> !point.isKnown());
      return ParetoFront.of(points, this::compareContent).stream()
          .map(point -> pairs.get((int) point.index()))
          .toList();
    }

    private double[] levels(ToDoubleFunction<Pair> cost) {
      return Levels.of(pairs.stream().mapToDouble(cost).toArray());
    }

    private int compareContent(long one, long other) {
      return PackOption.BY_CONTENT.compare(
          pairs.get((int) one).allocation().tables().option(),
          pairs.get((int) other).allocation().tables().option());
    }

    /**
     * How many packs, and how many of them can be allocated.
     *
     * @return for example {@code 12 of 31 packs can be allocated}
     */
    @Override
    public String toString() {
      return pairs.size() + " of " + packs.feasibleCount() + " packs can be allocated";
    }
  }
}
