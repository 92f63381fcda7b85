package io.github.swatchwright.cli;

import io.github.swatchwright.json.Trial;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What was tried on scrap: options of {@code notebook}. */
final class TrialOptions {
  @Option(
      names = "--tried",
      paramLabel = "TEXT",
      description = "Write down what was tried, in a sentence; with --on and --went.")
  @Nullable String tried;

  @Option(
      names = "--on",
      paramLabel = "N",
      description = "With --tried: the number of the entry that it was for.")
  @Nullable Integer on;

  @Option(
      names = "--with",
      paramLabel = "SETTINGS",
      description =
          "With --tried: settings as name=value with units, such as"
              + " pressure=1.4bar,tip=0.3mm,thinner=1:2,wait=30min.")
  @Nullable String settings;

  @Option(names = "--went", paramLabel = "HOW", description = "With --tried: well, so-so or badly.")
  @Nullable String went;

  @Option(names = "--note", paramLabel = "TEXT", description = "With --tried: what else to say.")
  String note = "";

  @Option(
      names = "--photo",
      paramLabel = "NAME",
      description = "With --tried: the name of a photo of it.")
  @Nullable String photo;

  @Option(
      names = "--find",
      paramLabel = "WORDS",
      description =
          "Find trials by paint, step, setting or any other words; all of them have to occur.")
  @Nullable String find;

  /** Refuses options of a trial without one. */
  void check() {
    boolean some = on != null || settings != null || went != null || photo != null;
    if (tried == null && (some || !note.isEmpty())) {
      throw new IllegalArgumentException(
          "--on, --with, --went, --note and --photo go with --tried");
    }
    if (tried != null && (on == null || went == null)) {
      throw new IllegalArgumentException(
          "--tried goes with --on N, the entry it was for, and --went well, so-so or badly");
    }
  }

  /** The trial; it was {@link #check checked}. */
  Trial trial() {
    return new Trial(
        String.valueOf(tried),
        on == null ? 0 : on,
        settings == null ? Map.of() : Trial.parseSettings(settings),
        Words.one("--went", String.valueOf(went), Trial.Went.values(), Trial.Went::word),
        note,
        Optional.ofNullable(photo));
  }
}
