/**
 * The calculation sheet as a document: sections of paragraphs, tables, workings, checks and
 * figures, written as Markdown and as one HTML page that prints on A4.
 *
 * <pre>
 *   Paragraph, BulletList, Cautions, DataTable, Working, CheckList, Drawing ─▶ Section ─▶ CalculationSheet
 *                                                                                  │
 *                                     MarkdownSheet (console) ◀── Block.accept ────┴──▶ HtmlSheet (index.html)
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Section section =
 *     Section.of("Windows").with(new Paragraph("All devices fit."), new CheckList(checks));
 * String page = HtmlSheet.render(CalculationSheet.of("Van", "Pack", List.of(section)));
 * }</pre>
 *
 * <p>Imports {@code check} of the library. Guarantees: every text is escaped, so that nothing from
 * input becomes markup; only a drawing's SVG goes in as it is. No scripts, nothing from the
 * network.
 */
@NullMarked
package org.wattwright.examples.sheet;

import org.jspecify.annotations.NullMarked;
