/**
 * Test cards: painted patches with a known recipe and a measured colour, the best evidence there is
 * of how paints mix.
 *
 * <pre>{@code
 * Swatch measured = new Swatch.OfSrgb(Srgb.parse("#C48371"));
 * TestCard card = TestCard.ofMix(Mix.parse("Titanium white:5, Red oxide:1", shelf), measured);
 * Calibration calibration = Calibration.of(shelf, new CardSet(List.of(card)));
 * Shelf better = calibration.shelf();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.calibrate;

import org.jspecify.annotations.NullMarked;
