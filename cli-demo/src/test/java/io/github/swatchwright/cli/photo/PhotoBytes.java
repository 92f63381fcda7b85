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
import java.nio.charset.StandardCharsets;
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
