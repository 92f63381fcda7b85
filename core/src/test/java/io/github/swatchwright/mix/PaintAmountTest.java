package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Swatch;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class PaintAmountTest {
  private static final Application WORKED = new Application(15, 0.30, 0.50);

  // 500 cm² · 15 µm = 0.75 ml dry; ÷ 0.30 solids ÷ 0.50 transfer = 5 ml, worked by hand.
  @Test
  void fiveHundredSquareCentimetresTakeFiveMillilitres() {
    PaintAmount amount = PaintAmount.of(500, 1, 0, WORKED);

    assertThat(amount.paintMillilitres()).isCloseTo(5, within(1e-12));
    assertThat(amount.thinnerMillilitres()).isZero();
  }

  @Test
  void threeCoatsTakeThreeTimesAsMuch() {
    PaintAmount amount = PaintAmount.of(500, 3, 0.5, WORKED);

    // 15 ml wet, of which two parts of three are paint.
    assertThat(amount.paintMillilitres()).isCloseTo(10, within(1e-12));
    assertThat(amount.thinnerMillilitres()).isCloseTo(5, within(1e-12));
  }

  // Coatings handbooks: m² per litre = 10 · volume solids in % ÷ dry film in µm; 10 · 30 ÷ 15.
  @Test
  void aLitreCoversWhatTheHandbookFormulaSays() {
    assertThat(WORKED.squareMetresPerLitre()).isCloseTo(20, within(1e-12));
  }

  // The same wet coat, half of it thinner: half the paint, and solids VS/(1 + t) in what is wet.
  @Test
  void thinnerTakesThePlaceOfPaint() {
    PaintAmount amount = PaintAmount.of(500, 1, 1, WORKED);

    assertThat(amount.paintMillilitres()).isCloseTo(2.5, within(1e-12));
    assertThat(amount.thinnerMillilitres()).isCloseTo(2.5, within(1e-12));
    assertThat(amount.totalMillilitres()).isCloseTo(5, within(1e-12));
  }

  @Property
  void theSameWetCoatWhateverTheThinner(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 5000) double area,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double thinner) {
    double wet = PaintAmount.of(area, 1, 0, Application.USUAL).paintMillilitres();

    assertThat(PaintAmount.of(area, 1, thinner, Application.USUAL).totalMillilitres())
        .isCloseTo(wet, within(1e-12 * wet));
  }

  @Test
  void dropsAreCountedByTheMeanDropOfTheMix() {
    Swatch grey = new Swatch.OfSrgb(Srgb.parse("#808080"));
    Paint paint = Paint.of("Grey", Medium.ACRYLIC, grey);

    assertThat(new PaintAmount(1, 0).drops(Mix.of(paint)))
        .isCloseTo(1 / Paint.USUAL_DROP_MILLILITRES, within(1e-12));
    // Three drops of 0.04 ml and five more: 0.32 ml for eight drops, and 2 ml hold 50 of them.
    Paint white = Paint.of("White", Medium.ACRYLIC, grey);
    Mix mix = new Mix(List.of(new Mix.Part(paint, 3), new Mix.Part(white, 5)));
    assertThat(new PaintAmount(2, 0).drops(mix)).isCloseTo(50, within(1e-9));
  }

  @Test
  void amountsAddUp() {
    assertThat(new PaintAmount(1, 2).plus(new PaintAmount(3, 4))).isEqualTo(new PaintAmount(4, 6));
  }

  @Test
  void aModelIsTakenForABoxWithoutABottom() {
    double length = 25;
    double width = length / 3;
    double height = length / 4;
    double box = length * width + 2 * length * height + 2 * width * height;

    assertThat(ModelArea.ofLength(length)).isCloseTo(box, within(1e-9));
    assertThat(ModelArea.ofOriginal(18, 72)).isCloseTo(box, within(1e-9));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Application(15, 1.2, 0.5))
        .withMessage("volumeSolids is 1.2, must be within [0.0, 1.0]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Application(15, 0.3, 0))
        .withMessage("transfer is 0.0, must be a finite number above 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PaintAmount.of(-1, 1, 0, WORKED))
        .withMessage("squareCentimetres is -1.0, must be a finite number of at least 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModelArea.ofOriginal(18, 0.5))
        .withMessage("scale is 0.5, must be within [1.0, 100000.0]");
  }
}
