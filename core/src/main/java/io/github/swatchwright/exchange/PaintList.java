package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.exchange.BadLinesException.BadLine;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The paints of a file, as far as its lines can be taken. */
final class PaintList {
  private final String source;
  private final List<BadLine> bad;
  private final List<Paint> paints = new ArrayList<>();
  private final Map<String, Integer> lines = new HashMap<>();

  /**
   * An empty list.
   *
   * @param source what messages call the file
   * @param bad lines that are known to be bad already; more are added to it
   */
  PaintList(String source, List<BadLine> bad) {
    this.source = source;
    this.bad = bad;
  }

  /** Takes the paint of a line, or notes why it can't be taken. */
  void add(int line, Supplier<Paint> maker) {
    try {
      Paint paint = maker.get();
      Integer earlier = lines.putIfAbsent(paint.name(), line);
      if (earlier != null) {
        throw new IllegalArgumentException(
            "name is " + Printable.quoted(paint.name()) + ", as on line " + earlier);
      }
      paints.add(paint);
    } catch (IllegalArgumentException e) {
      bad.add(new BadLine(line, String.valueOf(e.getMessage())));
    }
  }

  /** The shelf of all paints, when no line is bad. */
  Shelf toShelf(String name) {
    if (!bad.isEmpty()) {
      bad.sort(Comparator.comparingInt(BadLine::number));
      throw new BadLinesException(source, bad);
    }
    try {
      return Shelf.of(name, paints);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(source + ": " + e.getMessage(), e);
    }
  }
}
