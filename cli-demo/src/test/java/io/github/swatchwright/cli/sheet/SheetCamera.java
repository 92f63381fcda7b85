package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.sheet.Area;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.awt.image.BufferedImage;
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
 * An invented phone camera over an invented sheet: perspective, turning, a lens that bends, a lamp
 * with fall-off and a shadow, curled paper, a thumb, glare, blur, noise, a white balance that stops
 * half way or later, and JPEG 80.
 */
final class SheetCamera {
  private static final double[] PEAKS_NM = {600, 538, 455};
  private static final double[] WIDTHS_NM = {36, 40, 28};
  private static final int LEVELS = 17;
  private static final double[] SKIN = {0.42, 0.25, 0.18};

  /** What is wrong with a photo. Lengths in mm, angles in degrees. */
  record Trouble(
      double tilt,
      double roll,
      double barrel,
      double kelvin,
      double fallOff,
      boolean shadow,
      double curl,
      int thumb,
      List<Integer> glare,
      double blur,
      double noise) {

    static Trouble none() {
      return new Trouble(3, 2, 0.005, 5500, 0.95, false, 0, -1, List.of(), 0.7, 0.004);
    }

    static Trouble drawn(Random random, int fields) {
      double roll =
          12 * random.nextGaussian() + 90 * (random.nextInt(3) == 0 ? random.nextInt(4) : 0);
      return new Trouble(
          35 * random.nextDouble(),
          roll,
          0.06 * random.nextDouble() - 0.03,
          2700 + 3800 * random.nextDouble(),
          0.5 + 0.5 * random.nextDouble(),
          random.nextInt(3) == 0,
          random.nextInt(2) == 0 ? 5 * random.nextDouble() : 0,
          random.nextInt(4) == 0 ? random.nextInt(4) : -1,
          List.of(random.nextInt(fields), random.nextInt(fields)),
          0.4 + 1.1 * random.nextDouble(),
          0.004 + 0.008 * random.nextDouble());
    }
  }

  private final Random random;
  private final SheetScene scene;
  private final Trouble trouble;
  private final int width;
  private final int height;
  private final double[][] sensitivity = new double[3][Bands.COUNT];
  private final double[] power;
  private final double[] dayWhite;
  private final double[] gain = new double[3];
  private final RealMatrix factory;
  private final double[][][] films;
  private final double[][] card;
  private final double[] paperRaw;
  private final double[] inkRaw;
  private final double[][] turn;
  private double focal = 1;
  private double shiftX;
  private double shiftY;
  private final double distance;
  private final double shadowAngle;
  private final double lampAngle;

  SheetCamera(SheetScene scene, Trouble trouble, int width, int height, Random random) {
    this.scene = scene;
    this.trouble = trouble;
    this.width = width;
    this.height = height;
    this.random = random;
    for (int channel = 0; channel < 3; channel++) {
      double peak = PEAKS_NM[channel] + 5 * random.nextGaussian();
      for (int band = 0; band < Bands.COUNT; band++) {
        double off = (Bands.wavelengthNm(band) - peak) / WIDTHS_NM[channel];
        sensitivity[channel][band] = Math.exp(-off * off / 2);
      }
    }
    double[] day = planckian(6504);
    dayWhite = raw(Reflectance.constant(1), day);
    factory = factory(day);
    power = planckian(trouble.kelvin());
    double[] white = raw(Reflectance.constant(1), power);
    double balance = 0.5 + 0.5 * random.nextDouble();
    for (int channel = 0; channel < 3; channel++) {
      double cast = (white[channel] / white[1]) / (dayWhite[channel] / dayWhite[1]);
      gain[channel] = 1 / (dayWhite[channel] * white[1] / dayWhite[1] * Math.pow(cast, balance));
    }
    paperRaw = seen(scene.paper);
    inkRaw = seen(scene.ink);
    double exposure =
        (0.62 + 0.2 * random.nextDouble())
            / Math.max(paperRaw[0], Math.max(paperRaw[1], paperRaw[2]));
    for (int channel = 0; channel < 3; channel++) {
      gain[channel] *= exposure;
      paperRaw[channel] *= exposure;
      inkRaw[channel] *= exposure;
    }
    films = new double[2 * scene.paints.size()][][];
    for (int i = 0; i < scene.paints.size(); i++) {
      films[2 * i] = all(scene.films(i, scene.ink, LEVELS));
      films[2 * i + 1] = all(scene.films(i, scene.paper, LEVELS));
    }
    card = all(scene.cardPatches);
    turn = turn(random);
    distance = 1.35 * scene.layout.height();
    shadowAngle = 6.283 * random.nextDouble();
    lampAngle = 6.283 * random.nextDouble();
    frame();
  }

  private double[][] all(List<Reflectance> surfaces) {
    return surfaces.stream().map(this::seen).toArray(double[][]::new);
  }

  private static double[] planckian(double kelvin) {
    double[] power = new double[Bands.COUNT];
    for (int band = 0; band < power.length; band++) {
      double nm = Bands.wavelengthNm(band);
      power[band] = Math.pow(nm / 560, -5) / Math.expm1(1.438777e7 / (nm * kelvin)) * 1e3;
    }
    return power;
  }

  private double[] raw(Reflectance surface, double[] light) {
    double[] raw = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        raw[channel] += sensitivity[channel][band] * light[band] * surface.at(band);
      }
    }
    return raw;
  }

  private double[] seen(Reflectance surface) {
    double[] raw = raw(surface, power);
    for (int channel = 0; channel < 3; channel++) {
      raw[channel] *= gain[channel];
    }
    return raw;
  }

  private RealMatrix factory(double[] day) {
    Random training = new Random(7);
    List<InventedPaint> paints = InventedPaint.set(48, training);
    RealMatrix raw = new Array2DRowRealMatrix(paints.size(), 3);
    RealMatrix rgb = new Array2DRowRealMatrix(paints.size(), 3);
    for (int i = 0; i < paints.size(); i++) {
      Reflectance surface = paints.get(i).over(Reflectance.constant(0.8), 2);
      double[] seen = raw(surface, day);
      for (int channel = 0; channel < 3; channel++) {
        raw.setEntry(i, channel, seen[channel] / dayWhite[channel]);
      }
      LinearRgb known = LinearRgb.ofXyz(TristimulusWeights.D65.xyz(surface));
      rgb.setRow(i, new double[] {known.red(), known.green(), known.blue()});
    }
    return new QRDecomposition(raw).getSolver().solve(rgb);
  }

  private double[][] turn(Random random) {
    double axis = 6.283 * random.nextDouble();
    double tilt = Math.toRadians(trouble.tilt());
    double roll = Math.toRadians(trouble.roll());
    double c = Math.cos(tilt);
    double s = Math.sin(tilt);
    double ux = Math.cos(axis);
    double uy = Math.sin(axis);
    double[][] tilted = {
      {c + ux * ux * (1 - c), ux * uy * (1 - c), uy * s},
      {ux * uy * (1 - c), c + uy * uy * (1 - c), -ux * s},
      {-uy * s, ux * s, c}
    };
    double[][] rolled = {
      {Math.cos(roll), -Math.sin(roll), 0}, {Math.sin(roll), Math.cos(roll), 0}, {0, 0, 1}
    };
    return new Array2DRowRealMatrix(rolled).multiply(new Array2DRowRealMatrix(tilted)).getData();
  }

  /** Moves and zooms until the sheet fills the frame. */
  private void frame() {
    double w = scene.layout.width() / 2;
    double h = scene.layout.height() / 2;
    for (int round = 0; round < 6; round++) {
      double left = 1e9;
      double right = -1e9;
      double top = 1e9;
      double bottom = -1e9;
      for (int i = 0; i < 4; i++) {
        double x = i % 2 == 0 ? -w : w;
        double y = i < 2 ? -h : h;
        double z = distance + turn[2][0] * x + turn[2][1] * y;
        double u = (turn[0][0] * x + turn[0][1] * y + shiftX) / z;
        double v = (turn[1][0] * x + turn[1][1] * y + shiftY) / z;
        left = Math.min(left, u);
        right = Math.max(right, u);
        top = Math.min(top, v);
        bottom = Math.max(bottom, v);
      }
      shiftX -= distance * (left + right) / 2;
      shiftY -= distance * (top + bottom) / 2;
      focal = 0.92 * Math.min(width / (right - left), height / (bottom - top));
    }
  }

  /** The place of the sheet that a pixel shows, mm. */
  private double[] place(double px, double py) {
    double dx = px - width / 2.0;
    double dy = py - height / 2.0;
    double radius = Math.hypot(width, height) / 2;
    double bend = 1 + trouble.barrel() * (dx * dx + dy * dy) / (radius * radius);
    double rx = dx * bend / focal;
    double ry = dy * bend / focal;
    double[] ray = new double[3];
    double[] origin = new double[3];
    for (int i = 0; i < 3; i++) {
      ray[i] = turn[0][i] * rx + turn[1][i] * ry + turn[2][i];
      origin[i] = -(turn[0][i] * shiftX + turn[1][i] * shiftY + turn[2][i] * distance);
    }
    double w = scene.layout.width();
    double h = scene.layout.height();
    double x = 0;
    double y = 0;
    double z = 0;
    for (int round = 0; round < (trouble.curl() > 0 ? 3 : 1); round++) {
      double t = (z - origin[2]) / ray[2];
      x = origin[0] + t * ray[0] + w / 2;
      y = origin[1] + t * ray[1] + h / 2;
      double u = Math.max(0, Math.min(1, x / w));
      z = -trouble.curl() * 4 * u * (1 - u);
    }
    return new double[] {x, y};
  }

  /** The JPEG file. */
  byte[] shoot() throws IOException {
    float[][] light = new float[3][width * height];
    double[] rgb = new double[3];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double[] at = place(x + 0.5, y + 0.5);
        light(at[0], at[1], rgb);
        for (int channel = 0; channel < 3; channel++) {
          light[channel][y * width + x] = (float) rgb[channel];
        }
      }
    }
    for (float[] channel : light) {
      blur(channel);
    }
    return jpeg(light);
  }

  private void light(double x, double y, double[] rgb) {
    double w = scene.layout.width();
    double h = scene.layout.height();
    if (thumb(x, y)) {
      for (int channel = 0; channel < 3; channel++) {
        rgb[channel] = SKIN[channel] * paperRaw[channel];
      }
    } else if (x < 0 || y < 0 || x > w || y > h) {
      double wood = 0.18 + 0.05 * Math.sin(0.7 * y + 0.8 * Math.sin(0.05 * x));
      rgb[0] = wood * 1.2 * paperRaw[0];
      rgb[1] = wood * paperRaw[1];
      rgb[2] = wood * 0.7 * paperRaw[2];
    } else {
      surface(x, y, rgb);
    }
    double lamp =
        1
            - (1 - trouble.fallOff())
                * (0.5
                    + 0.5
                        * ((x / w - 0.5) * Math.cos(lampAngle)
                            + (y / h - 0.5) * Math.sin(lampAngle))
                        / 0.707);
    double cast = (x - w / 2) * Math.cos(shadowAngle) + (y - h / 2) * Math.sin(shadowAngle);
    double shade = trouble.shadow() ? 1 - 0.4 / (1 + Math.exp(-(cast - 20) / 0.6)) : 1;
    for (int channel = 0; channel < 3; channel++) {
      rgb[channel] *= lamp * shade;
    }
    for (int field : trouble.glare()) {
      Area stroke = scene.layout.fields().get(field).stroke();
      double dx = (x - stroke.left() - 0.3 * stroke.width()) / 3;
      double dy = (y - stroke.top() - 0.5 * stroke.height()) / 2;
      double glare = 0.9 * Math.exp(-(dx * dx + dy * dy) / 2);
      for (int channel = 0; channel < 3; channel++) {
        rgb[channel] += glare * paperRaw[channel];
      }
    }
  }

  private boolean thumb(double x, double y) {
    int corner = trouble.thumb();
    if (corner < 0) {
      return false;
    }
    double dx = x - (corner == 1 || corner == 2 ? scene.layout.width() : 0);
    double dy = y - (corner >= 2 ? scene.layout.height() : 0);
    return Math.hypot(dx, dy) < 19;
  }

  private void surface(double x, double y, double[] rgb) {
    int patch = scene.cardPatchAt(x, y);
    if (patch >= 0) {
      System.arraycopy(card[patch], 0, rgb, 0, 3);
      return;
    }
    double ink = scene.inkAt(x, y);
    int field = scene.strokeAt(x, y);
    if (field < 0) {
      for (int channel = 0; channel < 3; channel++) {
        rgb[channel] = ink * inkRaw[channel] + (1 - ink) * paperRaw[channel];
      }
      return;
    }
    double at = Math.min(0.999, scene.thickerAt(field, x, y) / 1.6) * (LEVELS - 1);
    int level = (int) at;
    double f = at - level;
    for (int channel = 0; channel < 3; channel++) {
      double dark =
          (1 - f) * films[2 * field][level][channel] + f * films[2 * field][level + 1][channel];
      double pale =
          (1 - f) * films[2 * field + 1][level][channel]
              + f * films[2 * field + 1][level + 1][channel];
      rgb[channel] = ink * dark + (1 - ink) * pale;
    }
  }

  /** A bell of this sd, by three running means. */
  private void blur(float[] channel) {
    double sd = trouble.blur();
    int half = (int) Math.ceil(2.5 * sd);
    float[] kernel = new float[2 * half + 1];
    float sum = 0;
    for (int i = -half; i <= half; i++) {
      kernel[i + half] = (float) Math.exp(-i * i / (2 * sd * sd));
      sum += kernel[i + half];
    }
    float[] line = new float[Math.max(width, height)];
    for (int y = 0; y < height; y++) {
      convolve(channel, y * width, 1, width, kernel, sum, line);
    }
    for (int x = 0; x < width; x++) {
      convolve(channel, x, width, height, kernel, sum, line);
    }
  }

  private static void convolve(
      float[] from, int start, int step, int count, float[] kernel, float sum, float[] line) {
    int half = kernel.length / 2;
    for (int i = 0; i < count; i++) {
      float value = 0;
      for (int k = -half; k <= half; k++) {
        int at = Math.max(0, Math.min(count - 1, i + k));
        value += kernel[k + half] * from[start + at * step];
      }
      line[i] = value / sum;
    }
    for (int i = 0; i < count; i++) {
      from[start + i * step] = line[i];
    }
  }

  private byte[] jpeg(float[][] light) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    double[][] matrix = factory.getData();
    double[] bells = random.doubles(0x10000).map(any -> random.nextGaussian()).toArray();
    int[] encoded = new int[4097];
    for (int i = 0; i < encoded.length; i++) {
      encoded[i] = (int) Math.round(255 * RgbSpace.SRGB.encode(i / 4096.0));
    }
    for (int i = 0; i < width * height; i++) {
      double[] noisy = new double[3];
      for (int channel = 0; channel < 3; channel++) {
        double value = light[channel][i];
        double sd = Math.hypot(0.002, trouble.noise() * Math.sqrt(Math.max(0, value)));
        noisy[channel] = Math.max(0, Math.min(1, value + sd * bells[random.nextInt() >>> 16]));
      }
      int packed = 0;
      for (int out = 0; out < 3; out++) {
        double value =
            noisy[0] * matrix[0][out] + noisy[1] * matrix[1][out] + noisy[2] * matrix[2][out];
        packed = packed << 8 | encoded[(int) (4096 * Math.max(0, Math.min(1, value)))];
      }
      image.setRGB(i % width, i / width, packed);
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writer.setOutput(ImageIO.createImageOutputStream(bytes));
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    param.setCompressionQuality(0.8f);
    writer.write(null, new IIOImage(image, null, null), param);
    writer.dispose();
    return bytes.toByteArray();
  }
}
