package org.wattwright.vehicle;

import java.io.Serializable;

/** An item with what becomes of it: +1 added or carried, −1 removed. */
record SignedItem(MassItem item, int sign) implements Serializable {}
