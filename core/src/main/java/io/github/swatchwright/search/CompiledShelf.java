package io.github.swatchwright.search;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.spectrum.Bands;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

/**
 * Finds the recipes nearest to a colour, exactly as {@link ExhaustiveSearch} does and a hundred
 * times faster: it skips groups of recipes of which it can prove that none is near enough. It is
 * made once for a {@link SearchSpace} and serves any number of targets. Thread-safe; what it
 * remembers of the paints' mixes grows while it is used, up to a bound, and makes later searches
 * faster without changing what they find.
 *
 * <p><b>Why nothing is missed.</b> In a band, q = K/S of a mix is ΣcᵢKᵢ/ΣcᵢSᵢ, so over a simplex of
 * shares it lies between its values at the corners: with q₀ the largest of them, Σcᵢ(Kᵢ − q₀Sᵢ) ≤ 0
 * at the corners and, being linear, everywhere. The seen reflectance falls with q, so it lies
 * between its values at the corners too; the weights are not negative (those that are, by less than
 * 10⁻³ in all, are taken at their worst), so X, Y and Z of every mix of the cell lie between the
 * sums of the least and of the greatest reflectances. A cell is left out when that box misses the
 * one that {@link io.github.swatchwright.ciede2000.Ciede2000Reach} proves to hold all colours
 * within the limit, or when {@link io.github.swatchwright.ciede2000.Ciede2000Bound} proves that it
 * is beyond. All of it is in single precision, with margins proved in {@link BandTables} and {@link
 * TargetRegion}; only double precision decides what is found. Paints whose K or S per drop is
 * outside 10⁻¹⁵ to 10¹⁵ are searched exhaustively.
 */
public final class CompiledShelf {
  /** The first pass looks for recipes up to this ΔE00. */
  private static final double NEAR = 3;

  /** When that finds too few, pairs up to these ΔE00 are tried, to get a limit for the rest. */
  private static final double[] FAR = {10, 30, Double.POSITIVE_INFINITY};

  /** The most memory for boxes, in bytes; less when this share of the heap is less. */
  private static final long MOST_BYTES = 192L << 20;

  private static final double SHARE_OF_HEAP = 0.375;

  private final SearchSpace space;
  private final double[][] absorption;
  private final double[][] scattering;
  private final int[] order;
  private final BandTables tables;
  private final List<SetsOfSize> sizes = new ArrayList<>();
  private final Queue<TargetMap> idleMaps = new ConcurrentLinkedQueue<>();

  private CompiledShelf(SearchSpace space, long bytes) {
    this.space = space;
    absorption = space.absorptionPerDrop();
    scattering = space.scatteringPerDrop();
    BandTables asOnShelf = new BandTables(space);
    int paints = space.size();
    order = byLuminance(asOnShelf, paints);
    tables = asOnShelf.reordered(order);
    long words = bytes / Long.BYTES;
    int most = Math.min(Math.min(space.mostPaints(), paints), space.mostDrops());
    for (int size = 2; size <= most; size++) {
      SetsOfSize sets = SetsOfSize.of(size, paints, space.mostDrops(), words);
      sizes.add(sets);
      words -= sets.words();
    }
  }

  /** Makes a space ready; most of the work is left to the first search. */
  public static CompiledShelf of(SearchSpace space) {
    double share = SHARE_OF_HEAP * Runtime.getRuntime().maxMemory();
    return of(space, (long) Math.min(MOST_BYTES, share));
  }

  /** The same with at most that much memory for boxes. */
  static CompiledShelf of(SearchSpace space, long bytes) {
    return new CompiledShelf(space, bytes);
  }

  private static int[] byLuminance(BandTables tables, int paints) {
    double[] luminance = new double[paints];
    for (int paint = 0; paint < paints; paint++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        double k = tables.k[paint * Bands.COUNT + band];
        double s = tables.s[paint * Bands.COUNT + band];
        luminance[paint] +=
            tables.weights[1][band] * s / (k + tables.rest * s + Math.sqrt(k * (k + 2 * s)));
      }
    }
    return IntStream.range(0, paints)
        .boxed()
        .sorted(Comparator.comparingDouble(paint -> luminance[paint]))
        .mapToInt(paint -> paint)
        .toArray();
  }

  /** What it takes to remember the boxes. */
  long bytes() {
    return Long.BYTES * sizes.stream().mapToLong(SetsOfSize::words).sum();
  }

  /** The recipes that are searched. */
  public SearchSpace space() {
    return space;
  }

  BandTables tables() {
    return tables;
  }

  /** The index on the shelf of a paint in the order of this search. */
  int onShelf(int place) {
    return order[place];
  }

  /** The most drops that a recipe may hold of an ingredient, by its index on the shelf. */
  int mostOf(int ingredient) {
    return space.mostOf(ingredient);
  }

  MixColour mixColour(Lab target, int paints) {
    return new MixColour(space, absorption, scattering, target, paints);
  }

  /**
   * The nearest recipes, as {@link RecipeSearch#nearest} finds them.
   *
   * @param target the wanted colour, relative to the white of the space's light
   * @param count the most recipes to return, at least 1
   */
  public List<Candidate> nearest(Lab target, int count) {
    return search(new Sought(target, count), Control.PLAIN).candidates();
  }

  /** The nearest recipes, under the caller's control. */
  public SearchOutcome search(Sought sought, Control control) {
    if (!tables.withinRange) {
      return new ExhaustiveSearch().search(space, sought, control);
    }
    BestCandidates best = new BestCandidates(sought);
    TargetMap map = idleMaps.poll();
    if (map == null) {
      map = new TargetMap(sought.target());
    } else {
      map.turnTo(sought.target());
    }
    try (WorkerThreads threads = new WorkerThreads(control.threads())) {
      // A limit from outside is as good as one that a first pass finds.
      double near = Double.isInfinite(sought.upTo()) ? NEAR : sought.upTo();
      SearchOutcome outcome = search(new SearchRun(map, best, control), near, threads);
      idleMaps.add(map);
      return outcome;
    }
  }

  private SearchOutcome search(SearchRun run, double near, WorkerThreads threads) {
    BestCandidates best = run.best;
    offerSingles(run);
    double proven = pass(sizes, near, run, threads);
    if (best.limit() > near && !run.isStopped()) {
      List<SetsOfSize> pairs = sizes.subList(0, Math.min(1, sizes.size()));
      for (int i = 0; i < FAR.length && best.limit() == Double.POSITIVE_INFINITY; i++) {
        pass(pairs, FAR[i], run, threads);
      }
      proven = Math.max(near, pass(sizes, Double.POSITIVE_INFINITY, run, threads));
    }
    if (run.isStopped()) {
      return stopped(best, proven);
    }
    run.finish();
    return SearchOutcome.complete(best.sorted());
  }

  /** Finds all up to a cap in sets of these sizes; returns a ΔE00 below which none was left out. */
  private double pass(List<SetsOfSize> of, double cap, SearchRun run, WorkerThreads threads) {
    run.setCap(cap);
    double recipes = sizes.stream().mapToDouble(SetsOfSize::recipes).sum();
    double proven = Double.POSITIVE_INFINITY;
    for (SetsOfSize sets : of) {
      if (run.stops()) {
        return 0;
      }
      double share = sets.recipes() / recipes;
      proven = Math.min(proven, new SizeSearch(this, sets, run, share).run(threads));
    }
    return proven;
  }

  private static SearchOutcome stopped(BestCandidates best, double proven) {
    List<Candidate> all = best.sorted();
    double found = all.isEmpty() ? Double.POSITIVE_INFINITY : all.get(0).deltaE00();
    return new SearchOutcome(all, false, Math.min(proven, found));
  }

  /** Offers every paint by itself. */
  void offerSingles(SearchRun run) {
    MixColour colour = mixColour(run.target, 1);
    int[] one = {1};
    for (int paint = 0; paint < absorption.length; paint++) {
      colour.add(0, paint, 1);
      double limit = run.best.limit();
      double deltaE00 = colour.deltaE00(limit);
      if (deltaE00 <= limit && deltaE00 < Double.POSITIVE_INFINITY) {
        run.best.offer(new Candidate(new int[] {paint}, one, deltaE00));
      }
    }
  }
}
