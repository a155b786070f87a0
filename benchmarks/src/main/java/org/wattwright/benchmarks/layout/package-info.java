/** How fast packs are searched. */
package org.wattwright.benchmarks.layout;
