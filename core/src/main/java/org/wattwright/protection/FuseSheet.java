package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Figure;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.Installation;
import org.wattwright.units.Kind;

/** Writes the current that a fuse carries in its air, and what the circuit asks of it. */
final class FuseSheet {
  private final Circuit circuit;
  private final Fuse fuse;
  private final FuseData.Derating derating;
  private final Worksheet.Recording sheet;

  FuseSheet(CircuitAssembly parts, FuseCase fuseCase) {
    circuit = parts.of().circuit();
    fuse = fuseCase.fuse();
    derating = fuse.data().derating();
    sheet = Worksheet.record("Fuse of " + circuit.name());
  }

  Worksheet write() {
    Figure rated = Figure.of(fuse.ratedCurrent(), AMPERE);
    step("I_n", "rated current of " + fuse.name()).gives(rated);
    AmbientDerating ambient = derating.ambient();
    if (ambient != null) {
      derated(rated, Figure.share(ambient.factorAt(air())));
    }
    sheet
        .step("I", "continuous current of the circuit")
        .gives(Figure.ofSi(circuit.continuousA(), AMPERE));
    return sheet.toWorksheet();
  }

  private Quantity<Temperature> air() {
    return circuit.installation().map(Installation::air).orElseThrow();
  }

  private StepBuilder step(String symbol, String meaning) {
    return sheet.step(symbol, meaning).basis(fuse.basis()).source(fuse.source());
  }

  private void derated(Figure rated, Figure ambient) {
    step("A_1", "share of it that the link carries in its air")
        .formula("A(T)")
        .with("T", Figure.of(air(), CELSIUS))
        .gives(ambient);
    double carriesA = Kind.CURRENT.siValueOf(fuse.continuousCurrentAt(air()).orElseThrow());
    Figure carries = Figure.ofSi(carriesA, AMPERE);
    step("I_c", "current that the link carries for any time")
        .formula("I_n·A_1·k_c·k_l")
        .with("I_n", rated)
        .with("A_1", ambient)
        .with("k_c", Figure.share(derating.cooling()))
        .with("k_l", Figure.share(derating.load()))
        .gives(carries);
    Double cyclic = derating.cyclic();
    if (cyclic != null && circuit.profile().isPresent()) {
      cyclic(carries, carriesA, cyclic);
    }
  }

  private void cyclic(Figure carries, double carriesA, double cyclic) {
    step("I_z", "RMS of a swinging load that the link bears")
        .formula("I_c·k_z")
        .with("I_c", carries)
        .with("k_z", Figure.share(cyclic))
        .gives(carriesA * cyclic, AMPERE);
    circuit
        .profile()
        .ifPresent(
            profile ->
                sheet
                    .step("I_rms", "RMS of the circuit's current")
                    .gives(Figure.of(profile.rms(), AMPERE)));
  }
}
