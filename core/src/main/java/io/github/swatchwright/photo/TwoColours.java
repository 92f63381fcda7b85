package io.github.swatchwright.photo;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * A region that was taken for one colour and holds two: it reaches over the edge of a swatch, say.
 * Its mean is a colour that isn't there.
 *
 * <p>Pixels are parted in two where that leaves the least variance within the parts (Otsu 1979),
 * along the line on which they scatter most. They are two colours when the parts' medians are
 * plainly different and hardly any pixel lies between: texture, noise and uneven light fill the
 * middle, also when they are strong.
 *
 * @param most the colour of most pixels, a median
 * @param rest the colour of the others, likewise
 * @param share the share of pixels that are near the first, 0.5 to 1
 */
public record TwoColours(Lab most, Lab rest, double share) {
  /** Fewer pixels are dirt or glare. */
  private static final double LEAST_SHARE = 0.08;

  /**
   * The middle third between two medians may hold this much of the smaller part. It holds 0.35 of
   * it when the pixels are one normal distribution, and 0.33 when they are a ramp.
   */
  private static final double MOST_BETWEEN = 0.2;

  private static final int FEWEST = 20;

  /** Refuses a share that isn't that of most pixels. */
  public TwoColours {
    Require.within("share", share, 0.5, 1);
  }

  /** The two colours of these pixels, if there are two. */
  static Optional<TwoColours> in(List<Lab> pixels) {
    if (pixels.size() < FEWEST) {
      return Optional.empty();
    }
    double[] axis = longest(pixels);
    List<Lab> sorted =
        pixels.stream().sorted(Comparator.comparingDouble((Lab lab) -> along(axis, lab))).toList();
    double[] places = sorted.stream().mapToDouble(lab -> along(axis, lab)).toArray();
    int cut = otsu(places);
    int smaller = Math.min(cut, places.length - cut);
    if (smaller < LEAST_SHARE * places.length) {
      return Optional.empty();
    }
    double low = places[cut / 2];
    double high = places[(cut + places.length) / 2];
    double third = (high - low) / 3;
    long between =
        Arrays.stream(places).filter(at -> at > low + third && at < high - third).count();
    Lab first = median(sorted.subList(0, cut));
    Lab second = median(sorted.subList(cut, places.length));
    if (between > MOST_BETWEEN * smaller
        || Ciede2000.deltaE(first, second) < ShadeSearch.DIFFERENT) {
      return Optional.empty();
    }
    double share = (double) (places.length - smaller) / places.length;
    return Optional.of(
        cut > smaller
            ? new TwoColours(first, second, share)
            : new TwoColours(second, first, share));
  }

  private static double along(double[] axis, Lab lab) {
    return axis[0] * lab.l() + axis[1] * lab.a() + axis[2] * lab.b();
  }

  /** The direction of the largest variance. */
  private static double[] longest(List<Lab> pixels) {
    double[] mean = new double[3];
    for (Lab lab : pixels) {
      mean[0] += lab.l() / pixels.size();
      mean[1] += lab.a() / pixels.size();
      mean[2] += lab.b() / pixels.size();
    }
    double[][] scatter = new double[3][3];
    for (Lab lab : pixels) {
      double[] off = {lab.l() - mean[0], lab.a() - mean[1], lab.b() - mean[2]};
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          scatter[i][j] += off[i] * off[j];
        }
      }
    }
    // Eigenvectors come by falling eigenvalue.
    return new EigenDecomposition(new Array2DRowRealMatrix(scatter, false))
        .getEigenvector(0)
        .toArray();
  }

  /** How many of the sorted places are in the lower part. */
  private static int otsu(double[] places) {
    double total = Arrays.stream(places).sum();
    double best = -1;
    int cut = 0;
    double below = 0;
    for (int i = 1; i < places.length; i++) {
      below += places[i - 1];
      double apart = below / i - (total - below) / (places.length - i);
      double between = (double) i * (places.length - i) * apart * apart;
      if (between > best) {
        best = between;
        cut = i;
      }
    }
    return cut;
  }

  private static Lab median(List<Lab> pixels) {
    return Lab.ofD65(
        median(pixels.stream().mapToDouble(Lab::l).toArray()),
        median(pixels.stream().mapToDouble(Lab::a).toArray()),
        median(pixels.stream().mapToDouble(Lab::b).toArray()));
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }
}
