/**
 * A quantity against time: {@link org.wattwright.profile.Profile}, its RMS, mean, peak,
 * percentiles, joule integral and charge, and the window or spell that matters.
 *
 * <pre>
 *   Sample, Sample, …          ─┐
 *   hold, rampTo, …            ─┼─▶ Profile ─▶ mean, rms, peak, percentile, integral, jouleIntegral
 *   numbers with their units   ─┘      │  ├──▶ Window: highest RMS or mean of a given length
 *                                      │  └──▶ Spell: longest time at or above a level
 *                                      └─▶ segments, numbers in a stated unit ─▶ solvers, plots
 * </pre>
 *
 * <p>Example:
 *
 * <pre>{@code
 * Profile<ElectricCurrent> hill =
 *     Profile.segments(Kind.CURRENT)
 *         .hold(amperes(400), seconds(10))
 *         .hold(amperes(120), seconds(50))
 *         .build();
 * hill.rms();                                  // 196.638… A
 * hill.highestRms(seconds(30)).value();        // 250.865… A
 * hill.integral(Kind.CHARGE);                  // 2.777… A·h
 * hill.longestAtOrAbove(amperes(200));         // 10 s from 0 s on
 * }</pre>
 *
 * <p>Imports {@code units}, {@code internal}. Guarantees: every figure is exact for the straight
 * lines and steps given, up to rounding; a profile has at least one stretch, finite values and
 * increasing time. No parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.profile;

import org.jspecify.annotations.NullMarked;
