/** Speed of {@code org.wattwright.check}: what recording costs. */
package org.wattwright.benchmarks.check;
