/**
 * One vehicle with everything in it, reviewed as a whole.
 *
 * <pre>
 *   Pack, Device …, OperatingConditions ─┬▶ Conversion ─▶ review(): every check, worst first
 *   MassLedger, LoadCase …, AxleLimits, Chassis ┤       (windows: WindowReview, masses: VehicleReview,
 *   Circuits: CircuitDesign, IsolationBudget … ─┤        circuits: Circuits, charging: ChargeReview)
 *   ChargePlan, LowVoltage ───────────────┘
 *                                                     ├▶ openItems(): who must still answer what
 *                                                     ├▶ compare(other): Comparison of two variants
 *                                                     ├▶ ExecutivePage: the answer in ten lines
 *                                                     └▶ toSheet(): CalculationSheet ─▶ MarkdownSheet
 *                                                              └▶ RevisionComparison of two sheets
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Conversion van = Conversion.of("bakery van").pack(pack).device(inverter).conditions(conditions).build();
 * System.out.println(Checks.toText(van.review()));
 * }</pre>
 *
 * <p>Imports every other package. No parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.conversion;

import org.jspecify.annotations.NullMarked;
