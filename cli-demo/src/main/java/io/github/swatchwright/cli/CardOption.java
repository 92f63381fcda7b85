package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.Endings;
import io.github.swatchwright.cli.file.NewFile;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The card to look at, an option of every command that has something to show. */
final class CardOption {
  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "Also write the result as a card to look at or print: HTML or SVG.")
  @Endings({"html", "svg"})
  @Nullable NewFile file;

  /** Writes the card if one was asked for; the file's ending tells the form. */
  void write(Output output, Supplier<Card> card) {
    NewFile wanted = file;
    if (wanted != null) {
      Card made = card.get();
      String text = wanted.ending().equals("svg") ? made.toSvg() : made.toHtml();
      output.files().write("--card", wanted, text);
    }
  }
}
