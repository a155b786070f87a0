/**
 * Voltage windows: what a pack offers between full and empty, and what its devices stand.
 *
 * <pre>
 *   Pack + OperatingConditions ─▶ VoltageEnvelope ─┐
 *   Device with VoltageWindow ─────────────────────┴─▶ WindowMatcher ─▶ counts, checks, conflict
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * WindowMatcher matcher = WindowMatcher.of(module, 1).device(inverter).device(charger).under(conditions);
 * System.out.println(matcher.match());      // 30 … 32 modules in series
 * matcher.review(30).checks();
 * }</pre>
 *
 * <p>Imports {@code units}, {@code check}, {@code battery}. No parameter or result is null unless
 * marked.
 */
@NullMarked
package org.wattwright.voltage;

import org.jspecify.annotations.NullMarked;
