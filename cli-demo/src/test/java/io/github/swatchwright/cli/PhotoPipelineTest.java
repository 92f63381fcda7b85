package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.json.SampleJson;
import io.github.swatchwright.testdata.DemoPhoto.Material;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a photo to shades, a ladder and its coverages, with the commands that the documentation
 * shows.
 */
class PhotoPipelineTest {

  private static List<String> commands() throws IOException {
    return Files.readString(Path.of("docs/commands.md"))
        .lines()
        .dropWhile(line -> !line.startsWith("## From a photo"))
        .dropWhile(line -> !line.equals("```"))
        .skip(1)
        .takeWhile(line -> !line.equals("```"))
        .toList();
  }

  private static Run run(String command, Path folder) {
    String[] words = command.replaceFirst(" > .*", "").split(" ");
    for (int i = 0; i < words.length; i++) {
      words[i] =
          words[i]
              .replace("testdata/", "../testdata/")
              .replace("rust.json", folder.resolve("rust.json").toString())
              .replace("seen.png", folder.resolve("seen.png").toString());
    }
    String[] arguments = new String[words.length - 1];
    System.arraycopy(words, 1, arguments, 0, arguments.length);
    return Run.of(arguments);
  }

  @Test
  void thePhotoOfTheReadmeBecomesALadder(@TempDir Path folder) throws IOException {
    List<String> commands = commands();
    assertThat(commands).hasSize(3).allMatch(line -> line.startsWith("cli-demo/swatchwright "));

    Run sample = run(commands.get(0), folder);
    assertThat(sample.err()).isEmpty();
    assertThat(commands.get(0)).endsWith(" > rust.json");
    Files.writeString(folder.resolve("rust.json"), sample.out());
    List<SampleJson.Colour> shades = SampleJson.read(folder.resolve("rust.json"));
    assertThat(shades).hasSize(4);
    for (Material rust : List.of(Material.ORANGE_RUST, Material.BROWN_RUST, Material.DARK_RUST)) {
      Lab truth = Srgb.ofPacked(rust.srgb()).toLab();
      assertThat(shades)
          .as("%s", rust)
          .anySatisfy(
              shade ->
                  assertThat(Ciede2000.deltaE(shade.lab(), truth))
                      .isLessThan(shade.intervalDeltaE00().orElseThrow()));
    }
    BufferedImage seen = ImageIO.read(folder.resolve("seen.png").toFile());
    // The photo is 640 by 480; axes stand around it, swatches below.
    assertThat(seen.getWidth()).isBetween(641, 800);
    assertThat(seen.getHeight()).isGreaterThan(480);

    Run ladder = run(commands.get(1), folder);
    assertThat(ladder.err()).isEmpty();
    assertThat(ladder.out().lines().filter(line -> line.contains("cover "))).hasSize(4);

    Run match = run(commands.get(2), folder);
    assertThat(match.status()).isZero();
    assertThat(match.err()).contains("holds the true colour in 80 %");
  }
}
