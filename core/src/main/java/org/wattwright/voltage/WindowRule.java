package org.wattwright.voltage;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.units.Kind;

/**
 * Which voltage of the pack stands against which end of a device's window: the one list that
 * checks, the matcher and the usable band share.
 */
public enum WindowRule {
  /** Full under charge against what the device stands. */
  ABSOLUTE_MAXIMUM(
      "voltage.absolute-maximum",
      "full under charge against the absolute maximum of ",
      EnvelopePoint.UNDER_CHARGE,
      true),

  /** Full under charge against the upper end of the operating band. */
  OPERATING_MAXIMUM(
      "voltage.operating-maximum",
      "full under charge against the upper end of ",
      EnvelopePoint.UNDER_CHARGE,
      true),

  /** Empty, cold and loaded against the lower end of the operating band. */
  OPERATING_MINIMUM(
      "voltage.operating-minimum",
      "empty, cold, loaded against the lower end of ",
      EnvelopePoint.UNDER_LOAD,
      false),

  /** End of charge against the highest output of a charger. */
  CHARGER_REACH(
      "voltage.charger-reach",
      "end of charge against the highest output of ",
      EnvelopePoint.END_OF_CHARGE,
      true),

  /** Empty at rest against the lowest output of a charger. */
  CHARGER_START(
      "voltage.charger-start",
      "empty at rest against the lowest output of ",
      EnvelopePoint.EMPTY_AT_REST,
      false);

  private final String code;
  private final String words;
  private final EnvelopePoint point;
  private final boolean upper;

  WindowRule(String code, String words, EnvelopePoint point, boolean upper) {
    this.code = code;
    this.words = words;
    this.point = point;
    this.upper = upper;
  }

  /**
   * The rules of a device. A charger ends and starts a charge, so it need not cover the pack under
   * load or regeneration; but it must stand whatever the bus reaches.
   *
   * @param device any device on the pack's voltage
   * @return three rules, the absolute maximum first
   */
  public static List<WindowRule> of(Device device) {
    return device.role() == DeviceRole.CHARGER
        ? List.of(ABSOLUTE_MAXIMUM, CHARGER_REACH, CHARGER_START)
        : List.of(ABSOLUTE_MAXIMUM, OPERATING_MAXIMUM, OPERATING_MINIMUM);
  }

  String code() {
    return code;
  }

  String words() {
    return words;
  }

  /**
   * The voltage of the pack that is compared.
   *
   * @return a point of its envelope
   */
  public EnvelopePoint point() {
    return point;
  }

  /**
   * Which way the limit goes.
   *
   * @return true if the pack's voltage must be at most the limit, false if at least
   */
  public boolean isUpper() {
    return upper;
  }

  /**
   * The end of a device's window that limits.
   *
   * @param device a device that this rule is of
   * @return empty if not known
   */
  public Optional<Quantity<ElectricPotential>> limitOf(Device device) {
    VoltageWindow window = device.window();
    return switch (this) {
      case ABSOLUTE_MAXIMUM -> window.absoluteMaximum();
      case OPERATING_MAXIMUM, CHARGER_REACH -> Optional.of(window.operating().highest());
      case OPERATING_MINIMUM, CHARGER_START -> Optional.of(window.operating().lowest());
    };
  }

  /** Whether a voltage breaks no known limit; the same comparison as a check's. */
  boolean isKept(Device device, double actualV) {
    return limitOf(device)
        .map(limit -> isKept(actualV, Kind.VOLTAGE.siValueOf(limit)))
        .orElse(true);
  }

  private boolean isKept(double actualV, double limitV) {
    return upper
        ? EnvelopeSolver.atMost(actualV, limitV)
        : EnvelopeSolver.atMost(-actualV, -limitV);
  }
}
