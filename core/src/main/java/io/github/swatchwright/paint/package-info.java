/**
 * What a painter writes down about the paints on a shelf; nothing here is computed.
 *
 * <p>A {@link io.github.swatchwright.paint.Paint} holds the evidence as it was given: a masstone, a
 * figure for hiding, what binds it and what is left in the bottle. The package {@code estimate}
 * works out from it how the paint absorbs and scatters light.
 *
 * <pre>{@code
 * Paint oxide =
 *     Paint.of("Yellow oxide", Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parse("#C48A2C")))
 *         .withMake(Make.SINGLE_PIGMENT)
 *         .withHiding(new Hiding.Coats(3));
 * Shelf bench = Shelf.of("Workbench", List.of(oxide));
 * double millilitres = 5 * bench.paint("yellow oxide").dropMillilitres();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.paint;

import org.jspecify.annotations.NullMarked;
