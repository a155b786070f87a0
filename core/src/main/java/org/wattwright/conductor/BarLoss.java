package org.wattwright.conductor;

/**
 * A flat bar in still air: convection from its two broad faces, radiation from the whole perimeter.
 *
 * <p>On edge: both faces vertical, Churchill–Chu laminar. Flat: upper face Nu = 0.54·Ra^(1/4),
 * lower face Nu = 0.27·Ra^(1/4) on half the width (McAdams; Incropera and DeWitt, from memory). The
 * narrow faces' convection is left out, which is on the safe side.
 */
final class BarLoss extends SurfaceLoss {
  private static final double VERTICAL_FACES = 2;

  /** Upper and lower face, each as wide as twice its characteristic length. */
  private static final double HORIZONTAL_FACES = (0.54 + 0.27) * 2;

  private final boolean onEdge;
  private final double lengthPower;

  BarLoss(Surroundings surroundings, double emissivity, Busbar.Section section, boolean onEdge) {
    super(surroundings, emissivity, 2 * (section.widthM() + section.thicknessM()));
    this.onEdge = onEdge;
    // Characteristic length: the height of a vertical face, area over perimeter of a flat strip.
    double lengthM = onEdge ? section.widthM() : section.widthM() / 2;
    this.lengthPower = Math.pow(lengthM, 0.75);
  }

  @Override
  double powerOfRise(double riseK) {
    return lengthPower * Math.sqrt(Math.sqrt(Math.abs(riseK)));
  }

  @Override
  double convectionWPerM(double riseK, double power) {
    double filmK = airK() + riseK / 2;
    return riseK
        * (onEdge
            ? VERTICAL_FACES * AirProperties.verticalConductance(filmK, power)
            : HORIZONTAL_FACES * AirProperties.horizontalConductance(filmK, power));
  }

  @Override
  double convectionSlopeWPerMK(double riseK, double power) {
    double filmK = airK() + riseK / 2;
    return onEdge
        ? VERTICAL_FACES * AirProperties.verticalSlope(filmK, power, riseK)
        : HORIZONTAL_FACES * AirProperties.horizontalSlope(filmK, power, riseK);
  }
}
