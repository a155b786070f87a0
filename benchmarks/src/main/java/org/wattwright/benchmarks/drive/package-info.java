/** Drive cycles and the scatter of a range. */
package org.wattwright.benchmarks.drive;
