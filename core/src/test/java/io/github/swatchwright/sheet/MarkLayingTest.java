package io.github.swatchwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.swatchwright.colour.RgbSpace;
import io.github.swatchwright.photo.ArgbPhoto;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks among other things, from a camera that is computed another way. */
class MarkLayingTest {
  private static final List<Spot> MARKS = SheetLayout.usualMarks(Paper.A4);
  private static final SheetFinder FINDER = SheetFinder.of(MARKS);
  private static final SheetPhoto PHOTO =
      SheetPhoto.of(new ArgbPhoto(1500, 2000, new int[1500 * 2000], RgbSpace.SRGB));

  private static List<RingMarks.Found> seen(double tilt, double roll, boolean mirrored) {
    PinholeCamera camera =
        new PinholeCamera(Math.toRadians(tilt), Math.toRadians(roll), 0.02, 210, 297, 1500, 2000);
    return new ArrayList<>(
        MARKS.stream()
            .map(camera::sees)
            .map(spot -> mirrored ? new Spot(1500 - spot.x(), spot.y()) : spot)
            .map(spot -> new RingMarks.Found(spot, 50))
            .toList());
  }

  private static void assertRight(List<RingMarks.Found> all, List<RingMarks.Found> truth) {
    FoundSheet sheet = FINDER.among(PHOTO, all);
    for (int i = 0; i < sheet.marks().size(); i++) {
      assertThat(sheet.seen().get(i)).isEqualTo(truth.get(sheet.marks().get(i)).centre());
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "35, 0", "30, 90", "20, 180", "35, 250", "10, 40"})
  void marksAreToldApartHoweverTheSheetIsTurned(double tilt, double roll) {
    List<RingMarks.Found> truth = seen(tilt, roll, false);
    List<RingMarks.Found> all = new ArrayList<>(truth);
    Random random = new Random(7);
    for (int i = 0; i < 4; i++) {
      Spot dust = new Spot(1500 * random.nextDouble(), 2000 * random.nextDouble());
      all.add(new RingMarks.Found(dust, 45));
    }
    Collections.shuffle(all, random);
    assertRight(all, truth);
    assertThat(FINDER.among(PHOTO, all).marks()).hasSizeGreaterThanOrEqualTo(10);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void aCornerMayBeHidden(int corner) {
    List<RingMarks.Found> truth = seen(20, 15, false);
    List<RingMarks.Found> all = new ArrayList<>(truth);
    all.remove(corner);
    assertRight(all, truth);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "30, 90", "25, 200"})
  void aMirroredSheetIsToldFromATurnedOne(double tilt, double roll) {
    List<RingMarks.Found> mirrored = seen(tilt, roll, true);
    assertThatThrownBy(() -> FINDER.among(PHOTO, mirrored)).hasMessageContaining("mirrored");
  }

  // Two of the first 300 trial photos, by their marks; a crushed frame had five marks on one place.
  @Test
  void oneThingIsNeverSeveralMarks() {
    int[][] places = {
      {1485, 1585},
      {1242, 220},
      {1728, 250},
      {228, 892},
      {2172, 1084},
      {828, 1540},
      {287, 173},
      {758, 194},
      {2210, 284},
      {190, 1489},
      {1962, 354},
      {2202, 371},
      {2192, 612}
    };
    List<RingMarks.Found> all =
        Arrays.stream(places)
            .map(place -> new RingMarks.Found(new Spot(place[0], place[1]), 50))
            .toList();
    FoundSheet sheet = FINDER.among(PHOTO, all);
    assertThat(sheet.seen()).doesNotHaveDuplicates().hasSize(10);
  }

  @Test
  void tooFewMarksAreNoSheet() {
    List<RingMarks.Found> few = seen(10, 0, false).subList(0, 6);
    assertThatThrownBy(() -> FINDER.among(PHOTO, few))
        .hasMessageContaining("no sheet found: at least 7 of its ring marks must be seen")
        .hasMessageContaining("6 things look like one");
  }
}
