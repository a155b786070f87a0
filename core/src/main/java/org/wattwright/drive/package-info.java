/**
 * How a converted vehicle goes: wheel force, top speed, grades, times, energy on a drive cycle,
 * range, and what a limit on current or power costs.
 *
 * <pre>
 *   MotorEnvelope + MotorLoss ─┐
 *   Driveline of Gears ────────┼─▶ ElectricVehicle ─┬─▶ Performance ─▶ force, speed, grade, times, checks
 *   RoadLoad ──────────────────┤                    ├─▶ CycleRun on a DriveCycle ─▶ CycleResult, RangeResult
 *   Pack, Traction, Regeneration                    ├─▶ SteadyRange, PowerLimitStudy
 *                                                   └─▶ RangeSensitivity, RangeSpread
 * </pre>
 *
 * <pre>{@code
 * ElectricVehicle van = ElectricVehicle.of(motor, driveline, roadLoad, pack).auxiliaries(watts(300)).build();
 * Performance.of(van).topSpeed();                                       // 92.1 km/h, limited by motor speed
 * CycleRun.of(van).range(StandardCycle.NEDC.cycle(), percentCharge(10)).distance();
 * }</pre>
 *
 * <p>Signs: force, power and current are positive while driving, negative while braking; grade is
 * the tangent, positive uphill; wind is positive from ahead. The pack is at one temperature and all
 * its strings at one state of charge throughout.
 *
 * <p>Imports {@code units}, {@code check}, {@code internal}, {@code profile}, {@code battery},
 * {@code vehicle}, {@code voltage}. Guarantees: a cycle that cannot be followed is an answer; every
 * run is bounded and says what ended it. No parameter or result is null unless marked.
 */
@NullMarked
package org.wattwright.drive;

import org.jspecify.annotations.NullMarked;
