package io.github.swatchwright.fuzz;

import io.github.swatchwright.coat.Coats;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.json.CardsJson;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.mix.Pot;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.ShelfOptics;
import io.github.swatchwright.testdata.DemoShelf;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What reads text from outside. Each takes any bytes and may only refuse them by its exception. */
enum FuzzTarget {
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
  };

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

  private static final Shelf DEMO = ShelfJson.parse(DemoShelf.text(), "demo shelf");

  @SuppressWarnings("ImmutableEnumChecker") // List.of can't be changed.
  private final List<byte[]> seeds;

  FuzzTarget(String... seeds) {
    this.seeds = List.of(seeds).stream().map(s -> s.getBytes(StandardCharsets.UTF_8)).toList();
  }

  /** Good inputs to start from. */
  List<byte[]> seeds() {
    return seeds;
  }

  /** Reads a text, or refuses it by an {@link IllegalArgumentException} of one line. */
  abstract void read(String text);

  /**
   * Feeds an input.
   *
   * @return whether it was taken; refused otherwise
   * @throws AssertionError when a refusal is no single line
   */
  boolean feed(byte[] input) {
    try {
      read(new String(input, StandardCharsets.UTF_8));
      return true;
    } catch (IllegalArgumentException refusal) {
      String message = refusal.getMessage();
      if (message == null || message.isBlank() || message.length() > 2000) {
        throw new AssertionError("no short refusal: " + message, refusal);
      }
      return false;
    }
  }
}
