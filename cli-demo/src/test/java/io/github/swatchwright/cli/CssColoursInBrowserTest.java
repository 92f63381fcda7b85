package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.swatchwright.colour.Srgb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Colour names and functions of CSS, as a browser paints them: chromium's reading of the standard
 * against this one. Runs where a {@code chromium} is on the path.
 */
class CssColoursInBrowserTest {
  private static final List<String> NAMES =
      List.of(
          """
          aliceblue antiquewhite aqua aquamarine azure beige bisque black blanchedalmond
          blue blueviolet brown burlywood cadetblue chartreuse chocolate coral
          cornflowerblue cornsilk crimson cyan darkblue darkcyan darkgoldenrod darkgray
          darkgreen darkgrey darkkhaki darkmagenta darkolivegreen darkorange darkorchid
          darkred darksalmon darkseagreen darkslateblue darkslategray darkslategrey
          darkturquoise darkviolet deeppink deepskyblue dimgray dimgrey dodgerblue firebrick
          floralwhite forestgreen fuchsia gainsboro ghostwhite gold goldenrod gray green
          greenyellow grey honeydew hotpink indianred indigo ivory khaki lavender
          lavenderblush lawngreen lemonchiffon lightblue lightcoral lightcyan
          lightgoldenrodyellow lightgray lightgreen lightgrey lightpink lightsalmon
          lightseagreen lightskyblue lightslategray lightslategrey lightsteelblue
          lightyellow lime limegreen linen magenta maroon mediumaquamarine mediumblue
          mediumorchid mediumpurple mediumseagreen mediumslateblue mediumspringgreen
          mediumturquoise mediumvioletred midnightblue mintcream mistyrose moccasin
          navajowhite navy oldlace olive olivedrab orange orangered orchid palegoldenrod
          palegreen paleturquoise palevioletred papayawhip peachpuff peru pink plum
          powderblue purple rebeccapurple red rosybrown royalblue saddlebrown salmon
          sandybrown seagreen seashell sienna silver skyblue slateblue slategray slategrey
          snow springgreen steelblue tan teal thistle tomato turquoise violet wheat white
          whitesmoke yellow yellowgreen
          """
              .trim()
              .split("\\s+", -1));

  private static final List<String> FUNCTIONS =
      List.of(
          "#8a4b2a",
          "#84a",
          "#8a4b2aff",
          "rgb(138 75 42)",
          "rgb(54%, 29%, 16%)",
          "lab(39 26 30)",
          "lab(39% 20% 24%)",
          "lch(39 40 49)",
          "lch(39 40 0.8rad)",
          "oklab(0.48 0.07 0.07)",
          "oklch(0.48 0.1 45)",
          "oklch(48% 25% 50grad)",
          "oklch(60% 0.1 0.6turn)",
          "oklch(48% none none)");

  /** Paints a pixel of each colour, and reads it back. */
  private static final String PAINT =
      "(colours => { const c = document.createElement('canvas').getContext('2d',"
          + " {willReadFrequently: true}); return colours.map(colour => { c.fillStyle = '#123456';"
          + " c.fillStyle = colour; c.fillRect(0, 0, 1, 1);"
          + " return Array.from(c.getImageData(0, 0, 1, 1).data); }); })(";

  @Test
  @DisplayName("chromium: all 148 names of CSS Color 4 are the same to the bit, functions within 1")
  void asTheBrowserPaintsThem(@TempDir Path folder) throws IOException, InterruptedException {
    Path page = Files.writeString(folder.resolve("empty.html"), "<!DOCTYPE html><title>x</title>");
    try (Chromium browser = Chromium.start(Files.createDirectory(folder.resolve("profile")))) {
      BrowserPage empty = browser.open(page.toUri());
      assertThat(NAMES).hasSize(148);
      compare(empty, NAMES, 0);
      // Its lab() and ours go through matrices that differ in the fifth digit, then 8 bits.
      compare(empty, FUNCTIONS, 1);
    }
  }

  private static void compare(BrowserPage page, List<String> colours, int tolerance) {
    JsonNode painted = page.evaluate(PAINT + "['" + String.join("','", colours) + "'])");
    for (int i = 0; i < colours.size(); i++) {
      int ours = Srgb.parse(colours.get(i)).toPacked();
      for (int channel = 0; channel < 3; channel++) {
        assertThat((ours >> (8 * (2 - channel))) & 0xFF)
            .as(colours.get(i))
            .isCloseTo(painted.get(i).get(channel).asInt(), within(tolerance));
      }
    }
  }
}
