/** How fast quantities are made, read and wrapped. */
package org.wattwright.benchmarks.units;
