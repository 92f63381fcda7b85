package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.GamutPolicy;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The palette text format of the GIMP: a line {@code GIMP Palette}, lines {@code Name:} and {@code
 * Columns:}, then a line for each colour with red, green and blue, 0 to 255, and a name; {@code #}
 * begins a comment. It holds names and 8-bit sRGB, and nothing else of a paint.
 */
public final class GimpPalette {
  private static final String HEAD = "GIMP Palette";
  private static final Pattern ENTRY =
      Pattern.compile("\\s*([0-9]{1,4})\\s+([0-9]{1,4})\\s+([0-9]{1,4})(?:(\\s)(.*))?");
  private static final String NAMELESS = "Untitled";

  private GimpPalette() {}

  /** Writes a palette. */
  public static String toText(String name, List<NamedColour> colours) {
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    text.append("Name: ").append(Printable.oneLine(name)).append("\n#\n");
    for (NamedColour colour : colours) {
      int rgb = colour.srgb().toPacked();
      text.append(
          String.format(
              Locale.ROOT,
              "%3d %3d %3d\t%s\n",
              rgb >> 16 & 0xFF,
              rgb >> 8 & 0xFF,
              rgb & 0xFF,
              colour.name()));
    }
    return text.toString();
  }

  /**
   * Writes the masstones of a shelf, by day, with less chroma where a display can't show them; a
   * stroke over white stands for a masstone that isn't stated. The rest of its paints is lost, and
   * paints without a colour.
   */
  public static String toText(Shelf shelf) {
    List<NamedColour> colours = new ArrayList<>();
    for (Paint paint : shelf.paints()) {
      Optional<Swatch> look = paint.look();
      look.ifPresent(
          swatch ->
              colours.add(
                  new NamedColour(
                      paint.name(), swatch.lab().toSrgb().fit(GamutPolicy.REDUCE_CHROMA))));
    }
    return toText(shelf.name(), colours);
  }

  /**
   * Reads a palette as a shelf. A colour without a name is called by its place.
   *
   * @param bytes UTF-8
   * @param source what messages call the file
   * @param missing what the format doesn't say; a palette's own name goes before it
   * @throws BadLinesException when lines can't be taken
   * @throws IllegalArgumentException when the file as a whole can't
   */
  static Shelf read(byte[] bytes, String source, ImportDefaults missing) {
    String[] lines = TextFile.utf8(bytes, source).split("\\r\\n|\\n|\\r", -1);
    if (!lines[0].strip().equals(HEAD)) {
      throw new IllegalArgumentException(source + ": must begin with a line '" + HEAD + "'");
    }
    List<BadLine> bad = new ArrayList<>();
    PaintList paints = new PaintList(source, bad);
    String name = missing.shelfName();
    int colours = 0;
    for (int i = 1; i < lines.length; i++) {
      String line = lines[i];
      if (line.startsWith("Name:") && colours == 0) {
        String given = line.substring("Name:".length());
        name = given.startsWith(" ") ? given.substring(1) : given;
      } else if (!isOther(line)) {
        int place = ++colours;
        paints.add(i + 1, () -> paint(line, place, missing.mediumOfPaint()));
      }
    }
    return paints.toShelf(name.isBlank() ? missing.shelfName() : name);
  }

  private static boolean isOther(String line) {
    return line.isBlank() || line.startsWith("#") || line.startsWith("Columns:");
  }

  private static Paint paint(String line, int place, Medium medium) {
    Matcher entry = ENTRY.matcher(line);
    if (!entry.matches()) {
      throw new IllegalArgumentException(
          "is "
              + Printable.quoted(line.strip())
              + ", must be red, green, blue, 0 to 255, and a name");
    }
    Srgb srgb =
        Srgb.of8Bit(
            Integer.parseInt(entry.group(1)),
            Integer.parseInt(entry.group(2)),
            Integer.parseInt(entry.group(3)));
    String given = name(entry);
    String name = given.isBlank() || given.equals(NAMELESS) ? "Colour " + place : given;
    return Paint.of(name, medium, new Swatch.OfSrgb(srgb));
  }

  /** What follows a tab is the name as it is, blanks included; other gaps may be of any width. */
  private static String name(Matcher entry) {
    String rest = entry.group(5) == null ? "" : entry.group(5);
    return "\t".equals(entry.group(4)) && !rest.startsWith("\t") ? rest : rest.strip();
  }
}
