package io.github.swatchwright.calibrate;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.PaintedPatch;
import io.github.swatchwright.estimate.ShelfFit;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.MixPredictor;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Brings a pot to a colour by adding whole drops. The measured pot is a test card first, so that
 * its paints are known better; what the card leaves unexplained is taken for the pot's own.
 */
public final class Corrector {
  /** A pot this near its target is left alone, and the smallest addition that gets there is it. */
  private static final double GOOD = 1;

  /** A pot that can't get this near is better started afresh. */
  private static final double NEAR = 2;

  /** A new pot must be expected to come so much nearer than one that can't be brought near. */
  private static final double WORTH_A_POT = 1;

  private static final int FEWEST_TRIED = 12;
  private static final int SHORTLIST = 10;
  private static final int MOST_ADDED_PAINTS = 3;

  private final ShelfOptics optics;
  private final TristimulusWeights light;

  private final PaintChoice choice;

  private Corrector(ShelfOptics optics, TristimulusWeights light, PaintChoice choice) {
    this.optics = optics;
    this.light = light;
    this.choice = choice;
  }

  /** A corrector for one shelf under one light. */
  public static Corrector of(ShelfOptics optics, TristimulusWeights light) {
    return new Corrector(optics, light, PaintChoice.ALL);
  }

  /**
   * This corrector adding from other paints; what is in the pot already may always be added.
   *
   * @throws IllegalArgumentException when a named paint isn't on the shelf
   */
  public Corrector withChoice(PaintChoice paints) {
    return new Corrector(optics, light, paints.on(optics.shelf()));
  }

  /**
   * Says what to add.
   *
   * @param pot what went into the pot
   * @param measured its colour, dry
   * @param error error of that colour as sd of L*, a* and b*, above 0
   * @param target the wanted colour
   */
  public Correction correct(Mix pot, Swatch measured, double error, Swatch target) {
    Require.positive("error", error);
    Shelf learnt = ShelfFit.of(optics, List.of(card(pot, measured, error))).shelf();
    return new Search(ShelfOptics.estimate(learnt), pot, measured, error, target).run();
  }

  /** The pot as a test card: its drops scatter less the more there are. */
  private static PaintedPatch card(Mix pot, Swatch measured, double error) {
    Map<String, Double> volumes = new LinkedHashMap<>();
    double fewest = Double.POSITIVE_INFINITY;
    for (Mix.Part part : pot.parts()) {
      volumes.put(part.paint().name(), part.millilitres());
      fewest = Math.min(fewest, part.drops());
    }
    double scatter = MixPredictor.USUAL_DROP_SCATTER / Math.sqrt(Math.max(1, fewest));
    return new PaintedPatch(
        volumes, scatter, measured, error, Optional.empty(), OptionalDouble.empty());
  }

  /** One search for additions. */
  private final class Search {
    private final ShelfOptics learnt;
    private final MixPredictor predictor;
    private final Mix pot;
    private final Swatch target;
    private final OpticalConstants potConstants;
    private final double potMillilitres;
    private final double potDrops;
    private final Lab wanted;
    private final double now;
    private final List<PaintOptics> paints;
    private Trial best;

    private Search(ShelfOptics learnt, Mix pot, Swatch measured, double error, Swatch target) {
      this.learnt = learnt;
      this.pot = pot;
      this.target = target;
      predictor = MixPredictor.of(learnt, light);
      potConstants = learnt.asMeasured(predictor.constants(pot), measured, error);
      potMillilitres = pot.parts().stream().mapToDouble(Mix.Part::millilitres).sum();
      potDrops = pot.parts().stream().mapToDouble(Mix.Part::drops).sum();
      wanted = target.labUnder(light);
      now = Ciede2000.deltaE(wanted, measured.labUnder(light));
      paints = learnt.paints().stream().filter(this::mayBeAdded).toList();
      best = trial(List.of());
    }

    private boolean mayBeAdded(PaintOptics optics) {
      Paint paint = optics.paint();
      boolean inPot =
          pot.parts().stream().anyMatch(part -> part.paint().name().equals(paint.name()));
      return paint.medium() == medium() && (inPot || choice.admits(paint));
    }

    private Correction run() {
      if (now > GOOD) {
        List<PaintOptics> shortlist = shortlist(pairable());
        for (int size = 1; size <= MOST_ADDED_PAINTS && best.deltaE00 > GOOD; size++) {
          choose(size == 1 ? paints : shortlist, size, 0, new ArrayList<>());
        }
      }
      List<Correction.Addition> additions = new ArrayList<>();
      for (int i = 1; i <= best.drops.size(); i++) {
        Trial part = trial(best.drops.subList(0, i));
        additions.add(new Correction.Addition(best.drops.get(i - 1), part.lab, part.deltaE00));
      }
      double expected = expectedDeltaE00();
      boolean isFar = best.deltaE00 > NEAR;
      Optional<FreshPot> fresh =
          isFar || best.total() > potDrops
              ? Optional.of(
                  FreshPot.of(learnt, light, target, choice.withMedium(medium()), potMillilitres))
              : Optional.empty();
      boolean afresh =
          fresh
              .filter(
                  other ->
                      isFar
                          ? other.expectedDeltaE00() + WORTH_A_POT <= expected
                          : other.expectedDeltaE00() <= expected
                              && other.recipe().total() < best.total())
              .isPresent();
      return new Correction(
          light.illuminant(), now, additions, best.lab, best.deltaE00, expected, fresh, afresh);
    }

    private Medium medium() {
      return pot.parts().get(0).paint().medium();
    }

    /** As far as the paints' errors and the drops' scatter go, about what was found. */
    private double expectedDeltaE00() {
      Map<String, Double> drops = new LinkedHashMap<>();
      pot.parts().forEach(part -> drops.put(part.paint().name(), part.drops()));
      best.drops.forEach(
          some -> drops.merge(some.paint().name(), (double) some.count(), Double::sum));
      List<Mix.Part> parts = new ArrayList<>();
      drops.forEach((name, count) -> parts.add(new Mix.Part(learnt.shelf().paint(name), count)));
      return predictor.predict(new Mix(parts)).spread().about(best.lab).expectedDeltaE00(wanted);
    }

    private int mostDrops() {
      return (int) Math.max(FEWEST_TRIED, Math.min(60, potDrops));
    }

    /** Each paint with the nearest that any number of its drops comes. */
    private Map<PaintOptics, Double> pairable() {
      Map<PaintOptics, Double> nearest = new LinkedHashMap<>();
      for (PaintOptics paint : paints) {
        double least = Double.POSITIVE_INFINITY;
        for (int count = 1; count <= mostDrops(); count++) {
          Recipe.Drops drops = new Recipe.Drops(paint.paint(), count);
          least = Math.min(least, trial(List.of(drops)).deltaE00);
        }
        nearest.put(paint, least);
      }
      return nearest;
    }

    private List<PaintOptics> shortlist(Map<PaintOptics, Double> nearest) {
      return nearest.entrySet().stream()
          .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
          .limit(SHORTLIST)
          .map(Map.Entry::getKey)
          .toList();
    }

    private void choose(List<PaintOptics> from, int size, int first, List<Recipe.Drops> chosen) {
      if (size == 0) {
        Trial trial = trial(chosen);
        if (trial.isBetterThan(best)) {
          best = trial;
        }
        return;
      }
      int used = chosen.stream().mapToInt(Recipe.Drops::count).sum();
      for (int i = first; i < from.size(); i++) {
        for (int count = 1; count <= mostDrops() - used; count++) {
          chosen.add(new Recipe.Drops(from.get(i).paint(), count));
          choose(from, size - 1, i + 1, chosen);
          chosen.remove(chosen.size() - 1);
        }
      }
    }

    private Trial trial(List<Recipe.Drops> drops) {
      OpticalConstants[] parts = new OpticalConstants[drops.size() + 1];
      double[] volumes = new double[parts.length];
      parts[0] = potConstants;
      volumes[0] = potMillilitres;
      for (int i = 0; i < drops.size(); i++) {
        Recipe.Drops some = drops.get(i);
        parts[i + 1] = predictor.constants(Mix.of(some.paint()));
        volumes[i + 1] = some.count() * some.paint().dropMillilitres();
      }
      Lab lab = predictor.viewing().lab(OpticalConstants.mix(parts, volumes).opaque());
      return new Trial(List.copyOf(drops), lab, Ciede2000.deltaE(wanted, lab));
    }
  }

  /**
   * Drops that might be added.
   *
   * @param drops them
   * @param lab the colour to be expected
   * @param deltaE00 how far it is from the target
   */
  private record Trial(List<Recipe.Drops> drops, Lab lab, double deltaE00) {
    int total() {
      return drops.stream().mapToInt(Recipe.Drops::count).sum();
    }

    /** Nearer; or, among those that are near enough, smaller. */
    boolean isBetterThan(Trial other) {
      if (deltaE00 <= GOOD && other.deltaE00 <= GOOD && total() != other.total()) {
        return total() < other.total();
      }
      return deltaE00 < other.deltaE00;
    }
  }
}
