/**
 * From what is known of the paints on a shelf to their K(λ) and S(λ), with the error of both.
 *
 * <p>All the evidence there is enters one estimate: swatches, hiding figures, test cards. Its
 * result is a {@link io.github.swatchwright.estimate.ShelfOptics}, a Gaussian over absorption and
 * scattering in every band, and everything that computes with paint begins there.
 *
 * <pre>{@code
 * ShelfOptics optics = ShelfOptics.estimate(shelf);
 * OpticalConstants red = optics.of("Red oxide").constants();
 * double absorbs = red.k(Bands.COUNT / 2);
 * double scatters = red.s(Bands.COUNT / 2);
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.estimate;

import org.jspecify.annotations.NullMarked;
