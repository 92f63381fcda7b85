package io.github.swatchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** The jar that people run, as it was packed. */
class RunnableJarIT {
  private static final Path JAR = Path.of("target/swatchwright.jar");

  @Test
  void carriesItsLicenceAndNotice() throws IOException {
    try (ZipFile jar = new ZipFile(JAR.toFile())) {
      assertThat(text(jar, "META-INF/LICENSE")).contains("Apache License").contains("Version 2.0");
      assertThat(text(jar, "META-INF/NOTICE")).startsWith("Swatchwright\n");
    }
  }

  @Test
  void keepsTheLicencesAndNoticesOfTheLibrariesInIt() throws IOException {
    try (ZipFile jar = new ZipFile(JAR.toFile())) {
      List<String> kept =
          jar.stream()
              .map(ZipEntry::getName)
              .filter(name -> name.contains("third-party/"))
              .toList();
      assertThat(kept).anyMatch(name -> name.matches(".*/commons-math3-[^/]+/NOTICE.txt"));
      assertThat(kept).anyMatch(name -> name.matches(".*/commons-math3-[^/]+/LICENSE.txt"));
      assertThat(kept).anyMatch(name -> name.matches(".*/jackson-core-[^/]+/NOTICE"));
      assertThat(kept).anyMatch(name -> name.matches(".*/jackson-core-[^/]+/LICENSE"));
    }
  }

  private static String text(ZipFile jar, String name) throws IOException {
    return new String(
        jar.getInputStream(jar.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
  }
}
