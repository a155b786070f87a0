package org.wattwright.battery;

import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.linear;
import static org.wattwright.battery.Fixtures.string;
import static org.wattwright.battery.Fixtures.unlimited;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Packs, strings in parallel, strings being connected and weak cells against circuit theory. */
class CircuitReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("battery");

  /** Worked example C. */
  private static final Pack TWO = Fixtures.pack(string(400, 0.10), string(396, 0.12));

  /** Worked example D. */
  private static final Pack THREE =
      Fixtures.pack(string(352, 0.080), string(350, 0.100), string(349, 0.090));

  static Stream<ReferenceRow> packs() {
    return ReferenceRows.read("/battery/series-parallel.csv").stream();
  }

  static Stream<ReferenceRow> parallel() {
    return ReferenceRows.read("/battery/parallel-strings.csv").stream();
  }

  static Stream<ReferenceRow> unequal() {
    return ReferenceRows.read("/battery/unequal-strings.csv").stream();
  }

  static Stream<ReferenceRow> weak() {
    return ReferenceRows.read("/battery/weak-cell.csv").stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("packs")
  void packAgrees(ReferenceRow row) {
    VALIDATION.computed(row, pack(row.id()));
  }

  private static double pack(String id) {
    Pack pack = packOfExampleB(96, 2, 97 * 0.03, 3.2);
    return switch (id) {
      case "PAK-001" -> Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(HALF));
      case "PAK-002" -> Kind.VOLTAGE.siValueOf(pack.maximumVoltage());
      case "PAK-003" -> Kind.VOLTAGE.siValueOf(pack.minimumVoltage());
      case "PAK-004" -> Kind.CHARGE.siValueOf(pack.capacity()) / 3600;
      case "PAK-005" -> Kind.ENERGY.siValueOf(pack.nominalEnergy(celsius(25))) / 3.6e6;
      case "PAK-006" -> Kind.MASS.siValueOf(pack.mass());
      case "PAK-007" ->
          Kind.ENERGY.siValueOf(pack.nominalEnergy(celsius(25)))
              / 3600
              / Kind.MASS.siValueOf(pack.mass());
      case "PAK-008" -> milliohm(packOfExampleB(96, 1, 97 * 0.03, 3.2));
      case "PAK-009" -> milliohm(pack);
      case "PAK-010" ->
          Kind.VOLTAGE.siValueOf(pack.openCircuitVoltage(HALF))
              - Kind.VOLTAGE.siValueOf(pack.terminalVoltage(HALF, amperes(300)));
      case "PAK-011" -> Kind.POWER.siValueOf(pack.heat(HALF, amperes(300)).irreversible());
      case "PAK-012" -> 300 / (Kind.CHARGE.siValueOf(pack.capacity()) / 3600);
      case "PAK-013" ->
          Kind.VOLTAGE.siValueOf(
              packOfExampleB(96, 2, 97 * 0.03, 2.9).terminalVoltage(HALF, amperes(300)));
      case "PAK-016" -> milliohm(packOfExampleB(48, 4, 0, 3.2));
      case "PAK-017" -> lossAt50kW(96, 2) / lossAt50kW(48, 4);
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double milliohm(Pack pack) {
    return 1000 * Kind.RESISTANCE.siValueOf(pack.resistance(HALF, Direction.DISCHARGE));
  }

  private static double lossAt50kW(int series, int parallel) {
    Pack pack = packOfExampleB(series, parallel, 0, 3.2);
    return Kind.POWER.siValueOf(pack.heat(HALF, amperes(50000 / (series * 3.2))).irreversible());
  }

  private static Pack packOfExampleB(
      int series, int parallel, double jointsMilliohm, double cellV) {
    Cell cell =
        unlimited(linear(cellV, 0), ResistanceTable.constant(milliohms(0.35)))
            .capacity(ampereHours(105))
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .mass(kilograms(1.98))
            .build();
    SeriesString string =
        SeriesString.of("string")
            .group("one place", BatteryModule.of(cell).build(), series)
            .link(milliohms(jointsMilliohm))
            .build();
    return Pack.of(java.util.Collections.nCopies(parallel, string));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("parallel")
  void sharingAgrees(ReferenceRow row) {
    VALIDATION.computed(row, parallel(row.id()));
  }

  private static double parallel(String id) {
    return switch (id) {
      case "PAR-001" -> nodeV(TWO, 100);
      case "PAR-002" -> stringA(TWO, 100, 0);
      case "PAR-003" -> stringA(TWO, 100, 1);
      case "PAR-004" -> stringA(TWO, 0, 0);
      case "PAR-005" -> nodeV(TWO, 0);
      case "PAR-006" -> Kind.POWER.siValueOf(TWO.stringCurrents(HALF, amperes(0)).heat());
      case "PAR-007" -> loadWithoutCurrentInSecond();
      case "PAR-008" -> Kind.RESISTANCE.siValueOf(TWO.resistance(HALF, Direction.DISCHARGE));
      case "PAR-009" -> stringA(TWO, -60, 0);
      case "PAR-010" -> stringA(TWO, -60, 1);
      case "PAR-011" -> nodeV(THREE, 200);
      case "PAR-012" -> stringA(THREE, 200, 0);
      case "PAR-013" -> stringA(THREE, 200, 1);
      case "PAR-014" -> stringA(THREE, 200, 2);
      case "PAR-015" -> stringA(THREE, 0, 0);
      case "PAR-016" -> stringA(THREE, 0, 2);
      case "PAR-017" -> stringA(Fixtures.pack(string(350, 0.06), string(350, 0.09)), 150, 0);
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double nodeV(Pack pack, double loadA) {
    return Kind.VOLTAGE.siValueOf(pack.stringCurrents(HALF, amperes(loadA)).voltage());
  }

  private static double stringA(Pack pack, double loadA, int string) {
    return Kind.CURRENT.siValueOf(pack.stringCurrents(HALF, amperes(loadA)).currents().get(string));
  }

  /** The second string's current is straight between two loads that leave all directions as is. */
  private static double loadWithoutCurrentInSecond() {
    double at10 = stringA(TWO, 10, 1);
    double at30 = stringA(TWO, 30, 1);
    return 10 - at10 * 20 / (at30 - at10);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("unequal")
  void equalisationAgrees(ReferenceRow row) {
    VALIDATION.computed(row, unequal(row.id()));
  }

  private static double unequal(String id) {
    Equalisation join = exampleE(1e6);
    return switch (id) {
      case "EQU-001" -> Kind.CURRENT.siValueOf(join.initialCurrent());
      case "EQU-002" -> Kind.TIME.siValueOf(join.timeConstant().orElseThrow());
      case "EQU-003" -> Kind.CHARGE.siValueOf(join.chargeMoved()) / 3600;
      case "EQU-004" -> join.finalOfFirst().fraction();
      case "EQU-005" -> join.finalOfSecond().fraction();
      case "EQU-006" -> Kind.ENERGY.siValueOf(join.heat()) / 3600;
      case "EQU-007" -> Kind.TIME.siValueOf(join.timeUntilBelow(amperes(10)));
      case "EQU-008" -> Kind.VOLTAGE.siValueOf(exampleE(20).admissibleVoltageDifference());
      case "EQU-009" -> exampleE(20).admissibleStateOfCharge().fraction() - 0.6;
      default -> throw new IllegalArgumentException(id);
    };
  }

  /** 0.15 Ω in all: 0.06 Ω a string and 0.03 Ω of leads. */
  private static Equalisation exampleE(double limitA) {
    Cell cell =
        unlimited(linear(345, 60), ResistanceTable.constant(ohms(0.06)))
            .continuousChargeCurrent(amperes(limitA))
            .build();
    return Equalisation.between(
            string(cell),
            PackState.of(percentCharge(80), celsius(25)),
            string(cell),
            PackState.of(percentCharge(60), celsius(25)))
        .withLeadResistance(ohms(0.03));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("weak")
  void weakCellAgrees(ReferenceRow row) {
    VALIDATION.computed(row, weak(row.id()));
  }

  private static double weak(String id) {
    SeriesBalance full = balance(List.of(100, 96, 92, 98), List.of(100, 100, 100, 100));
    SeriesBalance mixed = balance(List.of(100, 96, 92, 98), List.of(50, 45, 55, 52));
    return switch (id) {
      case "WEK-001" -> ampereHour(full.drawable());
      case "WEK-002" -> ampereHour(mixed.drawable());
      case "WEK-003" -> ampereHour(mixed.insertable());
      case "WEK-004" -> ampereHour(mixed.usable());
      case "WEK-005" -> ampereHour(mixed.usableWhenTopBalanced());
      case "WEK-006" ->
          ampereHour(balance(List.of(105, 100, 105), List.of(100, 100, 100)).drawable());
      case "WEK-007" -> stringsOf(List.of(30, 35, 35));
      case "WEK-008" -> stringsOf(List.of(30, 30, 30));
      case "WEK-009" -> stringWithWeakCell();
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static double ampereHour(Quantity<ElectricCharge> charge) {
    return Kind.CHARGE.siValueOf(charge) / 3600;
  }

  private static SeriesBalance balance(List<Integer> capacities, List<Integer> percents) {
    List<SeriesBalance.Member> members = new java.util.ArrayList<>();
    for (int i = 0; i < capacities.size(); i++) {
      members.add(
          new SeriesBalance.Member(
              "cell " + (i + 1),
              ampereHours(capacities.get(i)),
              StateOfCharge.ofPercent(percents.get(i))));
    }
    return new SeriesBalance(members);
  }

  /** Strings of two cells of 35 A·h and one as given; capacity of the pack. */
  private static double stringsOf(List<Integer> weakest) {
    BatteryModule good = BatteryModule.of(capacity(35)).build();
    List<SeriesString> strings =
        weakest.stream()
            .map(
                ampereHours ->
                    SeriesString.of("string")
                        .group("bay", good, 2)
                        .group("bay", BatteryModule.of(capacity(ampereHours)).build(), 1)
                        .build())
            .toList();
    return ampereHour(Pack.of(strings).capacity());
  }

  private static Cell capacity(double ampereHours) {
    return Fixtures.source(3.3, 0.001).capacity(ampereHours(ampereHours)).build();
  }

  private static double stringWithWeakCell() {
    SeriesString string =
        SeriesString.of("string")
            .group("bay", BatteryModule.of(Fixtures.source(3.3, 0.35e-3).build()).build(), 95)
            .group("bay", BatteryModule.of(Fixtures.source(3.3, 1.4e-3).build()).build(), 1)
            .build();
    return milliohm(Fixtures.pack(string));
  }
}
