package io.github.swatchwright.colour;

/** What to do with a colour that an sRGB display can't show. */
public enum GamutPolicy {
  /** Refuse it, with an {@link IllegalArgumentException}. */
  REFUSE {
    @Override
    Srgb fit(Srgb colour) {
      throw new IllegalArgumentException(colour + " is outside the sRGB range 0 to 1");
    }
  },

  /** Cut each channel off at 0 and 1: fast, but shifts hue and lightness. */
  CLIP {
    @Override
    Srgb fit(Srgb colour) {
      return new Srgb(cut(colour.red()), cut(colour.green()), cut(colour.blue()));
    }
  },

  /** Keep CIELAB lightness and hue, and give up as much chroma as it takes. */
  REDUCE_CHROMA {
    @Override
    Srgb fit(Srgb colour) {
      Lch lch = colour.toLab().toLch();
      if (!lch.withChroma(0).toLab().toSrgb().isDisplayable()) {
        return CLIP.fit(lch.withChroma(0).toLab().toSrgb());
      }
      double shown = 0;
      double notShown = lch.c();
      for (int halving = 0; halving < CHROMA_HALVINGS; halving++) {
        double middle = (shown + notShown) / 2;
        if (lch.withChroma(middle).toLab().toSrgb().isDisplayable()) {
          shown = middle;
        } else {
          notShown = middle;
        }
      }
      return lch.withChroma(shown).toLab().toSrgb();
    }
  };

  /** Enough to place the chroma within 1e-7 of the limit from a start of a few hundred. */
  private static final int CHROMA_HALVINGS = 32;

  abstract Srgb fit(Srgb colour);

  private static double cut(double channel) {
    return Math.max(0, Math.min(1, channel));
  }
}
