package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import java.awt.Transparency;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Iterator;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes small photos with profiles and orientations, byte by byte where no writer does it. */
public final class PhotoBytes {
  private PhotoBytes() {}

  /** A PNG. */
  public static byte[] png(BufferedImage image) {
    return written(image, "png");
  }

  /** A TIFF; the writer embeds the profile of the image's colour space. */
  public static byte[] tiff(BufferedImage image) {
    return written(image, "tiff");
  }

  /** By the platform's own writer: others take no 16-bit images. */
  private static byte[] written(BufferedImage image, String format) {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName(format);
    ImageWriter writer = writers.next();
    while (!writer.getClass().getName().startsWith("com.sun.")) {
      writer = writers.next();
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(image);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** A JPEG of quality 95 whose segments come first in the file. */
  public static byte[] jpeg(BufferedImage image, byte[]... segments) {
    return jpeg(image, 0.95f, segments);
  }

  /** A JPEG of any quality whose segments come first in the file. */
  public static byte[] jpeg(BufferedImage image, float quality, byte[]... segments) {
    return withSegments(encoded(new IIOImage(image, null, null), quality), segments);
  }

  private static byte[] encoded(IIOImage image, float quality) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try {
      writer.setOutput(ImageIO.createImageOutputStream(bytes));
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.write(null, image, param);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** A JPEG of quality 95 of channels as they are, without a word on what they mean. */
  public static byte[] jpeg(Raster channels) {
    return encoded(new IIOImage(channels, null, null), 0.95f);
  }

  /** A JPEG with segments more, at the front. */
  public static byte[] withSegments(byte[] plain, byte[]... segments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    for (byte[] segment : segments) {
      out.write(segment, 0, segment.length);
    }
    out.write(plain, 2, plain.length - 2);
    return out.toByteArray();
  }

  /** A profile as a JPEG segment. */
  public static byte[] profileSegment(byte[] profile) {
    byte[] head = "ICC_PROFILE\0\1\1".getBytes(StandardCharsets.ISO_8859_1);
    return ByteBuffer.allocate(4 + head.length + profile.length)
        .putShort((short) 0xFFE2)
        .putShort((short) (2 + head.length + profile.length))
        .put(head)
        .put(profile)
        .array();
  }

  /** A profile as two JPEG segments. */
  public static byte[] profileSegments(byte[] profile) {
    int half = profile.length / 2;
    byte[] first = profileSegment(Arrays.copyOf(profile, half));
    byte[] second = profileSegment(Arrays.copyOfRange(profile, half, profile.length));
    int number = 4 + "ICC_PROFILE\0".length();
    first[number + 1] = 2;
    second[number] = 2;
    second[number + 1] = 2;
    return ByteBuffer.allocate(first.length + second.length).put(first).put(second).array();
  }

  /** An uncompressed TIFF of 8-bit inks (TIFF 6.0, sections 8 and 16) with a profile. */
  public static byte[] cmykTiff(Raster inks, byte[] profile) {
    int width = inks.getWidth();
    int height = inks.getHeight();
    int[][] entries = {
      {256, 4, 1, width},
      {257, 4, 1, height},
      {258, 3, 4, 0},
      {259, 3, 1, 1},
      {262, 3, 1, 5},
      {273, 4, 1, 0},
      {277, 3, 1, 4},
      {278, 4, 1, height},
      {279, 4, 1, 4 * width * height},
      {284, 3, 1, 1},
      {332, 3, 1, 1},
      {34_675, 7, profile.length, 0}
    };
    int bits = 8 + 2 + 12 * entries.length + 4;
    int pixels = bits + 8;
    int icc = pixels + 4 * width * height;
    entries[2][3] = bits;
    entries[5][3] = pixels;
    entries[11][3] = icc;
    ByteBuffer tiff = ByteBuffer.allocate(icc + profile.length);
    tiff.put(ascii("MM\0*")).putInt(8).putShort((short) entries.length);
    for (int[] entry : entries) {
      tiff.putShort((short) entry[0]).putShort((short) entry[1]).putInt(entry[2]);
      if (entry[1] == 3 && entry[2] == 1) {
        tiff.putShort((short) entry[3]).putShort((short) 0);
      } else {
        tiff.putInt(entry[3]);
      }
    }
    tiff.putInt(0).putLong(0x0008_0008_0008_0008L);
    for (int sample : inks.getPixels(0, 0, width, height, (int[]) null)) {
      tiff.put((byte) sample);
    }
    return tiff.put(profile).array();
  }

  /**
   * A lossless WebP of one colour (RFC 9649): each of its five codes has a single symbol, so that a
   * pixel takes no bits at all.
   */
  public static byte[] flatWebp(int width, int height, int rgb) {
    BitSet bits = new BitSet();
    int at = put(bits, 0, 14, width - 1);
    at = put(bits, at, 14, height - 1);
    at = put(bits, at, 7, 0);
    for (int symbol : new int[] {rgb >> 8 & 0xFF, rgb >> 16 & 0xFF, rgb & 0xFF, 0xFF, 0}) {
      at = put(bits, at, 11, 0b101 | symbol << 3);
    }
    byte[] stream = Arrays.copyOf(bits.toByteArray(), (at + 7) / 8);
    int padded = (stream.length + 2) / 2 * 2;
    return ByteBuffer.allocate(20 + padded)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put(ascii("RIFF"))
        .putInt(12 + padded)
        .put(ascii("WEBPVP8L"))
        .putInt(1 + stream.length)
        .put((byte) 0x2F)
        .put(stream)
        .array();
  }

  private static int put(BitSet bits, int at, int count, int value) {
    for (int i = 0; i < count; i++) {
      bits.set(at + i, (value >> i & 1) == 1);
    }
    return at + count;
  }

  /** An orientation as a JPEG segment. */
  public static byte[] orientationSegment(int orientation) {
    return ByteBuffer.allocate(36)
        .putShort((short) 0xFFE1)
        .putShort((short) 34)
        .put("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1))
        .putInt(8)
        .putShort((short) 1)
        .putShort((short) 274)
        .putShort((short) 3)
        .putInt(1)
        .putShort((short) orientation)
        .array();
  }

  /** A PNG with a chunk more, before the pixels. */
  public static byte[] withChunk(byte[] png, String type, byte[] body) {
    byte[] named = ByteBuffer.allocate(4 + body.length).put(ascii(type)).put(body).array();
    CRC32 crc = new CRC32();
    crc.update(named);
    int header = 8 + 25;
    return ByteBuffer.allocate(png.length + 8 + named.length)
        .put(png, 0, header)
        .putInt(body.length)
        .put(named)
        .putInt((int) crc.getValue())
        .put(png, header, png.length - header)
        .array();
  }

  /** A profile as the body of a PNG chunk. */
  public static byte[] profileChunk(byte[] profile) {
    Deflater deflater = new Deflater();
    deflater.setInput(profile);
    deflater.finish();
    byte[] packed = new byte[profile.length + 100];
    int length = deflater.deflate(packed);
    deflater.end();
    return ByteBuffer.allocate(3 + length).put(ascii("p\0\0")).put(packed, 0, length).array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /** The profile of a space. */
  public static byte[] profile(RgbSpace space) {
    return RgbProfile.of(space);
  }

  /** A profile of four invented inks. */
  public static byte[] inkProfile() {
    return InkProfile.bytes();
  }

  /** An image of 16 bits a channel that carries the profile of its space. */
  public static BufferedImage deepImage(int width, int height, RgbSpace space) {
    ICC_ColorSpace colourSpace = new ICC_ColorSpace(ICC_Profile.getInstance(profile(space)));
    WritableRaster raster =
        Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, width, height, 3, null);
    return new BufferedImage(
        new ComponentColorModel(
            colourSpace, false, false, Transparency.OPAQUE, DataBuffer.TYPE_USHORT),
        raster,
        false,
        null);
  }
}
