package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** A trip at once, and a second one below the peaks that waits for longer than they last. */
class SeveralTripsTest {
  private static final OvercurrentTrip QUICK =
      OvercurrentTrip.at(amperes(420), milliseconds(50), "battery management");

  private static OvercurrentTrip slow(double delayS) {
    return OvercurrentTrip.at(amperes(150), seconds(delayS), "battery management");
  }

  /** 300 A for 10 s in every minute, else 40 A out or in. */
  private static Profile<ElectricCurrent> peaks() {
    return Profile.segments(Kind.CURRENT)
        .hold(amperes(40), seconds(30))
        .hold(amperes(300), seconds(10))
        .hold(amperes(-40), seconds(20))
        .build();
  }

  private static CircuitBuilder traction() {
    return Circuit.of("traction", CircuitRole.TRACTION_MAIN)
        .length(metres(3))
        .installation(Installation.freeAir(celsius(45)))
        .switched();
  }

  private static List<Check> inOperation(CircuitBuilder circuit) {
    return TripChecks.of(circuit.build());
  }

  @Test
  void areKeptByDelay() {
    Circuit circuit = traction().profile(peaks()).trips(List.of(slow(12), QUICK)).build();
    assertThat(circuit.trips()).containsExactly(QUICK, slow(12));
    assertThat(traction().profile(peaks()).trip(QUICK).build().trips()).containsExactly(QUICK);
  }

  @Test
  void aTripBelowThePeaksOutlastsThem() {
    Check longer = inOperation(traction().profile(peaks()).trip(slow(12))).get(0);
    assertThat(longer.outcome()).isEqualTo(Outcome.PASS);
    assertThat(longer.comparison()).isEqualTo("10 s ≤ 12 s");
    assertThat(inOperation(traction().profile(peaks()).trip(slow(9.9))))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL));
    assertThat(inOperation(traction().profile(peaks()).trip(QUICK))).isEmpty();
    // Over the end of the cycle into the next.
    Profile<ElectricCurrent> split =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(300), seconds(6))
            .hold(amperes(40), seconds(60))
            .hold(amperes(300), seconds(5))
            .build();
    assertThat(inOperation(traction().profile(split).trip(slow(12))).get(0).comparison())
        .isEqualTo("11 s ≤ 12 s");
    // Into the battery too.
    assertThat(inOperation(traction().profile(split.scaled(-1)).trip(slow(12))).get(0).comparison())
        .isEqualTo("11 s ≤ 12 s");
  }

  @Test
  void withoutAProfileOfThePeakItIsACaution() {
    CircuitBuilder told =
        traction().continuousCurrent(amperes(120)).highestOperatingCurrent(amperes(300));
    assertThat(inOperation(told.trip(slow(12))).get(0).outcome()).isEqualTo(Outcome.CAUTION);
    CircuitBuilder above = traction().profile(peaks()).highestOperatingCurrent(amperes(310));
    assertThat(inOperation(above.trip(slow(12))).get(0).outcome()).isEqualTo(Outcome.CAUTION);
  }

  @Test
  void refusesOneThatNormalOperationMeetsAtOnceOrForHours() {
    CircuitBuilder told =
        traction().continuousCurrent(amperes(160)).highestOperatingCurrent(amperes(300));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> told.trip(slow(12)).build())
        .withMessage("Circuit.trip of traction must be ≥ 160 A of normal operation, but was 150 A");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> told.trip(OvercurrentTrip.at(amperes(299), milliseconds(0), "x")).build())
        .withMessageContaining("≥ 300 A");
  }

  /** Between what cable and contactor bear for ever and the quick trip only the slow one opens. */
  @Test
  void theSlowTripClosesTheGapBelowTheQuickOne() {
    CircuitBuilder circuit =
        traction().continuousCurrent(amperes(120)).highestOperatingCurrent(amperes(200));
    OvercurrentTrip quick = OvercurrentTrip.at(amperes(420), milliseconds(300), "inverter");
    OvercurrentTrip slow = OvercurrentTrip.at(amperes(180), seconds(4), "battery management");
    List<Fuse> slowFuse = List.of(CircuitParts.fuse("F-250", 250, 1));
    CircuitDesign quickOnly =
        CircuitParts.designer(List.of(circuit.trip(quick).build()))
            .cables(CircuitParts.cables().subList(5, 6))
            .fuses(slowFuse)
            .run();
    assertThat(quickOnly.whyNone()).contains("protection.current-cover");
    CircuitDesign both =
        CircuitParts.designer(List.of(circuit.trips(List.of(quick, slow)).build()))
            .cables(CircuitParts.cables().subList(5, 6))
            .fuses(slowFuse)
            .run();
    assertThat(both.whyNone()).isBlank();
    DesignedCircuit found = both.circuits().get(0);
    assertThat(found.cover().bands().get(0).by()).isIn(CoverBand.By.TRIP, CoverBand.By.BORNE);
    assertThat(found.marks()).filteredOn(mark -> mark.label().equals("trip")).hasSize(2);
    assertThat(Verdict.of(found.checks())).isEqualTo(Verdict.PASSES);
    assertThat(found.checks())
        .filteredOn(check -> check.code().equals("protection.trip-in-operation"))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.CAUTION));
  }
}
