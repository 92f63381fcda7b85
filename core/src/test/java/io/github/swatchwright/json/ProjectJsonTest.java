package io.github.swatchwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.coat.Base;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.ladder.Shade;
import io.github.swatchwright.ladder.Subject;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.plan.Aim;
import io.github.swatchwright.plan.DayPart;
import io.github.swatchwright.plan.Done;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.plan.Planner;
import io.github.swatchwright.plan.Project;
import io.github.swatchwright.plan.Task;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoProject;
import io.github.swatchwright.testdata.DemoShelf;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProjectJsonTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final Lab SEEN = Lab.ofD65(50, 1, 2);

  private static Project project(String text) {
    return ProjectJson.parse(text, "project", SHELF, photo -> new Swatch.OfLab(SEEN));
  }

  private static String of(String steps) {
    return "{'format':'swatchwright-plan','version':1,'name':'Any','areas':[{'name':'Hull',"
        .concat("'squareCentimetres':50,'steps':[" + steps + "]}]}")
        .replace('\'', '"');
  }

  private static Task task(String step) {
    return project(of(step)).areas().get(0).tasks().get(0);
  }

  @Test
  void theDemoProjectIsReadAsItStands() {
    Project project = project(DemoProject.text());

    assertThat(project.areas()).hasSize(3);
    assertThat(project.areas().get(0).tasks().get(2).worn()).isEqualTo(0.15);
    assertThat(project.areas().get(1).tasks().get(1).aim())
        .isInstanceOfSatisfying(
            Aim.OfLadder.class,
            ladder -> {
              assertThat(ladder.rungs()).isEqualTo(4);
              assertThat(ladder.subject()).hasValue(Subject.RUST);
              assertThat(ladder.from()).isInstanceOf(Shade.OfMix.class);
            });
    assertThat(project.starts()).isEmpty();
  }

  @Test
  void everyFieldIsRead() {
    Project project =
        project(
            """
            {"format":"swatchwright-plan","version":1,"name":"All","notes":"x",
             "starts":"2026-12-05","bench":{"weekdays":[],"weekends":["morning"]},
             "application":{"dryMicrometres":12,"volumeSolids":0.4,"transfer":0.5},
             "areas":[{"name":"Hull","squareCentimetres":50,"bare":{"lab":[20,0,0]},"steps":[
              {"step":"base","target":{"photo":"hull.jpg@1,2,3,4"},"coats":2,"thinner":0.5},
              {"step":"ladder","from":{"srgb":"#C8642A"},"to":{"srgb":"#3B2A22"},"rungs":3},
              {"step":"speckle","paint":"Red oxide","coverage":0.1},
              {"step":"varnish","finish":"gloss"}]}]}
            """);

    assertThat(project.starts()).hasValue(LocalDate.of(2026, 12, 5));
    assertThat(project.hours().weekdays()).isEmpty();
    assertThat(project.hours().weekends()).containsExactly(DayPart.MORNING);
    assertThat(project.application().transfer()).isEqualTo(0.5);
    assertThat(((Base.OfSwatch) project.areas().get(0).bare()).swatch().lab().l()).isEqualTo(20);
    List<Task> tasks = project.areas().get(0).tasks();
    assertThat(tasks.get(0).coats()).hasValue(2);
    assertThat(tasks.get(0).thinner()).hasValue(0.5);
    assertThat(((Aim.OfColour) tasks.get(0).aim()).swatch().lab()).isEqualTo(SEEN);
    assertThat(((Aim.OfLadder) tasks.get(1).aim()).to()).isInstanceOf(Shade.OfColour.class);
    assertThat(tasks.get(2).coverage()).hasValue(0.1);
    assertThat(tasks.get(3).finish()).hasValue(Finish.GLOSS);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'step':'base','paint':'Hull blac'}|steps[0].paint|nearest is 'Hull black'",
        "{'step':'undercoat','paint':'Hull black'}|steps[0].step|must be one of primer, pre-high",
        "{'step':'seal'}|steps[0].step|must be one of",
        "{'step':'base'}|steps[0]|needs a paint, a mix or a target",
        "{'step':'base','paint':'Hull black','target':{'srgb':'#000000'}}|steps[0]|one of them",
        "{'step':'base','paint':'Hull black','coats':0}|steps[0].coats|whole number within",
        "{'step':'base','paint':'Hull black','thinner':101}|steps[0].thinner|must be within",
        "{'step':'base','paint':'Hull black','worn':1}|steps[0].worn|must be within",
        "{'step':'ladder','from':'Hull black','rungs':3}|steps[0]|has no field 'to'",
        "{'step':'base','target':{'photo':'x','grey':'y'}}|target.grey|unknown field",
        "{'step':'base','colour':'#123456'}|steps[0].colour|unknown field; known here: step,",
      })
  void mistakesAreNamedWithTheirPlace(String step, String place, String complaint) {
    assertThatThrownBy(() -> task(step))
        .isInstanceOf(JsonInputException.class)
        .hasMessageContaining(place)
        .hasMessageContaining(complaint);
  }

  @Test
  void aPlanIsWrittenWithTheKeysOfTheContract() {
    Planner planner = Planner.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
    Project project =
        project(
            of(
                "{'step':'base','paint':'Dredger grey'},{'step':'ladder','from':'Bright orange:3,"
                    + " Red oxide:1','to':'Burnt umber:1','rungs':3},{'step':'varnish'}"));
    Plan plan =
        planner
            .withTestCards(1)
            .plan(
                project.withStarts(LocalDate.of(2026, 12, 5)),
                List.of(new Done(1, Optional.of(new Done.Measured(new Swatch.OfLab(SEEN))))));

    JsonElement json = JsonDocument.parse(JsonResult.of(plan).toText(), "plan");
    List<JsonElement> steps = items(json, "steps");
    assertThat(steps).hasSize(plan.steps().size());
    assertThat(field(steps.get(0), "done").truth()).isTrue();
    assertThat(items(field(steps.get(0), "measured"), "lab").get(0).number()).isEqualTo(50);
    JsonElement ladder = steps.get(plan.steps().size() - 2);
    assertThat(field(ladder, "step").text()).isEqualTo("ladder");
    assertThat(items(ladder, "rungs")).hasSize(3);
    assertThat(field(field(ladder, "interval"), "deltaE00").number()).isPositive();
    assertThat(items(items(json, "areas").get(0), "steps")).hasSize(plan.steps().size());
    assertThat(field(items(json, "amounts").get(0), "missing").number()).isZero();
    assertThat(field(items(json, "calendar").get(0), "date").text()).isEqualTo("2026-12-05");
    assertThat(items(json, "cautions")).isNotEmpty();
  }

  private static JsonElement field(JsonElement object, String name) {
    return Objects.requireNonNull(object.members().fields().get(name), name);
  }

  private static List<JsonElement> items(JsonElement object, String name) {
    return field(object, name).items(0, 1000);
  }
}
