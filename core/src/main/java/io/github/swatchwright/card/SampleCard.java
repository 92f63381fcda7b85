package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Picture;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.AreaCoverage;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Colours read from a photo. */
final class SampleCard {
  /** More colours than that are not on the card, which says so. */
  static final int MOST_COLOURS = 24;

  /** The same colours give the same blots. */
  private static final long SEED = 1;

  private SampleCard() {}

  /**
   * The card.
   *
   * @param photo what the photo is called
   * @param reference what its colours were corrected by, in words
   * @param colours the colours, in order
   */
  static Card of(String photo, String reference, List<RegionColour> colours) {
    List<CardPart> blocks = new ArrayList<>();
    blocks.add(Facts.none().and("Reference", Label.of(reference)));
    colours.stream()
        .limit(MOST_COLOURS)
        .forEach(colour -> blocks.add(section(blocks.size(), colour)));
    if (colours.size() > MOST_COLOURS) {
      int more = colours.size() - MOST_COLOURS;
      blocks.add(new Sentence("Colours that are not on this card: " + more + "."));
    }
    if (isOneRegion(colours)) {
      blocks.add(together(colours));
    }
    blocks.add(Sayings.lamp(Illuminant.D65));
    return new Card("Colours of a photo", Label.of(photo), blocks);
  }

  private static boolean isOneRegion(List<RegionColour> colours) {
    return colours.size() > 1
        && colours.size() <= Speckle.MOST_PASSES
        && colours.stream().map(RegionColour::region).distinct().count() == 1;
  }

  /** The colours of a region in their shares, as blots. */
  private static Section together(List<RegionColour> colours) {
    double all = colours.stream().mapToDouble(RegionColour::share).sum();
    double[] visible = colours.stream().mapToDouble(read -> read.share() / all).toArray();
    double[] coverages = AreaCoverage.coveragesFor(visible);
    List<Speckle.Pass> passes = new ArrayList<>();
    for (int i = 1; i < visible.length; i++) {
      passes.add(new Speckle.Pass(colours.get(i).colour().lab(), coverages[i - 1]));
    }
    Lab first = colours.get(0).colour().lab();
    return new Section(
        "",
        "All of them",
        List.of(
            new Picture(
                Speckle.of(first, passes, SEED),
                "In their shares of the region; not where they lie in it.")));
  }

  private static Section section(int number, RegionColour read) {
    PhotoColour colour = read.colour();
    List<CardPart> blocks = new ArrayList<>();
    blocks.add(
        new Colours(List.of(new Named("Read", colour.lab())), Optional.of(colour.spread()), false));
    blocks.add(
        Facts.none()
            .and("Region", read.region().toText() + " (x, y, width, height in pixels)")
            .and("Share", String.format(Locale.ROOT, "%.0f %% of the region", 100 * read.share()))
            .and("How sure", sure(colour.intervalDeltaE00()))
            .and("Texture", texture(colour.pixelSpread()))
            .and("Pixels", colour.shares().toText()));
    if (colour.several().isPresent()) {
      blocks.add(
          new Note(
              "Several colours",
              "The region holds more than one colour; this is their mean. Take a smaller region."));
    }
    if (!colour.lightnessKnown()) {
      blocks.add(
          new Note(
              "Lightness unknown",
              "Nothing in the photo tells how bright its light was. Put a grey card in it."));
    }
    if (colour.shares().isCrushed()) {
      blocks.add(new Note("At least this", "The colour is stronger than the photo can hold."));
    }
    return new Section(
        Integer.toString(number), read.name().map(Label::of).orElse("Colour"), blocks);
  }

  private static String sure(double deltaE00) {
    return String.format(
        Locale.ROOT,
        "In 80 of 100 cases the true colour is within ΔE00 %.1f; the ring shows such colours.",
        deltaE00);
  }

  private static String texture(double deltaE00) {
    return String.format(Locale.ROOT, "80 %% of the pixels are within ΔE00 %.1f of it.", deltaE00);
  }
}
