package org.wattwright.layout;

import org.wattwright.check.Recorder;

/**
 * A property of one variant against series and parallel, on plain doubles: what the search runs
 * with the recorder off, and the worksheet with it on.
 */
interface Term {
  /** Value in SI; NaN if an input is missing. */
  double valueAt(int series, int parallel, Recorder recorder);
}
