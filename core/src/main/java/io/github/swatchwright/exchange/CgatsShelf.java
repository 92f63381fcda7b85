package io.github.swatchwright.exchange;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Measurements of an instrument, CGATS.17 (ISO 28178), as a shelf: of each sample its reflectance
 * when the file has one, or else its CIELAB or XYZ. It is called by {@code SAMPLE_NAME}, or else
 * {@code SAMPLE_ID}.
 *
 * <p>Reflectances are fields such as {@code SPECTRAL_NM400}, {@code SPECTRAL_400}, {@code SPEC_400}
 * and {@code NM400} (common practice of instruments). They are in percent when the file says so
 * ({@code SPECTRAL_NORM}, {@code SPECTRAL_PCT…}) or any is above 2, else fractions.
 *
 * <p>Colours are taken to be for {@link CgatsLight}: see there how they get to D65.
 */
final class CgatsShelf {
  private static final Pattern BAND =
      Pattern.compile("(?:SPECTRAL_|SPEC_|NM_?)(?:NM_?|PCT_?|DEC_?)?([0-9]{3,4}(?:\\.[0-9]+)?)");

  /** No reflectance of paint is so large as a fraction. */
  private static final double LARGEST_FRACTION = 2;

  private CgatsShelf() {}

  /**
   * Reads measurements as a shelf.
   *
   * @param bytes UTF-8, or else ISO 8859-1
   * @param source what messages call the file
   * @param missing what the format doesn't say
   * @throws BadLinesException when lines can't be taken
   * @throws IllegalArgumentException when the file as a whole can't
   */
  static Shelf read(byte[] bytes, String source, ImportDefaults missing) {
    List<BadLine> bad = new ArrayList<>();
    CgatsTable table = CgatsTable.read(TextFile.utf8OrLatin1(bytes, source), source, bad);
    Colours colours = colours(table, source);
    int name = table.place("SAMPLE_NAME", "SAMPLE_ID", "SAMPLEID");
    PaintList paints = new PaintList(source, bad);
    for (CgatsTable.Row row : table.sets()) {
      paints.add(
          row.line(),
          () ->
              Paint.of(
                  name < 0 ? "Sample on line " + row.line() : row.values().get(name).strip(),
                  missing.mediumOfPaint(),
                  colours.of(row)));
    }
    return paints.toShelf(missing.shelfName());
  }

  /** How the file tells colours. */
  private interface Colours {
    Swatch of(CgatsTable.Row row);
  }

  private static Colours colours(CgatsTable table, String source) {
    NavigableMap<Double, Integer> bands = bands(table.fields());
    if (!bands.isEmpty()) {
      double full = fullScale(table, bands, source);
      return row -> reflectance(row, bands, full);
    }
    int l = table.place("LAB_L");
    int a = table.place("LAB_A");
    int b = table.place("LAB_B");
    if (l >= 0 && a >= 0 && b >= 0) {
      CgatsLight light = CgatsLight.of(table.keywords(), source);
      return row ->
          light.toD65(
              new Lab(
                  value(row, l, "LAB_L"),
                  value(row, a, "LAB_A"),
                  value(row, b, "LAB_B"),
                  light.white()));
    }
    int x = table.place("XYZ_X");
    int y = table.place("XYZ_Y");
    int z = table.place("XYZ_Z");
    if (x >= 0 && y >= 0 && z >= 0) {
      CgatsLight light = CgatsLight.of(table.keywords(), source);
      WhitePoint white = light.white();
      return row ->
          light.toD65(
              new Xyz(value(row, x, "XYZ_X"), value(row, y, "XYZ_Y"), value(row, z, "XYZ_Z"), white)
                  .toLab());
    }
    throw new IllegalArgumentException(
        source
            + ": has no colours: neither reflectances (SPECTRAL_NM400 …), nor LAB_L, LAB_A and"
            + " LAB_B, nor XYZ_X, XYZ_Y and XYZ_Z");
  }

  private static NavigableMap<Double, Integer> bands(List<String> fields) {
    NavigableMap<Double, Integer> bands = new TreeMap<>();
    for (int place = 0; place < fields.size(); place++) {
      Matcher band = BAND.matcher(fields.get(place));
      if (band.matches()) {
        bands.put(Double.parseDouble(band.group(1)), place);
      }
    }
    return bands;
  }

  private static double fullScale(
      CgatsTable table, NavigableMap<Double, Integer> bands, String source) {
    String norm = table.keywords().get("SPECTRAL_NORM");
    if (norm != null) {
      double full = Words.number(source + ": SPECTRAL_NORM", norm);
      if (full != 1 && full != 100) {
        throw new IllegalArgumentException(
            source + ": SPECTRAL_NORM is " + full + ", must be 1 or 100");
      }
      return full;
    }
    String field = table.fields().get(bands.firstEntry().getValue());
    if (field.contains("PCT") || field.contains("DEC")) {
      return field.contains("PCT") ? 100 : 1;
    }
    return table.sets().stream().anyMatch(row -> hasPercent(row, bands)) ? 100 : 1;
  }

  private static boolean hasPercent(CgatsTable.Row row, NavigableMap<Double, Integer> bands) {
    return bands.entrySet().stream()
        .anyMatch(
            band -> {
              try {
                return value(row, band.getValue(), "reflectance") > LARGEST_FRACTION;
              } catch (IllegalArgumentException e) {
                return false;
              }
            });
  }

  private static Swatch reflectance(
      CgatsTable.Row row, NavigableMap<Double, Integer> bands, double full) {
    TreeMap<Double, Double> values = new TreeMap<>();
    bands.forEach(
        (nm, place) ->
            values.put(
                nm, value(row, place, String.format(Locale.ROOT, "reflectance at %s nm", nm))));
    return Swatches.reflectance(values, full);
  }

  private static double value(CgatsTable.Row row, int place, String name) {
    return Words.number(name, row.values().get(place));
  }
}
