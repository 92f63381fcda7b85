package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.NewFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What an entry's mix turned out as, painted and dry: options of {@code notebook}. */
final class LearnOptions {
  @Option(
      names = "--test-card",
      paramLabel = "N",
      description = "Make a test card of an entry's mix and its --measured colour, for calibrate.")
  @Nullable Integer testCard;

  @Option(
      names = "--measured",
      paramLabel = "COLOUR",
      description = "With --test-card: the colour of the mix, painted and dry.")
  @Nullable String measured;

  @Option(
      names = "--measured-in",
      paramLabel = "PHOTO@AREA",
      description =
          "In place of --measured: where the dried test is in a photo. Then what to add to the pot"
              + " is told as well.")
  @Nullable String measuredIn;

  @Option(
      names = "--target",
      paramLabel = "COLOUR",
      description =
          "With --measured-in: the colour that it should have, such as another place in the photo"
              + " (default: what the entry was for).")
  @Nullable String target;

  @Option(
      names = "--out",
      paramLabel = "CARDS",
      description = "With --test-card: the file of test cards to add it to.")
  @Nullable NewFile cardsFile;

  /** Refuses options that miss each other. */
  void check() {
    boolean card = testCard != null;
    if (measured != null && measuredIn != null) {
      throw new IllegalArgumentException("--measured and --measured-in exclude each other");
    }
    if (target != null && measuredIn == null) {
      throw new IllegalArgumentException("--target goes with --measured-in");
    }
    if (card != (measured != null || measuredIn != null) || card != (cardsFile != null)) {
      throw new IllegalArgumentException(
          "--test-card, --measured (or --measured-in) and --out go together");
    }
  }
}
