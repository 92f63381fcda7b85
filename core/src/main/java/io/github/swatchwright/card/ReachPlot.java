package io.github.swatchwright.card;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.match.ShelfReach;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A picture of what a shelf can be mixed to: once from above, by hue and strength (a* and b*), once
 * from the side, lightness by hue. Told by shape as well as by colour: discs can be mixed, crosses
 * can't, squares are the bottles.
 *
 * @param report the shelf
 * @param reach what it can be mixed to
 */
public record ReachPlot(ShelfReport report, ShelfReach reach) {
  private static final double WIDTH = 1080;
  private static final double HEIGHT = 660;
  private static final int LONGEST_TITLE = 60;
  private static final int MOST_GAPS = 4;

  /** Discs are so far apart: in a* and b*, in L*, and in degrees of hue. */
  private static final double AB_APART = 5;

  private static final double L_APART = 5;
  private static final double HUE_APART = 6;

  /** Hue and lightness are told for bins of this width; grey has no hue. */
  private static final double HUE_BIN = 30;

  private static final double GREY_CHROMA = 10;

  private static final PlotPanel FROM_ABOVE =
      new PlotPanel(
          90,
          110,
          new PlotPanel.Axis(-100, 100, 50, "a*: from green to red"),
          new PlotPanel.Axis(-100, 100, 50, "b*: from blue to yellow"));
  private static final PlotPanel FROM_THE_SIDE =
      new PlotPanel(
          620,
          110,
          new PlotPanel.Axis(0, 360, 90, "hue in degrees: red 25, yellow 90, green 165, blue 245"),
          new PlotPanel.Axis(0, 100, 20, "L*: from dark to light"));

  /** The picture as an SVG file. */
  public String toSvg() {
    List<Markup> shapes = new ArrayList<>();
    shapes.add(
        Markup.of("rect").with("width", WIDTH).with("height", HEIGHT).with("fill", "#FFFFFF"));
    shapes.add(
        PlotPanel.text(40, 44, "start", title()).with("font-size", 24).with("font-weight", "bold"));
    shapes.add(PlotPanel.text(40, 70, "start", share()));
    shapes.addAll(FROM_ABOVE.frame("From above"));
    shapes.addAll(FROM_THE_SIDE.frame("Lightness by hue, without greys"));
    shapes.addAll(above());
    shapes.addAll(side());
    shapes.addAll(legend());
    Markup all = Markup.of("g").with("font-family", "sans-serif").with("font-size", 15).add(shapes);
    return new Figure(WIDTH, HEIGHT, title() + ". " + share() + " " + gaps(), List.of(all))
        .toFile();
  }

  private String title() {
    String name = report.name();
    int length = name.codePointCount(0, name.length());
    String shown =
        length <= LONGEST_TITLE
            ? name
            : name.substring(0, name.offsetByCodePoints(0, LONGEST_TITLE)) + "…";
    return "What can be mixed from " + shown;
  }

  private String share() {
    return String.format(
        Locale.ROOT,
        "%.0f %% of the colours that a display shows can be mixed to within ΔE00 %.0f, of up to"
            + " three paints (estimated).",
        100 * reach.share(),
        ShelfReach.LIMIT);
  }

  private String gaps() {
    return reach.gaps().isEmpty()
        ? "No gaps."
        : reach.gaps().stream()
            .limit(MOST_GAPS)
            .map(ShelfReach.Gap::name)
            .collect(Collectors.joining(", ", "Gaps: ", "."));
  }

  private List<Markup> above() {
    List<Markup> shapes = new ArrayList<>();
    Map<List<Long>, Lab> cells = new LinkedHashMap<>();
    for (Lab mix : reach.mixes()) {
      List<Long> cell = List.of(Math.round(mix.a() / AB_APART), Math.round(mix.b() / AB_APART));
      cells.merge(cell, mix, (one, other) -> nearerToMiddle(one, other));
    }
    cells.values().stream()
        .filter(mix -> FROM_ABOVE.holds(mix.a(), mix.b()))
        .forEach(mix -> shapes.add(FROM_ABOVE.disc(mix.a(), mix.b(), mix)));
    Map<List<Double>, Boolean> reached = new LinkedHashMap<>();
    reach
        .grid()
        .forEach(
            one ->
                reached.merge(
                    List.of(one.lab().a(), one.lab().b()), one.withinReach(), Boolean::logicalOr));
    reached.forEach(
        (place, any) -> {
          if (!any && FROM_ABOVE.holds(place.get(0), place.get(1))) {
            shapes.add(FROM_ABOVE.cross(place.get(0), place.get(1)));
          }
        });
    for (ShelfReport.Entry entry : report.paints()) {
      entry
          .masstone()
          .filter(lab -> FROM_ABOVE.holds(lab.a(), lab.b()))
          .ifPresent(
              lab -> shapes.add(FROM_ABOVE.square(lab.a(), lab.b(), lab, entry.paint().name())));
    }
    return shapes;
  }

  private static Lab nearerToMiddle(Lab one, Lab other) {
    return Math.abs(one.l() - 60) <= Math.abs(other.l() - 60) ? one : other;
  }

  private List<Markup> side() {
    List<Markup> shapes = new ArrayList<>();
    Map<List<Long>, Lab> cells = new LinkedHashMap<>();
    for (Lab mix : reach.mixes()) {
      if (mix.chroma() >= GREY_CHROMA) {
        List<Long> cell = List.of(Math.round(hue(mix) / HUE_APART), Math.round(mix.l() / L_APART));
        cells.merge(cell, mix, (one, other) -> one.chroma() >= other.chroma() ? one : other);
      }
    }
    cells.values().forEach(mix -> shapes.add(FROM_THE_SIDE.disc(hue(mix), mix.l(), mix)));
    reach.grid().stream()
        .filter(one -> one.lab().chroma() >= GREY_CHROMA)
        .collect(
            Collectors.groupingBy(
                one -> List.of(Math.floor(hue(one.lab()) / HUE_BIN), one.lab().l()),
                LinkedHashMap::new,
                Collectors.toList()))
        .forEach(
            (bin, colours) -> {
              long missing = colours.stream().filter(one -> !one.withinReach()).count();
              if (2 * missing >= colours.size()) {
                shapes.add(FROM_THE_SIDE.cross((bin.get(0) + 0.5) * HUE_BIN, bin.get(1)));
              }
            });
    report.paints().stream()
        .filter(entry -> entry.masstone().map(Lab::chroma).orElse(0.0) >= GREY_CHROMA)
        .sorted(Comparator.comparing(entry -> entry.paint().name()))
        .forEach(
            entry -> {
              Lab lab = entry.masstone().orElseThrow();
              shapes.add(FROM_THE_SIDE.square(hue(lab), lab.l(), lab, entry.paint().name()));
            });
    return shapes;
  }

  private static double hue(Lab lab) {
    return lab.hueDegrees().orElse(0);
  }

  private static List<Markup> legend() {
    double y = HEIGHT - 38;
    Lab sample = Lab.ofD65(45, 35, 35);
    return List.of(
        PlotPanel.squareAt(52, y - 5, sample),
        PlotPanel.text(68, y, "start", "a bottle"),
        PlotPanel.discAt(172, y - 5, sample),
        PlotPanel.text(186, y, "start", "a mix"),
        PlotPanel.crossAt(262, y - 5),
        PlotPanel.text(
            276,
            y,
            "start",
            "out of reach: left, at every lightness; right, half or more of that hue and"
                + " lightness"));
  }
}
