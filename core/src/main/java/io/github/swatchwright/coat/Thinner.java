package io.github.swatchwright.coat;

import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;

/**
 * What paint of a medium is thinned with. Common practice of the trade, without a source: the label
 * wins, and a bottle that names its own thinner comes before this table.
 */
public final class Thinner {
  private Thinner() {}

  /** What usually thins a medium, such as {@code white spirit}. */
  public static String of(Medium medium) {
    return switch (medium) {
      case ACRYLIC -> "acrylic thinner";
      case LACQUER -> "lacquer thinner";
      case ENAMEL, OIL -> "white spirit";
      case WATER -> "water";
    };
  }

  /** What thins a paint: what its bottle says, else what usually thins its medium. */
  public static String of(Paint paint) {
    return paint.bottle().thinner().orElse(of(paint.medium()));
  }

  /** What thins a mix: what thins its first paint, since all of them share one medium. */
  public static String of(Mix mix) {
    return of(mix.parts().get(0).paint());
  }
}
