package io.github.swatchwright.json;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.ladder.LadderRequest;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.plan.Aim;
import io.github.swatchwright.plan.BenchHours;
import io.github.swatchwright.plan.DayPart;
import io.github.swatchwright.plan.Project;
import io.github.swatchwright.plan.ProjectArea;
import io.github.swatchwright.plan.StepKind;
import io.github.swatchwright.plan.Task;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Projects to plan, format {@code swatchwright-plan} version 1.
 *
 * <pre>{@code
 * {"format":"swatchwright-plan","version":1,"name":"Harbour dredger","starts":"2026-12-05",
 *  "areas":[{"name":"Hull","squareCentimetres":420,"steps":[
 *    {"step":"base","target":{"srgb":"#5B6468"}},
 *    {"step":"whitewash","mix":"Titanium white:6, Deckhouse cream:1","coats":2,"worn":0.15},
 *    {"step":"filter","paint":"Blue filter","coats":2}]}]}
 * }</pre>
 *
 * <p>The file format's page lists all fields. Photos are named in targets and read by whoever
 * calls.
 */
public final class ProjectJson {
  private static final DocumentHead HEAD = new DocumentHead("swatchwright-plan", 1);

  private final Shelf shelf;
  private final Function<String, Swatch> photos;

  private ProjectJson(Shelf shelf, Function<String, Swatch> photos) {
    this.shelf = shelf;
    this.photos = photos;
  }

  /**
   * Reads a project from a file, which messages name by its path.
   *
   * @param shelf the paints that it names
   * @param photos reads the colour of a photo's region, given as {@code photo.jpg@x,y,w,h}
   * @throws JsonInputException when the file isn't a project, or names a paint that isn't there
   * @throws IOException when it can't be read
   */
  public static Project read(Path file, Shelf shelf, Function<String, Swatch> photos)
      throws IOException {
    return new ProjectJson(shelf, photos).project(JsonDocument.read(file));
  }

  /**
   * Reads a project from a text.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @param shelf the paints that it names
   * @param photos reads the colour of a photo's region, given as {@code photo.jpg@x,y,w,h}
   * @throws JsonInputException when the text isn't a project, or names a paint that isn't there
   */
  public static Project parse(
      String text, String source, Shelf shelf, Function<String, Swatch> photos) {
    return new ProjectJson(shelf, photos).project(JsonDocument.parse(text, source));
  }

  private Project project(JsonElement root) {
    JsonFields fields =
        root.fields(
            "format", "version", "name", "notes", "starts", "bench", "application", "areas");
    HEAD.check(fields);
    fields.optional("notes").ifPresent(JsonElement::text);
    List<ProjectArea> areas =
        fields.required("areas").items(1, Project.MOST_AREAS).stream().map(this::area).toList();
    String name = fields.required("name").text();
    return root.make(
        () ->
            new Project(
                name,
                fields.optional("starts").map(JsonElement::date),
                fields.optional("bench").map(ProjectJson::hours).orElse(BenchHours.USUAL),
                fields
                    .optional("application")
                    .map(ProjectJson::application)
                    .orElse(Application.USUAL),
                areas));
  }

  private static BenchHours hours(JsonElement element) {
    JsonFields fields = element.fields("weekdays", "weekends");
    return element.make(
        () ->
            new BenchHours(parts(fields.optional("weekdays")), parts(fields.optional("weekends"))));
  }

  private static Set<DayPart> parts(Optional<JsonElement> list) {
    return list.map(some -> some.items(0, DayPart.values().length)).orElse(List.of()).stream()
        .map(part -> part.oneOf(List.of(DayPart.values()), DayPart::word))
        .collect(Collectors.toSet());
  }

  private static Application application(JsonElement element) {
    JsonFields fields = element.fields("dryMicrometres", "volumeSolids", "transfer");
    return element.make(
        () ->
            new Application(
                number(fields, "dryMicrometres").orElse(Application.USUAL.dryMicrometres()),
                number(fields, "volumeSolids").orElse(Application.USUAL.volumeSolids()),
                number(fields, "transfer").orElse(Application.USUAL.transfer())));
  }

  private ProjectArea area(JsonElement element) {
    JsonFields fields = element.fields("name", "squareCentimetres", "bare", "steps");
    List<Task> tasks =
        fields.required("steps").items(1, ProjectArea.MOST_TASKS).stream().map(this::task).toList();
    String name = fields.required("name").text();
    double size = fields.required("squareCentimetres").number();
    Base bare =
        fields
            .optional("bare")
            .<Base>map(some -> new Base.OfSwatch(colour(some)))
            .orElse(ProjectArea.BARE_PLASTIC);
    return element.make(() -> new ProjectArea(name, size, bare, tasks));
  }

  private Task task(JsonElement element) {
    JsonFields fields =
        element.fields(
            "step",
            "paint",
            "mix",
            "target",
            "from",
            "to",
            "rungs",
            "for",
            "coats",
            "thinner",
            "coverage",
            "worn",
            "finish");
    StepKind kind = fields.required("step").oneOf(StepKind.askable(), StepKind::word);
    Aim aim = aim(element, fields);
    OptionalInt coats =
        fields
            .optional("coats")
            .map(some -> OptionalInt.of(some.wholeNumber(1, Task.MOST_COATS)))
            .orElse(OptionalInt.empty());
    Optional<Finish> finish =
        fields.optional("finish").map(some -> some.oneOf(List.of(Finish.values()), Finish::word));
    return element.make(
        () ->
            new Task(
                kind,
                aim,
                coats,
                number(fields, "thinner"),
                number(fields, "coverage"),
                number(fields, "worn").orElse(0),
                finish));
  }

  private static OptionalDouble number(JsonFields fields, String name) {
    return fields
        .optional(name)
        .map(some -> OptionalDouble.of(some.number()))
        .orElse(OptionalDouble.empty());
  }

  private Aim aim(JsonElement step, JsonFields fields) {
    List<String> given =
        List.of("paint", "mix", "target", "from").stream()
            .filter(name -> fields.optional(name).isPresent())
            .toList();
    if (given.size() > 1) {
      throw step.refuse("has " + String.join(" and ", given) + ", must have one of them");
    }
    if (given.isEmpty()) {
      return new Aim.Usual();
    }
    JsonElement value = fields.required(given.get(0));
    return switch (given.get(0)) {
      case "paint" -> new Aim.OfMix(value.make(() -> Mix.of(shelf.paint(value.text()))));
      case "mix" -> new Aim.OfMix(mix(value));
      case "target" -> new Aim.OfColour(colour(value));
      default -> ladder(step, fields);
    };
  }

  private Mix mix(JsonElement value) {
    return value.make(() -> Mix.parse(value.text(), shelf));
  }

  private Aim.OfLadder ladder(JsonElement step, JsonFields fields) {
    Shade from = shade(fields.required("from"));
    Shade to = shade(fields.required("to"));
    int rungs = fields.required("rungs").wholeNumber(2, LadderRequest.MOST_RUNGS);
    Optional<Subject> subject =
        fields.optional("for").map(some -> some.oneOf(List.of(Subject.values()), Subject::word));
    return step.make(() -> new Aim.OfLadder(from, to, rungs, subject));
  }

  /** A text is a mix; an object is a colour. */
  private Shade shade(JsonElement value) {
    return value.content() instanceof JsonContent.Text
        ? new Shade.OfMix(mix(value))
        : new Shade.OfColour(colour(value));
  }

  private Swatch colour(JsonElement value) {
    JsonElement photo = value.members().fields().get("photo");
    if (photo == null) {
      return SwatchJson.read(value);
    }
    value.fields("photo");
    return photo.make(() -> photos.apply(photo.text()));
  }
}
