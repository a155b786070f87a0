/**
 * Quantities with units: the carrier {@link org.wattwright.units.Measure}, the factories {@link
 * org.wattwright.units.Measures}, and the units {@link org.wattwright.units.WorkshopUnits}.
 *
 * <pre>
 *   double ──Measures.volts(3.2)──▶ Quantity&lt;ElectricPotential&gt; ──VOLT.valueOf(…)──▶ double
 *   text   ──Kind.VOLTAGE.parse("3.2 V")──▶        │
 *   any other JSR 385 quantity ──Measure.from──────┘
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Quantity<ElectricPotential> cell = millivolts(3700);
 * cell.equals(volts(3.7));            // true: same kind, same SI value
 * VOLT.valueOf(cell);                 // 3.7
 * AREA.parse("35 mm2");               // 35 mm²
 * }</pre>
 *
 * <p>Imports nothing of the library. Guarantees: a quantity is finite, of one {@link
 * org.wattwright.units.Kind}, immutable, and prints what it parses. No parameter or result is null
 * unless marked.
 */
@NullMarked
package org.wattwright.units;

import org.jspecify.annotations.NullMarked;
