package io.github.swatchwright.json;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Something that was tried on scrap, and how it went.
 *
 * @param tried what, in a sentence: 1 to {@value #LONGEST} characters
 * @param on the number of the notebook's entry that it was for, from 1
 * @param settings as {@code pressure} with {@code 1.4bar}: free names, values with their units
 * @param went how it went
 * @param note what else there is to say, up to {@value #LONGEST} characters; may be empty
 * @param photo the name of a photo of it, if there is one
 */
public record Trial(
    String tried,
    int on,
    Map<String, String> settings,
    Went went,
    String note,
    Optional<String> photo) {
  /** The longest text. */
  public static final int LONGEST = 500;

  private static final int MOST_SETTINGS = 40;

  /** How it went. */
  public enum Went {
    /** To be done like this again. */
    WELL("well"),
    /** It will do. */
    SO_SO("so-so"),
    /** Not to be done again. */
    BADLY("badly");

    private final String word;

    Went(String word) {
      this.word = word;
    }

    /** The word for it, such as {@code so-so}. */
    public String word() {
      return word;
    }
  }

  /** Copies the settings; refuses texts that are too long, and no text at all. */
  public Trial {
    Require.within("characters of tried", tried.strip().length(), 1, LONGEST);
    Require.within("characters of note", note.length(), 0, LONGEST);
    Require.within("on", on, 1, Integer.MAX_VALUE);
    Require.within("number of settings", settings.size(), 0, MOST_SETTINGS);
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  /**
   * Reads {@code pressure=1.4bar,tip=0.3mm}; spaces around names and values are left out.
   *
   * @throws IllegalArgumentException when a piece has another form, or a name comes twice
   */
  public static Map<String, String> parseSettings(String text) {
    Map<String, String> settings = new LinkedHashMap<>();
    for (String piece : text.split(",", -1)) {
      String[] sides = piece.split("=", 2);
      if (sides.length < 2 || sides[0].isBlank() || sides[1].isBlank()) {
        throw new IllegalArgumentException(
            Printable.quoted(piece.strip()) + " is not of the form name=value, such as tip=0.3mm");
      }
      if (settings.put(sides[0].strip(), sides[1].strip()) != null) {
        throw new IllegalArgumentException(
            Printable.quoted(sides[0].strip()) + " is given twice in the settings");
      }
    }
    return settings;
  }

  /** The trial in a sentence or two. */
  public String inWords() {
    String with =
        settings.entrySet().stream()
            .map(setting -> setting.getKey() + " " + setting.getValue())
            .collect(Collectors.joining(", "));
    return tried.strip()
        + (with.isEmpty() ? "" : "; " + with)
        + "; went "
        + went.word()
        + (note.isBlank() ? "" : ". " + note.strip())
        + photo.map(name -> " (photo " + name + ")").orElse("");
  }
}
