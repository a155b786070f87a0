/** Speed of {@code org.wattwright.layout}: the search for packs and the allocation to bays. */
package org.wattwright.benchmarks.layout;
