package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.metres;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.check.Outcome;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Conventional masses and the rule of the plates. */
class MassReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final Position PLACE = Vans.at(2.4, 0, 0.5);

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/masses.csv");

  private static ReferenceRow row(String number) {
    return ROWS.row("MAS-" + number);
  }

  @Test
  void conventionalMasses() {
    VALIDATION.transcribed(row("001"), OccupantMass.SEATED_75_KG.body(), Kind.MASS);
    VALIDATION.transcribed(row("003"), OccupantMass.SEATED_75_KG.body(), Kind.MASS);
    VALIDATION.transcribed(row("010"), OccupantMass.WITH_LUGGAGE_68_7_KG.body(), Kind.MASS);
    VALIDATION.transcribed(row("011"), OccupantMass.WITH_LUGGAGE_68_7_KG.luggage(), Kind.MASS);
  }

  /** A ledger with the driver in it, and the driver taken out. */
  @Test
  void unladenMassIsWithoutTheDriver() {
    MassItem driver =
        MassItem.of("driver", OccupantMass.SEATED_75_KG.body(), Vans.at(1.2, 0.3, 0.7));
    LoadState unladen = weighed(1050).removing(driver).after(LoadCase.KERB);
    VALIDATION.computed(row("008"), unladen.total(), Kind.MASS);
  }

  /** What is left to carry when the driver, three passengers and the equipment are in. */
  @Test
  void payloadIsWhatIsLeftToTheGrossMass() {
    MassLedger ledger = weighed(1050 - 75).adding(Vans.item("optional equipment", 20, 1, 0));
    Seating seating =
        Seating.driverAt(Vans.at(1.2, 0.3, 0.7))
            .row("front", 1, Vans.at(1.2, -0.3, 0.7))
            .row("rear", 2, Vans.at(2, 0, 0.7));
    LoadCase seats = LoadCase.allSeats(seating);
    LoadCase laden = ledger.ladenTo(kilograms(1400), seats, Vans.at(2, 0, 0.7));
    MassItem goods = laden.load().get(laden.load().size() - 1);
    assertThat(laden.load()).hasSize(seats.load().size() + 1);
    VALIDATION.computed(row("009"), goods.mass(), Kind.MASS);
  }

  @Test
  void fuelInTheTank() {
    VALIDATION.transcribed(row("028"), Fuel.PETROL.lowestDensity(), Kind.DENSITY);
    VALIDATION.transcribed(row("029"), Fuel.PETROL.highestDensity(), Kind.DENSITY);
    double fullKg = Kind.MASS.siValueOf(Fuel.PETROL.inTank(litres(40), PLACE).mass());
    double leastKg = Kind.MASS.siValueOf(Fuel.PETROL.inRunningOrder(litres(40), PLACE).mass());
    VALIDATION.transcribed(row("002"), 100 * leastKg / fullKg);
  }

  @Test
  void whatIsNotWorkedOut() {
    for (String number : List.of("004", "005", "006", "007")) {
      VALIDATION.notCovered(row(number), "a definition: a ledger starts from what was weighed");
    }
    VALIDATION.notCovered(row("012"), "an occupant of another mass is stated as OccupantMass");
    for (String number : List.of("013", "014")) {
      VALIDATION.notCovered(row(number), "a rule that is given as data");
    }
    for (String number : List.of("015", "016")) {
      VALIDATION.notCovered(row(number), "categories of vehicles are not told apart");
    }
    for (String number : List.of("017", "018", "019")) {
      VALIDATION.notCovered(row(number), "test mass of a drive cycle, not a load of the axles");
    }
    VALIDATION.notCovered(row("020"), "no trailer is reckoned with");
    for (String number : List.of("021", "022", "023", "024", "025")) {
      VALIDATION.notCovered(row(number), "classes of drive cycles do not concern the masses");
    }
  }

  private static MassLedger weighed(double kg) {
    return MassLedger.of(
        WeighedVehicle.withWheelbase(metres(2.3))
            .frontAxle(kilograms(550))
            .rearAxle(kilograms(kg - 550))
            .build());
  }

  @Test
  void sumOfPlates() {
    VALIDATION.computed(row("026"), verdict(row("026")));
    VALIDATION.computed(row("027"), verdict(row("027")));
  }

  private static String verdict(ReferenceRow row) {
    AxleLimits limits =
        AxleLimits.builder()
            .frontAxle(kilograms(number(row, "front limit")))
            .rearAxle(kilograms(number(row, "rear limit")))
            .grossMass(kilograms(number(row, "maximum laden mass")))
            .build();
    return limits.checkPlates().outcome() == Outcome.PASS ? "pass" : "fail";
  }

  /** These conditions read "front limit 620 kg". */
  private static double number(ReferenceRow row, String start) {
    String text =
        row.conditions().keySet().stream()
            .filter(k -> k.startsWith(start))
            .findFirst()
            .orElseThrow();
    return Double.parseDouble(text.substring(start.length()).replace("kg", "").strip());
  }
}
