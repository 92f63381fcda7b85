/**
 * Colours as numbers: encoded and linear sRGB, Display P3, CIE XYZ and xyY, CIELAB and LCh, Oklab
 * and Oklch.
 *
 * <p>Every device-independent value carries the white point it is relative to, so that a D50 colour
 * can't be taken for a D65 one. XYZ is on the CIE's scale, where a perfect diffuser has Y = 100;
 * RGB channels run from 0 to 1 and may lie outside it: only {@link
 * io.github.swatchwright.colour.GamutPolicy} brings a colour back into a display's range, and only
 * when asked.
 *
 * <p>Left out are CIECAM16, since nobody at a bench knows the adapting luminance that it asks for,
 * CIELUV, which paints are no longer measured in, and HSL, which is a display's and not the eye's:
 * use Oklch for sliders.
 *
 * <p>D65 here is the chromaticity (0.3127, 0.3290) of IEC 61966-2-1 and CSS Color 4 throughout, so
 * that sRGB white is CIELAB (100, 0, 0) to the last digit.
 *
 * <pre>{@code
 * Lab rust = Srgb.parse("#8A4B2A").toLab();
 * Lab printed = rust.adaptTo(WhitePoint.D50);
 * Srgb shown = new Lab(60, 90, 20, WhitePoint.D65).toSrgb().fit(GamutPolicy.REDUCE_CHROMA);
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.colour;

import org.jspecify.annotations.NullMarked;
