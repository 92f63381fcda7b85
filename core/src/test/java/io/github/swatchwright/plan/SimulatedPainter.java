package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.PaintedArea;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;

/**
 * Paints a plan as a person does: drops scatter by 8 %, coats vary by 15 %, each bottle is by ln sd
 * 0.15 stronger or weaker than the shelf says, and the first mixed base is wrong: it gets three
 * times as much of its last paint.
 */
final class SimulatedPainter {
  private static final double DROP_SCATTER = 0.08;
  private static final double COAT_SCATTER = 0.15;
  private static final double STRENGTH = 0.15;
  private static final double MEASURED_SD = 1;
  private static final double TOO_MUCH = 3;

  private final ShelfOptics optics;
  private final Random random;
  private final Map<String, Double> strength = new LinkedHashMap<>();
  private final Map<String, PaintedArea> areas = new LinkedHashMap<>();
  private boolean potIsToGoWrong = true;

  SimulatedPainter(ShelfOptics optics, Project project, long seed) {
    this.optics = optics;
    random = new Random(seed);
    optics.paints().forEach(p -> strength.put(p.paint().name(), Math.exp(STRENGTH * normal())));
    for (ProjectArea area : project.areas()) {
      Lab bare = ((Base.OfSwatch) area.bare()).swatch().lab();
      double[] internal = new double[Bands.COUNT];
      // Bare plastic is under every coat that hides; a flat grey of its lightness will do.
      Arrays.fill(internal, optics.surface().internal(bare.toXyz().y() / 100));
      areas.put(area.name(), PaintedArea.of(internal));
    }
  }

  private double normal() {
    return Math.max(-2.5, Math.min(2.5, random.nextGaussian()));
  }

  void paint(PlanStep step) {
    for (Coat coat : step.work().coats()) {
      double sd = COAT_SCATTER / Math.sqrt(Math.max(1, coat.coats()));
      double factor = 1 + sd * normal();
      if (!coat.isVarnish()) {
        Mix mix = step.work().pot().orElse(coat.mix());
        boolean wrong = potIsToGoWrong && step.kind() == StepKind.BASE && mix.parts().size() > 1;
        OpticalConstants constants = mixed(mix, wrong);
        areas.computeIfPresent(
            step.area(),
            (name, area) -> area.under(constants, coat.thickness() * factor, coat.coverage()));
        potIsToGoWrong &= !wrong;
      }
    }
  }

  private OpticalConstants mixed(Mix mix, boolean wrong) {
    List<Mix.Part> parts = mix.parts();
    OpticalConstants[] constants = new OpticalConstants[parts.size()];
    double[] volumes = new double[constants.length];
    for (int i = 0; i < constants.length; i++) {
      String name = parts.get(i).paint().name();
      OpticalConstants own = optics.of(name).constants();
      double strong = Objects.requireNonNull(strength.get(name));
      double[] k = new double[Bands.COUNT];
      double[] s = new double[Bands.COUNT];
      for (int band = 0; band < k.length; band++) {
        k[band] = own.k(band) * strong;
        s[band] = own.s(band) * strong;
      }
      constants[i] = OpticalConstants.of(k, s);
      double drops = parts.get(i).drops();
      double poured = 1 + DROP_SCATTER / Math.sqrt(Math.max(1, drops)) * normal();
      boolean tooMuch = wrong && i == constants.length - 1;
      volumes[i] = parts.get(i).millilitres() * poured * (tooMuch ? TOO_MUCH : 1);
    }
    return OpticalConstants.mix(constants, volumes);
  }

  Lab colour(String area) {
    double[] seen = Objects.requireNonNull(areas.get(area)).seen(optics.surface()::seen);
    return TristimulusWeights.D65.xyz(seen).toLab();
  }

  /** The colour as a meter of that error tells it. */
  Optional<Done.Measured> measured(String area) {
    Lab lab = colour(area);
    Lab off =
        Lab.ofD65(
            Math.max(0, Math.min(100, lab.l() + MEASURED_SD * normal())),
            lab.a() + MEASURED_SD * normal(),
            lab.b() + MEASURED_SD * normal());
    return Optional.of(new Done.Measured(new Swatch.OfLab(off), MEASURED_SD));
  }
}
