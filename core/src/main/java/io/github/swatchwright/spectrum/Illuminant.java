package io.github.swatchwright.spectrum;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * A light by its relative spectral power, 380 to 780 nm. The named ones are the CIE's (CIE 15,
 * ISO/CIE 11664-2); two lights are equal when their names and powers are.
 */
public final class Illuminant {
  /** Average daylight, about 6500 K: the default of everything here. */
  public static final Illuminant D65 = ofTable("D65", "illuminant-d65.csv");

  /** Warmer daylight, about 5000 K: the printing trade's. */
  public static final Illuminant D50 = ofTable("D50", "illuminant-d50.csv");

  /** A tungsten filament lamp, 2856 K. */
  public static final Illuminant A = ofTable("A", "illuminant-a.csv");

  /** A narrow-band fluorescent lamp, about 4000 K. */
  public static final Illuminant F11 = ofTable("F11", "illuminant-f11.csv");

  /** A white LED (blue chip with phosphor), about 4100 K. */
  public static final Illuminant LED_B3 = ofTable("LED-B3", "illuminant-led-b3.csv");

  /** All named illuminants, D65 first. */
  public static final List<Illuminant> NAMED = List.of(D65, D50, A, F11, LED_B3);

  private final String name;
  private final Supplier<double[]> power;

  private Illuminant(String name, Supplier<double[]> power) {
    this.name = name;
    this.power = power;
  }

  private static Illuminant ofTable(String name, String resource) {
    CieTable table = new CieTable(resource, 1);
    return new Illuminant(name, () -> table.columns()[0]);
  }

  /**
   * A light of your own, from equally spaced samples; between them Lagrange's cubic decides, cut
   * off at 0.
   *
   * @param name what to call it
   * @param fromNm wavelength of the first sample, at most 380 nm
   * @param stepNm distance between the samples in nm
   * @param power relative power, at least 0 each and not 0 throughout; the last at 780 nm or above
   */
  public static Illuminant ofSamples(String name, double fromNm, double stepNm, double[] power) {
    Require.positive("fromNm", fromNm);
    Require.within("fromNm", fromNm, 0, CieTable.FIRST_NM);
    Require.positive("stepNm", stepNm);
    double total = 0;
    for (int i = 0; i < power.length; i++) {
      total += Require.nonNegative("power at " + (fromNm + i * stepNm) + " nm", power[i]);
    }
    Require.positive("total power", total);
    int lastRowNm = CieTable.FIRST_NM + CieTable.STEP_NM * (CieTable.ROWS - 1);
    SampledCurve curve = new SampledCurve(fromNm, stepNm, power);
    Require.within("wavelength of the last sample", curve.lastNm(), lastRowNm, 1e5);
    double[] rows = new double[CieTable.ROWS];
    for (int row = 0; row < rows.length; row++) {
      rows[row] = Math.max(0, curve.at(CieTable.FIRST_NM + CieTable.STEP_NM * row));
    }
    return new Illuminant(name, () -> rows);
  }

  /**
   * The named illuminant of this name; case doesn't matter.
   *
   * @throws IllegalArgumentException when there is none; the message lists the names
   */
  public static Illuminant parse(String name) {
    List<String> names = new ArrayList<>();
    for (Illuminant illuminant : NAMED) {
      if (illuminant.name.equalsIgnoreCase(name.trim())) {
        return illuminant;
      }
      names.add(illuminant.name);
    }
    throw new IllegalArgumentException(
        Printable.quoted(name)
            + " is not an illuminant, must be one of "
            + String.join(", ", names));
  }

  /** What the light is called, such as {@code D65} or {@code LED-B3}. */
  public String name() {
    return name;
  }

  /** Relative power over 380 to 780 nm, every 5 nm; shared, not to be changed. */
  double[] power() {
    return power.get();
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Illuminant light
            && name.equals(light.name)
            && Arrays.equals(power(), light.power()));
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return name;
  }
}
