package io.github.swatchwright.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.ExhaustiveSearch;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CatalogueTest {
  private static final TristimulusWeights D65 = TristimulusWeights.D65;
  private static final int DROPS = 8;
  private static final int TRIALS = 10;

  private static Reinforcement best(Shelf catalogue, Shelf shelf, List<Swatch> targets) {
    return Catalogue.of(catalogue, ShelfOptics.estimate(shelf), D65)
        .best(targets, 3, DROPS, 3, Control.PLAIN);
  }

  /** A second way: the exact search with every paint of the catalogue, one after another. */
  private static List<Addition> byTryingAll(Shelf catalogue, Shelf shelf, List<Swatch> targets) {
    List<Addition> all = new ArrayList<>();
    for (Paint paint : catalogue.paints()) {
      List<Paint> more = new ArrayList<>(shelf.paints());
      more.add(paint);
      ShelfOptics optics =
          ShelfOptics.estimate(
              new Shelf("more", more, Optional.of(ShelfOptics.estimate(shelf).surface())));
      SearchSpace space =
          new SearchSpace(optics.paints(), new Viewing(D65, optics.surface()), 3, DROPS);
      List<Addition.Nearest> nearest = new ArrayList<>();
      for (Swatch target : targets) {
        Candidate found = new ExhaustiveSearch().nearest(space, target.labUnder(D65), 1).get(0);
        nearest.add(new Addition.Nearest(found.recipe(space), found.deltaE00()));
      }
      all.add(new Addition(paint, nearest));
    }
    all.sort(Comparator.comparingDouble(Addition::meanDeltaE00));
    return all;
  }

  /** Without mirror reflection, since a dark paint more would lower it for the whole shelf. */
  private static Shelf stated(Shelf shelf) {
    return new Shelf(shelf.name(), shelf.paints(), Optional.of(new Saunderson(0, 0.4)));
  }

  @Test
  void noPaintIsMuchBetterThanTheProposedOne() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Shelf shelf = stated(InventedCatalogue.of("shelf", 6, 1 + 20L * trial));
      Shelf catalogue = stated(InventedCatalogue.of("catalogue", 50, 1001 + 20L * trial));
      List<Swatch> targets = InventedCatalogue.targets(shelf, catalogue, 6, trial);
      Reinforcement found = best(catalogue, shelf, targets);
      List<Addition> all = byTryingAll(catalogue, shelf, targets);
      Addition proposed = found.additions().get(0);
      int place = all.stream().map(a -> a.paint().name()).toList().indexOf(proposed.paint().name());
      // What is said of the proposed paint is exact, whatever its place.
      assertThat(proposed.meanDeltaE00()).isCloseTo(all.get(place).meanDeltaE00(), within(1e-9));
      // A tenth of a ΔE00 is nothing that anyone sees; the looks don't part paints nearer than
      // that.
      assertThat(proposed.meanDeltaE00()).isLessThan(all.get(0).meanDeltaE00() + 0.1);
      System.out.printf(
          Locale.ROOT,
          "additional paint: without %.2f, proposed %.2f (place %d of %d), best %.2f%n",
          found.withoutIt().stream().mapToDouble(Reach::nearestDeltaE00).average().orElseThrow(),
          proposed.meanDeltaE00(),
          place + 1,
          found.tried(),
          all.get(0).meanDeltaE00());
    }
  }

  @Test
  void whatIsOnTheShelfOrCannotBeMixedIsNotTried() {
    Shelf shelf = InventedCatalogue.of("shelf", 6, 1);
    List<Paint> offered = new ArrayList<>(shelf.paints());
    Swatch grey = new Swatch.OfLab(Lab.ofD65(50, 0, 0));
    offered.add(Paint.of("Oil grey", Medium.OIL, grey));
    Shelf more = InventedCatalogue.of("more", 1, 500);
    offered.add(more.paints().get(0));
    List<Double> heard = new ArrayList<>();
    Reinforcement found =
        Catalogue.of(Shelf.of("offered", offered), ShelfOptics.estimate(shelf), D65)
            .best(
                InventedCatalogue.targets(shelf, more, 3, 1),
                2,
                DROPS,
                5,
                Control.PLAIN.withProgress(heard::add));
    assertThat(found.tried()).isEqualTo(1);
    assertThat(found.additions()).hasSize(1);
    assertThat(found.targets()).hasSize(3);
    for (int t = 0; t < 3; t++) {
      assertThat(found.additions().get(0).nearest().get(t).deltaE00())
          .isLessThanOrEqualTo(found.withoutIt().get(t).nearestDeltaE00() + 1e-9);
    }
    assertThat(heard).isSorted().last().isEqualTo(1.0);
  }

  @Test
  void impossibleQuestionsAreRefused() {
    Shelf shelf = InventedCatalogue.of("shelf", 3, 1);
    Catalogue catalogue = Catalogue.of(shelf, ShelfOptics.estimate(shelf), D65);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> catalogue.best(List.of(), 3, 12, 3, Control.PLAIN))
        .withMessage("number of targets is 0, must be within [1, 1000]");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                catalogue.best(
                    List.of(new Swatch.OfLab(Lab.ofD65(50, 0, 0))), 4, 12, 3, Control.PLAIN))
        .withMessage("most paints is 4, must be within [1, 3]");
  }
}
