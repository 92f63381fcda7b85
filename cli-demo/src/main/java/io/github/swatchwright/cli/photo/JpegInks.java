package io.github.swatchwright.cli.photo;

import java.awt.image.DataBufferByte;
import java.awt.image.Raster;

/**
 * A JPEG of four channels, as its reader leaves them: CMYK or YCCK, and inverted where an Adobe
 * segment is (Adobe technical note 5116; T.872 6.5.3).
 */
enum JpegInks {
  /** Highest is full ink. */
  PLAIN,
  /** Highest is no ink. */
  INVERTED,
  /** The first three as luminance and two colour differences of inks, the fourth inverted. */
  INVERTED_YCCK;

  /** Makes the samples ink amounts, in place: highest is full ink. */
  void decode(Raster raster) {
    if (!(raster.getDataBuffer() instanceof DataBufferByte buffer)) {
      throw new PhotoRefusal("has no 8 bits a channel, must have in CMYK");
    }
    if (this == PLAIN) {
      return;
    }
    byte[] inks = buffer.getData();
    for (int at = 0; at + 3 < inks.length; at += 4) {
      if (this == INVERTED_YCCK) {
        double y = inks[at] & 0xFF;
        double cb = (inks[at + 1] & 0xFF) - 128;
        double cr = (inks[at + 2] & 0xFF) - 128;
        inks[at] = level(y + 1.402 * cr);
        inks[at + 1] = level(y - 0.344136 * cb - 0.714136 * cr);
        inks[at + 2] = level(y + 1.772 * cb);
        inks[at + 3] = (byte) ~inks[at + 3];
      } else {
        inks[at] = (byte) ~inks[at];
        inks[at + 1] = (byte) ~inks[at + 1];
        inks[at + 2] = (byte) ~inks[at + 2];
        inks[at + 3] = (byte) ~inks[at + 3];
      }
    }
  }

  private static byte level(double value) {
    return (byte) Math.round(Math.max(0, Math.min(255, value)));
  }
}
