package io.github.swatchwright.cli;

import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.TestCard;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.cli.file.NewFile;
import io.github.swatchwright.cli.file.NotebookFile;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.FoundMix;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.NotebookEntry;
import io.github.swatchwright.json.NotebookListJson;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.json.Trial;
import io.github.swatchwright.json.Trials;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Shelf;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
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
      "  swatchwright notebook bench.jsonl --test-card 1 --measured '#8C4E2D' --out cards.json"
    })
final class NotebookCommand implements Command {
  private final Output output;

  @Mixin SharedOptions shared = new SharedOptions();

  @Mixin PhotoReference reference = new PhotoReference();

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

  @Option(
      names = "--test-card",
      paramLabel = "N",
      description = "Make a test card of an entry's mix and its --measured colour, for calibrate.")
  @Nullable Integer testCard;

  @Option(
      names = "--measured",
      paramLabel = "COLOUR",
      description = "With --test-card: the colour of the mix, painted and dry.")
  @Nullable String measured;

  @Option(
      names = "--out",
      paramLabel = "CARDS",
      description = "With --test-card: the file of test cards to add it to.")
  @Nullable NewFile cardsFile;

  @Option(
      names = "--mix",
      paramLabel = "N",
      description =
          "Which of an entry's mixes is meant, by its number; else all rungs of a ladder and all"
              + " coats, and the first recipe.")
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
      show(show, entry("--show", show, contents));
    } else if (repeat != null) {
      repeat(repeat, entry("--repeat", repeat, contents));
    } else if (testCard != null) {
      makeCard(entry("--test-card", testCard, contents));
    } else if (trial.tried != null) {
      writeDown(contents);
    } else if (trial.find != null) {
      find(contents, trial.find);
    } else {
      list(contents);
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
            Trials.toText(tried));
    output
        .files()
        .append("NOTEBOOK", Objects.requireNonNull(file), path -> Notebook.at(path).append(entry));
    shared.give(
        output,
        () -> Trials.toText(tried),
        () -> output.line("Written down for entry %d: %s", tried.on(), tried.inWords()));
  }

  private void find(Notebook.Contents contents, String words) {
    List<Trials.Remembered> found = Trials.of(contents).find(words);
    shared.give(
        output,
        () -> Trials.toText(found),
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

  private void checkOptions() {
    trial.check();
    long actions =
        Stream.of(show, repeat, testCard, trial.tried, trial.find).filter(Objects::nonNull).count();
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
    if ((testCard == null) != (measured == null) || (testCard == null) != (cardsFile == null)) {
      throw new IllegalArgumentException("--test-card, --measured and --out go together");
    }
  }

  private static NotebookEntry entry(String option, int number, Notebook.Contents contents) {
    int last = contents.entries().size();
    if (number < 1 || number > last) {
      throw new IllegalArgumentException(
          option + " is " + number + ", must be the number of an entry, 1 to " + last);
    }
    return contents.entries().get(number - 1);
  }

  private void list(Notebook.Contents contents) {
    shared.give(output, () -> NotebookListJson.toText(contents), () -> print(contents));
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

  private void show(int number, NotebookEntry entry) {
    shared.give(
        output,
        () -> NotebookListJson.toText(number, entry),
        () -> {
          output.line("Asked    %s (UTC)", head(entry));
          output.line("Shelf    %s, SHA-256 %s", entry.shelfName(), entry.shelfHash());
          output.line("Library  %s", entry.library());
          output.json(entry.found());
        });
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
    new NotebookMixing(output, shared)
        .again(number, all, NotebookMixing.chosen(all, mixNumber), volume, changed, take);
  }

  private Mix one(NotebookEntry entry, Shelf shelf) {
    List<FoundMix> all = Notebook.mixes(entry, shelf);
    List<FoundMix> chosen = NotebookMixing.chosen(all, mixNumber);
    if (chosen.size() > 1) {
      throw new IllegalArgumentException(
          "that entry holds "
              + chosen.size()
              + " mixes: tell with --mix which "
              + chosen.get(0).kind().word()
              + " it is");
    }
    return chosen.get(0).mix();
  }

  private void makeCard(NotebookEntry entry) {
    recorded(entry);
    Shelf shelf = shared.shelf();
    Mix mix = one(entry, shelf);
    TestCard card =
        TestCard.ofMix(
                mix,
                ColourArgument.parse(Objects.requireNonNull(measured), shelf, reference, output)
                    .swatch())
            .withPainted(LocalDate.ofInstant(entry.date(), ZoneOffset.UTC));
    NewFile out = Objects.requireNonNull(cardsFile);
    output.files().lock("--out", out); // Before reading, so that nobody's card is lost.
    List<TestCard> cards = new ArrayList<>(earlierCards(out));
    cards.add(card);
    String text = CardsJson.toText(new CardSet(cards));
    output.files().write("--out", out, text);
    shared.give(
        output,
        () -> text,
        () -> {
          output.line("Card %d: %s", cards.size(), mix.toText());
          output.line("Written to %s; 'swatchwright calibrate' learns from it.", out);
        });
  }

  private static List<TestCard> earlierCards(NewFile file) {
    return new GivenFile(file.path())
        .readIfThere("--out", CardsJson::read)
        .map(CardSet::cards)
        .orElse(List.of());
  }
}
