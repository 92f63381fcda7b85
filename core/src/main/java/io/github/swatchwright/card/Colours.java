package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Colours side by side, with what they are in words.
 *
 * @param colours the colours, from the left
 * @param ring what the last of them may turn out as
 */
record Colours(List<SwatchBlock.Named> colours, Optional<IntervalRing> ring) implements Block {

  private static final String IN_THE_RING = "may come out";

  Colours {
    colours = List.copyOf(colours);
  }

  /** Two squares' width beside a ring, three without. */
  private Figure swatches() {
    return new SwatchBlock(colours, SwatchBlock.HEIGHT * (ring.isPresent() ? 2 : 3)).figure();
  }

  @Override
  public Markup html() {
    Markup pictures = Markup.of("div").with("class", "pictures").add(swatches().svg());
    List<Markup> words = new ArrayList<>();
    for (SwatchBlock.Named named : colours) {
      words.add(
          Markup.of(
              "div",
              List.of(Markup.of("dt", named.name()), Markup.of("dd", named.colour().notation()))));
    }
    if (ring.isPresent()) {
      words.add(
          Markup.of("div", List.of(Markup.of("dt", "Ring"), Markup.of("dd", IN_THE_RING)))
              .with("class", "ring"));
    }
    return Markup.of("div")
        .with("class", "colours")
        .add(ring.map(some -> pictures.add(some.figure().svg())).orElse(pictures))
        .add(Markup.of("dl").with("class", "captions").add(words));
  }

  @Override
  public void draw(Sheet sheet) {
    double gap = 12;
    double side = (sheet.width() - gap) / 3;
    double swatches = ring.isPresent() ? 2 * side : sheet.width();
    sheet.down(10);
    double height = sheet.figure(swatches(), 0, swatches);
    ring.ifPresent(some -> sheet.figure(some.figure(), swatches + gap, side));
    sheet.down(height);
    sheet.columns(
        colours.stream().map(named -> List.of(named.name(), named.colour().notation())).toList(),
        swatches / colours.size());
  }
}
