package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.List;

/** What mixes will look like. */
final class PredictionCard {
  /** More mixes than that are not on the card, which says so. */
  static final int MOST_MIXES = 12;

  private PredictionCard() {}

  /**
   * The card.
   *
   * @param predictions the mixes, in order, with what they will look like
   * @param light the light that they were computed for
   */
  static Card of(List<PredictedMix> predictions, Illuminant light) {
    List<CardPart> blocks = new ArrayList<>();
    PaintColour colours = new PaintColour(light);
    List<PredictedMix> mixes = predictions.stream().distinct().toList();
    for (PredictedMix mix : mixes.subList(0, Math.min(mixes.size(), MOST_MIXES))) {
      blocks.add(section(blocks.size() + 1, mix.mix(), mix.prediction(), colours));
    }
    if (mixes.size() > MOST_MIXES) {
      blocks.add(
          new Sentence("Mixes that are not on this card: " + (mixes.size() - MOST_MIXES) + "."));
    }
    blocks.add(Sayings.RING);
    blocks.add(Sayings.lamp(light));
    String title = mixes.size() == 1 ? "One mix" : mixes.size() + " mixes";
    return new Card("Predictions", title, blocks);
  }

  private static Section section(int number, Mix mix, Prediction predicted, PaintColour colours) {
    Lab colour = predicted.lab();
    return new Section(
        Integer.toString(number),
        "Dry, painted until it hides",
        List.of(
            RecipeDrops.of(mix, colours),
            Colours.toDo(List.of(new Named("This mix", colour)), predicted.spread()),
            Facts.none()
                .and("Amount", Sayings.amount(mix))
                .and("How sure", Sayings.interval(predicted.intervalDeltaE00()))));
  }
}
