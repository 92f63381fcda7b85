package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.testdata.DemoShelf;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/**
 * A covariance is at least another one when their difference has no negative eigenvalue (of any
 * values, however they depend on the paints). Eigenvalues are Commons Math's.
 */
class LeastSpreadTest {
  private static final List<String> PAINTS = List.of("Titanium white", "Red oxide", "Lamp black");
  private static final Shelf DEMO = ShelfJson.parse(DemoShelf.text(), "demo shelf");

  private final Random random = new Random(12);

  private double[][] jacobian() {
    double[][] jacobian = new double[3][];
    for (int row = 0; row < jacobian.length; row++) {
      jacobian[row] = random.doubles(OpticsState.SIZE, -1, 1).toArray();
    }
    return jacobian;
  }

  /** The values' covariance less the bound, as a share of the former. */
  private double leastEigenvalue(ShelfOptics optics) {
    LeastSpread spread = optics.leastSpread().orElseThrow();
    double least = Double.POSITIVE_INFINITY;
    for (int trial = 0; trial < 200; trial++) {
      Map<String, double[][]> jacobians = new LinkedHashMap<>();
      int[] numbers = new int[PAINTS.size()];
      double[][][] slopes = new double[PAINTS.size()][][];
      for (int p = 0; p < numbers.length; p++) {
        double[][] jacobian = jacobian();
        jacobians.put(PAINTS.get(p), jacobian);
        numbers[p] = spread.number(PAINTS.get(p));
        slopes[p] =
            MatrixUtils.createRealMatrix(jacobian)
                .multiply(MatrixUtils.createRealMatrix(spread.directions(numbers[p])).transpose())
                .getData();
      }
      RealMatrix whole = MatrixUtils.createRealMatrix(optics.covarianceOf(jacobians));
      RealMatrix part = MatrixUtils.createRealMatrix(spread.covarianceOf(numbers, slopes));
      assertThat(part.getTrace()).isPositive();
      for (double eigenvalue : new EigenDecomposition(whole.subtract(part)).getRealEigenvalues()) {
        least = Math.min(least, eigenvalue / whole.getTrace());
      }
    }
    return least;
  }

  @Test
  void theWholeIsNeverLess() {
    // Rounding of sums of some thousand products.
    assertThat(leastEigenvalue(ShelfOptics.estimate(DEMO))).isGreaterThan(-1e-12);
  }

  @Test
  void norIsItWhenTestCardsTiePaintsTogether() {
    List<TestCard> cards =
        List.of(
            card("Titanium white:3, Red oxide:1", "#C9A08E"),
            card("Titanium white:1, Lamp black:1", "#5A5B5E"),
            card("Red oxide:2, Lamp black:1", "#3E2420"),
            card("Titanium white:5, Lamp black:1, Red oxide:1", "#8A7E7A"));
    Shelf learnt = Calibration.of(DEMO, new CardSet(cards)).shelf();
    assertThat(leastEigenvalue(ShelfOptics.estimate(learnt))).isGreaterThan(-1e-12);
  }

  private static TestCard card(String mix, String colour) {
    return TestCard.ofMix(Mix.parse(mix, DEMO), new Swatch.OfSrgb(Srgb.parse(colour)));
  }
}
