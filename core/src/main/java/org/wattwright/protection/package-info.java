/**
 * Faults, fuses, contactors, pre-charge, discharge and isolation.
 *
 * <pre>
 *   Pack ─▶ FaultSource ─┐           TimeCurrentCurve ─┐
 *   FaultPath ───────────┼─▶ FaultRange                ├─▶ Fuse ─▶ Clearing, Check, Selectivity
 *   CapacitorDischarge ──┘   └─▶ FuseDuty ─────────────┘
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * FaultRange faults = FaultSource.of(pack).range(near, far);
 * fuse.checks(FuseDuty.of(faults).highestVoltage(pack.maximumVoltage())
 *     .continuousCurrent(amperes(120)).air(celsius(60)).build());
 * }</pre>
 *
 * <p>Imports: {@code units}, {@code internal}, {@code check}, {@code profile}, {@code battery},
 * {@code conductor}, {@code voltage}. Missing data gives NOT_CHECKED and names the field. No
 * parameter or result is null unless marked. All types but the builders are immutable and
 * thread-safe.
 *
 * <pre>
 * Circuit (what one asks)   CircuitSupply (what feeds its faults)   Cable, Fuse, Contactor, resistor
 *          └──────────────┬───────────────┴──────────────────────────────────┘
 *                 CircuitDesigner ── CircuitDesign ── DesignedCircuit
 *                                                      ├─ checks, governing, runnerUp, worksheet
 *                                                      ├─ CurrentCover (who deals with each current)
 *                                                      └─ curves, marks, elements (for drawings)
 * </pre>
 *
 * <pre>{@code
 * CircuitDesigner.fedBy(battery).circuits(circuits)
 *     .cables(cables).fuses(fuses).contactors(contactors).prechargeResistors(resistors).run()
 * }</pre>
 *
 * <p>The figures support, and never replace, local codes and licensed practice: a pack cannot be
 * switched off inside, and an arc of direct current does not go out by itself.
 */
@NullMarked
package org.wattwright.protection;

import org.jspecify.annotations.NullMarked;
