package io.github.swatchwright.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Colours side by side, with what they are in words.
 *
 * @param colours the colours, from the left
 * @param ring what the last of them may turn out as
 */
record Colours(List<SwatchBlock.Named> colours, Optional<IntervalRing> ring) implements Block {

  private static final List<String> IN_THE_RING = List.of("or like these");

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
      words.add(caption(named.name(), named.colour().notation()));
    }
    ring.ifPresent(some -> words.add(caption("Ring", IN_THE_RING)));
    return Markup.of("div")
        .with("class", "colours")
        .add(ring.map(some -> pictures.add(some.figure().svg())).orElse(pictures))
        .add(
            Markup.of("dl")
                .with("class", ring.isPresent() ? "captions ringed" : "captions")
                .add(words));
  }

  private static Markup caption(String name, List<String> lines) {
    return Markup.of("div")
        .add(Markup.of("dt", name))
        .add(lines.stream().map(line -> Markup.of("dd", line)).toList());
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
    Map<String, List<String>> captions = new LinkedHashMap<>();
    colours.forEach(named -> captions.put(named.name(), named.colour().notation()));
    sheet.columns(captions, swatches / colours.size());
  }
}
