package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;

/** Takes the workings out of sections and keeps them, under the titles they stood under. */
final class WorkingShelf {
  private static final String TITLE = "Working";

  private final List<Section> taken = new ArrayList<>();

  /** The section without its workings, which are kept here. */
  Section withoutWorking(Section section) {
    List<Section> parts = section.parts().stream().filter(part -> !isWorking(part)).toList();
    List<Section> moved = new ArrayList<>();
    List<Section> left = new ArrayList<>();
    for (Section part : section.parts()) {
      if (isWorking(part)) {
        moved.add(part);
      }
    }
    for (Section part : parts) {
      WorkingShelf inner = new WorkingShelf();
      left.add(inner.withoutWorking(part));
      moved.addAll(inner.taken);
    }
    Block[] workings = section.blocks().stream().filter(this::isWorking).toArray(Block[]::new);
    if (workings.length > 0 || !moved.isEmpty()) {
      taken.add(
          Section.of(section.title()).with(workings).withParts(moved.toArray(Section[]::new)));
    }
    return new Section(
        section.title(),
        section.blocks().stream().filter(block -> !isWorking(block)).toList(),
        left);
  }

  private boolean isWorking(Block block) {
    return block instanceof Working;
  }

  private static boolean isWorking(Section part) {
    boolean isNamedSo = part.title().startsWith(TITLE);
    boolean holdsAny = part.blocks().stream().anyMatch(Working.class::isInstance);
    boolean holdsElse =
        part.blocks().stream().anyMatch(b -> !(b instanceof Working || b instanceof Paragraph));
    return isNamedSo || (holdsAny && !holdsElse && part.parts().isEmpty());
  }

  boolean isEmpty() {
    return taken.isEmpty();
  }

  /** One appendix with a part for each section that had workings. */
  Section toSection() {
    return Section.of(TITLE).withParts(taken.toArray(Section[]::new));
  }
}
