package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.Arrays;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.ShortCircuit;
import org.wattwright.conductor.SteadyHeating;
import org.wattwright.conductor.TransientHeating;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/**
 * How long a cable bears a current: the limit a fuse or a trip must stay below.
 *
 * <p>Up to the ampacity for ever. Above it as long as it takes from the operating temperature to
 * the continuous limit, by {@link TransientHeating}; where that is less than 5 s, the adiabatic
 * time from the continuous limit to the short-circuit limit, t = k²S²/I², at most 5 s (IEC 60949;
 * IEC 60364-4-43, 434.5.2). Of parallel runs the worst loaded one counts up to 5 s and longer; a
 * short circuit may lie in one run, which then bears all of it (IEC 60364-4-43, 434.4, from
 * memory).
 *
 * <p>Between the currents worked out, the heat I²t needed at the next higher one is taken: it falls
 * with the current, since less is lost, so that the curve lies on the safe side. Immutable and
 * thread-safe.
 */
public final class CableWithstand {
  /** Source of the curve, for checks. */
  static final Source SOURCE = Source.standard("IEC 60364-4-43", "434.5.2, with IEC 60949");

  /** Parallel runs of equal length and lugs; common practice. */
  static final double SHARING_UNBALANCE = 0.1;

  /** Adiabatic up to here; IEC 60949. */
  static final double LONGEST_ADIABATIC_S = 5;

  private static final int SAMPLES = 14;
  private static final double FIRST_EXCESS = 0.004;
  private static final double HIGHEST_A = 1e7;
  private static final double LONGEST_S = 1e9;

  private final double ampacityA;
  private final double withstandA2S;
  private final TimeCurve curve;
  private final Basis basis;

  private CableWithstand(double ampacityA, double withstandA2S, TimeCurve curve, Basis basis) {
    this.ampacityA = ampacityA;
    this.withstandA2S = withstandA2S;
    this.curve = curve;
    this.basis = basis;
  }

  /**
   * A single cable.
   *
   * @param cable with its diameters, given or estimated
   * @param installation where it lies
   * @param operating conductor temperature before the overload, at most the cable's limit
   * @return the withstand
   * @throws InvalidInputException if a diameter is missing or the temperature is above the limit
   */
  public static CableWithstand of(
      Cable cable, Installation installation, Quantity<Temperature> operating) {
    return of(cable, 1, installation, operating);
  }

  /**
   * Cables in parallel, by the current of them all; the worst loaded carries a tenth more than its
   * share.
   *
   * @param cable with its diameters, given or estimated
   * @param runs 1 to 8
   * @param installation where they lie
   * @param operating conductor temperature before the overload, at most the cable's limit
   * @return the withstand
   * @throws InvalidInputException if an argument is outside its range or a diameter is missing
   */
  public static CableWithstand of(
      Cable cable, int runs, Installation installation, Quantity<Temperature> operating) {
    Require.count("CableWithstand.runs", runs, 1, 8);
    SteadyHeating heating = SteadyHeating.of(cable, installation);
    double operatingK =
        Require.quantity("CableWithstand.operating", operating, CELSIUS).between(-50, 400);
    double limitK = Kind.TEMPERATURE.siValueOf(cable.temperatureLimit());
    if (!(operatingK <= limitK)) {
      throw InvalidInputException.of(
          "CableWithstand.operating",
          "at most the cable's limit " + cable.temperatureLimit(),
          operating.toString());
    }
    double share = runs == 1 ? 1 : (1 + SHARING_UNBALANCE) / runs;
    double withstandA2S =
        Kind.JOULE_INTEGRAL.siValueOf(
            ShortCircuit.of(cable.size().material())
                .withstand(
                    cable.size().area(), cable.temperatureLimit(), cable.shortCircuitLimit()));
    double ampacityA = Kind.CURRENT.siValueOf(heating.ampacity()) / share;
    Overload overload = new Overload(cable, TransientHeating.of(heating), operating, share);
    return new CableWithstand(
        ampacityA, withstandA2S, curve(ampacityA, withstandA2S, overload), heating.basis());
  }

  /** Heating of the worst loaded run from the operating temperature to the continuous limit. */
  private record Overload(
      Cable cable, TransientHeating heating, Quantity<Temperature> operating, double share) {
    double timeS(double circuitA) {
      return heating
          .timeToReach(AMPERE.of(circuitA * share), operating, cable.temperatureLimit())
          .map(Kind.TIME::siValueOf)
          .orElse(Double.POSITIVE_INFINITY);
    }

    /** I²t of the circuit's current if no heat were lost: less than is needed in truth. */
    double adiabaticA2S() {
      double limitC = CELSIUS.valueOf(cable.temperatureLimit());
      if (!(limitC > CELSIUS.valueOf(operating))) {
        return 0;
      }
      return Kind.JOULE_INTEGRAL.siValueOf(
              ShortCircuit.of(cable.size().material())
                  .withstand(cable.size().area(), operating, cable.temperatureLimit()))
          / (share * share);
    }
  }

  private static TimeCurve curve(double ampacityA, double withstandA2S, Overload overload) {
    double[] currentsA = new double[2 * SAMPLES + 6];
    double[] timesS = new double[2 * SAMPLES + 6];
    double kneeA = Math.sqrt(withstandA2S / LONGEST_ADIABATIC_S);
    int size = overloadPoints(ampacityA, kneeA, overload, currentsA, timesS);
    double fromA = size == 0 ? ampacityA : currentsA[size - 1];
    if (fromA < kneeA) {
      currentsA[size] = fromA;
      timesS[size++] = LONGEST_ADIABATIC_S;
      currentsA[size] = kneeA;
      timesS[size++] = LONGEST_ADIABATIC_S;
    } else {
      currentsA[size] = fromA;
      timesS[size++] = withstandA2S / (fromA * fromA);
    }
    currentsA[size] = HIGHEST_A;
    timesS[size++] = withstandA2S / (HIGHEST_A * HIGHEST_A);
    return TimeCurve.of(Arrays.copyOf(currentsA, size), Arrays.copyOf(timesS, size));
  }

  /**
   * Points while the overload takes 5 s or longer, up to the current that a short circuit may have
   * for 5 s; a step at each current worked out.
   */
  private static int overloadPoints(
      double ampacityA, double kneeA, Overload overload, double[] currentsA, double[] timesS) {
    double lastA = Math.sqrt(overload.adiabaticA2S() / LONGEST_ADIABATIC_S);
    double lastExcess = lastA / ampacityA - 1;
    if (!(lastExcess > FIRST_EXCESS)) {
      return 0;
    }
    double ratio = Math.pow(lastExcess / FIRST_EXCESS, 1.0 / (SAMPLES - 1));
    int size = 0;
    double fromA = ampacityA;
    double excess = FIRST_EXCESS;
    for (int i = 0; i < SAMPLES; i++) {
      double toA = ampacityA * (1 + excess);
      double neededA2S = Math.min(overload.timeS(toA), LONGEST_S) * toA * toA;
      double lastingA = Math.min(kneeA, Math.sqrt(neededA2S / LONGEST_ADIABATIC_S));
      double endA = Math.min(toA, lastingA);
      if (endA > fromA) {
        currentsA[size] = fromA;
        timesS[size++] = neededA2S / (fromA * fromA);
        currentsA[size] = endA;
        timesS[size++] = neededA2S / (endA * endA);
      }
      if (!(endA >= toA)) {
        break;
      }
      fromA = toA;
      excess *= ratio;
    }
    return size;
  }

  /**
   * Current that is borne for ever.
   *
   * @return of all parallel runs, in A
   */
  public Quantity<ElectricCurrent> ampacity() {
    return AMPERE.of(ampacityA);
  }

  /**
   * Joule integral that one run withstands, from its continuous limit to its short-circuit limit.
   *
   * @return k²S², in A²s
   */
  public Quantity<JouleIntegral> jouleIntegral() {
    return Kind.JOULE_INTEGRAL.ofSi(withstandA2S);
  }

  /**
   * How long a current of the circuit is borne.
   *
   * @param current of all parallel runs, 0 A to 10 MA
   * @return in s; empty if for ever
   * @throws InvalidInputException if outside its range
   */
  public Optional<Quantity<Time>> time(Quantity<ElectricCurrent> current) {
    double currentA =
        Require.quantity("CableWithstand.current", current, AMPERE).between(0, HIGHEST_A);
    return currentA <= ampacityA ? Optional.empty() : Optional.of(SECOND.of(curve.at(currentA)));
  }

  /**
   * What the curve rests on.
   *
   * @return the weakest of resistance, geometry and installation
   */
  public Basis basis() {
    return basis;
  }

  /** Currents at which a slower curve clears within what the cable bears. */
  CurrentRanges bears(TimeCurve clearing) {
    return CurrentRanges.of(clearing.lowestA(), Math.min(ampacityA, clearing.highestA()))
        .or(clearing.notAbove(curve));
  }

  /** Currents that are borne for a time. */
  CurrentRanges bears(double timeS) {
    return CurrentRanges.of(0, ampacityA).or(curve.atLeast(timeS));
  }

  double ampacityA() {
    return ampacityA;
  }

  double withstandA2S() {
    return withstandA2S;
  }

  TimeCurve curve() {
    return curve;
  }

  /**
   * Ampacity and joule integral.
   *
   * @return for example {@code 198 A for ever, 2.5E+07 A²·s}
   */
  @Override
  public String toString() {
    return ampacity() + " for ever, " + jouleIntegral();
  }
}
