package org.wattwright.protection;

import java.io.Serializable;

/**
 * One symbol of the single-line diagram of a circuit, from the source to the load.
 *
 * @param type what to draw
 * @param label what to write beside it
 */
public record LineElement(Type type, String label) implements Serializable {
  /** What to draw. */
  public enum Type {
    /** Fuse. */
    FUSE,
    /** Contactor, its main contact. */
    CONTACTOR,
    /** Pre-charge resistor with its own contact, across the contactor before it. */
    PRECHARGE,
    /** Service disconnect. */
    DISCONNECT,
    /** Cable. */
    CABLE,
    /** The load or device at its end. */
    LOAD
  }
}
