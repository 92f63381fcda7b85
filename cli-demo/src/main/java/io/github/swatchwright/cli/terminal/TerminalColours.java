package io.github.swatchwright.cli.terminal;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** How a terminal shows colours, by escape sequences of ECMA-48 and ITU-T T.416. */
public enum TerminalColours {
  /** Not at all. */
  NONE {
    @Override
    public String block(Srgb colour) {
      return "";
    }
  },

  /**
   * The 256 colours of xterm: a cube of 6 × 6 × 6, and 24 greys (from memory). A colour that none
   * of them is near is left blank: another one would mislead, and beside its own match most of all.
   */
  INDEXED {
    @Override
    public String block(Srgb colour) {
      int nearest = nearest(colour);
      double off = Ciede2000.deltaE(colour.toLab(), indexed(nearest).toLab());
      return off > FARTHEST
          ? BLANK
          : String.format(Locale.ROOT, "\u001B[48;5;%dm      \u001B[0m ", nearest);
    }
  },

  /** 24 bits a colour. */
  TRUE {
    @Override
    public String block(Srgb colour) {
      int rgb = colour.toPacked();
      return String.format(
          Locale.ROOT,
          "\u001B[48;2;%d;%d;%dm      \u001B[0m ",
          rgb >> 16 & 0xFF,
          rgb >> 8 & 0xFF,
          rgb & 0xFF);
    }
  };

  /** Terminals of 8 or 16 colours, where a nearest colour would mislead. */
  private static final Pattern FEW = Pattern.compile("dumb|linux|ansi|vt[0-9].*|cons.*|sun.*");

  /** Farther off by ΔE00, colours are different ones (common practice, from memory). */
  private static final double FARTHEST = 5;

  /** As wide as a block, so that columns stay. */
  private static final String BLANK = "       ";

  private static final int CUBE_BEGINS = 16;
  private static final int GREYS_BEGIN = 232;
  private static final int[] CUBE_LEVELS = {0, 95, 135, 175, 215, 255};

  /** A block of the colour and a space, or nothing where colours aren't shown. */
  public abstract String block(Srgb colour);

  /**
   * The colours that the environment allows: {@code NO_COLOR} forbids them, {@code COLORTERM} and
   * {@code TERM} say how many there are.
   *
   * @param environment the process's variables
   * @param isTerminal whether someone looks at the output
   */
  public static TerminalColours of(Map<String, String> environment, boolean isTerminal) {
    String term = environment.getOrDefault("TERM", "");
    String colorterm = environment.getOrDefault("COLORTERM", "");
    boolean windowsTerminal = environment.containsKey("WT_SESSION");
    if (!isTerminal
        || !environment.getOrDefault("NO_COLOR", "").isEmpty()
        || (term.isEmpty() && !windowsTerminal)
        || FEW.matcher(term).matches()) {
      return NONE;
    }
    boolean many =
        colorterm.equals("truecolor") || colorterm.equals("24bit") || term.endsWith("-direct");
    return many || windowsTerminal ? TRUE : INDEXED;
  }

  /** The index of the nearest by ΔE00; the first 16 are left out, since themes change them. */
  static int nearest(Srgb colour) {
    int nearest = CUBE_BEGINS;
    double smallest = Double.MAX_VALUE;
    for (int index = CUBE_BEGINS; index < 256; index++) {
      double deltaE00 = Ciede2000.deltaE(colour.toLab(), indexed(index).toLab());
      if (deltaE00 < smallest) {
        smallest = deltaE00;
        nearest = index;
      }
    }
    return nearest;
  }

  /** The colour of an index from 16 on. */
  static Srgb indexed(int index) {
    if (index >= GREYS_BEGIN) {
      int grey = 8 + 10 * (index - GREYS_BEGIN);
      return Srgb.of8Bit(grey, grey, grey);
    }
    int place = index - CUBE_BEGINS;
    return Srgb.of8Bit(CUBE_LEVELS[place / 36], CUBE_LEVELS[place / 6 % 6], CUBE_LEVELS[place % 6]);
  }
}
