package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * An invented paint of known K(λ) and S(λ): a pigment with an absorption edge or band, or a grey,
 * let down with white at random as ready-mixed paints are.
 */
final class InventedPaint {
  private final String name;

  /** Absorption by band. */
  private final double[] k;

  /** Scattering by band, 1 for a typical white. */
  private final double[] s;

  private InventedPaint(String name, double[] k, double[] s) {
    this.name = name;
    this.k = k;
    this.s = s;
  }

  String name() {
    return name;
  }

  static final Saunderson SURFACE = new Saunderson(0.035, 0.4);
  private static final List<String> HUES =
      List.of("oxide red", "ochre", "yellow", "orange", "blue", "green", "violet", "grey");

  /** A set of paints, the first one white. */
  static List<InventedPaint> set(int count, Random random) {
    List<InventedPaint> paints = new ArrayList<>();
    paints.add(ofPigment("white 1", 0.0008, 0.0008, 395, 8, false, 1, 0, random));
    for (int i = 1; i < count; i++) {
      int hue = i % HUES.size();
      double white = random.nextInt(3) == 0 ? 0 : 0.5 * random.nextDouble();
      String name = HUES.get(hue) + " " + (i + 1);
      double s = 0.08 * Math.exp(0.7 * random.nextGaussian());
      double high = 1.1 * Math.exp(0.4 * random.nextGaussian());
      double low = 0.03 * Math.exp(0.5 * random.nextGaussian());
      double shift = 10 * random.nextGaussian();
      paints.add(
          switch (hue) {
            case 0 -> ofPigment(name, low, high, 585 + shift, 18, false, s, white, random);
            case 1 -> ofPigment(name, low, high / 2, 540 + shift, 30, false, s, white, random);
            case 2 -> ofPigment(name, low / 3, high, 505 + shift, 14, false, s, white, random);
            case 3 -> ofPigment(name, low / 3, high, 555 + shift, 14, false, s, white, random);
            case 4 -> ofPigment(name, low, high, 610 + shift, 60, true, s, white, random);
            case 5 -> ofPigment(name, 2 * low, high, 650 + shift, 50, true, s, white, random);
            case 6 -> ofPigment(name, low, high, 560 + shift, 45, true, s, white, random);
            default -> ofPigment(name, high, high, 550, 40, true, 4 * s, white, random);
          });
    }
    return paints;
  }

  private static InventedPaint ofPigment(
      String name,
      double low,
      double high,
      double at,
      double width,
      boolean band,
      double scattering,
      double white,
      Random random) {
    double[] k = new double[Bands.COUNT];
    double[] s = new double[Bands.COUNT];
    double power = 0.6 * random.nextDouble();
    for (int i = 0; i < k.length; i++) {
      double nm = Bands.wavelengthNm(i);
      double t = (nm - at) / width;
      double shape = band ? Math.exp(-t * t / 2) : 1 / (1 + Math.exp(t));
      k[i] = (1 - white) * (low + (high - low) * shape) + white * 0.0008;
      s[i] = (1 - white) * scattering * Math.pow(550 / nm, power) + white;
    }
    return new InventedPaint(name, k, s);
  }

  /** Parts of this paint and of another by volume. */
  InventedPaint with(InventedPaint other, double parts, double otherParts) {
    double[] mixedK = new double[k.length];
    double[] mixedS = new double[k.length];
    for (int i = 0; i < k.length; i++) {
      mixedK[i] = (parts * k[i] + otherParts * other.k[i]) / (parts + otherParts);
      mixedS[i] = (parts * s[i] + otherParts * other.s[i]) / (parts + otherParts);
    }
    return new InventedPaint(name + " and " + other.name, mixedK, mixedS);
  }

  /** The spectrum of a film over a base, as it is seen. */
  Reflectance over(Reflectance base, double thickness) {
    double[] seen = new double[Bands.COUNT];
    for (int i = 0; i < seen.length; i++) {
      double below = SURFACE.internal(Math.max(SURFACE.k1(), base.at(i)));
      seen[i] = SURFACE.seen(new Film(k[i], s[i], thickness).reflectanceOver(below));
    }
    return Reflectance.of(seen);
  }

  /** Its colour at full hiding. */
  Lab masstone() {
    return TristimulusWeights.D65.xyz(over(Reflectance.constant(0.5), 1000)).toLab();
  }

  /** Y over black of 5 % to Y over white of 80 %. */
  double contrastRatio(double thickness) {
    return TristimulusWeights.D65.xyz(over(Reflectance.constant(0.05), thickness)).y()
        / TristimulusWeights.D65.xyz(over(Reflectance.constant(0.8), thickness)).y();
  }
}
