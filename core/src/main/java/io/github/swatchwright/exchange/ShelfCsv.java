package io.github.swatchwright.exchange;

import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A shelf as CSV (RFC 4180). The first line names the columns, in any order: {@code name} and, of
 * those that are needed, {@code medium, finish, make, srgb, lab_l, lab_a, lab_b, coats,
 * contrastRatio, scattering, hidingWord, dropMillilitres, swatchError, leftMillilitres,
 * pricePerMillilitre, use, thinned, effect, notes}, with the meaning that they have in the JSON
 * format; {@code nm_400} and the like hold a reflectance. A column {@code hex}, {@code colour} or
 * {@code rgb} is read as {@code srgb}, in any {@link io.github.swatchwright.colour.ColourNotation}.
 * A shelf that is written reads back equal, but for its name, a stated surface, and what test cards
 * have taught.
 */
public final class ShelfCsv {
  /** What the name of a column of reflectances begins with; its wavelength in nm follows. */
  static final String BAND = "nm_";

  private ShelfCsv() {}

  /** Writes a shelf; columns that no paint needs are left out. */
  public static String toText(Shelf shelf) {
    List<ShelfColumn> columns =
        Arrays.stream(ShelfColumn.values())
            .filter(column -> shelf.paints().stream().anyMatch(p -> !column.of(p).isEmpty()))
            .toList();
    TreeSet<Double> wavelengths = new TreeSet<>();
    shelf.paints().forEach(paint -> wavelengths.addAll(reflectance(paint).keySet()));
    List<List<String>> records = new ArrayList<>();
    List<String> header =
        columns.stream().map(ShelfColumn::header).collect(Collectors.toCollection(ArrayList::new));
    wavelengths.forEach(nm -> header.add(BAND + ShelfColumn.plain(nm)));
    records.add(header);
    for (Paint paint : shelf.paints()) {
      Map<Double, String> reflectance = reflectance(paint);
      List<String> record =
          columns.stream()
              .map(column -> column.of(paint))
              .collect(Collectors.toCollection(ArrayList::new));
      wavelengths.forEach(nm -> record.add(reflectance.getOrDefault(nm, "")));
      records.add(record);
    }
    return CsvText.toText(records);
  }

  private static Map<Double, String> reflectance(Paint paint) {
    Map<Double, String> byWavelength = new LinkedHashMap<>();
    if (paint.masstone().orElse(null) instanceof Swatch.OfReflectance measured) {
      double[] values = measured.values();
      for (int i = 0; i < values.length; i++) {
        byWavelength.put(measured.fromNm() + i * measured.stepNm(), ShelfColumn.plain(values[i]));
      }
    }
    return byWavelength;
  }

  /**
   * Reads a shelf, or a table that lists one or the colours of a photo.
   *
   * @param bytes UTF-8
   * @param source what messages call the file
   * @param missing what the file doesn't say
   * @throws BadLinesException when lines can't be taken
   * @throws IllegalArgumentException when the file as a whole can't
   */
  static Shelf read(byte[] bytes, String source, ImportDefaults missing) {
    List<BadLine> bad = new ArrayList<>();
    List<CsvRecord> records = CsvText.read(TextFile.utf8(bytes, source), bad);
    if (records.isEmpty()) {
      throw new IllegalArgumentException(source + ": is empty, must begin with a line of columns");
    }
    if (ResultColumns.isHeader(records.get(0))) {
      records = ResultColumns.asShelf(records);
    }
    CsvHeader header = CsvHeader.of(records.get(0), missing, bad);
    PaintList paints = new PaintList(source, bad);
    if (bad.isEmpty() || bad.get(0).number() > 1) {
      for (CsvRecord record : records.subList(1, records.size())) {
        paints.add(record.line(), () -> header.paint(record, missing));
      }
    }
    return paints.toShelf(missing.shelfName());
  }
}
