package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Row;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.SolventRule;
import io.github.swatchwright.coat.SolventVerdict;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What has to be minded when one medium goes over another. */
final class Layering {
  private Layering() {}

  /** How often a paint goes on, and how thin. */
  static Row row(Coat coat) {
    String often = Markup.number(coat.coats());
    return new Row(
        coat.coats(),
        Label.of(name(coat)),
        Optional.empty(),
        (often.equals("1") ? "coat, " : "coats, ") + coat.thinning());
  }

  /** What a coat is painted with. */
  static String name(Coat coat) {
    List<Mix.Part> parts = coat.mix().parts();
    return parts.size() == 1 ? parts.get(0).paint().name() : coat.mix().toText();
  }

  /** The wait before a coat. */
  static Facts waitAfter(Medium lower) {
    return Facts.none().and("Wait first", Wait.after(lower).words() + "; the label wins");
  }

  /** A note where the coat below may suffer. */
  static List<Note> trouble(SolventRule rule) {
    if (rule.verdict() == SolventVerdict.SAFE) {
      return List.of();
    }
    String word = rule.verdict().word();
    String media = rule.upper().word() + " over " + rule.lower().word();
    return List.of(
        new Note(
            word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1),
            Label.sentence(media + ": " + rule.reason() + ". " + rule.remedy())));
  }
}
