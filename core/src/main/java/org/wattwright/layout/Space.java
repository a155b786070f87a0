package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wattwright.battery.BatteryModule;

/** All candidates in a fixed order: variant, then strings in parallel, then modules in series. */
record Space(List<Variant> variants, int seriesAtMost, int parallelAtMost) {

  static Space of(SearchDraft draft) {
    List<BatteryModule> modules = new ArrayList<>(draft.modules);
    modules.sort(Comparator.comparing(BatteryModule::name));
    List<Enclosure> enclosures = new ArrayList<>(draft.enclosures);
    enclosures.sort(Comparator.comparing(Enclosure::name));
    List<Variant> variants = new ArrayList<>();
    for (BatteryModule module : modules) {
      enclosures.forEach(enclosure -> variants.add(new Variant(module, enclosure)));
      if (enclosures.isEmpty()) {
        variants.add(new Variant(module, null));
      }
    }
    return new Space(List.copyOf(variants), draft.seriesAtMost, draft.parallelAtMost);
  }

  long size() {
    return perVariant() * variants.size();
  }

  int mostModules() {
    return seriesAtMost * parallelAtMost;
  }

  private long perVariant() {
    return (long) seriesAtMost * parallelAtMost;
  }

  int variantOf(long index) {
    return (int) (index / perVariant());
  }

  int parallelOf(long index) {
    return (int) (index % perVariant() / seriesAtMost) + 1;
  }

  int seriesOf(long index) {
    return (int) (index % seriesAtMost) + 1;
  }

  int modulesOf(long index) {
    return seriesOf(index) * parallelOf(index);
  }

  /** In words, for example {@code 2 module types × 1 … 200 in series × 1 … 20 in parallel}. */
  @Override
  public String toString() {
    long modules = variants.stream().map(v -> v.module().name()).distinct().count();
    long enclosures = variants.size() / modules;
    String types = modules == 1 ? "1 module type" : modules + " module types";
    String boxes = enclosures == 1 ? "" : " × " + enclosures + " types of enclosure";
    return types
        + boxes
        + " × 1 … "
        + seriesAtMost
        + " in series × 1 … "
        + parallelAtMost
        + " in parallel";
  }
}
