/**
 * What holds the conversion, what drives it and what a person must sign: retention, brake vacuum,
 * battery management, controls, gauges.
 *
 * <pre>
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
 * VacuumSystem vacuum = VacuumSystem.of(BrakeServo.of(litres(0.5), litres(2.5)))
 *     .reservoir(litres(2.5))
 *     .pumpRestartsAt(VacuumLevel.absolute(kilopascals(30)));
 * vacuum.stops(VacuumReserve.of(8, kilopascals(41)));
 * }</pre>
 *
 * <p>Imports every package but {@code conversion}. No parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.installation;

import org.jspecify.annotations.NullMarked;
