/**
 * Verdicts and working: {@link org.wattwright.check.Check}, {@link org.wattwright.check.Worksheet},
 * what an input rests on, {@link org.wattwright.check.Basis}, and what somebody must still answer,
 * {@link org.wattwright.check.OpenItem}.
 *
 * <pre>
 *   Figure actual ─┐
 *   Figure limit  ─┼─▶ Check ─▶ Outcome: PASS, CAUTION, NOT_CHECKED, FAIL
 *   Source, Basis ─┘     │
 *   Given, Estimate      ├─▶ Checks:    order, summary, text, Markdown
 *                        └─▶ OpenItems: by who must answer
 *
 *   kernel ──Recorder──▶ Step, Step, … ──▶ Worksheet ──▶ text, Markdown
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Check check = Check.named("mass.pack", "pack mass against what the springs carry")
 *     .source(Source.requirement("customer"))
 *     .atMost(Figure.of(kilograms(280), KILOGRAM), Figure.of(kilograms(290), KILOGRAM));
 * System.out.println(check);   // CAUTION mass.pack: 280 kg ≤ 290 kg, margin 10 kg
 * }</pre>
 *
 * <p>Imports {@code units}. Guarantees: missing data is never a pass; on a safety check an estimate
 * is at most a caution. No parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.check;

import org.jspecify.annotations.NullMarked;
