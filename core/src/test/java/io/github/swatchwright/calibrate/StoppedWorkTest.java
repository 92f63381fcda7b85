package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.ladder.LadderPlanner;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.match.Catalogue;
import io.github.swatchwright.match.InventedCatalogue;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Work that is stopped: by its condition, by the clock, by interrupting whoever waits for it. */
class StoppedWorkTest {
  private static final TristimulusWeights D65 = TristimulusWeights.D65;
  private static final Shelf DEMO = ShelfJson.parse(DemoShelf.text(), "demo");
  private static final LargeShelf LARGE = LargeShelf.of(60, 100);
  private static final ShelfOptics OPTICS = ShelfOptics.estimate(DEMO);
  private static final List<Swatch> TARGETS = targets();

  /** When the work is stopped: well before any of it is done. */
  private static final long STOPPED_AFTER_MILLIS = 30;

  /**
   * Wanted are 50 ms, which are printed and in core/docs/benchmarks.md. A loaded machine may hold a
   * thread up for longer; work that isn't stopped takes seconds.
   */
  private static final long GENEROUS_MILLIS = 500;

  /** Something long, under a control. */
  @FunctionalInterface
  private interface Work {
    void under(Control control);
  }

  private record Named(String name, Work work) {}

  private static List<Swatch> targets() {
    List<Swatch> targets = new ArrayList<>();
    for (int l = 20; l <= 80; l += 4) {
      for (int a = -40; a <= 40; a += 10) {
        targets.add(new Swatch.OfLab(Lab.ofD65(l, a, 20)));
      }
    }
    return targets;
  }

  private static Stream<Named> throwing() {
    Shelf shelf = InventedCatalogue.of("shelf", 30, 1);
    Catalogue catalogue =
        Catalogue.of(InventedCatalogue.of("more", 200, 500), ShelfOptics.estimate(shelf), D65);
    Shade fresh = new Shade.OfColour(new Swatch.OfLab(Lab.ofD65(62, 30, 45)));
    Shade old = new Shade.OfColour(new Swatch.OfLab(Lab.ofD65(22, 8, 8)));
    return Stream.of(
        new Named("catalogue", control -> catalogue.best(TARGETS, 3, 12, 3, control)),
        new Named(
            "calibrate",
            control -> Calibration.of(LARGE.shelf(), LARGE.cards(), CardErrors.USUAL, control)),
        new Named(
            "card advice",
            control -> CardAdvisor.of(OPTICS, CardErrors.USUAL).forTargets(TARGETS, 5, control)),
        new Named(
            "ladder",
            control ->
                LadderPlanner.of(OPTICS, D65).plan(LadderRequest.between(fresh, old, 10), control)),
        new Named(
            "anything else",
            control ->
                control.onOwnThreads(
                    own ->
                        Matcher.of(OPTICS, D65)
                            .matchAll(
                                TARGETS.stream().map(MatchRequest::of).toList(), Control.PLAIN))));
  }

  @TestFactory
  Stream<DynamicTest> returnsSoonAndSaysThatItWasStopped() {
    return throwing()
        .map(
            named ->
                DynamicTest.dynamicTest(
                    named.name,
                    () -> {
                      long stop = soon();
                      Control control =
                          Control.PLAIN
                              .withThreads(2)
                              .withCancelled(() -> System.nanoTime() - stop >= 0);
                      assertThatThrownBy(() -> named.work.under(control))
                          .isInstanceOf(CancellationException.class)
                          .hasMessage("stopped before it was complete");
                      told(named.name, stop);
                    }));
  }

  @Test
  void matchingReturnsSoonWithWhatItHas() {
    Matcher matcher = Matcher.of(OPTICS, D65);
    matcher.match(MatchRequest.of(TARGETS.get(0)));
    long stop = soon();
    Control control =
        Control.PLAIN.withThreads(2).withCancelled(() -> System.nanoTime() - stop >= 0);
    int found = matcher.matchAll(TARGETS.stream().map(MatchRequest::of).toList(), control).size();
    told("matchAll", stop);
    assertThat(found).isLessThan(TARGETS.size());
  }

  @Test
  void theClockStopsItToo() {
    Control control = Control.PLAIN.withLongest(Duration.ofMillis(STOPPED_AFTER_MILLIS));
    long start = System.nanoTime();
    assertThatThrownBy(
            () -> Calibration.of(LARGE.shelf(), LARGE.cards(), CardErrors.USUAL, control))
        .isInstanceOf(CancellationException.class);
    assertThat((System.nanoTime() - start) / 1_000_000)
        .isLessThan(STOPPED_AFTER_MILLIS + GENEROUS_MILLIS);
  }

  @Test
  void anInterruptedCallerReturnsAndStaysInterrupted() throws InterruptedException {
    AtomicBoolean asWanted = new AtomicBoolean();
    Thread caller =
        new Thread(
            () -> {
              try {
                Calibration.of(
                    LARGE.shelf(), LARGE.cards(), CardErrors.USUAL, Control.PLAIN.withThreads(2));
              } catch (CancellationException e) {
                asWanted.set(Thread.currentThread().isInterrupted());
              }
            });
    caller.start();
    Thread.sleep(STOPPED_AFTER_MILLIS);
    caller.interrupt();
    caller.join(STOPPED_AFTER_MILLIS + GENEROUS_MILLIS);
    assertThat(caller.isAlive()).isFalse();
    assertThat(asWanted).isTrue();
  }

  @Test
  void itLeavesTheCommonPoolAlone() {
    Shelf shelf = InventedCatalogue.of("shelf", 6, 1);
    Shelf more = InventedCatalogue.of("more", 60, 500);
    Catalogue catalogue = Catalogue.of(more, ShelfOptics.estimate(shelf), D65);
    InventedCards invented = new InventedCards(1, 0.05, 0.5);
    List<TestCard> cards = new ArrayList<>();
    for (int amount = 1; amount <= 30; amount++) {
      cards.add(
          invented.painted(
              InventedCards.parts(
                  invented.pigments.get(0).name(), amount, invented.pigments.get(1).name(), 3)));
    }
    ForkJoinPool common = ForkJoinPool.commonPool();
    assertThat(common.awaitQuiescence(10, TimeUnit.SECONDS)).isTrue();
    long before = common.getStealCount();
    Control control = Control.PLAIN.withThreads(2);
    catalogue.best(TARGETS.subList(0, 5), 2, 6, 1, control);
    Calibration.of(invented.shelf(), new CardSet(cards), CardErrors.USUAL, control);
    assertThat(common.getStealCount()).isEqualTo(before);
  }

  @Test
  void aRefusalComesOutAsItWasThrown() {
    assertThatThrownBy(
            () -> CardAdvisor.of(OPTICS, CardErrors.USUAL).forTargets(List.of(), 1, Control.PLAIN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of targets is 0, must be within [1, 1000]");
  }

  private static long soon() {
    return System.nanoTime() + Duration.ofMillis(STOPPED_AFTER_MILLIS).toNanos();
  }

  private static void told(String what, long stop) {
    double millis = (System.nanoTime() - stop) / 1e6;
    System.out.printf(Locale.ROOT, "stopped %s: back after %.1f ms%n", what, millis);
    assertThat(millis).isLessThan(GENEROUS_MILLIS);
  }
}
