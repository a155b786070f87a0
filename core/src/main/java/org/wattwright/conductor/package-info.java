/**
 * Cables and busbars: resistance, heating, voltage drop, short circuit, and the smallest size that
 * serves.
 *
 * <pre>
 *   ConductorMaterial ─▶ ConductorSize ─┐
 *   InsulationMaterial ─────────────────┼─▶ Cable ─▶ SteadyHeating, TransientHeating
 *   Installation ───────────────────────┘    │
 *                                            ▼
 *   Joint ─▶ ConductorRun ◀── ConductorSizer ─▶ SizingResult ─▶ Check, Worksheet
 *   FaultDuty ─▶ ShortCircuit ──────────────┘
 * </pre>
 *
 * <p>{@code FusingCurrent} and {@code LoopInductance} stand by themselves. Example:
 *
 * <pre>{@code
 * SizingResult result = ConductorSizer.over(catalogue)
 *     .installation(Installation.freeAir(celsius(40)))
 *     .continuousCurrent(amperes(150))
 *     .length(metres(3.2))
 *     .voltageDropAtMost(volts(1))
 *     .fault(FaultDuty.of(amperes(6000), milliseconds(20)))
 *     .run();
 * System.out.println(result.table().toText());
 * }</pre>
 *
 * <p>Imports: {@code units}, {@code internal}, {@code check}, {@code profile}. Direct current,
 * still air at 1 atm unless stated. Guarantees: a size that is returned passes every criterion it
 * lists; missing data gives NOT_CHECKED and names the field; outside a method's range nothing is
 * claimed. No parameter or result is null unless marked. All types but the builders are immutable
 * and thread-safe.
 *
 * <p>The figures support, and never replace, local codes and licensed practice: high voltage and
 * hot conductors kill and burn.
 */
@NullMarked
package org.wattwright.conductor;

import org.jspecify.annotations.NullMarked;
