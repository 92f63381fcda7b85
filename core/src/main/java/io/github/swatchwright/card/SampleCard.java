package io.github.swatchwright.card;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.photo.PhotoColour;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Colours read from a photo. */
public final class SampleCard {
  /** More colours than that are not on the card, which says so. */
  static final int MOST_COLOURS = 24;

  /**
   * A colour that was read.
   *
   * @param region where
   * @param colour what it is
   * @param share of the region that has it, 0 to 1
   */
  public record Read(Region region, PhotoColour colour, double share) {
    /** Refuses a share outside 0 to 1. */
    public Read {
      Require.within("share", share, 0, 1);
    }
  }

  private SampleCard() {}

  /**
   * The card.
   *
   * @param photo what the photo is called
   * @param reference what its colours were corrected by, in words
   * @param colours the colours, in order
   */
  public static Card of(String photo, String reference, List<Read> colours) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Facts.none().and("Reference", Label.of(reference)));
    colours.stream()
        .limit(MOST_COLOURS)
        .forEach(colour -> blocks.add(section(blocks.size(), colour)));
    if (colours.size() > MOST_COLOURS) {
      int more = colours.size() - MOST_COLOURS;
      blocks.add(new Sentence("Colours that are not on this card: " + more + "."));
    }
    blocks.add(Note.lamp(Illuminant.D65));
    return new Card("Colours of a photo", Label.of(photo), blocks);
  }

  private static Section section(int number, Read read) {
    PhotoColour colour = read.colour;
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Colours(
            List.of(new SwatchBlock.Named("Read", new ScreenColour(colour.lab()))),
            Optional.of(new IntervalRing(colour.spread()))));
    blocks.add(
        Facts.none()
            .and("Region", read.region.toText() + " (x, y, width, height in pixels)")
            .and("Share", String.format(Locale.ROOT, "%.0f %% of the region", 100 * read.share))
            .and("How sure", sure(colour.intervalDeltaE00()))
            .and("Texture", texture(colour.pixelSpread()))
            .and("Pixels", colour.shares().toText()));
    if (!colour.lightnessKnown()) {
      blocks.add(
          new Note(
              "Lightness unknown",
              "Nothing in the photo tells how bright its light was. Put a grey card in it."));
    }
    if (colour.shares().isCrushed()) {
      blocks.add(new Note("At least this", "The colour is stronger than the photo can hold."));
    }
    return new Section(Integer.toString(number), "Colour", blocks);
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
