package io.github.swatchwright.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Control;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class CompiledShelfTest {
  private static final RandomShelf PAINTS = new RandomShelf(30, 5);
  private static final SearchSpace SPACE = PAINTS.space(3, 10);
  private static final Lab OUT_OF_REACH = Lab.ofD65(60, 90, -80);

  private static List<Lab> targets(int count) {
    List<Lab> targets = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      targets.add(PAINTS.mixedTarget());
    }
    targets.add(OUT_OF_REACH);
    return targets;
  }

  @Test
  void theNumberOfThreadsChangesNothing() {
    for (Lab target : targets(5)) {
      List<Candidate> one = CompiledShelf.of(SPACE).nearest(target, 40);
      for (int threads : new int[] {2, 4, 7}) {
        CompiledShelf shelf = CompiledShelf.of(SPACE);
        Control control = Control.PLAIN.withThreads(threads);
        assertThat(shelf.search(new Sought(target, 40), control).candidates()).isEqualTo(one);
        assertThat(shelf.search(new Sought(target, 40), control).candidates()).isEqualTo(one);
      }
    }
  }

  @Test
  void sixteenThreadsMayUseOneShelfAtOnce() throws Exception {
    List<Lab> targets = targets(16);
    List<List<Candidate>> expected =
        targets.stream().map(target -> CompiledShelf.of(SPACE).nearest(target, 20)).toList();
    CompiledShelf shelf = CompiledShelf.of(SPACE);
    ExecutorService pool = Executors.newFixedThreadPool(16);
    try {
      List<Callable<List<Candidate>>> calls = new ArrayList<>();
      for (int round = 0; round < 8; round++) {
        for (int i = 0; i < targets.size(); i++) {
          Lab target = targets.get(i);
          // Searches of one and of several threads, all on the same shelf.
          Control control = Control.PLAIN.withThreads(1 + (i + round) % 4);
          calls.add(() -> shelf.search(new Sought(target, 20), control).candidates());
        }
      }
      List<Future<List<Candidate>>> found = pool.invokeAll(calls);
      for (int i = 0; i < found.size(); i++) {
        assertThat(found.get(i).get()).isEqualTo(expected.get(i % targets.size()));
      }
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void aBatchGivesEachTargetItsOwnList() {
    List<Lab> targets = targets(10);
    List<Double> shares = Collections.synchronizedList(new ArrayList<>());
    CompiledShelf shelf = CompiledShelf.of(SPACE);
    List<SearchOutcome> heard = new ArrayList<>();
    List<SearchOutcome> outcomes =
        Batch.run(
            targets.size(),
            (target, control) -> shelf.search(new Sought(targets.get(target), 10), control),
            Control.PLAIN.withThreads(3).withProgress(shares::add),
            heard::add);
    for (int i = 0; i < targets.size(); i++) {
      assertThat(outcomes.get(i).complete()).isTrue();
      assertThat(outcomes.get(i).candidates())
          .isEqualTo(CompiledShelf.of(SPACE).nearest(targets.get(i), 10));
    }
    assertThat(shares).isSorted().hasSize(10).last().isEqualTo(1.0);
    assertThat(heard).containsExactlyInAnyOrderElementsOf(outcomes);
  }

  @Test
  void aBatchThatIsStoppedBeginsNoFurtherTarget() {
    List<Integer> begun = Collections.synchronizedList(new ArrayList<>());
    List<Integer> results =
        Batch.run(
            1000,
            (target, control) -> {
              begun.add(target);
              return target;
            },
            Control.PLAIN.withThreads(3).withCancelled(() -> begun.size() >= 20),
            result -> {});
    assertThat(results).isSorted().hasSameElementsAs(begun);
    // Each thread may have begun one while another was counted.
    assertThat(begun.size()).isBetween(20, 23);
    assertThat(Batch.run(0, (target, control) -> target, Control.PLAIN, result -> {})).isEmpty();
  }

  @Test
  void anInterruptStopsASearchLikeACancelWithAnyNumberOfThreads() {
    for (int threads : new int[] {1, 3}) {
      Thread.currentThread().interrupt();
      SearchOutcome outcome =
          CompiledShelf.of(SPACE)
              .search(new Sought(OUT_OF_REACH, 10), Control.PLAIN.withThreads(threads));
      assertThat(Thread.interrupted()).isTrue();
      assertThat(outcome.complete()).isFalse();
      assertThat(outcome.candidates()).hasSize(10);
    }
  }

  @Test
  void aSearchThatIsStoppedAnywhereNeverClaimsTooMuch() {
    for (Lab target : targets(6)) {
      SearchOutcome whole = CompiledShelf.of(SPACE).search(new Sought(target, 10), Control.PLAIN);
      double best = whole.candidates().get(0).deltaE00();
      assertThat(whole.complete()).isTrue();
      assertThat(whole.provenBound()).isEqualTo(best);
      assertThat(whole.gap()).isZero();
      CompiledShelf used = CompiledShelf.of(SPACE);
      int stops = 0;
      for (int asked = 1; asked < 3000; asked += asked / 4 + 1) {
        int most = asked;
        AtomicInteger count = new AtomicInteger();
        Control control =
            Control.PLAIN
                .withThreads(1 + asked % 2)
                .withCancelled(() -> count.incrementAndGet() >= most);
        CompiledShelf shelf = asked % 3 == 0 ? used : CompiledShelf.of(SPACE);
        SearchOutcome outcome = shelf.search(new Sought(target, 10), control);
        assertThat(outcome.provenBound()).isLessThanOrEqualTo(best);
        assertThat(outcome.gap()).isNotNegative();
        if (outcome.complete()) {
          assertThat(outcome.candidates()).isEqualTo(whole.candidates());
        } else {
          stops++;
          assertThat(outcome.candidates()).isSorted();
        }
      }
      assertThat(stops).isPositive();
      assertThat(used.nearest(target, 10)).isEqualTo(whole.candidates());
    }
  }

  @Test
  void aColourOutOfReachIsProvenToBeSoBeforeTheEnd() {
    // Among the stops of the search some come after its first pass, which found nothing near.
    double proven = 0;
    for (int asked = 50; asked < 2000; asked += 50) {
      int most = asked;
      AtomicInteger count = new AtomicInteger();
      SearchOutcome outcome =
          CompiledShelf.of(SPACE)
              .search(
                  new Sought(OUT_OF_REACH, 10),
                  Control.PLAIN.withCancelled(() -> count.incrementAndGet() >= most));
      if (!outcome.complete()) {
        proven = Math.max(proven, outcome.provenBound());
      }
    }
    assertThat(proven).isGreaterThanOrEqualTo(3);
  }

  @Test
  void noTimeGivesTheBestSingleAndNoProof() {
    SearchOutcome outcome =
        CompiledShelf.of(SPACE)
            .search(new Sought(OUT_OF_REACH, 10), Control.PLAIN.withLongest(Duration.ZERO));
    assertThat(outcome.complete()).isFalse();
    assertThat(outcome.provenBound()).isZero();
    assertThat(outcome.candidates()).hasSize(10);
    assertThat(outcome.gap()).isEqualTo(outcome.candidates().get(0).deltaE00());
  }

  @Test
  void progressNeverFallsAndEndsAtOne() {
    List<Double> shares = Collections.synchronizedList(new ArrayList<>());
    Control control = Control.PLAIN.withThreads(2).withProgress(shares::add);
    CompiledShelf.of(SPACE).search(new Sought(OUT_OF_REACH, 10), control);
    assertThat(shares).isSorted().hasSizeGreaterThan(10).last().isEqualTo(1.0);
    assertThat(shares).allMatch(share -> share >= 0 && share <= 1);
  }

  @Test
  void nonsenseIsRefused() {
    CompiledShelf shelf = CompiledShelf.of(SPACE);
    assertThatThrownBy(() -> shelf.nearest(OUT_OF_REACH, 0)).hasMessageContaining("count");
    assertThatThrownBy(() -> Control.PLAIN.withThreads(0)).hasMessageContaining("threads");
    assertThat(Control.PLAIN.withLongest(Duration.ofDays(1000)).longest())
        .isEqualTo(Control.UNLIMITED);
    assertThatThrownBy(() -> Control.PLAIN.withLongest(Duration.ofSeconds(-1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("longest");
  }
}
