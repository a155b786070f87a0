/**
 * Voltage windows: what a pack offers between full and empty, and what its devices stand.
 *
 * <pre>
 *   Pack + OperatingConditions ─▶ VoltageEnvelope ─┬─▶ WindowReview ─▶ checks, usable band, power
 *   Device with VoltageWindow ─────────────────────┤
 *                                                  └─▶ WindowMatcher ─▶ WindowMatch: Fits, Conflict
 *   BackEmf, RegenerationCutOff ─▶ Check against a device's absolute maximum
 *   VoltageClass
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * WindowMatcher matcher = WindowMatcher.of(module, 1).device(inverter).device(charger).under(conditions);
 * System.out.println(matcher.match());      // 30, 31, 32 modules in series fit
 * matcher.review(30).checks();
 * }</pre>
 *
 * <p>Voltages are those at the pack's terminals: what a cable loses on the way to a device is not
 * known here. One list of rules says which voltage of the pack stands against which end of a
 * window; checks, matcher and usable band share it. Estimated resistances stand at the high end of
 * their band wherever current flows.
 *
 * <p>Imports {@code units}, {@code check}, {@code battery}. No parameter or result is null unless
 * marked.
 */
@NullMarked
package org.wattwright.voltage;

import org.jspecify.annotations.NullMarked;
