package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.HENRY;
import static org.wattwright.units.WorkshopUnits.MICROFARAD;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.voltage.Device;

/** Collects the data of a {@link Precharge}. */
public final class PrechargeBuilder {
  /** Usual closing criterion, bus over pack voltage; common practice, 0.90 to 0.98 are used. */
  private static final double USUAL_CLOSING_SHARE = 0.95;

  final double supplyV;
  double capacitanceF;
  Given<Double> capacitanceTolerance = new Given<>(0.0, Basis.DATA_SHEET, Source.AS_GIVEN);
  double closingShare = USUAL_CLOSING_SHARE;
  int shots = 1;
  Basis basis = Basis.DATA_SHEET;
  @Nullable Double supplyOhm;
  double inductanceH;
  @Nullable Double wantedS;
  @Nullable Double timeOutS;
  @Nullable Double shotPeriodS;
  @Nullable Contactor contactor;
  final List<PrechargeLoad> loads = new ArrayList<>();
  final List<String> missing = new ArrayList<>();

  PrechargeBuilder(Quantity<ElectricPotential> supply) {
    supplyV = Require.quantity("Precharge.supply", supply, VOLT).positive();
  }

  /**
   * Adds a capacitance on the bus; all lie in parallel.
   *
   * @param value ≥ 0 µF
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public PrechargeBuilder capacitance(Quantity<ElectricCapacitance> value) {
    capacitanceF += Require.quantity("Precharge.capacitance", value, MICROFARAD).nonNegative();
    return this;
  }

  /**
   * Adds a device's capacitance; if it is not known, no time and no energy can be checked.
   *
   * @param value the device
   * @return this builder
   */
  public PrechargeBuilder device(Device value) {
    value.capacitance().ifPresentOrElse(this::capacitance, () -> missing.add(field(value)));
    return this;
  }

  private static String field(Device device) {
    return device.name() + ".capacitance";
  }

  /**
   * How far the capacitances may lie from what is stated; 0 unless told.
   *
   * @param share 0 to 0.5, such as 0.2 for ±20 %
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public PrechargeBuilder capacitanceTolerance(double share) {
    return capacitanceTolerance(new Given<>(share, Basis.DATA_SHEET, Source.AS_GIVEN));
  }

  /**
   * How far the capacitances may lie from what is stated, with what that rests on; an estimate
   * makes the checks that lean on it estimated.
   *
   * @param share 0 to 0.5, such as 0.2 for ±20 %
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public PrechargeBuilder capacitanceTolerance(Given<Double> share) {
    capacitanceTolerance = Objects.requireNonNull(share, "capacitanceTolerance");
    Require.between("Precharge.capacitanceTolerance", share.value(), 0, 0.5);
    return this;
  }

  /**
   * Resistance of pack, cables and contacts in the main path.
   *
   * @param value ≥ 0 mΩ, the lowest that it can be
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public PrechargeBuilder supplyResistance(Quantity<ElectricResistance> value) {
    supplyOhm = Require.quantity("Precharge.supplyResistance", value, MILLIOHM).nonNegative();
    return this;
  }

  /**
   * Inductance of the main loop; 0, the safe side, unless told.
   *
   * @param value ≥ 0 µH, the lowest that it can be
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public PrechargeBuilder loopInductance(Quantity<ElectricInductance> value) {
    inductanceH = Require.quantity("Precharge.loopInductance", value, HENRY).nonNegative();
    return this;
  }

  /**
   * Adds a load that runs meanwhile.
   *
   * @param value the load
   * @return this builder
   */
  public PrechargeBuilder load(PrechargeLoad value) {
    loads.add(Objects.requireNonNull(value, "load"));
    return this;
  }

  /**
   * The contactor that closes at the end; its make limit bounds the voltage that may be missing.
   *
   * @param value the contactor
   * @return this builder
   */
  public PrechargeBuilder contactor(Contactor value) {
    contactor = Objects.requireNonNull(value, "contactor");
    return this;
  }

  /**
   * Share of the supply voltage from which on the control may close; 0.95 unless told (common
   * practice). The stricter of this and the make limit counts.
   *
   * @param share 0.5 to 0.999
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public PrechargeBuilder closingShare(double share) {
    closingShare = Require.between("Precharge.closingShare", share, 0.5, 0.999);
    return this;
  }

  /**
   * Longest time that a pre-charge may take.
   *
   * @param value &gt; 0 s
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public PrechargeBuilder within(Quantity<Time> value) {
    wantedS = Require.quantity("Precharge.within", value, SECOND).positive();
    return this;
  }

  /**
   * Time after which the control gives up and opens the pre-charge branch.
   *
   * @param value &gt; 0 s
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public PrechargeBuilder timeOut(Quantity<Time> value) {
    timeOutS = Require.quantity("Precharge.timeOut", value, SECOND).positive();
    return this;
  }

  /**
   * How often it may be repeated at worst.
   *
   * @param count ≥ 1
   * @param period in which that many fall, &gt; 0 s
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public PrechargeBuilder repeats(int count, Quantity<Time> period) {
    shots = Require.positiveCount("Precharge.repeats", count);
    shotPeriodS = Require.quantity("Precharge.repeats.period", period, SECOND).positive();
    return this;
  }

  /**
   * What the inputs rest on; data sheet unless told.
   *
   * @param value the weakest basis of all
   * @return this builder
   */
  public PrechargeBuilder basis(Basis value) {
    basis = Objects.requireNonNull(value, "basis");
    return this;
  }

  /**
   * The pre-charge.
   *
   * @return an immutable pre-charge
   */
  public Precharge build() {
    return new Precharge(this);
  }
}
