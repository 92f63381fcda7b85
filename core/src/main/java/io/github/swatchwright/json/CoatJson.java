package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.CoatAdvice;
import io.github.swatchwright.coat.CoatAmounts;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.coat.CoatStep;
import io.github.swatchwright.coat.OrderNote;
import io.github.swatchwright.coat.ScaleLightening;
import io.github.swatchwright.coat.Thinner;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.PaintAmount;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;
import java.util.List;

/**
 * Coats over a base as JSON: the {@code base}; {@code steps}, each with its {@code predicted}
 * colour, {@code interval} and {@code contrastRatio}; {@code coatsToHide} of the topmost paint;
 * {@code sharesOnTop}, of the base and then of each coat; {@code order}, {@code waits} and {@code
 * cautions}; {@code amounts}, {@code advice}, {@code chipped} and what to paint {@code below} where
 * they were asked for. A step that leaves something of what is below open has {@code patches}, as
 * they are seen close up.
 *
 * <pre>{@code
 * {"light":"D65","base":{"lab":[…],"srgb":"#656A6C","medium":"acrylic"},
 *  "steps":[{"mix":"Whitewash wash:1","coats":2,"thinner":0,"coverage":1,"bottleUse":"wash",
 *            "thinnedWith":"white spirit","predicted":{"lab":[…],"srgb":"#8B8D8E"},
 *            "interval":{"deltaE00":4.6,"probability":0.8},"contrastRatio":0.25,"coatsToHide":89.5,
 *            "overDarkest":{…},"overLightest":{…},"cautions":["fresh-air","flames","oily-rags"]}],
 *  "coatsToHide":89.5,"sharesOnTop":[0,1],
 *  "order":[{"coat":1,"upper":{"paint":"Whitewash wash","medium":"enamel"},
 *            "lower":{"paint":"Dredger grey","medium":"acrylic"},
 *            "verdict":"safe","reason":"white spirit leaves cured acrylic alone"}],
 *  "waits":[{"medium":"enamel","leastHours":24,"mostHours":48,"words":"1 to 2 days"}],
 *  "cautions":[{"about":"flames","text":"…"}]}
 * }</pre>
 */
final class CoatJson {
  private CoatJson() {}

  /**
   * The result as JSON.
   *
   * @param plan the coats
   */
  static JsonResult of(CoatPlan plan) {
    TristimulusWeights weights = TristimulusWeights.of(plan.light(), Observer.CIE_1931);
    return new JsonResult(
        json -> {
          json.writeStringField("light", plan.light().name());
          writeBase(json, plan);
          json.writeObjectFieldStart("preHighlight");
          ColourJson.write(json, "darkest", plan.ends().darkest().labUnder(weights));
          ColourJson.write(json, "lightest", plan.ends().lightest().labUnder(weights));
          json.writeEndObject();
          if (plan.below().isPresent()) {
            json.writeObjectFieldStart("below");
            BasePlanJson.write(json, plan.below().get(), weights);
            json.writeEndObject();
          }
          writeSteps(json, plan);
          writeShares(json, plan);
          if (plan.amounts().isPresent()) {
            write(json, plan.amounts().get(), plan.steps());
          }
          if (plan.advice().isPresent()) {
            write(json, plan.advice().get());
          }
          writeOrder(json, plan.order());
          writeWaits(json, plan);
        });
  }

  private static void writeBase(JsonGenerator json, CoatPlan plan) throws IOException {
    json.writeObjectFieldStart("base");
    ColourJson.writeFields(json, plan.basePrediction().lab());
    if (plan.base().medium().isPresent()) {
      json.writeStringField("medium", plan.base().medium().get().word());
    }
    json.writeEndObject();
    if (plan.scaleLightening() > 0) {
      Rounded.field(json, "scaleLightening", plan.scaleLightening());
      json.writeStringField("scaleLighteningNote", ScaleLightening.DISPUTED);
    }
  }

  private static void write(JsonGenerator json, Coat coat) throws IOException {
    PaintingJson.writeCoat(json, coat);
    json.writeStringField("bottleUse", coat.mix().parts().get(0).paint().use().word());
    JsonOutput.text(json, "thinnedWith", Thinner.of(coat.mix()));
    if (coat.doubt().isPresent()) {
      JsonOutput.text(json, "doubt", coat.doubt().get());
    }
  }

  private static void writeSteps(JsonGenerator json, CoatPlan plan) throws IOException {
    List<CoatStep> steps = plan.steps();
    json.writeArrayFieldStart("steps");
    for (int i = 0; i < steps.size(); i++) {
      CoatStep step = steps.get(i);
      json.writeStartObject();
      write(json, step.coat());
      ColourJson.write(json, step.prediction());
      Rounded.field(json, "contrastRatio", step.contrastRatio());
      if (!step.coat().isVarnish()) {
        Rounded.field(json, "coatsToHide", step.coatsToHide());
      }
      ColourJson.write(json, "overDarkest", step.overDarkest());
      ColourJson.write(json, "overLightest", step.overLightest());
      writePatches(json, step);
      PaintingJson.writeCautionWords(json, plan.cautionsOfSteps().get(i));
      json.writeEndObject();
    }
    json.writeEndArray();
    if (!steps.isEmpty() && !steps.get(steps.size() - 1).coat().isVarnish()) {
      Rounded.field(json, "coatsToHide", steps.get(steps.size() - 1).coatsToHide());
    }
  }

  /** On which share of the area each lies on top, and how a coat is worn off. */
  private static void writeShares(JsonGenerator json, CoatPlan plan) throws IOException {
    double[] shares = plan.sharesOnTop();
    Rounded.list(json, "sharesOnTop", shares);
    if (plan.chipping().isPresent()) {
      int coat = plan.chipping().get().coat();
      json.writeObjectFieldStart("chipped");
      json.writeNumberField("coat", coat);
      Rounded.field(json, "worn", plan.chipping().get().worn());
      JsonOutput.words(json, "steps", plan.chippingOf(coat));
      json.writeEndObject();
    }
  }

  /** What is seen close up, where coats leave something of what is below open. */
  private static void writePatches(JsonGenerator json, CoatStep step) throws IOException {
    if (step.patches().size() < 2) {
      return;
    }
    JsonOutput.objects(
        json,
        "patches",
        step.patches(),
        patch -> {
          Rounded.field(json, "share", patch.share());
          ColourJson.writeFields(json, patch.colour());
        });
  }

  private static void write(JsonGenerator json, CoatAmounts amounts, List<CoatStep> steps)
      throws IOException {
    json.writeObjectFieldStart("amounts");
    Rounded.field(json, "squareCentimetres", amounts.squareCentimetres());
    Rounded.field(json, "dryMicrometres", amounts.application().dryMicrometres());
    Rounded.field(json, "volumeSolids", amounts.application().volumeSolids());
    Rounded.field(json, "transfer", amounts.application().transfer());
    json.writeArrayFieldStart("coats");
    for (int i = 0; i < steps.size(); i++) {
      PaintAmount amount = amounts.each().get(i);
      json.writeStartObject();
      json.writeStringField("mix", steps.get(i).coat().mix().toText());
      Rounded.field(json, "paintMillilitres", amount.paintMillilitres());
      Rounded.field(json, "paintDrops", amount.drops(steps.get(i).coat().mix()));
      Rounded.field(json, "thinnerMillilitres", amount.thinnerMillilitres());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, CoatAdvice advice) throws IOException {
    json.writeObjectFieldStart("advice");
    ColourJson.write(json, "target", advice.target());
    Rounded.field(json, "nowDeltaE00", advice.nowDeltaE00());
    JsonOutput.objects(
        json,
        "options",
        advice.options(),
        option -> {
          write(json, option.coat());
          json.writeStringField("use", option.use().word());
          ColourJson.write(json, option.prediction());
          Lab lab = option.prediction().lab();
          json.writeObjectFieldStart("shift");
          Rounded.field(json, "L", lab.l() - advice.now().l());
          Rounded.field(json, "a", lab.a() - advice.now().a());
          Rounded.field(json, "b", lab.b() - advice.now().b());
          json.writeEndObject();
          Rounded.field(json, "deltaE00", option.deltaE00());
          Rounded.field(json, "expectedDeltaE00", option.expectedDeltaE00());
          writeOrder(json, option.order());
        });
    json.writeEndObject();
  }

  static void writeOrder(JsonGenerator json, List<OrderNote> notes) throws IOException {
    JsonOutput.objects(
        json,
        "order",
        notes,
        note -> {
          json.writeNumberField("coat", note.coat());
          writeLayer(json, "upper", note.upperPaint(), note.rule().upper());
          writeLayer(json, "lower", note.lowerPaint(), note.rule().lower());
          json.writeStringField("verdict", note.verdict().word());
          json.writeStringField("reason", note.rule().reason());
          if (!note.rule().remedy().isEmpty()) {
            json.writeStringField("remedy", note.rule().remedy());
          }
        });
  }

  private static void writeLayer(JsonGenerator json, String field, String paint, Medium medium)
      throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("paint", paint);
    json.writeStringField("medium", medium.word());
    json.writeEndObject();
  }

  private static void writeWaits(JsonGenerator json, CoatPlan plan) throws IOException {
    JsonOutput.objects(
        json,
        "waits",
        plan.media(),
        medium -> {
          Wait wait = Wait.after(medium);
          json.writeStringField("medium", medium.word());
          Rounded.field(json, "leastHours", wait.leastHours());
          Rounded.field(json, "mostHours", wait.mostHours());
          json.writeStringField("words", wait.words());
        });
    PaintingJson.writeCautions(json, plan.cautions());
  }
}
