/**
 * Charging: what current a supply, a pilot and a cable allow, what a charger makes of it, how long
 * a charge takes and what holds it back; and the low-voltage side: loads, DC-DC converter, battery.
 *
 * <pre>
 *   Supply ───────┐
 *   ControlPilot ─┼─▶ ChargingPoint ─▶ AcCurrent: the least of all, and which one
 *   CableCoding ──┘        │
 *   Charger, Charger, … ───┴─┐
 *   DcStation ───────────────┼─▶ ChargeSimulation ─▶ ChargeResult: time, energies, curve, phases
 *   Pack, AmbientCooling ────┘
 *
 *   LowVoltageLoad, … ─▶ LowVoltageBudget ─┬─▶ DcDcConverter ─▶ checks
 *   LowVoltageBattery ─────────────────────┘
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * ChargingPoint garage = ChargingPoint.of(Supply.singlePhase(volts(230), amperes(32)))
 *     .pilot(ControlPilot.of(percent(26.7)));
 * ChargeResult night = ChargeSimulation.of(pack).charger(charger).at(garage)
 *     .from(percentCharge(20)).to(percentCharge(100)).temperature(celsius(15)).run();
 * night.time();
 * night.phases();
 * }</pre>
 *
 * <p>Charge currents are positive here, unlike in {@code battery}, where discharge is. Imports
 * {@code units}, {@code check}, {@code profile}, {@code battery}, {@code voltage}. No parameter or
 * result is null unless marked.
 */
@NullMarked
package org.wattwright.charging;

import org.jspecify.annotations.NullMarked;
