package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.PaintOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The list has to be that of {@link ExhaustiveSearch}, in drops, order and every bit of ΔE00. */
class PrunedSearchTest {
  private static final List<TristimulusWeights> LIGHTS =
      Illuminant.NAMED.stream()
          .map(light -> TristimulusWeights.of(light, Observer.CIE_1931))
          .toList();

  private final RandomShelf pool = new RandomShelf(120, 1);

  /** 6 to 14 paints, sometimes one of them twice, and any options. */
  private SearchSpace space(Random random) {
    List<PaintOptics> paints = new ArrayList<>();
    int size = 6 + random.nextInt(9);
    random
        .ints(0, pool.paints().size())
        .distinct()
        .limit(size)
        .forEach(i -> paints.add(pool.paints().get(i)));
    if (random.nextInt(4) == 0) {
      paints.set(size - 1, paints.get(0));
    }
    int mostPaints = 1 + random.nextInt(4);
    // Four paints of many, in many drops, would take the exhaustive search too long.
    int mostDrops = 1 + random.nextInt(mostPaints < 4 ? 15 : 21 - size);
    List<Integer> mostOf = new ArrayList<>();
    boolean scarce = random.nextInt(3) == 0;
    for (int i = 0; i < size; i++) {
      mostOf.add(scarce ? 1 + random.nextInt(mostDrops) : mostDrops);
    }
    Saunderson surface =
        random.nextInt(4) == 0
            ? new Saunderson(0.04 * random.nextDouble(), 0.6 * random.nextDouble())
            : pool.predictor().viewing().surface();
    Viewing viewing = new Viewing(LIGHTS.get(random.nextInt(LIGHTS.size())), surface);
    return new SearchSpace(paints, List.of(), mostOf, viewing, mostPaints, mostDrops);
  }

  /** Colours in and out of reach: anywhere, black, white, and beyond any surface's. */
  private static Lab target(Random random, SearchSpace space) {
    Lab anywhere =
        new Lab(
            100 * random.nextDouble(),
            -60 + 120 * random.nextDouble(),
            -60 + 120 * random.nextDouble(),
            space.viewing().weights().whitePoint());
    return switch (random.nextInt(10)) {
      case 0 -> new Lab(0, 0, 0, anywhere.white());
      case 1 -> new Lab(100, 0, 0, anywhere.white());
      case 2 -> new Lab(anywhere.l(), 4 * anywhere.a(), 4 * anywhere.b(), anywhere.white());
      case 3, 4 -> new Lab(anywhere.l(), anywhere.a() / 8, anywhere.b() / 8, anywhere.white());
      default -> anywhere;
    };
  }

  @Test
  void aThousandSmallShelvesGiveTheExhaustiveList() {
    for (int seed = 0; seed < 1000; seed++) {
      Random random = new Random(seed);
      SearchSpace space = space(random);
      Lab target = target(random, space);
      int count = random.nextInt(3) == 0 ? 1 + random.nextInt(150) : 10;
      List<Candidate> exhaustive = new ExhaustiveSearch().nearest(space, target, count);
      CompiledShelf shelf = CompiledShelf.of(space);
      assertThat(shelf.nearest(target, count)).as("seed %d", seed).isEqualTo(exhaustive);
      assertThat(shelf.nearest(target, count)).as("seed %d again", seed).isEqualTo(exhaustive);
      double upTo = exhaustive.get(random.nextInt(exhaustive.size())).deltaE00();
      assertThat(shelf.search(new Sought(target, count, upTo), Control.PLAIN).candidates())
          .as("seed %d up to %s", seed, upTo)
          .isEqualTo(exhaustive.stream().filter(each -> each.deltaE00() <= upTo).toList());
    }
  }

  /** From no boxes at all to a few for each set, which are found out little by little. */
  @Test
  void littleMemoryGivesTheExhaustiveListTimeAfterTime() {
    RandomShelf few = new RandomShelf(14, 4);
    SearchSpace space = few.space(3, 15);
    List<Lab> targets = new ArrayList<>();
    List<List<Candidate>> exhaustive = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      targets.add(few.mixedTarget());
      exhaustive.add(new ExhaustiveSearch().nearest(space, targets.get(i), 40));
    }
    List<Long> used = new ArrayList<>();
    for (long bytes : new long[] {0, 1_000, 8_000, 16_000, 32_000, 200_000}) {
      CompiledShelf shelf = CompiledShelf.of(space, bytes);
      assertThat(shelf.bytes()).isLessThanOrEqualTo(bytes);
      used.add(shelf.bytes());
      for (int round = 0; round < 4; round++) {
        for (int i = 0; i < targets.size(); i++) {
          assertThat(shelf.nearest(targets.get(i), 40))
              .as("%d bytes, target %d, round %d", bytes, i, round)
              .isEqualTo(exhaustive.get(i));
        }
      }
    }
    assertThat(used).doesNotHaveDuplicates();
  }

  @Test
  void whatOneTargetLeavesBehindDoesNotChangeTheNextOnesList() {
    CompiledShelf shelf = CompiledShelf.of(pool.space(2, 12));
    for (int i = 0; i < 20; i++) {
      Lab target = pool.mixedTarget();
      assertThat(shelf.nearest(target, 60))
          .isEqualTo(new ExhaustiveSearch().nearest(shelf.space(), target, 60));
    }
  }

  @Test
  void sixtyPaintsGiveTheExhaustiveList() {
    RandomShelf sixty = new RandomShelf(60, 2);
    PrunedSearch search = new PrunedSearch();
    SearchSpace space = sixty.space(3, 10);
    Random random = new Random(60);
    List<Lab> targets = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      targets.add(i % 3 == 0 ? target(random, space) : sixty.mixedTarget());
    }
    targets.parallelStream()
        .forEach(
            target ->
                assertThat(search.nearest(space, target, 10))
                    .as("%s", target)
                    .isEqualTo(new ExhaustiveSearch().nearest(space, target, 10)));
  }

  @Test
  void spacesAreRememberedButNotWithoutEnd() {
    PrunedSearch search = new PrunedSearch();
    CompiledShelf first = search.compiled(pool.space(2, 2));
    assertThat(search.compiled(pool.space(2, 2))).isSameAs(first);
    for (int drops = 3; drops <= 40; drops++) {
      search.compiled(
          new SearchSpace(pool.paints().subList(0, 3), first.space().viewing(), 2, drops));
    }
    assertThat(search.compiled(pool.space(2, 2))).isNotSameAs(first);
  }
}
