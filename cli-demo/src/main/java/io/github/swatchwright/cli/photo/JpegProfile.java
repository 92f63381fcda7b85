package io.github.swatchwright.cli.photo;

import java.util.Arrays;

/**
 * Takes the colour profile out of a JPEG file (segments APP2), so that readers leave pixels alone.
 */
final class JpegProfile {
  private JpegProfile() {}

  /** The file without it; any other file as it is. */
  static byte[] removed(byte[] file) {
    if (file.length < 4 || (file[0] & 0xFF) != 0xFF || (file[1] & 0xFF) != 0xD8) {
      return file;
    }
    byte[] kept = new byte[file.length];
    kept[0] = file[0];
    kept[1] = file[1];
    int at = 2;
    int size = 2;
    while ((file[at + 1] & 0xFF) != 0xDA) {
      int length = 2 + ((file[at + 2] & 0xFF) << 8 | (file[at + 3] & 0xFF));
      if ((file[at + 1] & 0xFF) != 0xE2) {
        System.arraycopy(file, at, kept, size, length);
        size += length;
      }
      at += length;
    }
    System.arraycopy(file, at, kept, size, file.length - at);
    return Arrays.copyOf(kept, size + file.length - at);
  }
}
