package io.github.swatchwright.optics;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.testdata.ReferenceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A print characterisation chart (ISO 28178 text, D50, 2 degree observer): patches of cyan, magenta
 * and yellow dots, and what was measured of them.
 */
final class PrintChart {

  /** The white that the charts are relative to, as ISO 13655 has it. */
  static final WhitePoint WHITE = new WhitePoint(96.422, 100, 82.521);

  /** A printed patch: tone values of the three inks, 0 to 1, and X/Xn, Y/Yn, Z/Zn. */
  static final class Patch {
    private final double[] tones;
    private final double[] ratios;

    private Patch(double[] tones, double[] ratios) {
      this.tones = tones;
      this.ratios = ratios;
    }

    double tone(int ink) {
      return tones[ink];
    }

    Lab lab() {
      return colour(ratios);
    }

    /** How many inks are in it. */
    long inks() {
      return Arrays.stream(tones).filter(tone -> tone > 0).count();
    }

    /** Whether each ink covers all or nothing. */
    boolean isPrimary() {
      return Arrays.stream(tones).allMatch(tone -> tone == 0 || tone == 1);
    }
  }

  private final List<Patch> patches = new ArrayList<>();
  private final double[][] primaries = new double[3][8];

  private PrintChart() {}

  static PrintChart load(String name) {
    PrintChart chart = new PrintChart();
    for (ReferenceTable.Row row : ReferenceTable.load("print-chart-" + name + "-cmy.csv").rows()) {
      double[] percent = row.numbers("cyan", "magenta", "yellow");
      double[] tones = Arrays.stream(percent).map(tone -> tone / 100).toArray();
      double[] ratios = row.numbers("X", "Y", "Z");
      ratios[0] /= WHITE.xn();
      ratios[1] /= WHITE.yn();
      ratios[2] /= WHITE.zn();
      chart.patches.add(new Patch(tones, ratios));
    }
    chart.averagePrimaries();
    return chart;
  }

  private void averagePrimaries() {
    for (int overlap = 0; overlap < 8; overlap++) {
      int bits = overlap;
      List<Patch> same =
          patches.stream().filter(patch -> patch.isPrimary() && bits(patch) == bits).toList();
      for (int channel = 0; channel < 3; channel++) {
        int of = channel;
        primaries[channel][overlap] =
            same.stream().mapToDouble(patch -> patch.ratios[of]).average().orElseThrow();
      }
    }
  }

  /** The inks as bits, as {@link AreaCoverage#demichel} counts overlaps. */
  private static int bits(Patch patch) {
    return (int) (patch.tones[0] + 2 * patch.tones[1] + 4 * patch.tones[2]);
  }

  /** The tints: all patches but paper, solids and solid overprints. */
  List<Patch> tints() {
    return patches.stream().filter(patch -> !patch.isPrimary()).toList();
  }

  /** How inks print: the Yule–Nielsen exponent, and the dot gain of each at half tone. */
  record Printing(double n, double cyanGain, double magentaGain, double yellowGain) {

    /** No spread of light and no gain: Murray, Davies, Neugebauer. */
    static final Printing PLAIN = new Printing(1, 0, 0, 0);

    /** Printed tone: a + 4g·a(1 − a), the parabola that has gain g at the half tone. */
    private double[] printed(Patch patch) {
      double[] gains = {cyanGain, magentaGain, yellowGain};
      double[] printed = new double[3];
      for (int ink = 0; ink < 3; ink++) {
        double a = patch.tones[ink];
        printed[ink] = Math.max(0, Math.min(1, a + 4 * gains[ink] * a * (1 - a)));
      }
      return printed;
    }
  }

  /** The colour to be expected from paper, solids and overprints. */
  Lab predict(Patch patch, Printing printing) {
    double[] shares = AreaCoverage.demichel(printing.printed(patch));
    double[] mixed = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      mixed[channel] = AreaCoverage.neugebauer(shares, primaries[channel], printing.n());
    }
    return colour(mixed);
  }

  private static Lab colour(double[] ratios) {
    return new Xyz(ratios[0] * WHITE.xn(), ratios[1] * WHITE.yn(), ratios[2] * WHITE.zn(), WHITE)
        .toLab();
  }
}
