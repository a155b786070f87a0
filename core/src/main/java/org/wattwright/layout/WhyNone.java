package org.wattwright.layout;

import java.util.List;

/** Says why nothing was found, and what would help. */
final class WhyNone {
  private WhyNone() {}

  static String text(PackSearch.Result result, Space space) {
    StringBuilder out = new StringBuilder();
    long found = result.feasibleCount() + result.provisionalCount();
    if (found > 0) {
      out.append(found).append(" of ").append(result.candidateCount());
      return out.append(" candidates meet every requirement.\n").toString();
    }
    out.append("No candidate among ").append(result.candidateCount());
    out.append(" meets every requirement (").append(space).append(").\n");
    if (result.coverage().status() == Coverage.Status.STOPPED) {
      out.append(result.coverage()).append(".\n");
    }
    out.append("Ruled out, a candidate by every requirement it breaks:\n");
    result.rejections().forEach(rejection -> out.append("  ").append(rejection).append('\n'));
    appendRelaxations(out, result.relaxations());
    return out.toString();
  }

  private static void appendRelaxations(StringBuilder out, List<Relaxation> relaxations) {
    if (relaxations.isEmpty()) {
      out.append("No change of one limit alone would admit a candidate.\n");
      return;
    }
    out.append("Any one of these changes would admit a candidate:\n");
    relaxations.forEach(relaxation -> out.append("  ").append(relaxation).append('\n'));
  }
}
