package io.github.swatchwright.cli;

import io.github.swatchwright.card.Card;
import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.ProjectJson;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.plan.Done;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.plan.Planner;
import io.github.swatchwright.plan.Project;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a whole model on one page. */
@CommandLine.Command(
    name = "plan",
    description =
        "Puts a whole model on one page: what to mix and spray over what, when, and what it will"
            + " look like.",
    footer = {
      "",
      "Examples:",
      "  swatchwright plan dredger.json",
      "  swatchwright plan dredger.json --starts 2026-12-05 --card dredger.html",
      "  swatchwright plan dredger.json --done 3 --measured '#6A7074'"
    })
final class PlanCommand implements Command {
  private final Output output;
  @Mixin SharedOptions shared = new SharedOptions();
  @Mixin CardOption card = new CardOption();

  @ArgGroup(validate = false, heading = PhotoReference.HEADING)
  PhotoReference reference = new PhotoReference();

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "The model's areas and what is wanted of each, as JSON.")
  @Nullable GivenFile file;

  @ArgGroup(exclusive = false, multiplicity = "0..*")
  List<SoFar> progress = new ArrayList<>();

  @Option(
      names = "--starts",
      paramLabel = "DAY",
      description =
          "The next day at the bench, such as 2026-12-05 (default: that of the file, else a"
              + " Saturday).")
  @Nullable String starts;

  @Option(
      names = "--cards",
      paramLabel = "N",
      defaultValue = "2",
      description = "Name up to N test cards worth painting first, 0 to 10 (default 2).")
  int cards;

  /** What is done, and how it came out. */
  static final class SoFar {
    @Option(
        names = "--done",
        paramLabel = "N",
        required = true,
        description =
            "The steps up to N are done. Give it again, with its --measured, for what was done"
                + " later, by the numbers of the plan as it was then.")
    int step;

    @Option(
        names = "--measured",
        paramLabel = "COLOUR",
        description = "The colour that step N's area has now; what follows is worked out again.")
    @Nullable String measured;
  }

  PlanCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    Shelf shelf = shared.shelf();
    GivenFile given = Objects.requireNonNull(file);
    Project read =
        given.read(
            "FILE", path -> ProjectJson.read(path, shelf, photo -> photo(given.path(), photo)));
    Project project = starts == null ? read : read.withStarts(day(starts));
    Planner planner =
        Planner.of(ShelfOptics.estimate(shelf), shared.weights()).withTestCards(cards);
    List<Done> done = progress.stream().map(some -> done(some, shelf)).toList();
    Plan plan = planner.plan(project, done);
    card.write(output, shared, () -> Card.of(plan));
    shared.give(
        output,
        () -> JsonResult.of(plan),
        () -> new PlanText(output, plan, LastTime.of(shared)).print());
  }

  private Done done(SoFar some, Shelf shelf) {
    if (some.measured == null) {
      return new Done(some.step, Optional.empty());
    }
    GivenColour colour = ColourArgument.parse(some.measured, shelf, reference, output);
    return new Done(some.step, Optional.of(new Done.Measured(colour.swatch(), colour.error())));
  }

  /** A photo is looked for beside the project that names it. */
  private Swatch photo(Path project, String text) {
    if (!ArgumentKind.isPhoto(text)) {
      throw new IllegalArgumentException(
          "is '" + text + "', must be of the form photo.jpg@x,y,w,h");
    }
    Path folder = project.toAbsolutePath().getParent();
    String beside = folder == null ? text : folder.resolve(text).toString();
    return ColourArgument.parse(beside, shared.shelf(), reference, output).swatch();
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "--starts is '" + text + "', must be a day such as 2026-12-05", e);
    }
  }
}
