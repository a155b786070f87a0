package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/**
 * Whether the fuses of parallel strings outlast the fuse that should act alone: that of a circuit
 * at the common bus, or that of the string in which the fault lies and which the others feed.
 *
 * <p>Each string carries its share of the current, and the heat of the share squared. With two
 * strings both fuses see the same current in a fault inside one, so that both melt. If a healthy
 * string's fuse melts too, drive is lost but nothing burns: a CAUTION.
 */
final class StringSelectivity {
  /** How much more than its even share a string may carry; common practice. */
  static final double UNBALANCE = 0.1;

  private static final Source PRACTICE =
      Source.commonPractice("only the fuse nearest the fault melts");

  private final DesignTree tree;
  private final PartsOption[] chosen;

  StringSelectivity(DesignTree tree, PartsOption[] chosen) {
    this.tree = tree;
    this.chosen = chosen.clone();
  }

  /** The verdicts on the fuse of one string: the worst fault at the bus, and in another string. */
  List<Check> of(int string) {
    List<Check> atTheBus = new ArrayList<>();
    List<Check> inAString = new ArrayList<>();
    FuseCase own = fuse(string);
    int strings = strings();
    if (!isString(string) || own == null || strings < 2) {
      return List.of();
    }
    for (int other = 0; other < chosen.length; other++) {
      FuseCase acting = fuse(other);
      if (other == string || acting == null || acting.line() == null) {
        continue;
      }
      if (isString(other)) {
        inAString.add(check(own, other, acting, strings - 1));
      } else if (isAtTheBus(other)) {
        atTheBus.add(check(own, other, acting, strings));
      }
    }
    return Stream.of(atTheBus, inAString)
        .flatMap(all -> all.stream().max(Comparator.comparingInt(StringSelectivity::rank)).stream())
        .toList();
  }

  /** Not selective comes before not known, that before selective. */
  private static int rank(Check check) {
    return check.outcome() == Outcome.CAUTION ? 2 : check.outcome() == Outcome.PASS ? 0 : 1;
  }

  private int strings() {
    int count = 0;
    for (int i = 0; i < chosen.length; i++) {
      count += isString(i) ? 1 : 0;
    }
    return count;
  }

  private boolean isString(int circuit) {
    return circuit(circuit).role() == CircuitRole.STRING;
  }

  private boolean isAtTheBus(int circuit) {
    CircuitRole role = circuit(circuit).role();
    return tree.parents()[circuit] < 0
        && role.isFedByTractionBattery()
        && role != CircuitRole.INTER_BAY_LINK
        && role != CircuitRole.SENSE_WIRE;
  }

  private Circuit circuit(int index) {
    return tree.cases().get(index).circuit();
  }

  private @Nullable FuseCase fuse(int circuit) {
    return tree.search().fuseCase(circuit, chosen[circuit].fuse(), PartsOption.NONE);
  }

  private Check check(FuseCase healthy, int faulted, FuseCase acting, int sharing) {
    CircuitCase of = tree.cases().get(faulted);
    CircuitSupply supply = of.supplies().get(0);
    double share = Math.min(1, (1 + UNBALANCE) / sharing);
    Check i2t =
        Selectivity.of(healthy.fuse())
            .carrying(share)
            .over(acting.fuse())
            .check(of.clearedBy(acting, supply), Kind.VOLTAGE.ofSi(of.numbers().highestV()));
    CheckBuilder check =
        Check.named(
                "protection.string-selectivity",
                "fuse of "
                    + of.circuit().name()
                    + " clears before that of a healthy string, one of "
                    + sharing
                    + " that feed the fault")
            .source(PRACTICE)
            .basis(i2t.basis());
    if (i2t.outcome() == Outcome.NOT_CHECKED) {
      return check.note(i2t.note()).notChecked(i2t.missing().toArray(String[]::new));
    }
    return check
        .note(i2t.comparison() + "; " + i2t.note())
        .recommends(i2t.outcome() != Outcome.FAIL);
  }
}
