package io.github.swatchwright.match;

import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Which one of 5,000 paints to add to 60 dull ones for 20 targets, from the estimate of every paint
 * on.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class CatalogueBenchmark {
  private Shelf catalogue;
  private ShelfOptics shelf;
  private List<Swatch> targets;

  /** Invents the paints and the targets. */
  @Setup
  public void invent() {
    Shelf owned = InventedCatalogue.ofDullColours("shelf", 60, 1);
    catalogue = InventedCatalogue.of("catalogue", 5000, 1001);
    shelf = ShelfOptics.estimate(owned);
    targets = InventedCatalogue.targets(owned, catalogue, 20, 3);
  }

  @Benchmark
  public Reinforcement bestAddition() {
    return Catalogue.of(catalogue, shelf, TristimulusWeights.D65)
        .best(targets, 3, 12, 3, Control.PLAIN);
  }
}
