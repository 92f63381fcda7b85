package io.github.swatchwright.cli.photo;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Lines of text in a picture, as outlines of the font that PDFBox brings along: not every system
 * has a font. Signs that it lacks come as a question mark.
 */
final class Lettering {
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unit;

  private Lettering(TrueTypeFont font) throws IOException {
    this.font = font;
    glyphs = font.getUnicodeCmapLookup();
    unit = 1.0 / font.getUnitsPerEm();
  }

  /** The letters. */
  static Lettering load() {
    try (InputStream in = Objects.requireNonNull(PDDocument.class.getResourceAsStream(FONT))) {
      return new Lettering(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int glyph(int letter) {
    int glyph = glyphs.getGlyphId(letter);
    return glyph == 0 ? glyphs.getGlyphId('?') : glyph;
  }

  /** How wide a line is. */
  double width(String line, double size) {
    return line.codePoints().mapToDouble(letter -> advance(glyph(letter))).sum() * size;
  }

  private double advance(int glyph) {
    try {
      return unit * font.getAdvanceWidth(glyph);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The line, cut off with three dots where it is wider than it may be. */
  String fitting(String line, double size, double most) {
    if (width(line, size) <= most) {
      return line;
    }
    int end = line.length();
    while (end > 0 && width(line.substring(0, end) + "…", size) > most) {
      end = line.offsetByCodePoints(end, -1);
    }
    return line.substring(0, end) + "…";
  }

  /** Draws a line from its left end on, in the colour that is set. */
  void draw(Graphics2D graphics, String line, double left, double baseline, double size) {
    double x = left;
    for (int letter : line.codePoints().toArray()) {
      int glyph = glyph(letter);
      try {
        GlyphData outline = font.getGlyph().getGlyph(glyph);
        if (outline != null) {
          AffineTransform place = AffineTransform.getTranslateInstance(x, baseline);
          place.scale(size * unit, -size * unit);
          graphics.fill(place.createTransformedShape(outline.getPath()));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      x += size * advance(glyph);
    }
  }
}
