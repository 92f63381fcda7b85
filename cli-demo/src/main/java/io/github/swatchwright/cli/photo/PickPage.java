package io.github.swatchwright.cli.photo;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.photo.Photo;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A page on which regions of a photo are picked and named in a browser. It holds the photo in a
 * size for screens, and asks for nothing else; its regions are in pixels of the photo itself.
 */
public final class PickPage {
  private static final int LONGEST = 1600;
  private static final Pattern PLACE = Pattern.compile("\\{\\{([a-z]+)}}");

  private PickPage() {}

  /**
   * The page as HTML.
   *
   * @param photo the photo
   * @param title what the photo is called
   * @param argument the photo as it is typed on a command line
   * @param regions the file that the regions are saved to
   */
  public static String of(Photo photo, String title, String argument, String regions) {
    Map<String, String> values =
        Map.of(
            "title", escaped(Printable.oneLine(title)),
            "photo", escaped(argument),
            "regions", escaped(regions),
            "width", Integer.toString(photo.width()),
            "height", Integer.toString(photo.height()),
            "picture", "data:image/jpeg;base64," + jpeg(Thumbnail.of(photo, LONGEST)));
    return PLACE.matcher(template()).replaceAll(place -> value(place, values));
  }

  private static String value(MatchResult place, Map<String, String> values) {
    return Matcher.quoteReplacement(Objects.requireNonNull(values.get(place.group(1))));
  }

  private static String template() {
    try (InputStream in = Objects.requireNonNull(PickPage.class.getResourceAsStream("pick.html"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String jpeg(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(image, "jpeg", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }

  /** A text as HTML has it, also within quotation marks. */
  private static String escaped(String text) {
    StringBuilder html = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      html.append(
          switch (c) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '"' -> "&quot;";
            case '\'' -> "&#39;";
            default -> Character.toString(c);
          });
    }
    return html.toString();
  }
}
