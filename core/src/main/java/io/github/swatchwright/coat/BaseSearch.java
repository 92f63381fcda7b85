package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.spectrum.RecoveredReflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Which colour, seen through some coats, is nearest to a wanted one in CIELAB: Levenberg's damped
 * least squares over L*, a* and b* of what lies below, each trial taken to the nearest colour that
 * a surface can have.
 */
final class BaseSearch {
  private static final int MOST_STEPS = 60;

  /** Squared ΔE*ab below which nothing can be gained. */
  private static final double SOLVED = 1e-10;

  /** Step of the slopes in L*, a* and b*. */
  private static final double SLOPE_STEP = 0.02;

  private static final double LARGEST_DAMPING = 1e8;

  private final ReflectanceRecovery recovery;
  private final Function<double[], Lab> coats;
  private final Lab end;

  /**
   * A search.
   *
   * @param recovery from a colour to what lies below
   * @param coats from internal reflectance below to the colour seen at last
   * @param end the wanted colour
   */
  BaseSearch(ReflectanceRecovery recovery, Function<double[], Lab> coats, Lab end) {
    this.recovery = recovery;
    this.coats = coats;
    this.end = end;
  }

  /**
   * A colour below and what the coats make of it.
   *
   * @param base the colour below, under D65
   * @param reached what is seen of it under the coats
   * @param squared the squared ΔE*ab from the wanted end
   */
  record Trial(Lab base, Lab reached, double squared) {}

  /** The best that is found from some starts: colours under D65. */
  Trial from(List<Lab> starts) {
    Trial best = trial(starts.get(0));
    for (Lab start : starts) {
      Trial found = from(trial(start));
      if (found.squared < best.squared) {
        best = found;
      }
      if (best.squared < SOLVED) {
        break;
      }
    }
    return best;
  }

  private Trial from(Trial start) {
    Trial now = start;
    double damping = 1e-3;
    RealMatrix slope = slope(now);
    for (int step = 0; step < MOST_STEPS && now.squared > SOLVED; step++) {
      Trial next = trial(moved(now, slope, damping));
      if (next.squared < now.squared * (1 - 1e-6)) {
        now = next;
        slope = slope(now);
        damping = Math.max(1e-12, damping / 10);
      } else {
        damping *= 10;
        if (damping > LARGEST_DAMPING) {
          break;
        }
      }
    }
    return now;
  }

  /** The base after a step of (JᵀJ + damping·I)⁻¹·Jᵀ·(end − reached). */
  private Lab moved(Trial now, RealMatrix slope, double damping) {
    RealMatrix normal = slope.transpose().multiply(slope);
    for (int i = 0; i < 3; i++) {
      normal.addToEntry(i, i, damping);
    }
    RealVector missing =
        new ArrayRealVector(
            new double[] {
              end.l() - now.reached.l(), end.a() - now.reached.a(), end.b() - now.reached.b()
            });
    RealVector step =
        new SingularValueDecomposition(normal)
            .getSolver()
            .solve(slope.transpose().operate(missing));
    return at(now.base, new double[] {step.getEntry(0), step.getEntry(1), step.getEntry(2)});
  }

  /** The least part of a small difference in the base that is left in the end, at least 0. */
  double shown(Trial trial) {
    double[] parts = new SingularValueDecomposition(slope(trial)).getSingularValues();
    return parts[parts.length - 1];
  }

  private RealMatrix slope(Trial now) {
    double[] chroma = {now.base.a(), now.base.b()};
    RealMatrix slope = new Array2DRowRealMatrix(3, 3);
    for (int axis = 0; axis < 3; axis++) {
      double[] off = new double[3];
      off[axis] = axis == 0 ? towards(50, now.base.l()) : towards(0, chroma[axis - 1]);
      Lab moved = trial(at(now.base, off)).reached;
      slope.setColumn(
          axis,
          new double[] {
            (moved.l() - now.reached.l()) / off[axis],
            (moved.a() - now.reached.a()) / off[axis],
            (moved.b() - now.reached.b()) / off[axis]
          });
    }
    return slope;
  }

  /** A small step towards the middle, where a surface can follow. */
  private static double towards(double middle, double now) {
    return now > middle ? -SLOPE_STEP : SLOPE_STEP;
  }

  private static Lab at(Lab base, double[] off) {
    double l = Math.max(0, Math.min(100, base.l() + off[0]));
    return Lab.ofD65(l, base.a() + off[1], base.b() + off[2]);
  }

  /** The colour itself, or the nearest that a surface can have, under the coats. */
  private Trial trial(Lab wanted) {
    RecoveredReflectance below = recovery.recover(wanted);
    Lab base = below.attainable() ? wanted : below.colour().toLab();
    Lab reached = coats.apply(below.internal().toArray());
    double l = end.l() - reached.l();
    double a = end.a() - reached.a();
    double b = end.b() - reached.b();
    return new Trial(base, reached, l * l + a * a + b * b);
  }
}
