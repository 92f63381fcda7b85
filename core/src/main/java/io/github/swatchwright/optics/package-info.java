/**
 * How paint films reflect light: Kubelka–Munk, the surface above them, and mixing by area.
 *
 * <p>Absorption K and scattering S are per unit of thickness, in units in which a typical white
 * scatters with S = 1; a coat is X = {@value io.github.swatchwright.optics.Film#COAT} of them.
 * Everything inside a film is <em>internal</em> reflectance; {@link
 * io.github.swatchwright.optics.Saunderson} leads to what is seen, once, at the top.
 *
 * <pre>{@code
 * double inside = KubelkaMunk.reflectance(0.25);
 * double seen = new Saunderson(0.04, 0.4).seen(inside);
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.optics;

import org.jspecify.annotations.NullMarked;
