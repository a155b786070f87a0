package org.wattwright.protection;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;

/**
 * A current to be marked on the plot of a circuit.
 *
 * @param label such as {@code lowest fault}
 * @param current in A
 */
public record CoverMark(String label, Quantity<ElectricCurrent> current) implements Serializable {}
