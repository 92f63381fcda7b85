package io.github.swatchwright.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The trials that a notebook remembers, each an entry beside what it was for. Immutable. */
public final class Trials {
  private final List<Remembered> all;

  private Trials(List<Remembered> all) {
    this.all = List.copyOf(all);
  }

  /**
   * A trial in its notebook.
   *
   * @param number the number of its own entry, from 1
   * @param entry its own entry
   * @param trial what was tried
   * @param on the entry that it was for
   */
  public record Remembered(int number, NotebookEntry entry, Trial trial, NotebookEntry on) {
    /** Everything that is searched, in lower case. */
    private String text() {
      String asked = String.join(" ", on.asked()) + " " + on.found();
      return (trial.inWords() + " " + trial.settings() + " " + asked).toLowerCase(Locale.ROOT);
    }

    /** Whether the trial, or the command that it was for, is about that step. */
    private boolean isAbout(String step) {
      return on.asked().get(0).equals(step)
          || trial.inWords().toLowerCase(Locale.ROOT).contains(step.toLowerCase(Locale.ROOT));
    }

    private boolean names(String word) {
      return text().contains(word.toLowerCase(Locale.ROOT));
    }
  }

  /** The trials of a notebook, in the order in which they were written down. */
  public static Trials of(Notebook.Contents notebook) {
    List<Remembered> all = new ArrayList<>();
    List<NotebookEntry> entries = notebook.entries();
    for (int i = 0; i < entries.size(); i++) {
      Optional<Trial> trial = trial(entries.get(i));
      if (trial.isPresent() && trial.get().on() <= entries.size()) {
        all.add(
            new Remembered(i + 1, entries.get(i), trial.get(), entries.get(trial.get().on() - 1)));
      }
    }
    return new Trials(all);
  }

  /** All of them, the earliest first. */
  public List<Remembered> all() {
    return all;
  }

  /** Those in which every word occurs: in trial, settings, note, or what it was for. */
  public List<Remembered> find(String words) {
    List<String> wanted = Arrays.stream(words.trim().split("\\s+")).toList();
    return all.stream().filter(one -> wanted.stream().allMatch(one::names)).toList();
  }

  /** The last one about one of these paints and one of these steps, such as {@code filter}. */
  public Optional<Remembered> last(Collection<String> paints, Collection<String> steps) {
    return all.stream()
        .filter(one -> paints.stream().anyMatch(one::names))
        .filter(one -> steps.stream().anyMatch(one::isAbout))
        .reduce((first, second) -> second);
  }

  /** The trial as the result of an entry. */
  public static JsonResult json(Trial trial) {
    return new JsonResult(
        json -> {
          JsonOutput.text(json, "tried", trial.tried());
          json.writeNumberField("on", trial.on());
          json.writeObjectFieldStart("with");
          for (Map.Entry<String, String> setting : trial.settings().entrySet()) {
            JsonOutput.text(json, JsonOutput.fieldName(setting.getKey()), setting.getValue());
          }
          json.writeEndObject();
          json.writeStringField("went", trial.went().word());
          JsonOutput.text(json, "note", trial.note());
          if (trial.photo().isPresent()) {
            JsonOutput.text(json, "photo", trial.photo().get());
          }
        });
  }

  private static Optional<Trial> trial(NotebookEntry entry) {
    JsonElement found = JsonDocument.parse(entry.found(), "the entry");
    if (!found.members().fields().containsKey("tried")) {
      return Optional.empty();
    }
    JsonFields fields = found.fields("tried", "on", "with", "went", "note", "photo");
    Map<String, String> settings = new LinkedHashMap<>();
    fields
        .required("with")
        .members()
        .fields()
        .forEach((name, value) -> settings.put(name, value.text()));
    return Optional.of(
        found.make(
            () ->
                new Trial(
                    fields.required("tried").text(),
                    fields.required("on").wholeNumber(1, Integer.MAX_VALUE),
                    settings,
                    fields.required("went").oneOf(List.of(Trial.Went.values()), Trial.Went::word),
                    fields.required("note").text(),
                    fields.optional("photo").map(JsonElement::text))));
  }

  /** Those trials as JSON: a list {@code trials}. */
  public static JsonResult json(List<Remembered> trials) {
    return new JsonResult(
        json -> {
          JsonOutput.objects(
              json,
              "trials",
              trials,
              one -> {
                json.writeNumberField("number", one.number());
                json.writeStringField("date", one.entry().date().toString());
                json.writeFieldName("trial");
                JsonDocument.parse(one.entry().found(), "the entry").content().write(json);
              });
        });
  }
}
