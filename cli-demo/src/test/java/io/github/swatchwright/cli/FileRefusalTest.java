package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that a command may not write are refused before it works, and nothing changes. */
class FileRefusalTest {
  private static final String CARDS =
      "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":["
          + "{\"parts\":{\"White\":5,\"Black\":1},\"measured\":{\"srgb\":\"#808080\"}}]}";

  private Path folder = Path.of("");

  @BeforeEach
  void someFiles(@TempDir Path folder) throws IOException {
    this.folder = folder;
    Files.copy(Path.of(Run.fiveShelf()), folder.resolve("shelf.json"));
    Files.writeString(folder.resolve("cards.json"), CARDS);
    Files.writeString(folder.resolve("old.svg"), "old");
    Files.createDirectory(folder.resolve("folder.svg"));
  }

  /** Runs a line in which an asterisk stands for the folder. */
  private Run run(String line) {
    return Run.of(line.replace("*", folder.toString()).split(" ", -1));
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          calibrate */cards.json --out */cards.json|--out: */cards.json is CARDS as well, must be another file
          calibrate */cards.json --shelf */shelf.json --out */shelf.json|--out: */shelf.json is --shelf as well, must be another file
          match #808080 --shelf */shelf.json --table */shelf.json|--table: */shelf.json is --shelf as well, must be another file
          match #808080 --shelf */shelf.json --notebook */shelf.json|--notebook: */shelf.json is --shelf as well, must be another file
          match #808080 --shelf */shelf.json --table */../*/shelf.json|--table: */../*/shelf.json is --shelf as well, must be another file
          compare #808080 #818181 --card */old.svg --notebook */old.svg|--notebook: */old.svg is --card as well, must be another file
          compare #808080 #818181 --card */folder.svg|--card: */folder.svg is a directory, must be a file
          compare #808080 #818181 --card */none/a.svg|--card: there is no folder */none
          shelf --export */a.csv --table */x.svg|--table: */x.svg must end in .csv, .gpl or .json
          shelf --export */a.csv --plot */x.png|--plot: */x.png must end in .svg
          """)
  void isRefusedBeforeAnyWork(String line, String message) throws IOException {
    List<String> before = names();
    String shelf = Files.readString(folder.resolve("shelf.json"));

    Run run = run(line.replace("/../*", "/../" + folder.getFileName()));

    assertThat(run.err().strip())
        .isEqualTo(
            "swatchwright: "
                + message
                    .replace("/../*", "/../" + folder.getFileName())
                    .replace("*", folder.toString()));
    assertThat(run.out()).isEmpty();
    assertThat(run.status()).isEqualTo(2);
    assertThat(names()).isEqualTo(before);
    assertThat(folder.resolve("shelf.json")).hasContent(shelf);
    assertThat(folder.resolve("cards.json")).hasContent(CARDS);
  }

  @Test
  void aLinkOutOfTheFolderIsRefused() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("shared"));
    Files.createSymbolicLink(inside.resolve("card.svg"), folder.resolve("old.svg"));

    Run run = run("compare #808080 #818181 --card */shared/card.svg");

    assertThat(run.err())
        .contains("--card: ", "card.svg is a link out of its folder, to ", "name that file itself");
    assertThat(folder.resolve("old.svg")).hasContent("old");
  }

  @Test
  void aDeviceIsRefused() {
    assumeThat(Path.of("/dev/null")).exists();

    Run run = Run.of("shelf", "--shelf", Run.fiveShelf(), "--notebook", "/dev/null");

    assertThat(run.err()).contains("--notebook: /dev/null is a device or a pipe");
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void aReadOnlyFileIsLeftAsItIs() throws IOException {
    Path old = folder.resolve("old.svg");
    assumeThat(old.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("r--r--r--"));

    Run run = run("compare #808080 #818181 --card */old.svg");

    assertThat(run.err()).contains("old.svg is read-only, and is left as it is");
    assertThat(old).hasContent("old");
  }

  @Test
  void aPhotoThatIsReadIsNotWritten() throws IOException {
    Path photo = Files.writeString(folder.resolve("photo.svg"), "old");

    Run run = run("compare #808080 */photo.svg@1,1,2,2 --card */photo.svg");

    assertThat(run.err()).contains("--card: ", "photo.svg is B as well, must be another file");
    assertThat(photo).hasContent("old");
  }

  @Test
  void anEndlessImportIsBounded() throws IOException {
    assumeThat(Path.of("/dev/zero")).exists();
    Files.createSymbolicLink(folder.resolve("endless.csv"), Path.of("/dev/zero"));

    Run run = run("shelf --import */endless.csv --medium oil --out */new.json");

    assertThat(run.err()).contains("is longer than 10000000 bytes, the most that is read");
    assertThat(run.status()).isEqualTo(2);
  }
}
