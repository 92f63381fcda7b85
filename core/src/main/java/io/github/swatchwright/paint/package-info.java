/**
 * Paints and shelves: what a painter owns and knows, and the optical constants that follow from it.
 *
 * <p>A {@link io.github.swatchwright.paint.Paint} holds the evidence as it was given: a masstone, a
 * hiding figure. {@link io.github.swatchwright.paint.ShelfOptics} turns the evidence of a whole
 * shelf into one Gaussian estimate of absorption K(λ) and scattering S(λ) per paint, with its
 * covariance.
 */
@NullMarked
package io.github.swatchwright.paint;

import org.jspecify.annotations.NullMarked;
