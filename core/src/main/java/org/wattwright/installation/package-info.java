/**
 * What holds the conversion, what drives it and what a person must sign: retention of boxes and
 * drive unit, brake vacuum, battery management, controls, gauges.
 *
 * <pre>
 *   MetricThread, PropertyClass ─▶ Bolt ─┐
 *   SpreaderPlate ─▶ Panel ──────────────┴─▶ Fixing ─▶ FixingGroup ◀─ Footprint, GroupLoad
 *                                                         └─▶ GroupReactions
 *   AccelerationRules (chosen by the user) ─┐
 *   mass, centre, MountingFace, FixingGroup ┴─▶ Retention ─▶ Check, FixingUse, Worksheet
 *   MountingHole, Bolt ─▶ HoleSolver ─▶ HoleChoice
 *   TorqueCoefficient, ThreadFriction ─▶ preload, torque ─▶ PreloadedJoint
 *   FilletWeld;  DriveUnitMounts;  RoundShaft, UniversalJoint
 *
 *   BrakeServo, VacuumPump, VacuumLevel ─▶ VacuumSystem ─▶ stops, pump-down, LowVoltageLoad, checks
 *   MonitoredModule, MonitorJoin, MonitorUnitType ─▶ MonitoringPlan ─▶ units, taps, checks
 *   CellLadder, TemperatureLadder ─▶ SettingsLadder ─▶ SettingsSheet, checks
 *   ThrottleTrack ─▶ ThrottleSignal;  TruthTable ─▶ Interlocks;  Shunt, Meter, SenderMapping
 *   AttestedItem, Attestation ─▶ Attestations ─▶ checks
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Retention box = Retention.of("rear box", Given.measured(kilograms(92), "scales"))
 *     .on(MountingFace.FLOOR, FixingGroup.of(footprint, fixings))
 *     .centre(millimetres(300), millimetres(200), millimetres(140))
 *     .under(AccelerationRules.published("ncop14"))
 *     .build();
 * box.checks();
 * }</pre>
 *
 * <p>Imports every package but {@code conversion}. No parameter or result is null unless marked.
 * All types but the builders are immutable and thread-safe.
 *
 * <p>The figures support, and never replace, local codes, approval tests and licensed practice.
 */
@NullMarked
package org.wattwright.installation;

import org.jspecify.annotations.NullMarked;
