package org.wattwright.installation;

/**
 * An elastic group in its plane: a rigid part on springs k gives f = k/Σk·F ∓ M·k·r/J about the
 * centre of stiffness, J = Σk·r².
 */
final class ShearKernel {
  private static final double ROUNDING = 1e-12;

  private final double[] u;
  private final double[] v;
  private final double[] stiffness;
  private final double total;
  private final double centreU;
  private final double centreV;
  private final double polar;

  ShearKernel(double[] u, double[] v, double[] stiffness) {
    this.u = u;
    this.v = v;
    this.stiffness = stiffness;
    double sum = 0;
    double sumU = 0;
    double sumV = 0;
    for (int i = 0; i < u.length; i++) {
      sum += stiffness[i];
      sumU += stiffness[i] * u[i];
      sumV += stiffness[i] * v[i];
    }
    this.total = sum;
    this.centreU = sumU / sum;
    this.centreV = sumV / sum;
    double inertia = 0;
    for (int i = 0; i < u.length; i++) {
      inertia += stiffness[i] * (square(u[i] - centreU) + square(v[i] - centreV));
    }
    this.polar = inertia;
  }

  private static double square(double x) {
    return x * x;
  }

  double centreU() {
    return centreU;
  }

  double centreV() {
    return centreV;
  }

  /** Σk·r² over Σk times their number: Σr² for springs that are all alike. */
  double sumOfSquares() {
    return polar / total * u.length;
  }

  double moment(double[] force, double pointU, double pointV) {
    return (pointU - centreU) * force[1] - (pointV - centreV) * force[0];
  }

  /**
   * Fills the forces at the springs.
   *
   * @return false if a moment meets springs that all sit at one point
   */
  boolean solve(double[] force, double moment, double[] alongU, double[] alongV) {
    double size = Math.abs(moment);
    boolean turns = size > ROUNDING * (Math.hypot(force[0], force[1]) * scale() + size * ROUNDING);
    if (polar <= square(ROUNDING * scale()) * total) {
      return share(force, alongU, alongV) && !turns;
    }
    share(force, alongU, alongV);
    for (int i = 0; i < u.length; i++) {
      alongU[i] -= moment * stiffness[i] * (v[i] - centreV) / polar;
      alongV[i] += moment * stiffness[i] * (u[i] - centreU) / polar;
    }
    return true;
  }

  private boolean share(double[] force, double[] alongU, double[] alongV) {
    for (int i = 0; i < u.length; i++) {
      alongU[i] = force[0] * stiffness[i] / total;
      alongV[i] = force[1] * stiffness[i] / total;
    }
    return true;
  }

  private double scale() {
    double scale = 0;
    for (int i = 0; i < u.length; i++) {
      scale = Math.max(scale, Math.max(Math.abs(u[i]), Math.abs(v[i])));
    }
    return Math.max(scale, Math.hypot(centreU, centreV));
  }
}
