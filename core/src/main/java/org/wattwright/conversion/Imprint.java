package org.wattwright.conversion;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a calculation sheet was made with: the version of the library, and the fingerprint of the
 * inputs.
 *
 * <p>Immutable and thread-safe.
 */
public final class Imprint implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String libraryVersion;
  private final @Nullable Fingerprint inputs;

  private Imprint(String libraryVersion, @Nullable Fingerprint inputs) {
    this.libraryVersion = libraryVersion;
    this.inputs = inputs;
  }

  /**
   * Made with this version of the library.
   *
   * @param inputs their fingerprint
   * @return the imprint
   */
  public static Imprint of(Fingerprint inputs) {
    return new Imprint(LibraryVersion.current(), Objects.requireNonNull(inputs, "inputs"));
  }

  /**
   * Made with this version of the library, of inputs that nobody took a fingerprint of.
   *
   * @return the imprint
   */
  public static Imprint withoutInputs() {
    return new Imprint(LibraryVersion.current(), null);
  }

  /**
   * The version of the library.
   *
   * @return for example {@code 0.1.0-SNAPSHOT}
   */
  public String libraryVersion() {
    return libraryVersion;
  }

  /**
   * The fingerprint of the inputs.
   *
   * @return empty if none was taken
   */
  public Optional<Fingerprint> inputs() {
    return Optional.ofNullable(inputs);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Imprint that
            && libraryVersion.equals(that.libraryVersion)
            && Objects.equals(inputs, that.inputs));
  }

  @Override
  public int hashCode() {
    return Objects.hash(libraryVersion, inputs);
  }

  /**
   * One line for the sheet.
   *
   * @return for example {@code Calculated with Wattwright 0.1.0, fingerprint of the inputs 3f2a
   *     09c1 77be}
   */
  @Override
  public String toString() {
    String made = "Calculated with Wattwright " + libraryVersion;
    return made
        + inputs()
            .map(print -> ", fingerprint of the inputs " + print)
            .orElse(", no fingerprint of the inputs taken");
  }
}
