/**
 * Colour and paint computation for scale modellers: from a wanted colour to paint in a pot.
 *
 * <p>Packages build on each other in one direction: colour, difference, spectrum, optics, paint,
 * mix, and what a painter asks for on top.
 */
module io.github.swatchwright {
  requires static org.jspecify;

  exports io.github.swatchwright.colour;
  exports io.github.swatchwright.spectrum;
  exports io.github.swatchwright.difference;
}
