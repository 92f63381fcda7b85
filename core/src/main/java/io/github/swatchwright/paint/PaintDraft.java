package io.github.swatchwright.paint;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A copy of a paint while something about it is changed. {@link Paint} has fifteen components; this
 * is the one place that hands all of them on, so that each of its {@code with…} methods names only
 * what it changes.
 */
final class PaintDraft {
  String name;
  Medium medium;
  Finish finish;
  Make make;
  Optional<Swatch> masstone;
  Optional<Hiding> hiding;
  Optional<Drawdown> drawdown;
  double dropMillilitres;
  OptionalDouble swatchError;
  Optional<Effect> effect;
  String notes;
  Optional<FittedOptics> optics;
  Bottle bottle;
  Use use;
  boolean thinned;

  PaintDraft(Paint paint) {
    name = paint.name();
    medium = paint.medium();
    finish = paint.finish();
    make = paint.make();
    masstone = paint.masstone();
    hiding = paint.hiding();
    drawdown = paint.drawdown();
    dropMillilitres = paint.dropMillilitres();
    swatchError = paint.swatchError();
    effect = paint.effect();
    notes = paint.notes();
    optics = paint.optics();
    bottle = paint.bottle();
    use = paint.use();
    thinned = paint.thinned();
  }

  /** The changed paint, checked as any other. */
  Paint paint() {
    return new Paint(
        name,
        medium,
        finish,
        make,
        masstone,
        hiding,
        drawdown,
        dropMillilitres,
        swatchError,
        effect,
        notes,
        optics,
        bottle,
        use,
        thinned);
  }
}
