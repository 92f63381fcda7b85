package io.github.swatchwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads the fields of a sheet: the colours of each stroke over black and over paper, and what
 * follows from both.
 */
public final class SheetReader {
  /** Edges wider than that, mm, blur the halves of a field into each other. */
  private static final double MOST_BLURRED = 1.9;

  private SheetReader() {}

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
    SheetCorrection correction = SheetCorrection.of(reference, photo, flat, layout);
    Map<SheetField, FieldPlace> places = new LinkedHashMap<>();
    layout.fields().forEach(field -> places.put(field, FieldPlace.of(photo, flat, field)));
    refuseBlur(places.values().stream().mapToDouble(FieldPlace::edge).toArray());
    List<String> doubts = new ArrayList<>();
    if (correction.fromPaper()) {
      doubts.add(
          "colours are corrected by the paper alone: lay a grey card or a colour chart on its"
              + " place to be about twice as near");
    }
    return new SheetReading(
        layout,
        correction.words(),
        correction.lab(new double[] {1, 1, 1}),
        fields(places, new FieldReader(photo, flat, correction)),
        doubts);
  }

  private static void refuseBlur(double[] edges) {
    double[] seen = java.util.Arrays.stream(edges).filter(edge -> edge > 0).toArray();
    double edge = PaperLight.quantile(seen, 0.5);
    if (edge > MOST_BLURRED) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the photo is blurred: edges are %.1f mm wide, must be %.1f at most; hold the camera"
                  + " still and let it focus",
              edge,
              MOST_BLURRED));
    }
  }

  private static List<FieldReading> fields(Map<SheetField, FieldPlace> places, FieldReader reader) {
    Map<SheetField, Integer> indices = new LinkedHashMap<>();
    Map<SheetField, FieldReading> readings = new LinkedHashMap<>();
    List<FieldStroke> strokes = new ArrayList<>();
    places.forEach(
        (field, place) -> {
          try {
            strokes.add(reader.read(field, place));
            indices.put(field, strokes.size() - 1);
          } catch (IllegalArgumentException e) {
            readings.put(field, FieldReading.unread(field, String.valueOf(e.getMessage())));
          }
        });
    if (!strokes.isEmpty()) {
      StrokeOptics optics = StrokeOptics.of(strokes);
      indices.forEach((field, index) -> readings.put(field, optics.reading(field, index)));
    }
    return places.keySet().stream().map(readings::get).toList();
  }
}
