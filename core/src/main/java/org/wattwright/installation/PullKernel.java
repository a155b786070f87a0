package org.wattwright.installation;

import org.jspecify.annotations.Nullable;

/**
 * A rigid base on elastic fixings that can lift from its face but not sink into it.
 *
 * <p>The lift over the base is a plane; it is nowhere negative, so that the four corners bound it.
 * The plane with the least energy ½·Σk·lift² − work of the load is the answer: at rest, turned
 * about an edge, about a corner, or lifted off. Each is tried; the one that neither sinks in nor
 * pulls at its contact is right.
 */
final class PullKernel {
  /** Violations up to here, relative to the load, are rounding. */
  private static final double TOLERANCE = 1e-10;

  private static final int CORNERS = 4;

  private final double[] u;
  private final double[] v;
  private final double[] stiffness;
  private final double[] cornerU;
  private final double[] cornerV;
  private final double sizeM;

  PullKernel(double[][] fixings, double[][] corners) {
    this.u = fixings[0];
    this.v = fixings[1];
    this.stiffness = fixings[2];
    this.cornerU = corners[0];
    this.cornerV = corners[1];
    this.sizeM = Math.hypot(cornerU[2] - cornerU[0], cornerV[2] - cornerV[0]);
  }

  /** Pulls at the fixings and pressures at the corners. */
  static final class Pull {
    private final double[] tension;
    private final double[] contact;

    Pull(double[] tension, double[] contact) {
      this.tension = tension;
      this.contact = contact;
    }

    double[] tension() {
      return tension;
    }

    double[] contact() {
      return contact;
    }
  }

  /**
   * Solves one load.
   *
   * @param force along u, along v, away
   * @param point u, v, height
   * @return null if no plane holds the load
   */
  @Nullable Pull solve(double[] force, double[] point) {
    double[] load = {
      force[2],
      force[2] * (point[0] - cornerU[0]) - force[0] * point[2],
      force[2] * (point[1] - cornerV[0]) - force[1] * point[2]
    };
    double scaleN = Math.max(Math.abs(load[0]), (Math.abs(load[1]) + Math.abs(load[2])) / sizeM);
    @Nullable Pull found = rest(load, scaleN);
    for (int j = 0; found == null && j < CORNERS; j++) {
      found = aboutEdge(j, load, scaleN);
    }
    for (int j = 0; found == null && j < CORNERS; j++) {
      found = aboutCorner(j, load, scaleN);
    }
    return found != null ? found : lifted(load, scaleN);
  }

  /** Pressed on, the pressure within the base. */
  private @Nullable Pull rest(double[] load, double scaleN) {
    double pressN = -load[0];
    if (pressN < -TOLERANCE * scaleN) {
      return null;
    }
    double widthM = cornerU[1] - cornerU[0];
    double depthM = cornerV[2] - cornerV[0];
    if (pressN == 0 && scaleN == 0) {
      return new Pull(new double[u.length], new double[CORNERS]);
    }
    double shareU = -load[1] / (pressN * widthM);
    double shareV = -load[2] / (pressN * depthM);
    boolean inside = within(shareU) && within(shareV);
    if (!inside) {
      return null;
    }
    double[] contact = {
      pressN * (1 - shareU) * (1 - shareV),
      pressN * shareU * (1 - shareV),
      pressN * shareU * shareV,
      pressN * (1 - shareU) * shareV
    };
    return new Pull(new double[u.length], contact);
  }

  private static boolean within(double share) {
    return share >= -TOLERANCE && share <= 1 + TOLERANCE;
  }

  /** Turned about the edge from corner j to the next: one unknown, lift = θ·y. */
  private @Nullable Pull aboutEdge(int j, double[] load, double scaleN) {
    int next = (j + 1) % CORNERS;
    double lengthM = Math.hypot(cornerU[next] - cornerU[j], cornerV[next] - cornerV[j]);
    double alongU = (cornerU[next] - cornerU[j]) / lengthM;
    double alongV = (cornerV[next] - cornerV[j]) / lengthM;
    double[] at = momentsAbout(j, load);
    double turningNm = -alongV * at[0] + alongU * at[1];
    double stiffnessNm = 0;
    for (int i = 0; i < u.length; i++) {
      stiffnessNm += stiffness[i] * square(inward(i, j, alongU, alongV));
    }
    if (turningNm < 0 || stiffnessNm <= square(TOLERANCE * sizeM) * stiffness[0]) {
      return null;
    }
    double[] tension = new double[u.length];
    double sum = 0;
    double alongNm = alongU * at[0] + alongV * at[1];
    for (int i = 0; i < u.length; i++) {
      tension[i] = turningNm / stiffnessNm * stiffness[i] * inward(i, j, alongU, alongV);
      sum += tension[i];
      alongNm -= tension[i] * ((u[i] - cornerU[j]) * alongU + (v[i] - cornerV[j]) * alongV);
    }
    double[] contact = new double[CORNERS];
    contact[next] = -alongNm / lengthM;
    contact[j] = sum - load[0] - contact[next];
    return presses(contact, scaleN) ? new Pull(tension, contact) : null;
  }

  private double inward(int i, int j, double alongU, double alongV) {
    return -alongV * (u[i] - cornerU[j]) + alongU * (v[i] - cornerV[j]);
  }

  /** Turned about one corner: lift = a·Δu + b·Δv. */
  private @Nullable Pull aboutCorner(int j, double[] load, double scaleN) {
    double[] at = momentsAbout(j, load);
    double uu = 0;
    double uv = 0;
    double vv = 0;
    for (int i = 0; i < u.length; i++) {
      uu += stiffness[i] * square(u[i] - cornerU[j]);
      uv += stiffness[i] * (u[i] - cornerU[j]) * (v[i] - cornerV[j]);
      vv += stiffness[i] * square(v[i] - cornerV[j]);
    }
    double determinant = uu * vv - uv * uv;
    if (!(determinant > TOLERANCE * uu * vv)) {
      return null;
    }
    double[] tilt = {
      (at[0] * vv - at[1] * uv) / determinant, (at[1] * uu - at[0] * uv) / determinant
    };
    double lift = -tilt[0] * (cornerU[j] - cornerU[0]) - tilt[1] * (cornerV[j] - cornerV[0]);
    double[] contact = new double[CORNERS];
    @Nullable Pull pull = plane(lift, tilt, contact, scaleN);
    if (pull == null) {
      return null;
    }
    contact[j] = sum(pull.tension) - load[0];
    return presses(contact, scaleN) ? pull : null;
  }

  /** Lifted off altogether: three unknowns about the centre of stiffness. */
  private @Nullable Pull lifted(double[] load, double scaleN) {
    double k = sum(stiffness);
    double centreU = 0;
    double centreV = 0;
    for (int i = 0; i < u.length; i++) {
      centreU += stiffness[i] * u[i] / k;
      centreV += stiffness[i] * v[i] / k;
    }
    double uu = 0;
    double uv = 0;
    double vv = 0;
    for (int i = 0; i < u.length; i++) {
      uu += stiffness[i] * square(u[i] - centreU);
      uv += stiffness[i] * (u[i] - centreU) * (v[i] - centreV);
      vv += stiffness[i] * square(v[i] - centreV);
    }
    double determinant = uu * vv - uv * uv;
    if (!(determinant > TOLERANCE * uu * vv)) {
      return null;
    }
    double momentU = load[1] - load[0] * (centreU - cornerU[0]);
    double momentV = load[2] - load[0] * (centreV - cornerV[0]);
    double[] tilt = {
      (momentU * vv - momentV * uv) / determinant, (momentV * uu - momentU * uv) / determinant
    };
    double atOrigin =
        load[0] / k - tilt[0] * (centreU - cornerU[0]) - tilt[1] * (centreV - cornerV[0]);
    return plane(atOrigin, tilt, new double[CORNERS], scaleN);
  }

  /** Pulls under a plane through a lift at the first corner, unless it sinks in somewhere. */
  private @Nullable Pull plane(double lift, double[] tilt, double[] contact, double scaleN) {
    double softN = sum(stiffness);
    for (int j = 0; j < CORNERS; j++) {
      double at = lift + tilt[0] * (cornerU[j] - cornerU[0]) + tilt[1] * (cornerV[j] - cornerV[0]);
      if (!(at * softN >= -TOLERANCE * scaleN)) {
        return null;
      }
    }
    double[] tension = new double[u.length];
    for (int i = 0; i < u.length; i++) {
      tension[i] =
          stiffness[i] * (lift + tilt[0] * (u[i] - cornerU[0]) + tilt[1] * (v[i] - cornerV[0]));
    }
    return new Pull(tension, contact);
  }

  private double[] momentsAbout(int j, double[] load) {
    return new double[] {
      load[1] - load[0] * (cornerU[j] - cornerU[0]), load[2] - load[0] * (cornerV[j] - cornerV[0])
    };
  }

  private static boolean presses(double[] contact, double scaleN) {
    for (double each : contact) {
      if (!(each >= -TOLERANCE * scaleN)) {
        return false;
      }
    }
    return true;
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double each : values) {
      sum += each;
    }
    return sum;
  }

  private static double square(double x) {
    return x * x;
  }
}
