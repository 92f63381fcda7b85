package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.Region;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * A small picture of a photo with the regions that were read, each joined by a line to its swatches
 * below, which are as wide as their shares. References are drawn with broken lines. It has no
 * words, because not every system has a font.
 */
public final class PreviewPicture {
  private static final int LONGEST = 1000;
  private static final int GAP = 24;
  private static final int SWATCH = 56;
  private static final Color GROUND = new Color(0x767676);

  private PreviewPicture() {}

  /**
   * A region and what was read there.
   *
   * @param region where
   * @param swatches colours
   * @param shares how much of the region each has
   */
  public record Read(Region region, List<Lab> swatches, List<Double> shares) {}

  /**
   * The picture as a PNG file.
   *
   * @param photo the photo
   * @param reads what was read
   * @param references where references are
   */
  public static byte[] png(Photo photo, List<Read> reads, List<Region> references) {
    BufferedImage small = Thumbnail.of(photo, LONGEST);
    double scale = (double) small.getWidth() / photo.width();
    int height = small.getHeight() + GAP + SWATCH;
    BufferedImage picture = new BufferedImage(small.getWidth(), height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(GROUND);
    graphics.fillRect(0, 0, small.getWidth(), height);
    graphics.drawImage(small, 0, 0, null);
    for (Region reference : references) {
      outline(graphics, reference, scale, new float[] {5, 5});
    }
    double wide = (double) small.getWidth() / reads.size();
    for (int i = 0; i < reads.size(); i++) {
      Read read = reads.get(i);
      outline(graphics, read.region(), scale, null);
      double middle = (i + 0.5) * wide;
      int x = (int) ((read.region().x() + read.region().width() / 2.0) * scale);
      int y = (int) ((read.region().y() + read.region().height()) * scale);
      line(graphics, x, y, (int) middle, small.getHeight() + GAP);
      swatches(graphics, read, i * wide, wide, small.getHeight() + GAP);
    }
    graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    // In memory: left to itself, ImageIO keeps a file of its own in the system's temporary folder.
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(picture, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void swatches(Graphics2D graphics, Read read, double left, double wide, int top) {
    double all = read.shares().stream().mapToDouble(Double::doubleValue).sum();
    double inner = Math.max(1, wide - 4);
    double passed = 0;
    for (int i = 0; i < read.swatches().size(); i++) {
      int from = (int) Math.round(left + 2 + inner * passed / all);
      passed += read.shares().get(i);
      int to = (int) Math.round(left + 2 + inner * passed / all);
      int rgb = read.swatches().get(i).toSrgb().fit(GamutPolicy.REDUCE_CHROMA).toPacked();
      graphics.setColor(new Color(rgb));
      graphics.fillRect(from, top, Math.max(1, to - from), SWATCH);
    }
  }

  private static void outline(
      Graphics2D graphics, Region region, double scale, float @Nullable [] dashes) {
    int x = (int) (region.x() * scale);
    int y = (int) (region.y() * scale);
    int width = Math.max(1, (int) (region.width() * scale));
    int height = Math.max(1, (int) (region.height() * scale));
    graphics.setStroke(stroke(3, dashes));
    graphics.setColor(Color.BLACK);
    graphics.drawRect(x, y, width, height);
    graphics.setStroke(stroke(1, dashes));
    graphics.setColor(Color.WHITE);
    graphics.drawRect(x, y, width, height);
  }

  private static void line(Graphics2D graphics, int x, int y, int toX, int toY) {
    graphics.setStroke(stroke(3, null));
    graphics.setColor(Color.BLACK);
    graphics.drawLine(x, y, toX, toY);
    graphics.setStroke(stroke(1, null));
    graphics.setColor(Color.WHITE);
    graphics.drawLine(x, y, toX, toY);
  }

  private static BasicStroke stroke(float width, float @Nullable [] dashes) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
  }
}
