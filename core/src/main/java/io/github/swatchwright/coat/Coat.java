package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;

/**
 * Some coats of one paint or mix, thinned or not, over all of an area or over a share of it.
 *
 * <p>A wet coat is always as thick; thinning by t volumes of thinner to one of paint leaves 1/(1 +
 * t) of its K and S in it.
 *
 * @param mix what is painted
 * @param coats how many coats of the usual wet thickness: above 0 to {@value #MOST_COATS}
 * @param thinner volumes of thinner to one volume of paint, 0 to {@value #MOST_THINNER}
 * @param coverage share of the area that it covers, 0 to 1: below 1 for a chipped or sponged coat
 */
public record Coat(Mix mix, double coats, double thinner, double coverage) {

  /** The most coats at once. */
  public static final double MOST_COATS = 1000;

  /** The most thinner. */
  public static final double MOST_THINNER = 1000;

  /** Refuses numbers out of range. */
  public Coat {
    String name = mix.parts().get(0).paint().name();
    Require.positive("coats of '" + name + "'", coats);
    Require.within("coats of '" + name + "'", coats, 0, MOST_COATS);
    Require.within("thinner in '" + name + "'", thinner, 0, MOST_THINNER);
    Require.within("coverage of '" + name + "'", coverage, 0, 1);
  }

  /** One coat, not thinned, over all of the area. */
  public static Coat of(Mix mix) {
    return new Coat(mix, 1, 0, 1);
  }

  /** What it leaves, as a thickness X of the paint unthinned: 3·coats/(1 + t). */
  public double thickness() {
    return Film.COAT * coats / (1 + thinner);
  }

  /** The medium of the paint. */
  public Medium medium() {
    return mix.parts().get(0).paint().medium();
  }

  /** The finish of the paint; of a mix, that of its first paint. */
  public Finish finish() {
    return mix.parts().get(0).paint().finish();
  }
}
