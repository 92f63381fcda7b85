package io.github.swatchwright.coat;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A base and coats with all numbers filled in, and the same with one of the numbers disturbed: what
 * first-order propagation of errors needs.
 */
final class CoatStack {
  private final Map<String, OpticalConstants> paints;
  private final Ground ground;
  private final List<Coat> coats;
  private final double[] thickness;
  private final ShelfOptics optics;
  private final Saunderson surface;

  /**
   * A stack with all its numbers.
   *
   * @param paints the constants of every paint in it, by name
   * @param ground the base
   * @param coats the coats, lowest first
   * @param thickness a factor to each coat's thickness
   * @param optics where the paints come from
   * @param surface what all is seen through
   */
  private CoatStack(
      Map<String, OpticalConstants> paints,
      Ground ground,
      List<Coat> coats,
      double[] thickness,
      ShelfOptics optics,
      Saunderson surface) {
    this.paints = paints;
    this.ground = ground;
    this.coats = coats;
    this.thickness = thickness;
    this.optics = optics;
    this.surface = surface;
  }

  /**
   * Coats as they are meant to be.
   *
   * @throws IllegalArgumentException when a paint isn't on the shelf or can't be computed with
   */
  static CoatStack of(ShelfOptics optics, Ground ground, List<Coat> coats) {
    Map<String, OpticalConstants> paints = new LinkedHashMap<>();
    Stream.concat(
            ground.mix().stream(), coats.stream().filter(coat -> !coat.isVarnish()).map(Coat::mix))
        .flatMap(mix -> mix.parts().stream())
        .map(part -> part.paint().name())
        .forEach(name -> paints.put(optics.of(name).paint().name(), optics.of(name).constants()));
    double[] thickness = new double[coats.size()];
    Arrays.fill(thickness, 1);
    return new CoatStack(paints, ground, coats, thickness, optics, optics.surface());
  }

  OpticalConstants constants(Mix mix) {
    List<Mix.Part> parts = mix.parts();
    return OpticalConstants.mix(
        parts.stream()
            .map(part -> optics.of(part.paint().name()).paint().name())
            .map(paints::get)
            .toArray(OpticalConstants[]::new),
        parts.stream().mapToDouble(Mix.Part::millilitres).toArray());
  }

  /** The area before the first coat, and after each. */
  List<PaintedArea> areas() {
    PaintedArea area = PaintedArea.of(ground.internal(this::constants));
    List<PaintedArea> areas = new ArrayList<>(List.of(area));
    for (int i = 0; i < coats.size(); i++) {
      Coat coat = coats.get(i);
      if (!coat.isVarnish()) {
        area = area.under(constants(coat.mix()), coat.thickness() * thickness[i], coat.coverage());
      }
      areas.add(area);
    }
    return areas;
  }

  /** The names of the paints in it. */
  Set<String> paints() {
    return paints.keySet();
  }

  /** Where the paints come from. */
  ShelfOptics optics() {
    return optics;
  }

  /** What all is seen through. */
  Saunderson surface() {
    return surface;
  }

  /**
   * The same if all swatches had been seen through {@link ShelfOptics#otherSurface}, and it is now.
   *
   * @param other that surface
   * @param groundUnderIt the base, as it is inside it
   */
  CoatStack under(Saunderson other, Ground groundUnderIt) {
    Map<String, OpticalConstants> all = new LinkedHashMap<>();
    paints.keySet().forEach(name -> all.put(name, optics.underOtherSurface(name)));
    return new CoatStack(all, groundUnderIt, coats, thickness, optics, other);
  }

  /** The same with a paint's constants changed. */
  CoatStack withPaint(String name, OpticalConstants changed) {
    Map<String, OpticalConstants> all = new LinkedHashMap<>(paints);
    all.put(name, changed);
    return new CoatStack(all, ground, coats, thickness, optics, surface);
  }

  private CoatStack withGround(Ground changed) {
    return new CoatStack(paints, changed, coats, thickness, optics, surface);
  }

  private CoatStack withThickness(int coat, double factor) {
    double[] all = thickness.clone();
    all[coat] = factor;
    return new CoatStack(paints, ground, coats, all, optics, surface);
  }

  /** All causes of error: the paints, the base's colour, and the thickness of each coat. */
  List<Disturbance> disturbances(double coatScatter) {
    List<Disturbance> all = new ArrayList<>();
    if (!paints.isEmpty()) {
      all.add(new PaintErrors(this));
    }
    ground.deviations().forEach(off -> all.add(new Disturbance.Shift(withGround(off), 1)));
    double step = Disturbance.STEP;
    for (int i = 0; i < coats.size(); i++) {
      double sd = coatScatter / Math.sqrt(Math.max(1, coats.get(i).coats()));
      all.add(new Disturbance.Shift(withThickness(i, 1 + step), sd / step));
    }
    return all;
  }
}
