package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.JOULE;

import java.io.Serializable;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Y capacitors between one pole and the chassis, of all devices together, and the energy that
 * somebody may touch.
 *
 * <p>The devices add up: check the vehicle, not each device. The whole pack voltage counts, since
 * the other pole may lie on the chassis. Source: ISO 6469-4:2015 cl. 5.2.3. Immutable and
 * thread-safe.
 *
 * @param total ≥ 0 F
 */
public record RailCapacitance(Quantity<ElectricCapacitance> total) implements Serializable {
  /**
   * Checks the field.
   *
   * @param total ≥ 0 F
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public RailCapacitance {
    Require.quantity("RailCapacitance.total", total, FARAD).nonNegative();
    total = Measure.from(total, Kind.CAPACITANCE);
  }

  /**
   * Of all devices on a pole.
   *
   * @param devices each ≥ 0 F
   * @return their sum
   * @throws org.wattwright.units.InvalidInputException if one is negative
   */
  public static RailCapacitance of(List<Quantity<ElectricCapacitance>> devices) {
    double sumF = 0;
    for (Quantity<ElectricCapacitance> each : devices) {
      sumF += Require.quantity("RailCapacitance.device", each, FARAD).nonNegative();
    }
    return new RailCapacitance(Kind.CAPACITANCE.ofSi(sumF));
  }

  /**
   * Energy at full pack voltage.
   *
   * @param pack highest voltage of the pack, ≥ 0 V
   * @return in J
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Energy> energy(Quantity<ElectricPotential> pack) {
    return StoredEnergy.WHOLE.in(total, pack);
  }

  /**
   * {@code isolation.touch-energy}: energy at full pack voltage against 0.2 J, which it must stay
   * below.
   *
   * @param pack highest voltage of the pack, ≥ 0 V
   * @return the check
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Check check(Quantity<ElectricPotential> pack) {
    CheckBuilder check =
        Check.named("isolation.touch-energy", "energy of the Y capacitors of a pole")
            .source(Source.standard("ISO 6469-4:2015", "cl. 5.2.3"))
            .safety();
    // The rule says less than: the limit itself does not pass.
    return Kind.ENERGY.siValueOf(energy(pack)) == StoredEnergy.LOW_ENERGY_J
        ? check.note("must be less than 0.2 J").holds(false)
        : check.atMost(
            Figure.of(energy(pack), JOULE), Figure.of(StoredEnergy.lowEnergyLimit(), JOULE));
  }
}
