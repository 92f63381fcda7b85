package io.github.swatchwright.spectrum;

import io.github.swatchwright.argument.Require;

/** The wavelength grid of every spectrum here: 36 bands from 380 to 730 nm, 10 nm apart. */
public final class Bands {
  /** How many bands there are. */
  public static final int COUNT = 36;

  /** Wavelength of the first band in nm. */
  public static final int FIRST_NM = 380;

  /** Distance between neighbouring bands in nm. */
  public static final int STEP_NM = 10;

  /** Wavelength of the last band in nm. */
  public static final int LAST_NM = FIRST_NM + (COUNT - 1) * STEP_NM;

  private Bands() {}

  /**
   * Wavelength of a band in nm.
   *
   * @param band 0 to {@link #COUNT} − 1
   */
  public static int wavelengthNm(int band) {
    return FIRST_NM + STEP_NM * Require.within("band", band, 0, COUNT - 1);
  }
}
