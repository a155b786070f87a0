/** draft. */
@NullMarked
package org.wattwright.vehicle;

import org.jspecify.annotations.NullMarked;
