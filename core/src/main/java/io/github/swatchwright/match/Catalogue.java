package io.github.swatchwright.match;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.PaintChoice;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.search.Candidate;
import io.github.swatchwright.search.PrunedSearch;
import io.github.swatchwright.search.RecipeSearch;
import io.github.swatchwright.search.Screening;
import io.github.swatchwright.search.SearchSpace;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * Paints that one could buy, and which one of them brings a shelf closest to a list of colours.
 * Immutable, for use from any thread.
 *
 * <p>Every paint of the catalogue gets a glance, the {@value #CANDIDATES} best of them a closer
 * look ({@code search.Screening}); the {@value #FINALISTS} best of these go through the exact
 * search with the shelf. So the figures of what is proposed are exact; a paint that only helps in
 * ways that the looks don't see may be missed.
 */
public final class Catalogue {
  private static final int FINALISTS = 10;
  private static final int MOST_PROPOSED = 5;
  private static final int CANDIDATES = 400;
  private static final int PORTION = 50;

  private final Shelf catalogue;
  private final ShelfOptics shelf;
  private final TristimulusWeights light;
  private final RecipeSearch search;
  private final PaintChoice choice;

  private Catalogue(
      Shelf catalogue,
      ShelfOptics shelf,
      TristimulusWeights light,
      RecipeSearch search,
      PaintChoice choice) {
    this.catalogue = catalogue;
    this.shelf = shelf;
    this.light = light;
    this.search = search;
    this.choice = choice;
  }

  /**
   * A catalogue beside a shelf.
   *
   * @param catalogue the paints that one could buy; those that are on the shelf as well are skipped
   * @param shelf the paints that are there, and the surface that all of them share
   * @param light the light to look under
   */
  public static Catalogue of(Shelf catalogue, ShelfOptics shelf, TristimulusWeights light) {
    return new Catalogue(catalogue, shelf, light, new PrunedSearch(), PaintChoice.ALL);
  }

  /**
   * The same with other paints to mix with; names are those of paints on the shelf.
   *
   * @throws IllegalArgumentException when a named paint isn't on the shelf
   */
  public Catalogue withChoice(PaintChoice paints) {
    return new Catalogue(catalogue, shelf, light, search, paints.on(shelf.shelf()));
  }

  /**
   * Finds the paints that would help most, by the mean ΔE00 of the targets from their nearest
   * recipes.
   *
   * @param targets the wanted colours, at least one
   * @param mostPaints the most paints in a recipe, 1 to 3
   * @param mostDrops the most drops in a recipe, 1 to 40
   * @param count how many paints to propose, 1 to {@value #MOST_PROPOSED}
   * @param control threads, time, cancelling and progress
   * @throws java.util.concurrent.CancellationException when it was stopped
   */
  public Reinforcement best(
      List<Swatch> targets, int mostPaints, int mostDrops, int count, Control control) {
    Require.within("number of targets", targets.size(), 1, 1000);
    Require.within("most paints", mostPaints, 1, 3);
    Require.within("most drops", mostDrops, 1, MatchRequest.LARGEST_DROPS);
    Require.within("count", count, 1, MOST_PROPOSED);
    return control.onOwnThreads(own -> new Run(targets, mostPaints, mostDrops, own).best(count));
  }

  /** A paint that was looked at: what a drop of it brings, and the targets' ΔE00 with it. */
  private static final class Screened {
    private final Paint paint;
    private final double[] absorption = new double[Bands.COUNT];
    private final double[] scattering = new double[Bands.COUNT];
    private final Screening screening;
    private final double sum;

    private Screened(Paint paint, OpticalConstants constants, Screening screening) {
      this.paint = paint;
      this.screening = screening;
      for (int band = 0; band < Bands.COUNT; band++) {
        absorption[band] = constants.k(band) * paint.dropMillilitres();
        scattering[band] = constants.s(band) * paint.dropMillilitres();
      }
      sum = sum(Screening.Look.GLANCE);
    }

    private double sum(Screening.Look look) {
      return screening.sumWith(absorption, scattering, look);
    }
  }

  /** One question. */
  private final class Run {
    private final List<Lab> targets;
    private final int mostPaints;
    private final int mostDrops;
    private final Control control;
    private final Viewing viewing = new Viewing(light, shelf.surface());
    private final Map<Medium, List<PaintOptics>> byMedium = new EnumMap<>(Medium.class);
    private final List<Addition.Nearest> nearest = new ArrayList<>();

    private Run(List<Swatch> targets, int mostPaints, int mostDrops, Control control) {
      this.targets = targets.stream().map(target -> target.labUnder(light)).toList();
      this.mostPaints = mostPaints;
      this.mostDrops = mostDrops;
      this.control = control;
      for (PaintOptics paint : shelf.paints()) {
        if (choice.admits(paint.paint())) {
          byMedium.computeIfAbsent(paint.paint().medium(), medium -> new ArrayList<>()).add(paint);
        }
      }
    }

    private Reinforcement best(int count) {
      List<Reach> without = new ArrayList<>();
      for (Lab target : targets) {
        control.requireGoingOn();
        Addition.Nearest best =
            byMedium.values().stream()
                .map(paints -> nearest(paints, target))
                .min(Comparator.comparingDouble(Addition.Nearest::deltaE00))
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "no paint on the shelf '"
                                + shelf.shelf().name()
                                + "' can be computed with"));
        nearest.add(best);
        without.add(Reach.of(colour(best), target));
      }
      List<Screened> screened = screened();
      List<Addition> additions = new ArrayList<>();
      List<Screened> finalists = finalists(screened);
      for (Screened finalist : finalists) {
        control.requireGoingOn();
        additions.add(addition(finalist.paint));
        control.progress().reached(0.8 + 0.2 * additions.size() / finalists.size());
      }
      additions.sort(Comparator.comparingDouble(Addition::meanDeltaE00));
      return new Reinforcement(
          light.illuminant(),
          targets,
          without,
          additions.subList(0, Math.min(count, additions.size())),
          screened.size());
    }

    private List<Screened> finalists(List<Screened> screened) {
      Map<Screened, Double> closer = new ConcurrentHashMap<>();
      screened.stream()
          .sorted(Comparator.comparingDouble(paint -> paint.sum))
          .limit(CANDIDATES)
          .parallel()
          .forEach(paint -> closer.put(paint, paint.sum(Screening.Look.CLOSE)));
      return screened.stream()
          .filter(closer::containsKey)
          .sorted(Comparator.comparingDouble(closer::get))
          .limit(FINALISTS)
          .toList();
    }

    private Addition.Nearest nearest(List<PaintOptics> paints, Lab target) {
      SearchSpace space = new SearchSpace(paints, viewing, mostPaints, mostDrops);
      Candidate candidate = search.nearest(space, target, 1).get(0);
      return new Addition.Nearest(candidate.recipe(space), candidate.deltaE00());
    }

    private Lab colour(Addition.Nearest found) {
      List<PaintOptics> parts = new ArrayList<>();
      found.recipe().drops().forEach(some -> parts.add(shelf.of(some.paint().name())));
      double[] volumes =
          found.recipe().drops().stream()
              .mapToDouble(some -> some.count() * some.paint().dropMillilitres())
              .toArray();
      return viewing.lab(
          OpticalConstants.mix(
                  parts.stream().map(PaintOptics::constants).toArray(OpticalConstants[]::new),
                  volumes)
              .opaque());
    }

    /** A glance at every paint, in portions, since their covariances would fill the memory. */
    private List<Screened> screened() {
      Set<String> owned = new HashSet<>();
      shelf.shelf().paints().forEach(paint -> owned.add(paint.name()));
      List<Paint> others =
          catalogue.paints().stream()
              .filter(paint -> !owned.contains(paint.name()))
              .filter(paint -> paint.whyNotComputable().isEmpty())
              .filter(choice.withOnly(Set.of())::admits)
              .toList();
      double[] without = nearest.stream().mapToDouble(Addition.Nearest::deltaE00).toArray();
      Map<Medium, Screening> screenings = new EnumMap<>(Medium.class);
      byMedium.forEach(
          (medium, paints) ->
              screenings.put(
                  medium,
                  new Screening(
                      new SearchSpace(paints, viewing, mostPaints, mostDrops), targets, without)));
      List<Screened> screened = new ArrayList<>();
      for (int start = 0; start < others.size(); start += PORTION) {
        control.requireGoingOn();
        List<Paint> portion = others.subList(start, Math.min(start + PORTION, others.size()));
        screened.addAll(
            IntStream.range(0, portion.size())
                .parallel()
                .mapToObj(i -> screen(portion.get(i), screenings))
                .flatMap(Optional::stream)
                .toList());
        control.progress().reached(0.8 * (start + portion.size()) / others.size());
      }
      return screened;
    }

    /** Paints of a medium that the shelf doesn't hold can only stand alone; they are skipped. */
    private Optional<Screened> screen(Paint paint, Map<Medium, Screening> screenings) {
      Screening screening = screenings.get(paint.medium());
      if (screening == null) {
        return Optional.empty();
      }
      return Optional.of(new Screened(paint, estimate(paint).constants(), screening));
    }

    private PaintOptics estimate(Paint paint) {
      Shelf alone = new Shelf("one", List.of(paint), Optional.of(shelf.surface()));
      return ShelfOptics.estimate(alone).of(paint.name());
    }

    private Addition addition(Paint paint) {
      List<PaintOptics> paints = new ArrayList<>(byMedium.getOrDefault(paint.medium(), List.of()));
      paints.add(estimate(paint));
      SearchSpace space = new SearchSpace(paints, viewing, mostPaints, mostDrops);
      return new Addition(
          paint,
          IntStream.range(0, targets.size())
              .parallel()
              .mapToObj(t -> nearer(nearest.get(t), targets.get(t), space))
              .toList());
    }

    /** The nearest recipe, if it is nearer than the one without the paint that was added. */
    private Addition.Nearest nearer(Addition.Nearest without, Lab target, SearchSpace space) {
      Candidate with = search.nearest(space, target, 1).get(0);
      return with.deltaE00() < without.deltaE00()
          ? new Addition.Nearest(with.recipe(space), with.deltaE00())
          : without;
    }
  }
}
