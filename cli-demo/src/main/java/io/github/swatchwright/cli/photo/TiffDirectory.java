package io.github.swatchwright.cli.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * The first directory of a TIFF structure (TIFF 6.0, section 2), as files and EXIF blocks have it.
 */
final class TiffDirectory {
  static final int ORIENTATION = 274;
  static final int PROFILE = 34_675;
  private static final int ENTRY = 12;
  private static final int SHORT = 3;

  private final ByteBuffer bytes;
  private final int first;
  private final int count;

  private TiffDirectory(ByteBuffer bytes, int first, int count) {
    this.bytes = bytes;
    this.first = first;
    this.count = count;
  }

  static TiffDirectory of(ByteBuffer block) {
    ByteBuffer bytes = block.duplicate();
    int order = bytes.getShort(0);
    if (order != 0x4949 && order != 0x4D4D) {
      throw new PhotoRefusal("has a broken EXIF block");
    }
    bytes.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int at = bytes.getInt(4);
    return new TiffDirectory(bytes, at + 2, bytes.getShort(at) & 0xFFFF);
  }

  private int entry(int tag) {
    for (int i = 0; i < count; i++) {
      if ((bytes.getShort(first + ENTRY * i) & 0xFFFF) == tag) {
        return first + ENTRY * i;
      }
    }
    return -1;
  }

  /** A tag's number. */
  Optional<Integer> number(int tag) {
    int entry = entry(tag);
    if (entry < 0) {
      return Optional.empty();
    }
    boolean isShort = bytes.getShort(entry + 2) == SHORT;
    return Optional.of(isShort ? bytes.getShort(entry + 8) & 0xFFFF : bytes.getInt(entry + 8));
  }

  /** A tag's bytes. */
  Optional<byte[]> bytes(int tag) {
    int entry = entry(tag);
    if (entry < 0) {
      return Optional.empty();
    }
    return Optional.of(
        PhotoTags.bytes(PhotoTags.slice(bytes, bytes.getInt(entry + 8), bytes.getInt(entry + 4))));
  }
}
