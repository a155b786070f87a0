package org.wattwright.layout;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassLedger;

/**
 * What has been stated of an allocation so far. Copied before every change, never changed after.
 */
final class AllocationDraft {
  final MassLedger ledger;

  /** By name. */
  final List<Bay> bays;

  List<PackOption> options = List.of();
  List<LoadCase> loadCases = List.of();
  @Nullable AxleLimits limits;
  @Nullable ShareTarget target;
  double lowestFrontShare = Double.NaN;
  double highestFrontShare = Double.NaN;
  @Nullable Quantity<Mass> leftRight;
  boolean equalStrings;
  boolean contiguous;
  boolean provisional;
  int alternatives;
  BooleanSupplier cancel = () -> false;
  long budget = Long.MAX_VALUE;
  LongConsumer progress = covered -> {};

  /** The front share wanted in a load case, and how much further from it still counts as good. */
  record ShareTarget(double share, double band, LoadCase loadCase) {}

  AllocationDraft(MassLedger ledger, List<Bay> bays) {
    this.ledger = ledger;
    this.bays = bays;
  }

  AllocationDraft(AllocationDraft other) {
    ledger = other.ledger;
    bays = other.bays;
    options = other.options;
    loadCases = other.loadCases;
    limits = other.limits;
    target = other.target;
    lowestFrontShare = other.lowestFrontShare;
    highestFrontShare = other.highestFrontShare;
    leftRight = other.leftRight;
    equalStrings = other.equalStrings;
    contiguous = other.contiguous;
    provisional = other.provisional;
    alternatives = other.alternatives;
    cancel = other.cancel;
    budget = other.budget;
    progress = other.progress;
  }

  List<LoadCase> loadCasesOrKerb() {
    return loadCases.isEmpty() ? List.of(LoadCase.KERB) : loadCases;
  }
}
