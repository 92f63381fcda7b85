package io.github.swatchwright.fuzz;

import io.github.swatchwright.coat.CoatGoal;
import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.exchange.ImportDefaults;
import io.github.swatchwright.exchange.NamedRegion;
import io.github.swatchwright.exchange.ShelfImport;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.ChartJson;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.NotebookLine;
import io.github.swatchwright.json.ProjectJson;
import io.github.swatchwright.json.SampleJson;
import io.github.swatchwright.json.SheetLayoutJson;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.json.Trial;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.photo.Region;
import io.github.swatchwright.sheet.SheetCode;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.testdata.DemoShelf;
import io.github.swatchwright.testdata.FuzzSubject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What reads text from outside, and does no more than read it: thousands of inputs a second, for
 * runs over millions. {@link FuzzTarget} also computes with what it read.
 */
enum ParseTarget implements FuzzSubject {
  SHELF(ParseSeeds.SHELF, text -> ShelfJson.parse(text, "fuzz")),
  OPTICS(ParseSeeds.OPTICS, text -> ShelfJson.parse(text, "fuzz")),
  CARDS(FuzzTarget.CARDS.seeds(), text -> CardsJson.parse(text, "fuzz")),
  CHART(FuzzTarget.CHART.seeds(), text -> ChartJson.parse(text, "fuzz")),
  PLAN(
      ParseSeeds.PLAN,
      text -> ProjectJson.parse(text, "fuzz", Demo.SHELF, photo -> Demo.PHOTO_COLOUR)),
  LAYOUT(ParseSeeds.LAYOUT, text -> SheetLayoutJson.parse(text, "fuzz")),
  SHEET_CODE(ParseSeeds.SHEET_CODE, SheetCode::parse),
  NOTEBOOK(FuzzTarget.NOTEBOOK.seeds(), NotebookLine::read),
  RECIPES(FuzzTarget.RECIPES.seeds(), text -> JsonResult.parseRecipes(text, "fuzz", Demo.SHELF)),
  RUNGS(FuzzTarget.RUNGS.seeds(), text -> JsonResult.parseRungs(text, "fuzz", Demo.SHELF)),
  SAMPLE(FuzzTarget.SAMPLE.seeds(), text -> SampleJson.parse(text, "fuzz")),
  CSV(
      ParseSeeds.of(
          "name,srgb,medium\nA,#808080,oil\n\"B \"\"b\"\"\",#FFFFFF,oil\n",
          String.join(
              "\r\n",
              "\uFEFFname,medium,lab_l,lab_a,lab_b,coats,make,use",
              "'=A,oil,50,1.5,-2,3,ready-mixed,ink",
              "")),
      ShelfImport.CSV),
  PALETTE(
      ParseSeeds.of("GIMP Palette\nName: p\nColumns: 4\n#\n0 128 255 Blue\n1 2 3\tGrey\n"),
      ShelfImport.GIMP_PALETTE),
  CGATS(FuzzTarget.CGATS.seeds(), ShelfImport.CGATS),
  MIX(FuzzTarget.MIX.seeds(), text -> Mix.parse(text, Demo.SHELF)),
  HOSTILE_MIX(
      ParseSeeds.of("\u202Ered\u202C:3, \u2028line:1", "\u2028line : 2"),
      text -> Mix.parse(text, Demo.HOSTILE)),
  POT(FuzzTarget.POT.seeds(), text -> Pot.parse(text, Demo.SHELF)),
  COATS(FuzzTarget.COATS.seeds(), text -> Coats.parse(text, Demo.SHELF)),
  COLOUR(
      FuzzTarget.COLOUR.seeds(),
      text -> {
        if (text.startsWith("#")) {
          Srgb.parse(text);
        } else {
          Lab.parse(text);
        }
      }),
  LIGHT(ParseSeeds.of("D65", "F11", "LED-B3"), Illuminant::parse),
  REGION(ParseSeeds.of("10,20,5,5", "1.5%, 2%,50%,50%"), text -> Region.parse(text, 640, 480)),
  REGIONS(
      bytes -> NamedRegion.read(bytes, "fuzz"),
      ParseSeeds.of(
          "name,region\r\n\"Rust, old\",\"10,20,5%,5%\"\r\n'=Grey,\"1,2,3,4\"\r\n",
          "srgb;Region;note;NAME\n#fff;1,2,3,4;x;Rust\n")),
  SETTINGS(ParseSeeds.of("pressure=1.4bar,tip=0.3mm", "a = b"), Trial::parseSettings),
  SHIFT(ParseSeeds.of("b=-4", "L=3, a=1, b=-4"), CoatGoal::parseShift);

  /** Reads a text, or refuses it by an {@link IllegalArgumentException}. */
  private interface Reader {
    void read(String text);
  }

  /** Reads bytes, or refuses them. */
  private interface ByteReader {
    void read(byte[] input);
  }

  /** What some of the texts name. */
  private static final class Demo {
    static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
    static final Shelf HOSTILE =
        Shelf.of(
            "\u001B[2J",
            Stream.of("\u202Ered\u202C", "\u2028line", "\uD800\uFFFF")
                .map(name -> Paint.of(name, Medium.OIL, new Swatch.OfSrgb(Srgb.parse("#808080"))))
                .toList());
    static final Swatch PHOTO_COLOUR = new Swatch.OfSrgb(Srgb.parse("#808080"));
    static final ImportDefaults OIL = new ImportDefaults("bench", Optional.of(Medium.OIL));
  }

  @SuppressWarnings("ImmutableEnumChecker") // List.of can't be changed.
  private final List<byte[]> seeds;

  @SuppressWarnings("ImmutableEnumChecker") // Has no state.
  private final ByteReader reader;

  ParseTarget(List<byte[]> seeds, Reader reader) {
    this.seeds = seeds;
    this.reader = bytes -> reader.read(new String(bytes, StandardCharsets.UTF_8));
  }

  ParseTarget(ByteReader reader, List<byte[]> seeds) {
    this.seeds = seeds;
    this.reader = reader;
  }

  ParseTarget(List<byte[]> seeds, ShelfImport format) {
    this(bytes -> format.read(bytes, "fuzz", Demo.OIL), seeds);
  }

  @Override
  public List<byte[]> seeds() {
    return seeds;
  }

  @Override
  public boolean feed(byte[] input) {
    try {
      reader.read(input);
      return true;
    } catch (IllegalArgumentException refusal) {
      Refusals.check(refusal);
      return false;
    }
  }
}
