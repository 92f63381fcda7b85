package io.github.swatchwright.cli;

import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Use;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which paints of the shelf a command may mix with. */
final class PaintChoiceOptions {
  @Option(
      names = "--only",
      paramLabel = "NAMES",
      description = {
        "Use these paints alone; separate names by commas, or give the option again.",
        "The others still tell how much light the surface reflects: the darkest paint of the shelf"
            + " limits it. A shelf of these paints alone may so give slightly other colours."
      })
  List<String> only = new ArrayList<>();

  @Option(
      names = "--without",
      paramLabel = "NAMES",
      description = "Leave these paints out; separate names by commas, or give the option again.")
  List<String> without = new ArrayList<>();

  @Option(
      names = "--medium",
      paramLabel = "MEDIUM",
      description = "Use paints of this medium alone: acrylic, lacquer, enamel, oil or water.")
  @Nullable String medium;

  @Option(
      names = "--also",
      paramLabel = "USES",
      description =
          "Mix with bottles of these uses as well: wash, filter, primer, varnish; paints and inks"
              + " are always in. Separate uses by commas, or give the option again.")
  List<String> also = new ArrayList<>();

  /** The choice, with names as the shelf spells them. */
  PaintChoice of(Shelf shelf) {
    return new PaintChoice(
        PaintNames.parse("--only", only, shelf),
        PaintNames.parse("--without", without, shelf),
        Optional.ofNullable(medium)
            .map(word -> Words.one("--medium", word, Medium.values(), Medium::word)),
        uses());
  }

  private Set<Use> uses() {
    return also.stream()
        .flatMap(text -> Arrays.stream(text.split(",", -1)))
        .map(word -> Words.one("--also", word.trim(), Use.values(), Use::word))
        .collect(Collectors.toSet());
  }
}
