package io.github.swatchwright.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class BandsTest {

  @Test
  void gridRunsFrom380To730Nanometres() {
    assertThat(Bands.LAST_NM).isEqualTo(730);
    assertThat(Bands.wavelengthNm(0)).isEqualTo(380);
    assertThat(Bands.wavelengthNm(17)).isEqualTo(550);
    assertThat(Bands.wavelengthNm(35)).isEqualTo(730);
  }

  @Test
  void bandOutsideTheGridIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Bands.wavelengthNm(36))
        .withMessage("band is 36, must be within [0, 35]");
  }
}
