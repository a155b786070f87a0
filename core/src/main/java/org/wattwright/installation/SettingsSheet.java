package org.wattwright.installation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;

/**
 * What to set on every device: device, setting, value, tolerance, why, source. Immutable and
 * thread-safe.
 *
 * @param settings in the order to print
 */
public record SettingsSheet(List<Setting> settings) implements Serializable {
  /**
   * Copies the list.
   *
   * @param settings in the order to print
   */
  public SettingsSheet {
    settings = List.copyOf(settings);
  }

  /**
   * With one more.
   *
   * @param setting the last line
   * @return a new sheet
   */
  public SettingsSheet and(Setting setting) {
    List<Setting> all = new ArrayList<>(settings);
    all.add(Objects.requireNonNull(setting, "setting"));
    return new SettingsSheet(all);
  }

  /**
   * The settings of one device.
   *
   * @param device its name
   * @return in order; may be empty
   */
  public List<Setting> forDevice(String device) {
    return settings.stream().filter(s -> s.device().equals(device)).toList();
  }

  /**
   * A Markdown table.
   *
   * @return the table, ending with a line feed
   */
  public String toMarkdown() {
    MarkdownTable table =
        MarkdownTable.withColumns("Device", "Setting", "Value", "Tolerance", "Why", "Source");
    for (Setting s : settings) {
      table.row(
          s.device(),
          s.name(),
          s.value().toString(),
          s.tolerance().map(Figure::toString).map(t -> "± " + t).orElse(""),
          s.why(),
          s.source().toString());
    }
    return table.toText();
  }

  /**
   * Number of settings; {@link #toMarkdown} prints all.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return settings.size() + " settings; toMarkdown() prints them";
  }
}
