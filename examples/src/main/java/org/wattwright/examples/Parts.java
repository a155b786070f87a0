package org.wattwright.examples;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellBuilder;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.CurrentByTemperature;
import org.wattwright.battery.Dimensions;
import org.wattwright.battery.OpenCircuitCurve;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.charging.Charger;
import org.wattwright.charging.ChargerBuilder;
import org.wattwright.charging.DcDcConverter;
import org.wattwright.charging.EfficiencyByLoad;
import org.wattwright.check.Estimate;
import org.wattwright.examples.job.CellInput;
import org.wattwright.examples.job.DeviceInput;
import org.wattwright.examples.job.ModuleInput;
import org.wattwright.examples.job.StateGrid;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceBuilder;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** Makes the library's parts out of what a job states; what is wrong is reported with its line. */
final class Parts {
  private Parts() {}

  static BatteryModule module(ModuleInput input) {
    Cell cell = cell(input.cell());
    return input
        .origin()
        .locate(
            () ->
                BatteryModule.of(cell)
                    .name(input.name())
                    .series(input.series())
                    .parallel(input.parallel())
                    .interconnectResistance(input.interconnectResistance())
                    .mass(input.mass())
                    .dimensions(
                        Dimensions.of(
                            input.size().length(), input.size().width(), input.size().height()))
                    .price(input.price())
                    .build());
  }

  static Cell cell(CellInput input) {
    return input.origin().locate(() -> checkedCell(input));
  }

  private static Cell checkedCell(CellInput input) {
    CellBuilder builder =
        Cell.of(input.name(), input.chemistry())
            .capacity(input.capacity().present())
            .openCircuit(openCircuit(input.voltages().openCircuit()))
            .minimumVoltage(input.voltages().minimum())
            .maximumVoltage(input.voltages().maximum())
            .continuousDischargeCurrent(input.discharge().continuous())
            .continuousChargeCurrent(input.charge().continuous())
            .dischargeTemperatures(temperatures(input.discharge()))
            .chargeTemperatures(temperatures(input.charge()))
            .mass(input.mass());
    for (CellProperty property : CellProperty.values()) {
      builder.basis(property, input.basis());
    }
    builder.basis(CellProperty.CAPACITY, input.capacity().basis());
    addResistance(builder, input);
    addOptional(builder, input);
    return builder.build();
  }

  private static void addOptional(CellBuilder builder, CellInput input) {
    input
        .discharge()
        .pulse()
        .ifPresent(pulse -> builder.pulseDischargeCurrent(pulse.current(), pulse.duration()));
    input
        .charge()
        .pulse()
        .ifPresent(pulse -> builder.pulseChargeCurrent(pulse.current(), pulse.duration()));
    if (!input.charge().byTemperature().isEmpty()) {
      builder.chargeCurrentByTemperature(
          CurrentByTemperature.of(
              input.charge().byTemperature().stream()
                  .map(l -> new CurrentByTemperature.Point(l.temperature(), l.current()))
                  .toList()));
    }
    input
        .specificHeat()
        .ifPresentOrElse(
            builder::specificHeat,
            () -> builder.specificHeat(CellEstimates.specificHeat(input.chemistry())));
  }

  private static void addResistance(CellBuilder builder, CellInput input) {
    CellInput.Resistances stated = input.resistances();
    if (stated.discharge().isEmpty()) {
      addEstimatedResistance(builder, input);
    } else {
      builder.resistance(resistance(stated.discharge().get()));
      builder.basis(CellProperty.RESISTANCE, stated.basis());
    }
    stated.charge().ifPresent(grid -> builder.chargeResistance(resistance(grid)));
    stated
        .ohmic()
        .ifPresent(
            ohmic -> {
              builder.ohmicResistance(ohmic);
              builder.basis(CellProperty.OHMIC_RESISTANCE, stated.basis());
            });
  }

  /** By chemistry and rated capacity, then by age and temperature. */
  private static void addEstimatedResistance(CellBuilder builder, CellInput input) {
    CellInput.Capacity capacity = input.capacity();
    Quantity<ElectricCharge> rated = capacity.rated().orElse(capacity.present());
    Estimate<ElectricResistance> whenNew = CellEstimates.resistance(input.chemistry(), rated);
    double factor =
        resistanceFactor(Kind.CHARGE.siValueOf(capacity.present()) / Kind.CHARGE.siValueOf(rated));
    Estimate<ElectricResistance> aged =
        Estimate.of(
            whenNew.name(),
            Kind.RESISTANCE.ofSi(Kind.RESISTANCE.siValueOf(whenNew.typical()) * factor),
            Kind.RESISTANCE,
            whenNew.band(),
            whenNew.source());
    builder.resistance(CellEstimates.resistanceOverTemperature(aged.typical()), aged.band());
    if (input.resistances().ohmic().isEmpty()) {
      builder.ohmicResistance(CellEstimates.ohmicResistance(aged));
    }
  }

  /** Resistance grows in step with the capacity lost; at 80 % it has doubled. Common practice. */
  static double resistanceFactor(double capacityFactor) {
    Ageing end = Ageing.END_OF_TRACTION_LIFE;
    double lostShareOfLife = (1 - capacityFactor) / (1 - end.capacityFactor());
    return 1 + lostShareOfLife * (end.resistanceFactor() - 1);
  }

  private static TemperatureRange temperatures(CellInput.Currents currents) {
    return TemperatureRange.between(currents.coldest(), currents.hottest());
  }

  // The arrays are made for the call and only read.
  @SuppressWarnings({"unchecked", "rawtypes"})
  private static OpenCircuitCurve openCircuit(StateGrid<ElectricPotential> grid) {
    OpenCircuitCurve.Builder builder =
        OpenCircuitCurve.at(grid.temperatures().toArray(new Quantity[0]));
    for (StateGrid.Row<ElectricPotential> row : grid.rows()) {
      builder.row(row.stateOfCharge(), row.values().toArray(new Quantity[0]));
    }
    return builder.build();
  }

  // The arrays are made for the call and only read.
  @SuppressWarnings({"unchecked", "rawtypes"})
  private static ResistanceTable resistance(StateGrid<ElectricResistance> grid) {
    ResistanceTable.Builder builder =
        ResistanceTable.at(grid.temperatures().toArray(new Quantity[0]));
    for (StateGrid.Row<ElectricResistance> row : grid.rows()) {
      builder.row(row.stateOfCharge(), row.values().toArray(new Quantity[0]));
    }
    return builder.build();
  }

  static Device device(DeviceInput input) {
    return input.origin().locate(() -> checkedDevice(input));
  }

  private static Device checkedDevice(DeviceInput input) {
    if (input.role() == DeviceRole.CHARGER
        && input.inputCurrent().isPresent()
        && input.efficiency().isPresent()
        && input.current().isPresent()) {
      return charger(input);
    }
    DeviceBuilder builder =
        Device.of(input.name(), input.role(), window(input.window()))
            .maximumPower(input.power().peak().orElse(input.power().continuous()))
            .mass(input.mass());
    input.current().ifPresent(builder::maximumCurrent);
    input.capacitance().ifPresent(builder::capacitance);
    return builder.build();
  }

  /** One object for voltage windows, circuits and charges; its power is that into the pack. */
  private static Charger charger(DeviceInput input) {
    ChargerBuilder builder =
        Charger.of(input.name(), window(input.window()))
            .maximumPower(input.power().continuous())
            .maximumCurrent(input.current().orElseThrow())
            .maximumInputCurrent(input.inputCurrent().orElseThrow())
            .efficiency(EfficiencyByLoad.constant(input.efficiency().orElseThrow()))
            .mass(input.mass());
    input.capacitance().ifPresent(builder::capacitance);
    return builder.build();
  }

  /** Its power in {@code devices.csv} is that from the traction bus; the loads get less. */
  static DcDcConverter converter(DeviceInput input, Quantity<ElectricPotential> output) {
    double efficiency = input.efficiency().orElseThrow();
    return DcDcConverter.of(input.name(), window(input.window()))
        .outputVoltage(output)
        .maximumOutputPower(input.power().continuous().multiply(efficiency))
        .efficiency(EfficiencyByLoad.constant(efficiency))
        .mass(input.mass())
        .build();
  }

  private static VoltageWindow window(DeviceInput.Window input) {
    VoltageWindow window =
        VoltageWindow.operating(
                VoltageRange.between(input.operatingMinimum(), input.operatingMaximum()))
            .absoluteMaximum(input.absoluteMaximum());
    if (input.fullMinimum().isEmpty() && input.fullMaximum().isEmpty()) {
      return window;
    }
    return window.fullPerformance(
        VoltageRange.between(
            input.fullMinimum().orElse(input.operatingMinimum()),
            input.fullMaximum().orElse(input.operatingMaximum())));
  }
}
