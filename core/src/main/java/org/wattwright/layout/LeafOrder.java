package org.wattwright.layout;

import java.util.Comparator;

/**
 * Best first: within the threshold fewest enclosures, then shortest link cable, then lowest centre
 * of gravity, then least deviation; beyond it least deviation first. Content last, so that no two
 * are equal.
 */
record LeafOrder(double threshold) implements Comparator<Leaf> {
  /** Nothing is within: deviation decides first. */
  static final LeafOrder BY_DEVIATION = new LeafOrder(-1);

  @Override
  public int compare(Leaf one, Leaf other) {
    int order = Double.compare(beyond(one), beyond(other));
    order = order != 0 ? order : Integer.compare(one.enclosures(), other.enclosures());
    order = order != 0 ? order : Long.compare(one.linkNm(), other.linkNm());
    order = order != 0 ? order : Double.compare(one.heightM(), other.heightM());
    order = order != 0 ? order : Double.compare(one.deviation(), other.deviation());
    return order != 0 ? order : one.compareContent(other);
  }

  private double beyond(Leaf leaf) {
    return leaf.deviation() <= threshold ? 0 : leaf.deviation();
  }

  /** Whether so many enclosures alone already put an allocation within the threshold behind. */
  boolean isBehind(Leaf last, double deviation, int enclosures) {
    double beyond = deviation <= threshold ? 0 : deviation;
    int order = Double.compare(beyond, beyond(last));
    return order > 0 || (order == 0 && enclosures > last.enclosures());
  }
}
