/**
 * Colour and paint computation for scale modellers: from a wanted colour to paint in a pot.
 *
 * <p>Packages build on each other in one direction: colour, difference, spectrum, optics, paint,
 * mix, and what a painter asks for on top.
 */
module io.github.swatchwright {
  requires com.fasterxml.jackson.core;
  requires commons.math3;
  requires static org.jspecify;

  exports io.github.swatchwright.calibrate;
  exports io.github.swatchwright.card;
  exports io.github.swatchwright.coat;
  exports io.github.swatchwright.colour;
  exports io.github.swatchwright.difference;
  exports io.github.swatchwright.estimate;
  exports io.github.swatchwright.exchange;
  exports io.github.swatchwright.json;
  exports io.github.swatchwright.ladder;
  exports io.github.swatchwright.match;
  exports io.github.swatchwright.mix;
  exports io.github.swatchwright.optics;
  exports io.github.swatchwright.paint;
  exports io.github.swatchwright.photo;
  exports io.github.swatchwright.plan;
  exports io.github.swatchwright.sheet;
  exports io.github.swatchwright.spectrum;
}
