/** Speed of {@code org.wattwright.charging}: what a whole charge costs. */
package org.wattwright.benchmarks.charging;
