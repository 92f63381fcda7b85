package io.github.swatchwright.cli.sheet;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.sheet.Flattening;
import io.github.swatchwright.sheet.FoundSheet;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads the QR code of a sheet that was found. The marks tell about where the code is; for each
 * paper and size of code that it may be, its three finder patterns (ISO/IEC 18004) are looked for
 * there, and the modules between them are read one by one. So blur, curled paper and fine modules
 * matter less than to a reader that has to find the code by itself.
 */
public final class SheetCodeReader {
  /**
   * What blur takes from a module goes to its neighbours; such shares of it are put back. How much
   * that was isn't known, so all are tried: the code's own correction tells whether it was right.
   */
  private static final double[] SHARPENED = {0.35, 1.2, 2.5};

  /** How far about each module the mean of light and dark is taken, modules. */
  private static final int ABOUT = 5;

  /** How far from where the marks say the finders may be, mm, and in which steps they are tried. */
  private static final double REACH = 1.4;

  private static final double STEP = 0.14;

  /** A smaller correlation than that with a finder's pattern is none. */
  private static final double LEAST = 0.7;

  /** How far from its middle a module is sampled, as a share of it. */
  private static final double PART = 0.15;

  private static final int FINDER = 7;

  private final FoundSheet sheet;
  private final Flattening flat;
  private final Area code;

  private SheetCodeReader(FoundSheet sheet, Paper paper) {
    this.sheet = sheet;
    flat = sheet.on(paper);
    code = SheetLayout.usualCode();
  }

  /** A finder: how well it fits, and how far it is from where the marks say, mm. */
  private record Finder(double fit, double dx, double dy) {}

  /** A size of code with its finders, left upper, right upper and left lower. */
  private record Guess(SheetCodeReader reader, int across, List<Finder> finders) {
    double fit() {
      return finders.stream().mapToDouble(Finder::fit).min().orElseThrow();
    }
  }

  /** The text of a sheet's code, when it can be read. */
  public static Optional<String> textOn(FoundSheet sheet) {
    List<Guess> guesses = new ArrayList<>();
    for (Paper paper : Paper.values()) {
      SheetCodeReader reader = new SheetCodeReader(sheet, paper);
      for (int version = 1; version <= SheetCodes.FINEST_VERSION; version++) {
        guesses.add(reader.guess(17 + 4 * version));
      }
    }
    guesses.removeIf(guess -> guess.fit() < LEAST);
    guesses.sort(Comparator.comparingDouble(Guess::fit).reversed());
    return guesses.stream()
        .map(guess -> guess.reader().levels(guess))
        .flatMap(SheetCodeReader::texts)
        .findFirst();
  }

  private static Stream<String> texts(double[][] levels) {
    return Arrays.stream(SHARPENED)
        .mapToObj(share -> decoded(modules(sharp(levels, share))))
        .flatMap(Optional::stream);
  }

  private Guess guess(int across) {
    Finder first = finder(across, 0, 0);
    if (first.fit() < LEAST) {
      return new Guess(this, across, List.of(first));
    }
    int far = across - FINDER;
    return new Guess(this, across, List.of(first, finder(across, far, 0), finder(across, 0, far)));
  }

  /** The best place for a finder whose first module is that one. */
  private Finder finder(int across, int column, int row) {
    double size = code.width() / across;
    Finder best = new Finder(-1, 0, 0);
    for (double dy = -REACH; dy <= REACH; dy += STEP) {
      for (double dx = -REACH; dx <= REACH; dx += STEP) {
        double fit = fit(size, code.left() + column * size + dx, code.top() + row * size + dy);
        best = fit > best.fit() ? new Finder(fit, dx, dy) : best;
      }
    }
    return best;
  }

  /** The correlation of the grey levels with a finder's pattern. */
  private double fit(double size, double left, double top) {
    double sum = 0;
    double squares = 0;
    double both = 0;
    int dark = 0;
    for (int i = 0; i < FINDER * FINDER; i++) {
      int column = i % FINDER;
      int row = i / FINDER;
      double grey = grey(left + (column + 0.5) * size, top + (row + 0.5) * size);
      boolean black = Math.max(Math.abs(column - 3), Math.abs(row - 3)) != 2;
      sum += grey;
      squares += grey * grey;
      both += black ? grey : 0;
      dark += black ? 1 : 0;
    }
    int n = FINDER * FINDER;
    double share = (double) dark / n;
    double covariance = both / n - share * sum / n;
    double variance = (squares / n - sum / n * sum / n) * share * (1 - share);
    return variance < 1 ? 0 : -covariance / Math.sqrt(variance);
  }

  private double grey(double x, double y) {
    Spot at = flat.at(x, y);
    return sheet.photo().greyBetween(at.x(), at.y());
  }

  private double[][] levels(Guess guess) {
    int n = guess.across();
    double size = code.width() / n;
    Finder corner = guess.finders().get(0);
    Finder right = guess.finders().get(1);
    Finder below = guess.finders().get(2);
    double[][] levels = new double[n][n];
    for (int row = 0; row < n; row++) {
      for (int column = 0; column < n; column++) {
        double u = (column - 3.0) / (n - FINDER);
        double v = (row - 3.0) / (n - FINDER);
        double dx = corner.dx() + u * (right.dx() - corner.dx()) + v * (below.dx() - corner.dx());
        double dy = corner.dy() + u * (right.dy() - corner.dy()) + v * (below.dy() - corner.dy());
        double x = code.left() + (column + 0.5) * size + dx;
        double y = code.top() + (row + 0.5) * size + dy;
        double reach = PART * size;
        levels[row][column] =
            (grey(x, y)
                    + grey(x - reach, y)
                    + grey(x + reach, y)
                    + grey(x, y - reach)
                    + grey(x, y + reach))
                / 5;
      }
    }
    return levels;
  }

  private static double[][] sharp(double[][] levels, double share) {
    int n = levels.length;
    double[][] sharp = new double[n][n];
    for (int y = 0; y < n; y++) {
      for (int x = 0; x < n; x++) {
        double about =
            (levels[Math.max(0, y - 1)][x]
                    + levels[Math.min(n - 1, y + 1)][x]
                    + levels[y][Math.max(0, x - 1)]
                    + levels[y][Math.min(n - 1, x + 1)])
                / 4;
        sharp[y][x] = levels[y][x] + share * (levels[y][x] - about);
      }
    }
    return sharp;
  }

  private static BitMatrix modules(double[][] levels) {
    int n = levels.length;
    BitMatrix modules = new BitMatrix(n);
    for (int y = 0; y < n; y++) {
      for (int x = 0; x < n; x++) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int v = Math.max(0, y - ABOUT); v <= Math.min(n - 1, y + ABOUT); v++) {
          for (int u = Math.max(0, x - ABOUT); u <= Math.min(n - 1, x + ABOUT); u++) {
            low = Math.min(low, levels[v][u]);
            high = Math.max(high, levels[v][u]);
          }
        }
        if (levels[y][x] < (low + high) / 2) {
          modules.set(x, y);
        }
      }
    }
    return modules;
  }

  private static Optional<String> decoded(BitMatrix modules) {
    try {
      return Optional.of(new Decoder().decode(modules.clone()).getText());
    } catch (ChecksumException | FormatException e) {
      return Optional.empty();
    }
  }
}
