package io.github.swatchwright.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatPredictor;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.LadderWarning;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is on the pages: number, texts, and colours to the last digit. */
class PaperCardTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), "demo shelf");
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(SHELF);
  private static final MatchResult MATCH =
      Matcher.of(OPTICS, TristimulusWeights.D65)
          .match(MatchRequest.of(swatch("#8A4B2A")).withMostPaints(2).withMostDrops(10));
  private static final double HALF = PaperCard.HEIGHT / 2;
  private static final Ladder LADDER = ladder();

  private static Swatch swatch(String hex) {
    return new Swatch.OfSrgb(Srgb.parse(hex));
  }

  private static Ladder ladder() {
    LadderRequest request =
        LadderRequest.between(
                new Shade.OfColour(swatch("#C8642A")), new Shade.OfColour(swatch("#3B2A22")), 4)
            .withSubject(Subject.RUST);
    return LadderPlanner.of(OPTICS, TristimulusWeights.D65).plan(request);
  }

  private static Card coats(String coats) {
    CoatPlan plan =
        CoatPlan.of(
            CoatPredictor.of(OPTICS, TristimulusWeights.D65),
            new Base.OfMix(Mix.parse("Dredger grey", SHELF)),
            Coats.parse(coats, SHELF));
    return Card.of(plan, 1);
  }

  /** The texts of a page, without spaces: a line may be broken anywhere. */
  private static String texts(List<Page> pages) {
    return pages.stream()
        .flatMap(page -> page.shapes().stream())
        .filter(Page.Words.class::isInstance)
        .map(shape -> squeezed(((Page.Words) shape).text()))
        .collect(Collectors.joining());
  }

  private static String squeezed(String text) {
    return text.replaceAll("\\s", "");
  }

  private static Stream<Page.Shape> flat(List<Page.Shape> shapes) {
    return shapes.stream()
        .flatMap(
            shape ->
                shape instanceof Page.Figure figure ? flat(figure.shapes()) : Stream.of(shape));
  }

  /** Colours of swatches in the order in which they are drawn. */
  private static List<String> swatches(List<Page> pages) {
    List<String> hexes = new ArrayList<>();
    for (Page page : pages) {
      flat(page.shapes())
          .forEach(
              shape -> {
                if (shape instanceof Page.Box box && box.ink().style().equals("swatch")) {
                  hexes.add(box.ink().hex());
                } else if (shape instanceof Page.Disc disc && disc.ink().style().equals("swatch")) {
                  hexes.add(disc.ink().hex());
                }
              });
    }
    return hexes;
  }

  /** How far down a page is used, in millimetres, without its foot. */
  private static double used(Page page) {
    return flat(page.shapes())
        .filter(Page.Words.class::isInstance)
        .mapToDouble(shape -> ((Page.Words) shape).baseline())
        .filter(baseline -> baseline < 200)
        .max()
        .orElse(0);
  }

  @Test
  void aRecipeIsOnePageWithTheBestLargeAndTheOthersALineEach() {
    Card card =
        Card.of(MATCH)
            .from(
                CardOrigin.of(LocalDate.of(2026, 11, 20), "Harbour dredger")
                    .withProject("Dredger 1/72")
                    .withEntry(12));
    List<Page> pages = card.pages();
    assertThat(pages).hasSize(1);
    String texts = texts(pages);
    assertThat(texts)
        .contains("2026-11-20", "Harbourdredger", "Dredger1/72", "no.12")
        .contains("Printisn'tcolour-true", "Dab", "Whatthemixmaydrytoinstead");
    MATCH
        .recipes()
        .get(0)
        .recipe()
        .drops()
        .forEach(drops -> assertThat(texts).contains(squeezed(drops.paint().name())));
    List<String> wanted = new ArrayList<>();
    wanted.add("#8A4B2A");
    String best = new ScreenColour(MATCH.recipes().get(0).prediction().lab()).hex();
    wanted.addAll(List.of(best, best));
    MATCH
        .recipes()
        .subList(1, MATCH.recipes().size())
        .forEach(
            other ->
                wanted.addAll(
                    List.of("#8A4B2A", new ScreenColour(other.prediction().lab()).hex())));
    assertThat(swatches(pages)).isEqualTo(wanted);
  }

  @Test
  void aLadderOfFourIsTwoPagesAndNoneIsNearlyEmpty() {
    List<Page> pages = Card.of(LADDER, 1).pages();
    assertThat(pages).hasSize(2);
    assertThat(pages).allSatisfy(page -> assertThat(used(page)).isGreaterThan(HALF));
    List<String> wanted =
        new ArrayList<>(
            List.of(new ScreenColour(LADDER.from()).hex(), new ScreenColour(LADDER.to()).hex()));
    LADDER
        .rungs()
        .forEach(
            rung -> {
              String hex = new ScreenColour(rung.prediction().lab()).hex();
              wanted.addAll(List.of(hex, hex));
            });
    wanted.add(new ScreenColour(LADDER.look()).hex());
    assertThat(swatches(pages)).isEqualTo(wanted);
  }

  @Test
  void threeAndFourCoatsAreTwoPages() {
    for (String coats :
        List.of(
            "Red oxide:2@1:1 over 40%, Whitewash wash:2, Blue filter:3",
            "Red oxide:2, Deckhouse cream:2 over 60%, Whitewash wash:2, Blue filter:3")) {
      List<Page> pages = coats(coats).pages();
      assertThat(pages).hasSize(2);
      assertThat(pages).allSatisfy(page -> assertThat(used(page)).isGreaterThan(HALF));
    }
  }

  // Base, once; then before, after and the middle of the ring, and two pre-highlights.
  @Test
  void theBareBaseHasNoRing() {
    Card card = coats("Red oxide:2");
    CardPart.Section base = (CardPart.Section) card.parts().get(0);
    assertThat(base.parts())
        .singleElement()
        .isInstanceOfSatisfying(
            CardPart.Colours.class, colours -> assertThat(colours.ring()).isEmpty());
    assertThat(swatches(card.pages())).hasSize(1 + 3 + 2);
  }

  @Test
  void adviceIsWhole() {
    String pages = texts(Card.of(LADDER, 1).pages());
    for (LadderWarning warning : LADDER.warnings()) {
      if (warning.rung() >= 1) {
        assertThat(pages).contains(squeezed(warning.text()));
      }
    }
    assertThat(pages).doesNotContain("…");
  }

  /** All that a part says, in the order in which it is drawn. */
  private static Stream<String> said(CardPart part) {
    if (part instanceof CardPart.Section section) {
      return Stream.concat(
          Stream.of(section.heading()), section.parts().stream().flatMap(PaperCardTest::said));
    }
    if (part instanceof CardPart.Facts facts) {
      return facts.facts().stream().flatMap(fact -> Stream.of(fact.label(), fact.text()));
    }
    if (part instanceof CardPart.Drops drops) {
      return drops.rows().stream().flatMap(row -> Stream.of(row.name(), row.detail()));
    }
    if (part instanceof CardPart.Lines lines) {
      return lines.lines().stream().flatMap(line -> Stream.of(line.text(), line.detail()));
    }
    if (part instanceof CardPart.Note note) {
      return Stream.of(note.text());
    }
    if (part instanceof CardPart.Sentence sentence) {
      return Stream.of(sentence.text());
    }
    return Stream.of();
  }

  @Test
  void everyWordOfTheContentIsOnPaper() {
    for (Card card :
        List.of(
            Card.of(MATCH),
            Card.of(LADDER, 1),
            coats("Red oxide:2@1:1 over 40%, Whitewash wash:2, Blue filter:3"))) {
      String texts = texts(card.pages());
      card.parts().stream()
          .flatMap(PaperCardTest::said)
          .forEach(text -> assertThat(texts).contains(squeezed(text)));
    }
  }

  // Each drop row and each heading of a step has a box, of four lines each.
  @Test
  void stepsHaveBoxesToTick() {
    Card card = Card.of(MATCH);
    int paints = MATCH.recipes().get(0).recipe().drops().size();
    long lines =
        card.pages().get(0).shapes().stream()
            .filter(
                shape ->
                    shape instanceof Page.Box box
                        && box.ink().equals(Ink.BLACK)
                        && Math.abs(Math.min(box.width(), box.height()) - 0.3) < 1e-9)
            .count();
    assertThat(lines).isEqualTo(4L * (paints + 1));
  }

  @Test
  void aLongShelfKeepsItsOrderAcrossPages() {
    List<CardPart.Line> lines = new ArrayList<>();
    for (int i = 1; i <= 200; i++) {
      lines.add(new CardPart.Line("", List.of(), "Paint no. " + i + ";", ""));
    }
    List<Page> pages = new Card("Shelf", "200 paints", List.of(new CardPart.Lines(lines))).pages();
    StringBuilder wanted = new StringBuilder();
    lines.forEach(line -> wanted.append(squeezed(line.text())));
    String all =
        pages.stream()
            .flatMap(page -> page.shapes().stream())
            .filter(shape -> shape instanceof Page.Words words && words.text().startsWith("Paint"))
            .map(shape -> squeezed(((Page.Words) shape).text()))
            .collect(Collectors.joining());
    assertThat(all).isEqualTo(wanted.toString());
    assertThat(pages).allSatisfy(page -> assertThat(used(page)).isGreaterThan(HALF));
  }
}
