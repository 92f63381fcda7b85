package io.github.swatchwright.cli.photo;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.testdata.FuzzSubject;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * What photo files say about their pixels, read or refused; no pixel is decoded, and profiles stay
 * closed, since the platform opens them.
 */
public enum PhotoTagsTarget implements FuzzSubject {
  /** EXIF, profile and inks in segments. */
  JPEG {
    @Override
    public List<byte[]> seeds() {
      return List.of(
          PhotoBytes.withSegments(SHORT_JPEG, PhotoBytes.orientationSegment(6)),
          PhotoBytes.withSegments(SHORT_JPEG, PhotoBytes.profileSegments(PROFILE)),
          PhotoBytes.withSegments(SHORT_JPEG, ADOBE));
    }

    @Override
    void read(byte[] input) {
      Optional<byte[]> profile = PhotoTags.of(ByteBuffer.wrap(input)).profile();
      if (profile.isPresent() && hasProfile(JpegProfile.removed(input))) {
        throw new AssertionError("the profile is still there");
      }
    }
  },

  /** EXIF and packed profile in chunks. */
  PNG {
    @Override
    public List<byte[]> seeds() {
      byte[] plain = PhotoBytes.png(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
      return List.of(
          PhotoBytes.withChunk(plain, "eXIf", EXIF),
          PhotoBytes.withChunk(plain, "iCCP", PhotoBytes.profileChunk(PROFILE)));
    }
  },

  /** EXIF and profile in chunks of RIFF. */
  WEBP {
    @Override
    public List<byte[]> seeds() {
      ByteBuffer extended =
          ByteBuffer.allocate(12 + 2 * 8 + PROFILE.length + EXIF.length)
              .order(ByteOrder.LITTLE_ENDIAN);
      extended.put(ascii("RIFF")).putInt(extended.capacity() - 8).put(ascii("WEBP"));
      extended.put(ascii("ICCP")).putInt(PROFILE.length).put(PROFILE);
      extended.put(ascii("EXIF")).putInt(EXIF.length).put(EXIF);
      return List.of(PhotoBytes.flatWebp(1, 1, 0x808080), extended.array());
    }
  },

  /** A directory. */
  TIFF {
    @Override
    public List<byte[]> seeds() {
      ByteBuffer tiff = ByteBuffer.allocate(38 + PROFILE.length).order(ByteOrder.LITTLE_ENDIAN);
      tiff.put(ascii("II*\0")).putInt(8).putShort((short) 2);
      tiff.putShort((short) 274).putShort((short) 3).putInt(1).putInt(8);
      tiff.putShort((short) 34_675).putShort((short) 7).putInt(PROFILE.length).putInt(38);
      return List.of(EXIF, tiff.putInt(0).put(PROFILE).array());
    }
  };

  /** What spoils them. */
  public static final List<String> WORDS =
      List.of(
          "\0",
          "\u007f\u007f\u007f\u007f",
          "Exif\0\0",
          "ICC_PROFILE\0\1\1",
          "Adobe",
          "iCCP",
          "eXIf",
          "IEND",
          "ICCP",
          "EXIF",
          "MM\0*\0\0\0\b",
          "II*\0\b\0\0\0");

  private static final int LONGEST_REFUSAL = 200;

  /** Any bytes: a profile is opened later. */
  private static final byte[] PROFILE = ascii("as good as a profile");

  /** TIFF 6.0: big-endian, one entry, the orientation 3. */
  private static final byte[] EXIF =
      ByteBuffer.allocate(26)
          .put(ascii("MM\0*"))
          .putInt(8)
          .putShort((short) 1)
          .putShort((short) 274)
          .putShort((short) 3)
          .putInt(1)
          .putInt(3 << 16)
          .putInt(0)
          .array();

  /** ISO/IEC 10918-1: a frame of four channels, a scan of nothing and the end. */
  private static final byte[] SHORT_JPEG =
      ByteBuffer.allocate(28)
          .putInt(0xFFD8FFC0)
          .putShort((short) 8)
          .put(new byte[] {8, 0, 1, 0, 1, 4})
          .putInt(0xFFDA0006)
          .put(new byte[10])
          .putShort((short) 0xFFD9)
          .array();

  /** T.872 6.5.3: version 100, flags, and 2 for YCCK. */
  private static final byte[] ADOBE =
      ByteBuffer.allocate(16)
          .putInt(0xFFEE000E)
          .put(ascii("Adobe"))
          .put(new byte[] {0, 100, 0, 0, 0, 0, 2})
          .array();

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static boolean hasProfile(byte[] file) {
    return PhotoTags.of(ByteBuffer.wrap(file)).profile().isPresent();
  }

  void read(byte[] input) {
    PhotoTags.of(ByteBuffer.wrap(input));
  }

  @Override
  public boolean feed(byte[] input) {
    try {
      read(input);
      return true;
    } catch (PhotoRefusal refusal) {
      String message = String.valueOf(refusal.getMessage());
      if (message.length() > LONGEST_REFUSAL || !Printable.oneLine(message).equals(message)) {
        throw new AssertionError("no short refusal: " + message, refusal);
      }
      return false;
    }
  }
}
