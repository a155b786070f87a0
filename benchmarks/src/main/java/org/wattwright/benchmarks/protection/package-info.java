/** Speed of {@code org.wattwright.protection}: the design of circuits over catalogues. */
package org.wattwright.benchmarks.protection;
