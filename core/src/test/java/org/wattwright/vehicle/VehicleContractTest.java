package org.wattwright.vehicle;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Nested;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.testing.ValueTypeContract;

/** What every value type of this package keeps. */
class VehicleContractTest {
  private static final Position PLACE = Vans.at(1, 0.2, 0.5);

  private static Stance stance(double kg) {
    return Stance.of(kilograms(kg), metres(2.3), PLACE);
  }

  private static MassLedger ledger(double kg) {
    return MassLedger.of(Vans.full().build()).adding(Vans.item("box", kg, 1, 0.1));
  }

  @Nested
  class Positions extends ValueTypeContract<Position> {
    @Override
    protected Position sample() {
      return Vans.at(1, 0.2, 0.5);
    }

    @Override
    protected List<Position> different() {
      return List.of(Vans.at(2, 0.2, 0.5), Vans.at(1, 0, 0.5), Position.behindFrontAxle(metres(1)));
    }
  }

  @Nested
  class MassItems extends ValueTypeContract<MassItem> {
    @Override
    protected MassItem sample() {
      return MassItem.of("box", kilograms(12), PLACE);
    }

    @Override
    protected List<MassItem> different() {
      return List.of(
          MassItem.of("other", kilograms(12), PLACE),
          MassItem.of("box", kilograms(13), PLACE),
          sample().onAxle(),
          sample().withBasis(Basis.ESTIMATED),
          sample().withMassTolerance(kilograms(1)),
          sample().withPositionTolerance(millimetres(5)));
    }
  }

  @Nested
  class WeighedVehicles extends ValueTypeContract<WeighedVehicle> {
    @Override
    protected WeighedVehicle sample() {
      return Vans.full().build();
    }

    @Override
    protected List<WeighedVehicle> different() {
      return List.of(Vans.plain(), Vans.full().frontTrack(metres(1.3)).build());
    }
  }

  @Nested
  class Seatings extends ValueTypeContract<Seating> {
    @Override
    protected Seating sample() {
      return Seating.driverAt(PLACE).row("bench", 2, PLACE);
    }

    @Override
    protected List<Seating> different() {
      return List.of(
          Seating.driverAt(PLACE),
          sample().luggageAt(PLACE),
          sample().occupantsOf(OccupantMass.WITH_LUGGAGE_68_7_KG));
    }
  }

  @Nested
  class LoadCases extends ValueTypeContract<LoadCase> {
    @Override
    protected LoadCase sample() {
      return new LoadCase("own", List.of(Vans.item("box", 1, 1, 0)));
    }

    @Override
    protected List<LoadCase> different() {
      return List.of(LoadCase.KERB, sample().named("other"));
    }

    @Override
    protected Stream<LoadCase> madeFromInputsChangedLater() {
      List<MassItem> items = new ArrayList<>(List.of(Vans.item("box", 1, 1, 0)));
      LoadCase made = new LoadCase("own", items);
      items.clear();
      return Stream.of(made);
    }

    @Override
    protected Stream<Object> partsHandedOut(LoadCase value) {
      return Stream.of(value.load());
    }
  }

  @Nested
  class Ledgers extends ValueTypeContract<MassLedger> {
    @Override
    protected MassLedger sample() {
      return ledger(10);
    }

    @Override
    protected List<MassLedger> different() {
      return List.of(ledger(11), ledger(10).removing(Vans.item("box", 1, 1, 0)));
    }

    @Override
    protected Stream<Object> partsHandedOut(MassLedger value) {
      return Stream.of(value.added(), value.removed());
    }
  }

  @Nested
  class LoadStates extends ValueTypeContract<LoadState> {
    @Override
    protected LoadState sample() {
      return ledger(10).after(LoadCase.KERB);
    }

    @Override
    protected List<LoadState> different() {
      return List.of(ledger(11).after(LoadCase.KERB), ledger(10).before(LoadCase.KERB));
    }
  }

  @Nested
  class Loads extends ValueTypeContract<AxleLoads> {
    @Override
    protected AxleLoads sample() {
      return new AxleLoads(kilograms(500), kilograms(400));
    }

    @Override
    protected List<AxleLoads> different() {
      return List.of(new AxleLoads(kilograms(400), kilograms(500)));
    }
  }

  @Nested
  class Wheels extends ValueTypeContract<WheelLoads> {
    @Override
    protected WheelLoads sample() {
      return Vans.full().build().wheels().orElseThrow();
    }

    @Override
    protected List<WheelLoads> different() {
      return List.of(ledger(5).after(LoadCase.KERB).wheels().orElseThrow());
    }
  }

  @Nested
  class Spreads extends ValueTypeContract<LoadSpread> {
    @Override
    protected LoadSpread sample() {
      return ledger(10).after(LoadCase.KERB).spread();
    }

    @Override
    protected List<LoadSpread> different() {
      return List.of(ledger(11).after(LoadCase.KERB).spread());
    }
  }

  @Nested
  class Stances extends ValueTypeContract<Stance> {
    @Override
    protected Stance sample() {
      return stance(1000);
    }

    @Override
    protected List<Stance> different() {
      return List.of(stance(1001), stance(1000).withGravity(metresPerSecondSquared(9.81)));
    }
  }

  @Nested
  class Forces extends ValueTypeContract<AxleForces> {
    @Override
    protected AxleForces sample() {
      return stance(1000).axleForces();
    }

    @Override
    protected List<AxleForces> different() {
      return List.of(stance(1001).axleForces());
    }
  }

  @Nested
  class Tyres extends ValueTypeContract<Tyre> {
    @Override
    protected Tyre sample() {
      return Tyre.parse("175/70 R14 84T");
    }

    @Override
    protected List<Tyre> different() {
      return Stream.of(
              "175/70 R14 85T",
              "175/70 R14",
              "175 R14",
              "5.60-15",
              "6.40-13 4PR",
              "185R14C 102/100Q",
              "175/70 R14 84T XL",
              "165 SR15")
          .map(Tyre::parse)
          .toList();
    }

    @Override
    protected Optional<Function<String, Tyre>> parser() {
      return Optional.of(Tyre::parse);
    }
  }

  @Nested
  class LoadIndices extends ValueTypeContract<LoadIndex> {
    @Override
    protected LoadIndex sample() {
      return new LoadIndex(84);
    }

    @Override
    protected List<LoadIndex> different() {
      return List.of(new LoadIndex(83), new LoadIndex(60));
    }

    @Override
    protected List<LoadIndex> rising() {
      return List.of(new LoadIndex(60), new LoadIndex(84), new LoadIndex(130));
    }
  }

  @Nested
  class InflationLaws extends ValueTypeContract<InflationLaw> {
    @Override
    protected InflationLaw sample() {
      return InflationLaw.of(kilograms(500), kilopascals(250));
    }

    @Override
    protected List<InflationLaw> different() {
      return List.of(
          InflationLaw.of(kilograms(501), kilopascals(250)),
          InflationLaw.of(kilograms(500), kilopascals(290)));
    }
  }

  @Nested
  class Lifts extends ValueTypeContract<AxleLift> {
    private AxleLiftBuilder lift(double kg) {
      return AxleLift.of(Vans.plain(), Axle.REAR)
          .reading(kilograms(kg))
          .rise(metres(0.6))
          .frontLoadedRadius(metres(0.3))
          .rearLoadedRadius(metres(0.3));
    }

    @Override
    protected AxleLift sample() {
      return lift(580).build();
    }

    @Override
    protected List<AxleLift> different() {
      return List.of(lift(581).build(), lift(582).scaleResolution(kilograms(1)).build());
    }
  }

  @Nested
  class Limits extends ValueTypeContract<AxleLimits> {
    @Override
    protected AxleLimits sample() {
      return AxleLimits.builder().frontAxle(kilograms(600)).build();
    }

    @Override
    protected List<AxleLimits> different() {
      return List.of(
          AxleLimits.builder().build(),
          AxleLimits.builder().rearAxle(kilograms(600)).build(),
          AxleLimits.builder().rearTyre(Tyre.parse("5.60-15")).build());
    }
  }

  @Nested
  class Balances extends ValueTypeContract<BrakeBalance> {
    @Override
    protected BrakeBalance sample() {
      return BrakeBalance.of(stance(1000), 0.3);
    }

    @Override
    protected List<BrakeBalance> different() {
      return List.of(
          BrakeBalance.of(stance(1000), 0.31),
          BrakeBalance.of(stance(1001), 0.3),
          BrakeBalance.of(stance(1000), 0.3, Basis.ESTIMATED));
    }

    @Override
    protected Stream<Object> partsHandedOut(BrakeBalance value) {
      return Stream.of(value.idealCurve(4, 0.8));
    }
  }

  @Nested
  class ParkingBrakes extends ValueTypeContract<ParkingBrake> {
    @Override
    protected ParkingBrake sample() {
      return ParkingBrake.on(Axle.REAR).withForce(newtons(3200), Basis.MEASURED);
    }

    @Override
    protected List<ParkingBrake> different() {
      return List.of(
          ParkingBrake.on(Axle.REAR),
          ParkingBrake.on(Axle.FRONT),
          ParkingBrake.on(Axle.REAR).withForce(newtons(3201), Basis.MEASURED));
    }
  }

  @Nested
  class StabilityFactors extends ValueTypeContract<StabilityFactor> {
    @Override
    protected StabilityFactor sample() {
      return StabilityFactor.of(stance(1000), metres(1.25));
    }

    @Override
    protected List<StabilityFactor> different() {
      return List.of(
          StabilityFactor.of(stance(1000), metres(1.26)),
          StabilityFactor.of(stance(1001), metres(1.25)));
    }
  }

  @Nested
  class Springs extends ValueTypeContract<AxleSpring> {
    @Override
    protected AxleSpring sample() {
      return AxleSpring.of(Axle.REAR, newtonsPerMillimetre(18), millimetres(75));
    }

    @Override
    protected List<AxleSpring> different() {
      return List.of(
          AxleSpring.of(Axle.FRONT, newtonsPerMillimetre(18), millimetres(75)),
          AxleSpring.of(Axle.REAR, newtonsPerMillimetre(19), millimetres(75)),
          AxleSpring.of(Axle.REAR, newtonsPerMillimetre(18), millimetres(76)),
          sample().withBasis(Basis.ESTIMATED));
    }
  }

  @Nested
  class Descents extends ValueTypeContract<Descent> {
    private DescentBuilder descent() {
      return Descent.builder()
          .mass(kilograms(1200))
          .drop(metres(400))
          .distance(kilometres(6))
          .speed(kilometresPerHour(40));
    }

    @Override
    protected Descent sample() {
      return descent().build();
    }

    @Override
    protected List<Descent> different() {
      return List.of(
          descent().mass(kilograms(1201)).build(), descent().resistance(newtons(1)).build());
    }
  }

  @Nested
  class HeatSinks extends ValueTypeContract<BrakeHeatSink> {
    @Override
    protected BrakeHeatSink sample() {
      return BrakeHeatSink.uncooled(Axle.REAR, kilojoulesPerKelvin(6));
    }

    @Override
    protected List<BrakeHeatSink> different() {
      return List.of(
          BrakeHeatSink.uncooled(Axle.FRONT, kilojoulesPerKelvin(6)),
          new BrakeHeatSink(Axle.REAR, kilojoulesPerKelvin(6), wattsPerKelvin(5)));
    }
  }

  @Nested
  class Stiffnesses extends ValueTypeContract<CorneringStiffness> {
    @Override
    protected CorneringStiffness sample() {
      return CorneringStiffness.ofAxle(Axle.FRONT, newtons(1200), degrees(1));
    }

    @Override
    protected List<CorneringStiffness> different() {
      return List.of(
          CorneringStiffness.ofTyre(Axle.FRONT, newtons(1200), degrees(1)),
          CorneringStiffness.ofAxle(Axle.REAR, newtons(1200), degrees(1)),
          sample().withBasis(Basis.ESTIMATED));
    }
  }

  @Nested
  class Understeers extends ValueTypeContract<Understeer> {
    private Understeer of(double kg, double rearN) {
      return Understeer.of(
          stance(kg),
          CorneringStiffness.ofAxle(Axle.FRONT, newtons(1200), degrees(1)),
          CorneringStiffness.ofAxle(Axle.REAR, newtons(rearN), degrees(1)));
    }

    @Override
    protected Understeer sample() {
      return of(1000, 1200);
    }

    @Override
    protected List<Understeer> different() {
      return List.of(of(1001, 1200), of(1000, 1201));
    }
  }

  @Nested
  class Comparisons extends ValueTypeContract<BrakeComparison> {
    @Override
    protected BrakeComparison sample() {
      return BrakeComparison.ofUnchangedBrakes(stance(1000), stance(1100), 0.3);
    }

    @Override
    protected List<BrakeComparison> different() {
      return List.of(BrakeComparison.ofUnchangedBrakes(stance(1000), stance(1100), 0.31));
    }
  }

  @Nested
  class RuleSets extends ValueTypeContract<RuleSet> {
    private RuleSet of(VehicleRule rule) {
      return RuleSet.of("invented", Source.standard("Isle of Example", "invented"), rule);
    }

    @Override
    protected RuleSet sample() {
      return of(new KerbMassRule(0.08, 0.2));
    }

    @Override
    protected List<RuleSet> different() {
      return List.of(
          of(new KerbMassRule(0.07, 0.2)),
          of(new AxleShareRule("kerb", Axle.FRONT, 0.4, 0.6)),
          of(new AxleShareShiftRule(0.05)),
          of(new AxleLoadRiseRule(Axle.REAR, 0.1)));
    }

    @Override
    protected Stream<Object> partsHandedOut(RuleSet value) {
      return Stream.of(value.rules());
    }
  }

  @Nested
  class Intervals extends ValueTypeContract<Spread<Mass>> {
    @Override
    protected Spread<Mass> sample() {
      return ledger(10).after(LoadCase.KERB).spread().total();
    }

    @Override
    protected List<Spread<Mass>> different() {
      return List.of(
          ledger(11).after(LoadCase.KERB).spread().total(),
          ledger(10).after(LoadCase.KERB).spread().front());
    }
  }

  @Nested
  class WheelSpreads extends ValueTypeContract<WheelSpread> {
    @Override
    protected WheelSpread sample() {
      return ledger(10).after(LoadCase.KERB).wheelSpread().orElseThrow();
    }

    @Override
    protected List<WheelSpread> different() {
      return List.of(ledger(11).after(LoadCase.KERB).wheelSpread().orElseThrow());
    }
  }

  @Nested
  class CentreSpreads extends ValueTypeContract<CentreSpread> {
    @Override
    protected boolean serialises() {
      return false;
    }

    @Override
    protected CentreSpread sample() {
      return ledger(10).after(LoadCase.KERB).centreSpread();
    }

    @Override
    protected List<CentreSpread> different() {
      return List.of(
          ledger(11).after(LoadCase.KERB).centreSpread(),
          MassLedger.of(Vans.plain()).after(LoadCase.KERB).centreSpread());
    }
  }

  @Nested
  class Centres extends ValueTypeContract<CentreOfGravity> {
    @Override
    protected boolean serialises() {
      return false;
    }

    @Override
    protected CentreOfGravity sample() {
      return ledger(10).after(LoadCase.KERB).centreOfGravity();
    }

    @Override
    protected List<CentreOfGravity> different() {
      return List.of(
          ledger(11).after(LoadCase.KERB).centreOfGravity(),
          MassLedger.of(Vans.plain()).after(LoadCase.KERB).centreOfGravity());
    }
  }

  @Nested
  class BrakeHeats extends ValueTypeContract<BrakeHeat> {
    @Override
    protected BrakeHeat sample() {
      return BrakeHeat.of(BrakeHeatSink.uncooled(Axle.REAR, kilojoulesPerKelvin(6)), celsius(300));
    }

    @Override
    protected List<BrakeHeat> different() {
      return List.of(
          BrakeHeat.of(BrakeHeatSink.uncooled(Axle.REAR, kilojoulesPerKelvin(7)), celsius(300)),
          BrakeHeat.of(BrakeHeatSink.uncooled(Axle.REAR, kilojoulesPerKelvin(6)), celsius(310)),
          sample().withBasis(Basis.MEASURED),
          sample().estimatedWithin(0.1));
    }
  }

  @Nested
  class Locks extends ValueTypeContract<FirstLock> {
    @Override
    protected FirstLock sample() {
      return BrakeBalance.of(stance(1000), 0.3).firstLock(0.8);
    }

    @Override
    protected List<FirstLock> different() {
      return List.of(
          BrakeBalance.of(stance(1000), 0.3).firstLock(0.7),
          BrakeBalance.of(stance(1000), 0.31).firstLock(0.8));
    }
  }

  @Nested
  class Occupants extends ValueTypeContract<OccupantMass> {
    @Override
    protected OccupantMass sample() {
      return new OccupantMass(kilograms(75), kilograms(5), Source.PHYSICS);
    }

    @Override
    protected List<OccupantMass> different() {
      return List.of(
          OccupantMass.SEATED_75_KG, new OccupantMass(kilograms(75), kilograms(6), Source.PHYSICS));
    }
  }

  @Nested
  class Influences extends ValueTypeContract<LoadInfluence> {
    @Override
    protected LoadInfluence sample() {
      return ledger(10).influenceOf(PLACE);
    }

    @Override
    protected List<LoadInfluence> different() {
      return List.of(ledger(10).influenceOf(Vans.at(2, 0.2, 0.5)));
    }
  }

  @Nested
  class Subjects extends ValueTypeContract<RuleSubject> {
    @Override
    protected RuleSubject sample() {
      return new RuleSubject(ledger(10), List.of(LoadCase.KERB));
    }

    @Override
    protected List<RuleSubject> different() {
      return List.of(
          new RuleSubject(ledger(11), List.of(LoadCase.KERB)),
          new RuleSubject(ledger(10), List.of(LoadCase.KERB, new LoadCase("own", List.of()))));
    }
  }
}
