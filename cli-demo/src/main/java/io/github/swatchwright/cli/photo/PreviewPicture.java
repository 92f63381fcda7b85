package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * A small picture of a photo with the regions that were read, numbered and named, below a grid
 * whose axes count pixels and percent. A list below the photo has the swatches, as wide as their
 * shares. References are drawn with broken lines.
 */
public final class PreviewPicture {
  private static final int LONGEST = 1000;
  private static final int NARROWEST = 320;
  private static final int LEFT = 48;
  private static final int TOP = 26;
  private static final int RIGHT = 44;
  private static final int BOTTOM = 30;
  private static final int COLUMN = 260;
  private static final int ROW = 26;
  private static final double LETTERS = 14;
  private static final Color GROUND = new Color(0x2A2A2A);
  private static final Color WORDS = new Color(0xF0F0F0);
  private static final Color GRID = new Color(0x60FFFFFF, true);
  private static final Color GRID_SHADE = new Color(0x50000000, true);

  private final Lettering lettering = Lettering.load();
  private final BufferedImage small;
  private final double scale;
  private final List<Read> reads;
  private final BufferedImage picture;
  private final Graphics2D graphics;
  private final List<Rectangle2D> taken = new ArrayList<>();

  private PreviewPicture(Photo photo, List<Read> reads) {
    this.reads = reads;
    small = Thumbnail.of(photo, LONGEST);
    scale = (double) small.getWidth() / photo.width();
    int width = Math.max(NARROWEST, LEFT + small.getWidth() + RIGHT);
    int columns = Math.max(1, width / COLUMN);
    int rows = (reads.size() + columns - 1) / columns;
    int height = TOP + small.getHeight() + BOTTOM + ROW * rows + ROW / 2;
    picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    graphics = picture.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(GROUND);
    graphics.fillRect(0, 0, width, height);
    graphics.drawImage(small, LEFT, TOP, null);
  }

  /**
   * A region and what was read there.
   *
   * @param name what it is called; empty when nobody says
   * @param region where
   * @param swatches colours
   * @param shares how much of the region each has
   */
  public record Read(String name, Region region, List<Lab> swatches, List<Double> shares) {}

  /**
   * The picture as a PNG file.
   *
   * @param photo the photo
   * @param reads what was read
   * @param references where references are
   */
  public static byte[] png(Photo photo, List<Read> reads, List<Region> references) {
    PreviewPicture preview = new PreviewPicture(photo, reads);
    preview.axes(photo);
    references.forEach(reference -> preview.outline(reference, new float[] {5, 5}));
    reads.forEach(read -> preview.outline(read.region(), null));
    for (int i = 0; i < reads.size(); i++) {
      preview.label(i);
    }
    preview.list();
    preview.graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    // In memory: left to itself, ImageIO keeps a file of its own in the system's temporary folder.
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(preview.picture, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** Pixels at the top and at the left, percent at the bottom and at the right. */
  private void axes(Photo photo) {
    int right = LEFT + small.getWidth();
    int bottom = TOP + small.getHeight();
    int step = step(photo);
    for (int x = 0; x <= photo.width(); x += step) {
      int at = LEFT + (int) (x * scale);
      grid(at, TOP, at, bottom);
      String words = x == 0 ? "0 px" : Integer.toString(x);
      words(words, at - lettering.width(words, LETTERS) / 2, TOP - 8);
    }
    for (int y = step; y <= photo.height(); y += step) {
      int at = TOP + (int) (y * scale);
      grid(LEFT, at, right, at);
      String words = Integer.toString(y);
      words(words, LEFT - 6 - lettering.width(words, LETTERS), at + LETTERS / 3);
    }
    for (int percent = percents(small.getWidth(), COLUMN / 5); percent <= 100; ) {
      String words = percent + " %";
      double at = LEFT + percent / 100.0 * small.getWidth();
      tick((int) at, bottom, 0, 5);
      words(words, at - lettering.width(words, LETTERS) / 2, bottom + 8 + LETTERS);
      percent += percents(small.getWidth(), COLUMN / 5);
    }
    for (int percent = percents(small.getHeight(), 2 * ROW); percent <= 100; ) {
      double at = TOP + percent / 100.0 * small.getHeight();
      tick(right, (int) at, 5, 0);
      words(percent == 100 ? "100" : percent + " %", right + 10, at + LETTERS / 3);
      percent += percents(small.getHeight(), 2 * ROW);
    }
  }

  /** A round number of pixels: at most ten make the longer side, and their numbers have room. */
  private int step(Photo photo) {
    int least = Math.max(Math.max(photo.width(), photo.height()) / 10, (int) (COLUMN / 4 / scale));
    int power = 1;
    while (10 * power <= least) {
      power *= 10;
    }
    for (int times : new int[] {1, 2, 5}) {
      if (times * power >= least) {
        return times * power;
      }
    }
    return 10 * power;
  }

  /** Percent from mark to mark, so that their words have room. */
  private static int percents(int length, int room) {
    for (int percent : new int[] {10, 20, 25, 50}) {
      if (percent * length >= 100 * room) {
        return percent;
      }
    }
    return 100;
  }

  private void grid(int x, int y, int toX, int toY) {
    graphics.setStroke(stroke(1, null));
    graphics.setColor(GRID_SHADE);
    graphics.drawLine(x + 1, y + 1, toX + 1, toY + 1);
    graphics.setColor(GRID);
    graphics.drawLine(x, y, toX, toY);
  }

  private void tick(int x, int y, int right, int down) {
    graphics.setColor(WORDS);
    graphics.drawLine(x, y, x + right, y + down);
  }

  private void words(String words, double left, double baseline) {
    graphics.setColor(WORDS);
    double most = picture.getWidth() - 2 - lettering.width(words, LETTERS);
    lettering.draw(graphics, words, Math.max(2, Math.min(most, left)), baseline, LETTERS);
  }

  private Rectangle2D onPicture(Region region) {
    return new Rectangle2D.Double(
        LEFT + (int) (region.x() * scale),
        TOP + (int) (region.y() * scale),
        Math.max(1, (int) (region.width() * scale)),
        Math.max(1, (int) (region.height() * scale)));
  }

  private void outline(Region region, float @Nullable [] dashes) {
    Rectangle2D place = onPicture(region);
    graphics.setStroke(stroke(3, dashes));
    graphics.setColor(Color.BLACK);
    graphics.draw(place);
    graphics.setStroke(stroke(1, dashes));
    graphics.setColor(Color.WHITE);
    graphics.draw(place);
    taken.add(place);
  }

  /** The number at the region's corner, and its name where that hides nothing. */
  private void label(int index) {
    Read read = reads.get(index);
    String number = Integer.toString(index + 1);
    String full = read.name().isEmpty() ? number : number + " " + read.name();
    Rectangle2D place = onPicture(read.region());
    for (String words : List.of(full, number)) {
      double width = lettering.width(words, LETTERS) + 8;
      double height = LETTERS + 5;
      for (double top : new double[] {place.getMinY() - height - 2, place.getMaxY() + 2}) {
        Rectangle2D tag = new Rectangle2D.Double(place.getMinX() - 1, top, width, height);
        boolean isFree =
            tag.getMinY() >= TOP
                && tag.getMaxY() <= TOP + small.getHeight()
                && tag.getMaxX() <= LEFT + small.getWidth()
                && taken.stream().noneMatch(tag::intersects);
        if (isFree) {
          tag(tag, words);
          return;
        }
      }
    }
    double width = lettering.width(number, LETTERS) + 8;
    tag(new Rectangle2D.Double(place.getMinX(), place.getMinY(), width, LETTERS + 5), number);
  }

  private void tag(Rectangle2D tag, String words) {
    taken.add(tag);
    graphics.setColor(Color.BLACK);
    graphics.fill(tag);
    graphics.setColor(Color.WHITE);
    lettering.draw(graphics, words, tag.getMinX() + 4, tag.getMaxY() - 5, LETTERS);
  }

  /** Below the photo, column by column: number, swatches, name. */
  private void list() {
    int columns = Math.max(1, picture.getWidth() / COLUMN);
    int rows = (reads.size() + columns - 1) / columns;
    int wide = picture.getWidth() / columns;
    int top = TOP + small.getHeight() + BOTTOM;
    for (int i = 0; i < reads.size(); i++) {
      int left = i / rows * wide + 8;
      int y = top + i % rows * ROW;
      words(Integer.toString(i + 1), left, y + ROW - 9);
      swatches(reads.get(i), left + 26, 56, y + 2);
      String name = lettering.fitting(reads.get(i).name(), LETTERS, wide - 104);
      words(name, left + 90, y + ROW - 9);
    }
  }

  private void swatches(Read read, int left, int wide, int top) {
    double all = read.shares().stream().mapToDouble(Double::doubleValue).sum();
    double passed = 0;
    for (int i = 0; i < read.swatches().size(); i++) {
      int from = (int) Math.round(left + wide * passed / all);
      passed += read.shares().get(i);
      int to = (int) Math.round(left + wide * passed / all);
      int rgb = read.swatches().get(i).toSrgb().fit(GamutPolicy.REDUCE_CHROMA).toPacked();
      graphics.setColor(new Color(rgb));
      graphics.fillRect(from, top, Math.max(1, to - from), ROW - 6);
    }
  }

  private static BasicStroke stroke(float width, float @Nullable [] dashes) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
  }
}
