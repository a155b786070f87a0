/**
 * The calculation sheet as one HTML page that prints on A4, and the files it is written to.
 *
 * <pre>
 *   CalculationSheet (core) ── Block.accept ──▶ HtmlSheet ──▶ SheetFiles: index.html, calculation-sheet.md
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * String page = HtmlSheet.render(conversion.toSheet());
 * }</pre>
 *
 * <p>Imports {@code conversion} and {@code check} of the library. Guarantees: every text is
 * escaped, so that nothing from input becomes markup; only a drawing's SVG goes in as it is. No
 * scripts, nothing from the network.
 */
@NullMarked
package org.wattwright.examples.sheet;

import org.jspecify.annotations.NullMarked;
