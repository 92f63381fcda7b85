package io.github.swatchwright.fuzz;

import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.exchange.CgatsText;
import io.github.swatchwright.exchange.GimpPalette;
import io.github.swatchwright.exchange.ImportDefaults;
import io.github.swatchwright.exchange.ShelfCsv;
import io.github.swatchwright.exchange.ShelfImport;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.ChartJson;
import io.github.swatchwright.json.JsonResult;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.SampleJson;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoShelf;
import io.github.swatchwright.testdata.FuzzSubject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What reads text from outside. Each takes any bytes and may only refuse them by its exception. */
enum FuzzTarget implements FuzzSubject {
  /** A shelf: what is read is written and read back the same, and small ones are estimated. */
  SHELF(
      DemoShelf.text(),
      """
      {"format":"swatchwright-shelf","version":1,"name":"Two","surface":{"k1":0.03,"k2":0.4},"paints":[
      {"name":"A","medium":"enamel","finish":"gloss","masstone":{"lab":[50,10,-10]},"make":"single-pigment",
      "hiding":{"contrastRatio":0.9},"dropMillilitres":0.045,"swatchError":1.5,"notes":"n"},
      {"name":"B","medium":"oil","finish":"satin","effect":"pearl","hiding":{"word":"opaque"},
      "masstone":{"reflectance":{"from":400,"step":40,"values":[0.1,0.2,0.3,0.4,0.4,0.4,0.4,0.4]}}}]}
      """) {
    @Override
    void read(String text) {
      Shelf shelf = ShelfJson.parse(text, "fuzz");
      String written = ShelfJson.toText(shelf);
      if (!ShelfJson.parse(written, "written").equals(shelf)) {
        throw new AssertionError("the shelf reads back as another: " + written);
      }
      if (shelf.paints().size() <= 2) {
        ShelfOptics.estimate(shelf);
      }
    }
  },

  /** Test cards. */
  CARDS(
      """
      {"format":"swatchwright-cards","version":1,"cards":[
      {"parts":{"White":50,"Yellow oxide":0.5},"measured":{"srgb":"#C48A2C"},"by":"mass"},
      {"parts":{"White":5},"measured":{"lab":[52,-1,-3]},"over":{"srgb":"#202020"},"coats":2},
      {"parts":{"A":1},"measured":{"reflectance":{"from":400,"step":40,"values":[0.1,0.2,0.3,0.4,0.4,0.4,0.4,0.4]}}}]}
      """) {
    @Override
    void read(String text) {
      CardsJson.parse(text, "fuzz");
    }
  },

  /** A mix of the demo shelf. */
  MIX("Titanium white:3, Lamp black:1", "Red oxide:0.5", "Titanium white : 2 ,Red oxide:7.25") {
    @Override
    void read(String text) {
      Mix.parse(text, DEMO);
    }
  },

  /** A left-over pot of the demo shelf. */
  POT("Titanium white:3, Lamp black:1", "Red oxide:12") {
    @Override
    void read(String text) {
      Pot.parse(text, DEMO);
    }
  },

  /** A stack of coats of the demo shelf. */
  COATS("Titanium white:2@1:4 over 60%, Red oxide:3@1:15", "Red oxide:1", "Lamp black:1@10:1") {
    @Override
    void read(String text) {
      Coats.parse(text, DEMO);
    }
  },

  /** A colour. */
  COLOUR("#C48A2C", "lab(50, 10, -10)", "LAB( 1.5,-0,1e2 )") {
    @Override
    void read(String text) {
      if (text.startsWith("#")) {
        Srgb.parse(text).toLab();
      } else {
        Lab.parse(text).toSrgb();
      }
    }
  },

  /** A notebook's line. */
  NOTEBOOK(
      """
      {"format":"swatchwright-notebook","version":1,"date":"2031-05-06T07:08:09Z","library":"1","shelf":{"name":"s",\
      "sha256":"00"},"asked":["match","#808080"],"found":{"recipes":[{"drops":[{"paint":"Red oxide","drops":3}]}],"n":1.5}}
      """) {
    @Override
    void read(String text) {
      Notebook.Contents contents = notebook(text);
      if (contents.entries().isEmpty()) {
        throw new IllegalArgumentException(
            contents.setAside().isEmpty() ? "nothing" : contents.setAside().get(0).reason());
      }
      contents.entries().forEach(entry -> Notebook.mixes(entry, DEMO));
    }
  },

  /** The recipes of a result. */
  RECIPES(
      """
      {"light":"D65","recipes":[{"drops":[{"paint":"Red oxide","drops":3},
      {"pot":"Titanium white:6, Red oxide:2","drops":4}],"deltaE00":1.5}],"reachable":true}
      """) {
    @Override
    void read(String text) {
      JsonResult.parseRecipes(text, "fuzz", DEMO);
    }
  },

  /** The rungs of a ladder. */
  RUNGS(
      """
      {"light":"D65","rungs":[{"add":[{"paint":"Red oxide","drops":3}],"drops":[{"paint":"Red oxide","drops":3}],
      "predicted":{"lab":[40,20,20],"srgb":"#8A4B2A"},"coverage":0.5,"visibleShare":0.2}],"look":{"lab":[40,20,20],
      "srgb":"#8A4B2A"}}
      """) {
    @Override
    void read(String text) {
      JsonResult.parseRungs(text, "fuzz", DEMO);
    }
  },

  /** The colours of a sample. */
  SAMPLE(
      """
      {"photo":"p.jpg","reference":"none","colours":[{"lab":[40,20,20],"srgb":"#8A4B2A","share":1,"spread":2}]}
      """) {
    @Override
    void read(String text) {
      SampleJson.parse(text, "fuzz");
    }
  },

  /** A colour chart. */
  CHART(
      "{\"format\":\"swatchwright-chart\",\"version\":1,\"white\":\"D50\",\"columns\":4,\"patches\":["
          + String.join(",", Collections.nCopies(12, "{\"lab\":[50,10,-20]}"))
          + "]}",
      "{\"format\":\"swatchwright-chart\",\"version\":1,\"patches\":["
          + String.join(",", Collections.nCopies(12, "{\"lab\":[50,0,0],\"percent\":[10,20,5,5]}"))
          + "]}") {
    @Override
    void read(String text) {
      ChartJson.parse(text, "fuzz");
    }
  },

  /** A shelf from a table. */
  CSV(ShelfCsv.toText(demo()), "name,srgb,medium\nA,#808080,oil\n\"B \"\"b\"\"\",#FFFFFF,oil\n") {
    @Override
    boolean take(byte[] input) {
      return imports(ShelfImport.CSV, input);
    }
  },

  /** A shelf from a palette. */
  PALETTE(GimpPalette.toText(demo()), "GIMP Palette\nName: p\nColumns: 4\n#\n0 128 255 Blue\n") {
    @Override
    boolean take(byte[] input) {
      return imports(ShelfImport.GIMP_PALETTE, input);
    }
  },

  /** A shelf from an instrument's measurements. */
  CGATS(
      CgatsText.TWO_COLOURS,
      """
      CGATS.17
      SPECTRAL_NORM "100.000"
      BEGIN_DATA_FORMAT
      SAMPLE_ID SPEC_400 SPEC_440 SPEC_480 SPEC_520 SPEC_560 SPEC_600 SPEC_640 SPEC_680
      END_DATA_FORMAT
      BEGIN_DATA
      red 10 12 14 20 30 50 60 61
      END_DATA
      """) {
    @Override
    boolean take(byte[] input) {
      return imports(ShelfImport.CGATS, input);
    }
  };

  private static final ImportDefaults OIL = new ImportDefaults("bench", Optional.of(Medium.OIL));

  /** What parsers of numbers, strings and brackets are known to stumble over. */
  static final List<String> WORDS =
      List.of(
          "NaN",
          "-Infinity",
          "1e400",
          "-0",
          "1e-400",
          "0x1p3",
          "3d",
          "9".repeat(200),
          "\\u0000",
          "\u0000",
          "\uD800",
          "\u202E",
          "[".repeat(50),
          "{\"a\":".repeat(20),
          "null",
          "\"",
          ",",
          ":",
          "}",
          "\"srgb\":\"#GGGGGG\"",
          "\"values\":[]",
          "\"name\":\"\"",
          "\"version\":2",
          "%",
          "@",
          "/*",
          "\t",
          "\r\n",
          "ı",
          "٣");

  private static final Shelf DEMO = demo();

  private static Shelf demo() {
    return ShelfJson.parse(DemoShelf.text(), "demo shelf");
  }

  /** Imports a shelf, which is exported and imported again. */
  private static boolean imports(ShelfImport format, byte[] input) {
    Shelf shelf = format.read(input, "fuzz", OIL);
    ShelfJson.parse(ShelfJson.toText(shelf), "written");
    return true;
  }

  private static Notebook.Contents notebook(String text) {
    try {
      Path file = NotebookFile.PATH;
      Files.writeString(file, text);
      return Notebook.at(file).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Made when it is first asked for. */
  private static final class NotebookFile {
    static final Path PATH = create();

    private static Path create() {
      try {
        Path file = Files.createTempFile("fuzz", ".jsonl");
        file.toFile().deleteOnExit();
        return file;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  @SuppressWarnings("ImmutableEnumChecker") // List.of can't be changed.
  private final List<byte[]> seeds;

  FuzzTarget(String... seeds) {
    this.seeds = List.of(seeds).stream().map(s -> s.getBytes(StandardCharsets.UTF_8)).toList();
  }

  @Override
  public List<byte[]> seeds() {
    return seeds;
  }

  /** Reads a text, or refuses it by an {@link IllegalArgumentException}. */
  void read(String text) {
    throw new AssertionError(text);
  }

  /** Reads bytes; those of a text, unless a target does otherwise. */
  boolean take(byte[] input) {
    read(new String(input, StandardCharsets.UTF_8));
    return true;
  }

  @Override
  public boolean feed(byte[] input) {
    try {
      return take(input);
    } catch (IllegalArgumentException refusal) {
      Refusals.check(refusal);
      return false;
    }
  }
}
