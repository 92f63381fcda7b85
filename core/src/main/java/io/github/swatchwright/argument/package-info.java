/** Argument checks that name the argument, its value and the allowed range. Not exported. */
@NullMarked
package io.github.swatchwright.argument;

import org.jspecify.annotations.NullMarked;
