package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.card.CardOrigin;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.sheet.PagePdf;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The card to look at, an option of every command that has something to show. */
final class CardOption {
  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "Also write the result as a card for the bench: PDF, HTML or SVG.")
  @Endings({"html", "svg", "pdf"})
  @Nullable NewFile file;

  /** Writes the card if one was asked for; the file's ending tells the form. */
  void write(Output output, SharedOptions shared, Supplier<Card> card) {
    NewFile wanted = file;
    if (wanted == null) {
      return;
    }
    Card bare = card.get();
    Card made = bare.from(origin(output, shared, bare.origin()));
    switch (wanted.ending()) {
      case "pdf" ->
          output
              .files()
              .write("--card", wanted, PagePdf.of(made.kind() + ": " + made.title(), made.pages()));
      case "svg" -> output.files().write("--card", wanted, made.toSvg());
      default -> output.files().write("--card", wanted, made.toHtml());
    }
  }

  /** What a card knows itself, with today's date, the shelf, and the entry that is written now. */
  private static CardOrigin origin(Output output, SharedOptions shared, CardOrigin known) {
    LocalDate today = LocalDate.ofInstant(output.clock().instant(), ZoneOffset.UTC);
    CardOrigin origin = CardOrigin.of(today, shared.shelf().name());
    if (known.project().isPresent()) {
      origin = origin.withProject(known.project().get());
    }
    if (known.entry().isPresent()) {
      return origin.withEntry(known.entry().getAsInt());
    }
    int next = shared.nextEntry();
    return next > 0 ? origin.withEntry(next) : origin;
  }
}
