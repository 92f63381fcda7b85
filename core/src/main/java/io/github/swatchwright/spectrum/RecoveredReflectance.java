package io.github.swatchwright.spectrum;

import io.github.swatchwright.colour.Xyz;

/**
 * A smooth reflectance worked out from a colour.
 *
 * @param seen the reflectance as seen, through the surface
 * @param internal the reflectance inside, under the surface; above 0 and below 1 at every band
 * @param colour the colour that {@code seen} has, under the light it was recovered for
 * @param attainable whether that is the colour asked for, up to {@link
 *     ReflectanceRecovery#ATTAINED_WITHIN}; when false it is the nearest there is
 */
public record RecoveredReflectance(
    Reflectance seen, Reflectance internal, Xyz colour, boolean attainable) {}
