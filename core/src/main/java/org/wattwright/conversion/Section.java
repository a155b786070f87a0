package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A section with its blocks and, below them, its parts.
 *
 * <p>Immutable; the {@code with} methods return a longer section.
 *
 * @param title its heading
 * @param blocks in reading order
 * @param parts sections of the next level
 */
public record Section(String title, List<Block> blocks, List<Section> parts) {
  /**
   * Copies the lists.
   *
   * @param title its heading
   * @param blocks in reading order
   * @param parts sections of the next level
   */
  public Section {
    Objects.requireNonNull(title, "title");
    blocks = List.copyOf(blocks);
    parts = List.copyOf(parts);
  }

  /**
   * An empty section.
   *
   * @param title its heading
   * @return the section
   */
  public static Section of(String title) {
    return new Section(title, List.of(), List.of());
  }

  /**
   * This section with more blocks.
   *
   * @param more in reading order
   * @return a longer section
   */
  public Section with(Block... more) {
    List<Block> all = new ArrayList<>(blocks);
    all.addAll(Arrays.asList(more));
    return new Section(title, all, parts);
  }

  /**
   * This section with more parts.
   *
   * @param more in reading order
   * @return a longer section
   */
  public Section withParts(Section... more) {
    List<Section> all = new ArrayList<>(parts);
    all.addAll(Arrays.asList(more));
    return new Section(title, blocks, all);
  }

  /**
   * Title and size.
   *
   * @return for example {@code Pack (1 block, 2 parts)}
   */
  @Override
  public String toString() {
    return title + " (" + count(blocks, "block") + ", " + count(parts, "part") + ")";
  }

  private static String count(List<?> items, String what) {
    return items.size() + " " + what + (items.size() == 1 ? "" : "s");
  }
}
