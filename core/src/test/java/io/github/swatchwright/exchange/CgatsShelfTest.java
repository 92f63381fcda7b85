package io.github.swatchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.WhitePoint;
import io.github.swatchwright.colour.Xyz;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.mix.SyntheticPigments;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Illuminant;
import io.github.swatchwright.spectrum.Observer;
import io.github.swatchwright.spectrum.Reflectance;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.ReferenceTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CgatsShelfTest {
  private static final ImportDefaults ACRYLIC =
      new ImportDefaults("bench", Optional.of(Medium.ACRYLIC));

  private static Shelf read(String text) {
    return CgatsShelf.read(text.getBytes(StandardCharsets.UTF_8), "bench.txt", ACRYLIC);
  }

  private static String file(String head, String fields, String... sets) {
    return "CGATS.17\n"
        + head
        + "\nNUMBER_OF_FIELDS "
        + fields.split(" ", -1).length
        + "\nBEGIN_DATA_FORMAT\n"
        + fields
        + "\nEND_DATA_FORMAT\nNUMBER_OF_SETS "
        + sets.length
        + "\nBEGIN_DATA\n"
        + String.join("\n", sets)
        + "\nEND_DATA\n";
  }

  private static Swatch masstone(Shelf shelf) {
    assertThat(shelf.paints()).hasSize(1);
    return shelf.paints().get(0).masstone().orElseThrow();
  }

  private static byte[] chart() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(ReferenceTable.class.getResourceAsStream("print-chart-tr002.txt"))) {
      return in.readAllBytes();
    }
  }

  @DisplayName("ANSI CGATS/SNAP TR 002-2007: all 928 patches, CIELAB as from their XYZ")
  @Test
  void readsAMeasuredPrintChart() throws IOException {
    Shelf shelf = CgatsShelf.read(chart(), "chart.txt", ACRYLIC);
    String byXyz =
        new String(chart(), StandardCharsets.ISO_8859_1)
            .replace("LAB_L LAB_A LAB_B", "OTHER_L OTHER_A OTHER_B");
    Shelf ofXyz =
        CgatsShelf.read(byXyz.getBytes(StandardCharsets.ISO_8859_1), "chart.txt", ACRYLIC);

    assertThat(shelf.paints()).hasSize(928);
    assertThat(shelf.paints().get(0).name()).isEqualTo("1");
    for (int i = 0; i < 928; i++) {
      Lab lab = shelf.paints().get(i).masstone().orElseThrow().lab();
      Lab other = ofXyz.paints().get(i).masstone().orElseThrow().lab();
      // XYZ has two decimals. Half a hundredth at X = Y = 6.4, the darkest print, is 0.106 in a*
      // and 0.05 in b*; CIEDE2000 weighs a grey's a* by up to 1.5.
      assertThat(Ciede2000.deltaE(lab, other)).as("patch %d", i + 1).isLessThan(0.18);
    }
  }

  @ParameterizedTest(name = "reflectances in fields {0}…")
  @CsvSource({
    "SPECTRAL_NM, 100",
    "SPECTRAL_NM, 1",
    "SPECTRAL_, 100",
    "SPEC_, 100",
    "nm, 1",
    "NM_, 1",
    "SPECTRAL_PCT, 100",
    "SPECTRAL_DEC, 1"
  })
  void readsReflectances(String prefix, double full) {
    StringBuilder fields = new StringBuilder("SAMPLE_NAME");
    StringBuilder set = new StringBuilder("\"Rust, fresh\"");
    double[] values = new double[16];
    for (int i = 0; i < 16; i++) {
      fields.append(' ').append(prefix).append(400 + 20 * i);
      values[i] = (5 + 2 * i) / 128.0;
      set.append(' ').append(values[i] * full);
    }

    Shelf shelf = read(file("", fields.toString(), set.toString()));

    assertThat(shelf.paints().get(0).name()).isEqualTo("Rust, fresh");
    Swatch.OfReflectance measured = (Swatch.OfReflectance) masstone(shelf);
    assertThat(measured.fromNm()).isEqualTo(400);
    assertThat(measured.stepNm()).isEqualTo(20);
    // Percent are divided by 100, which may change the last of 53 bits.
    assertThat(measured.values()).containsExactly(values, within(1e-15));
  }

  @Test
  void darkReflectancesInPercentAreToldByTheKeyword() {
    String fields =
        "SAMPLE_ID SPEC_400 SPEC_440 SPEC_480 SPEC_520 SPEC_560 SPEC_600 SPEC_640 SPEC_680";

    Shelf shelf =
        read(file("SPECTRAL_NORM \"100.000\"", fields, "1 1.5 1.5 1.5 1.5 1.5 1.5 1.5 1.5"));

    assertThat(((Swatch.OfReflectance) masstone(shelf)).values()[0]).isEqualTo(0.015);
  }

  @Test
  void coloursForD65AreTakenAsTheyAre() {
    Shelf shelf = read(file("ILLUMINANT \"D65\"", "SAMPLE_ID LAB_L LAB_A LAB_B", "1 40 12.5 -7"));

    assertThat(masstone(shelf)).isEqualTo(new Swatch.OfLab(Lab.ofD65(40, 12.5, -7)));
  }

  // A grey reflects all wavelengths alike, so it is neutral under every light.
  @ParameterizedTest(name = "with {0}")
  @ValueSource(strings = {"", "INSTRUMENTATION \"D50, 2 degree\"", "ILLUMINANT D50"})
  void aNeutralD50ColourStaysNeutral(String head) {
    Lab lab = masstone(read(file(head, "SAMPLE_ID LAB_L LAB_A LAB_B", "1 62.5 0 0"))).lab();

    // A recovered reflectance has its colour within 1e-5.
    assertThat(lab.l()).isCloseTo(62.5, within(1e-5));
    assertThat(lab.chroma()).isCloseTo(0, within(1e-5));
  }

  /**
   * Paints whose reflectance is known: their D50 colour, imported, against their D65 colour. The
   * limits are what a hand-held colour meter's own error is (1), as median, and twice that.
   */
  @Test
  void d50ColoursOfPaintsBecomeD65ColoursBetterThanByBradford() {
    TristimulusWeights d50 = TristimulusWeights.of(Illuminant.D50, Observer.CIE_1931);
    List<Double> recovered = new ArrayList<>();
    List<Double> bradford = new ArrayList<>();
    for (SyntheticPigments.Pigment pigment : pigments()) {
      Reflectance reflectance = SyntheticPigments.VIEWING.seen(pigment.truth().opaque());
      Lab truth = TristimulusWeights.D65.xyz(reflectance).toLab();
      Lab measured = d50.xyz(reflectance).toLab();
      String set = "1 " + measured.l() + " " + measured.a() + " " + measured.b();
      Lab imported = masstone(read(file("", "SAMPLE_ID LAB_L LAB_A LAB_B", set))).lab();
      recovered.add(Ciede2000.deltaE(truth, imported));
      bradford.add(Ciede2000.deltaE(truth, measured.adaptTo(WhitePoint.D65)));
    }
    Collections.sort(recovered);
    Collections.sort(bradford);
    int count = recovered.size();

    assertThat(recovered.get(count / 2)).isLessThan(bradford.get(count / 2)).isLessThan(1);
    assertThat(recovered.get(count - 1)).isLessThan(2);
  }

  private static List<SyntheticPigments.Pigment> pigments() {
    return LongStream.rangeClosed(1, 8)
        .boxed()
        .flatMap(seed -> SyntheticPigments.shelf(seed).stream())
        .toList();
  }

  @Test
  void xyzIsRelativeToTheLightsWhite() {
    Shelf shelf =
        read(file("ILLUMINANT \"D65\"", "SAMPLE_ID XYZ_X XYZ_Y XYZ_Z", "1 20.654 12.197 5.137"));

    // CSS Color 4 sample (facts: XYZ .20654008, .12197225, .05136952 is Lab 41.5279, 52.6386,
    // 26.9232).
    assertThat(
            Ciede2000.deltaE(
                masstone(shelf).lab(), Lab.ofD65(41.52787529, 52.63858304, 26.92317922)))
        .isLessThan(0.01);
    assertThat(masstone(shelf).lab())
        .isEqualTo(new Xyz(20.654, 12.197, 5.137, TristimulusWeights.D65.whitePoint()).toLab());
  }

  @ParameterizedTest(name = "{0} is refused: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ILLUMINANT A|1 40 0 0|its colours are for ILLUMINANT A; only those for D50 or D65 can be taken
          WEIGHTING_FUNCTION "ILLUMINANT, F11"|1 40 0 0|its colours are for F11; only those for D50 or D65 can be taken
          OBSERVER "10 degree"|1 40 0 0|its colours are for the 10° observer; only those for 2° can be taken
          OBSERVER "2 degree"|1 40 0|has 3 values, must have 4
          OBSERVER "2 degree"|1 140 0 0|L* is
          OBSERVER "2 degree"|1 x 0 0|LAB_L is 'x', must be a number such as 12.5
          """)
  void refuses(String head, String set, String reason) {
    assertThatThrownBy(() -> read(file(head, "SAMPLE_ID LAB_L LAB_A LAB_B", set)))
        .hasMessageContaining(reason);
  }

  @Test
  void refusesAFileThatWasCutShort() {
    String whole = file("", "SAMPLE_ID LAB_L LAB_A LAB_B", "1 40 0 0", "2 41 0 0");

    assertThatThrownBy(() -> read(whole.replace("2 41 0 0\n", "")))
        .hasMessage("bench.txt: NUMBER_OF_SETS is 2, but there are 1");
    assertThatThrownBy(() -> read(whole.replace("END_DATA\n", "")))
        .hasMessageContaining("is no CGATS file");
    assertThatThrownBy(() -> read(whole + "BEGIN_DATA\n3 1 0 0\nEND_DATA\n"))
        .hasMessageContaining("begins a second table, and only one is read");
    assertThatThrownBy(() -> read(file("", "SAMPLE_ID CMYK_C", "1 40")))
        .hasMessageContaining("has no colours");
  }

  @Test
  void namesAreTheSamples() {
    Shelf shelf =
        read(
            file(
                "ILLUMINANT D65",
                "SAMPLE_ID SAMPLE_NAME LAB_L LAB_A LAB_B",
                "1 \"Hull red\" 40 1 1 # measured twice",
                "2 White 90 0 0"));

    assertThat(shelf.paints()).extracting(Paint::name).containsExactly("Hull red", "White");
  }

  @Test
  void refusesFieldsAfterValues() {
    String file =
        """
        CGATS.17
        BEGIN_DATA_FORMAT
        SAMPLE_ID LAB_L LAB_A
        END_DATA_FORMAT
        BEGIN_DATA
        a 40 1
        BEGIN_DATA_FORMAT
        LAB_B
        END_DATA_FORMAT
        BEGIN_DATA
        b 40 1 2
        END_DATA
        """;
    assertThatThrownBy(() -> read(file))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("bench.txt: has no colours");
    String again = file.replace("LAB_L LAB_A", "LAB_L LAB_A LAB_B").replace("a 40 1", "a 40 1 2");
    assertThatThrownBy(() -> read(again)).hasMessageContaining("line 7: names fields after values");
  }
}
