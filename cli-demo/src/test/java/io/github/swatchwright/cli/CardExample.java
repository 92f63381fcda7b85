package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.swatchwright.cli.photo.PhotoBytes;
import io.github.swatchwright.testdata.DemoProject;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A command that makes a card, and the colours that must be on it.
 *
 * @param pages of A5 that it prints on
 * @param command the command
 * @param colours from the command's JSON, in the order of the card
 */
record CardExample(int pages, List<String> command, Function<JsonNode, List<String>> colours) {

  /** On a shelf's card, below its paints. */
  private static final int MOST_GAPS = 8;

  /** Paints whose names try to fetch, run or hide something. */
  private static final String HOSTILE_SHELF =
      """
      {"format":"swatchwright-shelf","version":1,"name":"</style><script>","paints":[
      {"name":"<img src='missing.png' onerror='console.log(1)'>","medium":"acrylic",
       "finish":"matt","masstone":{"srgb":"#8A4B2A"}},
      {"name":"</bdi></main></svg><script>console.log(2)</script>","medium":"acrylic",
       "finish":"matt","masstone":{"srgb":"#E0E0E0"}},
      {"name":"\\u202Eedirrevo \\u2066 <link rel=stylesheet href=x.css> 🎨","medium":"acrylic",
       "finish":"matt","masstone":{"srgb":"#202020"}}]}
      """;

  /** One for every command with a card; photos and shelves are written to the folder. */
  static List<CardExample> all(Path folder) {
    return List.of(
        new CardExample(
            1,
            List.of("match", "#8A4B2A", "--paints", "2", "--max-drops", "8"),
            CardExample::matched),
        new CardExample(
            1, List.of("match", "#00F0FF", "--paints", "2", "--light", "A"), CardExample::matched),
        new CardExample(
            1,
            List.of("match", "#9A6A50", "--max-drops", "6", "--shelf", hostileShelf(folder)),
            CardExample::matched),
        new CardExample(
            1,
            List.of("predict", "Titanium white:6, Red oxide:1.5", "Phthalo green"),
            json -> {
              List<String> colours = new ArrayList<>();
              json.get("predictions").forEach(entry -> twice(colours, srgb(entry, "predicted")));
              return colours;
            }),
        new CardExample(
            1,
            List.of(
                "correct",
                "Titanium white:6, Red oxide:2",
                "--measured",
                "#C3907F",
                "--target",
                "#B47A68"),
            json -> {
              List<String> colours = new ArrayList<>(List.of("#B47A68", "#C3907F"));
              for (JsonNode addition : json.get("additions")) {
                colours.add("#B47A68");
                colours.add(srgb(addition, "predicted"));
              }
              return colours;
            }),
        new CardExample(
            2,
            List.of("ladder", "#C8642A", "#3B2A22", "--rungs", "4", "--base", "Dredger grey"),
            json -> {
              List<String> colours = new ArrayList<>(List.of("#C8642A", "#3B2A22"));
              json.get("rungs").forEach(rung -> twice(colours, srgb(rung, "predicted")));
              colours.add(srgb(json, "look"));
              return colours;
            }),
        new CardExample(
            2,
            List.of(
                "coat",
                "--base",
                "Dredger grey",
                "--coats",
                "Red oxide:2@1:1 over 40%, Whitewash wash:2, Blue filter:3"),
            CardExample::coated),
        new CardExample(
            1, List.of("coat", "--base", "Dredger grey", "--shift", "b=-4"), CardExample::advised),
        new CardExample(
            1,
            List.of("compare", "#8A4B2A", "Red oxide"),
            json -> List.of(srgb(json, "reference"), srgb(json, "sample"))),
        new CardExample(
            1,
            List.of("sample", photo(folder), "--region", "2,2,30,30", "--region", "45,5,30,30"),
            json -> {
              List<String> colours = new ArrayList<>();
              json.get("colours").forEach(colour -> twice(colours, colour.get("srgb").asText()));
              return colours;
            }),
        new CardExample(
            1,
            List.of("reach", "#2A7B3C", "#8A4B2A", "--max-drops", "6", "--catalogue", sold(folder)),
            CardExample::offered),
        new CardExample(
            2,
            List.of("shelf"),
            json -> {
              List<String> colours = new ArrayList<>();
              json.get("paints")
                  .forEach(
                      paint -> {
                        if (paint.has("masstone")) {
                          colours.add(srgb(paint, "masstone"));
                        }
                      });
              for (JsonNode gap : json.get("gaps")) {
                if (colours.size() < json.get("paints").size() + MOST_GAPS) {
                  colours.add(srgb(gap, "furthest"));
                }
              }
              return colours;
            }),
        new CardExample(
            1, List.of("notebook", notebook(folder)), json -> List.of(predicted("Dredger grey"))),
        new CardExample(
            1,
            List.of(
                "calibrate",
                "--pot",
                "Titanium white:6, Red oxide:2",
                "--measured",
                "#C3907F",
                "--out",
                folder.resolve("better.json").toString()),
            json -> calibrated(json, folder.resolve("better.json"))),
        new CardExample(5, List.of("plan", project(folder), "--cards", "0"), CardExample::planned));
  }

  /** Wanted colours; then, for each paint on offer, its own colour and the wanted ones again. */
  private static List<String> offered(JsonNode json) {
    List<String> wanted = List.of("#2A7B3C", "#8A4B2A");
    List<String> colours = new ArrayList<>(wanted);
    for (JsonNode addition : json.get("additions")) {
      colours.add(addition.get("paint").asText().equals("Leaf green") ? "#2E7D32" : "#E0E0E0");
      colours.addAll(wanted);
    }
    return colours;
  }

  /** Of each step that colours, what it will look like, within its ring. */
  private static List<String> planned(JsonNode json) {
    List<String> colours = new ArrayList<>();
    List<String> clear = List.of("chipping-medium", "seal", "varnish");
    for (JsonNode step : json.get("steps")) {
      if (!clear.contains(step.get("step").asText())) {
        twice(colours, srgb(step, "predicted"));
      }
    }
    return colours;
  }

  /** Both paints before and after, then the card beside what was expected of it. */
  private static List<String> calibrated(JsonNode json, Path better) {
    List<String> colours = new ArrayList<>();
    for (String paint : List.of("Titanium white", "Red oxide")) {
      colours.add(masstone(paint));
      colours.add(masstone(paint, "--shelf", better.toString()));
    }
    JsonNode card = json.get("unexpected").get(0);
    colours.add(srgb(card, "measured"));
    colours.add(srgb(card, "expected"));
    return colours;
  }

  private static String masstone(String name, String... options) {
    List<String> command = new ArrayList<>(List.of("shelf", "--json"));
    command.addAll(List.of(options));
    for (JsonNode paint : answer(command.toArray(String[]::new)).get("paints")) {
      if (paint.get("name").asText().equals(name)) {
        return srgb(paint, "masstone");
      }
    }
    throw new IllegalArgumentException(name);
  }

  private static String predicted(String mix) {
    return srgb(answer("predict", mix, "--json").get("predictions").get(0), "predicted");
  }

  private static JsonNode answer(String... command) {
    try {
      return new ObjectMapper().readTree(Run.of(command).out());
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String sold(Path folder) {
    return written(
        folder.resolve("catalogue.json"),
        """
        {"format":"swatchwright-shelf","version":1,"name":"catalogue","paints":[
        {"name":"Leaf green","medium":"acrylic","finish":"matt","masstone":{"srgb":"#2E7D32"}},
        {"name":"Chalk","medium":"acrylic","finish":"matt","masstone":{"srgb":"#E0E0E0"}}]}
        """);
  }

  private static String project(Path folder) {
    return written(folder.resolve("dredger.json"), DemoProject.text());
  }

  /** A notebook with one entry, a mix. */
  private static String notebook(Path folder) {
    Path file = folder.resolve("bench.jsonl");
    if (!Files.exists(file)) {
      Run.of("predict", "Dredger grey:4", "--notebook", file.toString());
    }
    return file.toString();
  }

  private static String written(Path file, String text) {
    try {
      return Files.writeString(file, text).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Target and best mix side by side, the mix within its ring, then target and mix of others. */
  private static List<String> matched(JsonNode json) {
    List<String> colours = new ArrayList<>();
    for (JsonNode recipe : json.get("recipes")) {
      colours.add(srgb(json, "target"));
      String mix = srgb(recipe, "predicted");
      colours.add(mix);
      if (colours.size() == 2) {
        colours.add(mix);
      }
    }
    return colours;
  }

  /** Each coat beside what was before, within its ring, and over both ends of a pre-highlight. */
  private static List<String> coated(JsonNode json) {
    List<String> colours = new ArrayList<>();
    String before = srgb(json, "base");
    colours.add(before);
    for (JsonNode step : json.get("steps")) {
      colours.add(before);
      before = srgb(step, "predicted");
      twice(colours, before);
      colours.add(srgb(step, "overDarkest"));
      colours.add(srgb(step, "overLightest"));
    }
    return colours;
  }

  /** The base, what is wanted, and each coat that may be painted beside it. */
  private static List<String> advised(JsonNode json) {
    List<String> colours = new ArrayList<>();
    colours.add(srgb(json, "base"));
    String wanted = srgb(json.get("advice"), "target");
    colours.add(srgb(json, "base"));
    colours.add(wanted);
    int shown = 0;
    for (JsonNode option : json.get("advice").get("options")) {
      if (shown++ < 4) {
        colours.add(wanted);
        twice(colours, srgb(option, "predicted"));
      }
    }
    return colours;
  }

  private static String srgb(JsonNode json, String field) {
    return json.get(field).get("srgb").asText();
  }

  private static void twice(List<String> colours, String colour) {
    colours.add(colour);
    colours.add(colour);
  }

  private static String hostileShelf(Path folder) {
    try {
      return Files.writeString(folder.resolve("hostile.shelf.json"), HOSTILE_SHELF).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String photo(Path folder) {
    BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0x8A4B2A));
    graphics.fillRect(0, 0, 40, 40);
    graphics.setColor(new Color(0x7A6A58));
    graphics.fillRect(40, 0, 40, 40);
    graphics.dispose();
    Path file = folder.resolve("<b>hull & \"deck\".png");
    try {
      return Files.write(file, PhotoBytes.png(image)).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A card that was made.
   *
   * @param file where it is
   * @param colours that must be on it, {@code #RRGGBB}
   */
  record Made(Path file, List<String> colours) {}

  /** Makes the card, {@code html} or {@code svg}. */
  Made make(Path folder, String ending) {
    Path file = folder.resolve("card." + ending);
    List<String> arguments = new ArrayList<>(command);
    arguments.addAll(List.of("--json", "--card", file.toString()));
    Run run = Run.of(arguments.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isEqualTo(Main.DONE);
    try {
      return new Made(file, colours.apply(new ObjectMapper().readTree(run.out())));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String toString() {
    return String.join(" ", command);
  }
}
