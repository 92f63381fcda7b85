package io.github.swatchwright.testdata;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** An invented project to plan with the demo shelf: an old harbour dredger in 1/72. */
public final class DemoProject {
  /** What messages call it. */
  public static final String SOURCE = "demo project";

  private static final String RESOURCE = "demo/harbour-dredger.plan.json";

  private DemoProject() {}

  /** The JSON document. */
  public static String text() {
    try (InputStream in = DemoProject.class.getResourceAsStream(RESOURCE)) {
      return new String(
          Objects.requireNonNull(in, RESOURCE).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
