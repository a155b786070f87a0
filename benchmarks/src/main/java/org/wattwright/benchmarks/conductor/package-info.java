/** Speed of the conductor package: steady and transient temperature. */
package org.wattwright.benchmarks.conductor;
