package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.paint.Drawdown;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads the colours of one field: light evened by the bare paper about it, the stroke over black
 * and over paper averaged without gaps and glare, corrected by what lies on the sheet.
 */
final class FieldReader {
  /** Printed black is darker than this share of the paper, where nothing covers it. */
  private static final double BLACKEST = 0.25;

  /** A half closer than this to the bare sheet, in natural logarithms, counts as blank. */
  private static final double BLANK = 0.07;

  /** What not knowing the paper's own colour adds, sd of L* and of a* and b*. */
  private static final double PAPER_L = 1.2;

  private static final double PAPER_AB = 1.3;

  private final SheetPhoto photo;
  private final Flattening flat;
  private final SheetCorrection correction;

  FieldReader(SheetPhoto photo, Flattening flat, SheetCorrection correction) {
    this.photo = photo;
    this.flat = flat;
    this.correction = correction;
  }

  /**
   * Reads a field.
   *
   * @throws IllegalArgumentException when it is blank or can't be read, with the reason as message
   */
  FieldStroke read(SheetField field, FieldPlace place) {
    PaperLight light = BarePaper.on(photo, flat, place, field);
    Cells bare = bareBlack(field, place, light);
    Cells onBlack = Cells.of(photo, flat, place, light, field.readOverBlack());
    Cells onPaper = Cells.of(photo, flat, place, light, field.readOverPaper());
    if (bare.isEmpty() || onBlack.isEmpty() || onPaper.isEmpty()) {
      throw new IllegalArgumentException("glare, a shadow's edge or the photo's edge hides it");
    }
    double[] black = bare.quantiles(0.4);
    if (black[1] > BLACKEST) {
      throw new IllegalArgumentException("its printed black isn't seen: covered, torn or in glare");
    }
    double[] white = {1, 1, 1};
    if (Cells.distance(onPaper.quantiles(0.5), white) < BLANK
        && Cells.distance(onBlack.quantiles(0.5), black) < 3 * BLANK) {
      throw new IllegalArgumentException("blank");
    }
    return stroke(light, black, onBlack.withoutGlare(black).common(black), onPaper.common(white));
  }

  private FieldStroke stroke(
      PaperLight light, double[] black, Cells.Common dark, Cells.Common pale) {
    Lab bare = correction.lab(black);
    Lab paper = correction.lab(new double[] {1, 1, 1});
    if (paper.l() - bare.l() < Drawdown.LEAST_CONTRAST) {
      throw new IllegalArgumentException("its printed black is hardly darker than the paper");
    }
    Lab overPaper = correction.lab(pale.rgb());
    return new FieldStroke(
        correction.lab(dark.rgb()),
        overPaper,
        bare,
        paper,
        spread(overPaper, light),
        1 - Math.min(dark.used(), pale.used()),
        Stream.concat(dark.leftOut().stream(), pale.leftOut().stream()).toList(),
        doubts(dark, pale, light.hasEdge()));
  }

  /** The error of a colour over paper. */
  private ColourSpread spread(Lab colour, PaperLight light) {
    double[] sd = correction.correction().spread(colour, false).standardDeviations();
    double uneven =
        33 * StrictMath.cbrt(Math.max(0.01, colour.toXyz().y() / 100)) * light.scatter() / 2;
    double share = correction.share();
    double l = Math.hypot(share * sd[0], uneven);
    double a = share * sd[1];
    double b = share * sd[2];
    if (correction.fromPaper()) {
      l = Math.hypot(l, PAPER_L);
      a = Math.hypot(a, PAPER_AB);
      b = Math.hypot(b, PAPER_AB);
    }
    return ColourSpread.of(colour, new double[][] {{l * l, 0, 0}, {0, a * a, 0}, {0, 0, b * b}});
  }

  private static List<String> doubts(Cells.Common dark, Cells.Common pale, boolean inHalfShade) {
    List<String> doubts = new ArrayList<>();
    double glare = Math.max(dark.glare(), pale.glare());
    double left = 1 - Math.min(dark.used(), pale.used());
    if (glare > 0.25) {
      doubts.add("glare, or still wet: " + percent(glare) + " of it is too bright and left out");
    } else if (inHalfShade && left > 0.3) {
      doubts.add("a shadow's edge crosses it: " + percent(left) + " of it is left out");
    } else if (left > 0.5) {
      doubts.add("gaps or streaks: " + percent(left) + " of it is left out");
    }
    if (Math.max(dark.spread(), pale.spread()) > 0.35) {
      doubts.add("uneven: brush it in two thin strokes");
    }
    return doubts;
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private Cells bareBlack(SheetField field, FieldPlace place, PaperLight light) {
    Area black = field.black();
    double bare = field.stroke().top() - black.top();
    double inset = Math.min(1, bare / 4);
    return Cells.of(
        photo,
        flat,
        place,
        light,
        new Area(black.left() + 1, black.top() + inset, black.width() - 2, bare - 2 * inset));
  }
}
