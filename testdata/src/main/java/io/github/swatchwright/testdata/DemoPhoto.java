package io.github.swatchwright.testdata;

import java.util.Random;

/**
 * An invented photo: a rusty hull plate of an old harbour dredger under a warm lamp that shines
 * from the upper left, with a grey card. What the things in it look like under daylight is known.
 */
public final class DemoPhoto {
  /** Columns. */
  public static final int WIDTH = 640;

  /** Rows. */
  public static final int HEIGHT = 480;

  /** Where the grey card is: left, top, width, height. */
  private static final int[] CARD = {500, 46, 96, 96};

  private static final int CARD_EDGE = 6;
  private static final int[] SEAMS = {212, 452};
  private static final int WATERLINE = 408;
  private static final int RIVET_STEP = 40;

  private static final ValueNoise RUST = new ValueNoise(1908);
  private static final ValueNoise PITS = new ValueNoise(1911);
  private static final ValueNoise STREAKS = new ValueNoise(1920);

  /** Linear sRGB to linear Display P3 (CSS Color 4). */
  private static final double[][] TO_P3 = {
    {0.8224621, 0.1775380, 0}, {0.0331941, 0.9668058, 0}, {0.0170827, 0.0723974, 0.9105199}
  };

  /** What the scene is made of. */
  public enum Material {
    /** The hull's grey-blue paint. */
    HULL_PAINT(0x5D6E78),
    /** Red anti-fouling paint below the waterline. */
    BOTTOM_PAINT(0x7C3A30),
    /** Fresh rust at the edge. */
    ORANGE_RUST(0xB0652F),
    /** Rust of some years. */
    BROWN_RUST(0x7B4328),
    /** Old rust in the middle. */
    DARK_RUST(0x4A3129),
    /** A card that reflects 18 %. */
    GREY_CARD(0x767676),
    /** The card's white edge. */
    WHITE_EDGE(0xE8E8E8);

    private final int srgb;

    Material(int srgb) {
      this.srgb = srgb;
    }

    /** Its mean colour under daylight, {@code 0xRRGGBB}. */
    public int srgb() {
      return srgb;
    }
  }

  private DemoPhoto() {}

  /** What a pixel shows. */
  public static Material material(int x, int y) {
    int fromLeft = x - CARD[0];
    int fromTop = y - CARD[1];
    int inside =
        Math.min(
            Math.min(fromLeft, CARD[2] - 1 - fromLeft), Math.min(fromTop, CARD[3] - 1 - fromTop));
    if (inside >= 0) {
      return inside < CARD_EDGE ? Material.WHITE_EDGE : Material.GREY_CARD;
    }
    double rust = rust(x, y);
    if (rust > 0.70) {
      return Material.DARK_RUST;
    }
    if (rust > 0.61) {
      return Material.BROWN_RUST;
    }
    if (rust > 0.55) {
      return Material.ORANGE_RUST;
    }
    return y > WATERLINE + 3 * (RUST.at(x / 30.0, 7) - 0.5)
        ? Material.BOTTOM_PAINT
        : Material.HULL_PAINT;
  }

  /** How far rust has come, 0 to 1: a large patch, seams, and streaks that run down. */
  private static double rust(int x, int y) {
    double patch = bell((x - 110) / 95.0, (y - 265) / 105.0);
    double other = 0.7 * bell((x - 360) / 60.0, (y - 370) / 50.0);
    double seam = 0;
    for (int at : SEAMS) {
      seam = Math.max(seam, 0.3 * bell((x - at) / 14.0, 0));
    }
    double streak = 0.33 * StrictMath.pow(STREAKS.at(x / 9.0, y / 160.0), 2) * y / HEIGHT;
    double spread = 0.34 * Math.max(Math.max(patch, other), seam) + streak;
    return spread
        + 0.62 * RUST.at(x / 46.0, y / 46.0)
        + 0.1 * (PITS.at(x / 7.0, y / 7.0) - 0.5)
        + 0.05 * (PITS.lattice(x, y, 9) - 0.5);
  }

  private static double bell(double x, double y) {
    return StrictMath.exp(-(x * x + y * y) / 2);
  }

  /** The share of a region that consists of that material. */
  public static double share(Material material, int left, int top, int width, int height) {
    int count = 0;
    for (int y = top; y < top + height; y++) {
      for (int x = left; x < left + width; x++) {
        count += material(x, y) == material ? 1 : 0;
      }
    }
    return (double) count / width / height;
  }

  /** The light's red, green and blue at a pixel; its logarithms are parabolas of the place. */
  private static double[] light(int x, int y) {
    double u = (x - 200.0) / WIDTH;
    double v = (y - 120.0) / HEIGHT;
    double fall = -0.45 * u - 0.30 * v - 0.55 * (u * u + v * v) + 0.15 * u * v;
    return new double[] {
      1.28 * StrictMath.exp(fall),
      1.00 * StrictMath.exp(fall - 0.04 * u),
      0.66 * StrictMath.exp(fall - 0.10 * u)
    };
  }

  /** Texture, light and shade of bumps about 1. */
  private static double relief(int x, int y, Material material) {
    double depth =
        switch (material) {
          case GREY_CARD, WHITE_EDGE -> 0;
          case HULL_PAINT, BOTTOM_PAINT -> 0.3;
          case ORANGE_RUST, BROWN_RUST, DARK_RUST -> 1;
        };
    if (depth == 0) {
      return 1;
    }
    double slope = PITS.at((x + 1.5) / 6.0, (y + 1.5) / 6.0) - PITS.at(x / 6.0, y / 6.0);
    double cloud = RUST.at(x / 23.0 + 90, y / 23.0) - 0.5;
    double edge = 0;
    for (int at : SEAMS) {
      edge += Math.abs(x - at) <= 1 ? -0.45 : x - at == 2 ? 0.2 : 0;
      int fromRivet = Math.floorMod(y, RIVET_STEP) - RIVET_STEP / 2;
      int beside = Math.abs(x - at) - 12;
      if (beside * beside + fromRivet * fromRivet <= 16) {
        edge += 0.05 * (-fromRivet - (x - at > 0 ? beside : -beside));
      }
    }
    boolean shaded = x > CARD[0] && x < CARD[0] + CARD[2] + 4 && y > CARD[1] && y < 46 + 96 + 4;
    return Math.max(0.2, 1 + depth * slope + 0.16 * cloud + edge) * (shaded ? 0.55 : 1);
  }

  /**
   * The photo's pixels row by row, {@code 0xFFRRGGBB}.
   *
   * @param displayP3 encoded in Display P3, otherwise in sRGB
   */
  public static int[] argb(boolean displayP3) {
    Random noise = new Random(72);
    int[] argb = new int[WIDTH * HEIGHT];
    for (int i = 0; i < argb.length; i++) {
      int x = i % WIDTH;
      int y = i / WIDTH;
      Material material = material(x, y);
      double[] light = light(x, y);
      double relief = relief(x, y, material);
      double[] seen = new double[3];
      for (int channel = 0; channel < 3; channel++) {
        double surface = decode(((material.srgb() >> (16 - 8 * channel)) & 0xFF) / 255.0);
        double exact = surface * light[channel] * relief;
        double grain = 0.002 + 0.012 * Math.sqrt(exact);
        seen[channel] = exact + grain * noise.nextGaussian();
      }
      argb[i] = packed(displayP3 ? toP3(seen) : seen);
    }
    return argb;
  }

  private static double[] toP3(double[] rgb) {
    double[] p3 = new double[3];
    for (int i = 0; i < 3; i++) {
      p3[i] = TO_P3[i][0] * rgb[0] + TO_P3[i][1] * rgb[1] + TO_P3[i][2] * rgb[2];
    }
    return p3;
  }

  private static int packed(double[] linear) {
    int packed = 0xFF;
    for (double channel : linear) {
      packed = packed << 8 | (int) Math.round(255 * encode(Math.max(0, Math.min(1, channel))));
    }
    return packed;
  }

  /** The sRGB curve (IEC 61966-2-1). */
  private static double encode(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
  }

  private static double decode(double level) {
    return level <= 0.04045 ? level / 12.92 : StrictMath.pow((level + 0.055) / 1.055, 2.4);
  }
}
