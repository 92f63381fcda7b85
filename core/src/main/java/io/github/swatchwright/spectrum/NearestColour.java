package io.github.swatchwright.spectrum;

import io.github.swatchwright.colour.CielabCurve;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;

/**
 * The reflectance whose colour lies nearest to one that no reflectance has: minimises ΔE*ab² / 2σ²
 * + ½·zᵀPz over z = logit(Ri), where P = DᵀD + ε·I prices slope and, very low, departure from mid
 * grey. σ falls in steps to 0.01; the colour given up for a smooth spectrum then is of that order.
 *
 * <p>Newton's method with the curvature of the logit kept only where it is positive, so that every
 * step leads downhill; from any start it ends, as the price of z holds z finite.
 */
final class NearestColour {
  /** From loose to tight: the first steps needn't cross what the last ones wall up. */
  private static final double[] SIGMAS = {1, 0.1, 0.01};

  private static final double LEVEL_PRICE = 1e-3;
  private static final int MOST_STEPS = 200;
  private static final int MOST_HALVINGS = 40;
  private static final double LONGEST_STEP = 5;
  private static final double DECREMENT_TOLERANCE = 1e-4;

  private final LogitSpectrum spectrum;
  private final WhitePoint white;
  private final Lab target;
  private final double[] z;
  private final double[] residual = new double[3];
  private double sigma;

  /** Prepares a search; {@code z} is its start, and holds its result. */
  NearestColour(LogitSpectrum spectrum, Lab target, double[] z) {
    this.spectrum = spectrum;
    this.white = target.white();
    this.target = target;
    this.z = z;
  }

  /** Searches, and returns the pull of the colour on X, Y and Z: a start for {@link LeastSlope}. */
  double[] search() {
    for (double next : SIGMAS) {
      sigma = next;
      descend();
    }
    return pull(labByRatio());
  }

  private void descend() {
    double cost = cost();
    double[] change = new double[Bands.COUNT];
    for (int step = 0; step < MOST_STEPS; step++) {
      double decrement = newtonStep(labByRatio(), change);
      if (!(decrement > DECREMENT_TOLERANCE)) {
        return;
      }
      double better = advance(change, cost, decrement);
      if (!(better < cost)) {
        return;
      }
      cost = better;
    }
  }

  private double cost() {
    spectrum.moveTo(z);
    double[] t = spectrum.ratios;
    Lab lab = new Xyz(t[0] * white.xn(), t[1] * white.yn(), t[2] * white.zn(), white).toLab();
    residual[0] = lab.l() - target.l();
    residual[1] = lab.a() - target.a();
    residual[2] = lab.b() - target.b();
    double cost = LogitSpectrum.dot(residual, residual) / (2 * sigma * sigma);
    for (int band = 0; band < Bands.COUNT; band++) {
      cost += z[band] * priceRow(band) / 2;
    }
    return cost;
  }

  private double priceRow(int band) {
    return Tridiagonal.slopeRow(z, band) + LEVEL_PRICE * z[band];
  }

  /** ∂(L*, a*, b*)/∂(X/Xn, Y/Yn, Z/Zn) at the present colour. */
  private double[][] labByRatio() {
    double fx = CielabCurve.slope(spectrum.ratios[0]);
    double fy = CielabCurve.slope(spectrum.ratios[1]);
    double fz = CielabCurve.slope(spectrum.ratios[2]);
    return new double[][] {{0, 116 * fy, 0}, {500 * fx, -500 * fy, 0}, {0, 200 * fy, -200 * fz}};
  }

  private double[] pull(double[][] labByRatio) {
    double[] pull = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      for (int row = 0; row < 3; row++) {
        pull[channel] += labByRatio[row][channel] * residual[row] / (sigma * sigma);
      }
    }
    return pull;
  }

  /** Writes the Newton step to {@code change}; returns how steeply it leads down, at least 0. */
  private double newtonStep(double[][] labByRatio, double[] change) {
    double[] pull = pull(labByRatio);
    double[] diagonal = Tridiagonal.slopeDiagonal(Bands.COUNT, LEVEL_PRICE);
    double[] gradient = new double[Bands.COUNT];
    double[][] rows = new double[3][Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double pulled = spectrum.weigh(pull, band);
      diagonal[band] += Math.max(0, pulled * spectrum.second[band]);
      gradient[band] = priceRow(band) + pulled * spectrum.first[band];
      for (int row = 0; row < 3; row++) {
        rows[row][band] = spectrum.weigh(labByRatio[row], band) * spectrum.first[band];
      }
    }
    Tridiagonal price = new Tridiagonal(diagonal);
    double[] free = price.solve(gradient.clone());
    double[][] solved = new double[3][];
    for (int row = 0; row < 3; row++) {
      solved[row] = price.solve(rows[row].clone());
    }
    double[][] inner = new double[3][3];
    double[] right = new double[3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        inner[row][column] = LogitSpectrum.dot(rows[row], solved[column]);
      }
      inner[row][row] += sigma * sigma;
      right[row] = LogitSpectrum.dot(rows[row], free);
    }
    double[] u = SmallSystem.solve(inner, right);
    for (int band = 0; band < Bands.COUNT; band++) {
      change[band] = -free[band];
      for (int row = 0; row < 3; row++) {
        change[band] += u[row] * solved[row][band];
      }
    }
    return -LogitSpectrum.dot(gradient, change);
  }

  /** Moves z along the step as far as it pays; returns the new cost, or the old when it doesn't. */
  private double advance(double[] change, double cost, double decrement) {
    double largest = 0;
    for (double dz : change) {
      largest = Math.max(largest, Math.abs(dz));
    }
    double length = largest > LONGEST_STEP ? LONGEST_STEP / largest : 1;
    double[] old = z.clone();
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        z[band] = old[band] + length * change[band];
      }
      double better = cost();
      if (better < cost - 1e-4 * length * decrement) {
        return better;
      }
      length /= 2;
    }
    System.arraycopy(old, 0, z, 0, Bands.COUNT);
    cost();
    return cost;
  }
}
