package io.github.swatchwright;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.testdata.DemoShelf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadmeTest {
  private static final Path EXAMPLE =
      Path.of("src/test/java/io/github/swatchwright/EmbeddingExample.java");

  @Test
  void exampleInTheReadmeIsTheOneThatCompiles() throws IOException {
    List<List<String>> shown = ShownCode.of(Path.of("../README.md"), "java");
    assertThat(shown).hasSize(1);
    assertThat(shown.get(0)).hasSizeLessThanOrEqualTo(10).isNotEmpty();
    ShownCode.assertIsIn(EXAMPLE, shown.get(0));
  }

  @Test
  void exampleProposesRecipesFromTheDemoShelf(@TempDir Path folder) throws IOException {
    Path shelf = Files.writeString(folder.resolve("shelf.json"), DemoShelf.text());
    PrintStream console = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      EmbeddingExample.main(new String[] {shelf.toString(), "#8A4B2A"});
    } finally {
      System.setOut(console);
    }
    List<String> lines = printed.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines).hasSize(5).allMatch(line -> line.contains(": ΔE00 "));
  }
}
