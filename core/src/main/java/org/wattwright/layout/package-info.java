/**
 * How many modules of which type, in series and in parallel, and where they go.
 *
 * <pre>
 *   BatteryModule × series × parallel (× Enclosure) ─┐
 *   Device, OperatingConditions ─────────────────────┤
 *   least energy, least power, most mass … ──────────┴─▶ PackSearch ─▶ Candidate, ranked
 *                                                                   ├▶ Pareto front
 *                                                                   └▶ Rejection, Relaxation
 *
 *   MassLedger, Bay, packs of one type or SeriesGroups, AxleLimits ──▶ BayAllocator ─▶ Allocation, BayRelaxation
 *   PackSearch + BayAllocator ──▶ JointSearch
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * PackSearch.Result found = PackSearch.over(List.of(flat, tall))
 *     .device(inverter).device(charger).under(conditions)
 *     .usableEnergyAtLeast(kilowattHours(28))
 *     .peakPowerAtLeast(kilowatts(80), seconds(10), percentCharge(20), celsius(0))
 *     .massAtMost(kilograms(290))
 *     .run();
 * System.out.println(found.best().map(Candidate::toString).orElseGet(found::whyNone));
 * }</pre>
 *
 * <p>Imports {@code units}, {@code check}, {@code battery}, {@code voltage}, {@code vehicle}.
 * Guarantees: every candidate of the stated space is examined, or the result says which are not; no
 * candidate returned fails a check; the order of inputs never matters. No parameter or result is
 * null unless marked.
 */
@NullMarked
package org.wattwright.layout;

import org.jspecify.annotations.NullMarked;
