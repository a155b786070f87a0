/**
 * What a conversion does to the vehicle's masses: axle and wheel loads, centre of gravity, tyres,
 * brakes, springs and steering.
 *
 * <pre>
 *   scales ─▶ WeighedVehicle ─┐
 *   MassItem removed, added  ─┼─▶ MassLedger ─▶ LoadState ─▶ AxleLimits, RuleSet ─▶ Check
 *   Seating, goods ─▶ LoadCase┘                    │
 *   AxleLift ─▶ height ─▶ WeighedVehicle           ├─▶ Stance ─▶ BrakeBalance, ParkingBrake,
 *                                                  │             StabilityFactor, Understeer
 *   Tyre ─▶ AxleLimits, InflationLaw               └─▶ AxleSpring
 *   Descent + BrakeHeatSink ─▶ drum temperature
 * </pre>
 *
 * <p>Places: distance behind the front axle (positive to the rear), left of the centre line, above
 * the ground. In the axes of ISO 8855, x forward, y left, z up, with the origin on the ground below
 * the middle of the front axle, that is x = −d, y, z. Loads of axles and wheels are masses, as
 * scales show them; forces on a grade or under braking are forces.
 *
 * <pre>{@code
 * MassLedger ledger = MassLedger.of(van).removing(engine, tank).adding(driveUnit, frontBox, rearBox);
 * LoadState laden = ledger.after(LoadCase.allSeats(seating));
 * limits.check(laden).forEach(System.out::println);
 * System.out.println(laden.worksheet().toText());
 * }</pre>
 *
 * <p>Imports {@code units}, {@code check} and {@code internal}. Guarantees: an overload is a FAIL
 * and never an error; what is not known is NOT_CHECKED and named; an estimate is looked at from
 * both ends and gives at most a caution. A wrong mass or brake figure hurts people: results support
 * and never replace local codes, type-approval rules and licensed practice. No parameter or result
 * is null unless marked.
 */
@NullMarked
package org.wattwright.vehicle;

import org.jspecify.annotations.NullMarked;
