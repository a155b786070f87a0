package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A whole calculation sheet: what to read, then appendices to look things up in.
 *
 * <p>Immutable and thread-safe.
 *
 * @param title what was calculated
 * @param subtitle for whom, and on what
 * @param sections in reading order
 * @param appendices what stands behind, in order
 * @param imprint version of the library and fingerprint of the inputs
 */
public record CalculationSheet(
    String title,
    String subtitle,
    List<Section> sections,
    List<Section> appendices,
    Imprint imprint) {
  /**
   * Copies the lists.
   *
   * @param title what was calculated
   * @param subtitle for whom, and on what
   * @param sections in reading order
   * @param appendices what stands behind, in order
   * @param imprint version of the library and fingerprint of the inputs
   */
  public CalculationSheet {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    Objects.requireNonNull(imprint, "imprint");
    sections = List.copyOf(sections);
    appendices = List.copyOf(appendices);
  }

  /**
   * A sheet without appendices, of whose inputs no fingerprint was taken.
   *
   * @param title what was calculated
   * @param subtitle for whom, and on what
   * @param sections in reading order
   */
  public CalculationSheet(String title, String subtitle, List<Section> sections) {
    this(title, subtitle, sections, List.of(), Imprint.withoutInputs());
  }

  /**
   * With one more appendix.
   *
   * @param appendix behind those given before
   * @return a longer sheet
   */
  public CalculationSheet withAppendix(Section appendix) {
    List<Section> all = new ArrayList<>(appendices);
    all.add(Objects.requireNonNull(appendix, "appendix"));
    return new CalculationSheet(title, subtitle, sections, all, imprint);
  }

  /**
   * With the fingerprint of the inputs.
   *
   * @param inputs their fingerprint
   * @return a sheet that differs in its imprint alone
   */
  public CalculationSheet withInputs(Fingerprint inputs) {
    return new CalculationSheet(title, subtitle, sections, appendices, Imprint.of(inputs));
  }

  /**
   * With the workings out of the way: every {@link Working} of the sections moves into one more
   * appendix, "Working", with a part for each section that had any. A part of a section moves as a
   * whole if its title begins with "Working", or if it holds nothing to look at but workings and
   * paragraphs.
   *
   * @return a sheet with a shorter part to read; this one if there is no working
   */
  public CalculationSheet withWorkingBehind() {
    WorkingShelf shelf = new WorkingShelf();
    List<Section> kept = sections.stream().map(shelf::withoutWorking).toList();
    return shelf.isEmpty()
        ? this
        : new CalculationSheet(title, subtitle, kept, appendices, imprint)
            .withAppendix(shelf.toSection());
  }

  /**
   * Title and titles of the sections.
   *
   * @return for example {@code bakery van: Cautions, Pack, Checks}
   */
  @Override
  public String toString() {
    return title + ": " + String.join(", ", sections.stream().map(Section::title).toList());
  }
}
