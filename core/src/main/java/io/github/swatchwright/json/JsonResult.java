package io.github.swatchwright.json;

import io.github.swatchwright.calibrate.Calibration;
import io.github.swatchwright.calibrate.CardSet;
import io.github.swatchwright.calibrate.Correction;
import io.github.swatchwright.calibrate.NextCards;
import io.github.swatchwright.coat.CoatPlan;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.ColourDifference;
import io.github.swatchwright.estimate.ShelfReport;
import io.github.swatchwright.ladder.Ladder;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Reinforcement;
import io.github.swatchwright.match.ShelfReach;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.PredictedMix;
import io.github.swatchwright.mix.Recipe;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.photo.RegionColour;
import io.github.swatchwright.plan.Plan;
import io.github.swatchwright.sheet.SheetReading;
import io.github.swatchwright.spectrum.Illuminant;
import java.util.List;
import java.util.Optional;

/**
 * A result that can be written as JSON and as a table, both straight from what was found: the same
 * JSON that the command line prints. Numbers are rounded to four decimals. Immutable as long as
 * nobody changes what it was made of.
 *
 * <pre>{@code
 * String json = JsonResult.of(matcher.match(request)).toText();
 * }</pre>
 */
public final class JsonResult {
  private final JsonOutput.Fields fields;

  JsonResult(JsonOutput.Fields fields) {
    this.fields = fields;
  }

  /**
   * What a shelf can do for a target: the {@code target}, the {@code recipes}, whether it is {@code
   * reachable}, and what is {@code missing} when it isn't. {@link #parseRecipes} reads the recipes
   * back.
   */
  public static JsonResult of(MatchResult result) {
    return MatchJson.of(result);
  }

  /**
   * A ladder: the {@code rungs}, each with the drops to {@code keep} of the pot before, the whole
   * drops to {@code add} to them and the {@code drops} that are in the pot then, which need not be
   * whole; the {@code look} of the area from a distance; and {@code warnings}. {@link #parseRungs}
   * reads the rungs back.
   */
  public static JsonResult of(Ladder ladder) {
    return LadderJson.of(ladder);
  }

  /**
   * Coats over a base: the {@code base}; {@code steps}, each with its {@code predicted} colour,
   * {@code interval} and {@code contrastRatio}; {@code coatsToHide} of the topmost paint; {@code
   * sharesOnTop}, of the base and then of each coat; {@code order}, {@code waits} and {@code
   * cautions}; {@code amounts}, {@code advice}, {@code chipped} and what to paint {@code below}
   * where they were asked for.
   */
  public static JsonResult of(CoatPlan plan) {
    return CoatJson.of(plan);
  }

  /**
   * A model's plan: {@code steps} in the order of work, {@code areas} with their last colour,
   * {@code amounts} and {@code thinners} in all, and the {@code calendar}.
   */
  public static JsonResult of(Plan plan) {
    return PlanJson.of(plan);
  }

  /**
   * What test cards did for a shelf: {@code paints}, each with its {@code cards} and their mean
   * ΔE00 before and after; the {@code contradictions}, cards that were left out, and the {@code
   * unexpected} ones, which were used; the {@code strength} of {@code batches}, 1 for as strong as
   * the shelf's; {@code strengths}, of each paint on the latest day it was {@code painted} with,
   * compared with an earlier one ({@code since}; left out when nobody wrote it down); {@code
   * widthScale}, how wide errors turned out to be; the {@code surface} that was chosen or fitted;
   * and the {@code residual} of all cards.
   */
  public static JsonResult of(Calibration calibration) {
    return CalibrationJson.of(calibration);
  }

  /** The same with the cards to paint {@code next}. */
  public static JsonResult of(Calibration calibration, NextCards next) {
    return CalibrationJson.of(calibration, next);
  }

  /**
   * The test cards to paint next: {@code next} holds the error to be expected as things are, {@code
   * expectedDeltaE00}, and the {@code cards}, each with its {@code drops} and the error that is
   * left once it has been measured.
   */
  public static JsonResult of(NextCards next) {
    return NextCardsJson.of(next);
  }

  /** Test cards, as {@link CardsJson} writes and reads them. */
  public static JsonResult of(CardSet cards) {
    return CardsJson.of(cards);
  }

  /**
   * What to add to a pot: {@code additions}, each with {@code paint}, {@code drops} and the colour
   * to be expected after it; the colour in the end and its ΔE00 from the target; what is in the
   * {@code corrected} pot then; whether a new pot is the better way, and the {@code fresh} pot that
   * was weighed against this one, when one was.
   *
   * @param pot what was in the pot
   * @param correction what to add
   */
  public static JsonResult of(Mix pot, Correction correction) {
    return CorrectionJson.of(pot, correction);
  }

  /**
   * The difference of two colours: {@code deltaE00}, its parts {@code deltaL}, {@code deltaC} and
   * {@code deltaH}, the {@code verdict} as one word, and both colours.
   *
   * @param reference the colour that is compared with
   * @param sample the colour that is compared
   * @param difference sample minus reference
   * @param light the light that both were computed for
   */
  public static JsonResult of(
      Lab reference, Lab sample, ColourDifference difference, Illuminant light) {
    return ComparisonJson.of(reference, sample, difference, light);
  }

  /**
   * Which one paint brings a list of targets closest: the {@code targets} with the shelf as it
   * stands, and the {@code additions}, the best first, each with its {@code nearest} recipe for
   * each target.
   */
  public static JsonResult of(Reinforcement result) {
    return ReinforcementJson.of(result);
  }

  /**
   * A shelf looked through: its {@code paints} and the {@code problems} with them.
   *
   * @param report the report
   * @param light the light that it was made for
   */
  public static JsonResult of(ShelfReport report, Illuminant light) {
    return ShelfReportJson.of(report, Optional.empty(), light);
  }

  /**
   * The same with what the shelf can't be mixed to: {@code reach}, the share of the colours of a
   * display that it can, and {@code gaps}, each with {@code name}, {@code share} out of reach, and
   * the colour that is furthest from any mix.
   *
   * @param report the report
   * @param reach what the shelf can be mixed to, when that is known
   * @param light the light that both were made for
   */
  public static JsonResult of(ShelfReport report, Optional<ShelfReach> reach, Illuminant light) {
    return ShelfReportJson.of(report, reach, light);
  }

  /**
   * Predicted mixes: {@code predictions}, each with its {@code mix} as {@link Mix#parse} reads it,
   * the {@code predicted} colour and its {@code interval}.
   *
   * @param mixes the mixes, in the order they were asked for
   * @param light the light that they were computed for
   */
  public static JsonResult ofPredictions(List<PredictedMix> mixes, Illuminant light) {
    return PredictionsJson.of(mixes, light);
  }

  /**
   * Colours from a photo: {@code colours}, each with its {@code name} and {@code region}, {@code
   * lab} and {@code srgb}, its {@code share} of the region, the {@code spread} of the pixels in
   * ΔE00, the {@code interval} that holds the true colour with the {@code swatchError} that belongs
   * to it, both colours where the region holds {@code several}, and which pixels were left out.
   * {@link SampleJson} reads them back.
   *
   * @param photo what the photo is called
   * @param reference what the colours were corrected by, in words
   * @param colours the colours, in the order they were asked for
   */
  public static JsonResult ofSample(String photo, String reference, List<RegionColour> colours) {
    return SampleJson.of(photo, reference, colours);
  }

  /**
   * What photos of a sheet say: {@code fields}, each with its {@code label}, {@code lab} and {@code
   * srgb} at full hiding with {@code error} as sd and {@code interval} as the ΔE00 that holds 80 %,
   * {@code hiding} as the contrast ratio of the stroke, the colours read over black and over paper,
   * the share {@code leftOut}, and {@code doubts}. A field that couldn't be read has {@code doubts}
   * alone.
   */
  public static JsonResult ofSheet(List<SheetReading> pages) {
    return SheetReadingJson.of(pages);
  }

  /**
   * Mixes that were found once, mixed again: of each its {@code drops} and {@code millilitres}, the
   * colour of {@code then} and the {@code predicted} one with today's paints; and whether the
   * {@code shelfChanged} since.
   *
   * @param mixes what is mixed again
   * @param shelfChanged whether the shelf is another than it was then
   * @param light the light that it was computed for
   */
  public static JsonResult ofAgain(List<MixedAgain> mixes, boolean shelfChanged, Illuminant light) {
    return AgainJson.of(mixes, shelfChanged, light);
  }

  /** What a notebook holds: its {@code entries}, numbered from 1, and what is {@code setAside}. */
  public static JsonResult of(Notebook.Contents notebook) {
    return NotebookListJson.of(notebook);
  }

  /**
   * One entry of a notebook with all that was {@code found}.
   *
   * @param number its place in the notebook, from 1
   * @param entry the entry
   */
  public static JsonResult of(int number, NotebookEntry entry) {
    return NotebookListJson.of(number, entry);
  }

  /**
   * Reads the recipes of a match back.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @param shelf the shelf whose paints the recipes name
   * @throws JsonInputException when the text isn't a result, or names a paint that isn't there
   */
  public static List<Recipe> parseRecipes(String text, String source, Shelf shelf) {
    return MatchJson.parseRecipes(text, source, shelf);
  }

  /**
   * Reads the rungs of a ladder back.
   *
   * @param text the JSON document
   * @param source what messages call it
   * @param shelf the shelf whose paints the rungs name
   * @throws JsonInputException when the text isn't a ladder, or names a paint that isn't there
   */
  public static List<ReadRung> parseRungs(String text, String source, Shelf shelf) {
    return LadderJson.parseRungs(text, source, shelf);
  }

  /** One JSON object as indented text that ends with a line feed. */
  public String toText() {
    return JsonOutput.object(fields);
  }

  /** A row for each recipe, rung, prediction, step or colour. */
  public ResultTable toTable() {
    return ResultTable.of(ContentGenerator.contentOf(fields));
  }
}
