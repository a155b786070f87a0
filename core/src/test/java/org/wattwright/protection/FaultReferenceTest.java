package org.wattwright.protection;

import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.Pack;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Worked fault currents. */
class FaultReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("protection");

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/protection/fault-current.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void faultAgrees(ReferenceRow row) {
    VALIDATION.computed(row, ours(row));
  }

  private static double ours(ReferenceRow row) {
    return switch (row.id()) {
      case "FLT-001", "FLT-002" -> Kind.CURRENT.siValueOf(loop(row).current().prospective());
      case "FLT-003" -> multipleOfRating(row);
      case "FLT-004" ->
          Kind.TIME.siValueOf(
              FaultCurrent.of(
                      volts(1), milliohms(row.givenNumber("R")), row.given("L", Kind.INDUCTANCE))
                  .timeConstant());
      case "FLT-005" -> risePerMicrosecond(row);
      case "FLT-006" -> Kind.CURRENT.siValueOf(loop(row).current().at(time(row)));
      case "FLT-007", "FLT-011", "FLT-012" ->
          Kind.JOULE_INTEGRAL.siValueOf(loop(row).current().jouleIntegralUntil(time(row)));
      case "FLT-008" -> Kind.TIME.siValueOf(meltingTime(row));
      case "FLT-009" -> Kind.CURRENT.siValueOf(loop(row).current().at(meltingTime(row)));
      case "FLT-010" -> magneticEnergyJ(row);
      case "FLT-013" -> intoBusA(strings(row));
      case "FLT-014" ->
          Kind.CURRENT.siValueOf(
              FaultSource.of(strings(row))
                  .intoString(0)
                  .highest(FaultPath.EMPTY)
                  .orElseThrow()
                  .current()
                  .prospective());
      default -> throw new AssertionError("no answer for " + row);
    };
  }

  /** Without a stated resistance the short-time form counts: next to none. */
  private static FaultLoop loop(ReferenceRow row) {
    FaultLoop loop = FaultLoop.of(row.given("OCV", Kind.VOLTAGE));
    boolean stated = false;
    for (String key : row.conditions().keySet()) {
      if (List.of("pack", "cable", "contacts", "cable and contacts").contains(prefix(key))) {
        loop = loop.with(prefix(key), milliohms(number(key)));
        stated = true;
      }
    }
    if (!stated) {
      loop = loop.with("next to nothing", Measures.microohms(0.01));
    }
    return row.has("L") ? loop.withInductance("loop", row.given("L", Kind.INDUCTANCE)) : loop;
  }

  /** The words before the number of a bare condition such as {@code pack 60.0 mohm}. */
  private static String prefix(String key) {
    return key.replaceAll("\\s[\\d.]+ mohm$", "");
  }

  private static double number(String key) {
    return Double.parseDouble(key.substring(prefix(key).length()).replace("mohm", "").strip());
  }

  private static Quantity<Time> time(ReferenceRow row) {
    return row.given("t", Kind.TIME);
  }

  private static Quantity<Time> meltingTime(ReferenceRow row) {
    return loop(row).current().timeToReach(ampereSquaredSeconds(row.givenNumber("pre-arcing I2t")));
  }

  private static double multipleOfRating(ReferenceRow row) {
    double lowestA =
        Kind.CURRENT.siValueOf(
            FaultLoop.of(volts(288))
                .with("pack", milliohms(180))
                .with("cable and contacts", milliohms(8))
                .current()
                .prospective());
    return lowestA / row.givenNumber("In");
  }

  private static double risePerMicrosecond(ReferenceRow row) {
    double shortS = 1e-10;
    FaultCurrent fault =
        FaultCurrent.of(
            row.given("OCV", Kind.VOLTAGE), milliohms(64.1), row.given("L", Kind.INDUCTANCE));
    return Kind.CURRENT.siValueOf(fault.at(seconds(shortS))) / (shortS * 1e6);
  }

  private static double magneticEnergyJ(ReferenceRow row) {
    double currentA = row.givenNumber("I");
    return Kind.ENERGY.siValueOf(
        FaultCurrent.of(volts(currentA), Measures.ohms(1), row.given("L", Kind.INDUCTANCE))
            .magneticEnergy());
  }

  private static Pack strings(ReferenceRow row) {
    String each =
        row.conditions().keySet().stream()
            .filter(k -> k.startsWith("each"))
            .findFirst()
            .orElseThrow();
    String[] words = each.replace(",", "").split(" ");
    double voltageV = Double.parseDouble(words[1]);
    return FaultParts.pack(
        3,
        FaultParts.stringCell()
            .openCircuit(FaultParts.curve(voltageV - 1, voltageV))
            .maximumVoltage(volts(voltageV))
            .ohmicResistance(milliohms(Double.parseDouble(words[3]))));
  }

  private static double intoBusA(Pack strings) {
    return Kind.CURRENT.siValueOf(
        FaultSource.of(strings).highest(FaultPath.EMPTY).orElseThrow().current().prospective());
  }
}
