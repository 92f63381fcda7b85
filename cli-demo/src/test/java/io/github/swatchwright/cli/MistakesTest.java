package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Typical mistakes and the one line that each gets: {@code docs/mistakes.md} is the table, and is
 * held here. {@code -Dmistakes.write=true} writes its messages again; read them before they are
 * kept.
 */
class MistakesTest {
  private static final Path PAGE = Path.of("docs/mistakes.md");
  private static final Pattern ROW = Pattern.compile("\\| `(.*)` \\| (.*) \\|");
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final int FEWEST = 60;

  @TempDir Path folder = Path.of("");

  /** The files that the table's command lines name, with what is wrong in them. */
  private static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("comma.shelf.json", shelf("{\"name\":\"Grey\",\"medium\":\"oil\",}"));
    files.put("quotes.shelf.json", shelf("{“name”:\"Grey\"}"));
    files.put(
        "point.shelf.json", shelf("{\"name\":\"Grey\",\"medium\":\"oil\",\"swatchError\":1,5}"));
    files.put(
        "field.shelf.json",
        shelf("{\"name\":\"Grey\",\"medium\":\"oil\",\"colour\":{\"srgb\":\"#808080\"}}"));
    files.put(
        "hex.shelf.json",
        shelf("{\"name\":\"Grey\",\"medium\":\"oil\",\"masstone\":{\"srgb\":\"808080\"}}"));
    files.put("there.shelf.json", shelf("{\"name\":\"Grey\",\"medium\":\"oil\"}"));
    files.put("bottles.xls", "");
    files.put("list.csv", "Name;Hex\nQuay green;405040\n");
    files.put("wrong.csv", "Name;Medium;Hex\nQuay green;oil;40504\n");
    files.put("note.txt", "not a notebook\n");
    return files;
  }

  private static String shelf(String paint) {
    return "{\"format\":\"swatchwright-shelf\",\"version\":1,\"name\":\"bench\",\"paints\":["
        + paint
        + "]}";
  }

  @Test
  void everyMistakeGetsItsLine() throws IOException {
    for (Map.Entry<String, String> file : files().entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    Files.copy(Path.of("../testdata/photos/hull-plate.jpg"), folder.resolve("test.jpg"));
    List<String> page = new ArrayList<>();
    int mistakes = 0;
    for (String line : Files.readAllLines(PAGE)) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        mistakes++;
        page.add("| `" + row.group(1) + "` | " + said(row.group(1)) + " |");
      } else {
        page.add(line);
      }
    }
    String all = String.join("\n", page) + "\n";
    if (Boolean.getBoolean("mistakes.write")) {
      Files.writeString(PAGE, all);
    }
    assertThat(mistakes).isGreaterThanOrEqualTo(FEWEST);
    assertThat(page).containsExactlyElementsOf(Files.readAllLines(PAGE));
  }

  /** The line for a command line, as a table of Markdown has it. */
  private String said(String typed) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(typed);
    while (word.find()) {
      words.add(word.group(1) == null ? inFolder(word.group(2)) : word.group(1));
    }
    Run run = Run.of(words.toArray(String[]::new));
    assertThat(run.status()).as(typed).isEqualTo(Main.REFUSED);
    assertThat(run.out()).as(typed).isEmpty();
    List<String> lines =
        run.err().lines().filter(line -> !line.startsWith("swatchwright: note:")).toList();
    assertThat(lines.size()).as(typed + run.err()).isBetween(1, 2);
    return String.join(" ", lines)
        .replaceFirst("^swatchwright: ", "")
        .replace(folder + "/", "")
        .replaceAll(" +", " ")
        .replace("|", "\\|");
  }

  /** A word with the test's folder before its file's name, if it has one. */
  private String inFolder(String word) {
    return word.matches("[a-z.]+\\.(json|jsonl|jpg|csv|xls|txt|html|doc)(@.*)?")
        ? folder.resolve(word).toString()
        : word;
  }
}
