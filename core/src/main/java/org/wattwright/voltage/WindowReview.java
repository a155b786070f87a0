package org.wattwright.voltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.StateOfCharge;

/**
 * One pack against the windows of its devices: envelope, checks, usable band, power available.
 *
 * <p>All voltages are those at the pack's terminals, leads included. What a cable loses on the way
 * to a device is not known here: under load a device sees less, under regeneration it gives more.
 *
 * <p>Immutable and thread-safe.
 */
public final class WindowReview {
  private final Pack pack;
  private final List<Device> devices;
  private final OperatingConditions conditions;
  private final EnvelopeSolver solver;
  private final VoltageEnvelope envelope;
  private final List<Check> checks;

  private WindowReview(Pack pack, List<Device> devices, OperatingConditions conditions) {
    this.pack = pack;
    this.devices = devices;
    this.conditions = conditions;
    this.solver = new EnvelopeSolver(pack, conditions);
    EnvelopeSolver.Solution solution = solver.solve(Recorder.OFF);
    this.envelope = solution.envelope();
    this.checks = List.copyOf(new WindowChecks(solver, solution).against(devices));
  }

  /**
   * Reviews a pack.
   *
   * @param pack the pack
   * @param devices everything on its bus, at least one
   * @param conditions the conditions
   * @return the review
   * @throws org.wattwright.units.InvalidInputException if there is no device
   */
  public static WindowReview of(
      Pack pack, List<? extends Device> devices, OperatingConditions conditions) {
    return new WindowReview(pack, Require.nonEmpty("devices", devices), conditions);
  }

  /**
   * The pack under review.
   *
   * @return the pack
   */
  public Pack pack() {
    return pack;
  }

  /**
   * The voltages of the pack.
   *
   * @return the envelope
   */
  public VoltageEnvelope envelope() {
    return envelope;
  }

  /**
   * Every check, device by device in the order given, then those of the pack.
   *
   * @return an immutable list
   */
  public List<Check> checks() {
    return checks;
  }

  /**
   * The worst verdict.
   *
   * @return of all checks together
   */
  public Outcome outcome() {
    return Outcome.worstOf(checks);
  }

  /**
   * The working of the envelope.
   *
   * @return the steps as computed
   */
  public Worksheet worksheet() {
    return VoltageEnvelope.worksheet(pack, conditions);
  }

  /**
   * The states of charge in which every device works: the cold pack delivers the peak load and
   * stays above every device's lower end under it, regeneration keeps below every device's upper
   * end, and the charger can start and end a charge there.
   *
   * <p>Sought at every whole per cent; the ends are found to 10⁻⁶. Where resistance or voltage
   * leave several bands, the widest.
   *
   * @return empty if there is no such state in the band of the conditions
   */
  public Optional<StateOfChargeBand> usableStateOfCharge() {
    return new UsableBand(solver, devices).find();
  }

  /**
   * Power available to one device over state of charge and temperature, if it alone loads the pack:
   * the largest power up to which every smaller one is available too, so that it can be reached
   * from rest. The least of what the pack gives and what the device takes at the voltage that is
   * left; an estimated resistance stands at the high end of its band.
   *
   * <p>Above the full-performance band a device takes more as its voltage sags, so a power beyond
   * that one may exist as an operating point; it is not counted on.
   *
   * @param device with its ratings; a rating not given does not limit
   * @param temperatures cell temperatures, at least one
   * @param statesOfCharge at least one
   * @return one point per temperature and state of charge: the first temperature with every state
   *     of charge, then the next
   * @throws org.wattwright.units.InvalidInputException if a list is empty
   */
  public List<PowerPoint> powerAvailable(
      Device device, List<Quantity<Temperature>> temperatures, List<StateOfCharge> statesOfCharge) {
    Require.nonEmpty("temperatures", temperatures);
    Require.nonEmpty("statesOfCharge", statesOfCharge);
    AvailablePower available =
        new AvailablePower(solver.sagging(), device, conditions.peakDuration());
    List<PowerPoint> points = new ArrayList<>();
    for (Quantity<Temperature> temperature : temperatures) {
      for (StateOfCharge stateOfCharge : statesOfCharge) {
        points.add(available.at(PackState.of(stateOfCharge, temperature)));
      }
    }
    return List.copyOf(points);
  }

  /**
   * Verdict and envelope.
   *
   * @return for example {@code PASS: 109.5 V charging, 103.5 V full, …}
   */
  @Override
  public String toString() {
    return outcome() + ": " + envelope;
  }
}
