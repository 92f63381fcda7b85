package io.github.swatchwright.coat;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Use;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Some coats of one paint or mix, thinned or not, over all of an area or over a share of it.
 *
 * <p>Every wet coat is equally thick; t volumes of thinner to one of paint leave 1/(1 + t) of the
 * paint's K and S in it. A bottle that comes thinned is taken as it comes.
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

  /** This coat worn off in places, as by chipping: only that share of what it covered is left. */
  public Coat chipped(double worn) {
    Require.within("worn share", worn, 0, 1);
    return new Coat(mix, coats, thinner, coverage * (1 - worn));
  }

  /** What it leaves, as a thickness X of the paint unthinned: 3·coats/(1 + t). */
  public double thickness() {
    return Film.COAT * coats / (1 + thinner);
  }

  /** Whether it is a varnish: clear, so that it changes how the surface shines and nothing else. */
  public boolean isVarnish() {
    return mix.parts().get(0).paint().use() == Use.VARNISH;
  }

  /** Whether its solvent works on what lies below as long as that of a wash does. */
  public boolean isWash() {
    return use() != CoatUse.COAT;
  }

  /** What it is called: by what its bottle is for, else by how far it is thinned. */
  public CoatUse use() {
    return switch (mix.parts().get(0).paint().use()) {
      case WASH -> CoatUse.WASH;
      case FILTER -> CoatUse.FILTER;
      default -> CoatUse.of(thinner);
    };
  }

  /** How it is thinned, such as {@code 1 part paint : 4 white spirit}. */
  public String thinning() {
    if (thinner > 0) {
      return "1 part paint : " + plain(thinner) + " " + Thinner.of(mix);
    }
    return mix.parts().get(0).paint().thinned() ? "as it comes" : "not thinned";
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /**
   * A question to ask about a ratio that looks wrong: the two sides may be turned round, or paint
   * that comes ready to use is thinned once more. Empty when it looks right.
   */
  public Optional<String> doubt() {
    Paint paint = mix.parts().get(0).paint();
    boolean translucent = paint.use() == Use.WASH || paint.use() == Use.FILTER;
    if (translucent && thinner > 0 && thinner < 1) {
      return Optional.of(
          "'%s' is a %s, and %s to 1 is more paint than thinner: did you mean @1:%s?"
              .formatted(paint.name(), paint.use().word(), plain(1 / thinner), plain(1 / thinner)));
    }
    return paint.thinned() && thinner > 0
        ? Optional.of(
            "'%s' comes ready to use: is it meant to be thinned once more?".formatted(paint.name()))
        : Optional.empty();
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
