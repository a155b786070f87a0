package org.wattwright.protection;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/**
 * What the lowest fault of a pack is taken at.
 *
 * @param cells temperatures of the cells
 * @param age oldest, on top of the age the cells have
 * @param arc voltage of the arc
 * @param polarised how long after the fault began
 */
record FaultAssumptions(
    TemperatureRange cells,
    Given<Ageing> age,
    Given<Quantity<ElectricPotential>> arc,
    Given<Quantity<Time>> polarised)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Resistance of an aged pack against a new one: 1.5 to 2, common practice; the higher end. */
  private static final Given<Ageing> USUAL_AGE =
      Given.estimated(
          Ageing.of(1, 2), Source.commonPractice("aged pack has 1.5 to 2 times its resistance"));

  /** Least voltage at which an arc of direct current burns; common practice. */
  private static final Given<Quantity<ElectricPotential>> USUAL_ARC =
      Given.estimated(
          Kind.VOLTAGE.ofSi(20),
          Source.commonPractice("a short arc of direct current burns at 20 V"));

  /** Twice the longest time in which most faults must be off. */
  private static final Given<Quantity<Time>> USUAL_TIME =
      Given.estimated(
          Kind.TIME.ofSi(10),
          Source.commonPractice("cells are polarised 10 s after a fault began"));

  static FaultAssumptions usual(Pack pack) {
    return new FaultAssumptions(dischargeTemperatures(pack), USUAL_AGE, USUAL_ARC, USUAL_TIME);
  }

  private static TemperatureRange dischargeTemperatures(Pack pack) {
    List<TemperatureRange> all =
        pack.strings().stream()
            .flatMap(string -> string.groups().stream())
            .map(group -> group.module().cell().temperatures(Direction.DISCHARGE))
            .toList();
    Comparator<Quantity<Temperature>> byKelvin =
        Comparator.comparingDouble(Kind.TEMPERATURE::siValueOf);
    return TemperatureRange.between(
        all.stream().map(TemperatureRange::coldest).min(byKelvin).orElseThrow(),
        all.stream().map(TemperatureRange::hottest).max(byKelvin).orElseThrow());
  }

  /** The loop of the lowest fault of what is left of a pack, at its terminals. */
  FaultLoop lowest(Pack left, String name) {
    Pack aged = left.atBandEnd(BandEnd.HIGH).aged(age.value());
    PackState state = PackState.of(StateOfCharge.ofPercent(0), cells.coldest());
    Quantity<ElectricResistance> ohm =
        aged.resistance(state, Direction.DISCHARGE, polarised.value());
    Given<Quantity<ElectricPotential>> voltage =
        new Given<>(
            aged.openCircuitVoltage(state),
            left.basis(CellProperty.VOLTAGE),
            Source.commonPractice("empty and cold, at rest"));
    Basis basis = left.basis(CellProperty.RESISTANCE).and(age.basis()).and(polarised.basis());
    return FaultLoop.of(voltage).withArcVoltage(arc).with(name, new Given<>(ohm, basis, source()));
  }

  private Source source() {
    return Source.commonPractice(
        "empty, cold, aged, polarised after "
            + polarised.value()
            + ", one string missing if several");
  }
}
