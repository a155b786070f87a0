package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * What the vehicle may weigh: plates of the axles, gross mass, gross combination, tyres.
 *
 * <p>A limit that is not given is NOT_CHECKED and named. An overload is a FAIL, never an error. A
 * load within its limit whose worst case over the stated tolerances breaks it is a CAUTION.
 *
 * <pre>{@code
 * AxleLimits limits = AxleLimits.builder()
 *     .frontAxle(kilograms(620)).rearAxle(kilograms(780)).grossMass(kilograms(1350))
 *     .frontTyre(Tyre.parse("5.60-15"))
 *     .build();
 * limits.check(ledger.after(laden)).forEach(System.out::println);
 * }</pre>
 *
 * <p>Codes: {@code axle.front}, {@code axle.rear}, {@code mass.gross}, {@code tyre.front}, {@code
 * tyre.rear}, {@code wheel.front}, {@code wheel.rear}, {@code axle.front.grounded}, {@code
 * axle.rear.grounded}, {@code mass.combination}, {@code axle.plates}. Immutable and thread-safe.
 */
public final class AxleLimits implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source PLATE = Source.dataSheet("plate or type approval of the vehicle");
  private static final Source TYRES = Source.standard("UN R30 and UN R54", "load index");

  /** Usual caution band relative to the limit; common practice. */
  private static final double USUAL_BAND = 0.05;

  private final AxleLimitsBuilder.Fields fields;

  AxleLimits(AxleLimitsBuilder.Fields fields) {
    this.fields = fields;
  }

  /**
   * Starts without any limit.
   *
   * @return a builder
   */
  public static AxleLimitsBuilder builder() {
    return new AxleLimitsBuilder();
  }

  /**
   * Permitted load of an axle.
   *
   * @param axle front or rear
   * @return empty if not given
   */
  public Optional<Quantity<Mass>> plate(Axle axle) {
    return Optional.ofNullable(axle == Axle.FRONT ? fields.frontAxle() : fields.rearAxle());
  }

  /**
   * Permitted mass of the laden vehicle.
   *
   * @return empty if not given
   */
  public Optional<Quantity<Mass>> grossMass() {
    return Optional.ofNullable(fields.grossMass());
  }

  /**
   * Permitted mass of vehicle and trailer together.
   *
   * @return empty if not given
   */
  public Optional<Quantity<Mass>> grossCombination() {
    return Optional.ofNullable(fields.grossCombination());
  }

  /**
   * Load that the tyres of an axle may carry.
   *
   * @param axle front or rear
   * @return empty if tyre or load index are not given
   */
  public Optional<Quantity<Mass>> tyreCapacity(Axle axle) {
    return Optional.ofNullable(tyre(axle)).flatMap(tyre -> tyre.axleCapacity(wheels(axle)));
  }

  private @Nullable Tyre tyre(Axle axle) {
    return axle == Axle.FRONT ? fields.frontTyre() : fields.rearTyre();
  }

  private AxleWheels wheels(Axle axle) {
    return axle == Axle.FRONT ? AxleWheels.SINGLE : fields.rearWheels();
  }

  /**
   * All limits against one load case.
   *
   * @param state the vehicle in that load case
   * @return one check for each limit, in a fixed order
   */
  public List<Check> check(LoadState state) {
    List<Check> checks = new ArrayList<>();
    LoadSpread spread = state.spread();
    for (Axle axle : Axle.values()) {
      checks.add(grounded(state, axle));
      checks.add(plateCheck(state, axle, spread.on(axle)));
      checks.add(tyreCheck(state, axle, spread.on(axle)));
      checks.add(wheelCheck(state, axle));
    }
    checks.add(grossCheck(state, spread.total()));
    return List.copyOf(checks);
  }

  private static Check grounded(LoadState state, Axle axle) {
    return named(state, "axle." + axle + ".grounded", axle + " axle stays on the ground")
        .source(Source.PHYSICS)
        .cautionBand(CautionBand.NONE)
        .atLeast(mass(state.axles().on(axle)), mass(KILOGRAM.of(0)));
  }

  private Check plateCheck(LoadState state, Axle axle, Spread<Mass> load) {
    CheckBuilder check = named(state, "axle." + axle, axle + " axle load against its plate");
    return atMost(check.source(PLATE), load, plate(axle), "AxleLimits." + axle + "Axle");
  }

  private Check tyreCheck(LoadState state, Axle axle, Spread<Mass> load) {
    CheckBuilder check = named(state, "tyre." + axle, axle + " axle load against its tyres");
    return atMost(check.source(TYRES), load, tyreCapacity(axle), missingTyre(axle));
  }

  private String missingTyre(Axle axle) {
    Tyre tyre = tyre(axle);
    String field = "AxleLimits." + axle + "Tyre";
    return tyre == null ? field : field + " load index (" + tyre + " shows none for its use)";
  }

  private Check wheelCheck(LoadState state, Axle axle) {
    CheckBuilder check =
        named(state, "wheel." + axle, "heavier " + axle + " wheel against its tyres").source(TYRES);
    Optional<WheelLoads> wheels = state.wheels();
    Optional<Quantity<Mass>> capacity = tyreCapacity(axle);
    if (wheels.isEmpty() || capacity.isEmpty()) {
      List<String> missing = new ArrayList<>(state.missingForWheels());
      capacity.ifPresentOrElse(q -> {}, () -> missing.add(missingTyre(axle)));
      return check.notChecked(missing.toArray(String[]::new));
    }
    double perSideKg = Kind.MASS.siValueOf(capacity.get()) / 2;
    return check
        .basis(state.basis().and(state.vehicle().rollSplit().basis()).and(Basis.DATA_SHEET))
        .atMost(mass(wheels.get().heavier(axle)), mass(Si.mass(perSideKg)));
  }

  private Check grossCheck(LoadState state, Spread<Mass> load) {
    CheckBuilder check = named(state, "mass.gross", "mass of the vehicle against its gross mass");
    return atMost(check.source(PLATE), load, grossMass(), "AxleLimits.grossMass");
  }

  /**
   * Vehicle and trailer against the gross combination.
   *
   * @param state the vehicle in its load case
   * @param trailer mass of the laden trailer, ≥ 0 kg
   * @return the check {@code mass.combination}
   * @throws org.wattwright.units.InvalidInputException if the trailer's mass is negative
   */
  public Check checkCombination(LoadState state, Quantity<Mass> trailer) {
    double trailerKg = Require.quantity("AxleLimits.trailer", trailer, KILOGRAM).nonNegative();
    CheckBuilder check =
        named(state, "mass.combination", "vehicle and trailer against the gross combination");
    Spread<Mass> alone = state.spread().total();
    return atMost(
        check.source(PLATE),
        alone.plus(trailerKg),
        grossCombination(),
        "AxleLimits.grossCombination");
  }

  /**
   * Whether the plates fit together: the permitted axle loads must sum to at least the gross mass.
   *
   * <p>Source: Regulation (EU) No 1230/2012, Annex I Part A 2.1.
   *
   * @return the check {@code axle.plates}
   */
  public Check checkPlates() {
    CheckBuilder check =
        Check.named("axle.plates", "sum of the axle plates against the gross mass")
            .source(Source.standard("Regulation (EU) No 1230/2012", "Annex I Part A 2.1"))
            .cautionBand(CautionBand.NONE);
    Optional<Quantity<Mass>> front = plate(Axle.FRONT);
    Optional<Quantity<Mass>> rear = plate(Axle.REAR);
    Optional<Quantity<Mass>> gross = grossMass();
    if (front.isEmpty() || rear.isEmpty() || gross.isEmpty()) {
      List<String> missing = new ArrayList<>();
      front.ifPresentOrElse(q -> {}, () -> missing.add("AxleLimits.frontAxle"));
      rear.ifPresentOrElse(q -> {}, () -> missing.add("AxleLimits.rearAxle"));
      gross.ifPresentOrElse(q -> {}, () -> missing.add("AxleLimits.grossMass"));
      return check.notChecked(missing.toArray(String[]::new));
    }
    double sumKg = Kind.MASS.siValueOf(front.get()) + Kind.MASS.siValueOf(rear.get());
    return check.atLeast(mass(Si.mass(sumKg)), mass(gross.get()));
  }

  private static CheckBuilder named(LoadState state, String code, String what) {
    return Check.named(code, what + ", " + state.loadCase().name())
        .basis(state.basis().and(Basis.DATA_SHEET))
        .safety();
  }

  private static Check atMost(
      CheckBuilder check, Spread<Mass> load, Optional<Quantity<Mass>> limit, String missing) {
    if (limit.isEmpty()) {
      return check.notChecked(missing);
    }
    double upKg = Kind.MASS.siValueOf(load.highest()) - Kind.MASS.siValueOf(load.nominal());
    double bandKg = Math.max(upKg, USUAL_BAND * Kind.MASS.siValueOf(limit.get()));
    String note = upKg > 0 ? "worst case over the tolerances " + mass(load.highest()) : "";
    return check
        .note(note)
        .cautionBand(CautionBand.absolute(Si.mass(bandKg), Kind.MASS))
        .atMost(mass(load.nominal()), mass(limit.get()));
  }

  private static Figure mass(Quantity<Mass> mass) {
    return Figure.of(mass, KILOGRAM);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof AxleLimits that && fields.equals(that.fields));
  }

  @Override
  public int hashCode() {
    return fields.hashCode();
  }

  /**
   * The limits that are given.
   *
   * @return for example {@code front 620 kg, rear 780 kg, gross 1350 kg}
   */
  @Override
  public String toString() {
    return "front "
        + plate(Axle.FRONT).map(Object::toString).orElse("not given")
        + ", rear "
        + plate(Axle.REAR).map(Object::toString).orElse("not given")
        + ", gross "
        + grossMass().map(Object::toString).orElse("not given");
  }
}
