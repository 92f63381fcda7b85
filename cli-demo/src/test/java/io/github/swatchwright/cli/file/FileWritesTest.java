package io.github.swatchwright.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileWritesTest {
  /** Writes one file, as a command that has nothing else to write. */
  private static void write(String option, Path file, String text) {
    try (FileWrites files = new FileWrites()) {
      files.write(option, new NewFile(file), text);
      files.commit();
    }
  }

  @Test
  void replacesAFileAndLeavesNothingElseBehind(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("shelf.json"), "old");
    write("--out", file, "new");
    assertThat(file).hasContent("new");
    assertThat(folder).isDirectoryNotContaining(other -> !other.equals(file));
  }

  @Test
  void keepsThePermissionsOfTheFileItReplaces(@TempDir Path folder) throws IOException {
    assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    Path file = Files.writeString(folder.resolve("shelf.json"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    write("--out", file, "new");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  @Test
  void refusesAFolder(@TempDir Path folder) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> write("--out", folder, "new"))
        .withMessage("--out: " + folder + " is a directory, must be a file");
  }

  @Test
  void refusesAFolderThatIsNotThere(@TempDir Path folder) {
    Path missing = folder.resolve("missing");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> write("--out", missing.resolve("shelf.json"), "new"))
        .withMessage("--out: there is no folder " + missing);
  }

  @Test
  void writesWhatALinkPointsToAndKeepsTheLink(@TempDir Path folder) throws IOException {
    Path shelves = Files.createDirectory(folder.resolve("shelves"));
    Path file = Files.writeString(shelves.resolve("shelf.json"), "old");
    Path link =
        Files.createSymbolicLink(folder.resolve("link.json"), Path.of("shelves/shelf.json"));
    write("--out", link, "new");
    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent("new");
    assertThat(folder).isDirectoryNotContaining("glob:**.draft");
  }

  @Test
  void makesTheFileThatALinkPointsTo(@TempDir Path folder) throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("later.json"));
    write("--out", link, "new");
    assertThat(link).isSymbolicLink();
    assertThat(folder.resolve("later.json")).hasContent("new");
  }

  @Test
  void refusesARingOfLinks(@TempDir Path folder) throws IOException {
    Path first = Files.createSymbolicLink(folder.resolve("first"), Path.of("second"));
    Files.createSymbolicLink(folder.resolve("second"), Path.of("first"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> write("--out", first, "new"))
        .withMessageContaining("more than 40 symbolic links in a row");
  }

  @Test
  void anInterruptLeavesTheOldFileAndNothingElse(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("shelf.json"), "old");
    Thread.currentThread().interrupt();
    try {
      assertThatIllegalArgumentException().isThrownBy(() -> write("--out", file, "new"));
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
    assertThat(file).hasContent("old");
    assertThat(folder).isDirectoryNotContaining(other -> !other.equals(file));
  }

  /** A text that takes a while to write, of one letter. */
  private static String fiveMillion(char letter) {
    return String.valueOf(letter).repeat(5_000_000);
  }

  @Test
  void anInterruptAtAnyMomentLeavesOneWholeFile(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("shelf.json");
    int refused = 0;
    for (int round = 0; round < 24; round++) {
      Files.writeString(file, fiveMillion('o'));
      AtomicReference<RuntimeException> refusal = new AtomicReference<>();
      Thread writer =
          new Thread(
              () -> {
                try {
                  write("--out", file, fiveMillion('n'));
                } catch (IllegalArgumentException e) {
                  refusal.set(e);
                }
              });
      writer.start();
      Thread.sleep(round / 3, 300_000 * (round % 3));
      writer.interrupt();
      writer.join();
      refused += refusal.get() == null ? 0 : 1;
      assertThat(
              Files.readString(file)
                  .equals(refusal.get() == null ? fiveMillion('n') : fiveMillion('o')))
          .isTrue();
      assertThat(folder).isDirectoryNotContaining(other -> !other.equals(file));
    }
    assertThat(refused).isPositive();
  }

  @Test
  void aPlantedDraftIsNotWritten(@TempDir Path folder) throws IOException {
    Path victim = Files.writeString(folder.resolve("victim"), "mine");
    String foreseen = ".swatchwright-" + ProcessHandle.current().pid() + ".draft";
    Files.createSymbolicLink(folder.resolve(foreseen), victim);

    write("--out", folder.resolve("shelf.json"), "new");

    assertThat(victim).hasContent("mine");
  }

  @Test
  void aFileThatFailsKeepsTheOthersFromBeingWritten(@TempDir Path folder) throws IOException {
    Path good = Files.writeString(folder.resolve("good.csv"), "old");
    try (FileWrites files = new FileWrites()) {
      files.write("--table", new NewFile(good), "new");
      files.write("--card", new NewFile(folder.resolve("none").resolve("card.svg")), "new");
      assertThatIllegalArgumentException()
          .isThrownBy(files::commit)
          .withMessageStartingWith("--card: there is no folder ");
    }
    assertThat(good).hasContent("old");
    assertThat(folder).isDirectoryNotContaining(other -> !other.equals(good));
  }

  @Test
  void aPlantedLinkCannotBecomeTheLock(@TempDir Path folder) throws IOException {
    Path victim = Files.writeString(folder.resolve("victim"), "mine");
    Files.createSymbolicLink(folder.resolve(FolderLock.NAME), victim);
    try (FileWrites files = new FileWrites()) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> files.lock("--out", new NewFile(folder.resolve("cards.json"))))
          .withMessageContaining("can't be locked");
    }
  }
}
