package org.wattwright.check;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.internal.Require;

/**
 * Where a formula, a limit or a value comes from.
 *
 * <p>Immutable and thread-safe.
 *
 * @param type what sort of source it is
 * @param title the standard, book or paper; else the sort of source in words
 * @param detail clause, table, page and edition, or a remark; may be empty
 */
public record Source(Type type, String title, String detail) implements Serializable {
  private static final String FROM_MEMORY = "from memory";

  /** Sorts of source. */
  public enum Type {
    /** A published standard or regulation. */
    STANDARD,
    /** A book, a handbook or a paper. */
    LITERATURE,
    /** The data sheet or plate of a part. */
    DATA_SHEET,
    /** A measurement on the part or vehicle. */
    MEASUREMENT,
    /** What the customer or the workshop asks for. */
    REQUIREMENT,
    /** A definition or a law of physics. */
    PHYSICS,
    /** Common practice of the trade, with no published source. */
    COMMON_PRACTICE
  }

  /**
   * Rejects null and a blank title.
   *
   * @param type what sort of source it is
   * @param title the standard, book or paper
   * @param detail clause, table, page and edition, or a remark; may be empty
   */
  public Source {
    Objects.requireNonNull(type, "type");
    title = Require.text("Source.title", title);
    detail = Objects.requireNonNull(detail, "detail").strip();
  }

  /** Ohm's law, Kirchhoff's laws, energy balance: needs no citation. */
  public static final Source PHYSICS = new Source(Type.PHYSICS, "law of physics", "");

  /** An input that the caller passed, with nothing said about where it comes from. */
  public static final Source AS_GIVEN = new Source(Type.REQUIREMENT, "as given", "");

  /**
   * A published standard or regulation.
   *
   * @param title such as {@code IEC 60228}
   * @param detail clause and edition, such as {@code Table 2, 2004}
   * @return the source
   */
  public static Source standard(String title, String detail) {
    return new Source(Type.STANDARD, title, detail);
  }

  /**
   * A book, handbook or paper.
   *
   * @param title author and title
   * @param detail page, equation, edition
   * @return the source
   */
  public static Source literature(String title, String detail) {
    return new Source(Type.LITERATURE, title, detail);
  }

  /**
   * The data sheet or plate of a part.
   *
   * @param part the part
   * @return the source
   */
  public static Source dataSheet(String part) {
    return new Source(Type.DATA_SHEET, "data sheet", part);
  }

  /**
   * A measurement.
   *
   * @param how what was measured and how
   * @return the source
   */
  public static Source measurement(String how) {
    return new Source(Type.MEASUREMENT, "measured", how);
  }

  /**
   * A requirement of the customer or the workshop.
   *
   * @param what what is asked for
   * @return the source
   */
  public static Source requirement(String what) {
    return new Source(Type.REQUIREMENT, "requirement", what);
  }

  /**
   * Common practice of the trade.
   *
   * @param remark what the practice is
   * @return the source
   */
  public static Source commonPractice(String remark) {
    return new Source(Type.COMMON_PRACTICE, "common practice", remark);
  }

  /**
   * Marks a value that was recalled and not seen on the page.
   *
   * @return this source with {@code from memory} in its detail
   */
  public Source fromMemory() {
    return new Source(type, title, detail.isEmpty() ? FROM_MEMORY : detail + ", " + FROM_MEMORY);
  }

  /**
   * Title and detail.
   *
   * @return for example {@code IEC 60228, Table 2, 2004}
   */
  @Override
  public String toString() {
    if (detail.isEmpty()) {
      return title;
    }
    return type == Type.STANDARD || type == Type.LITERATURE
        ? title + ", " + detail
        : title + ": " + detail;
  }
}
