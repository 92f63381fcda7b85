package io.github.swatchwright.sheet;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.photo.Chart;
import io.github.swatchwright.photo.ChartPatch;
import io.github.swatchwright.photo.NeutralPatch;
import io.github.swatchwright.photo.PhotoCorrection;
import io.github.swatchwright.photo.PixelShares;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.photo.RegionSample;
import java.util.ArrayList;
import java.util.List;

/**
 * From light relative to the bare paper to colours under daylight.
 *
 * @param correction as in any photo
 * @param paperAs the light of bare paper
 * @param fromPaper whether the paper itself is what it corrects by
 * @param share how large its error is on a sheet, as a share of its error on things that stand
 *     about in a picture: here bare paper is about each field
 */
record SheetCorrection(
    PhotoCorrection correction, LinearRgb paperAs, boolean fromPaper, double share) {
  /** The share by a chart; set on the trial photos of seeds 1000 to 1059. */
  private static final double BY_CHART = 0.48;

  /** The same by a grey card, or by the paper. */
  private static final double BY_GREY = 0.68;

  /** A card may lie a little beside its place: only the middle of it is read. */
  private static final double CARD_EDGE = 0.2;

  static SheetCorrection of(
      SheetReference reference, SheetPhoto photo, Flattening flat, SheetLayout layout) {
    if (reference instanceof PaperWhite white) {
      LinearRgb paper = LinearRgb.ofXyz(white.colour().toXyz());
      // Paper is multiplied in, so that what is left to correct is a neutral of its own lightness.
      double y = white.colour().toXyz().y();
      return new SheetCorrection(
          PhotoCorrection.ofGreys(List.of(neutral(new double[] {y / 100, y / 100, y / 100}, y))),
          paper,
          true,
          BY_GREY);
    }
    LinearRgb one = new LinearRgb(1, 1, 1);
    Area card = layout.card();
    PaperLight light = BarePaper.about(photo, flat, card, 2.5, 5);
    if (reference instanceof GreyCard grey) {
      Area middle = card.inset(CARD_EDGE * card.width(), CARD_EDGE * card.height());
      Cells cells = Cells.of(photo, flat, FieldPlace.AS_PRINTED, light, middle);
      double[] base = {1, 1, 1};
      if (cells.isEmpty() || Cells.distance(cells.quantiles(0.5), base) < 0.15) {
        throw new IllegalArgumentException(
            "there is no grey card on its place: it looks like the paper about it");
      }
      PhotoCorrection correction =
          PhotoCorrection.ofGreys(List.of(neutral(cells.common(base).rgb(), grey.luminance())));
      return new SheetCorrection(correction, one, false, BY_GREY);
    }
    Chart chart = ((ColourChart) reference).chart();
    return new SheetCorrection(
        PhotoCorrection.ofChart(patches(chart, photo, flat, card, light)), one, false, BY_CHART);
  }

  private static List<ChartPatch> patches(
      Chart chart, SheetPhoto photo, Flattening flat, Area card, PaperLight light) {
    List<ChartPatch> seen = new ArrayList<>();
    for (Chart.Patch patch : chart.patches()) {
      Area whole =
          new Area(
              card.left() + patch.left() * card.width(),
              card.top() + patch.top() * card.height(),
              patch.width() * card.width(),
              patch.height() * card.height());
      Cells cells = Cells.of(photo, flat, FieldPlace.AS_PRINTED, light, whole);
      if (!cells.isEmpty()) {
        double[] rgb = cells.common(new double[] {5, 5, 5}).rgb();
        seen.add(new ChartPatch(new LinearRgb(rgb[0], rgb[1], rgb[2]), patch.known()));
      }
    }
    return seen;
  }

  private static NeutralPatch neutral(double[] rgb, double luminance) {
    LinearRgb mean = new LinearRgb(rgb[0], rgb[1], rgb[2]);
    return new NeutralPatch(
        new RegionSample(
            new Region(0, 0, 1, 1), mean, new PixelShares(1, 0, 0, 0, 0, 0), List.of(mean)),
        luminance);
  }

  /** The colour of what is seen as this light, relative to the bare paper. */
  Lab lab(double[] relative) {
    LinearRgb seen =
        new LinearRgb(
            relative[0] * paperAs.red(),
            relative[1] * paperAs.green(),
            relative[2] * paperAs.blue());
    Lab lab = correction.apply(seen).toXyz().toLab();
    return Lab.ofD65(Math.max(0, Math.min(100, lab.l())), lab.a(), lab.b());
  }

  String words() {
    return fromPaper ? "white of the paper alone" : correction.reference();
  }
}
