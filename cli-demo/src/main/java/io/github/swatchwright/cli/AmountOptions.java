package io.github.swatchwright.cli;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Application;
import io.github.swatchwright.mix.ModelArea;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How large the painted area is, and how paint gets onto it: for amounts. */
final class AmountOptions {
  private static final Pattern MEASURE = Pattern.compile("\\s*([-+.\\d]+)\\s*([a-z]+[2²]?)?\\s*");
  private static final Map<String, Double> AREAS =
      Map.of("mm2", 0.01, "cm2", 1.0, "m2", 1e4, "", 1.0);
  private static final Map<String, Double> LENGTHS =
      Map.of("mm", 0.1, "cm", 1.0, "m", 100.0, "", 1.0);
  private static final double PERCENT = 100;

  /** A square millimetre, in cm². */
  private static final double SMALLEST_AREA = 0.01;

  /** A hundred square metres, in cm²: more than anything that is painted as a model. */
  private static final double LARGEST_AREA = 1_000_000;

  @Option(
      names = "--area",
      paramLabel = "AREA",
      description =
          "The area to paint, such as 500cm2 or 0.05m2, for how much paint it takes; in cm² when"
              + " no unit is given.")
  @Nullable String area;

  @Option(
      names = "--length",
      paramLabel = "LENGTH",
      description =
          "Instead of the area, the model's length, such as 25cm, or with --scale the original's,"
              + " such as 18m. Rough: the area is the length squared.")
  @Nullable String length;

  @Option(
      names = "--scale",
      paramLabel = "1:N",
      description = "The model's scale, such as 1:72, for a length in metres.")
  @Nullable String scale;

  @Option(
      names = "--film",
      paramLabel = "UM",
      description =
          "Dry film of one coat that isn't thinned, in micrometres (default 10; usual: 5 to 15).")
  double film = Application.USUAL.dryMicrometres();

  @Option(
      names = "--solids",
      paramLabel = "PERCENT",
      description = "What is left of the paint's volume when dry (default 30; usual: 25 to 40).")
  double solids = PERCENT * Application.USUAL.volumeSolids();

  @Option(
      names = "--transfer",
      paramLabel = "PERCENT",
      description = "What of the paint lands on the model (default 35; usual: 20 to 50, sprayed).")
  double transfer = PERCENT * Application.USUAL.transfer();

  /** Whether there is an area or a length. */
  boolean areGiven() {
    return area != null || length != null;
  }

  /** The area in cm²; empty when neither area nor length is given. */
  OptionalDouble squareCentimetres() {
    if (area != null && length != null) {
      throw new IllegalArgumentException("--area and --length exclude each other; give one");
    }
    if (area != null) {
      return OptionalDouble.of(inRange("--area", measured("--area", area, AREAS)));
    }
    return length == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(inRange("the area that --length gives", ofLength(length)));
  }

  private static double inRange(String name, double squareCentimetres) {
    return Require.within(name + " in cm²", squareCentimetres, SMALLEST_AREA, LARGEST_AREA);
  }

  private double ofLength(String text) {
    double centimetres = measured("--length", text, LENGTHS);
    boolean original = text.strip().toLowerCase(Locale.ROOT).matches(".*[^cm]m");
    if (!original) {
      return ModelArea.ofLength(centimetres);
    }
    if (scale == null) {
      throw new IllegalArgumentException(
          "--length is " + text + ": in metres it is the original's and needs --scale 1:N");
    }
    return ModelArea.ofOriginal(centimetres / 100, scaleNumber(scale));
  }

  private static double scaleNumber(String text) {
    Matcher form = Pattern.compile("\\s*1\\s*[:/]\\s*(\\d+(?:\\.\\d+)?)\\s*").matcher(text);
    if (!form.matches()) {
      throw new IllegalArgumentException("--scale is '" + text + "', must be of the form 1:72");
    }
    return Double.parseDouble(form.group(1));
  }

  /** A number and its unit as a number of cm or cm², which it also is without a unit. */
  private static double measured(String option, String text, Map<String, Double> units) {
    Matcher form = MEASURE.matcher(text.toLowerCase(Locale.ROOT));
    String unit = form.matches() && form.group(2) != null ? form.group(2) : "";
    Double factor = form.matches() ? units.get(unit.replace('²', '2')) : null;
    if (factor == null) {
      throw new IllegalArgumentException(
          option
              + " is '"
              + text
              + "', must be a number with one of the units "
              + String.join(", ", new TreeSet<>(units.keySet())).substring(2));
    }
    return factor * number(option, form.group(1), text);
  }

  private static double number(String option, String digits, String text) {
    try {
      return Double.parseDouble(digits);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          option + " is '" + text + "', and '" + digits + "' is not a number", e);
    }
  }

  /** Film, solids and transfer. */
  Application application() {
    Require.within("--film", film, 0.1, 1000);
    Require.within("--solids", solids, 1, PERCENT);
    Require.within("--transfer", transfer, 1, PERCENT);
    return new Application(film, solids / PERCENT, transfer / PERCENT);
  }
}
