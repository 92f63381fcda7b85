package io.github.swatchwright.calibrate;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.BatchStrength;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.estimate.SurfaceFit;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.paint.Shelf;
import java.util.List;
import java.util.Optional;

/**
 * A better shelf from test cards.
 *
 * @param shelf the shelf with what the cards have taught; paints without cards are as they were
 * @param paints the paints that cards touched, in the shelf's order
 * @param contradictions cards that were left out because they contradict the rest
 * @param batches how strong the batches are that the cards name
 * @param before mean ΔE00 between the cards that were used and what the shelf expected of them
 *     before; of paints without a masstone nothing was expected, and their cards don't count
 * @param after the same once fitted
 */
public record Calibration(
    Shelf shelf,
    List<CalibratedPaint> paints,
    List<Contradiction> contradictions,
    List<BatchStrength> batches,
    double before,
    double after) {

  /** Copies the lists. */
  public Calibration {
    paints = List.copyOf(paints);
    contradictions = List.copyOf(contradictions);
    batches = List.copyOf(batches);
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
   * A card that contradicts the rest.
   *
   * @param card its number among the cards, from 1
   * @param measured its measured colour
   * @param expected the colour that it would have to be, by all the others
   * @param deltaE00 the difference between the two
   */
  public record Contradiction(int card, Lab measured, Lab expected, double deltaE00) {}

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
    List<PaintedPatch> patches = new CardReader(shelf, errors).patches(cards);
    ShelfOptics prior = ShelfOptics.estimate(shelf);
    Agreement agreement = Agreement.among(prior, patches);
    ShelfFit fit = agreement.fit();
    List<Contradiction> contradictions =
        agreement.leftOut().stream()
            .map(card -> contradiction(card, patches.get(card), fit))
            .toList();
    Residuals residuals = new Residuals(prior, fit, agreement.kept());
    return new Calibration(
        fit.shelf(),
        residuals.paints(),
        contradictions,
        fit.batches(),
        residuals.before(),
        residuals.after());
  }

  /**
   * The same with the surface correction fitted as well: the one under which swatches and cards are
   * most probable, stored with the shelf. Cards that contradict the others are left out of it.
   *
   * @throws IllegalArgumentException as {@link #of} does, and when the shelf has learnt from cards
   *     before
   */
  public static Calibration withFittedSurface(Shelf shelf, CardSet cards, CardErrors errors) {
    List<PaintedPatch> patches = new CardReader(shelf, errors).patches(cards);
    Agreement agreement = Agreement.among(ShelfOptics.estimate(shelf), patches);
    Saunderson surface = SurfaceFit.of(shelf, agreement.kept());
    return of(new Shelf(shelf.name(), shelf.paints(), Optional.of(surface)), cards, errors);
  }

  /**
   * What one more card teaches the shelf: every pot and every rung that is measured is one, see
   * {@link TestCard#ofMix}.
   *
   * @throws IllegalArgumentException as {@link #of} does
   */
  public Calibration with(TestCard card) {
    return of(shelf, new CardSet(List.of(card)));
  }

  private static Contradiction contradiction(int card, PaintedPatch patch, ShelfFit fit) {
    Lab measured = patch.measured().lab();
    Lab expected = fit.lab(patch);
    return new Contradiction(card + 1, measured, expected, Ciede2000.deltaE(expected, measured));
  }
}
