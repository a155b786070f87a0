/**
 * Heat: how warm a pack gets under a current, what a coolant carries away, what a cabin needs.
 *
 * <pre>
 *   Pack ─┐
 *   PackCooling (air, or Coolant with a flow) ─┼─▶ PackTemperature ─▶ PackTemperatureCourse
 *   surroundings, heat capacity ──────────────┘      │ Profile of current     │ HeatBalance
 *                                                    └─▶ continuous current, steady temperature
 *
 *   Coolant ─▶ CoolantLoad: flow for a rise, rise for a flow
 *   Cabin   ─▶ steady load, WarmUp     HeaterSteps ─▶ HeaterDuty     HeaterRange     HeaterCore
 *   LumpedBody: the closed forms under all of them
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * PackTemperature model = PackTemperature.of(pack)
 *     .surroundings(celsius(30), wattsPerKelvin(12))
 *     .cooledBy(PackCooling.coolant(Coolant.ethyleneGlycol(0.5), litresPerMinute(6), celsius(25), wattsPerKelvin(400)))
 *     .build();
 * PackTemperatureCourse course = model.course(PackState.of(percentCharge(90), celsius(30)), drive);
 * course.peak();
 * }</pre>
 *
 * <p>A pack is one lump at one temperature: a cell at the far end of a plate is warmer than it. No
 * self-heating reaction is in these models; above a cell's limit their numbers say only that the
 * limit is broken. Heat that reaches the pack or the cabin is positive.
 *
 * <p>Imports {@code units}, {@code check}, {@code profile}, {@code battery}. No parameter or result
 * is null unless marked.
 */
@NullMarked
package org.wattwright.thermal;

import org.jspecify.annotations.NullMarked;
