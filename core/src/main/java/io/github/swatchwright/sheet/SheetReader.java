package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.ColourSpread;
import io.github.swatchwright.mix.Prediction;
import io.github.swatchwright.photo.ChartCorrection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the fields of a sheet: light evened by the bare paper about each field, colours corrected
 * by what lies on the sheet, the stroke over black and over paper averaged without gaps and glare.
 */
public final class SheetReader {
  /** Printed black is darker than this share of the paper, where nothing covers it. */
  private static final double BLACKEST = 0.25;

  /** Nearer than that to the bare sheet, in natural logarithms, a half is blank. */
  private static final double BLANK = 0.07;

  /** Edges wider than that, mm, blur the halves of a field into each other. */
  private static final double MOST_BLURRED = 1.9;

  /** Steps of L*, a*, b* by which the errors of what follows from a stroke are worked out. */
  private static final double STEP = 0.5;

  /** Error of each half by itself, sd of L*: noise and streaks; the rest is common to both. */
  private static final double OWN_ERROR = 0.8;

  /**
   * How large a correction's error is on a sheet, as a share of its error on things that stand
   * about in a picture: here bare paper is about each field. By a chart; set on the trial photos of
   * seeds 1000 to 1059, as are the other errors here.
   */
  private static final double BY_CHART = 0.48;

  /** The same by a grey card, or by the paper. */
  private static final double BY_GREY = 0.68;

  /** What not knowing the paper's own colour adds, sd of L* and of a* and b*. */
  private static final double PAPER_L = 1.2;

  private static final double PAPER_AB = 1.3;

  /** What taking X, Y and Z for three bands adds to the error at full hiding, sd. */
  private static final double THREE_BANDS = 1.3;

  /** Below this contrast ratio the colour at full hiding is more guessed than read. */
  private static final double TRANSLUCENT = 0.6;

  private static final double MOST_ERROR = 20;

  private final SheetPhoto photo;
  private final Flattening flat;
  private final SheetLayout layout;
  private final SheetCorrection correction;

  private SheetReader(
      SheetPhoto photo, Flattening flat, SheetLayout layout, SheetReference reference) {
    this.photo = photo;
    this.flat = flat;
    this.layout = layout;
    this.correction = SheetCorrection.of(reference, photo, flat, layout);
  }

  /**
   * Reads a page.
   *
   * @param photo the photo
   * @param flat where its places are in the photo, from {@link FoundSheet#on}
   * @param layout the page
   * @param reference what on it has known colours
   * @throws IllegalArgumentException when the photo is too blurred, or the reference isn't there
   */
  public static SheetReading read(
      SheetPhoto photo, Flattening flat, SheetLayout layout, SheetReference reference) {
    return new SheetReader(photo, flat, layout, reference).all();
  }

  private SheetReading all() {
    List<FieldReading> fields = new ArrayList<>();
    List<Double> edges = new ArrayList<>();
    for (SheetField field : layout.fields()) {
      FieldPlace place = FieldPlace.of(photo, flat, field);
      if (place.edge() > 0) {
        edges.add(place.edge());
      }
      fields.add(read(field, place));
    }
    double edge =
        PaperLight.quantile(edges.stream().mapToDouble(Double::doubleValue).toArray(), 0.5);
    if (edge > MOST_BLURRED) {
      throw new IllegalArgumentException(
          String.format(
              java.util.Locale.ROOT,
              "the photo is blurred: edges are %.1f mm wide, must be %.1f at most; hold the camera"
                  + " still and let it focus",
              edge,
              MOST_BLURRED));
    }
    List<String> doubts = new ArrayList<>();
    if (correction.fromPaper()) {
      doubts.add(
          "colours are corrected by the paper alone: lay a grey card or a colour chart on its"
              + " place to be about twice as near");
    }
    return new SheetReading(
        layout, correction.words(), correction.lab(new double[] {1, 1, 1}), fields, doubts);
  }

  private FieldReading read(SheetField field, FieldPlace place) {
    PaperLight light;
    Cells bare;
    Cells onBlack;
    Cells onPaper;
    try {
      light = light(field, place);
      bare = bareBlack(field, place, light);
      onBlack = Cells.of(photo, flat, place, light, field.readOverBlack());
      onPaper = Cells.of(photo, flat, place, light, field.readOverPaper());
    } catch (IllegalArgumentException e) {
      return unread(field, String.valueOf(e.getMessage()));
    }
    if (bare.isEmpty() || onBlack.isEmpty() || onPaper.isEmpty()) {
      return unread(field, "glare, a shadow's edge or the photo's edge hides it");
    }
    double[] black = bare.quantiles(0.4);
    if (black[1] > BLACKEST) {
      return unread(field, "its printed black isn't seen: covered, torn or in glare");
    }
    double[] white = {1, 1, 1};
    Cells.Common dark = onBlack.common(black);
    Cells.Common pale = onPaper.common(white);
    double[] whole = onPaper.quantiles(0.5);
    if (Cells.distance(whole, white) < BLANK
        && Cells.distance(onBlack.quantiles(0.5), black) < 3 * BLANK) {
      return unread(field, "blank");
    }
    return reading(field, light, black, dark, pale);
  }

  private static FieldReading unread(SheetField field, String why) {
    return new FieldReading(field, Optional.empty(), 1, List.of(why));
  }

  private FieldReading reading(
      SheetField field, PaperLight light, double[] black, Cells.Common dark, Cells.Common pale) {
    Lab overBlack = correction.lab(dark.rgb());
    Lab overPaper = correction.lab(pale.rgb());
    Lab bare = correction.lab(black);
    Lab paper = correction.lab(new double[] {1, 1, 1});
    Drawdown drawdown = Drawdown.of(overBlack, overPaper, bare, paper);
    ColourSpread spread = spread(overPaper, light);
    double[] sd = spread.standardDeviations();
    double error = Math.sqrt((sd[0] * sd[0] + sd[1] * sd[1] + sd[2] * sd[2]) / 3);
    double own = sensitivity(overBlack, overPaper, bare, paper, drawdown);
    double masstoneError = Math.min(MOST_ERROR, Math.hypot(Math.hypot(error, own), THREE_BANDS));
    double leftOut = 1 - Math.min(dark.used(), pale.used());
    return new FieldReading(
        field,
        Optional.of(
            new FieldReading.Read(
                overBlack,
                overPaper,
                bare,
                paper,
                drawdown,
                error,
                masstoneError,
                spread.radius(Prediction.INTERVAL_PROBABILITY))),
        leftOut,
        doubts(light, dark, pale, drawdown));
  }

  /** The error of a colour over paper. */
  private ColourSpread spread(Lab colour, PaperLight light) {
    double[] sd = correction.correction().spread(colour, false).standardDeviations();
    double uneven = 33 * Math.cbrt(Math.max(0.01, colour.toXyz().y() / 100)) * light.scatter() / 2;
    double share = correction.correction() instanceof ChartCorrection ? BY_CHART : BY_GREY;
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

  /** How far the colour at full hiding moves when each half is off by its own error. */
  private static double sensitivity(
      Lab overBlack, Lab overPaper, Lab black, Lab paper, Drawdown drawdown) {
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      Lab dark = Drawdown.of(moved(overBlack, axis), overPaper, black, paper).masstone();
      Lab pale = Drawdown.of(overBlack, moved(overPaper, axis), black, paper).masstone();
      sum += square(dark, drawdown.masstone()) + square(pale, drawdown.masstone());
    }
    return OWN_ERROR * Math.sqrt(sum / 3) / STEP;
  }

  private static Lab moved(Lab lab, int axis) {
    return Lab.ofD65(
        Math.min(100, lab.l() + (axis == 0 ? STEP : 0)),
        lab.a() + (axis == 1 ? STEP : 0),
        lab.b() + (axis == 2 ? STEP : 0));
  }

  private static double square(Lab one, Lab other) {
    double l = one.l() - other.l();
    double a = one.a() - other.a();
    double b = one.b() - other.b();
    return l * l + a * a + b * b;
  }

  private static List<String> doubts(
      PaperLight light, Cells.Common dark, Cells.Common pale, Drawdown drawdown) {
    List<String> doubts = new ArrayList<>();
    double glare = Math.max(dark.glare(), pale.glare());
    double left = 1 - Math.min(dark.used(), pale.used());
    if (glare > 0.25) {
      doubts.add("glare, or still wet: " + percent(glare) + " of it is too bright and left out");
    } else if (left > 0.5) {
      doubts.add("gaps or streaks: " + percent(left) + " of it is left out");
    }
    if (Math.max(dark.spread(), pale.spread()) > 0.35) {
      doubts.add("uneven: brush it in two thin strokes");
    }
    if (light.hasEdge()) {
      doubts.add("a shadow's edge crosses it");
    }
    if (drawdown.contrastRatio() < TRANSLUCENT) {
      doubts.add("hardly hides: its colour at full hiding is worked out, another coat tells more");
    }
    return doubts;
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** The light by bare paper about a field: the paper half above and below, and all around. */
  private PaperLight light(SheetField field, FieldPlace place) {
    Area block =
        new Area(
            field.black().left(),
            field.black().top(),
            field.paper().right() - field.black().left(),
            field.black().height());
    List<PaperLight.Sample> samples = new ArrayList<>();
    ring(samples, photo, flat, place, block, 0.8, 2.2);
    double bare = field.stroke().top() - field.paper().top() - 1.6;
    double wide = field.paper().width() - 2;
    double left = field.paper().left() + 2;
    add(samples, photo, flat, place, new Area(left, field.paper().top(), wide, bare));
    add(samples, photo, flat, place, new Area(left, field.paper().bottom() - bare, wide, bare));
    return PaperLight.by(samples);
  }

  static PaperLight lightAbout(
      SheetPhoto photo,
      Flattening flat,
      FieldPlace place,
      Area area,
      double nearest,
      double farthest) {
    List<PaperLight.Sample> samples = new ArrayList<>();
    ring(samples, photo, flat, place, area, nearest, farthest);
    return PaperLight.by(samples);
  }

  private static void ring(
      List<PaperLight.Sample> samples,
      SheetPhoto photo,
      Flattening flat,
      FieldPlace place,
      Area area,
      double nearest,
      double farthest) {
    double thick = farthest - nearest;
    double left = area.left() - farthest;
    double wide = area.width() + 2 * farthest;
    add(samples, photo, flat, place, new Area(left, area.top() - farthest, wide, thick));
    add(samples, photo, flat, place, new Area(left, area.bottom() + nearest, wide, thick));
    add(samples, photo, flat, place, new Area(left, area.top(), thick, area.height()));
    add(
        samples,
        photo,
        flat,
        place,
        new Area(area.right() + nearest, area.top(), thick, area.height()));
  }

  private static void add(
      List<PaperLight.Sample> samples,
      SheetPhoto photo,
      Flattening flat,
      FieldPlace place,
      Area area) {
    int half = Cells.half(flat, area.left(), area.top());
    double[] rgb = new double[3];
    for (double y = area.top() + 0.4; y < area.bottom(); y += 0.8) {
      for (double x = area.left() + 0.4; x < area.right(); x += 0.8) {
        Spot at = flat.at(x + place.dx(), y + place.dy());
        if (photo.mean(at.x(), at.y(), half, rgb)) {
          samples.add(new PaperLight.Sample(x, y, rgb.clone()));
        }
      }
    }
  }

  private Cells bareBlack(SheetField field, FieldPlace place, PaperLight light) {
    double bare = field.stroke().top() - field.black().top();
    double inset = Math.min(1, bare / 4);
    return Cells.of(
        photo,
        flat,
        place,
        light,
        new Area(
            field.black().left() + 1,
            field.black().top() + inset,
            field.black().width() - 2,
            bare - 2 * inset));
  }
}
