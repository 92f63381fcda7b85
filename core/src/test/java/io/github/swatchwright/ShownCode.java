package io.github.swatchwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Programs that a page shows, compared with sources that compile: line by line, but for the
 * indentation.
 */
public final class ShownCode {
  private ShownCode() {}

  /** The blocks of a page in a language, from the top. */
  public static List<List<String>> of(Path page, String language) throws IOException {
    return Pattern.compile("(?ms)^```" + language + "\n(.*?)^```$")
        .matcher(Files.readString(page))
        .results()
        .map(block -> stripped(block.group(1)))
        .toList();
  }

  /** Fails unless the source holds the shown lines, without others between them. */
  public static void assertIsIn(Path source, List<String> shown) throws IOException {
    assertThat(stripped(Files.readString(source))).as("%s", source).containsSequence(shown);
  }

  private static List<String> stripped(String text) {
    return text.lines().map(String::strip).toList();
  }
}
