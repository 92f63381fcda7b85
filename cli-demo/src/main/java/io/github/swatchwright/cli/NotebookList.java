package io.github.swatchwright.cli;

import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.json.Trials;
import java.util.List;

/**
 * What a notebook holds: all entries, one of them, or the trials that some words find.
 *
 * @param output where it is shown
 * @param shared how
 */
record NotebookList(Output output, SharedOptions shared) {
  void all(Notebook.Contents contents) {
    shared.give(output, () -> JsonResult.of(contents), () -> print(contents));
  }

  private void print(Notebook.Contents contents) {
    int number = 1;
    for (NotebookEntry entry : contents.entries()) {
      output.line("%3d  %s", number++, head(entry));
    }
    if (contents.entries().isEmpty()) {
      output.line("The notebook has no entries.");
    }
    for (Notebook.SetAside line : contents.setAside()) {
      output.line("Set aside, since it isn't an entry: %s.", line.reason());
    }
  }

  private static String head(NotebookEntry entry) {
    String date = entry.date().toString().replace('T', ' ');
    return date.substring(0, 16) + "  " + new TypedLine(entry.asked()).toText();
  }

  void show(int number, NotebookEntry entry) {
    shared.give(
        output,
        () -> JsonResult.of(number, entry),
        () -> {
          output.line("Asked    %s (UTC)", head(entry));
          output.line("Shelf    %s, SHA-256 %s", entry.shelfName(), entry.shelfHash());
          output.line("Library  %s", entry.library());
          output.json(entry.found());
        });
  }

  void find(Notebook.Contents contents, String words) {
    List<Trials.Remembered> found = Trials.of(contents).find(words);
    shared.give(
        output,
        () -> Trials.json(found),
        () -> {
          found.forEach(
              one ->
                  output.line(
                      "%3d  on %d: %s", one.number(), one.trial().on(), one.trial().inWords()));
          if (found.isEmpty()) {
            output.line("No trial holds all of these words.");
          }
        });
  }
}
