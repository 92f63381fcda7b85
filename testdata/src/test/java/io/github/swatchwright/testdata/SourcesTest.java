package io.github.swatchwright.testdata;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds {@code testdata/SOURCES.md} to the files that it lists. */
class SourcesTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final List<String> FOLDERS =
      List.of(
          "testdata/photos",
          "testdata/src/main/resources",
          "core/src/main/resources/io/github/swatchwright/spectrum");

  /** File, source, licence, rows, SHA-256: the cells of a line of the list. */
  private static Map<String, List<String>> listed() throws IOException {
    Map<String, List<String>> listed = new LinkedHashMap<>();
    for (String line : Files.readAllLines(ROOT.resolve("testdata/SOURCES.md"))) {
      if (line.startsWith("| `")) {
        List<String> cells = Stream.of(line.split("\\|")).skip(1).map(String::trim).toList();
        listed.put(cells.get(0).replace("`", ""), cells);
      }
    }
    return listed;
  }

  private static Map<String, Path> present() throws IOException {
    Map<String, Path> present = new TreeMap<>();
    for (String folder : FOLDERS) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
        files
            .filter(Files::isRegularFile)
            .forEach(
                file -> present.put(ROOT.relativize(file).toString().replace('\\', '/'), file));
      }
    }
    return present;
  }

  @Test
  void everyFileIsListedAndEveryListedFileIsThere() throws IOException {
    assertThat(listed().keySet()).containsExactlyInAnyOrderElementsOf(present().keySet());
  }

  @Test
  void everyFileHasASourceAndALicence() throws IOException {
    for (List<String> cells : listed().values()) {
      assertThat(cells).as("%s", cells).hasSize(5);
      assertThat(cells.get(1)).as("source of %s", cells.get(0)).hasSizeGreaterThan(6);
      assertThat(cells.get(2)).as("licence of %s", cells.get(0)).isNotBlank();
    }
  }

  @Test
  void rowsAndHashesAreAsListed() throws IOException {
    Map<String, Path> present = present();
    for (List<String> cells : listed().values()) {
      String file = cells.get(0).replace("`", "");
      if (cells.get(1).startsWith("invented")) {
        continue; // The project's own, and free to change.
      }
      byte[] content = Files.readAllBytes(present.get(file));
      assertThat(cells.get(3)).as("rows of %s", file).isEqualTo(String.valueOf(rows(content)));
      assertThat(cells.get(4)).as("SHA-256 of %s", file).isEqualTo(sha256(content));
    }
  }

  /** Lines of figures: neither comments nor, where there is one, the line of column names. */
  private static int rows(byte[] content) {
    List<String> lines =
        new String(content, StandardCharsets.UTF_8)
            .lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .toList();
    return lines.size() - (Character.isLetter(lines.get(0).charAt(0)) ? 1 : 0);
  }

  private static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java platform has SHA-256", e);
    }
  }
}
