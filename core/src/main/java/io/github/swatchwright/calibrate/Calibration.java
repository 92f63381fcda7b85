package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.BatchStrength;
import io.github.swatchwright.estimate.DayStrength;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.SurfaceFit;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.mix.Progress;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A better shelf from test cards.
 *
 * @param shelf the shelf with what the cards have taught; paints without cards are as they were
 * @param paints the paints that cards touched, in the shelf's order
 * @param contradictions cards that were left out because other cards and statements contradict them
 * @param unexpected cards that differ from what the shelf foretold by more than its errors allow,
 *     but that nothing measured speaks against: they were used
 * @param batches how strong the batches are that the cards name
 * @param days how strong paints were on their latest day, compared with earlier ones
 * @param widthScale how wide errors turned out to be, as a share of what was expected: all
 *     intervals of the better shelf are scaled by it
 * @param before mean ΔE00 between the cards that were used and what the shelf expected of them
 *     before; of paints without a masstone nothing was expected, and their cards don't count
 * @param after the same once fitted
 */
public record Calibration(
    Shelf shelf,
    List<CalibratedPaint> paints,
    List<DifferingCard> contradictions,
    List<DifferingCard> unexpected,
    List<BatchStrength> batches,
    List<DayStrength> days,
    double widthScale,
    double before,
    double after) {

  /** Copies the lists. */
  public Calibration {
    paints = List.copyOf(paints);
    contradictions = List.copyOf(contradictions);
    unexpected = List.copyOf(unexpected);
    batches = List.copyOf(batches);
    days = List.copyOf(days);
  }

  /**
   * What cards did for a paint.
   *
   * @param name the paint
   * @param cards how many of these cards were used for it
   * @param before mean ΔE00 of those cards before; 0 when it had no masstone
   * @param after mean ΔE00 of those cards once fitted
   */
  public record CalibratedPaint(String name, int cards, double before, double after) {}

  /**
   * A card whose colour isn't the predicted one.
   *
   * @param card its number among the cards, from 1
   * @param measured its measured colour
   * @param expected the colour that was foretold: of a contradiction by all the other cards, of an
   *     unexpected card by the shelf before
   * @param deltaE00 the difference between the two
   */
  public record DifferingCard(int card, Lab measured, Lab expected, double deltaE00) {}

  /**
   * Fits a shelf to cards with the usual errors.
   *
   * @throws IllegalArgumentException when a card names a paint that the shelf doesn't have or that
   *     can't be computed with, mixes media, or when the cards can't tell unknown paints apart
   */
  public static Calibration of(Shelf shelf, CardSet cards) {
    return of(shelf, cards, CardErrors.USUAL);
  }

  /** The same with stated errors. */
  public static Calibration of(Shelf shelf, CardSet cards, CardErrors errors) {
    return of(shelf, cards, errors, Control.PLAIN);
  }

  /**
   * The same, watched and stopped by a control. How many rounds are needed isn't known beforehand,
   * so the progress is an estimate that never falls.
   *
   * @throws java.util.concurrent.CancellationException when it was stopped
   */
  public static Calibration of(Shelf shelf, CardSet cards, CardErrors errors, Control control) {
    return control.onOwnThreads(own -> fit(shelf, cards, errors, own));
  }

  private static Calibration fit(Shelf shelf, CardSet cards, CardErrors errors, Control control) {
    List<PaintedPatch> patches = new CardReader(shelf, errors).patches(cards);
    ShelfOptics prior = ShelfOptics.estimate(shelf);
    return of(prior, patches, Agreement.among(prior, patches, control), control);
  }

  private static Calibration of(
      ShelfOptics prior, List<PaintedPatch> patches, Agreement agreement, Control control) {
    ShelfFit fit = agreement.fit();
    List<DifferingCard> contradictions =
        agreement.leftOut().stream()
            .map(card -> differing(card, patches.get(card), fit::lab))
            .toList();
    List<DifferingCard> unexpected = new ArrayList<>();
    for (int place = 0; place < fit.size(); place++) {
      int card = agreement.kept().get(place);
      PaintedPatch patch = patches.get(card);
      if (agreement.onlyEvidence().contains(card)) {
        unexpected.add(differing(card, patch, fit::lab));
      } else if (isExpected(patch, prior) && fit.surprise(place) > 1) {
        unexpected.add(differing(card, patch, prior::lab));
      }
    }
    Residuals residuals = new Residuals(prior, fit, fit.patches());
    Calibration calibration =
        new Calibration(
            fit.shelf(),
            residuals.paints(),
            contradictions,
            unexpected,
            fit.batches(),
            fit.dayStrengths(),
            fit.widthScale(),
            residuals.before(),
            residuals.after());
    control.progress().reached(1);
    return calibration;
  }

  private static boolean isExpected(PaintedPatch patch, ShelfOptics prior) {
    return patch.amounts().keySet().stream()
        .allMatch(name -> prior.shelf().paint(name).whyNotComputable().isEmpty());
  }

  /**
   * The same with the surface correction fitted as well: the one under which swatches and cards are
   * most probable, stored with the shelf. Cards that contradict the others are left out of it.
   *
   * @throws IllegalArgumentException as {@link #of} does, and when the shelf has learned from cards
   *     before
   */
  public static Calibration withFittedSurface(Shelf shelf, CardSet cards, CardErrors errors) {
    return withFittedSurface(shelf, cards, errors, Control.PLAIN);
  }

  /**
   * The same, watched and stopped by a control.
   *
   * @throws java.util.concurrent.CancellationException when it was stopped
   */
  public static Calibration withFittedSurface(
      Shelf shelf, CardSet cards, CardErrors errors, Control control) {
    return control.onOwnThreads(
        own -> fit(underFittedSurface(shelf, cards, errors, own), cards, errors, own));
  }

  private static Shelf underFittedSurface(
      Shelf shelf, CardSet cards, CardErrors errors, Control control) {
    List<PaintedPatch> patches = new CardReader(shelf, errors).patches(cards);
    Control quiet = control.withProgress(Progress.UNHEARD);
    Agreement agreement = Agreement.among(ShelfOptics.estimate(shelf), patches, quiet);
    Saunderson surface = SurfaceFit.of(shelf, agreement.fit());
    return new Shelf(shelf.name(), shelf.paints(), Optional.of(surface));
  }

  /**
   * The calibration with one more card. Every pot and every rung that is measured makes one, see
   * {@link TestCard#ofMix}.
   *
   * @throws IllegalArgumentException as {@link #of} does
   */
  public Calibration with(TestCard card) {
    return of(shelf, new CardSet(List.of(card)));
  }

  private static DifferingCard differing(
      int card, PaintedPatch patch, Function<PaintedPatch, Lab> foretold) {
    Lab measured = patch.measured().lab();
    Lab expected = foretold.apply(patch);
    return new DifferingCard(card + 1, measured, expected, Ciede2000.deltaE(expected, measured));
  }
}
