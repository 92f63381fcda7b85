package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.difference.Verdict;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Sentences that several cards say. */
final class Sayings {
  /** Volumes of thinner to one of paint. Common practice of the trade, without a source. */
  static final String THINNING =
      "1 part paint : ½ to 2 thinner to spray, 3 to 10 for a glaze, 10 for a wash, 10 to 20 for a"
          + " filter."
          + " The label comes first.";

  private Sayings() {}

  /** The colours hold under the light that they were computed for. */
  static Note lamp(Illuminant light) {
    String name = Label.of(light.name());
    return light.equals(Illuminant.D65)
        ? new Note(
            "Lamp",
            "These colours are for daylight (D65). Under a lamp, paints that match may part: judge"
                + " them by a window, dry.")
        : new Note(
            "Lamp",
            "These colours are for the light "
                + name
                + " alone. Paints that match under it may part in daylight: look there too.");
  }

  /** What the ring means. */
  static final Note RING =
      new Note(
          "Ring",
          "What the mix may dry to instead: 80 of 100 tries stay within it, lighter ones towards"
              + " its top. A ring that looks like its middle is good news.");

  /** How sure a prediction is; never 0.0, which would promise the very same colour. */
  static String interval(double deltaE00) {
    return String.format(
        Locale.ROOT,
        "%.0f of 100 tries land within ΔE00 %.1f of it.",
        100 * Prediction.INTERVAL_PROBABILITY,
        Math.max(0.1, deltaE00));
  }

  /** A difference with its meaning. */
  static String difference(double deltaE00) {
    return String.format(Locale.ROOT, "ΔE00 %.1f. %s", deltaE00, Verdict.of(deltaE00).sentence());
  }

  /** The mean difference to expect. */
  static String expected(double deltaE00) {
    return String.format(Locale.ROOT, "ΔE00 %.1f on average", deltaE00);
  }

  /** How much there is of a mix. */
  static String amount(Mix mix) {
    double drops = mix.parts().stream().mapToDouble(Mix.Part::drops).sum();
    double millilitres = mix.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
    String count = Markup.number(drops);
    return count + (count.equals("1") ? " drop, " : " drops, ") + Volume.words(millilitres);
  }

  /** Cautions as notes. */
  static List<Note> notes(List<Caution> cautions) {
    return cautions.stream().map(caution -> new Note("Care", caution.text())).toList();
  }

  /** The usual cautions for work with these media. */
  static List<Note> cautions(Collection<Medium> media) {
    List<Note> notes = new ArrayList<>();
    Caution.forMedia(media).forEach(caution -> notes.add(new Note("Care", caution.text())));
    return notes;
  }
}
