package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import java.nio.file.Path;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What every command takes that has something to show. */
final class CardOption {
  @Option(
      names = "--card",
      paramLabel = "FILE",
      converter = ByEnding.class,
      description = "Also write the result as a card to look at or print: HTML or SVG.")
  @Nullable CardFile file;

  /** Writes the card where it was asked for. */
  void write(Supplier<Card> card) {
    CardFile wanted = file;
    if (wanted != null) {
      WholeFile.write("--card", wanted.path, wanted.form.apply(card.get()));
    }
  }

  /**
   * A file for a card.
   *
   * @param path where it is
   * @param form the card as its text
   */
  record CardFile(Path path, Function<Card, String> form) {}

  /** The ending tells the form. */
  static final class ByEnding implements ITypeConverter<CardFile> {
    @Override
    public CardFile convert(String value) {
      if (value.endsWith(".html")) {
        return new CardFile(Path.of(value), Card::toHtml);
      }
      if (value.endsWith(".svg")) {
        return new CardFile(Path.of(value), Card::toSvg);
      }
      throw new TypeConversionException("'" + value + "' must end with .html or .svg");
    }
  }
}
