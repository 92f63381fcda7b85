package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The way from one end of a ladder to the other, in proportions of the paints: from each shade to
 * the next the drops change in a straight line, and the colour follows the paints. Places on it run
 * from 0 to 1.
 */
final class LadderPath {
  /** Neighbouring samples are nearer than that, in ΔE00. */
  private static final double FINE = 0.5;

  private static final int DEEPEST = 16;
  private static final int HALVINGS = 26;
  private static final int CROSSINGS = 20;

  /** Steps along the path are that exact, in ΔE00. */
  private static final double EXACT = 1e-6;

  /**
   * A point of the path.
   *
   * @param place 0 to 1
   * @param lab its colour
   */
  private record Sample(double place, Lab lab) {}

  private final PotPaints paints;
  private final double[][] shades;
  private final List<Sample> samples = new ArrayList<>();

  private LadderPath(PotPaints paints, double[][] shades) {
    this.paints = paints;
    this.shades = shades;
    samples.add(sample(0));
    for (int i = 1; i < shades.length; i++) {
      addUpTo(sample(i / (shades.length - 1.0)), 0);
    }
  }

  /**
   * A path through shades.
   *
   * @param paints what they are mixed of
   * @param shades contents of each, at least two
   */
  static LadderPath through(PotPaints paints, List<double[]> shades) {
    return new LadderPath(
        paints, shades.stream().map(LadderPath::proportions).toArray(double[][]::new));
  }

  private static double[] proportions(double[] contents) {
    double whole = Arrays.stream(contents).sum();
    return Arrays.stream(contents).map(drops -> drops / whole).toArray();
  }

  /** Adds samples after the last one until they are fine. */
  private void addUpTo(Sample next, int depth) {
    Sample last = samples.get(samples.size() - 1);
    if (depth < DEEPEST && (depth < 3 || Ciede2000.deltaE(last.lab, next.lab) > FINE)) {
      addUpTo(sample((last.place + next.place) / 2), depth + 1);
      addUpTo(next, depth + 1);
    } else {
      samples.add(next);
    }
  }

  private Sample sample(double place) {
    return new Sample(place, paints.lab(at(place)));
  }

  /** Proportions of the paints there, with a sum of 1. */
  double[] at(double place) {
    double along = Math.max(0, Math.min(1, place)) * (shades.length - 1);
    int from = Math.min(shades.length - 2, (int) along);
    double share = along - from;
    double[] proportions = new double[paints.count()];
    Arrays.setAll(proportions, i -> (1 - share) * shades[from][i] + share * shades[from + 1][i]);
    return proportions;
  }

  /** The colour there. */
  Lab lab(double place) {
    return paints.lab(at(place));
  }

  /** Whether lightness rises all along, or falls all along. */
  boolean isMonotone() {
    double whole = samples.get(samples.size() - 1).lab.l() - samples.get(0).lab.l();
    for (int i = 1; i < samples.size(); i++) {
      if ((samples.get(i).lab.l() - samples.get(i - 1).lab.l()) * whole <= 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * Places from 0 to {@code end} of which neighbours are equally far apart in ΔE00.
   *
   * @param count how many, at least 2
   * @param end the last of them, above 0 to 1
   */
  double[] evenPlaces(int count, double end) {
    double lowest = 0;
    double highest = 2 * length(end);
    for (int i = 0; i < HALVINGS; i++) {
      double step = (lowest + highest) / 2;
      if (Double.isNaN(march(step, count, end)[count - 1])) {
        highest = step;
      } else {
        lowest = step;
      }
    }
    double[] places = march(lowest, count, end);
    places[count - 1] = end;
    return places;
  }

  /** The sum of ΔE00 along the samples up to a place. */
  private double length(double end) {
    double length = 0;
    for (int i = 1; i < samples.size() && samples.get(i - 1).place < end; i++) {
      length += Ciede2000.deltaE(samples.get(i - 1).lab, samples.get(i).lab);
    }
    return length;
  }

  /** Goes so far each time; NaN from where the end would be passed. */
  private double[] march(double step, int count, double end) {
    double[] places = new double[count];
    Lab here = samples.get(0).lab;
    for (int i = 1; i < count; i++) {
      places[i] = next(places[i - 1], here, step, end);
      if (Double.isNaN(places[i])) {
        Arrays.fill(places, i, count, Double.NaN);
        return places;
      }
      here = lab(places[i]);
    }
    return places;
  }

  private double next(double from, Lab here, double step, double end) {
    double before = from;
    double reached = 0;
    for (Sample sample : samples) {
      if (sample.place > from) {
        double place = Math.min(sample.place, end);
        Lab there = place == sample.place ? sample.lab : lab(place);
        double apart = Ciede2000.deltaE(here, there);
        if (apart >= step) {
          return crossing(before, reached, place, apart, here, step);
        }
        if (place == end) {
          return Double.NaN;
        }
        before = place;
        reached = apart;
      }
    }
    return Double.NaN;
  }

  /** Where the distance from a colour is one step, by false position between two samples. */
  private double crossing(
      double before, double reached, double after, double passed, Lab here, double step) {
    double low = before;
    double high = after;
    double lowMiss = reached - step;
    double highMiss = passed - step;
    double place = after;
    for (int i = 0; i < CROSSINGS && Math.abs(highMiss - lowMiss) > 1e-12; i++) {
      place = low + (high - low) * -lowMiss / (highMiss - lowMiss);
      double miss = Ciede2000.deltaE(here, lab(place)) - step;
      if (Math.abs(miss) < EXACT) {
        break;
      }
      if (miss >= 0) {
        high = place;
        highMiss = miss;
      } else {
        low = place;
        lowMiss = miss;
      }
    }
    return place;
  }
}
