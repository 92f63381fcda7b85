/**
 * Reflectance spectra and how they become colours: bands, illuminants, observers, tristimulus
 * weights, and the way back from a colour to a smooth reflectance that has it.
 *
 * <p>All spectra lie on one grid, {@link io.github.swatchwright.spectrum.Bands}: 380 to 730 nm,
 * every 10 nm. Reflectances are fractions from 0 to 1. What was measured on another grid comes in
 * through {@link io.github.swatchwright.spectrum.Reflectance#ofMeasured}; bands that were not
 * measured are held at the nearest measured value, never filled with zeros.
 *
 * <pre>{@code
 * ReflectanceRecovery recovery = new ReflectanceRecovery(TristimulusWeights.D65, SurfaceMap.NONE);
 * Reflectance smooth = recovery.recover(Srgb.parse("#8A4B2A").toLab()).seen();
 * Lab underALamp = TristimulusWeights.of(Illuminant.A, Observer.CIE_1931).xyz(smooth).toLab();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.spectrum;

import org.jspecify.annotations.NullMarked;
