package io.github.swatchwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.LinearRgb;
import io.github.swatchwright.difference.Ciede2000;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The reader on pictures of sheets whose every pixel is known. */
class SheetReaderTest {
  /** Pure white paper: what is seen relative to it is what it reflects. */
  private static final SheetReference WHITE = SheetReference.ofPaper(Lab.ofD65(100, 0, 0));

  private static final double[] RUST_ON_BLACK = {0.15, 0.07, 0.04};
  private static final double[] RUST_ON_PAPER = {0.30, 0.10, 0.05};
  private static final double[] GREY = {0.28, 0.30, 0.31};

  private final PaintedRaster sheet =
      new PaintedRaster(
          SheetLayout.of(SheetPage.of(Paper.A4, List.of("Rust", "Grey", "Nothing", "Last"))));

  @BeforeEach
  void paint() {
    sheet.stroke(0, RUST_ON_BLACK, RUST_ON_PAPER);
    sheet.stroke(1, GREY, GREY);
    sheet.stroke(3, RUST_ON_BLACK, RUST_ON_PAPER);
  }

  private List<FieldReading> read() {
    SheetPhoto photo = sheet.photo();
    Flattening flat = FoundSheet.in(photo).on(sheet.layout);
    return SheetReader.read(photo, flat, sheet.layout, WHITE).fields();
  }

  private static Lab lab(double[] rgb) {
    return new LinearRgb(rgb[0], rgb[1], rgb[2]).toXyz().toLab();
  }

  /** Steps of 8 bits are ΔE00 0.3 at most in these colours; the mean of many cells is nearer. */
  private static void assertRead(FieldReading reading, double[] overBlack, double[] overPaper) {
    FieldReading.Read read = reading.read().orElseThrow();
    assertThat(Ciede2000.deltaE(read.overBlack(), lab(overBlack))).isLessThan(0.5);
    assertThat(Ciede2000.deltaE(read.overPaper(), lab(overPaper))).isLessThan(0.5);
  }

  @Test
  void strokesAreReadAsTheyAreAndBlankFieldsSaySo() {
    List<FieldReading> fields = read();
    assertRead(fields.get(0), RUST_ON_BLACK, RUST_ON_PAPER);
    assertRead(fields.get(1), GREY, GREY);
    assertThat(fields.get(2).read()).isEmpty();
    assertThat(fields.get(2).doubts()).containsExactly("blank");
    assertThat(fields.get(0).doubts()).isEmpty();
    assertThat(fields.get(0).leftOutAt()).hasSizeLessThan(20);
    // What is alike over black and over paper hides: its colour at full hiding is its own.
    FieldReading.Opaque grey = fields.get(1).read().orElseThrow().opaque();
    assertThat(Ciede2000.deltaE(grey.masstone(), lab(GREY))).isLessThan(0.7);
    assertThat(grey.contrastRatio()).isGreaterThan(0.95);
    assertThat(fields.get(0).read().orElseThrow().opaque().contrastRatio()).isLessThan(0.9);
  }

  @Test
  void unevenAndTintedLightIsTakenOut() {
    sheet.change(
        sheet.all(),
        (x, y, rgb) -> {
          double fall = 1 - 0.4 * x / 210 - 0.1 * y / 297;
          rgb[0] *= fall;
          rgb[1] *= 0.85 * fall;
          rgb[2] *= 0.6 * fall;
        });
    List<FieldReading> fields = read();
    assertRead(fields.get(0), RUST_ON_BLACK, RUST_ON_PAPER);
    assertRead(fields.get(3), RUST_ON_BLACK, RUST_ON_PAPER);
  }

  @Test
  void glareOverBlackIsLeftOutAndSaid() {
    Area stroke = sheet.layout.fields().get(0).stroke();
    sheet.change(
        sheet.all(),
        (x, y, rgb) -> {
          double dx = (x - stroke.left() - 12) / 10;
          double dy = (y - stroke.top() - stroke.height() / 2) / 10;
          for (int c = 0; c < 3; c++) {
            rgb[c] += 0.6 * Math.exp(-dx * dx - dy * dy);
          }
        });
    FieldReading rust = read().get(0);
    assertThat(Ciede2000.deltaE(rust.read().orElseThrow().overBlack(), lab(RUST_ON_BLACK)))
        .isLessThan(1.5);
    assertThat(rust.doubts()).anyMatch(doubt -> doubt.startsWith("glare"));
    Spot brightest = new Spot(stroke.left() + 12, stroke.top() + stroke.height() / 2);
    assertThat(rust.leftOutAt())
        .anyMatch(spot -> spot.distanceTo(brightest) < FieldReading.CELL)
        .hasSizeGreaterThan(100);
  }

  @Test
  void gapsAndSpecksAreLeftOut() {
    Random random = new Random(5);
    SheetField field = sheet.layout.fields().get(0);
    // A tenth of the stroke is torn, in strips across it; black or paper shows there.
    for (double x = field.stroke().left() + 2; x < field.stroke().right() - 1; x += 5) {
      double wide = 0.5 * (0.5 + random.nextDouble());
      boolean isBlack = x < field.paper().left();
      double level = isBlack ? PaintedRaster.INK : 1;
      sheet.fill(
          new Area(x, field.stroke().top(), wide, field.stroke().height()),
          new double[] {level, level, level});
    }
    assertRead(read().get(0), RUST_ON_BLACK, RUST_ON_PAPER);
  }

  @Test
  void bareBlackBesideTheStrokeIsntTakenForThePaint() {
    SheetField field = sheet.layout.fields().get(0);
    double wide = 0.4 * (field.paper().left() - field.stroke().left());
    Area torn =
        new Area(field.stroke().left(), field.stroke().top(), wide, field.stroke().height());
    sheet.fill(torn, new double[] {PaintedRaster.INK, PaintedRaster.INK, PaintedRaster.INK});
    assertRead(read().get(0), RUST_ON_BLACK, RUST_ON_PAPER);
  }

  @Test
  void aShadowsEdgeAcrossAFieldIsTakenOut() {
    SheetField field = sheet.layout.fields().get(0);
    double edge = field.black().left() + 0.6 * (field.paper().right() - field.black().left());
    sheet.change(
        sheet.all(),
        (x, y, rgb) -> {
          double shade = 1 - 0.45 / (1 + Math.exp((edge - x) / 0.4));
          for (int c = 0; c < 3; c++) {
            rgb[c] *= shade;
          }
        });
    FieldReading.Read read = read().get(0).read().orElseThrow();
    assertThat(Ciede2000.deltaE(read.overBlack(), lab(RUST_ON_BLACK))).isLessThan(1.5);
    assertThat(Ciede2000.deltaE(read.overPaper(), lab(RUST_ON_PAPER))).isLessThan(1.5);
  }

  @Test
  void aGreyCardThatIsntThereIsRefused() {
    SheetPhoto photo = sheet.photo();
    Flattening flat = FoundSheet.in(photo).on(sheet.layout);
    assertThatThrownBy(
            () -> SheetReader.read(photo, flat, sheet.layout, SheetReference.ofGreyCard(18)))
        .hasMessageContaining("there is no grey card on its place");
    sheet.fill(sheet.layout.card(), new double[] {0.18, 0.18, 0.18});
    SheetPhoto carded = sheet.photo();
    SheetReading reading =
        SheetReader.read(carded, flat, sheet.layout, SheetReference.ofGreyCard(18));
    assertThat(reading.paper().l()).isCloseTo(100, within(0.5));
    assertRead(reading.fields().get(0), RUST_ON_BLACK, RUST_ON_PAPER);
  }

  @Test
  void aBlackBarThatIsCoveredIsSaid() {
    SheetField field = sheet.layout.fields().get(0);
    sheet.fill(field.black(), new double[] {0.6, 0.5, 0.4});
    assertThat(read().get(0).doubts().get(0)).startsWith("its printed black isn't seen");
  }
}
