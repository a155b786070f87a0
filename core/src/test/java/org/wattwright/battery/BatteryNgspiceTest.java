package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.linear;
import static org.wattwright.battery.Fixtures.source;
import static org.wattwright.battery.Fixtures.string;
import static org.wattwright.battery.Fixtures.unlimited;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.testing.Ngspice;
import org.wattwright.units.Kind;

/** Circuits of strings and cells against a general circuit simulator. */
@Tag("ngspice")
class BatteryNgspiceTest {
  /** The decks ask for a relative error of 1e-7 a step; results are printed with seven digits. */
  private static final double TRANSIENT = 2e-6;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void unequalStringsShareAsTheCircuitDoes(long seed) throws IOException, InterruptedException {
    Random random = new Random(seed);
    int count = 2 + random.nextInt(5);
    double loadA = -200 + 500 * random.nextDouble();
    double leadOhm = 0.001 + 0.01 * random.nextDouble();
    List<SeriesString> strings = new ArrayList<>();
    StringBuilder deck = new StringBuilder("strings in parallel\n");
    for (int k = 1; k <= count; k++) {
      double sourceV = 340 + 20 * random.nextDouble();
      double ohm = 0.05 + 0.1 * random.nextDouble();
      strings.add(string(sourceV, ohm));
      deck.append(String.format(Locale.ROOT, "V%d s%d 0 DC %.15g%n", k, k, sourceV));
      deck.append(String.format(Locale.ROOT, "R%d s%d node %.15g%n", k, k, ohm));
    }
    deck.append(String.format(Locale.ROOT, "Rlead node out %.15g%n", leadOhm));
    deck.append(String.format(Locale.ROOT, "Iload out 0 DC %.15g%n", loadA));
    deck.append(".options reltol=1e-9\n.control\nset numdgt=12\nop\nprint v(node) v(out)\n");
    for (int k = 1; k <= count; k++) {
      deck.append("print i(v").append(k).append(")\n");
    }
    Map<String, Double> circuit = Ngspice.run(deck.append(".endc\n.end\n").toString());

    Pack pack = Pack.of(strings).withLeadResistance(ohms(leadOhm));
    StringSharing sharing = pack.stringCurrents(HALF, amperes(loadA));
    assertThat(Kind.VOLTAGE.siValueOf(sharing.voltage()))
        .isCloseTo(circuit.get("v(node)"), within(1e-6));
    assertThat(Kind.VOLTAGE.siValueOf(pack.terminalVoltage(HALF, amperes(loadA))))
        .isCloseTo(circuit.get("v(out)"), within(1e-6));
    for (int k = 1; k <= count; k++) {
      // The simulator counts current into the positive end of a source.
      assertThat(Kind.CURRENT.siValueOf(sharing.currents().get(k - 1)))
          .isCloseTo(-circuit.get("i(v" + k + ")"), within(1e-5));
    }
  }

  @Test
  void pulseAndRecoveryFollowTheCircuit() throws IOException, InterruptedException {
    String deck =
        """
        pulse into a cell with one RC pair
        Vocv ocv 0 DC 3.7127
        R1 ocv mid 1.6m
        C1 ocv mid 18721 IC=0
        R0 mid out 8.2m
        Iload out 0 PWL(0 27.625 60 27.625 60.001 0)
        .options reltol=1e-7 method=trap
        .tran 0.05 81 0 0.05 UIC
        .control
        set numdgt=12
        run
        meas tran early find v(out) at=10
        meas tran late find v(out) at=59.99
        meas tran rested find v(out) at=80
        .endc
        .end
        """;
    Map<String, Double> circuit = Ngspice.run(deck);
    PulseResponse pulse =
        source(3.7127, 8.2e-3)
            .rcPair(RcPair.ofCapacitance(ohms(1.6e-3), farads(18721)))
            .build()
            .pulseResponse(HALF, amperes(27.625), seconds(60));
    assertThat(Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(10))))
        .isCloseTo(circuit.get("early"), within(TRANSIENT));
    assertThat(Kind.VOLTAGE.siValueOf(pulse.voltageDuring(seconds(59.99))))
        .isCloseTo(circuit.get("late"), within(TRANSIENT));
    assertThat(Kind.VOLTAGE.siValueOf(pulse.voltageAfter(seconds(20))))
        .isCloseTo(circuit.get("rested"), within(TRANSIENT));
  }

  /** A string with OCV = a + b·s is a capacitor Q/b charged to a + b·s. */
  @Test
  void equalisingCurrentDecaysAsTheCircuitDoes() throws IOException, InterruptedException {
    String deck =
        """
        two strings joined
        C1 a 0 6000 IC=393
        R1 a node 0.09
        C2 b 0 6000 IC=381
        R2 b node 0.06
        .options reltol=1e-7 method=trap
        .tran 1 3000 0 1 UIC
        .control
        set numdgt=12
        run
        let current = (v(a) - v(b)) / 0.15
        meas tran below when current=10 fall=1
        .endc
        .end
        """;
    Map<String, Double> circuit = Ngspice.run(deck);
    Cell first = unlimited(linear(345, 60), ResistanceTable.constant(ohms(0.09))).build();
    Cell second = unlimited(linear(345, 60), ResistanceTable.constant(ohms(0.06))).build();
    Equalisation join =
        Equalisation.between(
            string(first),
            PackState.of(percentCharge(80), celsius(25)),
            string(second),
            PackState.of(percentCharge(60), celsius(25)));
    assertThat(Kind.TIME.siValueOf(join.timeUntilBelow(amperes(10))))
        .isCloseTo(circuit.get("below"), within(0.01));
  }
}
