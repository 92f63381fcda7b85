package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.optics.Film;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.sheet.SheetDrawing;
import io.github.swatchwright.sheet.SheetField;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/** A printed and painted sheet: at each place how much ink, and which paint how thick. */
final class SheetScene {
  /** Pixels of the print for a millimetre. */
  private static final int PRINT = 10;

  private static final double RAGGED = 0.7;

  /** How brushed strokes differ in thickness, sd of its logarithm. */
  private static final double USUAL_SPREAD = 0.3;

  final SheetLayout layout;
  final List<InventedPaint> paints;
  final double[] thickness;
  final Reflectance paper;
  final Reflectance ink;
  final List<Reflectance> cardPatches;
  private final BufferedImage print;
  private final double[][] ragged;
  private final double[][] streaks;
  private final double cardX;
  private final double cardY;
  private final double cardTurn;

  SheetScene(
      SheetLayout layout,
      List<InventedPaint> paints,
      List<Reflectance> cardPatches,
      boolean[][] code,
      Random random) {
    this.layout = layout;
    this.paints = paints;
    this.cardPatches = cardPatches;
    print = print(SheetDrawing.of(layout, code));
    thickness = new double[paints.size()];
    ragged = new double[paints.size()][];
    streaks = new double[paints.size()][];
    for (int i = 0; i < paints.size(); i++) {
      thickness[i] = 3 * Math.exp(USUAL_SPREAD * random.nextGaussian());
      ragged[i] = waves(random, RAGGED);
      streaks[i] = waves(random, 0.12);
    }
    double lightness = 12 + 18 * random.nextDouble();
    double y = Math.pow((lightness + 16) / 116, 3);
    ink = tinted(y, 0.05 * random.nextGaussian());
    paper = tinted(0.80 + 0.1 * random.nextDouble(), 0.03 * random.nextGaussian());
    cardX = 0.5 * random.nextGaussian();
    cardY = 0.5 * random.nextGaussian();
    cardTurn = 0.012 * random.nextGaussian();
  }

  /** The same strokes, differing more or less in thickness: sd of its logarithm. */
  void strokesDiffer(double spread) {
    for (int i = 0; i < thickness.length; i++) {
      thickness[i] = 3 * Math.pow(thickness[i] / 3, spread / USUAL_SPREAD);
    }
  }

  /** What a stroke really looks like, and how thick it is. */
  Drawdown drawdown(int field) {
    return new Drawdown(
        OptionalDouble.of(thickness[field] / Film.COAT), half(field, ink), half(field, paper));
  }

  private Drawdown.Half half(int field, Reflectance base) {
    Reflectance over = paints.get(field).over(base, thickness[field]);
    return new Drawdown.Half(swatch(base), swatch(over));
  }

  private static Swatch swatch(Reflectance seen) {
    return new Swatch.OfLab(TristimulusWeights.D65.xyz(seen).toLab());
  }

  private static double[] waves(Random random, double height) {
    double[] waves = new double[9];
    for (int i = 0; i < 3; i++) {
      waves[3 * i] = height * (0.4 + 0.6 * random.nextDouble());
      waves[3 * i + 1] = 0.4 + 1.8 * random.nextDouble();
      waves[3 * i + 2] = 6.3 * random.nextDouble();
    }
    return waves;
  }

  private static double wave(double[] waves, double t) {
    double sum = 0;
    for (int i = 0; i < 9; i += 3) {
      sum += waves[i] * Math.sin(waves[i + 1] * t + waves[i + 2]);
    }
    return sum / 2;
  }

  /** A near-neutral, a little redder or bluer. */
  private static Reflectance tinted(double level, double tilt) {
    double[] bands = new double[Bands.COUNT];
    for (int i = 0; i < bands.length; i++) {
      double t = 2.0 * i / (bands.length - 1) - 1;
      bands[i] = Math.min(0.95, level * (1 + tilt * t));
    }
    return Reflectance.of(bands);
  }

  static BufferedImage print(SheetDrawing drawing) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(PRINT * drawing.width()),
            (int) Math.ceil(PRINT * drawing.height()),
            BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.transform(AffineTransform.getScaleInstance(PRINT, PRINT));
    for (SheetDrawing.Shape shape : drawing.shapes()) {
      if (shape instanceof SheetDrawing.Fill fill) {
        Area area = fill.area();
        graphics.setColor(grey(fill.grey()));
        graphics.fill(new Rectangle2D.Double(area.left(), area.top(), area.width(), area.height()));
      } else if (shape instanceof SheetDrawing.Disc disc) {
        double r = disc.radius();
        graphics.setColor(grey(disc.grey()));
        graphics.fill(
            new Ellipse2D.Double(disc.centre().x() - r, disc.centre().y() - r, 2 * r, 2 * r));
      } else if (shape instanceof SheetDrawing.Words words) {
        graphics.setColor(Color.BLACK);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) words.size()));
        graphics.drawString(words.text(), (float) words.left(), (float) words.baseline());
      }
    }
    graphics.dispose();
    return image;
  }

  private static Color grey(double grey) {
    // Java's grey images are linear; the print's grey is the share of bare paper.
    int level = (int) Math.round(255 * grey);
    return new Color(level, level, level);
  }

  /** The share of ink at a place, 0 to 1. */
  double inkAt(double x, double y) {
    double u = x * PRINT - 0.5;
    double v = y * PRINT - 0.5;
    int column = (int) Math.floor(u);
    int row = (int) Math.floor(v);
    double fu = u - column;
    double fv = v - row;
    double light =
        (1 - fv) * ((1 - fu) * level(column, row) + fu * level(column + 1, row))
            + fv * ((1 - fu) * level(column, row + 1) + fu * level(column + 1, row + 1));
    return 1 - light;
  }

  private double level(int column, int row) {
    int x = Math.max(0, Math.min(print.getWidth() - 1, column));
    int y = Math.max(0, Math.min(print.getHeight() - 1, row));
    return print.getRaster().getSample(x, y, 0) / 255.0;
  }

  /** Which field's stroke covers a place, or -1. */
  int strokeAt(double x, double y) {
    for (int i = 0; i < paints.size(); i++) {
      Area stroke = layout.fields().get(i).stroke();
      if (y > stroke.top() - 3
          && y < stroke.bottom() + 3
          && x > stroke.left() - 3
          && x < stroke.right() + 3) {
        double edge = wave(ragged[i], x);
        if (x > stroke.left() + wave(ragged[i], 3 * y)
            && x < stroke.right() + wave(ragged[i], 3 * y + 1)
            && y > stroke.top() + edge
            && y < stroke.bottom() + edge) {
          return i;
        }
      }
    }
    return -1;
  }

  /** How much thicker the stroke is at a place than on average; 0 in its gaps. */
  double thickerAt(int field, double x, double y) {
    SheetField at = layout.fields().get(field);
    double streak = wave(streaks[field], 2.1 * y);
    double end = at.stroke().right() - x;
    // The brush runs dry towards its end: streaks become gaps.
    double dry = end < 4 && streak < -0.05 ? 0 : 1;
    return dry * (1 + streak);
  }

  /** Which patch of the card lies on a place, or -1. */
  int cardPatchAt(double x, double y) {
    if (cardPatches.isEmpty()) {
      return -1;
    }
    Area card = layout.card();
    double dx = x - card.left() - card.width() / 2 - cardX;
    double dy = y - card.top() - card.height() / 2 - cardY;
    double u = (dx + cardTurn * dy) / card.width() + 0.5;
    double v = (dy - cardTurn * dx) / card.height() + 0.5;
    if (u < 0 || v < 0 || u >= 1 || v >= 1) {
      return -1;
    }
    int columns = cardPatches.size() == 1 ? 1 : 6;
    int rows = cardPatches.size() / columns;
    int row = (int) (v * rows);
    return row * columns + (int) (u * columns);
  }

  /** The sheet's parts that a camera has to tell apart, for {@link #paints}. */
  List<Reflectance> films(int field, Reflectance base, int levels) {
    List<Reflectance> films = new ArrayList<>();
    for (int i = 0; i < levels; i++) {
      films.add(
          paints.get(field).over(base, Math.max(1e-3, thickness[field] * 1.6 * i / (levels - 1))));
    }
    return films;
  }
}
