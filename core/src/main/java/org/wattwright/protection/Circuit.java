package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.Joint;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * What one circuit of the vehicle asks of its cable, fuse, contactor and pre-charge.
 *
 * <p>Circuits form a tree: each is fed from another or from the source. A role that the traction
 * battery feeds needs a fuse unless told otherwise. Whatever is missing is named by {@link
 * #missing()}; nothing is guessed. Immutable and thread-safe.
 *
 * <pre>{@code
 * Circuit.of("traction", CircuitRole.TRACTION_MAIN)
 *     .continuousCurrent(amperes(140)).highestOperatingCurrent(amperes(300)).length(metres(3.2))
 *     .installation(Installation.freeAir(celsius(45)))
 *     .precharged().loadCapacitance(microfarads(600))
 *     .trip(OvercurrentTrip.at(amperes(400), seconds(0.2), "battery management"))
 *     .build()
 * }</pre>
 */
public final class Circuit implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Short-circuit limits of insulation hold up to here; IEC 60364-4-43, 434.5.2. */
  static final double USUAL_CLEARING_S = 5;

  private final String name;
  private final CircuitRole role;
  private final @Nullable Circuit upstream;
  private final @Nullable Double continuousA;
  private final @Nullable Profile<ElectricCurrent> profile;
  private final @Nullable Double operatingA;
  private final @Nullable Double outM;
  private final @Nullable Double backM;
  private final @Nullable Installation installation;
  private final @Nullable Double terminalK;
  private final @Nullable Double dropV;
  private final @Nullable Double bendM;
  private final @Nullable Double areaM2;
  private final List<Joint> joints;
  private final boolean isFused;
  private final boolean isSwitched;
  private final boolean isPrecharged;
  private final @Nullable Double disconnectV;
  private final PrechargeWish precharge;
  private final @Nullable CircuitSupply supply;
  private final List<CircuitSupply> segments;
  private final boolean isFedBackwards;
  private final double capacitorOhm;
  private final double capacitorHenry;
  private final List<OvercurrentTrip> trips;
  private final @Nullable Double capacitanceF;
  private final @Nullable Double limitA;
  private final @Nullable String limitedBy;
  private final double clearingS;

  private Circuit(CircuitBuilder builder) {
    name = builder.name;
    role = builder.role;
    upstream = builder.upstream;
    continuousA = builder.continuousA;
    profile = builder.profile;
    operatingA = builder.operatingA;
    outM = builder.outM;
    backM = builder.backM;
    installation = builder.installation;
    terminalK = builder.terminalK;
    dropV = builder.dropV;
    bendM = builder.bendM;
    areaM2 = builder.areaM2;
    joints = builder.joints;
    isFused = builder.isFused;
    isSwitched = builder.isSwitched;
    isPrecharged = builder.isPrecharged;
    disconnectV = builder.disconnectV;
    precharge = builder.precharge;
    supply = builder.supply;
    segments = builder.segments;
    isFedBackwards = builder.isFedBackwards;
    capacitorOhm = builder.capacitorOhm;
    capacitorHenry = builder.capacitorHenry;
    trips = builder.trips;
    capacitanceF = builder.capacitanceF;
    limitA = builder.limitA;
    limitedBy = builder.limitedBy;
    clearingS = builder.clearingS;
  }

  static Circuit from(CircuitBuilder builder) {
    Circuit circuit = new Circuit(builder);
    if (circuit.operatingA != null) {
      circuit.requireAbove(
          "highestOperatingCurrent", circuit.operatingA, circuit.leastPeakA(), true);
    }
    for (OvercurrentTrip trip : circuit.trips) {
      boolean isDelayed = trip.delayS() > 0;
      double leastA = isDelayed ? circuit.continuousA() : circuit.operatingA();
      circuit.requireAbove("trip", trip.currentA(), leastA, true);
    }
    return circuit;
  }

  private void requireAbove(String field, double valueA, double leastA, boolean orEqual) {
    if (!(valueA > leastA || (orEqual && valueA == leastA))) {
      throw InvalidInputException.of(
          "Circuit." + field + " of " + name,
          (orEqual ? "≥ " : "> ") + AMPERE.of(leastA) + " of normal operation",
          AMPERE.of(valueA).toString());
    }
  }

  /**
   * A circuit.
   *
   * @param name as the shop calls it, unique within a job
   * @param role what it does
   * @return a builder
   * @throws InvalidInputException if the name is blank
   */
  public static CircuitBuilder of(String name, CircuitRole role) {
    return new CircuitBuilder(name, role);
  }

  /**
   * The name.
   *
   * @return unique within a job
   */
  public String name() {
    return name;
  }

  /**
   * What it does.
   *
   * @return the role
   */
  public CircuitRole role() {
    return role;
  }

  /**
   * The circuit that feeds it.
   *
   * @return empty at the source
   */
  public Optional<Circuit> upstream() {
    return Optional.ofNullable(upstream);
  }

  /**
   * Continuous current; the profile's RMS without one.
   *
   * @return empty if neither is known
   */
  public Optional<Quantity<ElectricCurrent>> continuousCurrent() {
    if (continuousA != null) {
      return Optional.of(Kind.CURRENT.ofSi(continuousA));
    }
    return Optional.ofNullable(profile).map(Profile::rms);
  }

  /**
   * Current against time.
   *
   * @return empty if not known
   */
  public Optional<Profile<ElectricCurrent>> profile() {
    return Optional.ofNullable(profile);
  }

  /**
   * Highest current in normal operation.
   *
   * @return as told; else the profile's peak or the continuous current; empty if none is known
   */
  public Optional<Quantity<ElectricCurrent>> highestOperatingCurrent() {
    double highestA = operatingA();
    return highestA > 0 ? Optional.of(Kind.CURRENT.ofSi(highestA)) : Optional.empty();
  }

  /**
   * Length out.
   *
   * @return empty if not known
   */
  public Optional<Quantity<Length>> length() {
    return Optional.ofNullable(outM).map(Kind.LENGTH::ofSi);
  }

  /**
   * Length back.
   *
   * @return empty if not known
   */
  public Optional<Quantity<Length>> returnLength() {
    return Optional.ofNullable(backM).map(Kind.LENGTH::ofSi);
  }

  /**
   * Where the cables lie.
   *
   * @return empty if not known
   */
  public Optional<Installation> installation() {
    return Optional.ofNullable(installation);
  }

  /**
   * Joints of both polarities.
   *
   * @return empty if there are none
   */
  public List<Joint> joints() {
    return joints;
  }

  /**
   * Whether it has a fuse of its own.
   *
   * @return true if one is to be chosen
   */
  public boolean isFused() {
    return isFused;
  }

  /**
   * Whether it has a contactor.
   *
   * @return true if one is to be chosen
   */
  public boolean isSwitched() {
    return isSwitched;
  }

  /**
   * Whether the contactor closes only after pre-charge.
   *
   * @return true if a resistor is to be chosen
   */
  public boolean isPrecharged() {
    return isPrecharged;
  }

  /**
   * Rated voltage of its service disconnect.
   *
   * @return empty without one
   */
  public Optional<Quantity<ElectricPotential>> serviceDisconnectVoltage() {
    return Optional.ofNullable(disconnectV).map(Kind.VOLTAGE::ofSi);
  }

  /**
   * What feeds it, where it is not the supply of the whole design.
   *
   * @return empty for that supply
   */
  public Optional<CircuitSupply> supply() {
    return Optional.ofNullable(supply);
  }

  /**
   * Segments of a split battery whose own fault its devices must also clear.
   *
   * @return empty if the battery is not split
   */
  public List<CircuitSupply> segments() {
    return segments;
  }

  /**
   * Whether the capacitors at its load end empty into a fault on it.
   *
   * @return true if they are fed backwards
   */
  public boolean isFedBackwards() {
    return isFedBackwards;
  }

  /**
   * The settings that open its contactor.
   *
   * @return by delay, the quickest first; empty without one
   */
  public List<OvercurrentTrip> trips() {
    return trips;
  }

  /**
   * Capacitance at the load end.
   *
   * @return empty if not known
   */
  public Optional<Quantity<ElectricCapacitance>> loadCapacitance() {
    return Optional.ofNullable(capacitanceF).map(Kind.CAPACITANCE::ofSi);
  }

  /**
   * Current to which its source holds itself.
   *
   * @return empty if the source is not limited
   */
  public Optional<Quantity<ElectricCurrent>> currentLimit() {
    return Optional.ofNullable(limitA).map(Kind.CURRENT::ofSi);
  }

  /**
   * Who holds down the current.
   *
   * @return empty if the source is not limited
   */
  public Optional<String> currentLimitedBy() {
    return Optional.ofNullable(limitedBy);
  }

  /**
   * Time within which every fault must be cleared.
   *
   * @return in s
   */
  public Quantity<Time> faultClearedWithin() {
    return Kind.TIME.ofSi(clearingS);
  }

  /**
   * What stands in the way of a design because it was not told.
   *
   * @return names of the fields, such as {@code Circuit.length of heater}; empty if all is there
   */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    addIfMissing(
        missing, "continuousCurrent or profile", continuousA != null ? continuousA : profile);
    addIfMissing(missing, "length", outM);
    addIfMissing(missing, "installation", installation);
    if (!role.isFedByTractionBattery() && supply == null && upstream == null) {
      addIfMissing(missing, "currentLimit or supply", limitA);
    }
    if (isPrecharged || isFedBackwards) {
      addIfMissing(missing, "loadCapacitance", capacitanceF);
    }
    return missing;
  }

  private void addIfMissing(List<String> missing, String field, @Nullable Object value) {
    if (value == null) {
      missing.add("Circuit." + field + " of " + name);
    }
  }

  /** The sizer that asks of a cable what this circuit asks; the circuit misses nothing. */
  ConductorSizer sizer(ConductorSizer empty) {
    ConductorSizer sizer = empty;
    if (installation != null) {
      sizer = sizer.installation(installation);
    }
    if (continuousA != null) {
      sizer = sizer.continuousCurrent(Kind.CURRENT.ofSi(continuousA));
    }
    if (profile != null) {
      sizer = sizer.profile(profile);
    }
    if (outM != null && backM != null) {
      sizer = sizer.lengths(Kind.LENGTH.ofSi(outM), Kind.LENGTH.ofSi(backM));
    }
    return fitted(sizer.joints(joints).sharingUnbalance(CableWithstand.SHARING_UNBALANCE));
  }

  private ConductorSizer fitted(ConductorSizer running) {
    ConductorSizer sizer = running;
    if (terminalK != null) {
      sizer = sizer.terminalTemperatureAtMost(Kind.TEMPERATURE.ofSi(terminalK));
    }
    if (dropV != null) {
      sizer = sizer.voltageDropAtMost(Kind.VOLTAGE.ofSi(dropV));
    }
    if (bendM != null) {
      sizer = sizer.bendRadiusAvailable(Kind.LENGTH.ofSi(bendM));
    }
    if (areaM2 != null) {
      sizer = sizer.areaAtLeast(Kind.AREA.ofSi(areaM2));
    }
    return sizer;
  }

  private double leastPeakA() {
    double peakA = profile == null ? 0 : Math.abs(Kind.CURRENT.siValueOf(profile.peak()));
    return continuousA == null ? peakA : Math.max(peakA, continuousA);
  }

  /** Highest current in normal operation; 0 if none is known. */
  double operatingA() {
    return operatingA == null ? leastPeakA() : operatingA;
  }

  double continuousA() {
    return continuousCurrent().map(Kind.CURRENT::siValueOf).orElse(0.0);
  }

  double outM() {
    return outM == null ? 0 : outM;
  }

  double backM() {
    return backM == null ? 0 : backM;
  }

  /** What the capacitors at the load end have in their own way; 0 if not told. */
  double capacitorOhm() {
    return capacitorOhm;
  }

  double capacitorHenry() {
    return capacitorHenry;
  }

  PrechargeWish prechargeWish() {
    return precharge;
  }

  double clearingS() {
    return clearingS;
  }

  /** Infinite if the source does not limit itself. */
  double limitA() {
    return limitA == null ? Double.POSITIVE_INFINITY : limitA;
  }

  @Nullable Circuit upstreamOrNull() {
    return upstream;
  }

  @Nullable OvercurrentTrip quickestTrip() {
    return trips.isEmpty() ? null : trips.get(0);
  }

  /**
   * Name, role, current and length.
   *
   * @return for example {@code traction: traction main, 140 A, 3.2 m}
   */
  @Override
  public String toString() {
    String current = continuousCurrent().map(a -> ", " + a).orElse("");
    String far = length().map(m -> ", " + m).orElse("");
    return name + ": " + role + current + far;
  }
}
