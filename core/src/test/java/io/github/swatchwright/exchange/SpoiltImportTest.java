package io.github.swatchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoShelf;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files that were cut, garbled or mixed up are read or refused, and nothing else happens. */
class SpoiltImportTest {
  private static final ImportDefaults OIL = new ImportDefaults("bench", Optional.of(Medium.OIL));

  private static final Shelf DEMO = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);

  private static final Map<ShelfImport, String> GOOD =
      Map.of(
          ShelfImport.CSV, ShelfCsv.toText(DEMO),
          ShelfImport.GIMP_PALETTE, GimpPalette.toText(DEMO),
          ShelfImport.CGATS, CgatsText.TWO_COLOURS);

  private static final String SPICE = "\0\r\n\t\"',;#-+.eE019 \u00FF\uFFFDNaN";

  @ParameterizedTest
  @EnumSource(ShelfImport.class)
  void isReadOrRefused(ShelfImport format) {
    String good = Objects.requireNonNull(GOOD.get(format));
    assertThat(read(format, good)).isTrue();
    Random random = new Random(20310506);
    int refused = 0;

    for (int i = 0; i < 1500; i++) {
      StringBuilder spoilt = new StringBuilder(good);
      for (int change = 0; change <= i % 4; change++) {
        int at = random.nextInt(spoilt.length());
        switch (random.nextInt(4)) {
          case 0 -> spoilt.setCharAt(at, SPICE.charAt(random.nextInt(SPICE.length())));
          case 1 -> spoilt.deleteCharAt(at);
          case 2 -> spoilt.insert(at, SPICE.charAt(random.nextInt(SPICE.length())));
          default -> spoilt.delete(at, Math.min(spoilt.length(), at + random.nextInt(200)));
        }
        spoilt.append(' ');
      }
      refused += read(format, spoilt.toString()) ? 0 : 1;
    }

    assertThat(refused).isBetween(100, 1500);
  }

  private static boolean read(ShelfImport format, String text) {
    try {
      assertThat(format.read(text.getBytes(StandardCharsets.UTF_8), "spoilt", OIL).paints())
          .isNotEmpty();
      return true;
    } catch (IllegalArgumentException e) {
      assertThat(e.getMessage()).as("%s", text).startsWith("spoilt: ");
      return false;
    }
  }
}
