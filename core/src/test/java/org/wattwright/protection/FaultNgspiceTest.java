package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.henries;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.battery.SeriesString;
import org.wattwright.testing.Ngspice;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Faults against a general circuit simulator. */
@Tag("ngspice")
class FaultNgspiceTest {
  /** The decks step finely at 1e-7 a step; the integral is that of trapezoids. */
  private static final double TRANSIENT_PERCENT = 0.01;

  private static Map<String, Double> transientOf(String circuit, double endS)
      throws IOException, InterruptedException {
    String control =
        ".options reltol=1e-7 abstol=1e-9 vntol=1e-9 method=gear%n"
            + ".tran %.9g %.9g 0 %.9g uic%n"
            + ".measure tran last FIND i(Vm) AT=%.9g%n"
            + ".measure tran peak MAX i(Vm)%n"
            + ".measure tran joule INTEG par('i(Vm)*i(Vm)')%n.end%n";
    double stepS = endS / 20_000;
    return Ngspice.run(
        circuit + String.format(Locale.ROOT, control, stepS, endS, stepS, endS * 0.9999));
  }

  @ParameterizedTest
  @CsvSource({
    "403.2, 0.0641, 20e-6, 50e-6",
    "403.2, 0.0641, 20e-6, 1e-3",
    "288, 0.188, 200e-6, 0.05",
    "120, 0.02, 1e-6, 2e-5"
  })
  void faultRisesAsTheCircuitDoes(double voltageV, double ohm, double henry, double endS)
      throws IOException, InterruptedException {
    String deck =
        String.format(
            Locale.ROOT,
            "fault%nV1 a 0 DC %.9g%nR1 a b %.9g%nL1 b c %.9g IC=0%nVm c 0 DC 0%n",
            voltageV,
            ohm,
            henry);
    Map<String, Double> circuit = transientOf(deck, endS);
    FaultCurrent fault = FaultParts.fault(voltageV, ohm, henry);
    assertThat(Kind.CURRENT.siValueOf(fault.at(seconds(endS * 0.9999))))
        .isCloseTo(circuit.get("last"), withPercentage(TRANSIENT_PERCENT));
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(fault.jouleIntegralUntil(seconds(endS))))
        .isCloseTo(circuit.get("joule"), withPercentage(TRANSIENT_PERCENT));
  }

  @ParameterizedTest
  @CsvSource({
    "400, 0.01, 1e-6, 1e-3, 2e-4",
    "400, 0.2, 1e-6, 1e-3, 1e-3",
    "400, 0.063245553203367588, 1e-6, 1e-3, 5e-4",
    "400, 0.5, 1e-7, 5e-4, 2e-4",
    "120, 0.03, 2e-6, 3e-3, 1e-5"
  })
  void capacitorEmptiesAsTheCircuitDoes(
      double voltageV, double ohm, double henry, double farad, double endS)
      throws IOException, InterruptedException {
    String deck =
        String.format(
            Locale.ROOT,
            "capacitor%nC1 a 0 %.17g IC=%.9g%nR1 a b %.17g%nL1 b c %.17g IC=0%nVm c 0 DC 0%n",
            farad,
            voltageV,
            ohm,
            henry);
    Map<String, Double> circuit = transientOf(deck, endS);
    CapacitorDischarge discharge = discharge(voltageV, ohm, henry, farad);
    double scaleA = circuit.get("peak");
    assertThat(Kind.CURRENT.siValueOf(discharge.at(seconds(endS * 0.9999))))
        .isCloseTo(circuit.get("last"), within(scaleA * 2e-4));
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(discharge.jouleIntegralUntil(seconds(endS))))
        .isCloseTo(circuit.get("joule"), withPercentage(0.05));
    if (endS > Kind.TIME.siValueOf(discharge.timeOfPeak())) {
      assertThat(Kind.CURRENT.siValueOf(discharge.peak()))
          .isCloseTo(scaleA, withPercentage(TRANSIENT_PERCENT));
    }
  }

  private static CapacitorDischarge discharge(
      double voltageV, double ohm, double henry, double farad) {
    return CapacitorDischarge.of("inverter", farads(farad), volts(voltageV))
        .through(ohms(ohm), henries(henry));
  }

  @Test
  void twoStringsFeedAFaultInsideAThird() throws IOException, InterruptedException {
    String deck =
        "strings\nV1 a 0 DC 350\nR1 a bus 0.15\nV2 b 0 DC 360\nR2 b bus 0.12\n"
            + "Rc bus c 0.005\nVm c 0 DC 0\n.control\nset numdgt=12\nop\nprint i(vm)\n.endc\n.end\n";
    Map<String, Double> circuit = Ngspice.run(deck);
    Pack pack = Pack.of(List.of(string(300, 0.1), string(350, 0.15), string(360, 0.12)));
    Pack feeding = FaultSource.of(pack).intoString(0).pack();
    PackState full = PackState.of(StateOfCharge.FULL, celsius(25));
    FaultLoop loop =
        FaultLoop.of(feeding.openCircuitVoltage(full))
            .with("strings", feeding.ohmicResistance().orElseThrow())
            .with("cable", milliohms(5));
    assertThat(Kind.CURRENT.siValueOf(loop.current().prospective()))
        .isCloseTo(circuit.get("i(vm)"), withPercentage(1e-4));
  }

  private static SeriesString string(double sourceV, double ohm) {
    return SeriesString.of(
        BatteryModule.of(
                FaultParts.stringCell()
                    .openCircuit(FaultParts.curve(sourceV - 1e-9, sourceV))
                    .resistance(ResistanceTable.constant(ohms(ohm)))
                    .ohmicResistance(ohms(ohm))
                    .build())
            .build(),
        1);
  }

  /**
   * A fuse that melts at 40 000 A²s and then opposes the current with an arc of 600 V; first the
   * battery alone, whose total the data sheet would state, then with a capacitor besides.
   */
  @ParameterizedTest
  @CsvSource({"5e-6, 0.01", "20e-6, 0.03", "40e-6, 0.01"})
  void aFuseLetsMoreThroughWithACapacitorButNoMoreThanTheBound(double coilH, double ohm)
      throws IOException, InterruptedException {
    String battery = "fuse%nV1 a 0 DC 400%nR1 a b 0.04%nL1 b c 2u IC=0%n";
    String capacitor = "C2 d 0 2m IC=400%nR2 d e %.9g%nL2 e c %.9g IC=0%n";
    String fuse =
        "Vm c f DC 0%nBarc f 0 V=(v(q)>40000) ? 600*tanh(i(Vm)/20) : i(Vm)*1e-6%n"
            + "Bq 0 q I=i(Vm)*i(Vm)%nCq q 0 1 IC=0%n";
    double endS = 5e-3;
    double aloneA2S = transientOf(String.format(Locale.ROOT, battery + fuse), endS).get("joule");
    Map<String, Double> both =
        transientOf(String.format(Locale.ROOT, battery + capacitor + fuse, ohm, coilH), endS);
    Fuse link =
        Fuse.of("F", amperes(200))
            .directVoltage(volts(400))
            .testTimeConstant(seconds(0.01))
            .breakingCapacity(amperes(100_000))
            .fullRange()
            .preArcingCurve(
                TimeCurrentCurve.ofPoints()
                    .point(amperes(1000), seconds(1))
                    .point(amperes(2500), seconds(0.0064))
                    .tolerance(0)
                    .readingError(0)
                    .build())
            .preArcingJouleIntegral(ampereSquaredSeconds(40_000))
            .totalJouleIntegral(ampereSquaredSeconds(aloneA2S), volts(400))
            .build();
    Clearing.Cleared bound =
        link.clearing(
                CombinedFault.of(
                    FaultParts.fault(400, 0.04, 2e-6), List.of(discharge(400, ohm, coilH, 2e-3))),
                volts(400))
            .orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(bound.letThrough())).isGreaterThan(both.get("joule"));
    assertThat(Kind.CURRENT.siValueOf(bound.peak())).isGreaterThan(both.get("peak"));
    assertThat(both.get("joule")).as("more than the battery alone").isGreaterThan(aloneA2S);
  }

  /**
   * A fault of 5 mΩ somewhere in a cable of 4 mΩ and 1.2 µH, fed by the battery and another
   * capacitor from its near end and by its own capacitor from its far end.
   */
  @ParameterizedTest
  @CsvSource({"0.0001", "0.25", "0.5", "0.75", "0.9999"})
  void aFaultInACableIsFedFromBothSides(double share) throws IOException, InterruptedException {
    String deck =
        "sides%nV1 a 0 DC 400%nR1 a b 0.08%nL1 b c 15u IC=0%n"
            + "C2 d 0 0.3m IC=400%nR2 d e 0.02%nL2 e c 2u IC=0%n"
            + "Vn c f DC 0%nR3 f g %1$.9g%nL3 g k %2$.9g IC=0%nRf k m 0.005%nVm m 0 DC 0%n"
            + "C4 p 0 0.6m IC=400%nVf p q DC 0%nR4 q s %3$.9g%nL4 s k %4$.9g IC=0%n"
            + ".measure tran near INTEG par('i(Vn)*i(Vn)')%n"
            + ".measure tran far INTEG par('i(Vf)*i(Vf)')%n"
            + ".measure tran farpeak MAX i(Vf)%n.measure tran nearpeak MAX i(Vn)%n";
    double endS = 1e-3;
    Map<String, Double> circuit =
        transientOf(
            String.format(
                Locale.ROOT,
                deck,
                0.004 * share,
                1.2e-6 * share,
                0.004 * (1 - share),
                1.2e-6 * (1 - share)),
            endS);
    CombinedFault near =
        CombinedFault.of(
            FaultParts.fault(400, 0.08, 15e-6), List.of(discharge(400, 0.02, 2e-6, 0.3e-3)));
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(near.jouleIntegralAtMost(seconds(endS))))
        .isGreaterThan(circuit.get("near"));
    assertThat(Kind.CURRENT.siValueOf(near.peakAtMost())).isGreaterThan(circuit.get("nearpeak"));
    // What heats the stretch up to the fault counts as if it were the whole cable's resistance.
    CapacitorDischarge far = discharge(400, 0.005 + 0.004 * (1 - share), 1e-9, 0.6e-3);
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(far.jouleIntegral()))
        .isGreaterThan(circuit.get("far"));
  }

  @Test
  void batteryAndCapacitorAddUp() throws IOException, InterruptedException {
    String deck =
        "both\nV1 a 0 DC 400\nR1 a b 0.08\nL1 b c 15u IC=0\n"
            + "C2 d 0 1m IC=400\nR2 d e 0.02\nL2 e c 0.5u IC=0\nVm c 0 DC 0\n";
    double endS = 3e-4;
    Map<String, Double> circuit = transientOf(deck, endS);
    CombinedFault fault =
        CombinedFault.of(
            FaultParts.fault(400, 0.08, 15e-6), List.of(discharge(400, 0.02, 0.5e-6, 1e-3)));
    assertThat(Kind.CURRENT.siValueOf(fault.at(seconds(endS * 0.9999))))
        .isCloseTo(circuit.get("last"), withPercentage(TRANSIENT_PERCENT));
    assertThat(Kind.CURRENT.siValueOf(fault.peakAtMost())).isGreaterThan(circuit.get("peak"));
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(fault.jouleIntegralAtMost(seconds(endS))))
        .isBetween(circuit.get("joule"), 2 * circuit.get("joule"));
  }
}
