package io.github.swatchwright.exchange;

/** A small file of measurements in the format of CGATS.17, for tests that spoil it. */
public final class CgatsText {
  /** Two colours under D50. */
  public static final String TWO_COLOURS =
      """
      CGATS.17
      ILLUMINANT "D50"
      NUMBER_OF_FIELDS 4
      BEGIN_DATA_FORMAT
      SAMPLE_ID LAB_L LAB_A LAB_B
      END_DATA_FORMAT
      NUMBER_OF_SETS 2
      BEGIN_DATA
      "a b" 40 1 2
      c 50 -1 0.5
      END_DATA
      """;

  private CgatsText() {}
}
