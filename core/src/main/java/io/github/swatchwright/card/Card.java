package io.github.swatchwright.card;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Reinforcement;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;
import java.util.Optional;

/**
 * A result as something to lie on the bench beside the pots: its content as data, as pages, as HTML
 * or as SVG. Immutable.
 */
public final class Card {
  private final String kind;
  private final String title;
  private final CardOrigin origin;
  private final List<CardPart> parts;

  /**
   * A card.
   *
   * @param kind what it is a card of, in a word or two
   * @param title what is on it
   * @param parts from the top
   */
  Card(String kind, String title, List<CardPart> parts) {
    this(kind, title, CardOrigin.UNKNOWN, parts);
  }

  private Card(String kind, String title, CardOrigin origin, List<CardPart> parts) {
    this.kind = kind;
    this.title = title;
    this.origin = origin;
    this.parts = List.copyOf(parts);
  }

  /** Recipes for a colour: the one to trust most, then others. */
  public static Card of(MatchResult result) {
    return MatchCard.of(result);
  }

  /**
   * A ladder of shades: what to add to the pot for each, and how much of the area it covers.
   *
   * @param ladder what was planned
   * @param seed where the speckles of its pictures lie
   */
  public static Card of(Ladder ladder, long seed) {
    return LadderCard.of(ladder, seed);
  }

  /**
   * Coats over a base in their order, with waits and cautions, and what to paint next.
   *
   * @param plan the coats
   * @param seed where the speckles of its pictures lie
   */
  public static Card of(CoatPlan plan, long seed) {
    return CoatCard.of(plan, seed);
  }

  /** A whole model's steps, to tick off one after the other. */
  public static Card of(Plan plan) {
    return PlanCard.of(plan);
  }

  /**
   * What test cards have taught a shelf: its paints before and after, and which card comes next.
   *
   * @param before the shelf as it was
   * @param calibration what was learned
   * @param next cards to paint next, if that was asked
   * @param light the light that its colours are for
   */
  public static Card of(
      Shelf before, Calibration calibration, Optional<NextCards> next, Illuminant light) {
    return CalibrationCard.of(before, calibration, next, light);
  }

  /** Test cards to paint first, when nothing was learned yet. */
  public static Card of(NextCards next, Illuminant light) {
    return CalibrationCard.of(next, light);
  }

  /**
   * What to add to a pot that came out wrong, one paint after the other.
   *
   * @param pot what is in the pot
   * @param measured its colour
   * @param target the wanted colour
   * @param correction what to add
   */
  public static Card of(Mix pot, Swatch measured, Swatch target, Correction correction) {
    return CorrectionCard.of(pot, measured, target, correction);
  }

  /**
   * Two colours and how they differ.
   *
   * @param a the colour to compare with
   * @param b the colour that is compared
   * @param difference B's difference from A
   * @param light the light that it was computed for
   */
  public static Card of(Lab a, Lab b, ColourDifference difference, Illuminant light) {
    return ComparisonCard.of(a, b, difference, light);
  }

  /** Which paint to buy for colours that are wanted, to take along to the shop. */
  public static Card of(Reinforcement result) {
    return ReachCard.of(result);
  }

  /**
   * The paints of a shelf with their colours, to keep beside the bottles, and what it lacks.
   *
   * @param report the shelf
   * @param reach what it can be mixed to; empty when none of its paints can be computed with
   * @param light the light that it was looked at under
   */
  public static Card of(ShelfReport report, Optional<ShelfReach> reach, Illuminant light) {
    return ShelfCard.of(report, reach, light);
  }

  /**
   * What mixes will look like; the same mix only once.
   *
   * @param mixes the mixes, in order
   * @param light the light that they were computed for
   */
  public static Card ofPredictions(List<PredictedMix> mixes, Illuminant light) {
    return PredictionCard.of(mixes, light);
  }

  /**
   * Colours read from a photo.
   *
   * @param photo what the photo is called
   * @param reference what its colours were corrected by, in words
   * @param colours the colours, in order
   */
  public static Card ofSample(String photo, String reference, List<RegionColour> colours) {
    return SampleCard.of(photo, reference, colours);
  }

  /** What a notebook holds, a line for each entry, the latest first. */
  public static Card ofNotebook(List<NotebookLine> entries) {
    return NotebookCard.of(entries);
  }

  /** The same card that tells where it comes from. */
  public Card from(CardOrigin where) {
    return new Card(kind, title, where, parts);
  }

  /** What it is a card of, in a word or two. */
  public String kind() {
    return kind;
  }

  /** What is on it. */
  public String title() {
    return title;
  }

  /** Where it comes from. */
  public CardOrigin origin() {
    return origin;
  }

  /** Its content as data, from the top. */
  public List<CardPart> parts() {
    return parts;
  }

  /** The card on pages of A5 paper, for whatever prints them. */
  public List<Page> pages() {
    return PaperCard.pages(this);
  }

  /**
   * The card as an HTML page that needs nothing else: no scripts, nothing fetched. On a screen it
   * follows the width and the light or dark setting of whoever reads it; swatches stay as they are.
   * It prints as {@link #pages} has it, whatever fonts the printing machine has.
   */
  public String toHtml() {
    return new HtmlCard(this).toText();
  }

  /** The card's pages below each other as one SVG picture that needs nothing else. */
  public String toSvg() {
    List<Page> pages = pages();
    double width = pages.get(0).width();
    double height = pages.stream().mapToDouble(Page::height).sum();
    Markup svg =
        Markup.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + Markup.number(width) + " " + Markup.number(height))
            .with("width", Markup.number(width) + "mm")
            .with("height", Markup.number(height) + "mm")
            .add(Markup.of("title", kind + ": " + title))
            .add(Markup.of("style", Style.SHEET.text()));
    double top = 0;
    for (Page page : pages) {
      svg =
          svg.add(
              PageSvg.page(page)
                  .with("y", top)
                  .with("width", page.width())
                  .with("height", page.height()));
      top += page.height();
    }
    return svg + "\n";
  }
}
