package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** The checks of one retention. */
final class RetentionChecks {
  private final Retention retention;

  RetentionChecks(Retention retention) {
    this.retention = retention;
  }

  List<Check> all() {
    List<Check> checks = new ArrayList<>(rules());
    held().ifPresent(checks::add);
    for (FixingMode mode : FixingMode.values()) {
      checks.add(mode(mode));
    }
    checks.addAll(service());
    return List.copyOf(checks);
  }

  private CheckBuilder named(String code, String what) {
    return Check.named(code, retention.name() + ": " + what).safety();
  }

  private List<Check> rules() {
    CheckBuilder rule =
        named("installation.acceleration-rules", "accelerations the mounting must stand");
    Optional<AccelerationRules> chosen = retention.rules();
    if (chosen.isEmpty()) {
      return List.of(
          rule.source(Source.requirement("rule that applies to the vehicle"))
              .answeredBy(Party.APPROVING_ENGINEER)
              .notChecked("retention.accelerationRules"));
    }
    rule.source(chosen.get().source()).note(chosen.get().toString());
    String[] missing =
        List.of(LoadDirection.values()).stream()
            .filter(direction -> chosen.get().acceleration(direction).isEmpty())
            .map(direction -> "accelerationRules." + direction.name().toLowerCase(Locale.ROOT))
            .toArray(String[]::new);
    return List.of(missing.length == 0 ? rule.holds(true) : rule.notChecked(missing));
  }

  private Optional<Check> held() {
    if (retention.rules().isEmpty()) {
      return Optional.empty();
    }
    List<LoadDirection> loose = retention.notHeld();
    CheckBuilder check =
        named("installation.held", "the pattern of fixings holds every load")
            .source(FixingGroup.SOURCE)
            .basis(retention.basis());
    if (!loose.isEmpty()) {
      check.note("turns freely when thrown " + loose);
    }
    return Optional.of(check.holds(loose.isEmpty()));
  }

  private Check mode(FixingMode mode) {
    CheckBuilder check =
        named(mode.code(), mode.toString()).source(source(mode)).basis(retention.basis());
    Optional<FixingUse> worst =
        retention.uses().stream()
            .filter(use -> use.mode() == mode)
            .max(Comparator.comparingDouble(FixingUse::share));
    List<String> unknown = unknown(mode);
    worst.ifPresent(use -> check.note(use.fixing() + ", thrown " + use.direction() + note(mode)));
    if (worst.isPresent() && (unknown.isEmpty() || worst.get().share() > 1)) {
      return check.atMost(worst.get().actual(), worst.get().limit());
    }
    return check.notChecked(unknown.toArray(String[]::new));
  }

  private String note(FixingMode mode) {
    return mode == FixingMode.BOLT_COMBINED ? "; " + retention.interaction() : "";
  }

  private Source source(FixingMode mode) {
    return switch (mode) {
      case BOLT_COMBINED -> retention.interaction().source();
      case PANEL_BEARING, PANEL_PULL_OUT -> Panel.source();
      case BOLT_SHEAR, BOLT_TENSION -> Bolt.SOURCE;
    };
  }

  /** Inputs without which a mode cannot be called kept. */
  private List<String> unknown(FixingMode mode) {
    List<String> missing = new ArrayList<>();
    if (retention.rules().isEmpty()) {
      missing.add("retention.accelerationRules");
    } else if (!retention.notHeld().isEmpty()) {
      missing.add("retention.fixings that hold every load");
    } else if (retention.rules().get().accelerations().isEmpty()) {
      missing.add("accelerationRules.accelerations");
    }
    if (mode.isOfPanel()) {
      retention.group().fixings().stream()
          .filter(fixing -> fixing.panel().isEmpty())
          .forEach(fixing -> missing.add(fixing.name() + ".panel"));
    }
    return missing;
  }

  private List<Check> service() {
    CheckBuilder slip =
        named("installation.slip", "side load in service against friction of the clamped faces")
            .source(PreloadedJoint.SOURCE);
    RetentionBuilder.Clamping clamping = retention.clamping();
    if (clamping == null) {
      return List.of(slip.notChecked("retention.preload", "retention.friction"));
    }
    return List.of(slip(slip, clamping), preload(clamping));
  }

  /** Worst of the service loads: μ·(Σ preload − pull) against the load along the face. */
  private Check slip(CheckBuilder check, RetentionBuilder.Clamping clamping) {
    double clampN =
        retention.group().fixings().size() * Kind.FORCE.siValueOf(clamping.preload().low());
    RetentionLoads loads = retention.serviceLoads();
    double worstN = 0;
    double limitN = clamping.friction() * clampN;
    double worstShare = -1;
    for (RetentionLoads.Load load : loads.loads()) {
      double[] forceN = load.forceN(loads.massKg());
      double heldN = Math.max(0, clamping.friction() * (clampN - Math.max(0, forceN[2])));
      double alongN = Math.hypot(forceN[0], forceN[1]);
      double share = heldN > 0 ? alongN / heldN : Double.POSITIVE_INFINITY;
      if (share > worstShare) {
        worstShare = share;
        worstN = alongN;
        limitN = heldN;
        check.note("thrown " + load.direction() + ", low end of the preload");
      }
    }
    check.basis(retention.basis()).estimated("retention.preload");
    return worstShare < 0
        ? check.notChecked("retention.service.accelerations")
        : check.atMost(Figure.ofSi(worstN, NEWTON), Figure.ofSi(limitN, NEWTON));
  }

  /** The high end of the preload against the weakest bolt. */
  private Check preload(RetentionBuilder.Clamping clamping) {
    double proofN =
        retention.group().fixings().stream().mapToDouble(f -> f.bolt().proofN()).min().orElse(0);
    return named("installation.preload", "high end of the preload against the proof load")
        .source(PropertyClass.SOURCE)
        .estimated("retention.preload")
        .atMost(Figure.of(clamping.preload().high(), NEWTON), Figure.ofSi(proofN, NEWTON));
  }
}
