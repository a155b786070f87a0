package org.wattwright.installation;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.megapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.Measures.standardGravities;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.junit.jupiter.api.Nested;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.testing.ValueTypeContract;

/** Equality, text and serialisation of what a retention is made of. */
class RetentionValueTypesTest {
  private static final Source OWN = Source.requirement("test");
  private static final Bolt M8 = Bolt.of("M8", PropertyClass.CLASS_8_8);

  private static Panel panel(
      double thicknessMm, double strengthMpa, double holeMm, double outerMm) {
    return Panel.of(
        Given.measured(millimetres(thicknessMm), "gauge"),
        Given.dataSheet(megapascals(strengthMpa), "sheet"),
        millimetres(holeMm),
        millimetres(outerMm));
  }

  private static SpreaderPlate plate(double diameterMm) {
    return new SpreaderPlate(millimetres(diameterMm), millimetres(3), megapascals(235));
  }

  private static Fixing fixing(String name, double uMm) {
    return Fixing.at(name, millimetres(uMm), millimetres(20), M8).in(panel(2, 270, 9, 24));
  }

  private static FixingGroup group(Fixing... fixings) {
    return FixingGroup.of(Footprint.of(metres(0.6), metres(0.4)), List.of(fixings));
  }

  private static AccelerationRules rules(double g) {
    return AccelerationRules.of("own", OWN).with(LoadDirection.FORWARD, standardGravities(g));
  }

  private static RetentionBuilder retention(String name, double massKg) {
    return Retention.of(name, Given.measured(kilograms(massKg), "scales"))
        .on(MountingFace.FLOOR, group(fixing("a", 20), fixing("b", 500)))
        .centre(metres(0.3), metres(0.2), metres(0.1))
        .under(rules(20));
  }

  @Nested
  class Rules extends ValueTypeContract<AccelerationRules> {
    @Override
    protected AccelerationRules sample() {
      return rules(20);
    }

    @Override
    protected List<AccelerationRules> different() {
      return List.of(
          rules(21),
          rules(20).with(LoadDirection.UP, standardGravities(10)),
          AccelerationRules.of("other", OWN),
          AccelerationRules.published("ncop14"));
    }

    @Override
    protected Stream<AccelerationRules> madeFromInputsChangedLater() {
      Map<LoadDirection, Quantity<Acceleration>> map = new EnumMap<>(LoadDirection.class);
      map.put(LoadDirection.FORWARD, standardGravities(20));
      AccelerationRules made = new AccelerationRules("own", "", OWN, map);
      map.clear();
      return Stream.of(made);
    }

    @Override
    protected Stream<Object> partsHandedOut(AccelerationRules value) {
      return Stream.of(value.accelerations());
    }
  }

  @Nested
  class Threads extends ValueTypeContract<MetricThread> {
    @Override
    protected MetricThread sample() {
      return MetricThread.parse("M8");
    }

    @Override
    protected List<MetricThread> different() {
      return List.of(MetricThread.parse("M8x1"), MetricThread.parse("M10"));
    }

    @Override
    protected Optional<Function<String, MetricThread>> parser() {
      return Optional.of(MetricThread::parse);
    }
  }

  @Nested
  class Bolts extends ValueTypeContract<Bolt> {
    @Override
    protected Bolt sample() {
      return Bolt.of("M8", PropertyClass.CLASS_8_8);
    }

    @Override
    protected List<Bolt> different() {
      return List.of(
          Bolt.of("M10", PropertyClass.CLASS_8_8),
          sample().withCountersunkHead(),
          sample().withShankInShearPlane(),
          sample().withPartialFactor(1.5));
    }
  }

  @Nested
  class Panels extends ValueTypeContract<Panel> {
    @Override
    protected Panel sample() {
      return panel(2, 270, 9, 24);
    }

    @Override
    protected List<Panel> different() {
      return List.of(
          panel(3, 270, 9, 24),
          panel(2, 360, 9, 24),
          panel(2, 270, 8.4, 24),
          panel(2, 270, 9, 20),
          sample().withEdgeDistance(millimetres(20)),
          sample().withSpreader(plate(60)),
          sample().withSpreader(plate(50)));
    }
  }

  @Nested
  class Fixings extends ValueTypeContract<Fixing> {
    @Override
    protected Fixing sample() {
      return fixing("a", 20);
    }

    @Override
    protected List<Fixing> different() {
      return List.of(
          fixing("b", 20),
          fixing("a", 30),
          Fixing.at("a", millimetres(20), millimetres(20), M8),
          Fixing.at("a", millimetres(20), millimetres(30), M8));
    }
  }

  @Nested
  class Groups extends ValueTypeContract<FixingGroup> {
    @Override
    protected FixingGroup sample() {
      return group(fixing("a", 20), fixing("b", 500));
    }

    @Override
    protected List<FixingGroup> different() {
      return List.of(
          group(fixing("a", 20)),
          FixingGroup.of(Footprint.of(metres(0.7), metres(0.4)), sample().fixings()));
    }

    @Override
    protected Stream<FixingGroup> madeFromInputsChangedLater() {
      List<Fixing> list = new ArrayList<>(sample().fixings());
      FixingGroup made = FixingGroup.of(sample().footprint(), list);
      list.clear();
      return Stream.of(made);
    }

    @Override
    protected Stream<Object> partsHandedOut(FixingGroup value) {
      return Stream.of(value.fixings());
    }
  }

  @Nested
  class Retentions extends ValueTypeContract<Retention> {
    @Override
    protected Retention sample() {
      return retention("box", 20).build();
    }

    @Override
    protected List<Retention> different() {
      return List.of(
          retention("other", 20).build(),
          retention("box", 21).build(),
          retention("box", 20).under(rules(21)).build(),
          retention("box", 20).interaction(InteractionRule.ELLIPTIC).build(),
          retention("box", 20).centre(metres(0.3), metres(0.2), metres(0.2)).build(),
          retention("box", 20)
              .on(MountingFace.CEILING, group(fixing("a", 20), fixing("b", 500)))
              .build());
    }
  }

  @Nested
  class Choices extends ValueTypeContract<HoleChoice> {
    private HoleChoice choice(double massKg) {
      List<MountingHole> holes = new ArrayList<>();
      for (double uM : new double[] {0.1, 0.5}) {
        for (double vM : new double[] {0.1, 0.3}) {
          holes.add(new MountingHole(uM + "/" + vM, metres(uM), metres(vM), panel(3, 270, 9, 24)));
        }
      }
      return HoleSolver.holding("box", Given.measured(kilograms(massKg), "scales"))
          .on(MountingFace.FLOOR, Footprint.of(metres(0.6), metres(0.4)), holes)
          .centre(metres(0.3), metres(0.2), metres(0.1))
          .bolts(List.of(M8))
          .under(AccelerationRules.published("ncop14"));
    }

    @Override
    protected HoleChoice sample() {
      return choice(10);
    }

    @Override
    protected List<HoleChoice> different() {
      return List.of(choice(11), choice(1000));
    }
  }

  @Nested
  class Mounts extends ValueTypeContract<DriveUnitMount> {
    @Override
    protected DriveUnitMount sample() {
      return DriveUnitMount.at("front", metres(0.3), metres(0), newtonsPerMillimetre(400));
    }

    @Override
    protected List<DriveUnitMount> different() {
      return List.of(
          DriveUnitMount.at("rear", metres(0.3), metres(0), newtonsPerMillimetre(400)),
          DriveUnitMount.at("front", metres(0.3), metres(0.1), newtonsPerMillimetre(400)),
          sample().rated(Given.dataSheet(newtons(4000), "mount")));
    }
  }

  @Nested
  class Shafts extends ValueTypeContract<RoundShaft> {
    private RoundShaft shaft(double diameterMm) {
      return RoundShaft.solid(
          millimetres(diameterMm), millimetres(500), Given.dataSheet(megapascals(900), "steel"));
    }

    @Override
    protected RoundShaft sample() {
      return shaft(25);
    }

    @Override
    protected List<RoundShaft> different() {
      return List.of(shaft(26), shaft(27));
    }
  }
}
