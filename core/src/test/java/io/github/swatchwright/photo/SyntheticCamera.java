package io.github.swatchwright.photo;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * An invented camera: bell-shaped sensitivities that are no observer's, a matrix fitted for
 * daylight at the factory, an automatic white balance that stops half way or later, shot and read
 * noise, 8-bit sRGB, JPEG 85. Its pictures are grids of flat patches.
 */
final class SyntheticCamera {
  static final int PATCH = 32;
  static final int COLUMNS = 12;
  private static final double[] PEAKS_NM = {600, 538, 455};
  private static final double[] WIDTHS_NM = {36, 40, 28};
  private static final double JITTER_NM = 5;
  private static final double LEAST_BALANCE = 0.5;
  private static final double READ_NOISE = 0.002;
  private static final double SHOT_NOISE = 0.008;

  private final double[][] sensitivity = new double[3][Bands.COUNT];
  private final RealMatrix factory;
  private final Random random;

  SyntheticCamera(Random random, List<Reflectance> training) {
    this.random = random;
    for (int channel = 0; channel < 3; channel++) {
      double peak = PEAKS_NM[channel] + JITTER_NM * random.nextGaussian();
      for (int band = 0; band < Bands.COUNT; band++) {
        double off = (Bands.wavelengthNm(band) - peak) / WIDTHS_NM[channel];
        sensitivity[channel][band] = Math.exp(-off * off / 2);
      }
    }
    RealMatrix raw = new Array2DRowRealMatrix(training.size(), 3);
    RealMatrix rgb = new Array2DRowRealMatrix(training.size(), 3);
    double[] white = raw(Reflectance.constant(1), Illuminant.D65);
    for (int i = 0; i < training.size(); i++) {
      double[] seen = raw(training.get(i), Illuminant.D65);
      for (int channel = 0; channel < 3; channel++) {
        raw.setEntry(i, channel, seen[channel] / white[channel]);
      }
      LinearRgb known = LinearRgb.ofXyz(TristimulusWeights.D65.xyz(training.get(i)));
      rgb.setRow(i, new double[] {known.red(), known.green(), known.blue()});
    }
    factory = new QRDecomposition(raw).getSolver().solve(rgb);
  }

  /** The light's power by band: all that a perfect diffuser's spectrum needs. */
  private static double[] power(Illuminant light) {
    TristimulusWeights weights = TristimulusWeights.of(light, Observer.CIE_1931);
    TristimulusWeights day = TristimulusWeights.D65;
    double[] power = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      // Weights are power times observer, so their ratio to daylight's is the powers' ratio.
      double ratio =
          (weights.x(band) + weights.y(band) + weights.z(band))
              / (day.x(band) + day.y(band) + day.z(band));
      power[band] = Math.max(0, ratio);
    }
    return power;
  }

  private double[] raw(Reflectance surface, Illuminant light) {
    double[] power = power(light);
    double[] raw = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        raw[channel] += sensitivity[channel][band] * power[band] * surface.at(band);
      }
    }
    return raw;
  }

  /** A photo of the surfaces, one a patch, exposed by some stops more than the card asks. */
  ArgbPhoto shoot(List<Reflectance> surfaces, Illuminant light, double stops) throws IOException {
    double balance = LEAST_BALANCE + (1 - LEAST_BALANCE) * random.nextDouble();
    double[] day = raw(Reflectance.constant(1), Illuminant.D65);
    double[] white = raw(Reflectance.constant(1), light);
    int rows = (surfaces.size() + COLUMNS - 1) / COLUMNS;
    BufferedImage image =
        new BufferedImage(COLUMNS * PATCH, rows * PATCH, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < surfaces.size(); i++) {
      double[] raw = raw(surfaces.get(i), light);
      for (int channel = 0; channel < 3; channel++) {
        double cast = (white[channel] / white[1]) / (day[channel] / day[1]);
        raw[channel] /= day[channel] * white[1] / day[1] * Math.pow(cast, balance);
      }
      paint(image, i, raw, Math.pow(2, stops));
    }
    return jpeg(image);
  }

  private void paint(BufferedImage image, int patch, double[] raw, double exposure) {
    int left = patch % COLUMNS * PATCH;
    int top = patch / COLUMNS * PATCH;
    for (int y = 0; y < PATCH; y++) {
      for (int x = 0; x < PATCH; x++) {
        double[] noisy = new double[3];
        for (int channel = 0; channel < 3; channel++) {
          double light = exposure * raw[channel];
          double noise = Math.hypot(READ_NOISE, SHOT_NOISE * Math.sqrt(light));
          noisy[channel] = Math.min(1, light + noise * random.nextGaussian());
        }
        double[] rgb = factory.preMultiply(noisy);
        int packed = 0;
        for (double channel : rgb) {
          double held = Math.max(0, Math.min(1, channel));
          packed = packed << 8 | (int) Math.round(255 * RgbSpace.SRGB.encode(held));
        }
        image.setRGB(left + x, top + y, packed);
      }
    }
  }

  private static ArgbPhoto jpeg(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writer.setOutput(ImageIO.createImageOutputStream(bytes));
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    param.setCompressionQuality(0.85f);
    writer.write(null, new IIOImage(image, null, null), param);
    writer.dispose();
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
    int width = read.getWidth();
    int height = read.getHeight();
    int[] argb = read.getRGB(0, 0, width, height, null, 0, width);
    return new ArgbPhoto(width, height, argb, RgbSpace.SRGB);
  }

  /** The middle of a patch, away from its neighbours' JPEG blocks. */
  static Region middle(int patch) {
    return new Region(
        patch % COLUMNS * PATCH + PATCH / 4,
        patch / COLUMNS * PATCH + PATCH / 4,
        PATCH / 2,
        PATCH / 2);
  }
}
