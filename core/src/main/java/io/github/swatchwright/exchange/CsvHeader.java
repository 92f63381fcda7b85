package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which column of a CSV file holds what.
 *
 * @param columns place by meaning
 * @param bands place by wavelength in nm
 * @param width the number of columns
 */
record CsvHeader(
    Map<ShelfColumn, Integer> columns, NavigableMap<Double, Integer> bands, int width) {
  private static final Make[] MAKES = {Make.SINGLE_PIGMENT, Make.READY_MIXED};

  /** What a column holds that is true or not. */
  private enum YesNo {
    YES,
    NO;

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Reads the first line; what can't be taken is added to {@code bad}. */
  static CsvHeader of(CsvRecord record, ImportDefaults defaults, List<BadLine> bad) {
    Map<ShelfColumn, Integer> columns = new EnumMap<>(ShelfColumn.class);
    NavigableMap<Double, Integer> bands = new TreeMap<>();
    try {
      int place = 0;
      for (String name : record.fields()) {
        Optional<ShelfColumn> column = ShelfColumn.named(name);
        Integer earlier =
            column.isPresent()
                ? columns.put(column.get(), place)
                : bands.put(wavelength(name), place);
        if (earlier != null) {
          throw new IllegalArgumentException("has two columns " + Printable.quoted(name));
        }
        place++;
      }
      requireAll(columns, bands, defaults);
    } catch (IllegalArgumentException e) {
      bad.add(new BadLine(record.line(), String.valueOf(e.getMessage())));
    }
    return new CsvHeader(columns, bands, record.fields().size());
  }

  /** Names all columns that are missing at once; test cards may carry the colours. */
  private static void requireAll(
      Map<ShelfColumn, Integer> columns,
      NavigableMap<Double, Integer> bands,
      ImportDefaults defaults) {
    List<String> missing = new ArrayList<>();
    if (!columns.containsKey(ShelfColumn.NAME)) {
      missing.add("'name'");
    }
    boolean hasMedium = columns.containsKey(ShelfColumn.MEDIUM) || defaults.medium().isPresent();
    if (!hasMedium) {
      missing.add("'medium' (or the medium has to be given)");
    }
    boolean hasLab =
        columns
            .keySet()
            .containsAll(List.of(ShelfColumn.LAB_L, ShelfColumn.LAB_A, ShelfColumn.LAB_B));
    boolean hasColour = columns.containsKey(ShelfColumn.SRGB) || hasLab || !bands.isEmpty();
    if (!missing.isEmpty() && !hasColour) {
      missing.add("'srgb' (or 'lab_l', 'lab_a' and 'lab_b', or 'nm_400' and the like)");
    }
    if (!missing.isEmpty()) {
      throw new IllegalArgumentException("has no column " + String.join(", no column ", missing));
    }
  }

  private static double wavelength(String name) {
    String column = name.strip().toLowerCase(Locale.ROOT);
    if (column.startsWith(ShelfCsv.BAND)) {
      return Words.number("the wavelength in a column", column.substring(ShelfCsv.BAND.length()));
    }
    throw new IllegalArgumentException(
        "has an unknown column "
            + Printable.quoted(name)
            + "; known are "
            + Arrays.stream(ShelfColumn.values())
                .map(ShelfColumn::header)
                .collect(Collectors.joining(", "))
            + ", nm_400 and the like");
  }

  /** The paint of a record. */
  Paint paint(CsvRecord record, ImportDefaults missing) {
    if (record.fields().size() != width) {
      throw new IllegalArgumentException(
          "has " + record.fields().size() + " fields, must have " + width + " as the first line");
    }
    return new Paint(
        text(record, ShelfColumn.NAME),
        word(record, ShelfColumn.MEDIUM, Medium.values(), Medium::word)
            .orElseGet(missing::mediumOfPaint),
        word(record, ShelfColumn.FINISH, Finish.values(), Finish::word).orElse(Finish.MATT),
        word(record, ShelfColumn.MAKE, MAKES, Make::word).orElse(Make.UNSTATED),
        masstone(record),
        hiding(record),
        Optional.empty(),
        number(record, ShelfColumn.DROP_MILLILITRES).orElse(Paint.USUAL_DROP_MILLILITRES),
        number(record, ShelfColumn.SWATCH_ERROR),
        word(record, ShelfColumn.EFFECT, Effect.values(), Effect::word),
        text(record, ShelfColumn.NOTES),
        Optional.empty(),
        new Bottle(
            number(record, ShelfColumn.LEFT_MILLILITRES),
            number(record, ShelfColumn.PRICE_PER_MILLILITRE)),
        word(record, ShelfColumn.USE, Use.values(), Use::word).orElse(Use.PAINT),
        word(record, ShelfColumn.THINNED, YesNo.values(), YesNo::word).orElse(YesNo.NO)
            == YesNo.YES);
  }

  private String text(CsvRecord record, ShelfColumn column) {
    Integer place = columns.get(column);
    return place == null ? "" : record.fields().get(place);
  }

  private OptionalDouble number(CsvRecord record, ShelfColumn column) {
    String text = text(record, column);
    return text.isBlank()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Words.number(column.header(), text));
  }

  private <T> Optional<T> word(
      CsvRecord record, ShelfColumn column, T[] choices, Function<T, String> word) {
    String text = text(record, column);
    return text.isBlank()
        ? Optional.empty()
        : Optional.of(Words.oneOf(column.header(), text, choices, word));
  }

  private Optional<Swatch> masstone(CsvRecord record) {
    List<Swatch> forms = new ArrayList<>();
    String srgb = text(record, ShelfColumn.SRGB);
    if (!srgb.isBlank()) {
      forms.add(new Swatch.OfSrgb(Srgb.parse(srgb)));
    }
    lab(record).ifPresent(forms::add);
    reflectance(record).ifPresent(forms::add);
    return only(forms, "srgb, lab_l with lab_a and lab_b, and reflectances nm_…");
  }

  private Optional<Swatch> lab(CsvRecord record) {
    OptionalDouble l = number(record, ShelfColumn.LAB_L);
    OptionalDouble a = number(record, ShelfColumn.LAB_A);
    OptionalDouble b = number(record, ShelfColumn.LAB_B);
    if (l.isEmpty() && a.isEmpty() && b.isEmpty()) {
      return Optional.empty();
    }
    if (l.isEmpty() || a.isEmpty() || b.isEmpty()) {
      throw new IllegalArgumentException("has some of lab_l, lab_a and lab_b, must have all three");
    }
    return Optional.of(Swatches.lab(Lab.ofD65(l.getAsDouble(), a.getAsDouble(), b.getAsDouble())));
  }

  private Optional<Swatch> reflectance(CsvRecord record) {
    TreeMap<Double, Double> values = new TreeMap<>();
    bands.forEach(
        (nm, place) -> {
          String text = record.fields().get(place);
          if (!text.isBlank()) {
            values.put(nm, Words.number("nm_" + ShelfColumn.plain(nm), text));
          }
        });
    return values.isEmpty() ? Optional.empty() : Optional.of(Swatches.reflectance(values, 1));
  }

  private Optional<Hiding> hiding(CsvRecord record) {
    List<Hiding> forms = new ArrayList<>();
    number(record, ShelfColumn.COATS).ifPresent(coats -> forms.add(new Hiding.Coats(coats)));
    number(record, ShelfColumn.CONTRAST_RATIO)
        .ifPresent(ratio -> forms.add(new Hiding.ContrastRatio(ratio)));
    number(record, ShelfColumn.SCATTERING)
        .ifPresent(level -> forms.add(new Hiding.Scattering(level)));
    word(record, ShelfColumn.HIDING_WORD, Hiding.Word.values(), Hiding.Word::word)
        .ifPresent(forms::add);
    return only(
        forms,
        Stream.of(
                ShelfColumn.COATS,
                ShelfColumn.CONTRAST_RATIO,
                ShelfColumn.SCATTERING,
                ShelfColumn.HIDING_WORD)
            .map(ShelfColumn::header)
            .collect(Collectors.joining(", ")));
  }

  private static <T> Optional<T> only(List<T> forms, String choices) {
    if (forms.size() > 1) {
      throw new IllegalArgumentException(
          "has " + forms.size() + " of " + choices + ", must have at most one");
    }
    return forms.stream().findFirst();
  }
}
