package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.NotebookFile;
import io.github.swatchwright.json.FoundMix;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.json.Trial;
import io.github.swatchwright.json.Trials;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks into a notebook, and uses what was found before. */
@CommandLine.Command(
    name = "notebook",
    description = "Lists what --notebook wrote down, does it again, and makes test cards of it.",
    footer = {
      "",
      "Examples:",
      "  swatchwright match '#8A4B2A' --notebook bench.jsonl",
      "  swatchwright notebook bench.jsonl --repeat 1 --millilitres 4",
      "  swatchwright notebook bench.jsonl --tried 'chips on scrap' --on 1 --went well"
          + " --with pressure=1.4bar,wait=30min",
      "  swatchwright notebook bench.jsonl --test-card 1 --measured '#8C4E2D' --out cards.json",
      "  swatchwright notebook bench.jsonl --test-card 1 --out cards.json"
          + " --measured-in test.jpg@100,170,30,30 --grey 510,56,76,76@18%%"
    })
final class NotebookCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Mixin CardOption card = new CardOption();

  @Parameters(index = "0", paramLabel = "NOTEBOOK", description = "The notebook's file.")
  @Nullable NotebookFile file;

  @Option(names = "--show", paramLabel = "N", description = "Show all of an entry, by its number.")
  @Nullable Integer show;

  @Option(
      names = "--repeat",
      paramLabel = "N",
      description = "Ask an entry's question again, with the shelf as it is today.")
  @Nullable Integer repeat;

  @Option(
      names = "--millilitres",
      paramLabel = "ML",
      description = "With --repeat: mix the same paint again, enough for this volume.")
  @Nullable Double millilitres;

  @Mixin LearnOptions learn = new LearnOptions();

  @Option(
      names = "--mix",
      paramLabel = "N",
      description =
          "Which of an entry's mixes you mean, by its number (default: all rungs of a ladder,"
              + " all coats, the first recipe).")
  @Nullable Integer mixNumber;

  @Option(
      names = "--take",
      description = "With --millilitres: take what is mixed out of the shelf's bottles.")
  boolean take;

  @Mixin TrialOptions trial = new TrialOptions();

  NotebookCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    Notebook.Contents contents =
        Objects.requireNonNull(file).given().read("NOTEBOOK", path -> Notebook.at(path).read());
    checkOptions();
    if (show != null) {
      new NotebookList(output, shared).show(show, entry("--show", show, contents));
    } else if (repeat != null) {
      repeat(repeat, entry("--repeat", repeat, contents));
    } else if (learn.testCard != null) {
      makeCard(entry("--test-card", learn.testCard, contents));
    } else if (trial.tried != null) {
      writeDown(contents);
    } else if (trial.find != null) {
      new NotebookList(output, shared).find(contents, trial.find);
    } else {
      card.write(output, shared, () -> NotebookPages.of(contents, shared.shelf()));
      new NotebookList(output, shared).all(contents);
    }
  }

  private void writeDown(Notebook.Contents contents) {
    Trial tried = trial.trial();
    NotebookEntry on = entry("--on", tried.on(), contents);
    NotebookEntry entry =
        new NotebookEntry(
            output.clock().instant().truncatedTo(ChronoUnit.SECONDS),
            NotebookEntry.LIBRARY_VERSION,
            on.shelfName(),
            on.shelfHash(),
            output.typed().arguments(),
            Trials.json(tried).toText());
    output
        .files()
        .append("NOTEBOOK", Objects.requireNonNull(file), path -> Notebook.at(path).append(entry));
    shared.give(
        output,
        () -> Trials.json(tried),
        () -> output.line("Written down for entry %d: %s", tried.on(), tried.inWords()));
  }

  private void checkOptions() {
    trial.check();
    learn.check();
    long actions =
        Stream.of(show, repeat, learn.testCard, trial.tried, trial.find)
            .filter(Objects::nonNull)
            .count();
    if (actions > 1) {
      throw new IllegalArgumentException(
          "give one of --show, --repeat, --test-card, --tried and --find, not more");
    }
    if (millilitres != null && repeat == null) {
      throw new IllegalArgumentException("--millilitres goes with --repeat");
    }
    if (take && millilitres == null) {
      throw new IllegalArgumentException("--take goes with --repeat and --millilitres");
    }
  }

  private static NotebookEntry entry(String option, int number, Notebook.Contents contents) {
    int last = contents.entries().size();
    if (last == 0) {
      throw new IllegalArgumentException(option + ": the notebook has no entries");
    }
    if (number < 1 || number > last) {
      throw new IllegalArgumentException(
          option + " is " + number + ", must be the number of an entry, 1 to " + last);
    }
    return contents.entries().get(number - 1);
  }

  private void repeat(int number, NotebookEntry entry) {
    RecordedLine recorded = recorded(entry);
    boolean changed = !ShelfJson.hash(shared.shelf()).equals(entry.shelfHash());
    if (millilitres != null) {
      mixAgain(number, entry, changed, millilitres);
    } else {
      askAgain(recorded, changed);
    }
  }

  /** The entry's command line; its shelf is used unless another is named now. */
  private RecordedLine recorded(NotebookEntry entry) {
    RecordedLine recorded = RecordedLine.of(new TypedLine(entry.asked()), output);
    if (shared.shelfFile == null) {
      shared.shelfFile = recorded.shelf().orElse(null);
    }
    return recorded;
  }

  private void askAgain(RecordedLine recorded, boolean changed) {
    RecordedLine again = shared.shelfFile == null ? recorded : recorded.asking(shared.shelfFile);
    if (shared.json) {
      again = again.with("--json");
    } else {
      output.line("Again: %s", again.toTypedLine().toText());
      if (!again.leftOut().isEmpty()) {
        output.line(
            "Left out, since it writes a file: %s", new TypedLine(again.leftOut()).toText());
      }
      warn(changed);
    }
    if (card.file != null) {
      again = again.with("--card=" + card.file.path());
    }
    if (shared.notebookFile != null) {
      again = again.with("--notebook=" + shared.notebookFile.path());
    }
    Main.run(output.asking(again.toTypedLine()));
  }

  private void warn(boolean changed) {
    if (changed) {
      output.line("The shelf is not as it was then: the result may differ.");
    }
    output.line("");
  }

  private void mixAgain(int number, NotebookEntry entry, boolean changed, double volume) {
    List<FoundMix> all = Notebook.mixes(entry, shared.shelf());
    new NotebookMixing(output, shared, card)
        .again(number, all, NotebookMixing.chosen(all, mixNumber), volume, changed, take);
  }

  private void makeCard(NotebookEntry entry) {
    recorded(entry);
    FoundMix mix = NotebookMixing.one(Notebook.mixes(entry, shared.shelf()), mixNumber);
    new NotebookLearning(output, shared, reference).learn(entry, mix, learn);
  }
}
