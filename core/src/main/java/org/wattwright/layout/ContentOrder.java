package org.wattwright.layout;

import java.util.List;
import org.wattwright.check.Recorder;

/**
 * Order of candidates that depends on what they are, never on how they were stated: mass, number of
 * modules, name, series, parallel, enclosure. No two candidates of a space are equal in it.
 */
final class ContentOrder {
  private final Space space;
  private final Term[] masses;

  ContentOrder(Space space) {
    this.space = space;
    List<Variant> variants = space.variants();
    masses = new Term[variants.size()];
    for (int i = 0; i < masses.length; i++) {
      masses[i] = SumProperties.mass().on(variants.get(i), Recorder.OFF);
    }
  }

  int compare(long first, long second) {
    int byMass = Double.compare(massKg(first), massKg(second));
    if (byMass != 0) {
      return byMass;
    }
    int byCount = Integer.compare(space.modulesOf(first), space.modulesOf(second));
    return byCount != 0 ? byCount : compareNames(first, second);
  }

  private double massKg(long index) {
    return masses[space.variantOf(index)].valueAt(
        space.seriesOf(index), space.parallelOf(index), Recorder.OFF);
  }

  private int compareNames(long first, long second) {
    Variant one = space.variants().get(space.variantOf(first));
    Variant other = space.variants().get(space.variantOf(second));
    int byModule = one.module().name().compareTo(other.module().name());
    if (byModule != 0) {
      return byModule;
    }
    int bySeries = Integer.compare(space.seriesOf(first), space.seriesOf(second));
    return bySeries != 0 ? bySeries : one.enclosureName().compareTo(other.enclosureName());
  }
}
