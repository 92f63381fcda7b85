package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;

/**
 * Pots for the opaque rungs of a ladder.
 *
 * @param last the last rung, which knows those before
 * @param from the wanted colour of the first end
 * @param to the wanted colour of the last end
 * @param solver what the passes cover
 */
record PlannedPots(PotTrial last, Lab from, Lab to, CoverageSolver solver) {

  PotPaints paints() {
    return last.paints();
  }
}
