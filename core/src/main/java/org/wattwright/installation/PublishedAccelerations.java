package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.STANDARD_GRAVITY;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.wattwright.check.Source;
import org.wattwright.internal.ResourceTable;

/** The table of published accelerations; an empty cell is a direction the rule does not state. */
final class PublishedAccelerations {
  static final Map<String, AccelerationRules> ALL = read();

  private PublishedAccelerations() {}

  private static Map<String, AccelerationRules> read() {
    Map<String, AccelerationRules> all = new LinkedHashMap<>();
    for (ResourceTable.Row row :
        ResourceTable.read(PublishedAccelerations.class, "accelerations.csv").rows()) {
      all.put(row.text("code"), rule(row));
    }
    return Collections.unmodifiableMap(all);
  }

  private static AccelerationRules rule(ResourceTable.Row row) {
    Map<LoadDirection, Quantity<Acceleration>> stated = new EnumMap<>(LoadDirection.class);
    for (LoadDirection direction : LoadDirection.values()) {
      String column = direction.name().toLowerCase(Locale.ROOT) + " [g]";
      if (!row.isEmpty(column)) {
        stated.put(direction, STANDARD_GRAVITY.of(row.number(column)));
      }
    }
    Source seen = Source.standard(row.text("source"), row.text("place"));
    Source source = row.text("obtained").equals("memory") ? seen.fromMemory() : seen;
    return new AccelerationRules(row.text("name"), row.text("categories"), source, stated);
  }
}
