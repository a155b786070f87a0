package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.litresPerMinute;
import static org.wattwright.units.Measures.megapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.seconds;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class VacuumReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/vacuum.csv").stream();
  }

  /** The exchange of volumes that the rows are of: the air side is as large at rest. */
  private static BrakeServo servo(double airSideL, double heldL) {
    return BrakeServo.of(litres(airSideL), litres(heldL)).restVolume(litres(airSideL));
  }

  private static VacuumSystem system(ReferenceRow row) {
    return VacuumSystem.of(servo(row.givenNumber("V_s"), row.givenNumber("V_tot")))
        .ambient(row.given("p_atm", Kind.PRESSURE));
  }

  private static VacuumReserve reserve(int stops, double ambientKpa, double limitKpa) {
    return VacuumReserve.of(stops, kilopascals(ambientKpa - limitKpa));
  }

  private static Quantity<Time> time(double endKpa, double fromKpa) {
    VacuumPump pump = VacuumPump.ofSpeed("pump", litresPerMinute(30), kilopascals(endKpa));
    return pump.evacuationTime(litres(5), new PressureFall(kilopascals(fromKpa), kilopascals(30)))
        .orElseThrow();
  }

  private static Check check(String code) {
    VacuumSystem system =
        VacuumSystem.of(servo(0.5, 2.5))
            .pump(VacuumPump.ofSpeed("pump", litresPerMinute(30), kilopascals(12)))
            .warnsAt(VacuumLevel.absolute(kilopascals(45)))
            .pumpStopsAt(VacuumLevel.absolute(kilopascals(30)));
    return system.checks(VacuumReserve.of(8, kilopascals(40))).stream()
        .filter(c -> c.code().equals("installation." + code))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    Quantity<Pressure> air = kilopascals(101.325);
    switch (row.id()) {
      case "VAC-001", "VAC-002", "VAC-003", "VAC-004", "VAC-005", "VAC-006" ->
          VALIDATION.computed(
              row,
              system(row).pressureAfter((int) row.givenNumber("n"), row.given("p0", Kind.PRESSURE)),
              Kind.PRESSURE);
      case "VAC-007", "VAC-008", "VAC-009" ->
          VALIDATION.computed(
              row, system(row).stops(row.given("p0", Kind.PRESSURE), reserve(1, 101.325, 60)));
      case "VAC-010" ->
          VALIDATION.computed(
              row,
              VacuumSystem.of(servo(0.5, 0.5))
                  .volumeFor(kilopascals(30), reserve(8, 101.325, 60))
                  .orElseThrow(),
              Kind.VOLUME);
      case "VAC-011" ->
          VALIDATION.computed(
              row,
              VacuumSystem.of(servo(0.5, 2.5))
                  .reservoirFor(kilopascals(30), reserve(8, 101.325, 60))
                  .orElseThrow(),
              Kind.VOLUME);
      case "VAC-012" -> VALIDATION.computed(row, time(0, 101.325), Kind.TIME);
      case "VAC-013" -> VALIDATION.computed(row, time(12, 101.325), Kind.TIME);
      case "VAC-014" -> VALIDATION.computed(row, time(0, 37.1325), Kind.TIME);
      case "VAC-015" ->
          VALIDATION.computed(
              row,
              VacuumPump.speedNeeded(
                  litres(5), new PressureFall(air, kilopascals(30)), seconds(20)),
              Kind.VOLUME_FLOW);
      case "VAC-016" ->
          VALIDATION.computed(
              row,
              servo(0.5, 2).diaphragms(millimetres(228.6), 1).force(kilopascals(65)).orElseThrow(),
              Kind.FORCE);
      case "VAC-017" ->
          VALIDATION.computed(
              row,
              new PedalGear(4, millimetres(22.22))
                  .linePressure(
                      newtons(200),
                      servo(0.5, 2).diaphragms(millimetres(228.6), 1),
                      // the row's rounded force of 2667.8 N as a difference of pressure
                      kilopascals(2667.8 / (Math.PI / 4 * 228.6 * 228.6) * 1000))
                  .orElseThrow(),
              Kind.PRESSURE);
      case "VAC-018" ->
          VALIDATION.computed(
              row, new PedalGear(4, millimetres(22.22)).linePressure(newtons(500)), Kind.PRESSURE);
      case "VAC-019" ->
          VALIDATION.computed(row, AirPressure.atAltitude(metres(1500)), Kind.PRESSURE);
      case "VAC-020" ->
          VALIDATION.computed(
              row,
              VacuumSystem.of(servo(0.5, 2)).altitude(metres(1500)).differenceAt(kilopascals(30)),
              Kind.PRESSURE);
      case "VAC-021" ->
          VALIDATION.transcribed(row, VacuumReserve.storedEnergyTest(kilopascals(40)).stops());
      case "VAC-022" ->
          VALIDATION.transcribed(row, check("vacuum-warning").limit().orElseThrow().count());
      case "VAC-023" -> VALIDATION.notCovered(row, "the reserve counts those before it");
      case "VAC-024" ->
          VALIDATION.transcribed(row, PedalGear.Category.M1.highestPedalForce(), Kind.FORCE);
      case "VAC-025" ->
          VALIDATION.transcribed(row, PedalGear.Category.OTHER.highestPedalForce(), Kind.FORCE);
      case "VAC-026" ->
          VALIDATION.transcribed(
              row,
              check("vacuum-build-up").limit().map(f -> f.quantity(Kind.TIME)).orElseThrow(),
              Kind.TIME);
      default -> throw new AssertionError(row);
    }
  }

  @Test
  void deadServoIsCheckedAtTheForceOfTheCategory() {
    Check check =
        new PedalGear(4, millimetres(22.22))
            .checkServoDead(
                PedalGear.Category.M1, Given.measured(megapascals(5.157651635), "trial"));
    assertThat(check.actual()).map(Figure::toString).contains("5.158 MPa");
  }
}
