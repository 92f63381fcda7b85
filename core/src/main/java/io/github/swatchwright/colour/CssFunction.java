package io.github.swatchwright.colour;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A colour function of CSS Color Module Level 4, such as {@code rgb(138 75 42)}, taken apart into
 * its three components. Commas may stand in place of the blanks.
 *
 * @param text all of it, for messages
 * @param components three texts
 * @param commas whether commas part them
 */
record CssFunction(String text, List<String> components, boolean commas) {
  private static final Pattern FORM =
      Pattern.compile("\\s*([a-z]+)\\(\\s*([^()]*?)\\s*\\)\\s*", Pattern.CASE_INSENSITIVE);

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

  /** Units of angles, in degrees. */
  private static final Map<String, Double> ANGLES =
      Map.of("deg", 1.0, "grad", 0.9, "rad", Math.toDegrees(1), "turn", 360.0);

  /**
   * Takes a function apart.
   *
   * @param example how it should look, for messages
   * @throws IllegalArgumentException when it hasn't three components, or an alpha below 1
   */
  static CssFunction parse(String text, String example) {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw wrongForm(text, example);
    }
    String inside = form.group(2);
    if (inside.indexOf(';') >= 0) {
      throw new IllegalArgumentException(
          Printable.quoted(text) + " has semicolons: commas or blanks part the numbers");
    }
    int slash = inside.indexOf('/');
    boolean commas = inside.indexOf(',') >= 0;
    String colour = slash < 0 ? inside : inside.substring(0, slash).trim();
    List<String> parts =
        List.of(commas ? colour.split("\\s*,\\s*", -1) : colour.trim().split("\\s+", -1));
    boolean isRgb = form.group(1).toLowerCase(Locale.ROOT).startsWith("rgb");
    boolean legacyAlpha = isRgb && slash < 0 && commas && parts.size() == 4;
    if (legacyAlpha || slash >= 0) {
      requireOpaque(legacyAlpha ? parts.get(3) : inside.substring(slash + 1).trim(), text);
    }
    List<String> components = legacyAlpha ? parts.subList(0, 3) : parts;
    if (components.size() != 3 || components.stream().anyMatch(String::isEmpty)) {
      throw wrongForm(text, example);
    }
    return new CssFunction(text, components, commas);
  }

  private static IllegalArgumentException wrongForm(String text, String example) {
    return new IllegalArgumentException(
        Printable.quoted(text) + " is not a colour of the form " + example);
  }

  private static void requireOpaque(String alpha, String text) {
    if (number(alpha, 1, text) != 1) {
      throw seeThrough(text);
    }
  }

  /** Refuses a colour that one can look through. */
  static IllegalArgumentException seeThrough(String text) {
    return new IllegalArgumentException(
        Printable.quoted(text)
            + " is transparent in part (its alpha isn't 1), so it has no colour of its own: give"
            + " the colour as it looks over what lies below");
  }

  /**
   * A component as a number.
   *
   * @param which 0 to 2
   * @param whole what 100 % stands for
   */
  double number(int which, double whole) {
    return number(components.get(which), whole, text);
  }

  /** The same, refused outside a range. */
  double number(int which, double whole, String name, double least, double most) {
    return Require.within(
        name + " in " + Printable.quoted(text), number(which, whole), least, most);
  }

  /** A component as an angle, in degrees. */
  double degrees(int which) {
    String angle = components.get(which);
    String unit = angle.replaceFirst("^.*?([A-Za-z]*)$", "$1").toLowerCase(Locale.ROOT);
    Double degrees = ANGLES.get(unit);
    return degrees == null
        ? number(angle, 360, text)
        : degrees * number(angle.substring(0, angle.length() - unit.length()), 360, text);
  }

  private static double number(String component, double whole, String text) {
    if (component.equalsIgnoreCase("none")) {
      return 0;
    }
    boolean percent = component.endsWith("%");
    String digits = percent ? component.substring(0, component.length() - 1) : component;
    if (!NUMBER.matcher(digits).matches()) {
      throw new IllegalArgumentException(
          Printable.quoted(component) + " in " + Printable.quoted(text) + " is not a number");
    }
    double number = Double.parseDouble(digits);
    return percent ? number / 100 * whole : number;
  }
}
