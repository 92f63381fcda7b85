/**
 * The exact search for the recipes nearest to a colour. Not exported: {@code match} is its face.
 *
 * <p>{@link io.github.swatchwright.search.ExhaustiveSearch} tries every recipe and says what the
 * right list is; {@link io.github.swatchwright.search.PrunedSearch} gives the same list to the last
 * bit, a hundred times faster.
 */
@NullMarked
package io.github.swatchwright.search;

import org.jspecify.annotations.NullMarked;
