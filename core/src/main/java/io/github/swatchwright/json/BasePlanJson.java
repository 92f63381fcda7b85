package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.swatchwright.coat.BaseColour;
import io.github.swatchwright.coat.BasePlan;
import io.github.swatchwright.coat.BaseRecipe;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.io.IOException;

/**
 * What to paint below some coats: the wanted {@code end}, the {@code base} for it and what the
 * coats make of that ({@code reached}), {@code recipes}, and the same for the {@code darkest} and
 * {@code lightest} part of a pre-highlight. Where no base does it, {@code obstacle} says why.
 */
final class BasePlanJson {
  private BasePlanJson() {}

  static void write(JsonGenerator json, BasePlan plan, TristimulusWeights light)
      throws IOException {
    BaseColour colour = plan.colour();
    ColourJson.write(json, "end", colour.end());
    ColourJson.write(json, "base", new Swatch.OfLab(colour.base()).labUnder(light));
    ColourJson.write(json, "reached", colour.reached());
    Rounded.field(json, "deltaE00", colour.deltaE00());
    Rounded.field(json, "contrastRatio", colour.contrastRatio());
    Rounded.field(json, "shown", colour.shown());
    if (colour.obstacle().isPresent()) {
      json.writeStringField("obstacle", colour.obstacle().get().word());
      json.writeStringField("reason", colour.obstacle().get().reason());
    }
    JsonOutput.list(json, "recipes", plan.recipes(), recipe -> write(json, recipe));
    if (plan.darkest().isPresent()) {
      json.writeObjectFieldStart("darkest");
      write(json, plan.darkest().get(), light);
      json.writeEndObject();
    }
    if (plan.lightest().isPresent()) {
      json.writeObjectFieldStart("lightest");
      write(json, plan.lightest().get(), light);
      json.writeEndObject();
    }
  }

  private static void write(JsonGenerator json, BaseRecipe recipe) throws IOException {
    json.writeStartObject();
    RecipeJson.write(json, recipe.base().recipe());
    ColourJson.write(json, "base", recipe.base().prediction().lab());
    ColourJson.write(json, recipe.end());
    Rounded.field(json, "deltaE00", recipe.deltaE00());
    Rounded.field(json, "expectedDeltaE00", recipe.expectedDeltaE00());
    CoatJson.writeOrder(json, recipe.order());
    json.writeEndObject();
  }
}
