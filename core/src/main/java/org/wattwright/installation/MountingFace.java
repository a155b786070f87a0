package org.wattwright.installation;

/**
 * The face a component is bolted to, and the two directions in which its fixings are measured.
 *
 * <p>u and v lie in the face, the height is measured away from it into the component; u, v and
 * height are right-handed.
 */
public enum MountingFace {
  /** Standing on a floor: u forward, v to the left, height up. */
  FLOOR(1, 2),
  /** Hung below a floor or rail: u forward, v to the right, height down. */
  CEILING(1, -2),
  /** Behind a wall that stands ahead of it: u to the right, v up, height rearward. */
  WALL_AHEAD(-2, 3),
  /** In front of a wall that stands behind it: u to the left, v up, height forward. */
  WALL_BEHIND(2, 3),
  /** On a wall to its left: u forward, v up, height to the right. */
  WALL_LEFT(1, 3),
  /** On a wall to its right: u rearward, v up, height to the left. */
  WALL_RIGHT(-1, 3);

  /** 1 forward, 2 left, 3 up; negative the other way. */
  private final int alongU;

  private final int alongV;

  MountingFace(int alongU, int alongV) {
    this.alongU = alongU;
    this.alongV = alongV;
  }

  /** Components of a vector of the vehicle (x forward, y left, z up) along u, v and height. */
  double[] components(double[] vehicle) {
    double[] u = unit(alongU);
    double[] v = unit(alongV);
    double[] away = {
      u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]
    };
    return new double[] {dot(u, vehicle), dot(v, vehicle), dot(away, vehicle)};
  }

  private static double[] unit(int axis) {
    double[] unit = new double[3];
    unit[Math.abs(axis) - 1] = Integer.signum(axis);
    return unit;
  }

  private static double dot(double[] axis, double[] vector) {
    return axis[0] * vector[0] + axis[1] * vector[1] + axis[2] * vector[2];
  }
}
