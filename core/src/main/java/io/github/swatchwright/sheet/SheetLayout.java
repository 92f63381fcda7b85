package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Where everything is on a page, as data: another program may print its own.
 *
 * @param width of the paper, mm
 * @param height of the paper, mm
 * @param marks the centres of its ring marks: the corners first, clockwise from the left upper one,
 *     then others on lines between them, so that the page turned by 180° doesn't look the same;
 *     {@value #FEWEST_MARKS} to {@value #MOST_MARKS}
 * @param code where the code is
 * @param card where a grey card or a colour chart may be laid
 * @param greys the printed grey steps, from black to light
 * @param fields the fields
 * @param page what the code says
 */
public record SheetLayout(
    double width,
    double height,
    List<Spot> marks,
    Area code,
    Area card,
    List<Area> greys,
    List<SheetField> fields,
    SheetPage page) {

  /** Fewer marks can't tell what the lens bends. */
  public static final int FEWEST_MARKS = 7;

  /** The most marks. */
  public static final int MOST_MARKS = 40;

  /** Outer radius of a mark's ring, mm. */
  public static final double MARK_RADIUS = 4;

  /** Inner radius of a mark's ring, mm. */
  public static final double MARK_HOLE = 2.7;

  /** Radius of the dot in a mark, mm. */
  public static final double MARK_DOT = 1.5;

  /** Printers reach no nearer to the edge than about 5 mm (common practice). */
  private static final double MARGIN = 10;

  private static final double[] LEFT_MARKS = {0.25, 0.5, 0.75};
  private static final double[] RIGHT_MARKS = {1 / 3.0, 2 / 3.0};
  private static final double TOP_MARK = 0.6;
  private static final double BOTTOM_MARK = 0.55;
  private static final double HEAD = 46;
  private static final double FOOT = 14;
  private static final double CODE = 40;
  private static final double LABEL = 6;

  /** Lower fields, with their labels, leave no room for a stroke and bare black above and below. */
  private static final double LOWEST_CELL = 18;

  private static final int GREY_STEPS = 6;

  /** Copies the lists, and refuses what isn't on the paper. */
  public SheetLayout {
    Require.within("width", width, 50, 500);
    Require.within("height", height, 50, 500);
    marks = List.copyOf(marks);
    greys = List.copyOf(greys);
    fields = List.copyOf(fields);
    Require.within("the number of marks", marks.size(), FEWEST_MARKS, MOST_MARKS);
    Require.within("the number of fields", fields.size(), 1, 100);
    Area paper = new Area(0, 0, width, height);
    List<Area> areas = new ArrayList<>(greys);
    areas.add(code);
    areas.add(card);
    for (SheetField field : fields) {
      areas.add(field.black());
      areas.add(field.paper());
      areas.add(field.stroke());
    }
    for (Area area : areas) {
      if (!paper.contains(area)) {
        throw new IllegalArgumentException(area + " reaches beyond the paper");
      }
    }
    for (Spot mark : marks) {
      Require.within("x of a mark", mark.x(), 0, width);
      Require.within("y of a mark", mark.y(), 0, height);
    }
  }

  /** The usual layout of a page. */
  public static SheetLayout of(SheetPage page) {
    double width = page.paper().width();
    double height = page.paper().height();
    double left = 2 * MARGIN;
    double across = width - 2 * left;
    double card = Math.min(62, across - CODE - 24);
    return new SheetLayout(
        width,
        height,
        marks(width, height),
        usualCode(),
        new Area(width - left - card, MARGIN + 6, card, CODE - 6),
        greys(left, height),
        fields(page, left, across, height),
        page);
  }

  /** The marks of the usual layouts: the same shares of the frame on each paper. */
  public static List<Spot> usualMarks(Paper paper) {
    return marks(paper.width(), paper.height());
  }

  /** Where the usual layouts have their code: the same place on each paper. */
  public static Area usualCode() {
    return new Area(2 * MARGIN, MARGIN - 2, CODE, CODE);
  }

  private static List<Spot> marks(double width, double height) {
    double right = width - MARGIN;
    double bottom = height - MARGIN;
    List<Spot> marks = new ArrayList<>();
    marks.add(new Spot(MARGIN, MARGIN));
    marks.add(new Spot(right, MARGIN));
    marks.add(new Spot(right, bottom));
    marks.add(new Spot(MARGIN, bottom));
    for (double share : LEFT_MARKS) {
      marks.add(new Spot(MARGIN, MARGIN + share * (bottom - MARGIN)));
    }
    for (double share : RIGHT_MARKS) {
      marks.add(new Spot(right, MARGIN + share * (bottom - MARGIN)));
    }
    marks.add(new Spot(MARGIN + TOP_MARK * (right - MARGIN), MARGIN));
    marks.add(new Spot(MARGIN + BOTTOM_MARK * (right - MARGIN), bottom));
    return marks;
  }

  private static List<Area> greys(double left, double height) {
    List<Area> greys = new ArrayList<>();
    for (int step = 0; step < GREY_STEPS; step++) {
      greys.add(new Area(left + 9.0 * step, height - FOOT, 9, 8));
    }
    return greys;
  }

  private static List<SheetField> fields(
      SheetPage page, double left, double across, double height) {
    double top = MARGIN + HEAD;
    double cellWidth = across / page.columns();
    double cellHeight = (height - FOOT - 3 - top) / page.rows();
    if (cellHeight < LOWEST_CELL) {
      throw new IllegalArgumentException(
          "there is no room for "
              + page.rows()
              + " rows of fields on "
              + page.paper().word()
              + "; put fewer on a page, or take larger paper");
    }
    List<SheetField> fields = new ArrayList<>();
    for (int i = 0; i < page.labels().size(); i++) {
      double x = left + i % page.columns() * cellWidth + 2.5;
      int row = i / page.columns();
      double y = top + row * cellHeight + LABEL;
      double half = (cellWidth - 5) / 2;
      double high = cellHeight - LABEL - 2;
      double bare = Math.max(3.2, 0.2 * high);
      fields.add(
          new SheetField(
              page.labels().get(i),
              new Area(x, y, half, high),
              new Area(x + half, y, half, high),
              new Area(x + 3, y + bare, 2 * half - 6, high - 2 * bare)));
    }
    return fields;
  }
}
