package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.cli.photo.PhotoFile;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.photo.Chart;
import io.github.swatchwright.sheet.FieldReading;
import io.github.swatchwright.sheet.FoundSheet;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetCode;
import io.github.swatchwright.sheet.SheetLayout;
import io.github.swatchwright.sheet.SheetPage;
import io.github.swatchwright.sheet.SheetPhoto;
import io.github.swatchwright.sheet.SheetReader;
import io.github.swatchwright.sheet.SheetReading;
import io.github.swatchwright.sheet.SheetReference;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Many photos of many sheets: how many are found, and how far what is read is off. Arguments: how
 * many photos, their longer side in pixels, the first seed, and a folder that keeps the photos that
 * weren't found.
 */
final class SheetTrials {
  /** What a sheet's card place holds. */
  enum Card {
    CHART,
    GREY,
    NONE
  }

  private final Map<Card, List<double[]>> errors = new LinkedHashMap<>();
  private final Map<String, List<double[]>> byDoubt = new TreeMap<>();
  private final List<String> failures = new ArrayList<>();
  private int photos;
  private int found;
  private int strokes;
  private int unread;
  private int swapped;

  public static void main(String[] args) throws IOException {
    int count = Integer.parseInt(args[0]);
    int longer = Integer.parseInt(args[1]);
    long seed = Long.parseLong(args[2]);
    Path keep = Path.of(args[3]);
    Path file = Files.createTempFile("sheet", ".jpg");
    SheetTrials trials = new SheetTrials();
    for (int i = 0; i < count; i++) {
      trials.one(seed + i, longer, file, keep);
      if (i % 10 == 9) {
        System.out.print(trials.table());
      }
    }
    Files.delete(file);
    System.out.print(trials.table());
  }

  /** A sheet of invented paints that a seed draws. */
  static SheetScene scene(Random random, Card card, Paper paper) {
    int fields = 12 + random.nextInt(13);
    List<InventedPaint> paints = InventedPaint.set(fields, random);
    List<String> names = paints.stream().map(InventedPaint::name).toList();
    SheetPage page =
        SheetPage.pages(paper, names, fields, SheetPage.NO_SHELF, Medium.ACRYLIC).get(0);
    return new SheetScene(SheetLayout.of(page), paints, patches(card), SheetCodes.of(page), random);
  }

  static List<Reflectance> patches(Card card) {
    if (card == Card.NONE) {
      return List.of();
    }
    if (card == Card.GREY) {
      return List.of(Reflectance.constant(0.18));
    }
    Random random = new Random(24);
    List<Reflectance> patches = new ArrayList<>();
    List<InventedPaint> paints = InventedPaint.set(26, random);
    for (int i = 0; i < 18; i++) {
      patches.add(paints.get(i + 1).over(Reflectance.constant(0.8), 3));
    }
    for (double grey : new double[] {0.9, 0.59, 0.36, 0.19, 0.09, 0.04}) {
      patches.add(Reflectance.constant(grey));
    }
    return patches;
  }

  static SheetReference reference(Card card) {
    return switch (card) {
      case CHART ->
          SheetReference.ofChart(
              Chart.ofGrid(
                  6,
                  patches(card).stream()
                      .map(patch -> TristimulusWeights.D65.xyz(patch).toLab())
                      .toList()));
      case GREY -> SheetReference.ofGreyCard(18);
      case NONE -> SheetReference.ofPaper(SheetReference.USUAL_PAPER);
    };
  }

  private void one(long seed, int longer, Path file, Path keep) throws IOException {
    Random random = new Random(seed);
    Card card = List.of(Card.CHART, Card.GREY, Card.NONE).get((int) (seed % 3));
    Paper paper = seed / 3 % 5 == 4 ? Paper.LETTER : Paper.A4;
    SheetScene scene = scene(random, card, paper);
    SheetCamera.Trouble trouble = SheetCamera.Trouble.drawn(random, scene.paints.size());
    boolean wide = Math.abs(Math.sin(Math.toRadians(trouble.roll()))) > 0.7;
    int width = wide ? longer : longer * 3 / 4;
    int height = wide ? longer * 3 / 4 : longer;
    Files.write(file, new SheetCamera(scene, trouble, width, height, random).shoot());
    photos++;
    try {
      SheetPhoto photo = SheetPhoto.of(PhotoFile.open(file));
      FoundSheet sheet = FoundSheet.in(photo);
      String text = SheetCodeReader.textOn(sheet).orElse("");
      if (text.isEmpty()) {
        throw new IllegalArgumentException("code not read");
      }
      SheetLayout layout = SheetLayout.of(SheetCode.parse(text));
      SheetReading reading = SheetReader.read(photo, sheet.on(layout), layout, reference(card));
      found++;
      for (int i = 0; i < scene.paints.size(); i++) {
        compare(card, scene, i, reading.fields().get(i), seed);
      }
    } catch (IllegalArgumentException e) {
      failures.add(seed + " " + trouble + ": " + e.getMessage());
      Files.copy(
          file,
          keep.resolve("failed-" + seed + ".jpg"),
          java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private void compare(Card card, SheetScene scene, int i, FieldReading field, long seed) {
    InventedPaint paint = scene.paints.get(i);
    strokes++;
    if (!field.field().label().equals(paint.name())) {
      swapped++;
      return;
    }
    if (field.read().isEmpty()) {
      unread++;
      failures.add(seed + " field " + i + ": " + field.doubts());
      return;
    }
    FieldReading.Read read = field.read().get();
    Lab pale = TristimulusWeights.D65.xyz(paint.over(scene.paper, scene.thickness[i])).toLab();
    Lab dark = TristimulusWeights.D65.xyz(paint.over(scene.ink, scene.thickness[i])).toLab();
    double ratio = paint.contrastRatio(scene.thickness[i]);
    double off = Ciede2000.deltaE(read.overPaper(), pale);
    double opaqueOff = Ciede2000.deltaE(read.opaque().masstone(), paint.masstone());
    double[] row = {
      off,
      Ciede2000.deltaE(read.overBlack(), dark),
      opaqueOff,
      Math.abs(read.opaque().contrastRatio() - ratio),
      off <= read.interval() ? 1 : 0,
      field.doubts().isEmpty() ? 0 : 1,
      off / read.interval(),
      opaqueOff / read.opaque().interval(),
    };
    errors.computeIfAbsent(card, none -> new ArrayList<>()).add(row);
    List<String> doubts = field.doubts().isEmpty() ? List.of("none") : field.doubts();
    for (String doubt : doubts) {
      byDoubt.computeIfAbsent(doubt.split("[:,]", -1)[0], none -> new ArrayList<>()).add(row);
    }
  }

  private String table() {
    StringBuilder table = new StringBuilder();
    table.append(
        String.format(
            Locale.ROOT,
            "%d photos, %d found and read (%.1f %%); %d strokes, %d not read, %d swapped%n",
            photos,
            found,
            100.0 * found / photos,
            strokes,
            unread,
            swapped));
    errors.forEach(
        (card, rows) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "%-6s %5d strokes; over paper %.2f/%.2f, over black %.2f/%.2f, full hiding"
                        + " %.2f/%.2f, contrast ratio %.3f/%.3f, 80 %% interval held %.0f %%,"
                        + " doubted %.0f %%, off/interval %.2f,"
                        + " full hiding held %.0f %%, off/interval %.2f%n",
                    card,
                    rows.size(),
                    quantile(rows, 0, 0.5),
                    quantile(rows, 0, 0.9),
                    quantile(rows, 1, 0.5),
                    quantile(rows, 1, 0.9),
                    quantile(rows, 2, 0.5),
                    quantile(rows, 2, 0.9),
                    quantile(rows, 3, 0.5),
                    quantile(rows, 3, 0.9),
                    100 * rows.stream().mapToDouble(row -> row[4]).average().orElseThrow(),
                    100 * rows.stream().mapToDouble(row -> row[5]).average().orElseThrow(),
                    quantile(rows, 6, 0.8),
                    100.0 * rows.stream().filter(row -> row[7] <= 1).count() / rows.size(),
                    quantile(rows, 7, 0.8))));
    byDoubt.forEach(
        (doubt, rows) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "  %s: %d; over paper %.2f/%.2f, full hiding %.2f/%.2f, contrast ratio"
                        + " %.3f/%.3f, full hiding held %.0f %%%n",
                    doubt,
                    rows.size(),
                    quantile(rows, 0, 0.5),
                    quantile(rows, 0, 0.9),
                    quantile(rows, 2, 0.5),
                    quantile(rows, 2, 0.9),
                    quantile(rows, 3, 0.5),
                    quantile(rows, 3, 0.9),
                    100.0 * rows.stream().filter(row -> row[7] <= 1).count() / rows.size())));
    failures.forEach(failure -> table.append(failure).append('\n'));
    return table.toString();
  }

  private static double quantile(List<double[]> rows, int column, double share) {
    return rows.stream()
        .mapToDouble(row -> row[column])
        .sorted()
        .toArray()[(int) (share * rows.size())];
  }
}
