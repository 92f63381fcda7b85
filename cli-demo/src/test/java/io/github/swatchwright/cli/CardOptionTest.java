package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CardOptionTest {

  @Test
  void theEndingTellsTheForm(@TempDir Path folder) throws IOException {
    Path page = folder.resolve("card.html");
    Path picture = folder.resolve("card.svg");
    String printed = Run.of("compare", "#8A4B2A", "#803F20").out();

    for (Path file : new Path[] {page, picture}) {
      Run run = Run.of("compare", "#8A4B2A", "#803F20", "--card", file.toString());
      assertThat(run).isEqualTo(new Run(Main.DONE, printed, ""));
    }
    assertThat(page).content().startsWith("<!DOCTYPE html>\n").contains("#8A4B2A", "#803F20");
    assertThat(picture).content().startsWith("<svg ").contains("#8A4B2A", "#803F20");
  }

  @ParameterizedTest
  @ValueSource(strings = {"card.pdx", "card", ".html.txt", "CARD.HTML5"})
  void otherEndingsAreRefused(String name, @TempDir Path folder) {
    Path file = folder.resolve(name);
    Run run = Run.of("compare", "#8A4B2A", "#803F20", "--card", file.toString());
    assertThat(run.status()).isEqualTo(Main.REFUSED);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo("swatchwright: --card: " + file + " must end in .html, .svg or .pdf\n");
    assertThat(file).doesNotExist();
  }

  @Test
  void aFolderThatIsMissingIsNamed(@TempDir Path folder) {
    Path file = folder.resolve("none").resolve("card.svg");
    Run run = Run.of("match", "#8A4B2A", "--card", file.toString());
    assertThat(run.status()).isEqualTo(Main.REFUSED);
    assertThat(run.err())
        .isEqualTo("swatchwright: --card: there is no folder " + file.getParent() + "\n");
  }

  @Test
  void aRefusedQuestionLeavesTheOldCard(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("card.html");
    Files.writeString(file, "old");
    assertThat(Run.of("match", "no colour", "--card", file.toString()).status())
        .isEqualTo(Main.REFUSED);
    assertThat(file).hasContent("old");
  }

  @Test
  void everyCommandThatShowsColoursMakesACard(@TempDir Path folder) {
    String[][] commands = {
      {"match", "#8A4B2A", "--max-drops", "6"},
      {"predict", "Titanium white:6, Red oxide:1.5", "Phthalo green"},
      {"correct", "Titanium white:6, Red oxide:2", "--measured", "#C3907F", "--target", "#B47A68"},
      {"compare", "#8A4B2A", "Red oxide"},
    };
    for (String[] command : commands) {
      Path file = folder.resolve(command[0] + ".html");
      String[] withCard = new String[command.length + 2];
      System.arraycopy(command, 0, withCard, 0, command.length);
      withCard[command.length] = "--card";
      withCard[command.length + 1] = file.toString();
      assertThat(Run.of(withCard).err()).isEmpty();
      assertThat(file).isNotEmptyFile();
    }
  }
}
