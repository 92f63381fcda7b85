package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.paint.Drawdown;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.sheet.FoundSheet;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetCode;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.SheetPhoto;
import io.github.swatchwright.sheet.SheetReader;
import io.github.swatchwright.sheet.SheetReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented paints, brushed onto an invented sheet with a colour chart, and photographed. */
public final class InventedSheet {
  /** Parts of white to one of a paint in its tint. */
  public static final int WHITE_PARTS = 5;

  /** How strokes differ in thickness, sd of its logarithm: brushed, or drawn over tape. */
  private static final double BRUSHED = 0.3;

  private static final double DRAWN = 0.08;

  private final List<InventedPaint> paints;
  private final List<InventedPaint> strokes;
  private final List<String> labels;
  private final Random random;
  private final List<Drawdown> painted = new ArrayList<>();

  private InventedSheet(
      List<InventedPaint> paints, List<InventedPaint> strokes, List<String> labels, Random random) {
    this.paints = paints;
    this.strokes = strokes;
    this.labels = labels;
    this.random = random;
  }

  /** A field for each paint; a seed draws them. */
  public static InventedSheet ofPaints(int count, long seed) {
    Random random = new Random(seed);
    List<InventedPaint> paints = InventedPaint.set(count, random);
    return new InventedSheet(
        paints, paints, paints.stream().map(InventedPaint::name).toList(), random);
  }

  /** The same, and a field for a tint of each but the white. */
  public static InventedSheet ofPaintsAndTints(int count, long seed) {
    InventedSheet plain = ofPaints(count, seed);
    InventedPaint white = plain.paints.get(0);
    List<InventedPaint> strokes = new ArrayList<>(plain.paints);
    List<String> labels = new ArrayList<>(plain.labels);
    for (InventedPaint paint : plain.paints.subList(1, count)) {
      strokes.add(white.with(paint, WHITE_PARTS, 1));
      labels.add(SheetPage.MIX + white.name() + ":" + WHITE_PARTS + ", " + paint.name() + ":1");
    }
    return new InventedSheet(plain.paints, strokes, labels, plain.random);
  }

  /** How many paints there are; the first one is white. */
  public int size() {
    return paints.size();
  }

  /** A paint's name. */
  public String name(int paint) {
    return paints.get(paint).name();
  }

  /** What it really looks like at full hiding. */
  public Lab masstone(int paint) {
    return paints.get(paint).masstone();
  }

  /** How well one coat of it really hides. */
  public double contrastRatioOfOneCoat(int paint) {
    return paints.get(paint).contrastRatio(Film.COAT);
  }

  /** What a mix of two really looks like at full hiding. */
  public Lab mix(int one, int other, double parts, double otherParts) {
    return paints.get(one).with(paints.get(other), parts, otherParts).masstone();
  }

  /** The sheet, brushed, as it is read from one ordinary photo of each page. */
  public List<SheetReading> photographed() throws IOException {
    return photographed(BRUSHED);
  }

  /** The same with strokes that were drawn over strips of tape. */
  public List<SheetReading> drawnAndPhotographed() throws IOException {
    return photographed(DRAWN);
  }

  private List<SheetReading> photographed(double thicknessSpread) throws IOException {
    Path file = Files.createTempFile("sheet", ".jpg");
    try {
      List<SheetReading> readings = new ArrayList<>();
      int first = 0;
      for (SheetPage page :
          SheetPage.pages(Paper.A4, labels, 24, SheetPage.NO_SHELF, Medium.ACRYLIC)) {
        int last = first + page.labels().size();
        SheetScene scene =
            new SheetScene(
                SheetLayout.of(page),
                strokes.subList(first, last),
                SheetTrials.patches(SheetTrials.Card.CHART),
                SheetCodes.of(page),
                random);
        scene.strokesDiffer(thicknessSpread);
        for (int i = 0; i < scene.paints.size(); i++) {
          painted.add(scene.drawdown(i));
        }
        Files.write(file, new SheetCamera(scene, ordinary(), 1500, 2000, random).shoot());
        readings.add(read(file));
        first = last;
      }
      return readings;
    } finally {
      Files.delete(file);
    }
  }

  /** What a stroke that was photographed really looks like, and how thick it is. */
  public Drawdown painted(int stroke) {
    return painted.get(stroke);
  }

  private static SheetCamera.Trouble ordinary() {
    return new SheetCamera.Trouble(10, 4, 0.01, 4800, 0.8, false, 1, -1, List.of(), 0.7, 0.005);
  }

  private static SheetReading read(Path file) {
    SheetPhoto photo = SheetPhoto.of(PhotoFile.open(file));
    FoundSheet found = FoundSheet.in(photo);
    SheetLayout layout =
        SheetLayout.of(SheetCode.parse(SheetCodeReader.textOn(found).orElseThrow()));
    return SheetReader.read(
        photo, found.on(layout), layout, SheetTrials.reference(SheetTrials.Card.CHART));
  }
}
