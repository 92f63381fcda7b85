package io.github.swatchwright.card;

import io.github.swatchwright.calibrate.NextCard;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.card.CardPart.Colours;
import io.github.swatchwright.card.CardPart.Drops;
import io.github.swatchwright.card.CardPart.Facts;
import io.github.swatchwright.card.CardPart.Line;
import io.github.swatchwright.card.CardPart.Lines;
import io.github.swatchwright.card.CardPart.Named;
import io.github.swatchwright.card.CardPart.Row;
import io.github.swatchwright.card.CardPart.Section;
import io.github.swatchwright.card.CardPart.Sentence;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.Rung;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.plan.Needs;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.plan.PlanCalendar;
import io.github.swatchwright.plan.PlanStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A whole model's steps, to tick off one after the other. */
final class PlanCard {
  private final Plan plan;
  private final List<CardPart> blocks = new ArrayList<>();

  private PlanCard(Plan plan) {
    this.plan = plan;
  }

  /**
   * The card.
   *
   * @param plan what was planned
   */
  static Card of(Plan plan) {
    return new PlanCard(plan).card();
  }

  private Card card() {
    if (!plan.calendar().isEmpty()) {
      blocks.add(calendar());
    }
    before().ifPresent(blocks::add);
    plan.toDo().forEach(step -> blocks.add(section(step)));
    if (!plan.needs().paints().isEmpty()) {
      blocks.add(needs());
    }
    blocks.add(Sayings.RING);
    blocks.add(Sayings.lamp(plan.light()));
    blocks.addAll(Sayings.notes(plan.cautions()));
    return new Card("Plan", Label.of(plan.project().name()), blocks)
        .from(CardOrigin.UNKNOWN.withProject(plan.project().name()));
  }

  private Section calendar() {
    Facts facts = Facts.none();
    for (PlanCalendar.Line line : PlanCalendar.of(plan)) {
      facts = facts.and(line.when(), String.join("; ", line.what()));
    }
    return new Section(
        "",
        "When",
        List.of(
            facts, new Sentence("Waits are the usual ones at room temperature; the label wins.")));
  }

  /** The test cards worth painting first, and what they buy. */
  private static Facts withCards(Facts before, NextCards next) {
    Facts facts = before;
    List<NextCard> cards = next.cards();
    for (NextCard card : cards) {
      facts = facts.and("Test card", Label.sentence(card.recipe().toMix().toText()));
    }
    return facts.and(
        "That buys",
        String.format(
            Locale.ROOT,
            "base coats within ΔE00 %.1f on average, %.1f without",
            cards.get(cards.size() - 1).expectedDeltaE00(),
            next.expectedDeltaE00()));
  }

  private Optional<Section> before() {
    Facts facts = Facts.none();
    for (Needs.OfPaint paint : plan.needs().missing()) {
      facts =
          facts.and(
              paint.owned() ? "Runs short" : "Buy",
              Label.of(paint.name()) + ", " + Volume.words(paint.missingMillilitres()));
    }
    if (plan.cards().isPresent()) {
      facts = withCards(facts, plan.cards().get());
    }
    for (PlanStep step : plan.trials()) {
      facts =
          facts.and(
              "On scrap",
              "step "
                  + step.number()
                  + ": a strip with one coat, two and three, painted like the "
                  + step.area());
    }
    if (!plan.withoutPrimer().isEmpty()) {
      facts =
          facts.and(
              "No primer",
              Label.sentence(String.join(", ", plan.withoutPrimer()))
                  + ": wash the plastic with soap; on bare plastic acrylic rubs off");
    }
    return facts.facts().isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("", "Before you start", List.of(facts)));
  }

  private Section section(PlanStep step) {
    List<CardPart> inside = new ArrayList<>();
    PaintColour colours = new PaintColour(plan.light());
    step.work().pot().ifPresent(pot -> inside.add(drops(pot)));
    step.work().ladder().ifPresent(ladder -> inside.addAll(passes(ladder, colours)));
    if (!step.kind().isClear() && !step.work().coats().isEmpty()) {
      inside.add(
          Colours.toDo(
              List.of(new Named("Then", step.look().prediction().lab())),
              step.look().prediction().spread()));
    }
    inside.add(facts(step));
    step.advice().forEach(sentence -> inside.add(new Sentence(Label.sentence(sentence))));
    return new Section(
        Integer.toString(step.number()),
        Label.of(step.area()) + ": " + step.kind().heading().toLowerCase(Locale.ROOT),
        inside);
  }

  private static List<CardPart> passes(Ladder ladder, PaintColour colours) {
    List<CardPart> passes = new ArrayList<>();
    ladder
        .letDown()
        .ifPresent(
            some -> {
              passes.add(new Sentence("First let down, in a pot of its own:"));
              passes.add(RecipeDrops.of(some.drops(), colours));
            });
    int number = 1;
    for (Rung rung : ladder.rungs()) {
      String keep = rung.keep() == 0 ? "" : " Keep " + rung.keep() + " of the pot before, and add:";
      String down = rung.letDown() == 0 ? "" : " (" + rung.letDown() + " of the let-down)";
      String text = String.format(Locale.ROOT, "over %.0f %%.", 100 * rung.coverage());
      passes.add(Facts.none().and("Pass " + number++, text + keep + down));
      passes.add(RecipeDrops.of(rung.add(), colours));
    }
    return passes;
  }

  /** Dots are for pots that one counts by eye; a hull takes hundreds of drops. */
  private Drops drops(Mix pot) {
    PaintColour colours = new PaintColour(plan.light());
    return new Drops(
        pot.parts().stream()
            .map(
                part ->
                    Row.of(
                        part.drops(),
                        part.paint().name(),
                        colour(part.paint(), colours),
                        part.millilitres()))
            .toList());
  }

  private static Optional<Lab> colour(Paint paint, PaintColour colours) {
    return paint.masstone().isEmpty() ? Optional.empty() : colours.of(paint);
  }

  private static Facts facts(PlanStep step) {
    Facts facts = Facts.none();
    if (step.work().ladder().isEmpty() && !step.work().coats().isEmpty()) {
      Coat coat = step.work().coats().get(0);
      facts =
          facts.and(
              "Paint",
              Markup.number(coat.coats())
                  + (coat.coats() == 1 ? " coat, " : " coats, ")
                  + coat.thinning());
      facts =
          facts.and(
              "Amount", Volume.words(step.work().amount(), Plan.thinner(step).orElse("thinner")));
    }
    return step.kind().isClear()
        ? facts
        : facts.and("How sure", Sayings.interval(step.look().prediction().intervalDeltaE00()));
  }

  private Section needs() {
    List<Line> lines = new ArrayList<>();
    for (Needs.OfPaint paint : plan.needs().paints()) {
      lines.add(new Line("", List.of(), Label.of(paint.name()), Volume.words(paint.millilitres())));
    }
    for (Map.Entry<String, Double> thinner : plan.needs().thinners().entrySet()) {
      lines.add(new Line("", List.of(), thinner.getKey(), Volume.words(thinner.getValue())));
    }
    return new Section("", "It takes in all", List.of(new Lines(lines)));
  }
}
