/**
 * Cells, modules, strings and packs: voltage, resistance, current, power, energy and heat.
 *
 * <pre>
 *   OpenCircuitCurve ─┐
 *   ResistanceTable  ─┼─▶ Cell ─▶ BatteryModule ─▶ SeriesString ─▶ Pack
 *   limits, mass     ─┘                                             │ PackState
 *                                   PowerLimit, PowerResult, EnergyResult, Heat, StringSharing
 *
 *   two strings      ─▶ Equalisation    a pulse          ─▶ PulseResponse
 *   unlike modules   ─▶ SeriesBalance   silent data sheet ─▶ CellEstimates, ArrheniusLaw, PeukertLaw
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Pack pack = Pack.of(module, 5, 2);
 * PackState state = PackState.of(percentCharge(20), celsius(0));
 * System.out.println(pack.maximumDischargePower(state, seconds(10)));
 * }</pre>
 *
 * <p>Imports {@code units}, {@code check}. Signs: discharge current is positive, state of charge 0
 * … 1. Guarantees: a power above the maximum is an answer that says so; no result is NaN. No
 * parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.battery;

import org.jspecify.annotations.NullMarked;
