package io.github.swatchwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SwatchTest {
  private static final TristimulusWeights TUNGSTEN =
      TristimulusWeights.of(Illuminant.A, Observer.CIE_1931);

  @Test
  void aColourAloneComesBackFromItsReflectanceUnderDaylight() {
    Swatch rust = new Swatch.OfSrgb(Srgb.parse("#8A4B2A"));
    Lab back = TristimulusWeights.D65.xyz(rust.reflectance()).toLab();
    // What the recovery promises.
    assertThat(Ciede2000.deltaE(rust.lab(), back)).isLessThan(1e-5);
  }

  @Test
  void greyStaysGreyAndRedGrowsLighterUnderTungsten() {
    Lab grey = new Swatch.OfSrgb(Srgb.parse("#808080")).labUnder(TUNGSTEN);
    assertThat(grey.white()).isEqualTo(TUNGSTEN.whitePoint());
    // Below what one can see: a smooth grey has hardly any slope to react to a light.
    assertThat(grey.chroma()).isLessThan(0.5);
    Swatch red = new Swatch.OfSrgb(Srgb.parse("#A03028"));
    assertThat(red.labUnder(TUNGSTEN).l()).isGreaterThan(red.lab().l() + 2);
  }

  @Test
  void aMeasuredReflectanceIsUsedAsItIs() {
    double[] flat = new double[31];
    Arrays.fill(flat, 0.2);
    Swatch measured = new Swatch.OfReflectance(400, 10, flat);
    assertThat(measured.lab().chroma()).isLessThan(1e-6);
    assertThat(measured.reflectance().at(0)).isEqualTo(0.2);
    assertThat(measured).isEqualTo(new Swatch.OfReflectance(400, 10, flat));
  }

  @Test
  void nonsenseIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Swatch.OfLab(new Lab(50, 0, 0, WhitePoint.D50)))
        .withMessage("lab is relative to D50, must be D65; Lab.adaptTo converts it");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Swatch.OfSrgb(new Srgb(1.2, 0, 0)))
        .withMessageContaining("must be within 0 to 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Swatch.OfReflectance(400, 10, new double[31]))
        .withMessage("values[0] is 0.0, must be a finite number above 0");
  }
}
