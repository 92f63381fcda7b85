package io.github.swatchwright.card;

import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Drops;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Note;
import io.github.swatchwright.card.CardPart.Picture;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.coat.Caution;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.SolventRules;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderWarning;
import io.github.swatchwright.ladder.LetDown;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.paint.Medium;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A ladder of shades: what to add to the pot for each, and how much of the area it covers. */
final class LadderCard {
  private final Ladder ladder;
  private final long seed;
  private final PaintColour colours;
  private final List<CardPart> blocks = new ArrayList<>();

  private LadderCard(Ladder ladder, long seed) {
    this.ladder = ladder;
    this.seed = seed;
    this.colours = new PaintColour(ladder.light());
  }

  /**
   * The card.
   *
   * @param ladder what was planned
   * @param seed where the speckles of its pictures lie
   */
  static Card of(Ladder ladder, long seed) {
    return new LadderCard(ladder, seed).card();
  }

  private Card card() {
    List<Named> ends = List.of(new Named("From", ladder.from()), new Named("To", ladder.to()));
    blocks.add(new Colours(ends, Optional.empty(), false));
    for (int i = 0; i < ladder.rungs().size(); i++) {
      blocks.add(rung(i));
    }
    blocks.add(whole());
    blocks.add(Sayings.RING);
    blocks.add(Sayings.lamp(ladder.light()));
    blocks.addAll(Sayings.notes(List.of(Caution.DATA_SHEET)));
    return new Card("Ladder", ladder.rungs().size() + " shades", blocks);
  }

  private static Medium medium(Rung rung) {
    return rung.pot().parts().get(0).paint().medium();
  }

  private Section rung(int i) {
    Rung rung = ladder.rungs().get(i);
    List<CardPart> inside = new ArrayList<>();
    if (i > 0) {
      Medium below = medium(ladder.rungs().get(i - 1));
      double thinner = rung.wash().map(Coat::thinner).orElse(0.0);
      inside.add(Layering.waitAfter(below));
      inside.addAll(Layering.trouble(SolventRules.of(below, medium(rung), thinner)));
    }
    inside.add(
        rung.wash()
            .map(wash -> new Drops(List.of(Layering.row(wash))))
            .orElseGet(() -> RecipeDrops.of(rung.add(), colours)));
    letDown(i, rung).ifPresent(inside::add);
    Lab colour = rung.prediction().lab();
    inside.add(
        Colours.toDo(List.of(new Named("Shade " + (i + 1), colour)), rung.prediction().spread()));
    inside.add(pass(i, rung));
    inside.add(facts(i, rung));
    for (LadderWarning warning : ladder.warnings()) {
      if (warning.rung() == i + 1) {
        inside.add(new Note("Mind", Label.sentence(warning.text())));
      }
    }
    inside.addAll(Sayings.notes(ladder.cautionsOfRungs().get(i)));
    return new Section(Integer.toString(i + 1), heading(i, rung), inside);
  }

  private String heading(int i, Rung rung) {
    if (rung.wash().isPresent()) {
      return "Wash";
    }
    if (ladder.pot().separate()) {
      return "Mix";
    }
    if (rung.keep() == 0) {
      return i == 0 ? "Start the pot with" : "Start again with";
    }
    String kept =
        "Keep " + rung.keep() + (rung.keep() == 1 ? " drop" : " drops") + " of shade " + i;
    return rung.add().isEmpty() ? kept : kept + ", add";
  }

  /** How many drops of the let-down are added, and what it is. */
  private Optional<Note> letDown(int i, Rung rung) {
    if (rung.letDown() == 0) {
      return Optional.empty();
    }
    LetDown small = ladder.letDown().orElseThrow();
    return Optional.of(
        new Note(
            "Let down",
            Label.sentence(
                String.format(
                    Locale.ROOT,
                    "Shade %d takes %d of the drops of a small cup: %d of %s in %d of %s.",
                    i + 1,
                    rung.letDown(),
                    small.strongDrops(),
                    small.strong().name(),
                    small.mildDrops(),
                    small.mild().name()))));
  }

  /** The pass over the shade before it, or over the base. */
  private Picture pass(int i, Rung rung) {
    Lab below =
        i == 0
            ? ladder.base().orElse(rung.prediction().lab())
            : ladder.rungs().get(i - 1).prediction().lab();
    Speckle speckle =
        Speckle.strip(below, new Speckle.Pass(rung.prediction().lab(), rung.coverage()), seed + i);
    return new Picture(
        speckle, String.format(Locale.ROOT, "Cover %.0f %% of the area.", 100 * rung.coverage()));
  }

  private Facts facts(int i, Rung rung) {
    Facts facts =
        Facts.none()
            .and("Paint", Volume.words(rung.amount(), Thinner.of(rung.pot())))
            .and(
                "In the end",
                String.format(Locale.ROOT, "shows on %.0f %% of it", 100 * rung.visibleShare()))
            .and("How sure", Sayings.interval(rung.prediction().intervalDeltaE00()));
    if (rung.wash().isPresent()) {
      return facts;
    }
    facts =
        facts.and(
            "The pot",
            String.format(Locale.ROOT, "%.0f drops: %s", rung.potDrops(), ladder.useOfPot(i)));
    if (i == 0) {
      facts = facts.and("Thin with", Thinner.of(rung.pot()) + "; the drops are unthinned paint");
    }
    return facts.and(
        "One drop off",
        String.format(Locale.ROOT, "changes the shade by ΔE00 %.1f at most", rung.oneDrop()));
  }

  private Section whole() {
    List<Speckle.Pass> passes =
        ladder.rungs().stream()
            .map(rung -> new Speckle.Pass(rung.prediction().lab(), rung.coverage()))
            .toList();
    Lab base = ladder.base().orElse(ladder.rungs().get(0).prediction().lab());
    List<Named> average = new ArrayList<>();
    ladder.wantedLook().ifPresent(wanted -> average.add(new Named("Wanted", wanted)));
    average.add(new Named("From a distance", ladder.look()));
    return new Section(
        "",
        "All passes together",
        List.of(
            new Picture(
                Speckle.of(base, passes, seed),
                String.format(
                    Locale.ROOT, "Close up; the base shows on %.0f %%.", 100 * ladder.baseShare())),
            new Colours(average, Optional.empty(), false)));
  }
}
