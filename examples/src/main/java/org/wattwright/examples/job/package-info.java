/**
 * Reads a job folder: plain CSV files with the units in the headers, such as {@code capacity [Ah]}.
 *
 * <pre>
 *   folder ─▶ JobFolder ─▶ CsvTable ─▶ CsvRow ─▶ Field ─▶ JobInput
 *                              │                   │
 *                              └── JobFileException ┘  file, line, column, what was expected
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * List<Quantity<ElectricCharge>> capacities =
 *     CsvTable.read(folder.resolve("cells.csv"))
 *         .map(row -> row.field("capacity").positive(Kind.CHARGE));
 * }</pre>
 *
 * <p>Imports {@code units} and {@code check} of the library, and a CSV parser. Guarantees: bad
 * input of any sort ends in one {@link org.wattwright.examples.job.JobFileException} whose message
 * is one line; memory is bounded. No parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.examples.job;

import org.jspecify.annotations.NullMarked;
