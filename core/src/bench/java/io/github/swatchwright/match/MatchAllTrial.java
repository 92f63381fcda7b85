package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;

/**
 * Prints how long 1,000 colours take on the demo shelf, asked in three ways by turns: from the
 * first to the last, and the time that the busiest thread was at work, which other programs on the
 * machine leave as it is.
 */
final class MatchAllTrial {
  private static final int TARGETS = 1000;
  private static final int ROUNDS = 2;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private MatchAllTrial() {}

  public static void main(String[] args) {
    Shelf shelf = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
    ShelfOptics optics = ShelfOptics.estimate(shelf);
    List<MatchRequest> requests = requests();
    for (int round = 1; round <= ROUNDS; round++) {
      for (int threads = 1; threads <= 2; threads++) {
        Control control = Control.PLAIN.withThreads(threads);
        told(
            "matchAll, threads: " + threads,
            optics,
            (matcher, done) -> matcher.matchAll(requests, control, result -> done.run()));
      }
      told(
          "parallel stream over match",
          optics,
          (matcher, done) ->
              requests.parallelStream()
                  .forEach(
                      request -> {
                        matcher.match(request);
                        done.run();
                      }));
    }
  }

  private static List<MatchRequest> requests() {
    List<MatchRequest> requests = new ArrayList<>();
    Random random = new Random(1);
    for (int i = 0; i < TARGETS; i++) {
      double l = 20 + 60 * random.nextDouble();
      double a = -30 + 60 * random.nextDouble();
      double b = -20 + 60 * random.nextDouble();
      requests.add(MatchRequest.of(new Swatch.OfLab(Lab.ofD65(l, a, b))));
    }
    return requests;
  }

  private static void told(String way, ShelfOptics optics, BiConsumer<Matcher, Runnable> work) {
    Map<Thread, Long> last = new ConcurrentHashMap<>();
    Map<Thread, Long> first = new ConcurrentHashMap<>(Map.of(Thread.currentThread(), cpu()));
    first.putAll(atRest());
    long start = System.nanoTime();
    work.accept(
        Matcher.of(optics, TristimulusWeights.D65), () -> last.put(Thread.currentThread(), cpu()));
    double seconds = (System.nanoTime() - start) / 1e9;
    double busiest =
        last.entrySet().stream()
            .mapToLong(each -> each.getValue() - first.getOrDefault(each.getKey(), 0L))
            .max()
            .orElse(0);
    System.out.printf(
        Locale.ROOT, "%s: %.1f s, busiest thread at work %.1f s%n", way, seconds, busiest / 1e9);
  }

  /** What the threads that are there already have worked before. */
  private static Map<Thread, Long> atRest() {
    Map<Thread, Long> worked = new ConcurrentHashMap<>();
    for (Thread thread : Thread.getAllStackTraces().keySet()) {
      worked.put(thread, Math.max(0, THREADS.getThreadCpuTime(thread.getId())));
    }
    return worked;
  }

  private static long cpu() {
    return THREADS.getCurrentThreadCpuTime();
  }
}
