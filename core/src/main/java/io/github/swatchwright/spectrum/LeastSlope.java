package io.github.swatchwright.spectrum;

import java.util.Arrays;

/**
 * The smoothest reflectance of a colour: minimises ½·Σ(zᵢ₊₁ − zᵢ)² over z = logit(Ri), subject to W
 * s(z) = t, where s is what is seen, W the tristimulus weights and t the colour, both relative to
 * white. After Burns's least-slope-squared reconstruction; his z is half of this one.
 *
 * <p>Newton's method on the conditions Lz + Jᵀλ = 0, W s − t = 0, with L = DᵀD, J = W·diag(s′) and
 * the Hessian H = L + diag(s″·Wᵀλ). H is tridiagonal but singular at the start, where L is all of
 * it (L has no hold on the level of z); so the diagonal of one band is raised by 1, and the raise
 * taken back by a fourth border beside the three of J. Every step then is one tridiagonal
 * factorisation, five solves and a system of four unknowns. Steps are halved until the conditions
 * are better met.
 */
final class LeastSlope {
  private static final int MOST_STEPS = 30;
  private static final int MOST_HALVINGS = 12;
  private static final double LONGEST_STEP = 5;
  private static final int PINNED = Bands.COUNT / 2;

  /** Weight of the colour beside the slope in the measure of progress; found by trial. */
  private static final double COLOUR_WEIGHT = 10;

  /** The colour is met when no ratio to white is further off than this: 1e-8 in CIELAB. */
  private static final double RATIO_TOLERANCE = 1e-12;

  private static final double SQUARE_TOLERANCE = 1e-14;

  private final LogitSpectrum spectrum;
  private final double[] target;
  private final double[] channelWeights = new double[3];
  private final double[] z;
  private final double[] lambda;
  private final double[] slopeResidual = new double[Bands.COUNT];
  private final double[] colourResidual = new double[3];

  /**
   * Prepares a search; {@code z} and {@code lambda} are its start, and hold its result.
   *
   * @param target X/Xn, Y/Yn, Z/Zn to reach
   * @param floor the least ratio that the surface lets out
   */
  LeastSlope(LogitSpectrum spectrum, double[] target, double floor, double[] z, double[] lambda) {
    this.spectrum = spectrum;
    this.target = target;
    this.z = z;
    this.lambda = lambda;
    for (int channel = 0; channel < 3; channel++) {
      channelWeights[channel] = COLOUR_WEIGHT / Math.max(target[channel] - floor, 1e-12);
    }
  }

  /** Searches; false when it didn't get there, and then {@code z} is of no use. */
  boolean search() {
    double square = residual();
    for (int step = 0; step < MOST_STEPS; step++) {
      if (isMet(square)) {
        return true;
      }
      double better = advance(square);
      if (!(better < square)) {
        return false;
      }
      square = better;
    }
    return false;
  }

  private boolean isMet(double square) {
    return square < SQUARE_TOLERANCE
        && Math.abs(colourResidual[0]) < RATIO_TOLERANCE
        && Math.abs(colourResidual[1]) < RATIO_TOLERANCE
        && Math.abs(colourResidual[2]) < RATIO_TOLERANCE;
  }

  /** Both conditions at z and λ; returns their weighted sum of squares. */
  private double residual() {
    spectrum.moveTo(z);
    double square = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      slopeResidual[band] =
          Tridiagonal.slopeRow(z, band) + spectrum.weigh(lambda, band) * spectrum.first[band];
      square += slopeResidual[band] * slopeResidual[band];
    }
    for (int channel = 0; channel < 3; channel++) {
      colourResidual[channel] = spectrum.ratios[channel] - target[channel];
      square += channelWeights[channel] * colourResidual[channel] * colourResidual[channel];
    }
    return square;
  }

  /** One damped step; returns the new sum of squares, or the old one when none is better. */
  private double advance(double square) {
    double[] change = new double[Bands.COUNT];
    double[] border = newtonStep(change);
    double largest = 0;
    for (double dz : change) {
      largest = Math.max(largest, Math.abs(dz));
    }
    if (!Double.isFinite(largest)) {
      return square;
    }
    double[] oldZ = z.clone();
    double[] oldLambda = lambda.clone();
    double length = largest > LONGEST_STEP ? LONGEST_STEP / largest : 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        z[band] = oldZ[band] + length * change[band];
      }
      for (int channel = 0; channel < 3; channel++) {
        lambda[channel] = oldLambda[channel] + length * border[channel];
      }
      double better = residual();
      if (better < square * (1 - 1e-4 * length)) {
        return better;
      }
      length /= 2;
    }
    return square;
  }

  /** Writes the full Newton step of z to {@code change}; returns that of λ. */
  private double[] newtonStep(double[] change) {
    double[] diagonal = Tridiagonal.slopeDiagonal(Bands.COUNT, 0);
    for (int band = 0; band < Bands.COUNT; band++) {
      diagonal[band] += spectrum.weigh(lambda, band) * spectrum.second[band];
    }
    diagonal[PINNED] += 1;
    Tridiagonal pinned = new Tridiagonal(diagonal);
    double[][] border = border();
    double[] free = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      free[band] = -slopeResidual[band];
    }
    double[][] solved = new double[4][];
    for (int i = 0; i < 4; i++) {
      solved[i] = pinned.solve(border[i].clone());
    }
    pinned.solve(free);
    // dz = free − Σ uᵢ·solvedᵢ; J·dz = −(W s − t) fixes u₀…u₂, and u₃ = dz at the pin.
    double[][] schur = new double[4][4];
    double[] right = new double[4];
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 4; column++) {
        schur[row][column] = LogitSpectrum.dot(border[row], solved[column]);
      }
      right[row] = LogitSpectrum.dot(border[row], free);
    }
    for (int channel = 0; channel < 3; channel++) {
      right[channel] += colourResidual[channel];
    }
    schur[3][3] -= 1;
    double[] u = SmallSystem.solve(schur, right);
    for (int band = 0; band < Bands.COUNT; band++) {
      change[band] = free[band];
      for (int i = 0; i < 4; i++) {
        change[band] -= u[i] * solved[i][band];
      }
    }
    return Arrays.copyOf(u, 3);
  }

  /** How z moves X, Y and Z, and the row that takes the pin out again. */
  private double[][] border() {
    double[][] border = new double[4][Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      for (int channel = 0; channel < 3; channel++) {
        border[channel][band] = spectrum.ratioSlope(channel, band);
      }
    }
    border[3][PINNED] = -1;
    return border;
  }
}
