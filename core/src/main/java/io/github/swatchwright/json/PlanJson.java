package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.plan.Look;
import io.github.swatchwright.plan.Needs;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.plan.PlanStep;
import java.io.IOException;
import java.util.Optional;

/**
 * A plan as JSON: {@code steps} in the order of work, {@code areas} with their last colour, {@code
 * amounts} and {@code thinners} in all, and the {@code calendar}.
 *
 * <pre>{@code
 * {"light":"D65","project":"Harbour dredger",
 *  "steps":[{"number":1,"area":"Hull","step":"base","done":false,
 *            "coats":[{"mix":"Dredger grey:1","coats":2,"thinner":1,"coverage":1}],"worn":0,
 *            "drops":[{"paint":"Dredger grey","drops":90}],
 *            "millilitres":{"paint":4,"thinner":4},
 *            "predicted":{…},"interval":{…},"advice":["…"]}],
 *  "areas":[{"area":"Hull","squareCentimetres":420,"steps":[1],"predicted":{…},"interval":{…}}],
 *  "amounts":[{"paint":"Dredger grey","millilitres":4.05,"drops":90,"missing":0,"owned":true}],
 *  "thinners":[{"thinner":"acrylic thinner","millilitres":4}],
 *  "calendar":[{"day":0,"part":"morning","start":"09:00","step":1,"firstCoat":1,"lastCoat":2}],
 *  "cards":[…],"trials":[3],"cautions":[{"about":"flames","text":"…"}]}
 * }</pre>
 *
 * <p>{@code day} counts from the first day at the bench, which also has its {@code date} when the
 * project says when it starts. A step that is put in by the plan has no {@code task}, which else is
 * its place in the area's list, from 1.
 */
final class PlanJson {
  private PlanJson() {}

  /**
   * The plan as JSON.
   *
   * @param plan what was planned
   */
  static JsonResult of(Plan plan) {
    return new JsonResult(
        json -> {
          json.writeStringField("light", plan.light().name());
          json.writeStringField("project", plan.project().name());
          JsonOutput.list(json, "steps", plan.steps(), step -> write(json, step));
          writeAreas(json, plan);
          write(json, plan.needs());
          writeCalendar(json, plan);
          if (plan.cards().isPresent()) {
            NextCards cards = plan.cards().get();
            Rounded.field(json, "expectedWithoutCards", cards.expectedDeltaE00());
            NextCardsJson.writeCards(json, cards);
          }
          JsonOutput.list(json, "trials", plan.trials(), step -> json.writeNumber(step.number()));
          PaintingJson.writeCautions(json, plan.cautions());
        });
  }

  private static void write(JsonGenerator json, PlanStep step) throws IOException {
    json.writeStartObject();
    json.writeNumberField("number", step.number());
    JsonOutput.text(json, "area", step.area());
    json.writeStringField("step", step.kind().word());
    if (step.task().isPresent()) {
      json.writeNumberField("task", step.task().getAsInt() + 1);
    }
    json.writeBooleanField("done", step.done());
    JsonOutput.objects(
        json, "coats", step.work().coats(), coat -> PaintingJson.writeCoat(json, coat));
    Rounded.field(json, "worn", step.work().worn());
    if (step.work().pot().isPresent()) {
      writeDrops(json, step.work().pot().get());
    }
    if (step.work().ladder().isPresent()) {
      write(json, step.work().ladder().get());
    }
    PaintingJson.writeMillilitres(json, step.work().amount());
    Optional<String> thinner = Plan.thinner(step);
    if (thinner.isPresent()) {
      json.writeStringField("thinnedWith", thinner.get());
    }
    write(json, step.look());
    JsonOutput.words(json, "advice", step.advice());
    json.writeEndObject();
  }

  private static void writeDrops(JsonGenerator json, Mix mix) throws IOException {
    JsonOutput.objects(
        json,
        "drops",
        mix.parts(),
        part -> {
          JsonOutput.text(json, "paint", part.paint().name());
          json.writeNumberField("drops", Math.round(part.drops()));
          Rounded.field(json, "millilitres", part.millilitres());
        });
  }

  private static void write(JsonGenerator json, Ladder ladder) throws IOException {
    if (ladder.letDown().isPresent()) {
      RecipeJson.writePaints(json, "letDown", ladder.letDown().get().drops());
    }
    JsonOutput.objects(
        json,
        "rungs",
        ladder.rungs(),
        rung -> {
          PaintingJson.writePour(json, rung);
          ColourJson.write(json, rung.prediction());
          Rounded.field(json, "coverage", rung.coverage());
          Rounded.field(json, "potMillilitres", rung.potMillilitres());
        });
  }

  private static void write(JsonGenerator json, Look look) throws IOException {
    ColourJson.write(json, look.prediction());
    if (look.wanted().isPresent()) {
      ColourJson.write(json, "wanted", look.wanted().get());
    }
    if (look.measured().isPresent()) {
      ColourJson.write(json, "measured", look.measured().get());
    }
    if (look.offBy().isPresent()) {
      Rounded.field(json, "offBy", look.offBy().getAsDouble());
    }
  }

  private static void writeAreas(JsonGenerator json, Plan plan) throws IOException {
    JsonOutput.objects(
        json,
        "areas",
        plan.project().areas(),
        area -> {
          JsonOutput.text(json, "area", area.name());
          Rounded.field(json, "squareCentimetres", area.squareCentimetres());
          JsonOutput.list(
              json, "steps", plan.stepsOf(area.name()), step -> json.writeNumber(step.number()));
          write(json, plan.lookOf(area.name()));
        });
  }

  private static void write(JsonGenerator json, Needs needs) throws IOException {
    JsonOutput.objects(
        json,
        "amounts",
        needs.paints(),
        paint -> {
          JsonOutput.text(json, "paint", paint.name());
          Rounded.field(json, "millilitres", paint.millilitres());
          json.writeNumberField("drops", paint.drops());
          if (paint.left().isPresent()) {
            Rounded.field(json, "left", paint.left().getAsDouble());
          }
          Rounded.field(json, "missing", paint.missingMillilitres());
          json.writeBooleanField("owned", paint.owned());
        });
    JsonOutput.objects(
        json,
        "thinners",
        needs.thinners().entrySet(),
        thinner -> {
          JsonOutput.text(json, "thinner", thinner.getKey());
          Rounded.field(json, "millilitres", thinner.getValue());
        });
  }

  private static void writeCalendar(JsonGenerator json, Plan plan) throws IOException {
    JsonOutput.objects(
        json,
        "calendar",
        plan.calendar(),
        sitting -> {
          json.writeNumberField("day", sitting.day());
          if (plan.project().starts().isPresent()) {
            json.writeStringField(
                "date", plan.project().starts().get().plusDays(sitting.day()).toString());
          }
          json.writeStringField("part", sitting.part().word());
          json.writeStringField("start", sitting.startTime());
          json.writeNumberField("step", sitting.step());
          json.writeNumberField("firstCoat", sitting.firstCoat());
          json.writeNumberField("lastCoat", sitting.lastCoat());
        });
  }
}
