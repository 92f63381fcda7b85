package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * One mark of paint: round or long, with a ragged outline that is told by its radius in each
 * direction. Lengths are millimetres of the model. Immutable.
 */
final class Blot {
  private static final int DIRECTIONS = 64;
  private static final int WAVES = 8;

  /** Where paint was thrown from, marks lie about along one direction: this far off it, radians. */
  private static final double SPREAD = 0.35;

  private final double x;
  private final double y;
  private final double turn;
  private final double elongation;
  private final double[] radii;

  /**
   * A mark.
   *
   * @param x of its middle
   * @param y of its middle
   * @param turn of its long axis, radians
   * @param elongation length over width
   * @param radii of the outline, before it is drawn out: {@value #DIRECTIONS} about a circle
   */
  private Blot(double x, double y, double turn, double elongation, double[] radii) {
    this.x = x;
    this.y = y;
    this.turn = turn;
    this.elongation = elongation;
    this.radii = radii;
  }

  /** The middle, to the right. */
  double x() {
    return x;
  }

  /** The middle, downwards. */
  double y() {
    return y;
  }

  /** Marks that land together: one, or a cluster of a sponge. */
  static List<Blot> landing(Landing landing, double x, double y, double towards, Random random) {
    List<Blot> blots = new ArrayList<>();
    double reach = 0;
    int together = landing.together(random);
    for (int i = 0; i < together; i++) {
      double radius = landing.radius(random);
      double angle = 2 * Math.PI * random.nextDouble();
      double off = reach * Math.sqrt(random.nextDouble());
      blots.add(
          new Blot(
              x + off * Math.cos(angle),
              y + off * Math.sin(angle),
              towards + SPREAD * random.nextGaussian(),
              landing.elongation(random),
              outline(radius, landing.raggedness(), random)));
      reach = 2.2 * Math.max(reach / 2.2, radius);
    }
    return blots;
  }

  /** A circle with waves on it; the shorter a wave, the lower it is. */
  private static double[] outline(double radius, double raggedness, Random random) {
    double[] radii = new double[DIRECTIONS];
    Arrays.fill(radii, radius);
    for (int wave = 2; wave <= WAVES; wave++) {
      double height = radius * raggedness * random.nextGaussian() / Math.sqrt(wave);
      double phase = 2 * Math.PI * random.nextDouble();
      for (int i = 0; i < DIRECTIONS; i++) {
        radii[i] += height * Math.cos(2 * Math.PI * wave * i / DIRECTIONS + phase);
      }
    }
    for (int i = 0; i < DIRECTIONS; i++) {
      radii[i] = Math.max(0.2 * radius, radii[i]);
    }
    return radii;
  }

  /** The farthest that the outline is from the middle. */
  double reach() {
    double most = 0;
    for (double radius : radii) {
      most = Math.max(most, radius);
    }
    return most * Math.sqrt(elongation);
  }

  /** How far within the outline a point lies, about, in millimetres; outside it is negative. */
  double depth(double pointX, double pointY) {
    double right = pointX - x;
    double down = pointY - y;
    double along = right * Math.cos(turn) + down * Math.sin(turn);
    double across = down * Math.cos(turn) - right * Math.sin(turn);
    double stretch = Math.sqrt(elongation);
    along /= stretch;
    across *= stretch;
    double direction = (Math.atan2(across, along) / (2 * Math.PI) + 1) * DIRECTIONS;
    int before = (int) direction;
    double part = direction - before;
    double radius =
        radii[before % DIRECTIONS] * (1 - part) + radii[(before + 1) % DIRECTIONS] * part;
    return radius - Math.hypot(along, across);
  }
}
