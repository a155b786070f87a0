package org.wattwright.installation;

/**
 * The face a component is bolted to, and the two directions in which its fixings are measured.
 *
 * <p>u and v lie in the face, the height is measured away from it into the component; u, v and
 * height are right-handed.
 */
public enum MountingFace {
  /** Standing on a floor: u forward, v to the left, height up. */
  FLOOR(new int[] {1, 0, 0}, new int[] {0, 1, 0}),
  /** Hung below a floor or rail: u forward, v to the right, height down. */
  CEILING(new int[] {1, 0, 0}, new int[] {0, -1, 0}),
  /** Behind a wall that stands ahead of it: u to the right, v up, height rearward. */
  WALL_AHEAD(new int[] {0, -1, 0}, new int[] {0, 0, 1}),
  /** In front of a wall that stands behind it: u to the left, v up, height forward. */
  WALL_BEHIND(new int[] {0, 1, 0}, new int[] {0, 0, 1}),
  /** On a wall to its left: u forward, v up, height to the right. */
  WALL_LEFT(new int[] {1, 0, 0}, new int[] {0, 0, 1}),
  /** On a wall to its right: u rearward, v up, height to the left. */
  WALL_RIGHT(new int[] {-1, 0, 0}, new int[] {0, 0, 1});

  private final int[] alongU;
  private final int[] alongV;

  MountingFace(int[] alongU, int[] alongV) {
    this.alongU = alongU;
    this.alongV = alongV;
  }

  /** Components of a vector of the vehicle (x forward, y left, z up) along u, v and height. */
  double[] components(double[] vehicle) {
    int[] up = {
      alongU[1] * alongV[2] - alongU[2] * alongV[1],
      alongU[2] * alongV[0] - alongU[0] * alongV[2],
      alongU[0] * alongV[1] - alongU[1] * alongV[0]
    };
    return new double[] {dot(alongU, vehicle), dot(alongV, vehicle), dot(up, vehicle)};
  }

  private static double dot(int[] axis, double[] vector) {
    return axis[0] * vector[0] + axis[1] * vector[1] + axis[2] * vector[2];
  }
}
