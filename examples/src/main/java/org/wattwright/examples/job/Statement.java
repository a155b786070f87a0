package org.wattwright.examples.job;

import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;

/**
 * One input as the job states it, for the list of inputs in the calculation sheet.
 *
 * <p>Immutable and thread-safe.
 *
 * @param subject what it is about, such as a part or {@code requirement}
 * @param what the quantity or property
 * @param value as given, with its unit
 * @param basis what it rests on
 * @param source where it comes from; may be empty
 * @param origin where it stands
 */
public record Statement(
    String subject, String what, String value, Basis basis, String source, Origin origin) {
  /** A value read from this statement, with what it rests on. */
  <T> Given<T> given(T read) {
    Source from =
        switch (basis) {
          case MEASURED -> Source.measurement(source);
          case DATA_SHEET -> Source.dataSheet(source);
          case ESTIMATED -> Source.commonPractice(source);
        };
    return new Given<>(read, basis, from);
  }
}
