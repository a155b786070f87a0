/**
 * Benchmarks: one class per question, with the plain-doubles kernel or the peer beside it.
 *
 * <p>Imports: anything of {@code org.wattwright.core}, and JMH. Never released.
 */
package org.wattwright.benchmarks;
