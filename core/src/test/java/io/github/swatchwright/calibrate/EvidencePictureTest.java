package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.spectrum.Bands;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What evidence does to K(λ) and S(λ) of one invented red, as the picture of {@code model.md};
 * {@code -Ddocs.write=true} draws it anew.
 */
class EvidencePictureTest {
  private static final Path PICTURE = Path.of("docs/evidence.svg");
  private static final String PAINT = "organic 2";

  /** How many sd of a normal distribution hold four fifths of it. */
  private static final double SDS = 1.2816;

  private static final int PANEL_WIDTH = 180;
  private static final int PANEL_HEIGHT = 130;
  private static final int LEFT = 52;
  private static final int TOP = 34;
  private static final int GAP = 16;

  private final InventedCards family = new InventedCards(11, 0.05, 0.5);
  private final OpticalConstants truth = family.pigment(PAINT).truth();

  /** What is known, and what is believed because of it. */
  private record Level(String title, Curve k, Curve s) {}

  /** A mean over the bands and the sd about it, both of a natural logarithm. */
  private static final class Curve {
    private final double[] mean;
    private final double[] sd;

    private Curve(double[] mean, double[] sd) {
      this.mean = mean;
      this.sd = sd;
    }

    double meanSd() {
      double sum = 0;
      for (double each : sd) {
        sum += each;
      }
      return sum / sd.length;
    }

    /** The share of bands in which four fifths of what is believed hold the truth. */
    double holds(double... truth) {
      int held = 0;
      for (int band = 0; band < Bands.COUNT; band++) {
        held += Math.abs(truth[band] - mean[band]) <= SDS * sd[band] ? 1 : 0;
      }
      return (double) held / Bands.COUNT;
    }
  }

  private List<Level> levels() {
    List<TestCard> cards = new ArrayList<>();
    List<Level> levels = new ArrayList<>();
    levels.add(
        level(
            "its colour",
            ShelfOptics.estimate(
                InventedCards.shelf(
                    family.pigments.stream()
                        .map(pigment -> pigment.swatch(Make.SINGLE_PIGMENT))
                        .toList()))));
    levels.add(level("and its contrast ratio", ShelfOptics.estimate(family.shelf())));
    cards.add(family.painted(InventedCards.parts("white", 5, PAINT, 1)));
    levels.add(level("and a tint, 1:5 in white", learned(cards)));
    cards.add(family.painted(InventedCards.parts("white", 1, PAINT, 1)));
    levels.add(level("and another, 1:1", learned(cards)));
    return levels;
  }

  private ShelfOptics learned(List<TestCard> cards) {
    return ShelfOptics.estimate(
        Calibration.of(family.shelf(), new CardSet(List.copyOf(cards))).shelf());
  }

  /** ln S is u; ln K = ln q(z) + u, with d ln q/dz = −(1 + R). */
  private static Level level(String title, ShelfOptics optics) {
    PaintOptics paint = optics.of(PAINT);
    double[] masstone = paint.constants().opaque();
    double[][] ofK = new double[Bands.COUNT][2 * Bands.COUNT];
    double[][] ofS = new double[Bands.COUNT][2 * Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      ofK[band][band] = -(1 + masstone[band]);
      ofK[band][Bands.COUNT + band] = 1;
      ofS[band][Bands.COUNT + band] = 1;
    }
    return new Level(
        title,
        new Curve(logK(paint.constants()), sd(optics.covarianceOf(Map.of(PAINT, ofK)))),
        new Curve(logS(paint.constants()), sd(optics.covarianceOf(Map.of(PAINT, ofS)))));
  }

  private static double[] sd(double[][] covariance) {
    double[] sd = new double[covariance.length];
    for (int i = 0; i < sd.length; i++) {
      sd[i] = Math.sqrt(covariance[i][i]);
    }
    return sd;
  }

  private static double[] logK(OpticalConstants constants) {
    double[] log = new double[Bands.COUNT];
    for (int band = 0; band < log.length; band++) {
      log[band] = Math.log(constants.k(band));
    }
    return log;
  }

  private static double[] logS(OpticalConstants constants) {
    double[] log = new double[Bands.COUNT];
    for (int band = 0; band < log.length; band++) {
      log[band] = Math.log(constants.s(band));
    }
    return log;
  }

  @Test
  void eachPieceOfEvidenceNarrowsWhatIsBelieved() {
    List<Level> levels = levels();
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i).k.meanSd()).isLessThan(levels.get(i - 1).k.meanSd());
      assertThat(levels.get(i).s.meanSd()).isLessThan(levels.get(i - 1).s.meanSd());
    }
    // Bands err together, so that one paint may do far better or worse than four fifths.
    for (Level level : levels) {
      assertThat(level.k.holds(logK(truth))).as(level.title).isGreaterThan(0.5);
      assertThat(level.s.holds(logS(truth))).as(level.title).isGreaterThan(0.5);
    }
  }

  @Test
  void thePictureIsAsTheEstimateDrawsIt() throws IOException {
    String picture = picture(levels());
    if (Boolean.getBoolean("docs.write")) {
      Files.writeString(PICTURE, picture);
    }
    assertThat(Files.readString(PICTURE)).as("write it with -Ddocs.write=true").isEqualTo(picture);
  }

  private String picture(List<Level> levels) {
    int width = LEFT + levels.size() * (PANEL_WIDTH + GAP);
    int height = TOP + 2 * (PANEL_HEIGHT + GAP) + 26;
    StringBuilder svg = new StringBuilder();
    add(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
            + " font-size=\"12\">",
        width,
        height);
    add(svg, "<title>K and S of an invented red: the truth, and what is believed</title>");
    add(svg, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", width, height);
    for (int i = 0; i < levels.size(); i++) {
      Level level = levels.get(i);
      int x = LEFT + i * (PANEL_WIDTH + GAP);
      add(svg, "<text x=\"%d\" y=\"22\" fill=\"#222222\">%s</text>", x, level.title);
      panel(svg, x, TOP, "K", -3, 1, level.k, logK(truth));
      panel(svg, x, TOP + PANEL_HEIGHT + GAP, "S", -3, 1, level.s, logS(truth));
      for (int nm = 400; nm <= 700; nm += 100) {
        add(
            svg,
            "<text x=\"%.1f\" y=\"%d\" fill=\"#555555\" text-anchor=\"middle\">%d</text>",
            x(x, nm),
            TOP + 2 * (PANEL_HEIGHT + GAP),
            nm);
      }
    }
    add(
        svg,
        "<text x=\"%d\" y=\"%d\" fill=\"#555555\">wavelength, nm. Grey: four times out of five;"
            + " line: most probable; dashes: the truth</text>",
        LEFT,
        height - 8);
    return svg.append("</svg>\n").toString();
  }

  private static void panel(
      StringBuilder svg,
      int left,
      int top,
      String name,
      int low,
      int high,
      Curve curve,
      double... truth) {
    add(
        svg,
        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"#fafafa\" stroke=\"#bbbbbb\"/>",
        left,
        top,
        PANEL_WIDTH,
        PANEL_HEIGHT);
    if (left == LEFT) {
      for (int power = low; power <= high; power++) {
        add(
            svg,
            "<text x=\"%d\" y=\"%.1f\" fill=\"#555555\" text-anchor=\"end\">%s</text>",
            left - 6,
            y(top, power * Math.log(10)) + 4,
            power < 0 ? "0." + "0".repeat(-power - 1) + "1" : "1" + "0".repeat(power));
      }
      add(
          svg,
          "<text x=\"12\" y=\"%d\" fill=\"#222222\" font-weight=\"bold\">%s</text>",
          top + PANEL_HEIGHT / 2,
          name);
    }
    StringBuilder band = new StringBuilder();
    StringBuilder back = new StringBuilder();
    StringBuilder mean = new StringBuilder();
    StringBuilder real = new StringBuilder();
    for (int i = 0; i < Bands.COUNT; i++) {
      double nm = Bands.wavelengthNm(i);
      double off = SDS * curve.sd[i];
      point(band, left, top, nm, curve.mean[i] + off);
      point(mean, left, top, nm, curve.mean[i]);
      point(real, left, top, nm, truth[i]);
      int last = Bands.COUNT - 1 - i;
      point(back, left, top, Bands.wavelengthNm(last), curve.mean[last] - SDS * curve.sd[last]);
    }
    add(svg, "<polygon points=\"%s%s\" fill=\"#c9c9c9\"/>", band, back.toString().stripTrailing());
    add(
        svg,
        "<polyline points=\"%s\" fill=\"none\" stroke=\"#a02020\" stroke-width=\"1.6\"/>",
        mean.toString().stripTrailing());
    add(
        svg,
        "<polyline points=\"%s\" fill=\"none\" stroke=\"#222222\" stroke-width=\"1.2\""
            + " stroke-dasharray=\"4 3\"/>",
        real.toString().stripTrailing());
  }

  private static void point(StringBuilder points, int left, int top, double nm, double log) {
    points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(left, nm), y(top, log)));
  }

  private static double x(int left, double nm) {
    return left + PANEL_WIDTH * (nm - 380) / 350;
  }

  /** Powers of ten from −3 at the bottom to 1 at the top; what is beyond is drawn at the edge. */
  private static double y(int top, double log) {
    double power = Math.max(-3, Math.min(1, log / Math.log(10)));
    return top + PANEL_HEIGHT * (1 - power) / 4;
  }

  private static void add(StringBuilder svg, String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
