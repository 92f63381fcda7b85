package io.github.swatchwright.cli;

import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which paints of the shelf a command may mix with. */
final class PaintChoice {
  @Option(
      names = "--only",
      paramLabel = "NAMES",
      description = {
        "Use these paints alone; commas between the names, or give the option again.",
        "The others still tell how much light the surface reflects: the darkest paint of the shelf"
            + " limits it. A shelf of these paints alone may so give slightly other colours."
      })
  List<String> only = new ArrayList<>();

  @Option(
      names = "--without",
      paramLabel = "NAMES",
      description = "Leave these paints out; commas between the names, or give the option again.")
  List<String> without = new ArrayList<>();

  @Option(
      names = "--medium",
      paramLabel = "MEDIUM",
      description = "Use paints of this medium alone: acrylic, lacquer, enamel, oil or water.")
  @Nullable String medium;

  /** The names of the paints to choose from; empty for all. */
  Set<String> only(Shelf shelf) {
    return PaintNames.parse("--only", only, shelf);
  }

  /** The names of the paints to leave out. */
  Set<String> without(Shelf shelf) {
    return PaintNames.parse("--without", without, shelf);
  }

  /** The medium to stay in; empty for any. */
  Optional<Medium> medium() {
    return Optional.ofNullable(medium)
        .map(word -> Words.one("--medium", word, Medium.values(), Medium::word));
  }
}
