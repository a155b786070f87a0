/**
 * Plumbing that no user of the library sees: guards of inputs, interpolation tables, reader of the
 * library's own tables. Not exported.
 *
 * <pre>
 *   Quantity ──Require──▶ double in SI ──▶ solver
 *   points   ──▶ LinearTable, BilinearTable ──▶ at(x), held beyond the ends
 *   points   ──▶ LogLogTable ──▶ covers(x), at(x), never beyond the ends
 *   CSV file of the library ──▶ ResourceTable ──▶ rows, numbers; a mistake names file, line, column
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
