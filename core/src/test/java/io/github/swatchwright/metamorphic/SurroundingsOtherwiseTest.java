package io.github.swatchwright.metamorphic;

import static io.github.swatchwright.metamorphic.Cases.DEAR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No text depends on the language, the digits or the time zone of the machine, or on its Java. */
@Tag("statistics")
class SurroundingsOtherwiseTest {
  /** Other letters for i and I, decimal commas, and other digits. */
  private static final List<Locale> LOCALES =
      List.of(
              "tr-TR",
              "de-CH",
              "fr-FR",
              "ar-EG-u-nu-arab",
              "fa-IR",
              "hi-IN-u-nu-deva",
              "th-TH-u-nu-thai")
          .stream()
          .map(Locale::forLanguageTag)
          .toList();

  private static final List<String> ZONES =
      List.of("Asia/Kathmandu", "America/St_Johns", "Pacific/Kiritimati");

  private final Locale usual = Locale.getDefault();
  private final TimeZone usualZone = TimeZone.getDefault();

  @AfterEach
  void comeHome() {
    Locale.setDefault(usual);
    TimeZone.setDefault(usualZone);
  }

  @Test
  void languageDigitsAndTimeZone() {
    for (int seed = 0; seed < DEAR; seed++) {
      Locale.setDefault(Locale.ROOT);
      TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
      String here = AllTexts.of(new Random(seed));
      Locale.setDefault(LOCALES.get(seed % LOCALES.size()));
      TimeZone.setDefault(TimeZone.getTimeZone(ZONES.get(seed % ZONES.size())));
      assertThat(AllTexts.of(new Random(seed))).as("case %d", seed).isEqualTo(here);
    }
  }

  /** With {@code -Dswatchwright.otherJava=<its java command>} only: few machines have two. */
  @Test
  void anotherJava() throws Exception {
    String other = System.getProperty("swatchwright.otherJava", "");
    assumeThat(other).isNotEmpty();
    String own = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    assertThat(digest(other)).isEqualTo(digest(own)).hasSize(64);
  }

  private static String digest(String java) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                java,
                "-cp",
                System.getProperty("java.class.path"),
                AllTexts.class.getName(),
                "1000")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(java).isZero();
    return out.strip();
  }
}
