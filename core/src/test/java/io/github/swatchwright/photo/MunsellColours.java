package io.github.swatchwright.photo;

import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.ReflectanceRecovery;
import io.github.swatchwright.spectrum.SurfaceMap;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;

/**
 * Smooth reflectances with the colours of the Munsell renotation (the fixture tells its source).
 */
final class MunsellColours {
  private static final String FILE = "/io/github/swatchwright/testdata/munsell-renotation-real.csv";

  /** Illuminant C by its chromaticity (CIE 15). */
  private static final WhitePoint C = WhitePoint.ofChromaticity(0.31006, 0.31616);

  /** Y of magnesium oxide, to which the renotation is relative, is 97.5 (ASTM D1535). */
  private static final double MAGNESIUM_OXIDE = 0.975;

  private MunsellColours() {}

  /** So many of them, drawn with a seed, adapted to daylight; values 2 to 9. */
  static List<Reflectance> drawn(int count, long seed) {
    List<String[]> rows = rows();
    Collections.shuffle(rows, new Random(seed));
    ReflectanceRecovery recovery = new ReflectanceRecovery(TristimulusWeights.D65, SurfaceMap.NONE);
    return rows.stream()
        .filter(row -> Double.parseDouble(row[1]) >= 2)
        .map(row -> recovery.recover(colour(row)))
        .filter(recovered -> recovered.attainable())
        .limit(count)
        .map(recovered -> recovered.seen())
        .toList();
  }

  /**
   * A colour chart as they are made: colours, all of which an sRGB file can hold, and six greys
   * from black to white.
   */
  static List<Reflectance> chart(int count, long seed) {
    List<Reflectance> chart = new ArrayList<>();
    for (double grey : new double[] {0.035, 0.09, 0.19, 0.36, 0.59, 0.88}) {
      chart.add(Reflectance.constant(grey));
    }
    drawn(10 * count, seed).stream()
        .filter(colour -> TristimulusWeights.D65.xyz(colour).toLab().toSrgb().isDisplayable())
        .limit(count)
        .forEach(chart::add);
    return chart;
  }

  private static Xyz colour(String[] row) {
    double x = Double.parseDouble(row[3]);
    double y = Double.parseDouble(row[4]);
    double luminance = Double.parseDouble(row[5]) * MAGNESIUM_OXIDE;
    return new Xyz(luminance * x / y, luminance, luminance * (1 - x - y) / y, C)
        .adaptTo(WhitePoint.D65);
  }

  private static List<String[]> rows() {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(MunsellColours.class.getResourceAsStream(FILE)),
                StandardCharsets.UTF_8))) {
      return new ArrayList<>(
          reader
              .lines()
              .filter(line -> !line.startsWith("#"))
              .skip(1)
              .map(line -> line.split(","))
              .toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
