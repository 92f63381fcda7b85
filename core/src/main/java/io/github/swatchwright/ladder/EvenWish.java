package io.github.swatchwright.ladder;

/** See {@link CoverageWish#EVEN}. */
record EvenWish() implements CoverageWish {}
