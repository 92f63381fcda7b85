package io.github.swatchwright.ladder;

/** See {@link CoverageWish#FALLING}. */
record FallingWish() implements CoverageWish {}
