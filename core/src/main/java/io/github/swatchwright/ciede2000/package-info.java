/**
 * CIEDE2000 from within: its terms without trigonometry, and what it can't be less than over boxes
 * of colours. Not exported; {@code difference.Ciede2000} is for use.
 */
@NullMarked
package io.github.swatchwright.ciede2000;

import org.jspecify.annotations.NullMarked;
