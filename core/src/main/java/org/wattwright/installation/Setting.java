package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/** One value to set on one device, and why. Immutable and thread-safe. */
public final class Setting implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Fields fields;

  private record Fields(
      String device,
      String name,
      Figure value,
      @Nullable Figure tolerance,
      String why,
      Source source)
      implements Serializable {}

  private Setting(Fields fields) {
    this.fields = fields;
  }

  /**
   * A setting without tolerance.
   *
   * @param device where it is set
   * @param name what is set
   * @param value to what
   * @return the setting, as given, no reason told
   * @throws org.wattwright.units.InvalidInputException if a text is blank
   */
  public static Setting of(String device, String name, Figure value) {
    return new Setting(
        new Fields(
            Require.text("Setting.device", device),
            Require.text("Setting.name", name),
            Objects.requireNonNull(value, "value"),
            null,
            "",
            Source.AS_GIVEN));
  }

  /**
   * With how far the device may be off.
   *
   * @param tolerance either way
   * @return a new setting
   */
  public Setting within(Figure tolerance) {
    Objects.requireNonNull(tolerance, "tolerance");
    return new Setting(
        new Fields(fields.device, fields.name, fields.value, tolerance, fields.why, fields.source));
  }

  /**
   * With the reason.
   *
   * @param why in words
   * @param source where it comes from
   * @return a new setting
   * @throws org.wattwright.units.InvalidInputException if the text is blank
   */
  public Setting because(String why, Source source) {
    Objects.requireNonNull(source, "source");
    return new Setting(
        new Fields(
            fields.device,
            fields.name,
            fields.value,
            fields.tolerance,
            Require.text("Setting.why", why),
            source));
  }

  /**
   * Where it is set.
   *
   * @return the device
   */
  public String device() {
    return fields.device;
  }

  /**
   * What is set.
   *
   * @return the name
   */
  public String name() {
    return fields.name;
  }

  /**
   * To what.
   *
   * @return the value
   */
  public Figure value() {
    return fields.value;
  }

  /**
   * How far the device may be off, either way.
   *
   * @return empty if not told
   */
  public Optional<Figure> tolerance() {
    return Optional.ofNullable(fields.tolerance);
  }

  /**
   * Why.
   *
   * @return may be empty
   */
  public String why() {
    return fields.why;
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return fields.source;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Setting that && fields.equals(that.fields);
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * Device, name, value and tolerance.
   *
   * @return for example {@code charger: end voltage 393.6 V ± 0.5 %}
   */
  @Override
  public String toString() {
    String within = fields.tolerance == null ? "" : " ± " + fields.tolerance;
    return fields.device + ": " + fields.name + " " + fields.value + within;
  }
}
