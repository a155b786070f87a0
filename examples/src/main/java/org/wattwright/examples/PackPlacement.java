package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.battery.BatteryModule;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.examples.job.BayInput;
import org.wattwright.layout.Allocation;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.Position;

/**
 * Where the modules of the chosen pack go: as the allocator found best; if it found nothing, bay
 * after bay in the order of the file, so that the sheet can show what is overloaded.
 *
 * <p>Immutable.
 *
 * @param module the type
 * @param wanted modules of the pack
 * @param bays the bays that hold a module
 */
record PackPlacement(BatteryModule module, int wanted, List<Filled> bays) {
  /** One bay and its modules. */
  record Filled(BayInput bay, int count) {}

  /** As allocated. */
  static PackPlacement of(Allocation allocation, List<BayInput> bays) {
    List<Filled> filled = new ArrayList<>();
    for (BayInput bay : bays) {
      int count = allocation.counts().getOrDefault(bay.name(), 0);
      if (count > 0) {
        filled.add(new Filled(bay, count));
      }
    }
    return new PackPlacement(allocation.module(), allocation.moduleCount(), List.copyOf(filled));
  }

  /** Each bay up to its room and its mass limit before the next one is begun. */
  static PackPlacement inOrder(BatteryModule module, int wanted, List<BayInput> bays) {
    List<Filled> filled = new ArrayList<>();
    int left = wanted;
    for (BayInput bay : bays) {
      int count = Math.min(left, room(bay, module));
      if (count > 0) {
        filled.add(new Filled(bay, count));
        left -= count;
      }
    }
    return new PackPlacement(module, wanted, List.copyOf(filled));
  }

  private static int room(BayInput bay, BatteryModule module) {
    int room = bay.roomFor(module.name());
    if (bay.massLimit().isEmpty()) {
      return room;
    }
    double freeKg = kg(bay.massLimit().get()) - kg(bay.enclosureTare());
    return Math.max(0, Math.min(room, (int) Math.floor(freeKg / kg(module.mass()))));
  }

  int placed() {
    return bays.stream().mapToInt(Filled::count).sum();
  }

  /** Modules in a bay; 0 in one that is not used. */
  int countIn(BayInput bay) {
    return bays.stream().filter(f -> f.bay().equals(bay)).mapToInt(Filled::count).sum();
  }

  /** Modules and enclosure of a bay; 0 kg in one that is not used. */
  Quantity<Mass> massIn(BayInput bay) {
    int count = countIn(bay);
    double tareKg = count > 0 ? kg(bay.enclosureTare()) : 0;
    return Kind.MASS.ofSi(count * kg(module.mass()) + tareKg);
  }

  /** Modules and enclosure of each bay in use. */
  List<MassItem> items() {
    List<MassItem> items = new ArrayList<>();
    for (Filled filled : bays) {
      BayInput bay = filled.bay();
      Position middle = middle(filled);
      Quantity<Mass> modules = Kind.MASS.ofSi(filled.count() * kg(module.mass()));
      items.add(
          MassItem.of(filled.count() + " modules, " + bay.name(), modules, middle)
              .withBasis(bay.basis()));
      if (kg(bay.enclosureTare()) > 0) {
        items.add(
            MassItem.of("enclosure, " + bay.name(), bay.enclosureTare(), middle)
                .withBasis(bay.basis()));
      }
    }
    return items;
  }

  /** The same, and the enclosures of the bays that are not in use. */
  List<MassItem> itemsWithAllEnclosures(List<BayInput> all) {
    List<MassItem> items = new ArrayList<>(items());
    for (BayInput bay : all) {
      if (countIn(bay) == 0 && !bay.keptFree() && kg(bay.enclosureTare()) > 0) {
        items.add(
            MassItem.of(
                "enclosure, " + bay.name(), bay.enclosureTare(), middle(new Filled(bay, 1))));
      }
    }
    return items;
  }

  /** Modules that find no bay would vanish from the axle loads, so their absence is a failure. */
  Check check() {
    return Check.named("pack.room", "modules that find a place in the bays")
        .source(Source.requirement("room and mass limits of the bays"))
        .cautionBand(CautionBand.NONE)
        .atLeast(Figure.count(placed()), Figure.count(wanted));
  }

  /** Middle between the first and the last module. */
  static Position middle(Filled filled) {
    double steps = (filled.count() - 1) / 2.0;
    BayInput bay = filled.bay();
    Position position =
        Position.behindFrontAxle(along(bay.first().behind(), bay.next().behind(), steps));
    if (bay.first().left().isPresent() && bay.next().left().isPresent()) {
      position =
          position.leftOfCentre(along(bay.first().left().get(), bay.next().left().get(), steps));
    }
    if (bay.first().above().isPresent() && bay.next().above().isPresent()) {
      position =
          position.aboveGround(along(bay.first().above().get(), bay.next().above().get(), steps));
    }
    return position;
  }

  private static Quantity<Length> along(
      Quantity<Length> first, Quantity<Length> next, double steps) {
    double firstM = Kind.LENGTH.siValueOf(first);
    return Kind.LENGTH.ofSi(firstM + steps * (Kind.LENGTH.siValueOf(next) - firstM));
  }

  private static double kg(Quantity<Mass> mass) {
    return Kind.MASS.siValueOf(mass);
  }
}
