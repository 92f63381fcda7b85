/**
 * Argument checks that name the argument, its value and the allowed range, and text from outside
 * made fit to be shown. Not exported.
 */
@NullMarked
package io.github.swatchwright.argument;

import org.jspecify.annotations.NullMarked;
