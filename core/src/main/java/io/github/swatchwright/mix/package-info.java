/**
 * Mixes of paints: whole-drop recipes, mixes in any parts, and what they will look like.
 *
 * <p>A prediction is a reflectance, a colour and the spread that the paints' own errors and the
 * scatter of drops give to it.
 */
@NullMarked
package io.github.swatchwright.mix;

import org.jspecify.annotations.NullMarked;
