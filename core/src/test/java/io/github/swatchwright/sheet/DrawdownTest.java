package io.github.swatchwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.Saunderson;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Films by Kubelka's hyperbolic form ({@link Film}), solved back through R0 and T. */
class DrawdownTest {
  private static final Saunderson SURFACE = new Saunderson(0.036, 0.4);

  @ParameterizedTest
  @CsvSource({"0.25,0.5", "0.25,1", "0.25,2", "1,1", "4,0.7", "0.05,3"})
  @DisplayName("Kubelka 1948: a neutral film over two bases gives back R∞ and the contrast ratio")
  void neutralFilmsComeBack(double q, double sx) {
    Film film = new Film(q, 1, sx);
    double opaque = 1 + q - Math.sqrt(q * q + 2 * q);
    Drawdown drawdown =
        Drawdown.of(
            grey(film.reflectanceOver(SURFACE.internal(0.06))),
            grey(film.reflectanceOver(SURFACE.internal(0.83))),
            neutral(0.06),
            neutral(0.83));
    double ratio =
        SURFACE.seen(film.reflectanceOver(SURFACE.internal(0.05)))
            / SURFACE.seen(film.reflectanceOver(SURFACE.internal(0.80)));
    // The surface is guessed from the darkest colour, 0.04 at most: it may be 0.004 off.
    assertThat(Ciede2000.deltaE(drawdown.masstone(), grey(opaque))).isLessThan(0.7);
    assertThat(drawdown.contrastRatio()).isBetween(ratio - 0.01, ratio + 0.01);
  }

  private static Lab grey(double internal) {
    return neutral(SURFACE.seen(internal));
  }

  private static Lab neutral(double share) {
    WhitePoint white = WhitePoint.D65;
    return new Xyz(share * white.xn(), share * white.yn(), share * white.zn(), white).toLab();
  }
}
