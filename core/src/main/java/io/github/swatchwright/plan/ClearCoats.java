package io.github.swatchwright.plan;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Use;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The varnish or chipping medium for a place in a stack of coats: from the shelf where there is
 * one, else one to buy.
 *
 * @param shelf the paints that there are
 */
record ClearCoats(Shelf shelf) {
  static final String CHIPPING_MEDIUM = "chipping medium";

  /** Chipping medium is clear, and water dissolves it again. */
  static Coat chippingMedium() {
    Paint medium = Paint.of(CHIPPING_MEDIUM, Medium.WATER).withUse(Use.VARNISH);
    return new Coat(Mix.of(medium), 1, 0, 1);
  }

  static boolean isChippingMedium(Coat coat) {
    return coat.mix().parts().get(0).paint().name().equals(CHIPPING_MEDIUM);
  }

  /**
   * A varnish that lifts nothing below, and that the next coats don't lift; of the wanted finish
   * where there is one.
   *
   * @param below what it goes over
   * @param next what goes over it; empty for nothing
   * @param finish how it should shine
   */
  Optional<Coat> varnish(Layers below, List<Coat> next, Finish finish) {
    List<Coat> possible =
        below.seals(next).stream()
            .flatMap(medium -> ofMedium(medium, finish))
            .map(paint -> new Coat(Mix.of(paint), 1, 0, 1))
            .toList();
    return possible.stream()
        .filter(coat -> isOnShelf(coat.mix()))
        .findFirst()
        .or(() -> possible.stream().findFirst());
  }

  private Stream<Paint> ofMedium(Medium medium, Finish finish) {
    Paint toBuy =
        Paint.of(finish.word() + " " + medium.word() + " varnish", medium)
            .withUse(Use.VARNISH)
            .withFinish(finish);
    return Stream.concat(
        shelf.paints().stream()
            .filter(paint -> paint.use() == Use.VARNISH && paint.medium() == medium)
            .sorted(Comparator.comparing(paint -> paint.finish() != finish)),
        Stream.of(toBuy));
  }

  boolean isOnShelf(Mix mix) {
    return mix.parts().stream().allMatch(part -> isOnShelf(part.paint()));
  }

  boolean isOnShelf(Paint paint) {
    return shelf.paints().stream().anyMatch(own -> own.name().equals(paint.name()));
  }
}
