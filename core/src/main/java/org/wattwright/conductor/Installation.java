package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.CELSIUS;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Where a conductor lies: the air around it, a hot surface it looks at, its loaded neighbours.
 *
 * <p>The heat balance holds for a cable alone in still air. Loaded neighbours and conduits are
 * brought in by published factors on the current: I is compared as I/f. A warm bay is free air at
 * the bay's temperature. Immutable and thread-safe.
 *
 * <pre>{@code
 * Installation.freeAir(celsius(40)).bundled(4)
 * Installation.overHotSurface(celsius(60), celsius(110))
 * }</pre>
 */
public final class Installation implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double COLDEST_C = -50;
  private static final double HOTTEST_C = 200;

  /** Half of what a cable sees is the plane it lies over; exact for an infinite plane. */
  private static final double HALF = 0.5;

  private final double airK;
  private final double hotSurfaceK;
  private final double viewFactor;
  private final Arrangement arrangement;
  private final int loadedCables;

  private Installation(
      double airK, double hotSurfaceK, double viewFactor, Arrangement arrangement, int cables) {
    this.airK = airK;
    this.hotSurfaceK = hotSurfaceK;
    this.viewFactor = viewFactor;
    this.arrangement = arrangement;
    this.loadedCables = cables;
  }

  /**
   * Alone in still air; everything around is at the air's temperature, as in a warm bay.
   *
   * @param air −50 °C to 200 °C
   * @return the installation
   * @throws InvalidInputException if the temperature is outside its range
   */
  public static Installation freeAir(Quantity<Temperature> air) {
    double airK = temperatureK("Installation.air", air);
    return new Installation(airK, airK, 0, Arrangement.SINGLE, 1);
  }

  /**
   * Over a wide hot surface, clear of it, such as a heat shield or a motor: half of what the cable
   * sees is that surface.
   *
   * @param air air next to the cable, −50 °C to 200 °C; measure it there
   * @param surface at least the air's temperature, at most 200 °C
   * @return the installation
   * @throws InvalidInputException if a temperature is outside its range
   */
  public static Installation overHotSurface(
      Quantity<Temperature> air, Quantity<Temperature> surface) {
    double airK = temperatureK("Installation.air", air);
    double surfaceK = temperatureK("Installation.hotSurface", surface);
    if (!(surfaceK >= airK)) {
      throw InvalidInputException.of(
          "Installation.hotSurface", "≥ the air temperature " + air, surface.toString());
    }
    return new Installation(airK, surfaceK, HALF, Arrangement.SINGLE, 1);
  }

  private static double temperatureK(String field, Quantity<Temperature> temperature) {
    return Require.quantity(field, temperature, CELSIUS).between(COLDEST_C, HOTTEST_C);
  }

  /**
   * The same place with loaded cables in one bundle.
   *
   * @param loadedCables this one included, 1 to 9
   * @return the installation
   * @throws InvalidInputException if the published table does not reach that far
   */
  public Installation bundled(int loadedCables) {
    return arranged(Arrangement.BUNDLED, loadedCables);
  }

  /**
   * The same place with loaded cables together.
   *
   * @param value how they lie
   * @param loadedCables this one included; range see {@link Arrangement#currentFactor}
   * @return the installation
   * @throws InvalidInputException if the published table does not reach that far, or for a conduit
   *     over a hot surface, for which no method is claimed
   */
  public Installation arranged(Arrangement value, int loadedCables) {
    value.factor(loadedCables);
    if (value == Arrangement.CONDUIT && hotSurfaceK > airK) {
      throw InvalidInputException.of(
          "Installation.arrangement", "other than a conduit over a hot surface", value.toString());
    }
    return new Installation(airK, hotSurfaceK, viewFactor, value, loadedCables);
  }

  /**
   * Temperature of the air.
   *
   * @return absolute
   */
  public Quantity<Temperature> air() {
    return Kind.TEMPERATURE.ofSi(airK);
  }

  /**
   * Temperature of the hot surface.
   *
   * @return empty without one
   */
  public Optional<Quantity<Temperature>> hotSurface() {
    return viewFactor > 0 ? Optional.of(Kind.TEMPERATURE.ofSi(hotSurfaceK)) : Optional.empty();
  }

  /**
   * How the loaded cables lie.
   *
   * @return the arrangement
   */
  public Arrangement arrangement() {
    return arrangement;
  }

  /**
   * Number of loaded cables together, this one included.
   *
   * @return ≥ 1
   */
  public int loadedCables() {
    return loadedCables;
  }

  /**
   * Factor on the current of one cable alone.
   *
   * @return 0 to 1
   */
  public double currentFactor() {
    return arrangement.currentFactor(loadedCables);
  }

  /**
   * What the factor rests on.
   *
   * @return estimated in a conduit, else data sheet; measured where no factor applies
   */
  public Basis basis() {
    return arrangement.factor(loadedCables).basis();
  }

  double airK() {
    return airK;
  }

  Arrangement.Factor factor() {
    return arrangement.factor(loadedCables);
  }

  SurfaceLoss.Surroundings surroundings() {
    double radiantK4 =
        viewFactor * SurfaceLoss.fourthPower(hotSurfaceK)
            + (1 - viewFactor) * SurfaceLoss.fourthPower(airK);
    return new SurfaceLoss.Surroundings(airK, radiantK4);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Installation that
        && airK == that.airK
        && hotSurfaceK == that.hotSurfaceK
        && viewFactor == that.viewFactor
        && arrangement == that.arrangement
        && loadedCables == that.loadedCables;
  }

  @Override
  public int hashCode() {
    return Objects.hash(airK, hotSurfaceK, arrangement, loadedCables);
  }

  /**
   * Air, hot surface and neighbours.
   *
   * @return for example {@code 40 °C air, 4 cables bundled}
   */
  @Override
  public String toString() {
    String surface = hotSurface().map(t -> " over a surface at " + t).orElse("");
    String cables = loadedCables == 1 ? "" : loadedCables + " cables ";
    return air() + " air" + surface + ", " + cables + arrangement;
  }
}
