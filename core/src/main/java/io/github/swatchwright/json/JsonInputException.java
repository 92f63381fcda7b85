package io.github.swatchwright.json;

/**
 * JSON that can't be taken as it is. The message is one line: the source, the place in it, and what
 * is wrong, such as {@code my.shelf.json: $.paints[3].hiding.coats: is -1, must be above 0}.
 */
public final class JsonInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  /** Joins the three parts, each kept to one line. */
  JsonInputException(String source, String place, String complaint) {
    super(OneLine.of(source) + ": " + OneLine.of(place) + ": " + OneLine.of(complaint));
  }
}
