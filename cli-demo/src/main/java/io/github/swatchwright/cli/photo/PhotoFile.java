package io.github.swatchwright.cli.photo;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.Photo;
import io.github.swatchwright.photo.PixelRows;
import io.github.swatchwright.photo.Region;
import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * A photo file. Only the part that is asked for is decoded into memory. Pictures with a colour
 * profile other than sRGB come as 16 bits of {@link RgbSpace#WIDE}, so that nothing that the
 * profile holds is lost; the others as they are, in sRGB.
 */
public final class PhotoFile implements Photo {
  /** The most pixels of a picture: far more than any camera's, far less than a heap bursts at. */
  static final long MOST_PIXELS = 250_000_000;

  /** The most pixels that are decoded at once. */
  static final long MOST_DECODED = 64_000_000;

  private static final String FORMATS = "JPEG, PNG, WebP or TIFF";

  private static final Set<String> HEIC_BRANDS =
      Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1", "avif");

  private final Path path;
  private final Optional<ICC_Profile> profile;
  private final Optional<JpegInks> inks;
  private final Turn turn;

  private PhotoFile(Path path, Optional<ICC_Profile> profile, Optional<JpegInks> inks, Turn turn) {
    this.path = path;
    this.profile = profile;
    this.inks = inks;
    this.turn = turn;
  }

  /**
   * Opens a file and reads what it says about itself, but no pixels.
   *
   * @throws IllegalArgumentException when there is no such file, or it is no picture that can be
   *     read
   */
  public static PhotoFile open(Path path) {
    if (!Files.isRegularFile(path)) {
      throw new IllegalArgumentException("there is no file " + path);
    }
    try (ImageInputStream in = new FileImageInputStream(path.toFile())) {
      refuseHeic(in);
      PhotoTags tags = tags(path);
      ImageReader reader = reader(in);
      int width = reader.getWidth(0);
      int height = reader.getHeight(0);
      reader.dispose();
      if ((long) width * height > MOST_PIXELS) {
        throw new PhotoRefusal(
            "has " + width + " x " + height + " pixels, must have at most " + MOST_PIXELS);
      }
      Turn turn = new Turn(tags.orientation(), width, height);
      Optional<ICC_Profile> profile = profile(tags);
      if (tags.inks().isPresent() && profile.isEmpty()) {
        throw DecodedPixels.inksWithoutProfile();
      }
      return new PhotoFile(path, profile, tags.inks(), turn);
    } catch (IOException | RuntimeException e) {
      throw refusal(path, e);
    }
  }

  /** Phones' own format begins with a box 'ftyp' and its brand (ISO/IEC 14496-12, 23008-12). */
  private static void refuseHeic(ImageInputStream in) throws IOException {
    byte[] head = new byte[12];
    in.mark();
    int read = in.read(head);
    in.reset();
    String box = new String(head, 0, Math.max(0, read), StandardCharsets.ISO_8859_1);
    if (box.length() == head.length
        && box.startsWith("ftyp", 4)
        && HEIC_BRANDS.contains(box.substring(8))) {
      throw new PhotoRefusal(
          "is HEIC, which isn't read: save it as JPEG, as the phone's settings, its sharing menu or"
              + " any picture viewer do");
    }
  }

  private static IllegalArgumentException refusal(Path path, Exception cause) {
    String why =
        cause instanceof PhotoRefusal ? String.valueOf(cause.getMessage()) : "is cut off or broken";
    return new IllegalArgumentException("the photo " + path + " " + why, cause);
  }

  private static PhotoTags tags(Path path) throws IOException {
    try (FileChannel channel = FileChannel.open(path)) {
      long size = Math.min(channel.size(), Integer.MAX_VALUE);
      return PhotoTags.of(channel.map(FileChannel.MapMode.READ_ONLY, 0, size));
    }
  }

  private static ImageReader reader(ImageInputStream in) {
    Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
    while (readers.hasNext()) {
      ImageReader reader = readers.next();
      String format = formatName(reader);
      if (FORMATS.toLowerCase(Locale.ROOT).contains(format)) {
        reader.setInput(in, false, true);
        return reader;
      }
    }
    throw new PhotoRefusal("is no picture that can be read, must be " + FORMATS);
  }

  private static String formatName(ImageReader reader) {
    try {
      return reader.getFormatName().toLowerCase(Locale.ROOT);
    } catch (IOException e) {
      throw new PhotoRefusal("is cut off or broken", e);
    }
  }

  private static Optional<ICC_Profile> profile(PhotoTags tags) {
    if (tags.profile().isEmpty()) {
      return Optional.empty();
    }
    ICC_Profile profile;
    try {
      profile = ICC_Profile.getInstance(tags.profile().get());
    } catch (IllegalArgumentException | CMMException e) {
      throw new PhotoRefusal("has a broken colour profile", e);
    }
    int type = profile.getColorSpaceType();
    if (type != ColorSpace.TYPE_RGB
        && type != ColorSpace.TYPE_GRAY
        && type != ColorSpace.TYPE_CMYK) {
      throw new PhotoRefusal(
          "has a colour profile for neither RGB, grey nor CMYK, must be saved as RGB");
    }
    return Optional.of(profile);
  }

  @Override
  public int width() {
    return turn.width();
  }

  @Override
  public int height() {
    return turn.height();
  }

  @Override
  public RgbSpace space() {
    return profile.isPresent() ? RgbSpace.WIDE : RgbSpace.SRGB;
  }

  @Override
  public void read(Region region, PixelRows rows) {
    if (region.pixels() > MOST_DECODED) {
      throw new PhotoRefusal(
          "the region " + region.toText() + " has more than " + MOST_DECODED + " pixels");
    }
    try (ImageInputStream in = stream()) {
      ImageReader reader = reader(in);
      ImageReadParam param = reader.getDefaultReadParam();
      param.setSourceRegion(turn.stored(region));
      DecodedPixels pixels = inks.isPresent() ? inks(reader, param) : colours(reader, param);
      reader.dispose();
      pixels.handTo(rows, turn);
    } catch (OutOfMemoryError e) {
      throw new PhotoRefusal(
          "the photo " + path + " needs more memory than Java has; choose a smaller region", e);
    } catch (IOException | RuntimeException e) {
      throw refusal(path, e);
    }
  }

  private DecodedPixels colours(ImageReader reader, ImageReadParam param) throws IOException {
    BufferedImage image = reader.read(0, param);
    return DecodedPixels.of(image, profile);
  }

  /** The platform's reader makes no picture of inks, but gives their samples. */
  private DecodedPixels inks(ImageReader reader, ImageReadParam param) throws IOException {
    Raster raster = reader.readRaster(0, param);
    inks.orElseThrow().decode(raster);
    return DecodedPixels.of(raster, false, profile);
  }

  /** The file; a JPEG without its profile, which the reader would apply by itself. */
  private ImageInputStream stream() throws IOException {
    if (profile.isEmpty()) {
      return new FileImageInputStream(path.toFile());
    }
    return new MemoryCacheImageInputStream(
        new ByteArrayInputStream(JpegProfile.removed(Files.readAllBytes(path))));
  }
}
