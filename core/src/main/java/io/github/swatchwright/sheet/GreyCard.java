package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Require;

/** See {@link SheetReference#ofGreyCard}. */
record GreyCard(double luminance) implements SheetReference {
  /** Refuses what no neutral surface has. */
  GreyCard {
    Require.within("luminance of the grey card in %", luminance, 1, 100);
  }
}
