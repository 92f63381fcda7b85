package io.github.swatchwright.ladder;

import io.github.swatchwright.paint.Swatch;

/** See {@link CoverageWish#ofLook}. */
record LookWish(Swatch colour) implements CoverageWish {}
