package io.github.swatchwright.exchange;

import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** The columns of a shelf as CSV, but for those of reflectances; an empty field says nothing. */
enum ShelfColumn {
  NAME("name", Paint::name),
  MEDIUM("medium", paint -> paint.medium().word()),
  FINISH("finish", paint -> paint.finish().word()),
  MAKE("make", paint -> paint.make() == Make.UNSTATED ? "" : paint.make().word()),
  SRGB("srgb", paint -> swatch(paint, Swatch.OfSrgb.class, ofSrgb -> ofSrgb.srgb().toHex())),
  LAB_L("lab_l", paint -> swatch(paint, Swatch.OfLab.class, ofLab -> plain(ofLab.lab().l()))),
  LAB_A("lab_a", paint -> swatch(paint, Swatch.OfLab.class, ofLab -> plain(ofLab.lab().a()))),
  LAB_B("lab_b", paint -> swatch(paint, Swatch.OfLab.class, ofLab -> plain(ofLab.lab().b()))),
  COATS("coats", paint -> hiding(paint, Hiding.Coats.class, coats -> plain(coats.coats()))),
  CONTRAST_RATIO(
      "contrastRatio",
      paint -> hiding(paint, Hiding.ContrastRatio.class, contrast -> plain(contrast.ratio()))),
  SCATTERING(
      "scattering",
      paint -> hiding(paint, Hiding.Scattering.class, level -> plain(level.scattering()))),
  HIDING_WORD("hidingWord", paint -> hiding(paint, Hiding.Word.class, Hiding.Word::word)),
  DROP_MILLILITRES("dropMillilitres", paint -> plain(paint.dropMillilitres())),
  SWATCH_ERROR("swatchError", paint -> plain(paint.swatchError())),
  LEFT_MILLILITRES("leftMillilitres", paint -> plain(paint.bottle().leftMillilitres())),
  PRICE_PER_MILLILITRE("pricePerMillilitre", paint -> plain(paint.bottle().pricePerMillilitre())),
  USE("use", paint -> paint.use() == Use.PAINT ? "" : paint.use().word()),
  THINNED("thinned", paint -> paint.thinned() ? "yes" : ""),
  EFFECT("effect", paint -> paint.effect().map(effect -> effect.word()).orElse("")),
  NOTES("notes", Paint::notes);

  /** What others call the column of colours. */
  private static final Set<String> COLOURS = Set.of("hex", "colour", "color", "rgb");

  private final String header;

  /** Made of a lambda without state. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final Function<Paint, String> field;

  ShelfColumn(String header, Function<Paint, String> field) {
    this.header = header;
    this.field = field;
  }

  /** Its name in the first line. */
  String header() {
    return header;
  }

  /** What it holds of a paint. */
  String of(Paint paint) {
    return field.apply(paint);
  }

  /** The column of that name; upper and lower case are the same. */
  static Optional<ShelfColumn> named(String header) {
    String name = header.strip().toLowerCase(Locale.ROOT);
    if (COLOURS.contains(name)) {
      return Optional.of(SRGB);
    }
    return Arrays.stream(values())
        .filter(column -> column.header.equalsIgnoreCase(name))
        .findFirst();
  }

  /** The number with all its digits, so that it reads back to the same one. */
  static String plain(double number) {
    if (number == 0) {
      return Double.compare(number, 0) < 0 ? "-0" : "0";
    }
    String digits = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    return digits.length() <= 24 ? digits : Double.toString(number);
  }

  private static String plain(OptionalDouble number) {
    return number.isPresent() ? plain(number.getAsDouble()) : "";
  }

  private static <S extends Swatch> String swatch(
      Paint paint, Class<S> form, Function<S, String> text) {
    return paint.masstone().filter(form::isInstance).map(form::cast).map(text).orElse("");
  }

  private static <H extends Hiding> String hiding(
      Paint paint, Class<H> form, Function<H, String> text) {
    return paint.hiding().filter(form::isInstance).map(form::cast).map(text).orElse("");
  }

  /** The word for messages: the header in quotation marks. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "'%s'", header);
  }
}
