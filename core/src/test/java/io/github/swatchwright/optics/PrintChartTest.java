package io.github.swatchwright.optics;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.PrintChart.Patch;
import io.github.swatchwright.optics.PrintChart.Printing;
import io.github.swatchwright.testdata.ExternalCheck;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mixing by area against print: what eight measured patches of a chart (paper, three solids, their
 * overprints) and the tints of single inks say of all tints of two and three inks.
 *
 * <p>n and a dot gain for each ink are fitted to the single-ink tints alone, so that every patch
 * that is judged is one that the fit hasn't seen.
 */
@Tag("external")
class PrintChartTest {

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fogra39l|Fogra, FOGRA39L: offset on coated art paper
          fogra29l|Fogra, FOGRA29: offset on white uncoated paper
          tr002|ANSI CGATS/SNAP TR 002-2007: coldset on newsprint
          tr005|ANSI/CGATS/SWOP TR 005-2007: proofing on grade 5 coated paper
          """)
  void dotGainAndOneExponentHalveTheErrorOfPlainMixing(String file, String source) {
    PrintChart chart = PrintChart.load(file);
    Printing fitted = fit(chart);
    List<Patch> unseen = chart.tints().stream().filter(patch -> patch.inks() > 1).toList();

    double plain = median(chart, unseen, Printing.PLAIN);
    double better = median(chart, unseen, fitted);

    System.out.printf(
        Locale.ROOT,
        "%-60s %4d tints: median ΔE00 %.2f plain, %.2f with n = %.2f and gains %.3f %.3f %.3f%n",
        source,
        unseen.size(),
        plain,
        better,
        fitted.n(),
        fitted.cyanGain(),
        fitted.magentaGain(),
        fitted.yellowGain());
    assertThat(unseen).hasSizeGreaterThan(250);
    // Plain mixing is the yardstick: half of its error is what the model has to reach.
    ExternalCheck.against(source, "median ΔE00 of tints from solids and overprints")
        .atMost(better, plain / 2, "median ΔE00");
  }

  private static double median(PrintChart chart, List<Patch> patches, Printing printing) {
    return new Median()
        .evaluate(
            patches.stream()
                .mapToDouble(p -> Ciede2000.deltaE(chart.predict(p, printing), p.lab()))
                .toArray());
  }

  /** Least squares in CIELAB over the tints of single inks, by Levenberg and Marquardt. */
  private static Printing fit(PrintChart chart) {
    List<Patch> ramps = chart.tints().stream().filter(patch -> patch.inks() == 1).toList();
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(new double[] {0.7, 0.1, 0.1, 0.1})
            .model(
                point -> {
                  double[] at = point.toArray();
                  double[][] slopes = new double[3 * ramps.size()][at.length];
                  double[] values = labs(chart, ramps, at);
                  for (int i = 0; i < at.length; i++) {
                    double[] moved = at.clone();
                    moved[i] += 1e-6;
                    double[] there = labs(chart, ramps, moved);
                    for (int row = 0; row < slopes.length; row++) {
                      slopes[row][i] = (there[row] - values[row]) / 1e-6;
                    }
                  }
                  return new Pair<>(
                      new ArrayRealVector(values), new Array2DRowRealMatrix(slopes, false));
                })
            .target(ramps.stream().map(Patch::lab).flatMapToDouble(PrintChartTest::axes).toArray())
            .maxEvaluations(500)
            .maxIterations(500)
            .build();
    return printing(new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray());
  }

  /** n = 1 + p² keeps the exponent from falling below 1. */
  private static Printing printing(double[] p) {
    return new Printing(1 + p[0] * p[0], p[1], p[2], p[3]);
  }

  private static double[] labs(PrintChart chart, List<Patch> patches, double[] parameters) {
    Printing printing = printing(parameters);
    return patches.stream()
        .map(patch -> chart.predict(patch, printing))
        .flatMapToDouble(PrintChartTest::axes)
        .toArray();
  }

  private static DoubleStream axes(Lab lab) {
    return DoubleStream.of(lab.l(), lab.a(), lab.b());
  }
}
