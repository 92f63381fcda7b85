package io.github.swatchwright.cli.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * What a photo file says about its pixels: the colour profile and the way up. Read from the file's
 * own structure (ISO 10918-1 segments, PNG and RIFF chunks, TIFF 6.0 directories), because image
 * readers apply profiles in ways of their own.
 *
 * @param profile the embedded ICC profile
 * @param orientation EXIF's number, 1 upright to 8
 * @param inks how a JPEG of four channels stores them
 */
record PhotoTags(Optional<byte[]> profile, int orientation, Optional<JpegInks> inks) {
  private static final int LARGEST_PROFILE = 16 << 20;
  private static final String EXIF_HEAD = "Exif\0\0";
  private static final String ICC_HEAD = "ICC_PROFILE\0";
  private static final int PNG_HEAD = 8;
  private static final int FOUR_CHANNELS = 4;

  PhotoTags(Optional<byte[]> profile, int orientation) {
    this(profile, orientation, Optional.empty());
  }

  /**
   * Reads the tags of a file.
   *
   * @param file its bytes
   * @throws IllegalArgumentException when its structure or its EXIF block is broken
   */
  static PhotoTags of(ByteBuffer file) {
    ByteBuffer bytes = file.duplicate().order(ByteOrder.BIG_ENDIAN);
    if (bytes.remaining() < 12) {
      return new PhotoTags(Optional.empty(), 1);
    }
    int head = bytes.getInt(0);
    try {
      if (head >>> 16 == 0xFFD8) {
        return jpeg(bytes);
      }
      if (head == 0x89504E47) {
        return png(bytes);
      }
      if (head == 0x52494646 && bytes.getInt(8) == 0x57454250) {
        return webp(bytes);
      }
      if (head == 0x49492A00 || head == 0x4D4D002A) {
        return tiff(bytes);
      }
      return new PhotoTags(Optional.empty(), 1);
    } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException e) {
      throw new PhotoRefusal("is cut off or broken", e);
    }
  }

  private static PhotoTags jpeg(ByteBuffer bytes) {
    ByteArrayOutputStream profile = new ByteArrayOutputStream();
    int orientation = 1;
    int channels = 0;
    JpegInks inks = JpegInks.PLAIN;
    int at = 2;
    while ((bytes.getShort(at) & 0xFFFF) != 0xFFDA) {
      int marker = bytes.getShort(at) & 0xFFFF;
      int length = bytes.getShort(at + 2) & 0xFFFF;
      ByteBuffer body = slice(bytes, at + 4, length - 2);
      if (marker == 0xFFE1 && startsWith(body, EXIF_HEAD)) {
        orientation = exifOrientation(slice(body, EXIF_HEAD.length(), body.remaining() - 6));
      } else if (marker == 0xFFE2 && startsWith(body, ICC_HEAD)) {
        byte[] piece = bytes(slice(body, ICC_HEAD.length() + 2, body.remaining() - 14));
        profile.write(piece, 0, piece.length);
      } else if (marker == 0xFFEE && startsWith(body, "Adobe")) {
        inks = body.get(11) == 2 ? JpegInks.INVERTED_YCCK : JpegInks.INVERTED;
      } else if (isFrame(marker)) {
        channels = body.get(5);
      }
      at += 2 + length;
    }
    requireEnd(bytes, at);
    return new PhotoTags(
        profile.size() == 0 ? Optional.empty() : Optional.of(profile.toByteArray()),
        orientation,
        channels == FOUR_CHANNELS ? Optional.of(inks) : Optional.empty());
  }

  /** Readers fill what is missing with grey. Behind the end of the picture, cameras add things. */
  private static void requireEnd(ByteBuffer bytes, int scan) {
    for (int at = bytes.limit() - 2; at > scan; at--) {
      if ((bytes.getShort(at) & 0xFFFF) == 0xFFD9) {
        return;
      }
    }
    throw new PhotoRefusal("is cut off or broken: it ends before its picture does");
  }

  /** SOF0 to SOF15, among which are three other segments. */
  private static boolean isFrame(int marker) {
    return marker >= 0xFFC0
        && marker <= 0xFFCF
        && marker != 0xFFC4
        && marker != 0xFFC8
        && marker != 0xFFCC;
  }

  private static PhotoTags png(ByteBuffer bytes) {
    Optional<byte[]> profile = Optional.empty();
    int orientation = 1;
    int at = PNG_HEAD;
    String type = "";
    while (!type.equals("IEND") && at + 12 <= bytes.limit()) {
      int length = bytes.getInt(at);
      type = text(slice(bytes, at + 4, 4));
      ByteBuffer body = slice(bytes, at + 8, length);
      if (type.equals("iCCP")) {
        int name = text(body).indexOf('\0');
        profile = Optional.of(inflate(bytes(slice(body, name + 2, length - name - 2))));
      } else if (type.equals("eXIf")) {
        orientation = exifOrientation(body);
      }
      at += 12 + length;
    }
    return new PhotoTags(profile, orientation);
  }

  private static PhotoTags webp(ByteBuffer big) {
    ByteBuffer bytes = big.duplicate().order(ByteOrder.LITTLE_ENDIAN);
    Optional<byte[]> profile = Optional.empty();
    int orientation = 1;
    int at = 12;
    while (at + 8 <= bytes.limit()) {
      String type = text(slice(bytes, at, 4));
      int length = bytes.getInt(at + 4);
      ByteBuffer body = slice(bytes, at + 8, length);
      if (type.equals("ICCP")) {
        profile = Optional.of(bytes(body));
      } else if (type.equals("EXIF")) {
        orientation =
            exifOrientation(startsWith(body, EXIF_HEAD) ? slice(body, 6, length - 6) : body);
      }
      at += 8 + length + (length & 1);
    }
    return new PhotoTags(profile, orientation);
  }

  private static PhotoTags tiff(ByteBuffer bytes) {
    Optional<byte[]> profile = TiffDirectory.of(bytes).bytes(TiffDirectory.PROFILE);
    return new PhotoTags(profile, orientation(TiffDirectory.of(bytes)));
  }

  private static int exifOrientation(ByteBuffer exif) {
    try {
      return orientation(TiffDirectory.of(exif));
    } catch (IndexOutOfBoundsException e) {
      throw new PhotoRefusal("has a broken EXIF block", e);
    }
  }

  private static int orientation(TiffDirectory directory) {
    int orientation = directory.number(TiffDirectory.ORIENTATION).orElse(1);
    if (orientation < 1 || orientation > 8) {
      throw new PhotoRefusal("has the EXIF orientation " + orientation + ", must be within [1, 8]");
    }
    return orientation;
  }

  private static byte[] inflate(byte[] packed) {
    Inflater inflater = new Inflater();
    inflater.setInput(packed);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] piece = new byte[8192];
    try {
      while (!inflater.finished()) {
        int count = inflater.inflate(piece);
        out.write(piece, 0, count);
        if (count == 0 || out.size() > LARGEST_PROFILE) {
          throw new PhotoRefusal("has a broken colour profile");
        }
      }
      return out.toByteArray();
    } catch (DataFormatException e) {
      throw new PhotoRefusal("has a broken colour profile", e);
    } finally {
      inflater.end();
    }
  }

  static ByteBuffer slice(ByteBuffer bytes, int from, int length) {
    if (length < 0) {
      throw new IndexOutOfBoundsException("length " + length);
    }
    return bytes.slice(from, length).order(bytes.order());
  }

  static byte[] bytes(ByteBuffer slice) {
    if (slice.remaining() > LARGEST_PROFILE) {
      throw new PhotoRefusal("has a block of " + slice.remaining() + " bytes");
    }
    byte[] copy = new byte[slice.remaining()];
    slice.duplicate().get(copy);
    return copy;
  }

  private static boolean startsWith(ByteBuffer body, String head) {
    return body.remaining() >= head.length() && text(slice(body, 0, head.length())).equals(head);
  }

  private static String text(ByteBuffer slice) {
    return new String(bytes(slice), StandardCharsets.ISO_8859_1);
  }

  @Override
  public String toString() {
    return "PhotoTags[orientation=" + orientation + "]";
  }
}
