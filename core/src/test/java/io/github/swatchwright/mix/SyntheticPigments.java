package io.github.swatchwright.mix;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.OpticalConstants;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * Invented single-pigment paints with known K(λ) and S(λ), by the families of real pigments: white,
 * black, iron oxides and earths, and transparent organic colours with an absorption edge or band.
 * Their absorption spans four orders of magnitude and their scattering two. The shapes are in ln K
 * and know nothing of the estimate's prior, which is in the logit of reflectance.
 */
public final class SyntheticPigments {
  public static final Viewing VIEWING =
      new Viewing(TristimulusWeights.D65, new Saunderson(0.035, 0.4));

  private static final int WAVES = 4;
  private static final double WAVE_HEIGHT = 0.6;

  private final Random random;
  private final Random waves;
  private final List<Pigment> pigments = new ArrayList<>();

  /**
   * A pigment with its truth.
   *
   * @param name of its family, with a number
   * @param truth its constants
   */
  public record Pigment(String name, OpticalConstants truth) {

    public Lab colour() {
      return VIEWING.lab(truth.opaque());
    }

    public double contrastRatio() {
      return new HidingPower(VIEWING).contrastRatio(truth, Film.COAT);
    }

    /** What a painter with a colour meter would write down. */
    public Paint swatch(Make make) {
      return Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(colour()))
          .withMake(make)
          .withSwatchError(0.5);
    }

    Paint withWord() {
      return swatch(Make.SINGLE_PIGMENT).withHiding(Hiding.Word.of(contrastRatio()));
    }

    Paint withCoats() {
      double coats = Math.ceil(new HidingPower(VIEWING).coatsToHide(truth));
      return swatch(Make.SINGLE_PIGMENT).withHiding(new Hiding.Coats(Math.min(100, coats)));
    }

    public Paint withContrastRatio() {
      return swatch(Make.SINGLE_PIGMENT).withHiding(new Hiding.ContrastRatio(contrastRatio()));
    }
  }

  private SyntheticPigments(long seed) {
    random = new Random(seed);
    waves = new Random(seed + 1000);
  }

  /** A shelf of 14 pigments. */
  public static List<Pigment> shelf(long seed) {
    SyntheticPigments shelf = new SyntheticPigments(seed);
    shelf.add("white", 1, 0.3, nm -> 0.0008 + 0.8 * falling(nm, 395, 8));
    double blackAbsorption = shelf.about(7);
    shelf.add("black", shelf.about(0.6), 0, nm -> blackAbsorption);
    for (int i = 0; i < 4; i++) {
      double edge = 505 + 35 * i + shelf.about(5);
      double high = shelf.about(1.1);
      double low = shelf.about(0.035);
      shelf.add("oxide " + i, shelf.about(0.16), 0.8, nm -> low + high * falling(nm, edge, 22));
    }
    for (int i = 0; i < 2; i++) {
      double slope = shelf.about(110);
      double high = shelf.about(0.55);
      shelf.add("earth " + i, shelf.about(0.035), 0.5, nm -> high * Math.exp(-(nm - 400) / slope));
    }
    for (int i = 0; i < 3; i++) {
      double edge = 490 + 50 * i + shelf.about(8);
      double high = shelf.about(1.4);
      double low = shelf.about(0.004);
      shelf.add("organic " + i, shelf.about(0.1), 1, nm -> low + high * falling(nm, edge, 12));
    }
    for (int i = 0; i < 3; i++) {
      double peak = 570 + 30 * i + shelf.about(10);
      double high = shelf.about(1.6);
      double low = shelf.about(0.02);
      shelf.add("band " + i, shelf.about(0.04), 1, nm -> low + high * band(nm, peak, 55));
    }
    return shelf.pigments;
  }

  /** A positive number near the stated one: log-normal, a factor of 1.5 as sd. */
  private double about(double value) {
    return value * Math.exp(Math.log(1.5) * random.nextGaussian());
  }

  /**
   * Waves of scattering about its power law, in ln S: the index of refraction of a real pigment
   * rises and falls about its absorption, and its particles are of many sizes. White has none.
   */
  private DoubleUnaryOperator structure(double size) {
    double[] heights = new double[WAVES];
    double[] centres = new double[WAVES];
    double[] widths = new double[WAVES];
    for (int i = 0; i < WAVES; i++) {
      heights[i] = size * waves.nextGaussian();
      centres[i] = 380 + 350 * waves.nextDouble();
      widths[i] = 30 + 60 * waves.nextDouble();
    }
    return nm -> {
      double sum = 0;
      for (int i = 0; i < WAVES; i++) {
        sum += heights[i] * band(nm, centres[i], widths[i]);
      }
      return sum;
    };
  }

  private void add(String name, double s550, double power, DoubleUnaryOperator absorption) {
    DoubleUnaryOperator structure = structure(name.equals("white") ? 0 : WAVE_HEIGHT);
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    for (int i = 0; i < Bands.COUNT; i++) {
      double nm = Bands.wavelengthNm(i);
      k[i] = absorption.applyAsDouble(nm);
      s[i] = s550 * Math.pow(550 / nm, power) * Math.exp(structure.applyAsDouble(nm));
    }
    pigments.add(new Pigment(name, OpticalConstants.of(k, s)));
  }

  private static double falling(double nm, double edge, double width) {
    return 1 / (1 + Math.exp((nm - edge) / width));
  }

  private static double band(double nm, double peak, double width) {
    double t = (nm - peak) / width;
    return Math.exp(-t * t / 2);
  }
}
