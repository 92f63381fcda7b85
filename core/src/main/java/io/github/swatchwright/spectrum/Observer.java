package io.github.swatchwright.spectrum;

/** The CIE's standard colorimetric observers (ISO/CIE 11664-1). */
public enum Observer {
  /** CIE 1931, for fields of 2°: the one that XYZ, CIELAB and sRGB mean unless they say more. */
  CIE_1931("CIE 1931 2°", "cie-1931-observer.csv"),

  /** CIE 1964, for fields of 10°. */
  CIE_1964("CIE 1964 10°", "cie-1964-observer.csv");

  private final String label;

  @SuppressWarnings("ImmutableEnumChecker") // filled once, with constants
  private final CieTable table;

  Observer(String label, String resource) {
    this.label = label;
    this.table = new CieTable(resource, 3);
  }

  /** The colour-matching functions x, y and z over 380 to 780 nm, every 5 nm; shared. */
  double[][] matchingFunctions() {
    return table.columns();
  }

  @Override
  public String toString() {
    return label;
  }
}
