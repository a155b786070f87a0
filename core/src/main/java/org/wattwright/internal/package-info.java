/**
 * Plumbing that no user of the library sees: guards of inputs, interpolation tables. Not exported.
 *
 * <pre>
 *   Quantity ──Require──▶ double in SI ──▶ solver
 *   points   ──▶ LinearTable, BilinearTable ──▶ at(x)
 * </pre>
 *
 * <p>Imports {@code units} only. Example:
 *
 * <pre>{@code
 * double capacityC = Require.quantity("Cell.capacity", capacity, AMPERE_HOUR).positive();
 * }</pre>
 */
@NullMarked
package org.wattwright.internal;

import org.jspecify.annotations.NullMarked;
