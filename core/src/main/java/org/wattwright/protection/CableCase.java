package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.METRE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorRun;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.SizingCriterion;
import org.wattwright.conductor.SizingLine;
import org.wattwright.conductor.SteadyHeating;
import org.wattwright.conductor.SteadyState;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;

/**
 * A cable, or several in parallel, in one circuit: its verdicts without a fault, and what the fault
 * needs to know of it. Not thread-safe: the withstand is worked out when first asked for.
 */
final class CableCase {
  /** What an estimated ampacity leans on. */
  static final String LAYING = "dimensions of the cable, and how it is laid";

  private final Circuit circuit;
  private final SizingLine line;
  private final CircuitPart part;
  private final ConductorRun run;
  private final double loopOhm;
  private final double leastLoopOhm;
  private final @Nullable Quantity<Temperature> operating;
  private @Nullable CableWithstand withstand;

  private CableCase(Circuit circuit, SizingLine line) {
    this.circuit = circuit;
    this.line = line;
    this.run = circuit.route().run(line.cable(), line.parallelRuns());
    this.loopOhm =
        Kind.RESISTANCE.siValueOf(run.expectedResistanceAt(line.cable().temperatureLimit()).high());
    this.leastLoopOhm = LoadCapacitors.leastOhm(run);
    this.part = part();
    this.operating = operating();
  }

  /** Every cable and number of runs, smallest first; the circuit misses nothing. */
  static List<CableCase> all(
      Circuit circuit, List<Cable> catalogue, int mostRuns, double highestV) {
    ConductorSizer sizer =
        circuit
            .sizer(ConductorSizer.over(catalogue))
            .circuitVoltage(Kind.VOLTAGE.ofSi(highestV))
            .parallelRunsUpTo(mostRuns);
    List<CableCase> cases = new ArrayList<>();
    for (SizingLine line : sizer.run().table().lines()) {
      cases.add(new CableCase(circuit, line));
    }
    return cases;
  }

  private CircuitPart part() {
    double lengthM = Kind.LENGTH.siValueOf(run.cableLength());
    Price perMetre = line.cable().pricePerMetre().orElse(null);
    Price price =
        perMetre == null
            ? null
            : new Price(
                perMetre.amount().multiply(BigDecimal.valueOf(lengthM)), perMetre.currency());
    Double massKg = run.mass().map(Kind.MASS::siValueOf).orElse(null);
    String name = Measures.format(METRE.of(lengthM), Kind.LENGTH) + " of " + label();
    return new CircuitPart(CircuitPart.Type.CABLE, name, massKg, price);
  }

  /** Hotter of the continuous temperature and the profile's peak; null if neither is known. */
  private @Nullable Quantity<Temperature> operating() {
    double hottestK = Double.NEGATIVE_INFINITY;
    for (SizingCriterion criterion :
        List.of(SizingCriterion.CONTINUOUS_TEMPERATURE, SizingCriterion.PROFILE_PEAK_TEMPERATURE)) {
      Optional<Figure> actual = line.check(criterion).flatMap(Check::actual);
      if (actual.isPresent()) {
        hottestK =
            Math.max(hottestK, Kind.TEMPERATURE.siValueOf(actual.get().quantity(Kind.TEMPERATURE)));
      }
    }
    return hottestK > 0 ? Kind.TEMPERATURE.ofSi(hottestK) : null;
  }

  String label() {
    String runs = line.parallelRuns() == 1 ? "" : line.parallelRuns() + " x ";
    return runs + line.cable().size().name() + " " + line.cable().name();
  }

  boolean passes() {
    return line.passes() && operating != null;
  }

  boolean isProvisional() {
    return line.isProvisional() && operating != null;
  }

  SizingLine line() {
    return line;
  }

  Cable cable() {
    return line.cable();
  }

  int runs() {
    return line.parallelRuns();
  }

  ConductorRun run() {
    return run;
  }

  CircuitPart asPart() {
    return part;
  }

  /** Most that cable and joints have: the cable at its limit, the joints at the high end. */
  double loopOhm() {
    return loopOhm;
  }

  /** Least that cable and joints have, cold. */
  double leastLoopOhm() {
    return leastLoopOhm;
  }

  /** Least that the cables have, touching. */
  double leastLoopHenry() {
    return LoadCapacitors.leastHenry(circuit, line.cable(), line.parallelRuns());
  }

  Circuit circuit() {
    return circuit;
  }

  Optional<Quantity<Temperature>> operatingTemperature() {
    return Optional.ofNullable(operating);
  }

  /** Of a case that passes or is provisional. */
  CableWithstand withstand() {
    if (withstand == null) {
      withstand = CableWithstand.of(cable(), runs(), place(), operatingTemperature().orElseThrow());
    }
    return withstand;
  }

  private Installation place() {
    return circuit.installation().orElseThrow();
  }

  /** What the remaining runs do if one fails: a caution where they grow too hot. */
  Optional<Check> lostRun() {
    if (runs() == 1) {
      return Optional.empty();
    }
    double leftShare = runs() == 2 ? 1 : (1 + CableWithstand.SHARING_UNBALANCE) / (runs() - 1);
    double currentA = circuit.continuousA() * leftShare;
    SteadyHeating heating = SteadyHeating.of(cable(), place());
    double conductorK =
        heating
            .at(Kind.CURRENT.ofSi(currentA))
            .fold(
                (SteadyState state) -> Kind.TEMPERATURE.siValueOf(state.conductor()),
                none -> Double.POSITIVE_INFINITY);
    double limitK = Kind.TEMPERATURE.siValueOf(cable().temperatureLimit());
    String note =
        conductorK < Double.POSITIVE_INFINITY
            ? "the rest would reach " + Figure.ofSi(conductorK, CELSIUS)
            : "the rest would run away";
    return Optional.of(
        Check.named("protection.parallel-run-lost", "one of " + label() + " fails unseen")
            .source(Source.standard("IEC 60364-4-43", "433.4").fromMemory())
            .basis(heating.basis())
            .estimated(heating.basis() == Basis.ESTIMATED ? new String[] {LAYING} : new String[0])
            .safety()
            .note(note + "; its limit is " + Figure.ofSi(limitK, CELSIUS))
            .recommends(conductorK <= limitK));
  }
}
