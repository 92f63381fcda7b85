package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher with the packed jar, in a folder of its own. */
class LauncherIT {
  private static final String SHOWN = "Target  #8A4B2A";

  private Path root = Path.of("");
  private Path launcher = Path.of("");
  private Path target = Path.of("");
  private Path archive = Path.of("");
  private Path kept = Path.of("");

  @BeforeEach
  void copyLauncherAndJar(@TempDir Path folder) throws IOException {
    root = folder;
    assumeTrue(File.separatorChar == '/', "the launcher is for POSIX shells");
    Path cli = Files.createDirectories(root.resolve("cli-demo"));
    target = Files.createDirectories(cli.resolve("target"));
    for (String empty : new String[] {"core/src/main", "testdata/src/main", "cli-demo/src/main"}) {
      old(Files.createDirectories(root.resolve(empty)));
    }
    old(Files.createFile(root.resolve("pom.xml")));
    old(Files.createFile(cli.resolve("pom.xml")));
    Files.copy(Path.of("target/swatchwright.jar"), target.resolve("swatchwright.jar"));
    launcher = Files.copy(Path.of("swatchwright"), cli.resolve("swatchwright"));
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
    archive = target.resolve("swatchwright.archive");
    kept = target.resolve("swatchwright.archive.txt");
  }

  private static void old(Path path) throws IOException {
    Files.setLastModifiedTime(path, FileTime.from(Instant.now().minus(Duration.ofDays(1))));
  }

  private String match() throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(launcher.toString(), "match", "#8A4B2A")
            .redirectErrorStream(true)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(printed).isZero();
    return printed;
  }

  @Test
  @DisplayName("an archive of classes that was cut short, or whose note is garbage, is made again")
  void broken() throws IOException, InterruptedException {
    String first = match();
    assertThat(first).startsWith(SHOWN);
    long whole = Files.size(archive);
    assertThat(Files.readString(kept)).contains(" " + whole + " ");

    byte[] bytes = Files.readAllBytes(archive);
    Files.delete(archive);
    Files.write(archive, Arrays.copyOf(bytes, bytes.length / 2));
    assertThat(match()).isEqualTo(first);
    // Two dumps of the same classes differ by a few pages.
    assertThat((double) Files.size(archive)).isCloseTo((double) whole, within(0.1 * whole));

    Files.writeString(kept, "rubbish");
    assertThat(match()).isEqualTo(first);
    assertThat(Files.readString(kept)).contains(" " + Files.size(archive) + " ");
    try (Stream<Path> files = Files.list(target)) {
      assertThat(files.map(Path::toString)).noneMatch(name -> name.contains("draft"));
    }
  }

  @Test
  @DisplayName("an interrupted search prints what it has found")
  void interrupted() throws IOException, InterruptedException {
    Path shelf = root.resolve("many.json");
    Files.writeString(shelf, manyPaints());
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                "target/swatchwright.jar",
                "match",
                "#8A4B2A",
                "--paints",
                "4",
                "--max-drops",
                "40",
                "--shelf",
                shelf.toString())
            .redirectErrorStream(true)
            .start();
    // Three seconds of processor time are enough to come into the search, which takes minutes.
    while (process.isAlive()
        && process.info().totalCpuDuration().orElseThrow().compareTo(Duration.ofSeconds(3)) < 0) {
      Thread.sleep(50);
    }
    new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(printed).startsWith(SHOWN).contains("The search was stopped").contains(" 1.  ");
    // 128 + 2, as shells have it for a program that an interrupt ended.
    assertThat(process.exitValue()).isEqualTo(130);
  }

  private static String manyPaints() {
    Random random = new Random(300);
    StringBuilder paints = new StringBuilder();
    for (int i = 0; i < 300; i++) {
      paints.append(i == 0 ? "" : ",");
      paints.append(
          String.format(
              Locale.ROOT,
              "{\"name\":\"Paint %d\",\"medium\":\"acrylic\",\"masstone\":{\"srgb\":\"#%06X\"}}",
              i,
              random.nextInt(1 << 24)));
    }
    return "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"Many\",\"paints\":["
        + paints
        + "]}";
  }
}
