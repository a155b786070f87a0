package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;

/** Reads {@code bays.csv}, {@code bay-room.csv} and {@code bay-links.csv}. */
final class BayFiles {
  private static final int MOST_MODULES = 10_000;

  private BayFiles() {}

  private record Room(Origin origin, String bay, String module, int most) {}

  private record Link(Origin origin, String from, String to, Quantity<Length> length) {}

  static List<BayInput> read(Path folder, List<ModuleInput> modules) {
    List<Room> rooms = CsvTable.read(folder.resolve("bay-room.csv")).map(BayFiles::room);
    List<Link> links = CsvTable.read(folder.resolve("bay-links.csv")).map(BayFiles::link);
    List<BayInput> bays =
        CsvTable.read(folder.resolve("bays.csv")).map(row -> bay(row, rooms, links));
    Map<String, BayInput> byName = Named.unique(bays, BayInput::name, BayInput::origin);
    Map<String, ModuleInput> byModule =
        Named.unique(modules, ModuleInput::name, ModuleInput::origin);
    for (Room room : rooms) {
      Named.find("bay", byName, room.bay(), room.origin());
      Named.find("module", byModule, room.module(), room.origin());
    }
    for (Link link : links) {
      Named.find("bay", byName, link.from(), link.origin());
      Named.find("bay", byName, link.to(), link.origin());
    }
    return bays;
  }

  private static Room room(CsvRow row) {
    return new Room(
        row.origin(),
        row.field("bay").text(),
        row.field("module").text(),
        row.field("most modules").count(1, MOST_MODULES));
  }

  private static Link link(CsvRow row) {
    Link link =
        new Link(
            row.origin(),
            row.field("from").text(),
            row.field("to").text(),
            row.field("length").nonNegative(Kind.LENGTH));
    if (link.from().equals(link.to())) {
      throw row.origin().error("a bay needs no cable to itself: " + Quoted.of(link.from()));
    }
    return link;
  }

  private static BayInput bay(CsvRow row, List<Room> rooms, List<Link> links) {
    String name = row.field("name").text();
    return new BayInput(
        row.origin(),
        name,
        row.field("kept free").choice(YesNo.class) == YesNo.YES,
        row.optional("mass limit").map(f -> f.positive(Kind.MASS)),
        row.field("enclosure tare").nonNegative(Kind.MASS),
        MassFiles.place(row, "first "),
        MassFiles.place(row, "next "),
        roomOf(name, rooms),
        linksOf(name, links),
        row.field("basis").choice(Basis.class),
        row.optional("source").map(Field::text).orElse(""));
  }

  private static Map<String, Integer> roomOf(String bay, List<Room> rooms) {
    Map<String, Integer> room = new HashMap<>();
    for (Room stated : rooms) {
      if (stated.bay().equals(bay) && room.put(stated.module(), stated.most()) != null) {
        throw stated
            .origin()
            .error("room for " + Quoted.of(stated.module()) + " stands twice for this bay");
      }
    }
    return room;
  }

  private static Map<String, Quantity<Length>> linksOf(String bay, List<Link> links) {
    Map<String, Quantity<Length>> lengths = new HashMap<>();
    for (Link link : links) {
      boolean starts = link.from().equals(bay);
      if (!starts && !link.to().equals(bay)) {
        continue;
      }
      String other = starts ? link.to() : link.from();
      if (lengths.put(other, link.length()) != null) {
        throw link.origin().error("cable between these bays stands twice");
      }
    }
    return lengths;
  }
}
