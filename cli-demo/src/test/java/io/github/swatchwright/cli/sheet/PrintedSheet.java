package io.github.swatchwright.cli.sheet;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import io.github.swatchwright.sheet.SheetDrawing;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** A sheet as a scanner sees it before anything is painted on it, on a dark table. */
public final class PrintedSheet {
  private static final int TABLE = 40;

  private PrintedSheet() {}

  /** The picture of a page. */
  public static BufferedImage of(SheetPage page, double pixelsPerMillimetre) {
    return picture(page, SheetCodes.of(page), pixelsPerMillimetre);
  }

  /** The picture of a page whose code says something else. */
  public static BufferedImage saying(String text, SheetPage page, double pixelsPerMillimetre) {
    try {
      ByteMatrix matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
      boolean[][] code = new boolean[matrix.getHeight()][matrix.getWidth()];
      for (int i = 0; i < code.length * code.length; i++) {
        code[i / code.length][i % code.length] = matrix.get(i % code.length, i / code.length) == 1;
      }
      return picture(page, code, pixelsPerMillimetre);
    } catch (WriterException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static BufferedImage picture(SheetPage page, boolean[][] code, double scale) {
    BufferedImage print = SheetScene.print(SheetDrawing.of(SheetLayout.of(page), code));
    int width = (int) Math.round(scale * page.paper().width());
    int height = (int) Math.round(scale * page.paper().height());
    BufferedImage image =
        new BufferedImage(width + 2 * TABLE, height + 2 * TABLE, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0x40362C));
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    graphics.drawImage(print, TABLE, TABLE, width, height, null);
    graphics.dispose();
    return image;
  }
}
