package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.henries;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Ngspice;
import org.wattwright.units.Kind;

/** Pre-charge and closing against a general circuit simulator. */
@Tag("ngspice")
class PrechargeNgspiceTest {
  static Stream<Generator> cases() {
    return Generator.cases(4);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void loadedPrechargeFollowsTheCircuit(Generator random) throws IOException, InterruptedException {
    double sourceV = random.between(90, 800);
    double ohm = random.betweenDecades(10, 200);
    double farad = random.betweenDecades(2e-4, 5e-3);
    double loadOhm = ohm * random.between(5, 100);
    double loadA = sourceV / ohm * random.between(0, 0.1);
    double tauS = farad * ohm;
    String deck =
        String.format(
            Locale.ROOT,
            """
            pre-charge beside a resistance and a current
            V1 pack 0 DC %.15g
            R1 pack bus %.15g
            C1 bus 0 %.15g IC=0
            R2 bus 0 %.15g
            I1 bus 0 DC %.15g
            B1 heat 0 V=(v(pack)-v(bus))*(v(pack)-v(bus))/%.15g
            .options reltol=1e-7 method=trap
            .tran %.6g %.15g 0 %.6g UIC
            .control
            set numdgt=12
            run
            meas tran early find v(bus) at=%.15g
            meas tran late find v(bus) at=%.15g
            meas tran energy integ v(heat) from=0 to=%.15g
            print early late energy
            .endc
            .end
            """,
            sourceV,
            ohm,
            farad,
            loadOhm,
            loadA,
            ohm,
            tauS / 2000,
            4 * tauS,
            tauS / 2000,
            tauS,
            3 * tauS,
            3 * tauS);
    Map<String, Double> circuit = Ngspice.run(deck);
    PrechargeCourse course =
        Precharge.from(volts(sourceV))
            .capacitance(farads(farad))
            .load(PrechargeLoad.resistance("bleed", ohms(loadOhm)))
            .load(PrechargeLoad.current("converter", amperes(loadA)))
            .build()
            .with(PrechargeResistor.of("R", ohms(ohm)))
            .nominal();
    assertThat(volt(course, tauS)).isCloseTo(circuit.get("early"), within(2e-5 * sourceV));
    assertThat(volt(course, 3 * tauS)).isCloseTo(circuit.get("late"), within(2e-5 * sourceV));
    double joule = Kind.ENERGY.siValueOf(course.resistorEnergy(seconds(3 * tauS)));
    assertThat(joule).isCloseTo(circuit.get("energy"), within(2e-3 * joule));
  }

  private static double volt(PrechargeCourse course, double timeS) {
    return Kind.VOLTAGE.siValueOf(course.voltageAt(seconds(timeS)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void closingNeverExceedsTheBoundAndComesNearIt(Generator random)
      throws IOException, InterruptedException {
    double missingV = random.between(5, 40);
    double farad = random.betweenDecades(3e-4, 3e-3);
    double henry = random.betweenDecades(5e-7, 2e-5);
    double surgeOhm = Math.sqrt(henry / farad);
    for (double ratio : new double[] {0.02, 1, 50}) {
      double ohm = surgeOhm * ratio;
      double scaleS = Math.sqrt(henry * farad) + henry / ohm;
      String deck =
          String.format(
              Locale.ROOT,
              """
              closing on a missing voltage
              V1 pack 0 DC %.15g
              R1 pack a %.15g
              L1 a bus %.15g IC=0
              C1 bus 0 %.15g IC=0
              .options reltol=1e-6 method=trap
              .tran %.6g %.6g 0 %.6g UIC
              .control
              set numdgt=12
              run
              meas tran peak max i(L1)
              print peak
              .endc
              .end
              """,
              missingV,
              ohm,
              henry,
              farad,
              henry / ohm / 200 < scaleS / 2000 ? henry / ohm / 200 : scaleS / 2000,
              8 * scaleS,
              scaleS / 1000);
      double peakA = Ngspice.run(deck).get("peak");
      double boundA =
          Kind.CURRENT.siValueOf(
              new ClosingInrush(ohms(ohm), henries(henry), farads(farad)).peak(volts(missingV)));
      assertThat(peakA).isLessThanOrEqualTo(boundA * (1 + 1e-4));
      assertThat(peakA).isGreaterThan(boundA * (ratio == 1 ? 0.5 : 0.9));
    }
  }
}
