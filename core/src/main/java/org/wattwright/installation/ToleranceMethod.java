package org.wattwright.installation;

/** How independent tolerances add up. */
public enum ToleranceMethod {
  /** All at their ends at once: Σ|tᵢ|. Nothing gets past it. */
  WORST_CASE,
  /**
   * √Σtᵢ², for independent tolerances of like size; now and then one gets past it. Common practice;
   * not for what guards a cell.
   */
  ROOT_SUM_SQUARE;

  double combined(double first, double second) {
    return this == WORST_CASE ? first + second : Math.hypot(first, second);
  }
}
