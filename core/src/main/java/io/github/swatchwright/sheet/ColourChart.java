package io.github.swatchwright.sheet;

import io.github.swatchwright.photo.Chart;

/** See {@link SheetReference#ofChart}. */
record ColourChart(Chart chart) implements SheetReference {}
