package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;

/** What holds for every search. */
class PackSearchPropertyTest {
  static Stream<Generator> cases() {
    return Generator.cases(25);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void addingARequirementNeverAddsACandidate(Generator random) {
    PackSearch search = RandomSearch.of(random).search();
    TreeSet<String> before = BruteForce.keys(search.run().ranked());
    for (PackSearch tighter : tightened(search, random)) {
      assertThat(before).containsAll(BruteForce.keys(tighter.run().ranked()));
    }
  }

  private static List<PackSearch> tightened(PackSearch search, Generator random) {
    return List.of(
        search.require(
            Requirement.atMost(
                "half the mass",
                org.wattwright.units.WorkshopUnits.KILOGRAM,
                kilograms(random.typed(20, 200, 0)),
                Candidate::mass)),
        search.peakPowerAtLeast(
            kilowatts(random.typed(5, 60, 0)), seconds(3), percentCharge(50), celsius(10)),
        search.chargePowerAtLeast(
            kilowatts(random.typed(5, 60, 0)), seconds(3), percentCharge(50), celsius(10)),
        search.device(InventedParts.converter()),
        search.device(InventedParts.charger()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void orderOfInputDoesNotMatter(Generator random) {
    RandomSearch asked = RandomSearch.of(random);
    PackSearch.Result found = asked.search().allowProvisional().run();
    List<BatteryModule> modules = new ArrayList<>(asked.modules());
    List<Device> devices = new ArrayList<>(asked.devices());
    Collections.shuffle(modules, new Random(random.count(0, 1000)));
    Collections.shuffle(devices, new Random(random.count(0, 1000)));
    RandomSearch shuffled = new RandomSearch(modules, devices, asked.conditions(), asked.demands());
    PackSearch.Result again = shuffled.search().allowProvisional().run();
    assertThat(again.ranked()).isEqualTo(found.ranked());
    assertThat(again.whyNone()).isEqualTo(found.whyNone());
    assertThat(texts(again.rejections())).isEqualTo(texts(found.rejections()));
  }

  private static List<String> texts(List<?> items) {
    return items.stream().map(Object::toString).toList();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void countsOfRejectionsAreThoseOfTheChecks(Generator random) {
    RandomSearch asked = RandomSearch.of(random);
    PackSearch search = asked.search();
    PackSearch.Result found = search.run();
    Map<String, Long> all = new TreeMap<>();
    Map<String, Long> alone = new TreeMap<>();
    SearchSpec spec = new SearchSpec(search.draft());
    for (long index = 0; index < spec.space().size(); index++) {
      Candidate candidate = spec.candidateAt(index);
      List<String> wrong =
          candidate.checks().stream()
              .filter(c -> c.outcome().ordinal() >= 2)
              .map(c -> c.outcome() + c.code() + c.what())
              .toList();
      wrong.forEach(code -> all.merge(code, 1L, Long::sum));
      if (wrong.size() == 1) {
        alone.merge(wrong.get(0), 1L, Long::sum);
      }
    }
    assertThat(found.rejections().stream().map(Rejection::count))
        .containsExactlyInAnyOrderElementsOf(all.values());
    assertThat(found.rejections().stream().map(Rejection::aloneCount).filter(n -> n > 0))
        .containsExactlyInAnyOrderElementsOf(alone.values());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void rankedListIsSortedAndTopIsItsHead(Generator random) {
    PackSearch.Result found =
        RandomSearch.of(random).search().rankBy(Criterion.USABLE_ENERGY).run();
    List<Candidate> ranked = found.ranked();
    for (int i = 1; i < ranked.size(); i++) {
      double better = energyJ(ranked.get(i - 1));
      double worse = energyJ(ranked.get(i));
      assertThat(worse).isLessThanOrEqualTo(better * (1 + 1e-12));
    }
    int few = Math.min(3, ranked.size());
    assertThat(found.top(3)).isEqualTo(ranked.subList(0, few));
    assertThat(found.best()).isEqualTo(ranked.stream().findFirst());
  }

  private static double energyJ(Candidate candidate) {
    return Kind.ENERGY.siValueOf(candidate.usableEnergy().orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void smallestRelaxationAdmitsItsCandidateAndLessAdmitsNothing(Generator random) {
    PackSearch search = RandomSearch.of(random).search();
    PackSearch.Result found = search.run();
    for (Relaxation relaxation : found.relaxations()) {
      Optional<PackSearch> relaxed = relaxed(search, relaxation, 1);
      if (relaxed.isPresent()) {
        PackSearch shortOfIt = relaxed(search, relaxation, 1 - 1e-9).orElseThrow();
        assertThat(relaxed.get().run().ranked()).contains(relaxation.candidate());
        assertThat(shortOfIt.run().ranked()).isEqualTo(found.ranked());
      }
    }
  }

  /** The search with a share of the relaxation applied; empty for limits of devices. */
  private static Optional<PackSearch> relaxed(
      PackSearch search, Relaxation relaxation, double share) {
    String name = relaxation.requirement();
    if (name.startsWith("pack mass")) {
      return Optional.of(search.massAtMost(kilograms(part(relaxation, Kind.MASS, share))));
    }
    if (name.startsWith("pack volume")) {
      double litres = 1000 * part(relaxation, Kind.VOLUME, share);
      return Optional.of(search.volumeAtMost(litres(litres)));
    }
    if (name.startsWith("usable energy")) {
      double kilowattHours = part(relaxation, Kind.ENERGY, share) / 3.6e6;
      return Optional.of(search.usableEnergyAtLeast(kilowattHours(kilowattHours)));
    }
    if (name.startsWith("discharge power")) {
      double kilowatts = part(relaxation, Kind.POWER, share) / 1000;
      return Optional.of(
          search.peakPowerAtLeast(
              kilowatts(kilowatts), seconds(10), percentCharge(20), celsius(0)));
    }
    if (name.startsWith("charge power")) {
      double kilowatts = part(relaxation, Kind.POWER, share) / 1000;
      return Optional.of(
          search.chargePowerAtLeast(
              kilowatts(kilowatts), seconds(5), percentCharge(80), celsius(20)));
    }
    return Optional.empty();
  }

  private static <Q extends javax.measure.Quantity<Q>> double part(
      Relaxation relaxation, Kind<Q> kind, double share) {
    double limit = kind.siValueOf(relaxation.limit().quantity(kind));
    double needed = kind.siValueOf(relaxation.needed().quantity(kind));
    return share == 1 ? needed : limit + share * (needed - limit);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void paretoFrontHasNoDominatedMemberAndDominatesAllElse(Generator random) {
    PackSearch.Result found = RandomSearch.of(random).search().run();
    Criterion[] criteria = {Criterion.MASS, Criterion.USABLE_ENERGY, Criterion.PEAK_POWER};
    List<Candidate> front = found.paretoFront(criteria);
    List<Candidate> ranked = found.ranked();
    assertThat(ranked).containsAll(front);
    for (Candidate candidate : ranked) {
      boolean dominated = front.stream().anyMatch(member -> dominates(member, candidate));
      assertThat(dominated).as("%s", candidate).isNotEqualTo(front.contains(candidate));
    }
  }

  private static boolean dominates(Candidate one, Candidate other) {
    double[] ours = costs(one);
    double[] theirs = costs(other);
    boolean better = false;
    for (int i = 0; i < ours.length; i++) {
      double rounding = 1e-12 * Math.abs(theirs[i]);
      if (ours[i] > theirs[i] + rounding) {
        return false;
      }
      better |= ours[i] < theirs[i] - rounding;
    }
    return better;
  }

  private static double[] costs(Candidate candidate) {
    return new double[] {
      Kind.MASS.siValueOf(candidate.mass()),
      -energyJ(candidate),
      -Kind.POWER.siValueOf(candidate.peakPower().orElseThrow())
    };
  }
}
