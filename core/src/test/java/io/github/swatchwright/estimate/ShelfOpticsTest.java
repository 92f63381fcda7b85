package io.github.swatchwright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.optics.Film;
import io.github.swatchwright.optics.HidingPower;
import io.github.swatchwright.optics.Saunderson;
import io.github.swatchwright.optics.Viewing;
import io.github.swatchwright.paint.Effect;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Hiding;
import io.github.swatchwright.paint.Make;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.Bands;
import io.github.swatchwright.spectrum.TristimulusWeights;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShelfOpticsTest {

  private static Paint swatch(String name, String hex) {
    return Paint.of(name, Medium.ACRYLIC, new Swatch.OfSrgb(Srgb.parse(hex)));
  }

  private static PaintOptics alone(Paint paint) {
    return ShelfOptics.estimate(Shelf.of("one", List.of(paint))).of(paint.name());
  }

  private static Viewing viewing(Paint paint) {
    Saunderson surface = ShelfOptics.estimate(Shelf.of("one", List.of(paint))).surface();
    return new Viewing(TristimulusWeights.D65, surface);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#FFFFFF", "#101010", "#8A4B2A", "#F4DA16", "#D01818", "#1A5A47", "#402080", "#000000",
        "#FF0000", "#00FF00", "#0000FF", "#FFFF00"
      })
  void aPaintAloneLooksLikeItsSwatch(String hex) {
    Paint paint = swatch("paint", hex).withSwatchError(0.2);
    Lab fitted = viewing(paint).lab(alone(paint).constants().opaque());
    // What is stated is met; near black and white, reflectances are held 1e-4 from 0 and 1.
    assertThat(Ciede2000.deltaE(Srgb.parse(hex).toLab(), fitted)).isLessThan(0.1);
  }

  @Test
  void aMeasuredReflectanceComesBackInItsBandsAndIsHeldSmoothOutside() {
    double[] measured = IntStream.range(0, 31).mapToDouble(i -> 0.1 + 0.02 * i).toArray();
    Paint paint = Paint.of("ramp", Medium.ACRYLIC, new Swatch.OfReflectance(400, 10, measured));
    double[] fitted = viewing(paint).seen(alone(paint).constants().opaque()).toArray();
    for (int band = 2; band <= 32; band++) {
      // An instrument's error of 0.05 in L* is below 0.001 in reflectance.
      assertThat(fitted[band]).isCloseTo(measured[band - 2], within(0.001));
    }
    assertThat(fitted[0]).isBetween(0.05, 0.15);
    assertThat(fitted[35]).isBetween(0.6, 0.8);
  }

  @Test
  void hidingFiguresMoveScatteringTowardsThemselves() {
    Paint paint = swatch("ochre", "#C48A2C").withMake(Make.SINGLE_PIGMENT);
    HidingPower hiding = new HidingPower(viewing(paint));
    double unknown = hiding.contrastRatio(alone(paint).constants(), Film.COAT);
    double weak = ratioWith(paint, new Hiding.ContrastRatio(0.15), hiding);
    double strong = ratioWith(paint, new Hiding.ContrastRatio(0.9), hiding);
    assertThat(weak).isCloseTo(0.15, within(0.03));
    // The posterior is a mean over ln S, and the ratio saturates there: 0.03 of it are its curve.
    assertThat(strong).isCloseTo(0.9, within(0.03));
    assertThat(unknown).isBetween(weak, strong);
  }

  private static double ratioWith(Paint paint, Hiding figure, HidingPower hiding) {
    return hiding.contrastRatio(alone(paint.withHiding(figure)).constants(), Film.COAT);
  }

  @Test
  void everyFormOfHidingGivesTheLevelItStandsFor() {
    Paint paint = swatch("ochre", "#C48A2C").withMake(Make.SINGLE_PIGMENT);
    HidingPower hiding = new HidingPower(viewing(paint));
    Paint stated = paint.withHiding(new Hiding.Scattering(0.2));
    assertThat(alone(stated).constants().s(10)).isCloseTo(0.2, within(0.02));

    double coats = hiding.coatsToHide(alone(stated).constants());
    Paint counted = paint.withHiding(new Hiding.Coats(Math.ceil(coats)));
    assertThat(hiding.coatsToHide(alone(counted).constants()))
        .isBetween(Math.ceil(coats) - 1.3, Math.ceil(coats) + 0.3);

    Paint opaque = paint.withHiding(Hiding.Word.OPAQUE);
    Paint transparent = paint.withHiding(Hiding.Word.TRANSPARENT);
    assertThat(alone(opaque).constants().s(10)).isGreaterThan(alone(transparent).constants().s(10));
  }

  @Test
  void aFigureNarrowsWhatTheMakeLeavesOpen() {
    Paint paint = swatch("ochre", "#C48A2C").withMake(Make.SINGLE_PIGMENT);
    double[][] levelOfScattering = new double[1][2 * Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      levelOfScattering[0][Bands.COUNT + band] = 1.0 / Bands.COUNT;
    }
    double before = alone(paint).likely().covarianceOf(levelOfScattering)[0][0];
    double after =
        alone(paint.withHiding(new Hiding.Coats(4))).likely().covarianceOf(levelOfScattering)[0][0];
    assertThat(after).isLessThan(before / 2);
  }

  @Test
  void surfaceStaysBelowTheDarkestPaint() {
    Shelf light = Shelf.of("light", List.of(swatch("white", "#F0F0F0")));
    assertThat(ShelfOptics.estimate(light).surface()).isEqualTo(new Saunderson(0.04, 0.4));
    Shelf dark = Shelf.of("dark", List.of(swatch("white", "#F0F0F0"), swatch("black", "#202020")));
    double darkest = Srgb.parse("#202020").toXyz().y() / 100;
    assertThat(ShelfOptics.estimate(dark).surface().k1()).isCloseTo(0.9 * darkest, within(1e-6));
    Saunderson stated = new Saunderson(0.01, 0.5);
    Shelf told = new Shelf("told", dark.paints(), Optional.of(stated));
    assertThat(ShelfOptics.estimate(told).surface()).isEqualTo(stated);
    Shelf impossible = new Shelf("told", dark.paints(), Optional.of(new Saunderson(0.5, 0.5)));
    assertThat(ShelfOptics.estimate(impossible).surface().k1())
        .isCloseTo(0.9 * darkest, within(1e-6));
  }

  @Test
  void paintsThatTheModelDoesNotHoldForAreLeftOutWithTheirReason() {
    Paint brass =
        Paint.of("brass", Medium.ACRYLIC)
            .withFinish(Finish.GLOSS)
            .withMasstone(new Swatch.OfSrgb(Srgb.parse("#B08D4A")))
            .withEffect(Effect.METALLIC)
            .withDropMillilitres(0.04);
    Shelf shelf = Shelf.of("two", List.of(brass, swatch("white", "#F0F0F0")));
    ShelfOptics optics = ShelfOptics.estimate(shelf);
    assertThat(optics.paints()).extracting(known -> known.paint().name()).containsExactly("white");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> optics.of("brass"))
        .withMessage(
            "'brass' is metallic, which the model doesn't hold for, so it can't be computed with");
  }

  @Test
  void unknownPaintIsRefusedWithTheNearestName() {
    Shelf shelf =
        Shelf.of("two", List.of(swatch("Lamp black", "#202020"), swatch("White", "#FFFFFF")));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> shelf.paint("Lamp blak"))
        .withMessage("no paint 'Lamp blak' on the shelf 'two'; nearest is 'Lamp black'");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> shelf.paint("Zinc chromate"))
        .withMessage("no paint 'Zinc chromate' on the shelf 'two'");
  }

  @Test
  void emptyShelvesAndDuplicateNamesAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Shelf.of("none", List.of()))
        .withMessage("the shelf holds 0 paints, must hold 1 to 10000");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Shelf.of("two", List.of(swatch("a", "#000000"), swatch("a", "#FFFFFF"))))
        .withMessage("two paints are named 'a'");
  }
}
