/**
 * The plots of the calculation sheet, one class each, drawn as SVG.
 *
 * <pre>
 *   labelled values ─▶ VoltageWindowPlot, LineSeriesPlot, ScatterFrontPlot ─▶ svg(id)
 *                                        │
 *                                 chart library, LabelPlacer, SvgChart
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * String svg =
 *     LineSeriesPlot.of("State of charge [%]", "Power [kW]")
 *         .series(Series.of("20 °C", points))
 *         .horizontalLimit("required", 48)
 *         .svg("power");
 * }</pre>
 *
 * <p>Numbers are plain; the axis label states their unit. Imports a chart library only. Guarantees:
 * the same input gives the same text on one machine; readable in grey and at the width of an A4
 * page; fonts by generic name. No parameter or result is null.
 */
@NullMarked
package org.wattwright.examples.plot;

import org.jspecify.annotations.NullMarked;
