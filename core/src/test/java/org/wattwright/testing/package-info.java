/**
 * What the tests of all packages share: published values with their sources, contracts that every
 * value type keeps, and seeded random input.
 *
 * <pre>{@code
 * class CableReferenceTest {
 *   @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");
 *
 *   static Stream<ReferenceRow> drops() {
 *     return ReferenceRows.read("/conductor/cables.csv").topic("9 voltage drop");
 *   }
 *
 *   @ParameterizedTest
 *   @MethodSource("drops")
 *   void dropAgreesWithThePublishedExample(ReferenceRow row) {
 *     VALIDATION.computed(row, drop(row.given("I", Kind.CURRENT), row.given("L", Kind.LENGTH)), Kind.VOLTAGE);
 *   }
 * }
 * }</pre>
 */
package org.wattwright.testing;
