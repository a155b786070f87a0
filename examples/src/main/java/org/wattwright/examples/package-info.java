/**
 * The main program, which reads a job folder and writes the calculation sheet, and short examples.
 *
 * <p>Imports: the exported packages of {@code org.wattwright.core}, a CSV reader and a chart
 * library. Nothing here is imported by the library.
 */
@NullMarked
package org.wattwright.examples;

import org.jspecify.annotations.NullMarked;
