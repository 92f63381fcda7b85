package io.github.swatchwright.coat;

import io.github.swatchwright.colour.Lab;

/**
 * One kind of patch of an area that partial coats have broken up, as it is seen close up.
 *
 * @param colour its colour
 * @param share of the area, above 0 to 1
 */
public record SeenPatch(Lab colour, double share) {}
