package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.cli.faulty.FaultyProvider;
import io.github.swatchwright.cli.photo.PhotoBytes;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every call to the file system, of every command that writes, fails once: each file is then the
 * old one or the whole new one. So it is when memory or the stack runs out there, when all later
 * calls fail, when somebody else writes the files in between, and when the power is cut.
 *
 * <p>A printed sheet holds the time of its making, so that two are never the same; its files go the
 * same way.
 */
class StepwiseFailureTest {
  /** All calls of all commands take minutes: {@code -Dswatchwright.failEvery=1}. */
  private static final String STEP = System.getProperty("swatchwright.failEvery", "9");

  private static void prepare(Path folder) throws IOException {
    Files.copy(Path.of(Run.fiveShelf()), folder.resolve("shelf.json"));
    for (String name : FaultyRuns.WRITTEN) {
      Files.writeString(folder.resolve(name), name.equals("cards.json") ? cards() : "old\n");
    }
    Files.writeString(folder.resolve("white.json"), cards());
    Files.writeString(folder.resolve("plan.json"), plan());
    BufferedImage picture = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 24; x++) {
      for (int y = 0; y < 16; y++) {
        picture.setRGB(x, y, x < 12 ? 0x806040 : 0x405060);
      }
    }
    Files.write(folder.resolve("p.png"), PhotoBytes.png(picture));
    Files.writeString(folder.resolve("in.csv"), "name,medium,srgb\nGrey,oil,#808080\n");
    Run.of(
        "predict",
        "White:3, Black:1",
        "--shelf",
        Run.fiveShelf(),
        "--notebook",
        folder.resolve("notes.jsonl").toString());
  }

  private static String plan() {
    return "{\"format\":\"swatchwright-plan\",\"version\":1,\"name\":\"Dredger\",\"areas\":["
        + "{\"name\":\"Hull\",\"squareCentimetres\":10,\"steps\":[{\"step\":\"base\",\"paint\":\"White\"}]}]}";
  }

  private static String cards() {
    return "{\"format\":\"swatchwright-cards\",\"version\":1,\"cards\":["
        + "{\"parts\":{\"White\":5,\"Black\":1},\"measured\":{\"srgb\":\"#808080\"}}]}";
  }

  @Test
  void leavesOldOrNewFilesAtEveryCall(@TempDir Path folder) throws Exception {
    prepare(folder);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.nio.file.spi.DefaultFileSystemProvider=" + FaultyProvider.class.getName(),
                "-cp",
                System.getProperty("java.class.path"),
                FaultyRuns.class.getName(),
                folder.toString(),
                STEP)
            .redirectErrorStream(true)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(out).isZero();
    String counts =
        out.lines().filter(line -> line.startsWith("runs ")).collect(Collectors.joining());
    System.out.println(counts);
    assertThat(counts).matches("runs \\d{3,}, power cuts \\d{3,}");
  }
}
