package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.AreaCoverage;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** How much each pass covers so that the wish of a request comes true. */
final class CoverageSolver {
  private final LadderRequest request;
  private final List<Lab> shades;

  /**
   * A solver.
   *
   * @param request what is wished for
   * @param shades the colours of its shades, in their order
   */
  CoverageSolver(LadderRequest request, List<Lab> shades) {
    this.request = request;
    this.shades = shades;
  }

  /**
   * The coverages of the opaque passes and then of the washes.
   *
   * @param rungs colours of the opaque rungs
   * @param parts the same with all washes over them, under full washes' coverages, the base first
   *     when there is one
   * @param wantedLook the wanted average, which only a wish for one needs
   */
  double[] coverages(List<Lab> rungs, List<Lab> parts, Lab wantedLook) {
    if (request.coverage() instanceof ShadesWish ofShades) {
      return withWashes(overBase(allotted(array(ofShades.shares()), rungs)));
    }
    if (request.coverage() instanceof LookWish) {
      return withWashes(averaging(parts, wantedLook));
    }
    return whateverTheColours();
  }

  /** Coverages that don't depend on the shades; falling ones where the wish leaves them open. */
  private double[] whateverTheColours() {
    CoverageWish wish = request.coverage();
    if (wish instanceof PassesWish passes) {
      return array(passes.coverages());
    }
    if (wish instanceof SharesWish shares) {
      return AreaCoverage.coveragesFor(overBase(array(shares.shares())));
    }
    return AreaCoverage.coveragesFor(
        wish instanceof EvenWish
            ? weighted(place -> 1)
            : weighted(place -> request.rungs() + 1.0 - place));
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Coverages of the washes. */
  double[] washes() {
    return Arrays.copyOfRange(whateverTheColours(), opaque(), request.rungs());
  }

  private int opaque() {
    return request.rungs() - request.washes().size();
  }

  private double[] withWashes(double[] visible) {
    double[] opaque = AreaCoverage.coveragesFor(visible);
    double[] all = Arrays.copyOf(opaque, request.rungs());
    double[] washes = washes();
    System.arraycopy(washes, 0, all, opaque.length, washes.length);
    return all;
  }

  /** Shares in proportion to weights by place: 0 for the base, 1 for the first rung. */
  private double[] weighted(IntToDoubleFunction weight) {
    double[] shares = new double[request.rungs() + 1];
    for (int place = request.base().isPresent() ? 0 : 1; place < shares.length; place++) {
      shares[place] = weight.applyAsDouble(place);
    }
    return scaled(shares);
  }

  private static double[] scaled(double[] weights) {
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(w -> w / sum).toArray();
  }

  /** Shares of the rungs with the base's share, which is the rest, before them. */
  private static double[] overBase(double[] shares) {
    double[] all = new double[shares.length + 1];
    System.arraycopy(shares, 0, all, 1, shares.length);
    all[0] = Math.max(0, 1 - Arrays.stream(shares).sum());
    return scaled(all);
  }

  /**
   * Each shade's share goes to the nearest rung and its nearer neighbour, more to the nearer one.
   */
  private double[] allotted(double[] shares, List<Lab> rungs) {
    double[] scaled = scaled(shares);
    double[] visible = new double[rungs.size()];
    for (int shade = 0; shade < scaled.length; shade++) {
      Lab colour = shades.get(shade);
      double[] distance =
          rungs.stream().mapToDouble(rung -> Ciede2000.deltaE(colour, rung)).toArray();
      int nearest = nearest(distance, IntStream.range(0, rungs.size()));
      int next =
          nearest(
              distance,
              IntStream.of(nearest - 1, nearest + 1).filter(i -> i >= 0 && i < rungs.size()));
      double both = distance[nearest] + distance[next];
      double toNext = both > 0 ? distance[nearest] / both : 0;
      visible[nearest] += (1 - toNext) * scaled[shade];
      visible[next] += toNext * scaled[shade];
    }
    return visible;
  }

  private static int nearest(double[] distance, IntStream among) {
    return among.boxed().min((i, j) -> Double.compare(distance[i], distance[j])).orElseThrow();
  }

  private double[] averaging(List<Lab> parts, Lab wanted) {
    int base = request.base().isPresent() ? 1 : 0;
    double[] usual = new double[parts.size()];
    Arrays.setAll(usual, i -> parts.size() - i);
    double[] shares =
        request.subject().isPresent()
            ? FallingShares.nearest(parts, base, wanted, scaled(usual))
            : NearestAverage.shares(parts, wanted, scaled(usual));
    double[] visible = new double[opaque() + 1];
    System.arraycopy(shares, 0, visible, 1 - base, shares.length);
    return scaled(visible);
  }
}
