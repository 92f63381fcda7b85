package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;

/** See {@link SheetReference#ofPaper}. */
record PaperWhite(Lab colour) implements SheetReference {
  /** Refuses what isn't white. */
  PaperWhite {
    Require.within("L* of the paper", colour.l(), 70, 100);
  }
}
