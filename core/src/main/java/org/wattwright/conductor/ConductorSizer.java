package org.wattwright.conductor;

import static org.wattwright.internal.MissingFields.present;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.SQUARE_METRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;

/**
 * Picks the smallest cable, or number of parallel runs, that passes every criterion asked for.
 *
 * <p>Smallest is the least metal, then the fewest runs, then the lightest. Required: the
 * installation, and a continuous current, a profile or both; the length where a voltage drop is
 * asked for. The rest is checked if it is asked for. A candidate with a missing field is not
 * returned, unless {@link #allowProvisional()} asks for it; it then ranks after every complete one.
 * Immutable: each call returns a new sizer.
 *
 * <p>The voltage drop takes the conductor at its working temperature, both polarities and every
 * joint at the high end of its range. A short circuit starts at the cable's temperature limit. A
 * terminal is as hot as its cable and the joint's own rise, P/√(g·λ·A): the cable cools the joint
 * as a fin.
 */
public final class ConductorSizer {
  private final List<Cable> catalogue;
  private final SizingDuty duty;
  private final int mostRuns;
  private final boolean isProvisionalAllowed;

  private ConductorSizer(
      List<Cable> catalogue, SizingDuty duty, int mostRuns, boolean isProvisionalAllowed) {
    this.catalogue = catalogue;
    this.duty = duty;
    this.mostRuns = mostRuns;
    this.isProvisionalAllowed = isProvisionalAllowed;
  }

  /**
   * Over a catalogue.
   *
   * @param catalogue one cable or more, in any order
   * @return the sizer
   * @throws InvalidInputException if the catalogue is empty
   */
  public static ConductorSizer over(List<Cable> catalogue) {
    List<Cable> cables = Require.nonEmpty("ConductorSizer.catalogue", catalogue);
    return new ConductorSizer(cables, SizingDuty.NOTHING, 1, false);
  }

  private ConductorSizer with(SizingDuty changed) {
    return new ConductorSizer(catalogue, changed, mostRuns, isProvisionalAllowed);
  }

  /**
   * Where the cables lie.
   *
   * @param value the installation
   * @return a new sizer
   */
  public ConductorSizer installation(Installation value) {
    return with(duty.withInstallation(Objects.requireNonNull(value, "installation")));
  }

  /**
   * Continuous current of the circuit.
   *
   * @param value ≥ 0 A
   * @return a new sizer
   * @throws InvalidInputException if negative
   */
  public ConductorSizer continuousCurrent(Quantity<ElectricCurrent> value) {
    String field = "ConductorSizer.continuousCurrent";
    return with(duty.withContinuousA(Require.quantity(field, value, AMPERE).nonNegative()));
  }

  /**
   * Current of the circuit against time, repeated for ever, such as a drive cycle.
   *
   * @param value the profile
   * @return a new sizer
   */
  public ConductorSizer profile(Profile<ElectricCurrent> value) {
    return with(duty.withProfile(Objects.requireNonNull(value, "profile")));
  }

  /**
   * Length from terminal to terminal, the same out and back.
   *
   * @param oneWay &gt; 0
   * @return a new sizer
   * @throws InvalidInputException if not positive
   */
  public ConductorSizer length(Quantity<Length> oneWay) {
    String field = "ConductorSizer.length";
    return with(duty.withLengths(Require.quantity(field, oneWay, METRE).positive(), null));
  }

  /**
   * Lengths of both polarities where they differ.
   *
   * @param out &gt; 0
   * @param back ≥ 0; zero where the return is another conductor
   * @return a new sizer
   * @throws InvalidInputException if outside its range
   */
  public ConductorSizer lengths(Quantity<Length> out, Quantity<Length> back) {
    double outM = Require.quantity("ConductorSizer.out", out, METRE).positive();
    double backM = Require.quantity("ConductorSizer.back", back, METRE).nonNegative();
    return with(duty.withLengths(outM, backM));
  }

  /**
   * How many conductors the circuit has; a pair unless told.
   *
   * @param value of three phases the joints are those of two of them, and the voltage lost is that
   *     between two of them
   * @return a new sizer
   */
  public ConductorSizer wiring(Wiring value) {
    return with(duty.withWiring(Objects.requireNonNull(value, "wiring")));
  }

  /**
   * Joints of both polarities; each carries the whole current, and its terminal's limit is checked.
   *
   * @param value lugs, joints, plugs
   * @return a new sizer
   */
  public ConductorSizer joints(List<Joint> value) {
    return with(duty.withJoints(List.copyOf(value)));
  }

  /**
   * Voltage that may be lost at the continuous current, or at the profile's peak without one.
   *
   * @param value &gt; 0 V
   * @return a new sizer
   * @throws InvalidInputException if not positive
   */
  public ConductorSizer voltageDropAtMost(Quantity<ElectricPotential> value) {
    double dropV = Require.quantity("ConductorSizer.voltageDrop", value, VOLT).positive();
    return with(duty.withDrop(dropV, null));
  }

  /**
   * Voltage that may be lost at a stated current.
   *
   * @param value &gt; 0 V
   * @param current ≥ 0 A
   * @return a new sizer
   * @throws InvalidInputException if an argument is outside its range
   */
  public ConductorSizer voltageDropAtMost(
      Quantity<ElectricPotential> value, Quantity<ElectricCurrent> current) {
    double dropV = Require.quantity("ConductorSizer.voltageDrop", value, VOLT).positive();
    String field = "ConductorSizer.dropCurrent";
    return with(duty.withDrop(dropV, Require.quantity(field, current, AMPERE).nonNegative()));
  }

  /**
   * Short circuit that the conductor must withstand.
   *
   * @param value current and time, or I²t that the protection lets through
   * @return a new sizer
   */
  public ConductorSizer fault(FaultDuty value) {
    return with(duty.withFault(Objects.requireNonNull(value, "fault")));
  }

  /**
   * Highest temperature that the terminals of both ends allow; often less than the cable's.
   *
   * @param value 40 °C to 300 °C
   * @return a new sizer
   * @throws InvalidInputException if outside its range
   */
  public ConductorSizer terminalTemperatureAtMost(Quantity<Temperature> value) {
    String field = "ConductorSizer.terminalTemperature";
    return with(duty.withTerminalK(Require.quantity(field, value, CELSIUS).between(40, 300)));
  }

  /**
   * Bend radius that the route has room for.
   *
   * @param value &gt; 0
   * @return a new sizer
   * @throws InvalidInputException if not positive
   */
  public ConductorSizer bendRadiusAvailable(Quantity<Length> value) {
    String field = "ConductorSizer.bendRadius";
    return with(duty.withBendM(Require.quantity(field, value, MILLIMETRE).positive()));
  }

  /**
   * Least area for mechanical strength, of each cable.
   *
   * @param value &gt; 0
   * @return a new sizer
   * @throws InvalidInputException if not positive
   */
  public ConductorSizer areaAtLeast(Quantity<Area> value) {
    String field = "ConductorSizer.area";
    return with(duty.withAreaM2(Require.quantity(field, value, SQUARE_METRE).positive()));
  }

  /**
   * Highest voltage of the circuit, against the cable's rating.
   *
   * @param value &gt; 0 V
   * @return a new sizer
   * @throws InvalidInputException if not positive
   */
  public ConductorSizer circuitVoltage(Quantity<ElectricPotential> value) {
    String field = "ConductorSizer.circuitVoltage";
    return with(duty.withVoltageV(Require.quantity(field, value, VOLT).positive()));
  }

  /**
   * A further method for the continuous current, such as a published table or a national code.
   *
   * @param value the method
   * @return a new sizer
   */
  public ConductorSizer ampacityBy(AmpacityMethod value) {
    return with(duty.withMethod(Objects.requireNonNull(value, "method")));
  }

  /**
   * Allows parallel runs.
   *
   * @param most 1 to 8 cables in each polarity
   * @return a new sizer
   * @throws InvalidInputException if outside its range
   */
  public ConductorSizer parallelRunsUpTo(int most) {
    int runs = Require.count("ConductorSizer.parallelRuns", most, 1, 8);
    return new ConductorSizer(catalogue, duty, runs, isProvisionalAllowed);
  }

  /**
   * How much more than its share the worst of parallel runs carries; 0.1 unless told (common
   * practice for runs of equal length and lugs).
   *
   * @param share 0 to 1
   * @return a new sizer
   * @throws InvalidInputException if outside its range
   */
  public ConductorSizer sharingUnbalance(double share) {
    return with(duty.withUnbalance(Require.fraction("ConductorSizer.sharingUnbalance", share)));
  }

  /**
   * Also accepts a candidate of which some criteria cannot be checked, if no complete one passes.
   *
   * @return a new sizer
   */
  public ConductorSizer allowProvisional() {
    return new ConductorSizer(catalogue, duty, mostRuns, true);
  }

  /**
   * Searches.
   *
   * @return the smallest candidate that passes, or what ruled the candidates out
   * @throws InvalidInputException if a required input is missing; the message lists all of them
   */
  public SizingResult run() {
    return search().run(isProvisionalAllowed);
  }

  /**
   * The working of one candidate, whether it serves or not, and whether it is in the catalogue or
   * not.
   *
   * @param cable the cable
   * @param parallelRuns 1 to 8 for each conductor
   * @return the steps of the kernel that judges it
   * @throws InvalidInputException if a required input is missing or the number is outside its range
   */
  public Worksheet worksheetOf(Cable cable, int parallelRuns) {
    int runs = Require.count("ConductorSizer.parallelRuns", parallelRuns, 1, 8);
    return search().worksheet(new Candidate(Objects.requireNonNull(cable, "cable"), runs));
  }

  private SizingSearch search() {
    MissingFields missing =
        new MissingFields("ConductorSizer")
            .field("installation", duty.installation())
            .field(
                "continuousCurrent or profile",
                duty.continuousA() != null ? duty.continuousA() : duty.profile());
    if (duty.dropV() != null) {
      missing.field("length", duty.lengthM());
    }
    missing.rejectIfAny();
    return new SizingSearch(duty, present(duty.installation()), candidates());
  }

  private List<Candidate> candidates() {
    List<Candidate> candidates = new ArrayList<>();
    for (Cable cable : catalogue) {
      for (int runs = 1; runs <= mostRuns; runs++) {
        candidates.add(new Candidate(cable, runs));
      }
    }
    candidates.sort(Candidate.SMALLEST_FIRST);
    return candidates;
  }

  /**
   * Size of the catalogue.
   *
   * @return for example {@code sizer over 12 cables, up to 2 in parallel}
   */
  @Override
  public String toString() {
    return "sizer over " + catalogue.size() + " cables, up to " + mostRuns + " in parallel";
  }
}
