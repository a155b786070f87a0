/**
 * The main program, which reads a job folder and writes the calculation sheet, and short examples.
 *
 * <pre>
 *   job folder ─▶ job.JobFolder ─▶ JobInput ─▶ JobSheet ─▶ sheet.CalculationSheet ─▶ console, index.html
 *                                                 ▲
 *                                          plot (drawings)
 * </pre>
 *
 * <p>Imports: the exported packages of {@code org.wattwright.core}, a CSV reader and a chart
 * library. Nothing here is imported by the library.
 */
@NullMarked
package org.wattwright.examples;

import org.jspecify.annotations.NullMarked;
