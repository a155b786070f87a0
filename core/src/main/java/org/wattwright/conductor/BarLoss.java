package org.wattwright.conductor;

/**
 * A flat bar in still air: convection from its two broad faces, radiation from the whole perimeter.
 *
 * <p>On edge: both faces vertical, Churchill–Chu laminar. Flat: upper face Nu = 0.54·Ra^(1/4),
 * lower face Nu = 0.27·Ra^(1/4) on half the width (McAdams; Incropera and DeWitt, from memory). The
 * narrow faces' convection is left out, which is on the safe side.
 */
final class BarLoss extends SurfaceLoss {
  private final boolean onEdge;
  private final double widthM;
  private final double lengthPower;

  BarLoss(Surroundings surroundings, double emissivity, Busbar.Section section, boolean onEdge) {
    super(surroundings, emissivity, 2 * (section.widthM() + section.thicknessM()));
    this.onEdge = onEdge;
    this.widthM = section.widthM();
    // Characteristic length: the height of a vertical face, area over perimeter of a flat strip.
    double lengthM = onEdge ? widthM : widthM / 2;
    this.lengthPower = Math.pow(lengthM, 0.75);
  }

  @Override
  double convectionWPerM(double surfaceK) {
    double riseK = surfaceK - airK();
    double root = lengthPower * Math.sqrt(Math.sqrt(Math.abs(riseK)));
    double filmK = (surfaceK + airK()) / 2;
    if (onEdge) {
      return 2 * AirProperties.verticalConductance(filmK, root) * riseK;
    }
    double perLength = AirProperties.horizontalConductance(filmK, root) / (widthM / 2);
    return (0.54 + 0.27) * perLength * widthM * riseK;
  }
}
