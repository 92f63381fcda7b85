/**
 * Test cards: painted patches with a known recipe and a measured colour, the best evidence there is
 * of how paints mix.
 */
@NullMarked
package io.github.swatchwright.calibrate;

import org.jspecify.annotations.NullMarked;
