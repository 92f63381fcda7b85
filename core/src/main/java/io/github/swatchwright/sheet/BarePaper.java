package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * The bare paper about a part of the sheet, looked at in small steps, and the light that it shows.
 */
final class BarePaper {
  /** Distance of the places looked at, mm. */
  private static final double PITCH = 0.8;

  /** The ring about a field begins and ends so far from its halves, mm. */
  private static final double NEAREST = 0.8;

  private static final double FARTHEST = 2.2;

  /** Paint may spill over by that, mm, above and below a stroke. */
  private static final double SPILL = 1.6;

  private final SheetPhoto photo;
  private final Flattening flat;
  private final FieldPlace place;
  private final List<PaperLight.Sample> samples = new ArrayList<>();

  private BarePaper(SheetPhoto photo, Flattening flat, FieldPlace place) {
    this.photo = photo;
    this.flat = flat;
    this.place = place;
  }

  /**
   * The light on a field: by the paper half above and below its stroke, and all around.
   *
   * @throws IllegalArgumentException when hardly any bare paper is seen
   */
  static PaperLight on(SheetPhoto photo, Flattening flat, FieldPlace place, SheetField field) {
    BarePaper paper = new BarePaper(photo, flat, place);
    Area half = field.paper();
    Area black = field.black();
    paper.ring(
        new Area(black.left(), black.top(), half.right() - black.left(), black.height()),
        NEAREST,
        FARTHEST);
    double bare = field.stroke().top() - half.top() - SPILL;
    paper.look(new Area(half.left() + 2, half.top(), half.width() - 2, bare));
    paper.look(new Area(half.left() + 2, half.bottom() - bare, half.width() - 2, bare));
    return PaperLight.by(paper.samples);
  }

  /**
   * The light by a ring about an area as it was printed.
   *
   * @param nearest where the ring begins, mm from the area
   * @param farthest where it ends
   */
  static PaperLight about(
      SheetPhoto photo, Flattening flat, Area area, double nearest, double farthest) {
    BarePaper paper = new BarePaper(photo, flat, FieldPlace.AS_PRINTED);
    paper.ring(area, nearest, farthest);
    return PaperLight.by(paper.samples);
  }

  private void ring(Area area, double nearest, double farthest) {
    double thick = farthest - nearest;
    double left = area.left() - farthest;
    double wide = area.width() + 2 * farthest;
    look(new Area(left, area.top() - farthest, wide, thick));
    look(new Area(left, area.bottom() + nearest, wide, thick));
    look(new Area(left, area.top(), thick, area.height()));
    look(new Area(area.right() + nearest, area.top(), thick, area.height()));
  }

  private void look(Area area) {
    int half = Cells.half(flat, area.left(), area.top());
    double[] rgb = new double[3];
    for (double y = area.top() + PITCH / 2; y < area.bottom(); y += PITCH) {
      for (double x = area.left() + PITCH / 2; x < area.right(); x += PITCH) {
        Spot at = flat.at(x + place.dx(), y + place.dy());
        if (photo.mean(at.x(), at.y(), half, rgb)) {
          samples.add(new PaperLight.Sample(x, y, rgb.clone()));
        }
      }
    }
  }
}
