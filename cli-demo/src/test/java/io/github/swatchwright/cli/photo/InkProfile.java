package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.WhitePoint;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * An ICC profile of four invented inks (ICC.1:2001, an output profile with a 16-bit table from CMYK
 * to CIELAB). Cyan, magenta and yellow each take away one encoded sRGB channel, black all three: R'
 * = (1 − 0.9 c)(1 − 0.9 k).
 */
final class InkProfile {
  private static final int GRID = 9;
  private static final int INKS = 4;
  private static final double STRENGTH = 0.9;
  private static final int HEADER = 128;
  private static final int DESCRIPTION = HEADER + 4 + 4 * 12;
  private static final int DESCRIPTION_LENGTH = 96;
  private static final int COPYRIGHT = DESCRIPTION + DESCRIPTION_LENGTH;
  private static final int WHITE = COPYRIGHT + 16;
  private static final int TABLE = WHITE + 20;
  private static final int ENDS = 2;

  private InkProfile() {}

  /** The ink that leaves that much of an encoded channel where there is no black. */
  static double ink(double channel) {
    return (1 - channel) / STRENGTH;
  }

  /** The colour of inks, 0 none to 1 full. */
  static Lab colour(double cyan, double magenta, double yellow, double black) {
    double grey = 1 - STRENGTH * black;
    return new Srgb(
            (1 - STRENGTH * cyan) * grey,
            (1 - STRENGTH * magenta) * grey,
            (1 - STRENGTH * yellow) * grey)
        .toXyz()
        .adaptTo(WhitePoint.D50)
        .toLab();
  }

  /** The profile's bytes. */
  static byte[] bytes() {
    int nodes = GRID * GRID * GRID * GRID;
    int tableLength = 52 + 2 * (INKS * ENDS + 3 * nodes + 3 * ENDS);
    int size = (TABLE + tableLength + 3) / 4 * 4;
    ByteBuffer icc = ByteBuffer.allocate(size);
    icc.putInt(0, size).putInt(8, 0x02400000);
    text(icc, 12, "prtrCMYKLab ");
    icc.putShort(24, (short) 2026).putShort(26, (short) 1).putShort(28, (short) 1);
    text(icc, 36, "acsp");
    icc.putInt(68, 0xF6D6).putInt(72, 0x10000).putInt(76, 0xD32D);
    icc.putInt(HEADER, 4);
    tag(icc, 0, "desc", DESCRIPTION, DESCRIPTION_LENGTH);
    tag(icc, 1, "cprt", COPYRIGHT, 13);
    tag(icc, 2, "wtpt", WHITE, 20);
    tag(icc, 3, "A2B0", TABLE, tableLength);
    text(icc, DESCRIPTION, "desc");
    icc.putInt(DESCRIPTION + 8, 5);
    text(icc, DESCRIPTION + 12, "inks");
    text(icc, COPYRIGHT, "text");
    text(icc, COPYRIGHT + 8, "free");
    text(icc, WHITE, "XYZ ");
    icc.putInt(WHITE + 8, 0xF6D6).putInt(WHITE + 12, 0x10000).putInt(WHITE + 16, 0xD32D);
    table(icc.position(TABLE));
    return icc.array();
  }

  private static void table(ByteBuffer icc) {
    icc.put("mft2".getBytes(StandardCharsets.US_ASCII)).putInt(0);
    icc.put((byte) INKS).put((byte) 3).put((byte) GRID).put((byte) 0);
    for (int i = 0; i < 9; i++) {
      icc.putInt(i % 4 == 0 ? 0x10000 : 0);
    }
    icc.putShort((short) ENDS).putShort((short) ENDS);
    for (int ink = 0; ink < INKS; ink++) {
      icc.putShort((short) 0).putShort((short) 0xFFFF);
    }
    double step = GRID - 1;
    for (int node = 0; node < GRID * GRID * GRID * GRID; node++) {
      int cyan = node / (GRID * GRID * GRID);
      int magenta = node / (GRID * GRID) % GRID;
      int yellow = node / GRID % GRID;
      int black = node % GRID;
      Lab lab = colour(cyan / step, magenta / step, yellow / step, black / step);
      icc.putShort((short) Math.round(lab.l() * 652.8));
      icc.putShort((short) Math.round((lab.a() + 128) * 256));
      icc.putShort((short) Math.round((lab.b() + 128) * 256));
    }
    for (int i = 0; i < 3; i++) {
      icc.putShort((short) 0).putShort((short) 0xFFFF);
    }
  }

  private static void tag(ByteBuffer icc, int index, String name, int at, int length) {
    int entry = HEADER + 4 + 12 * index;
    text(icc, entry, name);
    icc.putInt(entry + 4, at).putInt(entry + 8, length);
  }

  private static void text(ByteBuffer icc, int at, String text) {
    icc.position(at).put(text.getBytes(StandardCharsets.US_ASCII));
  }

  /**
   * Writes it, to be read by other programs.
   *
   * @param args the file
   */
  public static void main(String... args) throws IOException {
    Files.write(Path.of(args[0]), bytes());
  }
}
