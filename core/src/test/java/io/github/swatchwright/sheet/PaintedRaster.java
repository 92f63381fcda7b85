package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.photo.ArgbPhoto;
import java.util.Arrays;

/** A sheet as pixels of linear light, seen from straight above: print, strokes, light and glare. */
final class PaintedRaster {
  /** Pixels of a millimetre. */
  static final int SCALE = 5;

  /** What printed black reflects, as a share of the paper. */
  static final double INK = 0.05;

  final SheetLayout layout;
  private final int width;
  private final int height;
  private final double[][] light;

  PaintedRaster(SheetLayout layout) {
    this.layout = layout;
    width = (int) (SCALE * layout.width());
    height = (int) (SCALE * layout.height());
    light = new double[3][width * height];
    for (double[] channel : light) {
      Arrays.fill(channel, 1);
    }
    for (SheetDrawing.Shape shape : SheetDrawing.of(layout, new boolean[21][21]).shapes()) {
      if (shape instanceof SheetDrawing.Fill fill) {
        double level = INK + (1 - INK) * fill.grey();
        fill(fill.area(), new double[] {level, level, level});
      } else if (shape instanceof SheetDrawing.Disc disc) {
        disc(disc);
      }
    }
  }

  /** A place of the paper and its light there. */
  interface Change {
    void at(double x, double y, double[] rgb);
  }

  /** Changes the light of an area. */
  void change(Area area, Change change) {
    double[] rgb = new double[3];
    for (int row = (int) (SCALE * area.top()); row < SCALE * area.bottom(); row++) {
      for (int column = (int) (SCALE * area.left()); column < SCALE * area.right(); column++) {
        int at = row * width + column;
        for (int c = 0; c < 3; c++) {
          rgb[c] = light[c][at];
        }
        change.at((column + 0.5) / SCALE, (row + 0.5) / SCALE, rgb);
        for (int c = 0; c < 3; c++) {
          light[c][at] = rgb[c];
        }
      }
    }
  }

  /** The whole sheet. */
  Area all() {
    return new Area(0, 0, layout.width(), layout.height());
  }

  /** Fills an area. */
  void fill(Area area, double[] colour) {
    change(area, (x, y, rgb) -> System.arraycopy(colour, 0, rgb, 0, 3));
  }

  private void disc(SheetDrawing.Disc disc) {
    double r = disc.radius();
    Spot middle = disc.centre();
    Area box = new Area(middle.x() - r, middle.y() - r, 2 * r, 2 * r);
    double level = INK + (1 - INK) * disc.grey();
    change(
        box,
        (x, y, rgb) -> {
          if (Math.hypot(x - middle.x(), y - middle.y()) <= r) {
            Arrays.fill(rgb, level);
          }
        });
  }

  /** One stroke that looks like this over black and like that over paper. */
  void stroke(int field, double[] overBlack, double[] overPaper) {
    SheetField at = layout.fields().get(field);
    Area stroke = at.stroke();
    double border = at.paper().left();
    fill(new Area(stroke.left(), stroke.top(), border - stroke.left(), stroke.height()), overBlack);
    fill(new Area(border, stroke.top(), stroke.right() - border, stroke.height()), overPaper);
  }

  /** The photo: paper is at 80 % of the range. */
  SheetPhoto photo() {
    int[] argb = new int[width * height];
    for (int i = 0; i < argb.length; i++) {
      Srgb seen = new LinearRgb(held(light[0][i]), held(light[1][i]), held(light[2][i])).encode();
      argb[i] = 0xFF000000 | seen.toPacked();
    }
    return SheetPhoto.of(new ArgbPhoto(width, height, argb, RgbSpace.SRGB));
  }

  private static double held(double relative) {
    return Math.max(0, Math.min(1, 0.8 * relative));
  }
}
