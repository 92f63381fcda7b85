/**
 * Ladders: shades in even steps from one end to another, mixed in one pot or each by itself, and
 * how much of an area each pass of them covers.
 */
@NullMarked
package io.github.swatchwright.ladder;

import org.jspecify.annotations.NullMarked;
