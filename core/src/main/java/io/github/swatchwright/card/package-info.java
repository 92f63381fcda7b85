/**
 * Results as cards for the workbench: pages of A5 paper, one self-contained HTML page or one SVG
 * picture each, with colours as a screen shows them, drops to count, and every colour told in words
 * beside it. {@code Card.parts()} has the same as data, for a window of one's own; {@code
 * Card.pages()} as shapes, for whatever prints; {@code Speckle.pixels} is a texture.
 *
 * <p>Text only: no scripts, nothing fetched from elsewhere, no desktop classes. All text from
 * outside is escaped in one place, {@code Markup}.
 *
 * <pre>{@code
 * Matcher matcher = Matcher.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
 * Swatch target = new Swatch.OfSrgb(Srgb.parse("#8A4B2A"));
 * String page = Card.of(matcher.match(MatchRequest.of(target))).toHtml();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.card;

import org.jspecify.annotations.NullMarked;
