package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Prediction;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A further coat that brings a colour nearer to the one that is wanted.
 *
 * @param coat paint, whole coats and thinner
 * @param prediction what it will look like, and how well that is known
 * @param deltaE00 from the wanted colour, if all goes well
 * @param expectedDeltaE00 from the wanted colour, as is to be expected
 * @param order what its thinner does to what it reaches
 */
public record CoatOption(
    Coat coat,
    Prediction prediction,
    double deltaE00,
    double expectedDeltaE00,
    List<OrderNote> order) {

  /** Copies the list. */
  public CoatOption {
    order = List.copyOf(order);
  }

  /** What it is called. */
  public CoatUse use() {
    return coat.use();
  }

  /** The most serious note; empty when nothing is known of what lies below. */
  public Optional<OrderNote> worst() {
    return order.stream().max(Comparator.comparing(OrderNote::verdict));
  }
}
