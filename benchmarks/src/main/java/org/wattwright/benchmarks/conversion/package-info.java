/** Speed of {@code org.wattwright.conversion}: the review of the demonstration, and its sheet. */
package org.wattwright.benchmarks.conversion;
