package io.github.swatchwright.cli.sheet;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import io.github.swatchwright.sheet.SheetCode;
import io.github.swatchwright.sheet.SheetPage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The code of a page, made as a QR code (ISO/IEC 18004). */
public final class SheetCodes {
  /** Finer codes, more than 85 modules across, don't survive being photographed. */
  static final int FINEST_VERSION = 17;

  /** Up to here, 53 modules across, there is room for more correction. */
  private static final int COARSE_VERSION = 9;

  private SheetCodes() {}

  /**
   * The modules of a page's code, row by row, true for black.
   *
   * @throws IllegalArgumentException when the page's names are too long for it
   */
  public static boolean[][] of(SheetPage page) {
    String text = SheetCode.toText(page);
    // Blur and noise spoil fine modules all at once: large modules beat more correction.
    for (ErrorCorrectionLevel level : List.of(ErrorCorrectionLevel.M, ErrorCorrectionLevel.L)) {
      int finest = level == ErrorCorrectionLevel.M ? COARSE_VERSION : FINEST_VERSION;
      Optional<QRCode> code = encoded(text, level);
      if (code.isPresent() && code.get().getVersion().getVersionNumber() <= finest) {
        return modules(code.get().getMatrix());
      }
    }
    throw new IllegalArgumentException(
        "the names on page "
            + page.page()
            + " are too long for its code; put fewer on a page with --fields");
  }

  /** The code, when the level holds that much. */
  private static Optional<QRCode> encoded(String text, ErrorCorrectionLevel level) {
    try {
      return Optional.of(
          Encoder.encode(
              text, level, Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name())));
    } catch (WriterException e) {
      return Optional.empty();
    }
  }

  private static boolean[][] modules(ByteMatrix matrix) {
    boolean[][] modules = new boolean[matrix.getHeight()][matrix.getWidth()];
    for (int row = 0; row < modules.length; row++) {
      for (int column = 0; column < modules[row].length; column++) {
        modules[row][column] = matrix.get(column, row) == 1;
      }
    }
    return modules;
  }
}
