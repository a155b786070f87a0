package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerKilometrePerHour;
import static org.wattwright.units.Measures.newtonsPerKilometrePerHourSquared;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Source;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Duration, distance, speeds and energies of the cycles against their regulations. */
class CycleReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("drive");

  private static final ReferenceRows ROWS = ReferenceRows.read("/drive/cycles.csv");

  private static final RoadLoad LOAD =
      RoadLoad.coastDown(
          kilograms(1150),
          newtons(120),
          newtonsPerKilometrePerHour(0.6),
          newtonsPerKilometrePerHourSquared(0.040));

  private static final Map<String, StandardCycle> FILES =
      Map.of(
          "nedc_points.csv", StandardCycle.NEDC,
          "udds.csv", StandardCycle.UDDS,
          "hwfet.csv", StandardCycle.HWFET,
          "us06.csv", StandardCycle.US06,
          "wltc_class1.csv", StandardCycle.WLTC_CLASS_1,
          "wltc_class2.csv", StandardCycle.WLTC_CLASS_2,
          "wltc_class3a.csv", StandardCycle.WLTC_CLASS_3A,
          "wltc_class3b.csv", StandardCycle.WLTC_CLASS_3B);

  static Stream<ReferenceRow> rows() {
    return ROWS.stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.contains("JC08")
        || quantity.startsWith("10-15 mode")
        || quantity.startsWith("EUDC, low-powered")) {
      VALIDATION.notCovered(row, "not among the built-in cycles; a trace of it can be read");
    } else if (row.id().equals("CYC-032")) {
      VALIDATION.notCovered(
          row, "the trace falls to 0 22 times; the page does not say what it counts");
      assertThat(ftp75().stops()).isEqualTo(22);
    } else if (quantity.contains("cycle energy") || quantity.contains("braking must take")) {
      energy(row);
    } else if (quantity.startsWith("WLTC") && quantity.contains("checksum")) {
      checksum(row);
    } else {
      figure(row, cycle(row));
    }
  }

  private static DriveCycle ftp75() {
    DriveCycle udds = StandardCycle.UDDS.cycle();
    return DriveCycle.inSequence(
        "FTP-75", Source.AS_GIVEN, List.of(udds, udds.between(seconds(0), seconds(505))));
  }

  private static DriveCycle cycle(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("FTP-75")) {
      return ftp75();
    }
    if (quantity.startsWith("UDDS first 505 s")) {
      return StandardCycle.UDDS.cycle().between(seconds(0), seconds(505));
    }
    if (quantity.startsWith("four ECE-15")) {
      DriveCycle urban = StandardCycle.ECE_15.cycle();
      return DriveCycle.inSequence("four", Source.AS_GIVEN, List.of(urban, urban, urban, urban));
    }
    if (quantity.startsWith("WLTC")) {
      return wltc(quantity);
    }
    return StandardCycle.valueOf(quantity.split(":")[0].replace('-', '_')).cycle();
  }

  private static DriveCycle wltc(String quantity) {
    DriveCycle whole = StandardCycle.valueOf("WLTC_CLASS_" + classOf(quantity)).cycle();
    if (quantity.contains("low phase")) {
      return whole.between(seconds(0), seconds(589));
    }
    if (quantity.contains("medium phase")) {
      return whole.between(seconds(589), seconds(1022));
    }
    if (quantity.contains("extra high phase")) {
      return whole.between(seconds(1477), seconds(1800));
    }
    return quantity.contains("high phase") ? whole.between(seconds(1022), seconds(1477)) : whole;
  }

  private static String classOf(String quantity) {
    for (String name : List.of("3a", "3b", "1", "2")) {
      if (quantity.contains("class " + name)) {
        return name.toUpperCase(java.util.Locale.ROOT);
      }
    }
    return "3B";
  }

  private static void figure(ReferenceRow row, DriveCycle cycle) {
    String quantity = row.quantity();
    if (quantity.contains("duration")) {
      VALIDATION.computed(row, cycle.duration(), Kind.TIME);
    } else if (quantity.contains("distance")) {
      VALIDATION.computed(row, cycle.distance(), Kind.LENGTH);
    } else if (quantity.contains("average speed")) {
      VALIDATION.computed(row, cycle.averageSpeed(), Kind.SPEED);
    } else if (quantity.contains("maximum speed")) {
      maximum(row, cycle);
    } else if (quantity.contains("share of time idling")) {
      VALIDATION.computed(row, 100 * standingS(cycle) / Kind.TIME.siValueOf(cycle.duration()));
    } else if (quantity.contains("idling") || quantity.contains("standing still")) {
      VALIDATION.computed(row, cycle.timeStanding(), Kind.TIME);
    } else if (quantity.contains("falls to 0")) {
      VALIDATION.computed(row, cycle.stops());
    } else if (quantity.contains("samples at 0")) {
      VALIDATION.computed(row, samplesAtRest(cycle));
    } else if (quantity.contains("greatest acceleration")) {
      double mphPerS =
          Kind.ACCELERATION.siValueOf(cycle.greatestAcceleration()) / (1609.344 / 3600);
      accelerated(row, mphPerS);
    } else {
      throw new AssertionError("no test for " + row);
    }
  }

  /** Speeds stand in km/h to four places in the tables; the rows are in mph to one. */
  private static void maximum(ReferenceRow row, DriveCycle cycle) {
    if (row.unit().equals("mph")) {
      double mph = Kind.SPEED.siValueOf(cycle.maximumSpeed()) * 3600 / 1609.344;
      assertThat(mph).isCloseTo(row.number(), within(0.00005 / 1.609344));
      VALIDATION.computed(row, Math.rint(mph * 1e3) / 1e3);
    } else {
      double kmh = Kind.SPEED.siValueOf(cycle.maximumSpeed()) * 3.6;
      assertThat(kmh).isCloseTo(row.number(), within(1e-12 * kmh));
      VALIDATION.computed(row, Math.rint(kmh * 1e9) / 1e9);
    }
  }

  private static void accelerated(ReferenceRow row, double mphPerS) {
    assertThat(mphPerS).isCloseTo(row.number(), within(2 * 0.00005 / 1.609344));
    VALIDATION.computed(row, Math.rint(mphPerS * 1e3) / 1e3);
  }

  private static double standingS(DriveCycle cycle) {
    return Kind.TIME.siValueOf(cycle.timeStanding());
  }

  private static int samplesAtRest(DriveCycle cycle) {
    int rest = 0;
    for (int i = 0; i <= cycle.steps(); i++) {
      rest += cycle.speedMs(i) == 0 ? 1 : 0;
    }
    return rest;
  }

  /** The sum of 1 Hz speeds is 3.6 times the distance, as every phase begins and ends at rest. */
  private static void checksum(ReferenceRow row) {
    String[] part = row.quantity().split(":")[0].split(" ");
    DriveCycle whole = wltc("class " + part[2] + " ");
    String phase = row.quantity().replaceFirst("WLTC class \\w+ ", "").split(":")[0];
    DriveCycle driven =
        phase.equals("Total")
            ? whole
            : wltc("class " + part[2] + " " + phase.toLowerCase(java.util.Locale.ROOT) + " phase");
    VALIDATION.computed(row, Kind.LENGTH.siValueOf(driven.distance()) * 3.6);
  }

  private static void energy(ReferenceRow row) {
    String file = row.conditions().keySet().iterator().next().replaceAll("file (\\S+).*", "$1");
    DriveCycle cycle = FILES.get(file).cycle();
    if (file.equals("nedc_points.csv")) {
      cycle = eachSecond(cycle);
    }
    boolean braking = row.quantity().contains("braking");
    double joule =
        Kind.ENERGY.siValueOf(braking ? cycle.brakingEnergy(LOAD) : cycle.wheelEnergy(LOAD));
    double value =
        row.unit().equals("Wh/km")
            ? joule / 3600 / (Kind.LENGTH.siValueOf(cycle.distance()) / 1000)
            : joule / 3.6e6;
    VALIDATION.computed(row, value);
  }

  private static DriveCycle eachSecond(DriveCycle cycle) {
    return DriveCycle.of(
        cycle.name(),
        cycle.source(),
        org.wattwright.profile.Profile.sampled(
            Kind.SPEED, cycle.duration(), 1180, t -> cycle.trace().at(t)));
  }

  @Test
  void everyClassKnowsItsSource() {
    for (StandardCycle standard : StandardCycle.values()) {
      assertThat(standard.cycle().source().type()).isEqualTo(Source.Type.STANDARD);
    }
  }
}
