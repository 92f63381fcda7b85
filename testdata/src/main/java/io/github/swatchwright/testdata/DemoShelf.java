package io.github.swatchwright.testdata;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The invented demo shelf: the paints of an old harbour dredger in 1/72, as JSON. */
public final class DemoShelf {
  /** What messages call it. */
  public static final String SOURCE = "demo shelf";

  private static final String RESOURCE = "demo/harbour-dredger.shelf.json";

  private DemoShelf() {}

  /** Opens the JSON document. */
  public static InputStream open() {
    InputStream in = DemoShelf.class.getResourceAsStream(RESOURCE);
    if (in == null) {
      throw new IllegalStateException("the resource " + RESOURCE + " is missing");
    }
    return in;
  }

  /** The JSON document. */
  public static String text() {
    try (InputStream in = open()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
