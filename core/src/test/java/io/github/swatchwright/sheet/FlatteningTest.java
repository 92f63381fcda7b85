package io.github.swatchwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.ArgbPhoto;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places of a sheet in a photo, against a camera that is computed another way. */
class FlatteningTest {
  private static final int WIDTH = 1500;
  private static final int HEIGHT = 2000;
  private static final Paper PAPER = Paper.A4;
  private static final List<Spot> MARKS = SheetLayout.usualMarks(PAPER);

  private static SheetPhoto photo() {
    return SheetPhoto.of(new ArgbPhoto(WIDTH, HEIGHT, new int[WIDTH * HEIGHT], RgbSpace.SRGB));
  }

  private static PinholeCamera camera(double tilt, double roll, double lens) {
    return new PinholeCamera(
        Math.toRadians(tilt),
        Math.toRadians(roll),
        lens,
        PAPER.width(),
        PAPER.height(),
        WIDTH,
        HEIGHT);
  }

  private static List<Spot> places() {
    List<Spot> places = new ArrayList<>();
    for (double x = 15; x < PAPER.width(); x += 30) {
      for (double y = 15; y < PAPER.height(); y += 30) {
        places.add(new Spot(x, y));
      }
    }
    return places;
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "35, 0", "35, 100", "20, -170", "10, 45"})
  void aHomographyOfFourPointsIsTheCamerasOwn(double tilt, double roll) {
    PinholeCamera camera = camera(tilt, roll, 0);
    List<Spot> corners = MARKS.subList(0, 4);
    Homography there = Homography.between(corners, corners.stream().map(camera::sees).toList());
    double[] back = Homography.inverse(there.h());
    double[] both = Homography.product(back, there.h());
    for (Spot place : places()) {
      // Both are exact: what is left is rounding, 1500 pixels times some 1e-12.
      Spot seen = camera.sees(place);
      assertThat(there.at(place.x(), place.y()).distanceTo(seen)).isLessThan(1e-8);
      assertThat(new Homography(back).at(seen.x(), seen.y()).distanceTo(place)).isLessThan(1e-8);
      assertThat(new Homography(both).at(place.x(), place.y()).distanceTo(place)).isLessThan(1e-8);
    }
  }

  @Test
  void theUnitSquareGoesToAnyQuadrangle() {
    PinholeCamera camera = camera(30, 60, 0);
    List<Spot> quad = MARKS.subList(0, 4).stream().map(camera::sees).toList();
    double[] h = Homography.ofSquare(quad.get(0), quad.get(1), quad.get(2), quad.get(3));
    Homography square = new Homography(Objects.requireNonNull(h));
    assertThat(square.at(0, 0).distanceTo(quad.get(0))).isLessThan(1e-8);
    assertThat(square.at(1, 0).distanceTo(quad.get(1))).isLessThan(1e-8);
    assertThat(square.at(1, 1).distanceTo(quad.get(2))).isLessThan(1e-8);
    assertThat(square.at(0, 1).distanceTo(quad.get(3))).isLessThan(1e-8);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0.03", "35, 20, 0.03", "25, 110, -0.03", "35, 190, -0.03"})
  void marksTellWhatTheLensBends(double tilt, double roll, double lens) {
    PinholeCamera camera = camera(tilt, roll, lens);
    Flattening flat =
        Flattening.by(
            PAPER.width(),
            PAPER.height(),
            photo(),
            MARKS,
            MARKS.stream().map(camera::sees).toList());
    double worst = 0;
    for (Spot place : places()) {
      worst = Math.max(worst, flat.at(place.x(), place.y()).distanceTo(camera.sees(place)));
    }
    // 0.2 mm: a field's own edges are looked for within 2.6 mm, and its colours read 1.6 mm inside.
    // The lens term and the curl are held to what is usual, so that not all of it is found.
    assertThat(worst).isLessThan(0.2 * flat.pixelsPerMillimetre(100, 150));
    assertThat(flat.residualPixels()).isLessThan(1);
  }

  @Test
  void marksThatAreFoundAPixelOffMoveNoPlaceByMore() {
    PinholeCamera camera = camera(25, 15, 0.01);
    Random random = new Random(3);
    List<Spot> seen =
        MARKS.stream()
            .map(camera::sees)
            .map(
                spot ->
                    new Spot(
                        spot.x() + random.nextGaussian() / 2, spot.y() + random.nextGaussian() / 2))
            .toList();
    Flattening flat = Flattening.by(PAPER.width(), PAPER.height(), photo(), MARKS, seen);
    for (Spot place : places()) {
      assertThat(flat.at(place.x(), place.y()).distanceTo(camera.sees(place))).isLessThan(2.5);
    }
  }

  @Test
  void cornersOfAnAreaAreInOrder() {
    PinholeCamera camera = camera(0, 0, 0);
    Flattening flat =
        Flattening.by(
            PAPER.width(),
            PAPER.height(),
            photo(),
            MARKS,
            MARKS.stream().map(camera::sees).toList());
    List<Spot> corners = flat.corners(new Area(50, 60, 40, 20));
    assertThat(corners.get(0).x()).isLessThan(corners.get(1).x());
    assertThat(corners.get(1).y()).isLessThan(corners.get(2).y());
    assertThat(corners.get(2).x()).isCloseTo(corners.get(1).x(), within(0.5));
  }
}
