package io.github.swatchwright.difference;

import java.util.SplittableRandom;

/** Kinds of colour pairs that implementations of CIEDE2000 are known to get wrong. */
enum PairKind {
  ANY {
    @Override
    double[] next(SplittableRandom random) {
      return polar(random, 60, random.nextDouble(360), 60, random.nextDouble(360));
    }
  },
  CLOSE_TOGETHER {
    @Override
    double[] next(SplittableRandom random) {
      return shifted(ANY.next(random), random, 2);
    }
  },
  TINY_DIFFERENCE {
    @Override
    double[] next(SplittableRandom random) {
      return shifted(ANY.next(random), random, Math.pow(10, -random.nextDouble(2, 13)));
    }
  },
  IDENTICAL {
    @Override
    double[] next(SplittableRandom random) {
      return shifted(ANY.next(random), random, 0);
    }
  },
  NEARLY_NEUTRAL {
    @Override
    double[] next(SplittableRandom random) {
      double size = Math.pow(10, -random.nextDouble(0, 9));
      return polar(random, size, random.nextDouble(360), size, random.nextDouble(360));
    }
  },
  ONE_NEUTRAL {
    @Override
    double[] next(SplittableRandom random) {
      double hue = random.nextDouble(360);
      return random.nextBoolean() ? polar(random, 0, 0, 60, hue) : polar(random, 60, hue, 0, 0);
    }
  },
  BOTH_NEUTRAL {
    @Override
    double[] next(SplittableRandom random) {
      return polar(random, 0, 0, 0, 0);
    }
  },
  NEARLY_OPPOSITE_HUES {
    @Override
    double[] next(SplittableRandom random) {
      double hue = random.nextDouble(360);
      double off = Math.pow(10, -random.nextDouble(0, 15)) * (random.nextBoolean() ? 1 : -1);
      return polar(random, 60, hue, 60, hue + 180 + off);
    }
  },
  OPPOSITE_HUES {
    @Override
    double[] next(SplittableRandom random) {
      double[] pair = ANY.next(random);
      int factor = random.nextInt(1, 9);
      double a = random.nextInt(-80, 81) / 8.0;
      double b = random.nextInt(-80, 81) / 8.0;
      return new double[] {pair[0], a, b, pair[3], -factor * a, -factor * b};
    }
  },
  /** Mean hue exactly 0°, from whole multiples, so that no rounding spoils it. */
  MIRRORED_HUES {
    @Override
    double[] next(SplittableRandom random) {
      double[] pair = ANY.next(random);
      int factor = random.nextInt(1, 9);
      double a = random.nextInt(-80, 81) / 8.0;
      double b = random.nextInt(-80, 81) / 8.0;
      return new double[] {pair[0], a, b, pair[3], factor * a, -factor * b};
    }
  },
  /** Mean hue exactly 90° or, in the blue region, 270°; any size, so that products round. */
  MIRRORED_ABOUT_B {
    @Override
    double[] next(SplittableRandom random) {
      double[] pair = ANY.next(random);
      double factor = Math.pow(10, random.nextDouble(-6, 1));
      double a = pair[1];
      double b = -Math.abs(pair[2]) * (random.nextInt(4) == 0 ? -1 : 1);
      return new double[] {pair[0], a, b, pair[3], -factor * a, factor * b};
    }
  },
  MEAN_HUE_NEAR_ZERO {
    @Override
    double[] next(SplittableRandom random) {
      double half = random.nextDouble(89);
      double off = Math.pow(10, -random.nextDouble(0, 15)) * (random.nextBoolean() ? 1 : -1);
      return polar(random, 60, half + off, 60, -half);
    }
  },
  /** Hues on both sides of 0° and less than 180° apart. */
  WRAPPED_MEAN_HUE {
    @Override
    double[] next(SplittableRandom random) {
      double h1 = random.nextDouble(180);
      double h2 = random.nextDouble(h1 + 180, 360);
      return polar(random, 60, h1, 60, h2);
    }
  },
  BLUE_REGION {
    @Override
    double[] next(SplittableRandom random) {
      double h1 = random.nextDouble(240, 310);
      return polar(random, 60, h1, 60, h1 + random.nextDouble(-40, 40));
    }
  };

  abstract double[] next(SplittableRandom random);

  /** A pair at lightnesses from 0 to 100, with chromas up to twice the given sizes. */
  private static double[] polar(
      SplittableRandom random, double size1, double hue1, double size2, double hue2) {
    double c1 = 2 * size1 * random.nextDouble();
    double c2 = 2 * size2 * random.nextDouble();
    return new double[] {
      random.nextDouble(100),
      c1 * Math.cos(Math.toRadians(hue1)),
      c1 * Math.sin(Math.toRadians(hue1)),
      random.nextDouble(100),
      c2 * Math.cos(Math.toRadians(hue2)),
      c2 * Math.sin(Math.toRadians(hue2))
    };
  }

  /** The first colour of a pair and another up to a step from it in each coordinate. */
  private static double[] shifted(double[] pair, SplittableRandom random, double step) {
    double[] shifted = pair.clone();
    for (int i = 0; i < 3; i++) {
      shifted[i + 3] = pair[i] + step * (2 * random.nextDouble() - 1);
    }
    return shifted;
  }
}
