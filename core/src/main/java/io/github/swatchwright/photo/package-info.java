/**
 * Colours from photos, each with its error: regions averaged in linear light, and what a grey card
 * or a colour chart in the picture makes of them. Pictures come as rows of pixels with the colour
 * space they are in; decoding files is the caller's.
 */
@NullMarked
package io.github.swatchwright.photo;

import org.jspecify.annotations.NullMarked;
