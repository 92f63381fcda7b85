/**
 * Colour and paint computation for scale modellers: from a wanted colour to paint in a pot.
 *
 * <p>Packages build on each other in one direction: colour, difference, spectrum, optics, paint,
 * mix, and what a painter asks for on top.
 */
module io.github.swatchwright {
  requires static org.jspecify;
  requires commons.math3;

  exports io.github.swatchwright.colour;
  exports io.github.swatchwright.difference;
  exports io.github.swatchwright.match;
  exports io.github.swatchwright.mix;
  exports io.github.swatchwright.optics;
  exports io.github.swatchwright.paint;
  exports io.github.swatchwright.spectrum;
}
