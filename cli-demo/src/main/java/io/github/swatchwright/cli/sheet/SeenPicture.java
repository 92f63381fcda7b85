package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.sheet.FieldReading;
import io.github.swatchwright.sheet.Flattening;
import io.github.swatchwright.sheet.SheetField;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPhoto;
import io.github.swatchwright.sheet.SheetReading;
import io.github.swatchwright.sheet.Spot;
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

/**
 * The flattened sheet with what was read where: under each stroke a strip of the colours that were
 * read over black and over paper, and at full hiding; pink over what was left out, a cross over
 * fields that weren't read, an orange frame about those in doubt. Pages stand beside each other.
 */
public final class SeenPicture {
  private static final double SCALE = 5;
  private static final double STRIP = 2.4;
  private static final Color DOUBT = new Color(0xE07000);
  private static final Color READ = new Color(0x0060C0);
  private static final Color LEFT_OUT = new Color(0xB0FF3CC8, true);

  private SeenPicture() {}

  /**
   * A page.
   *
   * @param photo the photo
   * @param flat where its places are in the photo
   * @param reading what was read
   */
  public record Page(SheetPhoto photo, Flattening flat, SheetReading reading) {}

  /** The picture as a PNG file. */
  public static byte[] png(List<Page> pages) {
    List<BufferedImage> images = new ArrayList<>();
    int width = 0;
    int height = 0;
    for (Page page : pages) {
      BufferedImage image = image(page);
      images.add(image);
      width += image.getWidth();
      height = Math.max(height, image.getHeight());
    }
    BufferedImage all = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = all.createGraphics();
    int left = 0;
    for (BufferedImage image : images) {
      graphics.drawImage(image, left, 0, null);
      left += image.getWidth();
    }
    graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(all, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static BufferedImage image(Page page) {
    SheetLayout layout = page.reading().layout();
    int width = (int) (SCALE * layout.width());
    int height = (int) (SCALE * layout.height());
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        Spot at = page.flat().at((x + 0.5) / SCALE, (y + 0.5) / SCALE);
        image.setRGB(x, y, page.photo().argb(at.x(), at.y()));
      }
    }
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setStroke(new BasicStroke(2));
    page.reading().fields().forEach(field -> draw(graphics, field));
    graphics.dispose();
    return image;
  }

  private static void draw(Graphics2D graphics, FieldReading reading) {
    SheetField field = reading.field();
    graphics.setColor(reading.doubts().isEmpty() ? READ : DOUBT);
    if (reading.read().isEmpty()) {
      Area stroke = field.stroke();
      graphics.drawLine(
          at(stroke.left()), at(stroke.top()), at(stroke.right()), at(stroke.bottom()));
      graphics.drawLine(
          at(stroke.left()), at(stroke.bottom()), at(stroke.right()), at(stroke.top()));
      return;
    }
    graphics.setColor(LEFT_OUT);
    for (Spot spot : reading.leftOutAt()) {
      double half = FieldReading.CELL / 2;
      graphics.fill(
          new Rectangle2D.Double(
              SCALE * (spot.x() - half),
              SCALE * (spot.y() - half),
              SCALE * FieldReading.CELL,
              SCALE * FieldReading.CELL));
    }
    graphics.setColor(reading.doubts().isEmpty() ? READ : DOUBT);
    outline(graphics, field.readOverBlack());
    outline(graphics, field.readOverPaper());
    FieldReading.Read read = reading.read().get();
    double top = field.paper().bottom() - STRIP;
    double left = field.black().left();
    double wide = (field.paper().right() - left) / 3;
    strip(graphics, read.overBlack(), left, top, wide);
    strip(graphics, read.opaque().masstone(), left + wide, top, wide);
    strip(graphics, read.overPaper(), left + 2 * wide, top, wide);
  }

  private static void strip(Graphics2D graphics, Lab colour, double left, double top, double wide) {
    graphics.setColor(new Color(colour.toSrgb().fit(GamutPolicy.REDUCE_CHROMA).toPacked()));
    graphics.fillRect(at(left), at(top), at(wide), at(STRIP));
  }

  private static void outline(Graphics2D graphics, Area area) {
    graphics.drawRect(at(area.left()), at(area.top()), at(area.width()), at(area.height()));
  }

  private static int at(double millimetres) {
    return (int) Math.round(SCALE * millimetres);
  }
}
