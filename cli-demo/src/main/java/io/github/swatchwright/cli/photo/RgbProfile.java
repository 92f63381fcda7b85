package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * An ICC profile of one of the library's own RGB spaces (ICC.1:2001, a display profile of matrix
 * and curves), to convert pictures into.
 */
final class RgbProfile {
  private static final int HEADER = 128;
  private static final int CURVE_POINTS = 4096;
  private static final String[] TAGS = {
    "desc", "cprt", "wtpt", "rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC"
  };

  /** D50 as ICC.1 has it. */
  private static final double[] D50 = {0.9642, 1, 0.8249};

  private RgbProfile() {}

  /**
   * The profile's bytes. One method, since each tag's offset is needed twice: in the directory and
   * where the tag itself is written.
   */
  static byte[] of(RgbSpace space) {
    byte[] name = (space + "\0").getBytes(StandardCharsets.US_ASCII);
    int directory = 4 + 12 * TAGS.length;
    int descriptionAt = HEADER + directory;
    int descriptionLength = padded(12 + name.length + 78);
    int copyrightAt = descriptionAt + descriptionLength;
    int copyrightLength = padded(8 + name.length);
    int xyzAt = copyrightAt + copyrightLength;
    int curveAt = xyzAt + 4 * 20;
    int size = padded(curveAt + 12 + 2 * CURVE_POINTS);
    ByteBuffer icc = ByteBuffer.allocate(size);
    icc.putInt(0, size).putInt(8, 0x02400000);
    text(icc, 12, "mntrRGB XYZ ");
    icc.putShort(24, (short) 2026).putShort(26, (short) 1).putShort(28, (short) 1);
    text(icc, 36, "acsp");
    xyz(icc, 68, D50);
    icc.putInt(HEADER, TAGS.length);
    for (int i = 0; i < TAGS.length; i++) {
      text(icc, HEADER + 4 + 12 * i, TAGS[i]);
      boolean curve = i >= 6;
      int at =
          switch (i) {
            case 0 -> descriptionAt;
            case 1 -> copyrightAt;
            default -> curve ? curveAt : xyzAt + 20 * (i - 2);
          };
      int length =
          switch (i) {
            case 0 -> descriptionLength;
            case 1 -> copyrightLength;
            default -> curve ? 12 + 2 * CURVE_POINTS : 20;
          };
      icc.putInt(HEADER + 8 + 12 * i, at).putInt(HEADER + 12 + 12 * i, length);
    }
    text(icc, descriptionAt, "desc");
    icc.putInt(descriptionAt + 8, name.length).position(descriptionAt + 12).put(name);
    text(icc, copyrightAt, "text");
    icc.position(copyrightAt + 8).put(name);
    column(icc, xyzAt, D50);
    column(icc, xyzAt + 20, adapted(space.toXyz(1, 0, 0)));
    column(icc, xyzAt + 40, adapted(space.toXyz(0, 1, 0)));
    column(icc, xyzAt + 60, adapted(space.toXyz(0, 0, 1)));
    text(icc, curveAt, "curv");
    icc.putInt(curveAt + 8, CURVE_POINTS);
    for (int i = 0; i < CURVE_POINTS; i++) {
      double light = space.decode((double) i / (CURVE_POINTS - 1));
      icc.putShort(curveAt + 12 + 2 * i, (short) Math.round(65535 * light));
    }
    return icc.array();
  }

  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }

  private static double[] adapted(Xyz colour) {
    Xyz d50 = colour.adaptTo(WhitePoint.D50);
    WhitePoint white = WhitePoint.D50;
    return new double[] {
      d50.x() / white.xn() * D50[0], d50.y() / white.yn() * D50[1], d50.z() / white.zn() * D50[2]
    };
  }

  private static void column(ByteBuffer icc, int at, double[] values) {
    text(icc, at, "XYZ ");
    xyz(icc, at + 8, values);
  }

  private static void xyz(ByteBuffer icc, int at, double[] values) {
    for (int i = 0; i < 3; i++) {
      icc.putInt(at + 4 * i, (int) Math.round(65536 * values[i]));
    }
  }

  private static void text(ByteBuffer icc, int at, String text) {
    icc.position(at).put(text.getBytes(StandardCharsets.US_ASCII));
  }
}
