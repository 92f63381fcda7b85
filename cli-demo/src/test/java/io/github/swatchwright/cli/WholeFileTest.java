package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @Test
  void replacesAFileAndLeavesNothingElseBehind(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("shelf.json"), "old");
    WholeFile.write("--out", file, "new");
    assertThat(file).hasContent("new");
    assertThat(folder).isDirectoryNotContaining(other -> !other.equals(file));
  }

  @Test
  void keepsThePermissionsOfTheFileItReplaces(@TempDir Path folder) throws IOException {
    assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    Path file = Files.writeString(folder.resolve("shelf.json"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    WholeFile.write("--out", file, "new");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  @Test
  void refusesAFolder(@TempDir Path folder) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WholeFile.write("--out", folder, "new"))
        .withMessage("--out: " + folder + " is a directory, must be a file");
  }

  @Test
  void refusesAFolderThatIsNotThere(@TempDir Path folder) {
    Path missing = folder.resolve("missing");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WholeFile.write("--out", missing.resolve("shelf.json"), "new"))
        .withMessage("--out: there is no folder " + missing);
  }
}
