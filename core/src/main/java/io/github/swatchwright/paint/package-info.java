/**
 * Paints and shelves: what a painter owns and knows, and the optical constants that follow from it.
 *
 * <p>A {@link io.github.swatchwright.paint.Paint} holds the evidence as it was given: a masstone, a
 * hiding figure. {@link io.github.swatchwright.paint.ShelfOptics} turns the evidence of a whole
 * shelf into one Gaussian estimate of absorption K(λ) and scattering S(λ) per paint, with its
 * covariance.
 *
 * <pre>{@code
 * ShelfOptics optics = ShelfOptics.estimate(shelf);
 * OpticalConstants red = optics.of("Red oxide").constants();
 * double absorbs = red.k(Bands.COUNT / 2);
 * double scatters = red.s(Bands.COUNT / 2);
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.paint;

import org.jspecify.annotations.NullMarked;
